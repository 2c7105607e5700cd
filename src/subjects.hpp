// SPDX-License-Identifier: MIT
// Each subject's list is compiled in a file of its own; registry.cpp joins them.
#pragma once
#include <makegood/catalogue.hpp>
#include <string>
#include <string_view>
#include <vector>

namespace makegood::subjects {
void electrical(std::vector<entry>& all);
void sensing(std::vector<entry>& all);
void heating(std::vector<entry>& all);
void floor(std::vector<entry>& all);           // the rest of the subject heating: floors that store heat
void air(std::vector<entry>& all);
void ventilation(std::vector<entry>& all);   // the rest of the subject air: runs of duct, fans
void duct_network(std::vector<entry>& all);  // ... networks
void decision(std::vector<entry>& all);
void setting_out(std::vector<entry>& all);
void zones(std::vector<entry>& all);         // the rest of the subject setting_out: zones of bathrooms and of cables
void cords_and_fixings(std::vector<entry>& all);  // the rest of the subject setting_out: fixings, drills, cords
void lighting(std::vector<entry>& all);
void price(std::vector<entry>& all);
void circuit_tests(std::vector<entry>& all);   // the rest of the subject electrical: rings, spurs and records of tests
void fault_location(std::vector<entry>& all);  // ... faults along a cable
void switching(std::vector<entry>& all);       // ... which terminal is fed by what
void live_faults(std::vector<entry>& all);     // ... joints under load, unwanted trips
void inquiries(std::vector<entry>& all);  // the subject job: which fault, which test next (families.cpp)
void visit_rules(std::vector<entry>& all);  // ... which work has to be notified (whole_visit_rules.cpp)
void order_of_work(std::vector<entry>& all);  // ... what is done in the time there is
void diagnosis(std::vector<entry>& all);  // the rest of the subject decision: states, tests, scores

/// A list of numbers in a field of a document; every message names the model and the field.
inline std::vector<double> numbers_of(std::string_view model, std::string_view name, const document::value& v) {
  const auto* list_ = v.as<document::array>();
  if (!list_) throw range_error(std::string(model) + ": \"" + std::string(name) + "\" must be a list of numbers");
  std::vector<double> x;
  for (std::size_t i = 0; i < list_->size(); ++i) {
    const auto* one = (*list_)[i].as<double>();
    if (!one) throw range_error(std::string(model) + ": " + std::string(name) + "[" + std::to_string(i) + "] must be a number");
    x.push_back(*one);
  }
  return x;
}

/// Reads the fields of a document for a model; every message names the model and the field.
class fields {
 public:
  fields(std::string_view model, const document::object& from) : model_(model), from_(from) {}

  const document::value& need(std::string_view name) const {
    const auto* v = from_.find(name);
    if (!v) throw range_error(std::string(model_) + ": \"" + std::string(name) + "\" is missing");
    return *v;
  }
  double number(std::string_view name) const {
    const auto& v = need(name);
    const auto* x = v.as<double>();
    if (!x) throw range_error(std::string(model_) + ": \"" + std::string(name) + "\" must be a number, not " + std::string(document::type_name(v)));
    return *x;
  }
  bool has(std::string_view name) const {
    const auto* v = from_.find(name);
    return v && !v->is_null();
  }
  double number_or(std::string_view name, double otherwise) const { return from_.find(name) ? number(name) : otherwise; }
  const std::string& text(std::string_view name) const {
    const auto& v = need(name);
    const auto* t = v.as<std::string>();
    if (!t) throw range_error(std::string(model_) + ": \"" + std::string(name) + "\" must be a text, not " + std::string(document::type_name(v)));
    return *t;
  }
  /// A field that nothing asks for is an error, not a comment.
  template <class... Name>
  void only(Name... known) const {
    for (const auto& f : from_.fields)
      if (!((f.first == known) || ...)) throw range_error(std::string(model_) + ": no argument \"" + f.first + "\"");
  }

 private:
  std::string_view model_;
  const document::object& from_;
};
}  // namespace makegood::subjects
