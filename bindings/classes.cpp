// SPDX-License-Identifier: MIT
// The classes: readings, numbers with doubt, rulebooks, verdicts.
#include <pybind11/stl.h>
#include <cstring>
#include <map>
#include "door.hpp"
#include <makegood/rules/all.hpp>

namespace py = pybind11;
using namespace pybind11::literals;

namespace makegood::python {

namespace {
document::value reading_document(const reading& r) {
  document::object o;
  if (r.has_number()) o.set(std::string(state_text(r.is)), r.number);
  else o.set("state", state_text(r.is));
  if (r.meter) o.set("instrument", to_document(*r.meter));
  else if (!r.instrument.empty()) o.set("instrument", r.instrument);
  if (r.statement) o.set("accuracy", to_document(*r.statement));
  if (!is_nan(r.test_voltage_v)) o.set("test_voltage_v", r.test_voltage_v);
  if (!r.circuit_state.empty()) o.set("circuit_state", r.circuit_state);
  if (!r.taken_at.empty()) o.set("time", r.taken_at);
  if (!r.supersedes.empty()) o.set("supersedes", r.supersedes);
  return o;
}
}  // namespace

namespace {
/// Text in UTF-8; half a surrogate pair, which Python and JSON can hold, is no text.
std::string text_from(py::handle h) {
  Py_ssize_t size = 0;
  const char* text = PyUnicode_AsUTF8AndSize(h.ptr(), &size);
  if (!text) {
    PyErr_Clear();
    throw document_error("", "holds half a character (a lone surrogate)");
  }
  return {text, static_cast<std::size_t>(size)};
}
/// One step inwards; a problem found there is given its path on the way out.
document::value inner(py::handle h, int depth, const std::string& step) {
  try {
    return from_python(h, depth + 1);
  } catch (const document_error& e) {
    auto problems = e.problems;
    for (auto& p : problems) p.path = step + (p.path.empty() || p.path[0] == '[' ? "" : ".") + p.path;
    throw document_error(problems);
  }
}
}  // namespace

document::value from_python(py::handle h, int depth) {
  if (depth > static_cast<int>(document::deepest)) throw document_error("", "is nested too deeply");
  if (h.is_none()) return nullptr;
  if (py::isinstance<py::bool_>(h)) return h.cast<bool>();
  if (py::isinstance<py::float_>(h)) return h.cast<double>();
  if (py::isinstance<py::int_>(h)) {
    const double x = PyLong_AsDouble(h.ptr());
    if (x == -1.0 && PyErr_Occurred()) {
      PyErr_Clear();
      return no_number;
    }
    return x;
  }
  if (py::isinstance<py::str>(h)) return text_from(h);
  const bool pairs = py::hasattr(h, "makegood_pairs");  // an object in which a name stands twice: the reader says where
  if (pairs || py::isinstance<py::dict>(h)) {
    document::object o;
    for (auto item : pairs ? py::reinterpret_borrow<py::object>(h) : py::object(h.attr("items")())) {
      const auto pair = py::reinterpret_borrow<py::sequence>(item);
      if (!py::isinstance<py::str>(pair[0])) throw document_error("", "the names of an object are texts");
      const std::string name = text_from(pair[0]);
      o.set(name, inner(pair[1], depth, name));
    }
    return o;
  }
  if (py::isinstance<py::list>(h) || py::isinstance<py::tuple>(h)) {
    document::array a;
    a.reserve(static_cast<std::size_t>(PySequence_Fast_GET_SIZE(h.ptr())));
    for (auto item : h) {
      if (PyFloat_CheckExact(item.ptr())) a.emplace_back(PyFloat_AS_DOUBLE(item.ptr()));  // columns are long
      else a.push_back(inner(item, depth, "[" + std::to_string(a.size()) + "]"));
    }
    return a;
  }
  if (py::isinstance<reading>(h)) return reading_document(h.cast<const reading&>());
  if (py::isinstance<decision_rule>(h)) return h.cast<const decision_rule&>().name();
  if (py::isinstance<accuracy>(h)) return to_document(h.cast<const accuracy&>());
  if (py::isinstance<instrument>(h)) return to_document(h.cast<const instrument&>());
  if (py::isinstance<measured>(h)) {
    const auto& m = h.cast<const measured&>();
    document::object sources;  // what two numbers share stays shared
    for (const auto& p : m.parts) sources.set(p.source, p.u);
    return document::object{
        {"value", m.value}, {"instrument", "stated"}, {"accuracy", document::object{{"standard_uncertainty", m.standard_uncertainty()}}}, {"sources", sources}};
  }
  if (std::string_view(Py_TYPE(h.ptr())->tp_name) == "numpy.ndarray") {  // a column of doubles, without an object for each; not its kin with masks
    Py_buffer view;
    if (PyObject_GetBuffer(h.ptr(), &view, PyBUF_FORMAT | PyBUF_STRIDES) == 0) {
      const bool column = view.ndim == 1 && view.itemsize == sizeof(double) && view.format && std::string_view(view.format) == "d";
      document::array a;
      if (column) {
        a.reserve(static_cast<std::size_t>(view.shape[0]));
        for (Py_ssize_t i = 0; i < view.shape[0]; ++i) {
          double x;
          std::memcpy(&x, static_cast<const char*>(view.buf) + i * view.strides[0], sizeof x);
          a.emplace_back(x);
        }
      }
      PyBuffer_Release(&view);
      if (column) return a;
    } else {
      PyErr_Clear();
    }
  }
  if (std::string_view(Py_TYPE(h.ptr())->tp_name) == "decimal.Decimal") return text_from(h.attr("__format__")("f"));  // exact: its digits
  if (py::hasattr(h, "tolist")) return from_python(h.attr("tolist")(), depth + 1);  // NumPy scalars and arrays
  throw py::type_error("a document holds None, bool, int, float, str, list and dict, not " + std::string(Py_TYPE(h.ptr())->tp_name));
}

py::object to_python(const document::value& v) {
  if (v.is_null()) return py::none();
  if (const auto* b = v.as<bool>()) return py::bool_(*b);
  if (const auto* x = v.as<double>()) return py::float_(*x);
  if (const auto* t = v.as<std::string>()) return py::str(*t);
  if (const auto* a = v.as<document::array>()) {
    py::list l(a->size());
    for (std::size_t i = 0; i < a->size(); ++i) PyList_SET_ITEM(l.ptr(), static_cast<Py_ssize_t>(i), to_python((*a)[i]).release().ptr());
    return l;
  }
  py::dict d;
  for (const auto& [name, item] : v.as<document::object>()->fields) {
    const auto* x = item.as<double>();
    const auto* list = item.as<document::array>();
    const bool refers = name == "finding" || name == "findings" || name == "settles" || name == "n";  // numbers of findings and steps
    if (x && (refers || name.ends_with("_minor"))) d[py::str(name)] = py::int_(static_cast<std::int64_t>(*x));  // or money in whole minor units
    else if (refers && list && !list->empty() && (*list)[0].as<double>()) {
      py::list numbers;
      for (const auto& one : *list) numbers.append(py::int_(static_cast<std::int64_t>(*one.as<double>())));
      d[py::str(name)] = numbers;
    }
    else d[py::str(name)] = to_python(item);
  }
  return d;
}

given given_from(py::handle h) {
  if (py::isinstance<measured>(h)) return h.cast<measured>();
  if (py::isinstance<reading>(h)) return h.cast<reading>();
  if (py::isinstance<py::str>(h)) return h.cast<std::string>();
  if (h.is_none()) return reading::not_measured();
  if (py::isinstance<py::bool_>(h) || PyComplex_Check(h.ptr()) || PyBytes_Check(h.ptr()))
    throw py::type_error("an argument of a check is a number, a Measured, a Reading or a text, not " + std::string(Py_TYPE(h.ptr())->tp_name));
  if (py::isinstance<py::dict>(h)) return reading_from(from_python(h));
  const double x = PyFloat_AsDouble(h.ptr());
  if (x == -1.0 && PyErr_Occurred()) throw py::error_already_set();
  return x;
}

rulebook rulebook_from(py::handle h) {
  if (h.is_none()) return {};
  if (PyUnicode_Check(h.ptr())) {
    // composed once: a check names its book with every call (under the interpreter's lock)
    static std::map<std::string, rulebook, std::less<>> composed;
    Py_ssize_t size = 0;
    const char* ids = PyUnicode_AsUTF8AndSize(h.ptr(), &size);
    if (!ids) throw py::error_already_set();
    const std::string_view key(ids, static_cast<std::size_t>(size));
    if (const auto at = composed.find(key); at != composed.end()) return at->second;
    const rulebook found = rules::find(key);
    if (composed.size() < 64) composed.emplace(key, found);
    return found;
  }
  if (py::isinstance<rulebook>(h)) return h.cast<rulebook>();
  throw py::type_error("rulebook is an id such as \"bs7671:2018+a2\" or a Rulebook, not " + std::string(Py_TYPE(h.ptr())->tp_name));
}

decision_rule decision_rule_from(py::handle h) {
  if (!h || h.is_none()) return {};
  if (PyUnicode_Check(h.ptr())) return decision_rule(h.cast<std::string>());
  if (py::isinstance<decision_rule>(h)) return h.cast<decision_rule>();
  throw py::type_error("rule is a name such as \"iso14253\" or \"jcgm106:0.99\", or a DecisionRule, not " + std::string(Py_TYPE(h.ptr())->tp_name));
}

namespace {
/// The instrument of a reading: a name, or an Instrument with its statements.
void set_instrument(reading& r, py::handle h) {
  if (py::isinstance<instrument>(h)) {
    r.meter = h.cast<std::shared_ptr<instrument>>();
    r.instrument = r.meter->id;
  } else if (PyUnicode_Check(h.ptr())) {
    r.instrument = h.cast<std::string>();
  } else {
    throw py::type_error("Reading: instrument is a name or an Instrument, not " + std::string(Py_TYPE(h.ptr())->tp_name));
  }
}
statement_basis basis_from(const std::string& word) {
  for (std::size_t i = 0; i < std::size(basis_names); ++i)
    if (word == basis_names[i]) return static_cast<statement_basis>(i);
  throw range_error("Accuracy: basis is one of \"stated\", \"operating_2019\", \"operating_error_limit\"; not \"" + word + "\"");
}
void set_circumstances(reading& r, double test_voltage_v, std::string circuit_state, std::string time, std::string supersedes) {
  if (!is_nan(test_voltage_v) && !(test_voltage_v > 0.0 && test_voltage_v <= 5000.0))
    throw range_error("Reading: test_voltage_v is " + number_text(test_voltage_v) + " V; it lies above 0 V and up to 5000 V");
  r.test_voltage_v = test_voltage_v;
  r.circuit_state = std::move(circuit_state);
  r.taken_at = std::move(time);
  r.supersedes = std::move(supersedes);
}
py::object number_or_none(double x) { return is_nan(x) ? py::object(py::none()) : py::object(py::float_(x)); }
comparator comparator_from(const std::string& t) {
  if (t == "<=" || t == "≤") return comparator::at_most;
  if (t == "<") return comparator::below;
  if (t == ">=" || t == "≥") return comparator::at_least;
  if (t == ">") return comparator::above;
  if (t == "within") return comparator::within;
  throw range_error("a comparator is one of <=, <, >=, >, within; not \"" + t + "\"");
}
}  // namespace

void add_classes(py::module_& m) {
  py::class_<measured>(m, "Measured", "A number with its named error sources; goes into every formula and check and comes out again.")
      .def(py::init([](double value, double u, std::string source, double dof) {
             if (is_nan(value)) throw range_error("Measured: value is not a number");
             if (!(u >= 0.0) || is_nan(u)) throw range_error("Measured: standard_uncertainty must be 0 or more");
             if (!(dof > 0.0)) throw range_error("Measured: dof must be above 0");
             return u > 0.0 ? measured(value, u, std::move(source), dof) : measured(value);
           }),
           "value"_a, "standard_uncertainty"_a, "source"_a = "stated", "dof"_a = without_end)
      .def_static("exact", [](double value) { return measured::exact(value); }, "value"_a, "A number without doubt, said by name.")
      .def_readonly("value", &measured::value)
      .def_property_readonly("standard_uncertainty", &measured::standard_uncertainty)
      .def_property_readonly("expanded_uncertainty", [](const measured& x) { return 2.0 * x.standard_uncertainty(); }, "k = 2")
      .def_property_readonly("sources", [](const measured& x) {
        py::dict d;
        for (const auto& p : x.parts) d[py::str(p.source)] = p.u;
        return d;
      })
      .def_readonly("assumed", &measured::assumed)
      .def_property_readonly("dof", &measured::effective_dof, "Effective degrees of freedom (Welch and Satterthwaite), not rounded.")
      .def("coverage_factor", &measured::coverage_factor, "probability"_a = 0.95, "Student's factor, with the effective degrees of freedom truncated.")
      .def("interval", [](const measured& x, double probability) {
             const double half = x.expanded_uncertainty(probability);
             return py::make_tuple(x.value - half, x.value + half);
           },
           "probability"_a = 0.95, "The coverage interval of the first order.")
      .def_property_readonly("_parts", [](const measured& x) {
        py::list l;
        for (const auto& p : x.parts) l.append(py::make_tuple(p.source, p.u, p.dof));
        return l;
      })
      .def_static("_of", [](double value, const std::vector<std::tuple<std::string, double, double>>& parts, bool assumed) {
        measured x(value);
        for (const auto& [source, u, dof] : parts)
          if (u != 0.0) x.add(source, u, dof);
        x.assumed = assumed;
        return x;
      })
      .def("__repr__", [](const measured& x) {
        return "Measured(" + number_text(x.value, 8) + ", standard_uncertainty=" + number_text(x.standard_uncertainty(), 3) + ")";
      });

  m.def("covariance", [](const measured& a, const measured& b) { return covariance(a, b); }, "a"_a, "b"_a, "The covariance of two numbers by the sources that they share.");
  m.def("correlation", [](const measured& a, const measured& b) { return correlation(a, b); }, "a"_a, "b"_a, "Between -1 and 1; NaN where one has no uncertainty.");
  m.def("measured_together", [](const std::vector<std::vector<double>>& readings, const std::string& name) { return measured_together(readings, name); },
        "readings"_a, "name"_a = "together",
        "The means of quantities that were read at the same times (a list of readings for each), correlated as the readings are.");
  m.def("measured_with_covariance", [](const std::vector<double>& values, const std::vector<std::vector<double>>& covariance, const std::string& name, double dof) {
          std::vector<double> flat;
          for (const auto& row : covariance) flat.insert(flat.end(), row.begin(), row.end());
          return measured_together(values, flat, name, dof);
        },
        "values"_a, "covariance"_a, "name"_a = "together", "dof"_a = without_end, "Numbers with a covariance between them, row by row.");
  m.def("coverage_factor", &student_factor, "probability"_a, "dof"_a = without_end, "The factor of Student's distribution (normal without end of freedom) on both sides.");

  py::class_<accuracy>(m, "Accuracy", "What is stated of one function of an instrument: limits of error, or U with its coverage factor.")
      .def(py::init([](double percent, double counts, double resolution, double limit, double u, double k, double range, double leads, double leads_u, bool nulled,
                       bool leads_left_in, bool common_offset, const std::string& basis) {
             for (double x : {percent, counts, resolution, limit, u, k, range, leads, leads_u})
               if (!(x >= 0.0) || is_nan(x)) throw range_error("Accuracy: every part must be 0 or more");
             accuracy a{percent, counts, resolution, limit, u, k, range, leads, leads_u, nulled, leads_left_in, common_offset, basis_from(basis)};
             return a;
           }),
           "percent"_a = 0.0, "counts"_a = 0.0, "resolution"_a = 0.0, "limit"_a = 0.0, "standard_uncertainty"_a = 0.0, "coverage_factor"_a = 0.0, "range"_a = 0.0,
           "leads_ohm"_a = 0.0, "leads_standard_uncertainty_ohm"_a = 0.0, "nulled"_a = true, "leads_left_in"_a = false, "common_offset"_a = false, "basis"_a = "stated")
      .def_static("operating", [](double percent, int edition) {
             if (!(percent >= 0.0 && percent <= 100.0)) throw range_error("Accuracy.operating: percent lies between 0 and 100");
             return operating_uncertainty(percent, edition);
           },
           "percent"_a, "edition"_a, "An operating uncertainty of IEC 61557 in per cent of the reading: edition 2019 and later u = B/2, before that cautiously u = B/√3.")
      .def_readonly("percent", &accuracy::percent)
      .def_readonly("counts", &accuracy::counts)
      .def_readonly("resolution", &accuracy::resolution)
      .def_readonly("limit", &accuracy::limit)
      .def_readonly("standard_uncertainty", &accuracy::standard_uncertainty)
      .def_readonly("coverage_factor", &accuracy::coverage_factor)
      .def_readonly("range", &accuracy::range)
      .def_readonly("leads_ohm", &accuracy::leads_ohm)
      .def_readonly("leads_standard_uncertainty_ohm", &accuracy::leads_standard_uncertainty_ohm)
      .def_readonly("nulled", &accuracy::nulled)
      .def_readonly("leads_left_in", &accuracy::leads_left_in)
      .def_readonly("common_offset", &accuracy::common_offset)
      .def_property_readonly("basis", [](const accuracy& a) { return basis_names[static_cast<std::size_t>(a.basis)]; });

  py::class_<instrument, std::shared_ptr<instrument>>(m, "Instrument", "An instrument: what is stated of each of its functions, range by range; a Reading names it.")
      .def(py::init([](std::string id, const py::dict& functions) {
             if (id.empty()) throw range_error("Instrument: an id is wanted");
             auto i = std::make_shared<instrument>();
             i->id = std::move(id);
             for (auto [name, stated] : functions) {
               const std::string word = py::str(name);
               const reads kind = reads_of(word);
               if (kind == reads::nothing) throw range_error("Instrument: \"" + word + "\" is not one of " + reads_text());
               const auto add = [&](py::handle one) {
                 if (!py::isinstance<accuracy>(one)) throw py::type_error("Instrument: " + word + ": an Accuracy, or a list of them for its ranges");
                 i->functions.push_back({kind, one.cast<accuracy>()});
               };
               if (py::isinstance<py::list>(stated) || py::isinstance<py::tuple>(stated))
                 for (auto one : stated) add(one);
               else add(stated);
             }
             return i;
           }),
           "id"_a, "functions"_a)
      .def_readonly("id", &instrument::id)
      .def("statement", [](const instrument& i, const std::string& kind, double number) -> std::optional<accuracy> {
             if (reads_of(kind) == reads::nothing) throw range_error("Instrument: \"" + kind + "\" is not one of " + reads_text());
             const accuracy* a = i.statement_for(reads_of(kind), number);
             return a ? std::optional<accuracy>(*a) : std::nullopt;
           },
           "reads"_a, "number"_a, "What is stated for a reading: that of the smallest range which reaches it; None: the worst case of the class.")
      .def("measured", [](const std::shared_ptr<instrument>& i, const std::string& kind, double number, const std::string& label) {
             const reads what = reads_of(kind);
             if (what == reads::nothing) throw range_error("Instrument: \"" + kind + "\" is not one of " + reads_text());
             if (!is_finite(number)) throw range_error("Instrument: a reading is a finite number");
             reading r = reading(number).with(i);
             r.label = label;
             return to_measured(r, what, "reading");
           },
           "reads"_a, "number"_a, "label"_a = "",
           "A reading as a number with its error sources, for formulas: the gain has one name for all readings of one function and range, the label makes the rest its own.")
      .def("to_dict", [](const instrument& i) { return to_python(to_document(i)); })
      .def("__repr__", [](const instrument& i) { return "Instrument(\"" + i.id + "\")"; });

  py::class_<decision_rule>(m, "DecisionRule", "When a value passes, fails, or is not proved either way; by name. decision_rules() lists them.")
      .def(py::init([](const std::string& name) { return decision_rule(name); }), "name"_a)
      .def_static("jcgm106", &decision_rule::jcgm106, "probability"_a, "Pass where the probability of conformity is at least this one, fail where that of non-conformity is.")
      .def_static("guard_band", &decision_rule::guard_band, "factor"_a, "Guard bands of w = factor U on both sides of the limit, U with k = 2.")
      .def_property_readonly("name", &decision_rule::name)
      .def_property_readonly("text", &decision_rule::text)
      .def_property_readonly("kind", [](const decision_rule& r) { return r.by_probability() ? "probability" : "guard band"; })
      .def_readonly("accept", &decision_rule::accept)
      .def_readonly("reject", &decision_rule::reject)
      .def_property_readonly("source", [](const decision_rule& r) { return std::string(r.method->from.title) + ", " + std::string(r.method->from.clause); })
      .def_property_readonly("grade", [](const decision_rule& r) { return r.method->from.grade; })
      .def("__repr__", [](const decision_rule& r) { return "DecisionRule(\"" + r.name() + "\")"; });
  m.def("decision_rules", [] {
    py::list l;
    for (const auto& d : decision_methods)
      l.append(py::dict("name"_a = d.name, "kind"_a = d.by_probability ? "probability" : "guard band", "accept"_a = d.accept, "reject"_a = d.reject, "text"_a = d.text,
                        "source"_a = d.from.title, "clause"_a = d.from.clause, "grade"_a = d.from.grade));
    return l;
  }, "The decision rules by name: guard bands w in units of U, probabilities, source and grade.");

  py::class_<reading>(m, "Reading", "A reading as taken: a value, above or below the range, no trip, not measured, pending.")
      .def(py::init([](double value, std::optional<accuracy> a, const py::object& instrument_, double test_voltage_v, std::string circuit_state, std::string time,
                       std::string supersedes) {
             reading r(value);
             r.statement = a;
             set_instrument(r, instrument_);
             set_circumstances(r, test_voltage_v, std::move(circuit_state), std::move(time), std::move(supersedes));
             return r;
           }),
           "value"_a, "accuracy"_a = py::none(), "instrument"_a = "", "test_voltage_v"_a = no_number, "circuit_state"_a = "", "time"_a = "", "supersedes"_a = "")
      .def_static("above", [](double limit, const py::object& instrument_) {
             reading r = reading::above(limit);
             set_instrument(r, instrument_);
             return r;
           }, "limit"_a, "instrument"_a = "")
      .def_static("below", [](double limit, const py::object& instrument_) {
             reading r = reading::below(limit);
             set_instrument(r, instrument_);
             return r;
           }, "limit"_a, "instrument"_a = "")
      .def_static("no_trip", &reading::no_trip)
      .def_static("not_measured", &reading::not_measured)
      .def_static("pending", &reading::pending)
      .def_static("_of", [](const std::string& state, double number, std::optional<accuracy> a, std::string instrument) {
             reading r(number);
             r.is = state == "above" ? reading::state::above : state == "below" ? reading::state::below : reading::state::value;
             r.statement = a;
             r.instrument = std::move(instrument);
             return r;
           })
      .def_static("_of_instrument", [](const std::string& state, double number, const py::object& instrument_) {
             reading r(number);
             r.is = state == "above" ? reading::state::above : state == "below" ? reading::state::below : reading::state::value;
             set_instrument(r, instrument_);
             return r;
           })
      .def_property_readonly("test_voltage_v", [](const reading& r) { return number_or_none(r.test_voltage_v); })
      .def_readonly("circuit_state", &reading::circuit_state)
      .def_readonly("time", &reading::taken_at)
      .def_readonly("supersedes", &reading::supersedes)
      .def_readonly("accuracy", &reading::statement)
      .def_property_readonly("state", [](const reading& r) { return state_text(r.is); })
      .def_property_readonly("number", [](const reading& r) { return number_or_none(r.number); })
      .def_readonly("instrument", &reading::instrument)
      .def("__repr__", [](const reading& r) {
        return "Reading(" + std::string(state_text(r.is)) + (r.has_number() ? " " + number_text(r.number) : "") + ")";
      });

  py::class_<rulebook>(m, "Rulebook", "Limits as data, with edition and clause. Rulebook(\"bs7671:2018+a2,england-adf-2021\")")
      .def(py::init([](const std::string& ids) { return rules::find(ids); }), "ids"_a)
      .def_property_readonly("id", &rulebook::id)
      .def("override", [](const rulebook& b, std::string name, std::string limit, std::string condition, const std::string& compare,
                          std::vector<double> numbers, std::string reason_) {
             rule_override o{std::move(name), std::move(limit), std::move(condition), comparator_from(compare), {}, std::move(reason_)};
             if (numbers.size() > o.numbers.size()) throw range_error("override: at most four numbers");
             for (std::size_t i = 0; i < numbers.size(); ++i) o.numbers[i] = numbers[i];
             return b.with(o);
           },
           "name"_a, "limit"_a, "condition"_a, "comparator"_a, "numbers"_a, "reason"_a,
           "A derived book with one named change; the change appears in every verdict that it touches.")
      .def("rows", [](const rulebook& b) {
        py::list l;
        for (const auto* t : b.tables())
          for (const auto& r : t->rules)
            l.append(py::dict("book"_a = t->id, "edition"_a = t->edition, "limit"_a = r.limit, "condition"_a = r.condition,
                              "comparator"_a = comparator_text(r.compare), "numbers"_a = r.numbers, "source"_a = r.from.title,
                              "clause"_a = r.from.clause, "grade"_a = r.from.grade, "text"_a = r.text));
        return l;
      })
      .def("__repr__", [](const rulebook& b) { return "Rulebook(\"" + b.id() + "\")"; });
  py::list limits;
  for (const auto& l : operating_limits)
    limits.append(py::dict("part"_a = l.part, "reads"_a = class_of(l.kind)->key, "percent"_a = l.percent, "of"_a = l.of, "source"_a = l.from.title, "grade"_a = l.from.grade));
  m.attr("operating_limits") = py::tuple(limits);
  m.def("rulebooks", [] {
    py::list l;
    for (const auto* t : rules::all)
      l.append(py::dict("id"_a = t->id, "title"_a = t->title, "jurisdiction"_a = t->jurisdiction, "edition"_a = t->edition, "date"_a = t->date));
    return l;
  }, "The rulebooks that the library ships.");
}

}  // namespace makegood::python
