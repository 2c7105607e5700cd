// SPDX-License-Identifier: MIT
// The inference kernel for makegood.inference: hypotheses with Python callables or formulas of the catalogue as predictions.
#include <pybind11/stl.h>
#include "door.hpp"
#include <makegood/job/inference.hpp>

namespace py = pybind11;
using namespace pybind11::literals;

namespace makegood::python {

namespace {
using namespace makegood::job;

/// A Python callable of the parameters in their order; slopes by central differences of 1e-4 scales.
struct called {
  py::function f;
  std::vector<double> steps;

  double value(const double* x, int n) const {
    py::tuple arguments(static_cast<std::size_t>(n));
    for (int i = 0; i < n; ++i) arguments[static_cast<std::size_t>(i)] = x[i];
    return py::float_(f(*arguments));
  }
  double slopes(const double* x, int n, double* slopes) const {
    std::array<double, most_parameters> at{};
    std::copy(x, x + n, at.begin());
    for (int i = 0; i < n; ++i) {
      const auto k = static_cast<std::size_t>(i);
      at[k] = x[i] + steps[k];
      const double up = value(at.data(), n);
      at[k] = x[i] - steps[k];
      slopes[i] = (up - value(at.data(), n)) / (2.0 * steps[k]);
      at[k] = x[i];
    }
    return value(x, n);
  }
};
/// A number, or the parameter of an index.
struct term {
  int parameter;
  double number;
  double at(const double* x) const { return parameter < 0 ? number : x[parameter]; }
};
/// A formula of the catalogue, its arguments numbers or parameters; times and plus further terms. Exact slopes.
struct of_catalogue {
  const entry* e;
  std::vector<term> arguments, times, plus;

