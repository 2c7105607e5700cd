// SPDX-License-Identifier: MIT
// A visit: what one electrician found, read and measured in one place, as a document and as C++ structures.
// Job floor. Includes the standard library only; reading JSON text is opt-in (job/json.hpp).
#pragma once
#include "fields.hpp"

namespace makegood {
inline namespace v1 {
namespace job {

#define MAKEGOOD_DOCUMENT_STRUCTURE static constexpr bool is_document_structure = true

/// What is stated of one function of an instrument.
struct instrument_accuracy {
  MAKEGOOD_DOCUMENT_STRUCTURE;
  std::string reads_what;
  double percent = 0.0, counts = 0.0, resolution = 0.0, limit = 0.0, standard_uncertainty = 0.0, coverage_factor = 0.0, range = 0.0, leads_ohm = 0.0,
         leads_standard_uncertainty_ohm = 0.0;
  std::optional<double> operating_edition;
  bool exact = false, nulled = true, leads_left_in = false, common_offset = false;
  template <class V>
  static void fields(V&& v) {
    static constexpr std::string_view kinds[] = {"continuity", "insulation", "loop_impedance", "rcd_time", "resistance",
                                                 "temperature", "airflow", "length", "voltage", "current"};
    v("reads", &instrument_accuracy::reads_what, words("what this function reads", kinds).must());
    v("percent", &instrument_accuracy::percent, number("per cent of the reading", unit::percent, between(0, 100)));
    v("counts", &instrument_accuracy::counts, number("counts of the last digit", unit::one, between(0, 1000)));
    v("resolution", &instrument_accuracy::resolution, number("one count, in the unit of the reading", unit::one, between(0, 1e6)));
    v("limit", &instrument_accuracy::limit, number("limit of error, in the unit of the reading", unit::one, between(0, 1e6)));
    v("standard_uncertainty", &instrument_accuracy::standard_uncertainty, number("standard uncertainty, in the unit of the reading", unit::one, between(0, 1e6)));
    v("coverage_factor", &instrument_accuracy::coverage_factor, number("coverage factor, where the figures are expanded uncertainties", unit::one, between(0, 10)));
    v("range", &instrument_accuracy::range, number("end of the range that this holds for, in the unit of the reading; left out: one range", unit::one, between(0, 1e9)));
    v("operating_edition", &instrument_accuracy::operating_edition, number("year of the edition of IEC 61557 when percent is an operating uncertainty: from 2019 on u = B/2, before that u = B/√3", unit::one, between(1997, 2100)));
    v("nulled", &instrument_accuracy::nulled, text("false: the leads were not nulled, their resistance lies in the readings"));
    v("leads_ohm", &instrument_accuracy::leads_ohm, number("resistance of leads that were not nulled", unit::ohm, between(0, 100), {0, 1}));
    v("leads_standard_uncertainty_ohm", &instrument_accuracy::leads_standard_uncertainty_ohm, number("standard uncertainty of the leads' resistance", unit::ohm, between(0, 100), {0, 1}));
    v("leads_left_in", &instrument_accuracy::leads_left_in, text("true: leads that were not nulled are reported, not subtracted"));
    v("common_offset", &instrument_accuracy::common_offset, text("true: the counts are an offset common to all readings of this function"));
    v("exact", &instrument_accuracy::exact, text("true for numbers that are to be taken without doubt, as in a printed example"));
  }
  bool says_something() const { return percent > 0 || resolution > 0 || limit > 0 || standard_uncertainty > 0; }
  accuracy statement() const {
    accuracy a{percent, counts, resolution, limit, standard_uncertainty, coverage_factor, range, leads_ohm, leads_standard_uncertainty_ohm, nulled, leads_left_in, common_offset};
    if (operating_edition) {
      a.basis = *operating_edition >= 2019.0 ? statement_basis::operating_2019 : statement_basis::operating_error_limit;
      if (*operating_edition >= 2019.0 && !(coverage_factor > 0.0)) a.coverage_factor = 2.0;
    }
    return a;
  }
  /// Leads lie in readings of a few ohms only.
  bool has_leads() const { return !nulled || leads_ohm > 0.0; }
};
struct instrument {
  MAKEGOOD_DOCUMENT_STRUCTURE;
  std::string id, description, calibrated;
  std::vector<instrument_accuracy> functions;
  template <class V>
  static void fields(V&& v) {
    v("id", &instrument::id, text("name by which readings refer to it").must());
    v("description", &instrument::description, text("what kind of instrument it is"));
    v("calibrated", &instrument::calibrated, text("date of the last calibration"));
    v("accuracy", &instrument::functions, text("statements of its maker or calibration"));
  }
  /// As readings take it.
  v1::instrument known() const {
    v1::instrument i{id};
    for (const auto& f : functions)
      if (!f.exact) i.functions.push_back({reads_of(f.reads_what), f.statement()});
    return i;
  }
};
struct supply {
  MAKEGOOD_DOCUMENT_STRUCTURE;
  std::string earthing;
  double nominal_voltage_v = 230.0;
  reading external_loop_impedance_ohm;
  template <class V>
  static void fields(V&& v) {
    static constexpr std::string_view systems[] = {"TN-S", "TN-C-S", "TT", "unknown"};
    v("earthing", &supply::earthing, words("earthing arrangement", systems).must());
    v("nominal_voltage_v", &supply::nominal_voltage_v, number("nominal voltage to earth", unit::volt, between(50, 1000), {100, 250}).must());
    v("external_loop_impedance_ohm", &supply::external_loop_impedance_ohm,
      read_by(reads::loop_impedance, "external earth fault loop impedance", unit::ohm, between(0, 10000), {0.05, 25}));
  }
};
struct room {
  MAKEGOOD_DOCUMENT_STRUCTURE;
  std::string id, name, kind;
  std::optional<double> length_m, width_m, height_m, volume_m3;
  bool outside_wall = true;
  template <class V>
  static void fields(V&& v) {
    static constexpr std::string_view kinds[] = {"kitchen", "kitchen_hood", "utility", "bathroom", "sanitary", "kitchen_continuous",
                                                 "utility_continuous", "bathroom_continuous", "sanitary_continuous", "other"};
    v("id", &room::id, text("name by which other parts refer to it").must());
    v("name", &room::name, text("what people call it").must());
    v("kind", &room::kind, words("use of the room, as the ventilation rules see it", kinds).must());
    v("length_m", &room::length_m, number("length", unit::metre, positive_to(100), {0.5, 20}));
    v("width_m", &room::width_m, number("width", unit::metre, positive_to(100), {0.5, 20}));
    v("height_m", &room::height_m, number("height", unit::metre, positive_to(20), {1.8, 5}));
    v("volume_m3", &room::volume_m3, number("volume, instead of length, width and height", unit::cubic_metre, positive_to(10000), {2, 200}));
    v("outside_wall", &room::outside_wall, text("the room has a wall to the outside"));
  }
  std::optional<double> volume() const {
    if (volume_m3) return volume_m3;
    if (length_m && width_m && height_m) return *length_m * *width_m * *height_m;
    return {};
  }
};
struct cable {
  MAKEGOOD_DOCUMENT_STRUCTURE;
  std::optional<double> drop_mv_per_a_m, resistance_mohm_per_m, cpc_area_mm2, k;
  double reactance_mohm_per_m = 0.08;
  template <class V>
  static void fields(V&& v) {
    v("drop_mv_per_a_m", &cable::drop_mv_per_a_m, number("tabulated voltage drop", unit::millivolt_per_ampere_metre, positive_to(1000), {0.2, 50}));
    v("resistance_mohm_per_m", &cable::resistance_mohm_per_m, number("resistance of one conductor at its working temperature, instead of the tabulated drop", unit::milliohm_per_metre, positive_to(1000), {0.1, 50}));
    v("reactance_mohm_per_m", &cable::reactance_mohm_per_m, number("reactance of one conductor", unit::milliohm_per_metre, between(0, 10), {0.05, 0.2}));
    v("cpc_area_mm2", &cable::cpc_area_mm2, number("area of the protective conductor", unit::square_millimetre, positive_to(1000), {0.5, 50}));
    v("k", &cable::k, number("k of the protective conductor for its material, insulation and arrangement", unit::adiabatic_k, positive_to(500), {20, 250}));
  }
};
struct device {
  MAKEGOOD_DOCUMENT_STRUCTURE;
  std::optional<double> rating_a, operating_current_a, operating_time_s, let_through_a2s;
  template <class V>
  static void fields(V&& v) {
    v("rating_a", &device::rating_a, number("rated current", unit::ampere, positive_to(1000), {1, 125}));
    v("operating_current_a", &device::operating_current_a, number("current that operates it within the time the rules ask for", unit::ampere, positive_to(1e5), {3, 3000}));
    v("operating_time_s", &device::operating_time_s, number("operating time at the fault current", unit::second, positive_to(60), {0.1, 5}));
    v("let_through_a2s", &device::let_through_a2s, number("energy let through at the fault current, maker's figure", unit::ampere_squared_second, positive_to(1e9), {100, 1e6}));
  }
};
struct circuit {
  MAKEGOOD_DOCUMENT_STRUCTURE;
  std::string id, name, load_kind = "other", rcd_kind = "none", feeds;
  std::vector<std::string> rooms;
  std::optional<double> design_current_a, power_w, rcd_residual_ma;
  double power_factor = 1.0;
  reading length_m, loop_impedance_ohm, insulation_mohm, rcd_trip_ms;
  cable wiring;
  device protection;
  template <class V>
  static void fields(V&& v) {
    static constexpr std::string_view load_kinds[] = {"lighting", "other", "lighting_private_supply", "other_private_supply"};
    static constexpr std::string_view rcd_kinds[] = {"none", "general", "selective"};
    static constexpr std::string_view feeds_what[] = {"socket_outlets", "lighting", "fixed_load"};
    v("id", &circuit::id, text("name by which other parts refer to it").must());
    v("name", &circuit::name, text("what it feeds").must());
    v("load_kind", &circuit::load_kind, words("use of the circuit", load_kinds));
    v("design_current_a", &circuit::design_current_a, number("design current", unit::ampere, between(0, 1000), {0.1, 100}));
    v("power_w", &circuit::power_w, number("power of the load, instead of the design current", unit::watt, positive_to(1e6), {1, 25000}));
    v("power_factor", &circuit::power_factor, number("power factor of the load", unit::ratio, {0.0, 1.0, true, false}, {0.3, 1}));
    v("length_m", &circuit::length_m, read_by(reads::length, "length of the cable run", unit::metre, between(0, 1000), {0.5, 200}));
    v("cable", &circuit::wiring, text("the cable"));
    v("device", &circuit::protection, text("the protective device, by its electrical parameters"));
    v("rcd_kind", &circuit::rcd_kind, words("residual current device", rcd_kinds));
    v("rcd_residual_ma", &circuit::rcd_residual_ma, number("rated residual current of that device", unit::milliampere, positive_to(10000), {10, 300}));
    v("feeds", &circuit::feeds, words("what it feeds, as the rules on additional protection see it", feeds_what));
    v("rooms", &circuit::rooms, text("ids of the rooms that it serves or passes through"));
    v("loop_impedance_ohm", &circuit::loop_impedance_ohm, read_by(reads::loop_impedance, "earth fault loop impedance at the far end", unit::ohm, between(0, 10000), {0.05, 200}));
    v("insulation_mohm", &circuit::insulation_mohm, read_by(reads::insulation, "insulation resistance, live conductors to earth", unit::megaohm, between(0, 1e6), {0.05, 1000}));
    v("rcd_trip_ms", &circuit::rcd_trip_ms, read_by(reads::rcd_time, "tripping time at the rated residual current", unit::millisecond, between(0, 10000), {5, 500}));
  }
};
struct appliance {
  MAKEGOOD_DOCUMENT_STRUCTURE;
  std::string id, name, kind, circuit_id;
  std::optional<double> rated_power_w, rated_voltage_v, lower_tolerance_percent, upper_tolerance_percent;
  double mats_count = 1.0, cold_tail_ohm = 0.0;
  reading resistance_ohm, insulation_mohm;
  template <class V>
  static void fields(V&& v) {
    static constexpr std::string_view kinds[] = {"heating_mat", "heating_cable", "heater", "kiln", "towel_rail", "other"};
    v("id", &appliance::id, text("name by which other parts refer to it").must());
    v("name", &appliance::name, text("what people call it").must());
    v("kind", &appliance::kind, words("what it is", kinds).must());
    v("circuit", &appliance::circuit_id, text("id of the circuit that feeds it"));
    v("rated_power_w", &appliance::rated_power_w, number("rated power of one element", unit::watt, positive_to(1e5), {10, 20000}));
    v("rated_voltage_v", &appliance::rated_voltage_v, number("rated voltage", unit::volt, positive_to(1000), {12, 415}));
    v("lower_tolerance_percent", &appliance::lower_tolerance_percent, number("maker's lower tolerance of the resistance", unit::percent, between(0, 50)));
    v("upper_tolerance_percent", &appliance::upper_tolerance_percent, number("maker's upper tolerance of the resistance", unit::percent, between(0, 50)));
    v("mats_count", &appliance::mats_count, number("equal elements in parallel", unit::one, between(1, 50), {1, 6}));
    v("cold_tail_ohm", &appliance::cold_tail_ohm, number("resistance of the cold tails, there and back", unit::ohm, between(0, 100), {0, 1}));
    v("resistance_ohm", &appliance::resistance_ohm, read_by(reads::resistance, "resistance of the element, dead and disconnected", unit::ohm, between(0, 1e9), {1, 5000}));
    v("insulation_mohm", &appliance::insulation_mohm, read_by(reads::insulation, "insulation resistance of the element to its screen or body", unit::megaohm, between(0, 1e6), {0.05, 1000}));
  }
};
struct sensor_curve {
  MAKEGOOD_DOCUMENT_STRUCTURE;
  std::string kind;
  std::optional<double> reference_ohm, reference_c, beta_k, a, b, c, r0_ohm;
  template <class V>
  static void fields(V&& v) {
    static constexpr std::string_view kinds[] = {"ntc", "steinhart_hart", "rtd", "silicon_ptc"};
    v("kind", &sensor_curve::kind, words("family of the curve", kinds).must());
    v("reference_ohm", &sensor_curve::reference_ohm, number("resistance at the reference temperature", unit::ohm, positive_to(1e7), {100, 1e6}));
    v("reference_c", &sensor_curve::reference_c, number("reference temperature", unit::celsius, between(-50, 150), {0, 50}));
    v("beta_k", &sensor_curve::beta_k, number("beta constant", unit::kelvin, between(100, 10000), {2500, 5000}));
    v("a", &sensor_curve::a, number("Steinhart-Hart a", unit::per_kelvin, between(-1, 1)));
    v("b", &sensor_curve::b, number("Steinhart-Hart b", unit::per_kelvin, between(-1, 1)));
    v("c", &sensor_curve::c, number("Steinhart-Hart c", unit::per_kelvin, between(-1, 1)));
    v("r0_ohm", &sensor_curve::r0_ohm, number("resistance at 0 °C", unit::ohm, positive_to(1e5), {10, 5000}));
  }
};
struct sensor {
  MAKEGOOD_DOCUMENT_STRUCTURE;
  std::string id, name, appliance_id;
  std::optional<sensor_curve> curve;
  reading resistance_ohm, temperature_c;
  template <class V>
  static void fields(V&& v) {
    v("id", &sensor::id, text("name by which other parts refer to it").must());
    v("name", &sensor::name, text("what people call it").must());
    v("appliance", &sensor::appliance_id, text("id of the appliance that it controls"));
    v("curve", &sensor::curve, text("the curve that the controller expects, by its parameters"));
    v("resistance_ohm", &sensor::resistance_ohm, read_by(reads::resistance, "resistance of the sensor, disconnected", unit::ohm, between(0, 1e9), {50, 1e6}));
    v("temperature_c", &sensor::temperature_c, read_by(reads::temperature, "temperature at the sensor, read independently", unit::celsius, between(-50, 120), {-10, 50}));
  }
};
struct duct_part {
  MAKEGOOD_DOCUMENT_STRUCTURE;
  std::string name;
  std::optional<double> diameter_mm, width_mm, height_mm;
  double length_m = 0.0, roughness_mm = 0.09, compression_percent = 0.0, loss_coefficient = 0.0;
  template <class V>
  static void fields(V&& v) {
    v("name", &duct_part::name, text("what it is"));
    v("diameter_mm", &duct_part::diameter_mm, number("inner diameter of a round part", unit::millimetre, between(1, 2000), {50, 500}));
    v("width_mm", &duct_part::width_mm, number("width of a rectangular part", unit::millimetre, between(1, 5000), {30, 1000}));
    v("height_mm", &duct_part::height_mm, number("height of a rectangular part", unit::millimetre, between(1, 5000), {30, 1000}));
    v("length_m", &duct_part::length_m, number("length", unit::metre, between(0, 500), {0, 50}).must());
    v("roughness_mm", &duct_part::roughness_mm, number("roughness of the wall", unit::millimetre, between(0, 10), {0, 3}));
    v("compression_percent", &duct_part::compression_percent, number("a flexible part's shortening against its full length", unit::percent, between(0, 90), {0, 50}));
    v("loss_coefficient", &duct_part::loss_coefficient, number("sum of the loss coefficients of bends and terminals, by this part's velocity", unit::one, between(0, 1000), {0, 20}));
  }
};
struct fan {
  MAKEGOOD_DOCUMENT_STRUCTURE;
  std::string id, name, room_id, circuit_id, discharge_to = "not_seen";
  reading flow_l_per_s;
  std::optional<double> available_pressure_pa, overrun_min;
  double air_temperature_c = 20.0, relative_humidity_percent = 50.0, air_pressure_pa = 101325.0;
  std::vector<duct_part> duct;
  template <class V>
  static void fields(V&& v) {
    static constexpr unit_t minute = unit::detail::si("min", 0, 0, 1, 0, 0, 60);
    static constexpr std::string_view places[] = {"not_seen", "outside", "roof_void", "vented_roof_void", "soffit", "ridge_vent", "crawl_space", "other_room", "recirculated"};
    v("id", &fan::id, text("name by which other parts refer to it").must());
    v("name", &fan::name, text("what people call it").must());
    v("room", &fan::room_id, text("id of the room that it extracts from").must());
    v("circuit", &fan::circuit_id, text("id of the circuit that feeds it"));
    v("flow_l_per_s", &fan::flow_l_per_s, read_by(reads::airflow, "air flow at the grille", unit::litre_per_second, between(0, 5000), {0.5, 200}));
    v("available_pressure_pa", &fan::available_pressure_pa, number("static pressure that the fan gives at the required flow, from its plate or sheet", unit::pascal, between(0, 5000), {5, 500}));
    v("air_temperature_c", &fan::air_temperature_c, number("temperature of the air", unit::celsius, between(-40, 90), {0, 40}));
    v("relative_humidity_percent", &fan::relative_humidity_percent, number("relative humidity of the air", unit::percent, between(0, 100), {10, 100}));
    v("air_pressure_pa", &fan::air_pressure_pa, number("air pressure", unit::pascal, between(50000, 120000), {90000, 105000}));
    v("discharge_to", &fan::discharge_to, words("where the air goes, as seen at the end of the duct", places));
    v("overrun_min", &fan::overrun_min, number("time that it runs on, minutes by a watch", minute, between(0, 1440), {1, 60}));
    v("duct", &fan::duct, text("the parts of the duct, in order"));
  }
};
/// Something that does not work, with what is known of it and what was read: which fault it is, and which test is next (job/session.hpp).
struct inquiry {
  MAKEGOOD_DOCUMENT_STRUCTURE;
  std::string id, name, family, about;
  document::object given, readings;
  std::vector<std::string> standing;
  template <class V>
  static void fields(V&& v) {
    v("id", &inquiry::id, text("name by which other parts refer to it").must());
    v("name", &inquiry::name, text("what people call it"));
    v("family", &inquiry::family, text("the family of faults it is held against: heating_element, ...").must());
    v("about", &inquiry::about, text("id of the circuit, appliance, sensor or fan that it is about"));
    v("given", &inquiry::given, text("the numbers that the family asks for, by name"));
    v("readings", &inquiry::readings, text("by test, in the order of reading: a number, a reading, a word, or a list of these; one in a list that supersedes takes the place of the one before it"));
    v("standing", &inquiry::standing, text("conditions that stood before the first reading, such as isolated"));
  }
};
/// One calculation of the catalogue on what was read here: a check or a model becomes findings, other results stand beside them.
struct calculation {
  MAKEGOOD_DOCUMENT_STRUCTURE;
  std::string id, name, about, call;
  document::object inputs;
  template <class V>
  static void fields(V&& v) {
    v("id", &calculation::id, text("name by which other parts refer to it").must());
    v("name", &calculation::name, text("what people call the thing"));
    v("about", &calculation::about, text("id of the part of the visit that it is about"));
    v("call", &calculation::call, text("the check, model or formula, as in air.check_overrun").must());
    v("inputs", &calculation::inputs, text("its arguments by name; a reading may name an instrument of the visit"));
  }
};
/// Something seen by eye.
struct seen_by_eye {
  MAKEGOOD_DOCUMENT_STRUCTURE;
  std::string id, name, about, kind, note;
  template <class V>
  static void fields(V&& v) {
    v("id", &seen_by_eye::id, text("name by which other parts refer to it").must());
    v("name", &seen_by_eye::name, text("where it is, or what people call it"));
    v("about", &seen_by_eye::about, text("id of the part of the visit that it is about"));
    v("kind", &seen_by_eye::kind, text("what was seen: live_parts_within_reach, ...").must());
    v("note", &seen_by_eye::note, text("anything else"));
  }
};
/// What was put right today. The part itself has the readings as they are now; those before stand here.
struct put_right {
  MAKEGOOD_DOCUMENT_STRUCTURE;
  std::string id, about, what, time, work, note;
  double minutes = 0.0;
  document::object before;
  std::vector<std::string> ends;
  template <class V>
  static void fields(V&& v) {
    static constexpr unit_t minute = unit::detail::si("min", 0, 0, 1, 0, 0, 60);
    v("id", &put_right::id, text("name by which other parts refer to it").must());
    v("about", &put_right::about, text("id of the part that was put right"));
    v("what", &put_right::what, text("what was done, in a sentence").must());
    v("minutes", &put_right::minutes, number("time that it took", minute, between(0, 1440), {1, 240}));
    v("time", &put_right::time, text("when it was done"));
    v("before", &put_right::before, text("fields of that part as they were before"));
    v("ends", &put_right::ends, text("ids of the observations that are no more"));
    v("work", &put_right::work, text("kind of work, as the rules on notification see it: like_for_like_replacement, ..."));
    v("note", &put_right::note, text("anything else"));
  }
};
struct material {
  MAKEGOOD_DOCUMENT_STRUCTURE;
  std::string name, cost;
  double quantity = 1.0;
  template <class V>
  static void fields(V&& v) {
    v("name", &material::name, text("what it is, by its electrical parameters").must());
    v("cost", &material::cost, text("cost of one, as a text in major units: \"12.50\"").must());
    v("quantity", &material::quantity, number("how many", unit::one, positive_to(10000), {1, 20}));
  }
};
/// Something that can be done about a finding, with its time and materials.
struct offered_work {
  MAKEGOOD_DOCUMENT_STRUCTURE;
  std::string id, about, title, act = "repair", access, leaves, kind;
  double minutes = 0.0;
  std::optional<double> minutes_low, minutes_high;
  std::vector<material> materials;
  std::vector<std::string> cures;
  bool chosen = false;
  template <class V>
  static void fields(V&& v) {
    static constexpr unit_t minute = unit::detail::si("min", 0, 0, 1, 0, 0, 60);
    static constexpr std::string_view acts[] = {"repair", "replace", "work_around", "isolate", "improve", "decline"};
    v("id", &offered_work::id, text("name by which other parts refer to it").must());
    v("about", &offered_work::about, text("id of the part, inquiry or observation that it is for").must());
    v("title", &offered_work::title, text("what is done, in a few words").must());
    v("act", &offered_work::act, words("what kind of answer it is", acts));
    v("minutes", &offered_work::minutes, number("its likely time", minute, between(0, 14400), {5, 600}).must());
    v("minutes_low", &offered_work::minutes_low, number("its least time", minute, between(0, 14400), {5, 600}));
    v("minutes_high", &offered_work::minutes_high, number("its greatest time", minute, between(0, 14400), {5, 600}));
    v("access", &offered_work::access, text("what is opened once for several works: floor, ceiling, board"));
    v("materials", &offered_work::materials, text("what it takes"));
    v("cures", &offered_work::cures, text("hypotheses of the inquiry that it puts right; left out: all of them"));
    v("leaves", &offered_work::leaves, text("what it leaves open"));
    v("work", &offered_work::kind, text("kind of work, as the rules on notification see it: new_circuit, ..."));
    v("chosen", &offered_work::chosen, text("true: the client has chosen it, it goes into the quote"));
  }
};
/// Prices as exact texts in major units ("48.00").
struct prices {
  MAKEGOOD_DOCUMENT_STRUCTURE;
  std::string currency = "GBP", rate_per_h, call_out, markup_percent, travel_miles, rate_per_mile, travel_h, rounding;
  document::object vat;
  bool registered = true;
  template <class V>
  static void fields(V&& v) {
    v("currency", &prices::currency, text("code of ISO 4217"));
    v("rate_per_h", &prices::rate_per_h, text("price of an hour").must());
    v("call_out", &prices::call_out, text("price of coming at all"));
    v("markup_percent", &prices::markup_percent, text("on the cost of materials"));
    v("travel_miles", &prices::travel_miles, text("there and back"));
    v("rate_per_mile", &prices::rate_per_mile, text("price of a mile"));
    v("travel_h", &prices::travel_h, text("hours of travel, there and back"));
    v("vat", &prices::vat, text("rates by name, such as {\"standard\": \"20\"}"));
    v("registered", &prices::registered, text("false: no tax is charged or shown"));
    v("rounding", &prices::rounding, text("named rule of rounding of the tax, as in price.quote"));
  }
};
struct timing {
  MAKEGOOD_DOCUMENT_STRUCTURE;
  std::optional<double> available_min;
  double used_min = 0.0, access_min = 0.0, isolating_min = 0.0;
  template <class V>
  static void fields(V&& v) {
    static constexpr unit_t minute = unit::detail::si("min", 0, 0, 1, 0, 0, 60);
    v("available_min", &timing::available_min, number("time of the whole visit", minute, between(0, 1440), {30, 480}));
    v("access_min", &timing::access_min, number("opening and closing a place, once for all works in it; 0: it is in the minutes of each work", minute, between(0, 480), {2, 60}));
    v("isolating_min", &timing::isolating_min, number("isolating a circuit and switching it on again, once for all works on it; 0: likewise", minute, between(0, 120), {2, 20}));
    v("used_min", &timing::used_min, number("time used up to now", minute, between(0, 1440), {0, 480}));
  }
};
struct visit {
  MAKEGOOD_DOCUMENT_STRUCTURE;
  std::string format, title, place, date, note;
  bool invented = false;
  supply incoming;
  std::vector<instrument> instruments;
  std::vector<room> rooms;
  std::vector<circuit> circuits;
  std::vector<appliance> appliances;
  std::vector<sensor> sensors;
  std::vector<fan> fans;
  std::vector<inquiry> inquiries;
  std::vector<calculation> calculations;
  std::vector<seen_by_eye> observations;
  std::vector<put_right> mended;
  std::vector<offered_work> works;
  std::optional<prices> price;
  std::optional<timing> time;
  bool dwelling = true;
  template <class V>
  static void fields(V&& v) {
    static constexpr std::string_view formats[] = {"makegood-visit-1"};
    v("format", &visit::format, words("version of this form of document", formats).must());
    v("title", &visit::title, text("what the visit is about").must());
    v("place", &visit::place, text("where"));
    v("date", &visit::date, text("when"));
    v("invented", &visit::invented, text("true for demonstrations and tests"));
    v("note", &visit::note, text("anything else"));
    v("supply", &visit::incoming, text("supply and earthing").must());
    v("instruments", &visit::instruments, text("the instruments used"));
    v("rooms", &visit::rooms, text("rooms"));
    v("circuits", &visit::circuits, text("circuits"));
    v("appliances", &visit::appliances, text("appliances with heating elements"));
    v("sensors", &visit::sensors, text("temperature sensors"));
    v("fans", &visit::fans, text("extract fans with their ducts"));
    v("inquiries", &visit::inquiries, text("things that do not work, with the readings taken on them"));
    v("calculations", &visit::calculations, text("any checks, models and formulas of the catalogue, on what was read here"));
    v("observations", &visit::observations, text("what was seen by eye"));
    v("put_right", &visit::mended, text("what was put right today, with the readings before"));
    v("works", &visit::works, text("what can be done, with time and materials"));
    v("prices", &visit::price, text("what an hour, a mile and materials cost"));
    v("time", &visit::time, text("the time there is"));
    v("dwelling", &visit::dwelling, text("false: not a dwelling, as the rules on lighting circuits see it"));
  }
};

/// Reads a document; throws document_error with all problems at once.
visit read_visit(const document::value& d);
/// The visit as it was found: the fields that were put right have their values before. Throws document_error where they do not fit.
visit as_found(const visit& v);
/// A part of a visit by its id: "circuits[2]"; "" where there is none.
std::string path_of(const visit& v, std::string_view id);
/// JSON Schema of a visit.
document::value visit_schema();

}  // namespace job
}  // namespace v1
}  // namespace makegood
