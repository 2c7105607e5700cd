// SPDX-License-Identifier: MIT
// Models of the subject electrical: where a fault lies along a cable.
#include <makegood/electrical/locating.hpp>
#include <cmath>
#include <optional>
#include "subjects.hpp"

namespace makegood::subjects {
namespace {
using namespace makegood::electrical;
using document::array;
using document::object;

std::string in_percent_text(double share) { return number_text(std::round(1000.0 * share) / 10.0) + " %"; }
std::string metres_text(double x) { return number_text(std::round(100.0 * x) / 100.0) + " m"; }

// ---- parallel_insulation ----------------------------------------------------------------------------------------------

constexpr model_argument parallel_arguments[] = {
    {"resistances_mohm", "readings", "insulation resistance of each part in MΩ, the others taken off; over range: {\"above\": 500}"},
    {"names", "texts", "name of each part, in the same order; left out: \"part 1\" and so on", true},
    {"limit_mohm", "number", "least insulation resistance of a circuit; left out: nothing is judged", true}};

document::value run_parallel(const object& inputs, const rulebook&) {
  constexpr std::string_view who = "parallel_insulation";
  const fields in(who, inputs);
  in.only("resistances_mohm", "names", "limit_mohm");
  const auto* list_ = in.need("resistances_mohm").as<array>();
  if (!list_) throw range_error("parallel_insulation: \"resistances_mohm\" must be a list of readings in MΩ");
  std::vector<insulation_part> parts;
  for (std::size_t i = 0; i < list_->size(); ++i) {
    const reading r = reading_from((*list_)[i]);
    if (r.is != reading::state::value && r.is != reading::state::above)
      throw range_error("parallel_insulation: resistances_mohm[" + std::to_string(i) + "] must be a number or {\"above\": x}; leave out what was not measured");
    parts.push_back({"part " + std::to_string(i + 1), r.number, r.is == reading::state::above});
  }
  if (in.has("names")) {
    const auto* names = in.need("names").as<array>();
    if (!names || names->size() != parts.size()) throw range_error("parallel_insulation: \"names\" must be a list of texts, one for each reading");
    for (std::size_t i = 0; i < parts.size(); ++i) {
      const auto* name = (*names)[i].as<std::string>();
      if (!name || name->empty()) throw range_error("parallel_insulation: names[" + std::to_string(i) + "] must be a text");
      parts[i].name = *name;
    }
  }
  const double limit = in.has("limit_mohm") ? in.number("limit_mohm") : no_number;
  if (in.has("limit_mohm") && is_nan(limit)) throw range_error("parallel_insulation: \"limit_mohm\" is not a number");
  const auto r = parallel_insulation(parts, limit);

  const auto joined = [&](const std::vector<std::size_t>& some) {
    std::string text;
    for (const auto i : some) text += (text.empty() ? "" : ", ") + parts[i].name;
    return text;
  };
  array shares, text, failing, groups;
  bool over_range = false;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    over_range = over_range || parts[i].above;
    shares.push_back(
        object{{"name", parts[i].name}, {"resistance_mohm", parts[i].resistance_mohm}, {"over_range", parts[i].above}, {"share_ratio", r.shares[i]}});
  }
  const std::string total = (over_range ? "at least " : "") + quantity_text(r.total_mohm, "MΩ", 4);
  text.push_back("All together: " + total + ".");
  const auto& lead = parts[r.dominant];
  if (lead.above) text.push_back("Every part is over range: none of them can be named as the one that leaks.");
  else text.push_back(lead.name + " (" + quantity_text(lead.resistance_mohm, "MΩ", 4) + ") has " + in_percent_text(r.shares[r.dominant]) + " of the leakage" +
                      (over_range ? ", or more, since parts over range leak less than they are counted for." : "."));
  std::string outcome = "not judged";
  if (r.judged) {
    const std::string least = quantity_text(limit, "MΩ", 4);
    outcome = r.whole_passes ? "pass" : r.whole_fails ? "fail" : "undecided";
    if (r.whole_passes) text.push_back("The whole keeps the limit of " + least + ".");
    else if (r.whole_fails) text.push_back("The whole is below the limit of " + least + ".");
    else text.push_back("Whether the whole keeps the limit of " + least + " depends on the parts over range: read them on a higher range.");
    if (!r.failing.empty()) {
      for (const auto i : r.failing) failing.push_back(parts[i].name);
      text.push_back("Splitting does not help: " + joined(r.failing) + (r.failing.size() == 1 ? " is" : " are") + " not shown to keep the limit alone.");
    } else if (r.splitting_helps) {
      for (const auto& g : r.groups) {
        array names;
        double leak = 0.0;
        for (const auto i : g) names.push_back(parts[i].name), leak += 1.0 / parts[i].resistance_mohm;
        groups.push_back(object{{"names", names}, {"resistance_mohm", 1.0 / leak}});
      }
      std::string way;
      for (const auto& g : r.groups) way += (way.empty() ? "" : "; ") + joined(g);
      text.push_back("No part is below the limit alone: split into " + std::to_string(r.groups.size()) + " circuits" +
                     (r.fewest_proved ? "" : " (perhaps fewer)") + " each would keep it (" + way + ").");
      text.push_back(
          "Splitting mends nothing: it shows whether the sum of many sound parts or one poor part is the cause. Trace a part that reads far below its like, "
          "and one that has fallen since the last test.");
    }
  }
  text.push_back(
      "Dead and isolated, proved dead before and after; electronics, controllers, sensors, mirrors and neon indicators taken off: they read low and may be "
      "damaged.");
  return object{{"total_mohm", r.total_mohm},
                {"total_at_most_mohm", document::number_or_null(r.total_at_most_mohm)},
                {"outcome", outcome},
                {"dominant", lead.above ? document::value(nullptr) : document::value(lead.name)},
                {"dominant_share_ratio", lead.above ? document::value(nullptr) : document::value(r.shares[r.dominant])},
                {"parts", shares},
                {"failing_alone", failing},
                {"splitting_helps", r.splitting_helps},
                {"circuits_count", r.groups.size()},
                {"circuits", groups},
                {"text", text}};
}
constexpr model parallel_insulation_model{
    {"parallel_insulation",
     "Insulation resistance of parts that are connected together: the whole, each part's share of the leakage, and whether splitting the circuit would let "
     "every part keep a limit that the whole fails.",
     parallel_arguments, leakage_source, run_parallel, nullptr}};

// ---- locate_fault -----------------------------------------------------------------------------------------------------

constexpr std::string_view locate = "locate_fault";

/// What an argument of a method is called in the list of sources.
struct quantity_word {
  std::string_view name, text;
  reads kind;
};
constexpr quantity_word quantity_words[] = {
    {"length_m", "length", reads::length},
    {"velocity_factor", "velocity factor", reads::nothing},
    {"core_mohm_per_m", "resistance per metre", reads::nothing},
    {"loop_mohm_per_m", "resistance per metre", reads::nothing},
    {"faulty_mohm_per_m", "resistance per metre of the faulty core", reads::nothing},
    {"return_mohm_per_m", "resistance per metre of the sound core", reads::nothing},
    {"temperature_c", "temperature", reads::temperature},
    {"alpha_per_k", "temperature coefficient", reads::nothing},
    {"sound_arm_ohm", "arm beside the sound core", reads::resistance},
    {"faulty_arm_ohm", "arm beside the faulty core", reads::resistance},
    {"contact_ohm", "contact resistance", reads::nothing},
    {"link_ohm", "link at the far end", reads::nothing},
    {"fault_mohm", "insulation of the fault", reads::insulation},
    {"rest_mohm", "insulation of the rest", reads::insulation},
    {"earth_reading_ohm", "earth reading", reads::resistance},
    {"loop_reading_ohm", "loop reading", reads::resistance},
    {"lead_ohm", "leads and contacts", reads::nothing},
    {"fault_ohm", "resistance of the fault itself", reads::nothing},
    {"near_nf", "capacitance from the near end", reads::nothing},
    {"far_nf", "capacitance from the far end", reads::nothing},
    {"broken_nf", "capacitance of the broken core", reads::nothing},
    {"sound_nf", "capacitance of the sound core", reads::nothing},
    {"near_reading_ohm", "reading from the near end", reads::resistance},
    {"far_reading_ohm", "reading from the far end", reads::resistance},
    {"round_trip_ns", "time of the reflection", reads::nothing}};
const quantity_word& word_of(std::string_view name) {
  for (const auto& w : quantity_words)
    if (w.name == name) return w;
  return quantity_words[0];
}

/// A quantity of a document: a number, which has no doubt; {"value": x} with "standard_uncertainty" or "limit" (rectangular), in the unit
/// of the value, or "limit_percent" of it, and "source", the name by which several numbers share the error; {"value": x, "sources":
/// {name: standard uncertainty}}; or a reading with "instrument" and "accuracy".
measured quantity_from(const document::value& v, const std::string& where, std::string_view name, const std::string& source) {
  const std::string at = std::string(locate) + ", " + where + ", " + std::string(name) + ": ";
  constexpr double root3 = 1.7320508075688772;
  if (const auto* x = v.as<double>()) {
    if (!is_finite(*x)) throw range_error(at + "not a number: leave a reading that was not taken out");
    return measured(*x);
  }
  const auto* o = v.as<object>();
  if (!o) throw range_error(at + "a number or an object with a \"value\", not " + std::string(document::type_name(v)));
  const auto* value = o->find("value");
  const double* x = value ? value->as<double>() : nullptr;
  if (!x || !is_finite(*x)) throw range_error(at + "an object needs a \"value\", a number");
  const std::string who = at.substr(0, at.size() - 2);
  const fields in(who, *o);
  if (!in.has("sources") && (in.has("instrument") || in.has("accuracy"))) {
    in.only("value", "instrument", "accuracy", "circuit_state", "time", "supersedes", "test_voltage_v");
    reading r = reading_from(v);
    r.label = source;
    return to_measured(r, word_of(name).kind, source);
  }
  measured m(*x);
  const auto size_of = [&](std::string_view field) {
    const double u = in.number(field);
    if (!(u >= 0.0) || !is_finite(u)) throw range_error(at + "\"" + std::string(field) + "\" must be 0 or more");
    return u;
  };
  if (in.has("sources")) {
    in.only("value", "sources", "instrument", "accuracy");  // the last two: a Measured, whose sources say it all
    const auto* all = in.need("sources").as<object>();
    if (!all) throw range_error(at + "\"sources\" must be an object: a name and a standard uncertainty each");
    for (const auto& [key, u] : all->fields) {
      const auto* size = u.as<double>();
      if (!size || !is_finite(*size)) throw range_error(at + "source \"" + key + "\" must be a number, a standard uncertainty");
      m.add(key, *size);
    }
    return m;
  }
  in.only("value", "standard_uncertainty", "limit", "limit_percent", "source", "degrees_of_freedom");
  const int given = in.has("standard_uncertainty") + in.has("limit") + in.has("limit_percent");
  if (given > 1) throw range_error(at + "one of \"standard_uncertainty\", \"limit\" and \"limit_percent\"");
  double u = 0.0, dof = without_end;
  if (in.has("standard_uncertainty")) u = size_of("standard_uncertainty");
  if (in.has("limit")) u = size_of("limit") / root3;
  if (in.has("limit_percent")) u = size_of("limit_percent") / 100.0 * std::fabs(*x) / root3;
  if (in.has("degrees_of_freedom")) {
    dof = in.number("degrees_of_freedom");
    if (!(dof >= 1.0)) throw range_error(at + "\"degrees_of_freedom\" must be 1 or more");
  }
  if (u > 0.0) m.add(in.has("source") ? in.text("source") : source, u, dof);
  return m;
}

/// The cable, and one measurement on it: what the measurement does not say, the cable does.
class measurement_fields {
 public:
  measurement_fields(const object& cable, const object& own, std::string label) : cable_(cable), own_(own), label_(std::move(label)) {}