  double inner(const double* x, std::vector<double>& in) const {
    in.clear();
    for (const auto& a : arguments) in.push_back(a.at(x));
    return e->formula.checked(in.data());
  }
  double value(const double* x, int) const {
    std::vector<double> in;
    double y = inner(x, in);
    for (const auto& t : times) y *= t.at(x);
    for (const auto& t : plus) y += t.at(x);
    return y;
  }
  double slopes(const double* x, int n, double* slopes) const {
    std::vector<double> in, c(arguments.size());
    const double y = inner(x, in);
    std::fill(slopes, slopes + n, 0.0);
    if (!is_finite(y)) return y;
    e->formula.gradient(e->formula.self, in.data(), c.data());
    double factor = 1.0, sum = 0.0;
    for (const auto& t : times) factor *= t.at(x);
    for (std::size_t i = 0; i < arguments.size(); ++i)
      if (arguments[i].parameter >= 0) slopes[arguments[i].parameter] += factor * c[i];
    for (std::size_t i = 0; i < times.size(); ++i) {
      if (times[i].parameter < 0) continue;
      double others = y;
      for (std::size_t j = 0; j < times.size(); ++j) others *= j == i ? 1.0 : times[j].at(x);
      slopes[times[i].parameter] += others;
    }
    for (const auto& t : plus) {
      sum += t.at(x);
      if (t.parameter >= 0) slopes[t.parameter] += 1.0;
    }
    return y * factor + sum;
  }
};
template <class T>
prediction prediction_of(T made) {
  return prediction::from(
      std::make_shared<const T>(std::move(made)), [](const void* s, const double* x, int n) { return static_cast<const T*>(s)->value(x, n); },
      [](const void* s, const double* x, int n, double* slopes) { return static_cast<const T*>(s)->slopes(x, n, slopes); });
}

distribution distribution_from(py::handle h) {
  const auto t = h.cast<py::tuple>();
  const auto shape = t[0].cast<std::string>();
  const auto x = [&](std::size_t i) { return t[i].cast<double>(); };
  if (shape == "normal") return distribution::normal(x(1), x(2));
  if (shape == "log_normal") return distribution::log_normal(x(1), x(2));
  if (shape == "uniform") return distribution::uniform(x(1), x(2));
  if (shape == "log_uniform") return distribution::log_uniform(x(1), x(2));
  if (shape == "triangular") return distribution::triangular(x(1), x(2), x(3));
  throw range_error("inference: a distribution is normal, log_normal, uniform, log_uniform or triangular");
}
term term_from(py::handle h, const std::vector<parameter>& parameters, const std::string& who) {
  if (!py::isinstance<py::str>(h)) return {-1, h.cast<double>()};
  const auto name = h.cast<std::string>();
  for (std::size_t k = 0; k < parameters.size(); ++k)
    if (parameters[k].name == name) return {static_cast<int>(k), 0.0};
  throw range_error("inference: " + who + " has no parameter \"" + name + "\"");
}
prediction prediction_from(py::handle h, const std::vector<parameter>& parameters, const std::string& who) {
  if (h.is_none()) return {};
  if (py::isinstance<py::tuple>(h)) {  // (formula, {argument: number or parameter}, times, plus)
    const auto t = h.cast<py::tuple>();
    const auto name = t[0].cast<std::string>();
    const entry* e = find_entry(name);
    if (!e || e->is != entry::what::formula) throw range_error("inference: " + who + ": \"" + name + "\" is no formula of the catalogue");
    of_catalogue made{e, {}, {}, {}};
    const auto given_ = t[1].cast<py::dict>();
    std::size_t used = 0;
    for (const auto& a : e->args()) {
      if (const py::str key{std::string(a.name)}; given_.contains(key)) {
        const py::object v = given_[key];
        ++used;
        if (a.table) made.arguments.push_back({-1, static_cast<double>(a.table->find(v.cast<std::string>()))});
        else made.arguments.push_back(term_from(v, parameters, who));
        if (a.table && made.arguments.back().number < 0.0) throw range_error("inference: " + who + ": " + std::string(a.name) + " must be one of " + makegood::detail::keys_text(*a.table));
      } else if (a.optional) {
        made.arguments.push_back({-1, a.fallback});
      } else {
        throw range_error("inference: " + who + ": " + name + ": argument \"" + std::string(a.name) + "\" is missing");
      }
    }
    if (used != given_.size()) throw range_error("inference: " + who + ": " + name + " does not take all of these arguments");
    for (auto x : t[2].cast<py::sequence>()) made.times.push_back(term_from(x, parameters, who));
    for (auto x : t[3].cast<py::sequence>()) made.plus.push_back(term_from(x, parameters, who));
    return prediction_of(std::move(made));
  }
  if (py::isinstance<py::function>(h) || PyCallable_Check(h.ptr())) {
    called c{py::reinterpret_borrow<py::function>(h), {}};
    for (const auto& p : parameters) c.steps.push_back(1e-4 * p.is.scale());
    return prediction_of(std::move(c));
  }
  return prediction(h.cast<double>());
}
danger danger_from(const std::string& word) {
  if (word == "none") return danger::none;
  if (word == "property") return danger::property;
  if (word == "life") return danger::life;
  throw range_error("inference: danger is none, property or life");
}
observation observation_from(py::handle h) {
  const auto t = h.cast<py::tuple>();  // (test, kind, number, sources, gains, resolution, category), or (test, "reading", Reading, reads)
  const auto test = t[0].cast<std::string>(), kind = t[1].cast<std::string>();
  if (kind == "reading") {
    const auto word = t[3].cast<std::string>();
    for (const auto& c : instrument_classes)
      if (c.key == word) return observation::from(test, t[2].cast<const reading&>(), c.kind);
    throw range_error("inference: reads = \"" + word + "\" is no kind of reading");
  }
  if (kind == "not_measured") return observation::not_measured(test);
  if (kind == "category") return observation::outcome(test, t[6].cast<std::string>());
  measured m(t[2].cast<double>());
  for (auto item : t[3].cast<py::dict>()) m.add(item.first.cast<std::string>(), item.second.cast<double>());
  observation o = observation::value(test, m, t[5].cast<double>());
  for (auto item : t[4].cast<py::dict>()) o = o.with_gain(item.first.cast<std::string>(), item.second.cast<double>());
  if (kind == "above") o.is = observation::kind::above;
  else if (kind == "below") o.is = observation::kind::below;
  else if (kind != "value") throw range_error("inference: a reading is value, above, below, category or not_measured");
  return o;
}

struct kernel {
  explanations of;
  std::size_t index(const std::string& id) const {
    for (std::size_t h = 0; h < of.hypotheses().size(); ++h)
      if (of.hypotheses()[h].id == id) return h;
    throw range_error("inference: there is no hypothesis \"" + id + "\"");
  }
};
kernel made(py::sequence tests, py::sequence hypotheses, py::dict options) {
  std::vector<test> t;
  for (auto item : tests) {
    const auto x = item.cast<py::tuple>();
    test one{x[0].cast<std::string>(), x[1].cast<std::string>(), x[2].cast<double>(), x[3].cast<double>(), x[4].cast<std::vector<std::string>>(), test::spread::log_uniform, x[6].cast<double>()};
    const auto broad = x[5].cast<std::string>();
    if (broad == "uniform") one.broad = test::spread::uniform;
    else if (broad != "log_uniform") throw range_error("inference: broad is log_uniform or uniform");
    t.push_back(std::move(one));
  }
  std::vector<hypothesis> h;
  for (auto item : hypotheses) {
    const auto x = item.cast<py::tuple>();
    hypothesis one;
    one.id = x[0].cast<std::string>();
    one.title = x[1].cast<std::string>();
    one.prior = x[2].cast<double>();
    for (auto p : x[3].cast<py::dict>()) one.parameters.push_back({p.first.cast<std::string>(), distribution_from(p.second)});
    for (const auto& p : one.parameters)
      if (const auto bad = p.is.problem(); !bad.empty()) throw range_error("inference: hypothesis \"" + one.id + "\": " + p.name + ": " + std::string(bad));
    for (auto p : x[4].cast<py::sequence>()) {
      const auto y = p.cast<py::tuple>();
      prediction made = prediction_from(y[1], one.parameters, "hypothesis \"" + one.id + "\"");
      for (auto c : y[2].cast<py::dict>()) made.or_outcome(c.first.cast<std::string>(), c.second.cast<double>());
      one.predictions.emplace_back(y[0].cast<std::string>(), std::move(made));
    }
    one.danger = danger_from(x[5].cast<std::string>());
    h.push_back(std::move(one));
  }
  inference_options o;
  o.none_prior = options["none_prior"].cast<double>();
  o.points = options["points"].cast<unsigned>();
  o.hopeless = options["hopeless"].cast<double>();
  const auto how = options["method"].cast<std::string>();
  if (how == "first_order") o.how = inference_options::rule::first_order;
  else if (how == "quasi_random") o.how = inference_options::rule::quasi_random;
  else if (how != "automatic") throw range_error("inference: method is automatic, first_order or quasi_random");
  return {explanations(std::move(t), std::move(h), o)};
}
}  // namespace

void add_inference(py::module_& m) {
  py::class_<kernel>(m, "_Explanations", "The inference kernel: use makegood.inference.")
      .def(py::init(&made), "tests"_a, "hypotheses"_a, "options"_a)
      .def("explain",
           [](kernel& k, py::sequence readings) {
             std::vector<observation> list;
             for (auto item : readings) list.push_back(observation_from(item));
             const auto& t = k.of.explain(list);
             py::list rows;
             for (std::size_t h = 0; h < t.rows.size(); ++h) {
               const auto& r = t.rows[h];
               rows.append(py::make_tuple(std::string(k.of.id(h)), r.prior, r.log_likelihood, r.posterior, r.how == method::first_order ? "first_order" : r.how == method::bounded ? "bounded" : "quasi_random",
                                          r.effective_points));
             }
             return py::make_tuple(rows, t.log_evidence, std::string(k.of.id(t.leading)), t.robust, t.robust ? std::string() : std::string(k.of.id(t.overturned_by)));
           },
           "readings"_a)
      .def("conflict",
           [](kernel& k) {
             const auto c = k.of.conflict();
             return py::make_tuple(c.conflict, c.log_density, c.log_density_1pc, c.share_below, std::string(k.of.id(c.leading)), std::string(c.text));
           })
      .def("predicted",
           [](kernel& k, const std::string& id) {
             py::list l;
             for (const auto& p : k.of.predicted(k.index(id)))
               l.append(py::make_tuple(p.reading, p.mean, p.standard_uncertainty_of_prediction, p.standard_uncertainty, p.distance));
             return l;
           },
           "hypothesis"_a)
      .def("parameter",
           [](kernel& k, const std::string& id, const std::string& name, double value) {
             const std::size_t h = k.index(id);
             const auto& list = k.of.hypotheses()[h].parameters;
             std::size_t i = 0;
             while (i < list.size() && list[i].name != name) ++i;
             if (i == list.size()) throw range_error("inference: \"" + id + "\" has no parameter \"" + name + "\"");
             const auto p = k.of.parameter_after(h, i, value);
             return py::make_tuple(p.mean, p.sd, p.below);
           },
           "hypothesis"_a, "parameter"_a, "value"_a);
}

}  // namespace makegood::python