  std::optional<measured> find(std::string_view name) const {
    const std::string text(word_of(name).text);
    if (const auto* v = own_.find(name); v && !v->is_null()) return quantity_from(*v, "\"" + label_ + "\"", name, label_ + ", " + text);
    if (const auto* v = cable_.find(name); v && !v->is_null()) return quantity_from(*v, "cable", name, "cable, " + text);
    return std::nullopt;
  }
  measured need(std::string_view name) const {
    const auto found = find(name);
    if (!found) throw range_error(std::string(locate) + ": \"" + label_ + "\" needs \"" + std::string(name) + "\", in the measurement or in the cable");
    return *found;
  }
  measured or_nothing(std::string_view name) const { return find(name).value_or(measured(0.0)); }
  /// The resistance of a metre, brought from 20 °C to the temperature of the cable where that is given.
  std::optional<measured> find_per_metre(std::string_view name) const {
    auto r = find(name);
    if (!r) return r;
    const auto t = find("temperature_c");
    if (!t) return r;
    return resistance_at_temperature(*r, *t, find("alpha_per_k").value_or(measured(0.00393)));
  }
  measured per_metre(std::string_view name) const {
    const auto found = find_per_metre(name);
    if (!found) throw range_error(std::string(locate) + ": \"" + label_ + "\" needs \"" + std::string(name) + "\", in the measurement or in the cable");
    return *found;
  }
  /// Stated, or from the reflection of the far end of a piece of known length.
  measured velocity_factor() const {
    for (const auto* o : {&own_, &cable_}) {
      const auto* v = o->find("calibration");
      if (!v || v->is_null()) continue;
      const auto* c = v->as<object>();
      if (!c) throw range_error(std::string(locate) + ": \"calibration\" must be an object with \"length_m\" and \"round_trip_ns\"");
      const std::string where = o == &own_ ? "\"" + label_ + "\", calibration" : std::string("cable, calibration"),
                        prefix = o == &own_ ? label_ + ", calibration" : "calibration";
      const std::string who = std::string(locate) + ", " + where;
      const fields in(who, *c);
      in.only("length_m", "round_trip_ns");
      return velocity_factor_from_length(quantity_from(in.need("length_m"), where, "length_m", prefix + ", length"),
                                         quantity_from(in.need("round_trip_ns"), where, "round_trip_ns", prefix + ", time"));
    }
    return need("velocity_factor");
  }
  bridge_contacts contacts() const { return {or_nothing("contact_ohm"), or_nothing("link_ohm")}; }

 private:
  const object &cable_, &own_;
  std::string label_;
};

constexpr std::string_view methods_text =
    "\"murray\" (sound_arm_ohm, faulty_arm_ohm; contact_ohm and link_ohm with core_mohm_per_m), \"murray_element\" (the same), \"murray_unequal\" (the same "
    "with faulty_mohm_per_m, return_mohm_per_m), \"varley\" "
    "(earth_reading_ohm, loop_reading_ohm, lead_ohm), \"capacitance\" (near_nf, far_nf), \"capacitance_sound_core\" (broken_nf, sound_nf), \"resistance\" "
    "(loop_reading_ohm, "
    "lead_ohm, fault_ohm), \"resistance_both_ends\" (near_reading_ohm, far_reading_ohm) or \"reflection\" (round_trip_ns)";

fault_measurement measurement_from(const object& cable, const object& own, std::size_t index) {
  const std::string who = std::string(locate) + ", measurements[" + std::to_string(index) + "]";
  const fields in(who, own);
  const std::string& method = in.text("method");
  std::string label = in.has("label") ? in.text("label") : method;
  const measurement_fields f(cable, own, label);
  fault_measurement m;
  if (method == "murray" || method == "murray_element" || method == "murray_unequal") {
    const auto contacts = f.contacts();
    const bool spoiled =
        contacts.contact_ohm.value != 0.0 || !contacts.contact_ohm.parts.empty() || contacts.link_ohm.value != 0.0 || !contacts.link_ohm.parts.empty();
    if (method != "murray_unequal") {
      in.only("method", "label", "from", "sound_arm_ohm", "faulty_arm_ohm", "length_m", "core_mohm_per_m", "contact_ohm", "fault_mohm", "rest_mohm", "link_ohm",
              "temperature_c", "alpha_per_k");
      const auto per_metre = spoiled ? f.per_metre("core_mohm_per_m") : measured(1.0);
      m = (method == "murray" ? by_murray : by_murray_element)(label, f.need("sound_arm_ohm"), f.need("faulty_arm_ohm"), f.need("length_m"), per_metre,
                                                               contacts);
    } else {
      in.only("method", "label", "from", "sound_arm_ohm", "faulty_arm_ohm", "length_m", "faulty_mohm_per_m", "return_mohm_per_m", "contact_ohm", "fault_mohm",
              "rest_mohm", "link_ohm", "temperature_c", "alpha_per_k");
      m = by_murray_unequal(label, f.need("sound_arm_ohm"), f.need("faulty_arm_ohm"), f.need("length_m"), f.per_metre("faulty_mohm_per_m"),
                            f.per_metre("return_mohm_per_m"), contacts);
    }
  } else if (method == "varley") {
    in.only("method", "label", "from", "earth_reading_ohm", "loop_reading_ohm", "length_m", "lead_ohm", "fault_mohm", "rest_mohm");
    m = by_varley(label, f.need("earth_reading_ohm"), f.need("loop_reading_ohm"), f.need("length_m"), f.or_nothing("lead_ohm"));
  } else if (method == "capacitance") {
    in.only("method", "label", "from", "near_nf", "far_nf", "length_m");
    m = by_capacitance(label, f.need("near_nf"), f.need("far_nf"), f.need("length_m"));
  } else if (method == "capacitance_sound_core") {
    in.only("method", "label", "from", "broken_nf", "sound_nf", "length_m");
    m = by_capacitance_sound_core(label, f.need("broken_nf"), f.need("sound_nf"), f.need("length_m"));
  } else if (method == "resistance") {
    in.only("method", "label", "from", "loop_reading_ohm", "loop_mohm_per_m", "lead_ohm", "fault_ohm", "length_m", "temperature_c", "alpha_per_k");
    m = by_resistance(label, f.need("loop_reading_ohm"), f.per_metre("loop_mohm_per_m"), f.or_nothing("lead_ohm"), f.or_nothing("fault_ohm"));
  } else if (method == "resistance_both_ends") {
    in.only("method", "label", "from", "near_reading_ohm", "far_reading_ohm", "length_m", "loop_mohm_per_m", "temperature_c", "alpha_per_k");
    m = by_resistance_both_ends(label, f.need("near_reading_ohm"), f.need("far_reading_ohm"), f.need("length_m"), f.per_metre("loop_mohm_per_m"));
  } else if (method == "reflection") {
    in.only("method", "label", "from", "round_trip_ns", "velocity_factor", "calibration", "length_m");
    m = by_reflection(label, f.need("round_trip_ns"), f.velocity_factor());
  } else {
    throw range_error("locate_fault: method \"" + method + "\" is not one of " + std::string(methods_text));
  }
  if (in.has("fault_mohm") || in.has("rest_mohm")) {
    const auto length = f.need("length_m");
    double centre = 1.0;  // of the rest of the loop, in lengths of the faulty core
    if (method == "murray_element") centre = 0.5;
    if (method == "murray_unequal") centre = 0.75 + 0.25 * f.per_metre("return_mohm_per_m").value / f.per_metre("faulty_mohm_per_m").value;
    m = without_leakage(std::move(m), f.need("fault_mohm"), f.need("rest_mohm"), centre * length);
  }
  if (in.has("from")) {
    const std::string& from = in.text("from");
    if (from == "far") m = from_far_end(std::move(m), f.need("length_m"));
    else if (from != "near") throw range_error("locate_fault: \"" + label + "\": \"from\" is \"near\" or \"far\"");
  }
  return m;
}

constexpr model_argument locate_arguments[] = {
    {"cable", "object",
     "what all measurements share: length_m, velocity_factor or calibration (length_m and round_trip_ns of a sound piece), core_mohm_per_m, loop_mohm_per_m "
     "(both conductors), "
     "faulty_mohm_per_m, return_mohm_per_m, temperature_c (then the resistances are those at 20 °C), alpha_per_k. Each is a number without doubt, {\"value\": "
     "x} with "
     "\"standard_uncertainty\", \"limit\" or \"limit_percent\" and \"source\", {\"value\": x, \"sources\": {name: standard uncertainty}}, or a reading with "
     "\"instrument\" and \"accuracy\""},
    {"measurements", "objects",
     "one each, with \"method\" and its readings: \"murray\" (sound_arm_ohm, faulty_arm_ohm; contact_ohm and link_ohm with core_mohm_per_m), "
     "\"murray_element\" (the same, for a "
     "heating element or core with both ends at hand), \"murray_unequal\" (the same with "
     "faulty_mohm_per_m, return_mohm_per_m), \"varley\" (earth_reading_ohm, loop_reading_ohm, lead_ohm), \"capacitance\" (near_nf, far_nf), "
     "\"capacitance_sound_core\" (broken_nf, "
     "sound_nf), \"resistance\" (loop_reading_ohm, lead_ohm, fault_ohm), \"resistance_both_ends\" (near_reading_ohm, far_reading_ohm), \"reflection\" "
     "(round_trip_ns); \"label\"; \"from\": \"far\". A bridge may have fault_mohm and "
     "rest_mohm, the insulation resistances of the fault and of the rest of the loop measured apart"}};

document::value run_locate(const object& inputs, const rulebook&) {
  const fields in(locate, inputs);
  in.only("cable", "measurements");
  static const object no_cable;
  const object* cable = in.has("cable") ? in.need("cable").as<object>() : &no_cable;
  if (!cable) throw range_error("locate_fault: \"cable\" must be an object");
  fields("locate_fault, cable", *cable)
      .only("length_m", "velocity_factor", "calibration", "core_mohm_per_m", "loop_mohm_per_m", "faulty_mohm_per_m", "return_mohm_per_m", "temperature_c",
            "alpha_per_k");
  const auto* list_ = in.need("measurements").as<array>();
  if (!list_ || list_->empty()) throw range_error("locate_fault: \"measurements\" must be a list of one measurement or more");
  std::vector<fault_measurement> all;
  for (std::size_t i = 0; i < list_->size(); ++i) {
    const auto* own = (*list_)[i].as<object>();
    if (!own) throw range_error("locate_fault: measurements[" + std::to_string(i) + "] must be an object with a \"method\"");
    all.push_back(measurement_from(*cable, *own, i));
    // two of one name would look like one reading
    for (std::size_t k = 0; k + 1 < all.size(); ++k)
      if (all[k].label == all.back().label)
        throw range_error("locate_fault: two measurements are called \"" + all[k].label + "\": give each a \"label\" of its own");
  }
  double length = no_number;
  if (const auto* v = cable->find("length_m"); v && !v->is_null()) length = quantity_from(*v, "cable", "length_m", "cable, length").value;
  const auto place = locate_fault(std::move(all), length);
  if (is_nan(length))
    for (const auto& m : place.measurements)
      if (is_nan(length)) length = m.length_m;

  const auto shares_document = [](const measured& m) {
    array list;
    for (const auto& s : shares_of(m)) list.push_back(object{{"source", s.source}, {"effect_m", s.effect_m}, {"share_ratio", s.share}});
    return list;
  };
  const auto is_suspect = [&](std::size_t i) {
    for (const auto s : place.suspects)
      if (s == i) return true;
    return false;
  };
  array methods, text, search, suspects;
  for (std::size_t i = 0; i < place.measurements.size(); ++i) {
    const auto& m = place.measurements[i];
    const double u = m.distance.standard_uncertainty(), half = m.distance.expanded_uncertainty(0.95);
    const auto shares = shares_of(m.distance);
    const double without = std::sqrt(u * u * (1.0 - shares.front().share));
    std::string line = m.label + ": " + metres_text(m.distance.value) + " ± " + metres_text(half) + " (95 %). Weakest link: " + shares.front().source + ", " +
                       in_percent_text(shares.front().share) + " of the variance";
    line += shares.size() == 1 ? "." : "; without it ± " + metres_text(without * half / u) + ".";
    const bool beyond = m.distance.value - half > length || m.distance.value + half < 0.0;
    if (beyond)
      line += " This place is not on the cable (0 to " + metres_text(length) + "): a wrong reading, swapped ends or arms, or a fault of another kind.";
    text.push_back(line);
    methods.push_back(object{{"label", m.label},
                             {"method", m.method},
                             {"distance_m", m.distance.value},
                             {"standard_uncertainty_m", u},
                             {"low_m", m.distance.value - half},
                             {"high_m", m.distance.value + half},
                             {"weakest_link", shares.front().source},
                             {"weakest_share_ratio", shares.front().share},
                             {"without_weakest_m", without},
                             {"shares", shares_document(m.distance)},
                             {"weight", place.all.weights[i]},
                             {"p_without", place.p_without.empty() ? document::value(nullptr) : document::value(place.p_without[i])},
                             {"suspect", is_suspect(i)},
                             {"on_the_cable", !beyond}});
  }
  const auto p_words = [](double p) { return p < 1e-4 ? std::string("p < 0.0001") : "p = " + number_text(p, 2); };
  const std::string test = "(χ² = " + number_text(place.all.chi_square, 3) + " with " + std::to_string(place.all.degrees_of_freedom) +
                           (place.all.degrees_of_freedom == 1 ? " degree" : " degrees") + " of freedom, " + p_words(place.all.p_value) + ")";
  std::string conclusion;
  if (place.measurements.size() == 1) {
    conclusion = "one method";
    text.push_back("One method alone: nothing confirms it. Take a second one of another kind before anything is opened.");
  } else if (place.consistent) {
    conclusion = "consistent";
    text.push_back("The methods agree " + test + ".");
  } else {
    std::string said = "The methods disagree by more than their doubts " + test + ": no average of all of them is offered. ";
    if (place.resolved) {
      conclusion = "one disagrees";
      const auto i = place.suspects[0];
      said += "\"" + place.measurements[i].label + "\" disagrees with the rest; without it they agree (" + p_words(place.p_without[i]) +
              "). Repeat it, or look for a second fault there.";
    } else if (place.suspects.empty()) {
      conclusion = "unresolved";
      said += place.measurements.size() == 2 ? "Two cannot say which of them is wrong: take a third of another kind."
                                             : "No single one explains it: at least two are wrong, a doubt is stated too small, or there are two faults.";
    } else {
      conclusion = "unresolved";
      said += "The odd one may be";
      for (std::size_t k = 0; k < place.suspects.size(); ++k)
        said += (k ? ", or \"" : " \"") + place.measurements[place.suspects[k]].label + "\" (the rest then agrees, " +
                p_words(place.p_without[place.suspects[k]]) + ")";
      said += ": one more measurement tells.";
    }
    text.push_back(said);
    for (const auto i : place.suspects) suspects.push_back(place.measurements[i].label);
  }
  for (const auto& s : place.search) {
    search.push_back(object{{"from_m", s.from_m}, {"to_m", s.to_m}, {"why", s.why}});
    text.push_back("Search from " + metres_text(s.from_m) + " to " + metres_text(s.to_m) + " along the cable: " + s.why + ".");
  }
  const auto any = [&](std::string_view part) {
    for (const auto& m : place.measurements)
      if (std::string_view(m.method).starts_with(part)) return true;
    return false;
  };
  const bool leak = any("murray") || any("varley"), cut = any("capacitance"), bridged = any("resistance");
  if (leak + cut + bridged > 1)
    text.push_back(std::string("These methods look for different faults (") + (leak ? "bridge: a leak to earth" : "") + (leak && (cut || bridged) ? "; " : "") +
                   (cut ? "capacitance: a break" : "") + (cut && bridged ? "; " : "") + (bridged ? "loop resistance: a short between two conductors" : "") +
                   "): they give one place only where one damage has done all of it.");
  bool leakage_left_in = false;
  for (const auto& v : *list_) leakage_left_in = leakage_left_in || !v.as<object>()->find("fault_mohm");
  if (leak && leakage_left_in)
    text.push_back(
        "A bridge finds the mean place of all leakage of its loop: unless the fault is far below the insulation of the rest, its place is drawn towards the "
        "middle of the loop. Give \"fault_mohm\" and \"rest_mohm\" to take that out.");
  text.push_back(
      "Metres are along the conductor, with its drops, loops and tails, not along the wall. Isolate, prove dead on all poles with a tester proved before and "
      "after, and open nothing on this "
      "figure alone: prove the place by a second reading from the other end or by a tone.");
  const bool placed = place.resolved;
  const auto& joint = place.used.distance;
  const double half = placed ? joint.expanded_uncertainty(0.95) : no_number;
  const auto number_if = [&](double x) { return placed ? document::number_or_null(x) : document::value(nullptr); };
  return object{
      {"distance_m", number_if(joint.value)},
      {"standard_uncertainty_m", number_if(joint.standard_uncertainty())},
      {"low_m", number_if(joint.value - half)},
      {"high_m", number_if(joint.value + half)},
      {"search_from_m", number_if(place.search[0].from_m)},
      {"search_to_m", number_if(place.search[0].to_m)},
      {"conclusion", conclusion},
      {"chi_square", place.all.chi_square},
      {"degrees_of_freedom", static_cast<double>(place.all.degrees_of_freedom)},
      {"p_value", place.all.p_value},
      {"disagrees", place.resolved && !place.suspects.empty() ? document::value(place.measurements[place.suspects[0]].label) : document::value(nullptr)},
      {"suspects", suspects},
      {"weakest_link", placed ? document::value(shares_of(joint).front().source) : document::value(nullptr)},
      {"shares", placed ? document::value(shares_document(joint)) : document::value(array{})},
      {"methods", methods},
      {"search", search},
      {"text", text}};
}
constexpr source gls_source{"generalised least squares with common errors", "weights from the inverse of the covariance; consistency by χ²", "derived"};
constexpr model locate_fault_model{{"locate_fault",
                                    "Where a fault lies along a cable by several methods: each with its doubt and its weakest link, one joint estimate with "
                                    "the errors they share, a test that names "
                                    "the method that disagrees, and where to search.",
                                    locate_arguments, gls_source, run_locate, nullptr}};

}  // namespace

void fault_location(std::vector<entry>& all) { append(all, "electrical", list<parallel_insulation_model, locate_fault_model>{}); }

}  // namespace makegood::subjects
