// SPDX-License-Identifier: MIT
// Field descriptors of documents: one list a structure serves reading, validation, JSON Schema and help.
// Job floor. Includes the standard library only.
#pragma once
#include <algorithm>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>
#include "../document.hpp"
#include "../reading.hpp"

namespace makegood {
inline namespace v1 {
namespace job {

/// What is said of one field.
struct field {
  std::string_view text{};
  unit_t unit{};
  range permitted = any_number;
  range usual{0.0, 0.0};
  bool required = false;
  std::span<const std::string_view> words{};  ///< the words that a text field takes; empty: any text
  reads instrument = reads::nothing;
  constexpr field must() const { field f = *this; f.required = true; return f; }
};
constexpr field number(std::string_view text, const unit_t& u, range permitted, range usual = {0.0, 0.0}) {
  return {text, u, permitted, usual, false, {}, reads::nothing};
}
constexpr field read_by(reads instrument, std::string_view text, const unit_t& u, range permitted, range usual = {0.0, 0.0}) {
  return {text, u, permitted, usual, false, {}, instrument};
}
constexpr field words(std::string_view text, std::span<const std::string_view> w) { return {text, {}, any_number, {}, false, w, reads::nothing}; }
constexpr field text(std::string_view t) { return {t, {}, any_number, {}, false, {}, reads::nothing}; }

using document::nearest;

namespace detail {

inline std::string joined(const std::string& path, std::string_view name) {
  return path.empty() ? std::string(name) : path + "." + std::string(name);
}
inline std::string indexed(const std::string& path, std::size_t i) { return path + "[" + std::to_string(i) + "]"; }

inline argument as_argument(std::string_view name, const field& f) {
  argument a;
  a.name = name;
  a.unit = f.unit;
  a.permitted = f.permitted;
  a.usual = f.usual;
  a.text = f.text;
  return a;
}

template <class T>
struct is_vector : std::false_type {};
template <class T>
struct is_vector<std::vector<T>> : std::true_type {};
template <class T>
struct is_optional : std::false_type {};
template <class T>
struct is_optional<std::optional<T>> : std::true_type {};
template <class S>
concept structure = requires { S::is_document_structure; };

/// Collects the names of a structure's fields.
template <class S>
std::vector<std::string_view> names_of() {
  std::vector<std::string_view> names;
  S::fields([&](std::string_view name, auto, const field&) { names.push_back(name); });
  return names;
}

/// Reads a document into structures; every problem is kept with its path.
class reader {
 public:
  std::vector<problem> problems;

  template <class S>
  void object(const document::value& v, const std::string& path, S& s, std::string_view also = {}) {
    const auto* o = v.as<document::object>();
    if (!o) {
      wrong_type(v, path, "an object");
      return;
    }
    const auto names = names_of<S>();
    for (std::size_t i = 0; i < o->fields.size(); ++i) {
      const auto& name = o->fields[i].first;
      if (!also.empty() && name == also) continue;
      if (std::find(names.begin(), names.end(), name) == names.end()) {
        const std::string near = nearest(name, names);
        problems.push_back({joined(path, name), "there is no such field" + (near.empty() ? "" : "; did you mean \"" + near + "\"?")});
      }
      for (std::size_t j = 0; j < i; ++j)
        if (o->fields[j].first == name) problems.push_back({joined(path, name), "stands twice"});
    }
    S::fields([&](std::string_view name, auto member, const field& f) {
      const auto* item = o->find(name);
      const std::string at = joined(path, name);
      if (!item) {
        if (f.required) problems.push_back({at, "is missing: " + std::string(f.text)});
        return;
      }
      value(*item, at, s.*member, f);
    });
  }

  template <class T>
  void value(const document::value& v, const std::string& path, T& x, const field& f) {
    if constexpr (is_optional<T>::value) {
      if (v.is_null()) {
        if (f.required) wrong_type(v, path, "a value");
        return;
      }
      x.emplace();
      value(v, path, *x, f);
    } else if constexpr (is_vector<T>::value) {
      const auto* a = v.as<document::array>();
      if (!a) {
        wrong_type(v, path, "a list");
        return;
      }
      for (std::size_t i = 0; i < a->size(); ++i) {
        x.emplace_back();
        value((*a)[i], indexed(path, i), x.back(), f);
      }
    } else if constexpr (std::is_same_v<T, double>) {
      const auto* number = v.as<double>();
      if (!number) {
        wrong_type(v, path, "a number" + (f.unit.symbol.empty() ? std::string() : " in " + std::string(f.unit.symbol)));
        return;
      }
      in_range(*number, path, f);
      x = *number;
    } else if constexpr (std::is_same_v<T, bool>) {
      if (const auto* b = v.as<bool>()) x = *b;
      else wrong_type(v, path, "true or false");
    } else if constexpr (std::is_same_v<T, std::string>) {
      const auto* t = v.as<std::string>();
      if (!t) {
        wrong_type(v, path, "a text");
        return;
      }
      if (t->empty() && f.required) problems.push_back({path, "is empty: " + std::string(f.text)});
      else if (!f.words.empty() && std::find(f.words.begin(), f.words.end(), *t) == f.words.end()) {
        std::string list;
        for (const auto w : f.words) list += (list.empty() ? "\"" : ", \"") + std::string(w) + "\"";
        const std::string near = nearest(*t, f.words);
        problems.push_back({path, "\"" + *t + "\" is not one of " + list + (near.empty() ? "" : "; did you mean \"" + near + "\"?")});
      }
      x = *t;
    } else if constexpr (std::is_same_v<T, reading>) {
      a_reading(v, path, x, f);
    } else if constexpr (std::is_same_v<T, document::object>) {  // what somebody else reads
      const auto* o = v.as<document::object>();
      if (!o) {
        wrong_type(v, path, "an object");
        return;
      }
      for (std::size_t i = 0; i < o->fields.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
          if (o->fields[j].first == o->fields[i].first) problems.push_back({joined(path, o->fields[i].first), "stands twice"});
      x = *o;
    } else {
      object(v, path, x);
    }
  }

 private:
  void wrong_type(const document::value& v, const std::string& path, const std::string& wanted) {
    problems.push_back({path, "must be " + wanted + ", not " + std::string(document::type_name(v))});
  }
  void in_range(double x, const std::string& path, const field& f) {
    if (!f.permitted.contains(x)) problems.push_back({path, v1::detail::out_of_range_text(as_argument(path, f), x)});
  }
  void a_reading(const document::value& v, const std::string& path, reading& x, const field& f);
};

/// What a reading may say besides its number.
struct reading_fields {
  static constexpr bool is_document_structure = true;
  std::optional<double> value, above, below, test_voltage_v;
  std::string state, kind, instrument, time, circuit_state, supersedes, note;
  template <class V>
  static void fields(V&& v) {
    static constexpr std::string_view states[] = {"no_trip", "not_measured", "pending"};
    static constexpr std::string_view circuit_states[] = {"cold", "warm", "isolated", "disconnected", "live"};
    v("value", &reading_fields::value, text("the number read"));
    v("above", &reading_fields::above, text("the end of the range, when the display shows more"));
    v("below", &reading_fields::below, text("the start of the range, when the display shows less"));
    v("state", &reading_fields::state, words("why there is no number", states));
    static constexpr std::string_view kinds[] = {"measured", "nameplate", "estimated", "told"};
    v("kind", &reading_fields::kind, words("how the number was come by: told counts as not measured, estimated as 20 % unless an instrument is named", kinds));
    v("instrument", &reading_fields::instrument, text("id of the instrument"));
    v("time", &reading_fields::time, text("when it was read"));
    v("circuit_state", &reading_fields::circuit_state, words("state of the circuit", circuit_states));
    v("test_voltage_v", &reading_fields::test_voltage_v, number("test voltage", unit::volt, positive_to(5000), {1, 1000}));
    v("supersedes", &reading_fields::supersedes, text("what this reading replaces, and why"));
    v("note", &reading_fields::note, text("anything else"));
  }
};

inline void reader::a_reading(const document::value& v, const std::string& path, reading& x, const field& f) {
  if (v.is_null()) {
    x = reading::not_measured();
    x.label = path;
    return;
  }
  if (const auto* number = v.as<double>()) {
    in_range(*number, path, f);
    x = reading(*number);
    x.label = path;
    return;
  }
  if (!v.as<document::object>()) {
    wrong_type(v, path, "a number" + (f.unit.symbol.empty() ? std::string() : " in " + std::string(f.unit.symbol)) + ", an object or null");
    return;
  }
  reading_fields r;
  const std::size_t before = problems.size();
  object(v, path, r);
  const int said = r.value.has_value() + r.above.has_value() + r.below.has_value() + !r.state.empty();
  if (said != 1 && problems.size() == before)
    problems.push_back({path, "says " + std::string(said == 0 ? "nothing" : "more than one thing") +
                                  ": give exactly one of \"value\", \"above\", \"below\", \"state\""});
  if (r.value) x = reading(*r.value);
  else if (r.above) x = reading::above(*r.above);
  else if (r.below) x = reading::below(*r.below);
  else if (r.state == "no_trip") x = reading::no_trip();
  else if (r.state == "pending") x = reading::pending();
  else x = reading::not_measured();
  if (x.has_number() && problems.size() == before) in_range(x.number, joined(path, r.value ? "value" : r.above ? "above" : "below"), f);
  x.kind = r.kind;
  x.instrument = r.instrument;
  x.supersedes = r.supersedes;
  x.label = path;
  x.taken_at = r.time;
  x.circuit_state = r.circuit_state;
  if (r.test_voltage_v) x.test_voltage_v = *r.test_voltage_v;
  x.note = r.note;
}

/// JSON Schema (2020-12) of a structure, from the same descriptors.
template <class T>
document::value schema_of(const field& f);
template <class S>
document::value schema_of_structure() {
  document::object properties;
  document::array required;
  S::fields([&](std::string_view name, auto member, const field& f) {
    using M = std::remove_cvref_t<decltype(std::declval<S&>().*member)>;
    properties.set(std::string(name), schema_of<M>(f));
    if (f.required) required.push_back(name);
  });
  return document::object{{"type", "object"}, {"additionalProperties", false}, {"properties", properties}, {"required", required}};
}
template <class T>
document::value schema_of(const field& f) {
  const auto described = [&](document::object o) -> document::value {
    if (!f.text.empty()) o.set("description", std::string(f.text) + (f.unit.symbol.empty() ? "" : " [" + std::string(f.unit.symbol) + "]"));
    return o;
  };
  const auto limits = [&](document::object o) {
    if (f.permitted.high < beyond_measure || f.permitted.low > -beyond_measure) {
      o.set(f.permitted.low_open ? "exclusiveMinimum" : "minimum", f.permitted.low);
      o.set(f.permitted.high_open ? "exclusiveMaximum" : "maximum", f.permitted.high);
    }
    return o;
  };
  if constexpr (is_optional<T>::value) {
    return document::object{{"anyOf", document::array{schema_of<typename T::value_type>(f), document::object{{"type", "null"}}}}};
  } else if constexpr (is_vector<T>::value) {
    return document::object{{"type", "array"}, {"items", schema_of<typename T::value_type>(f)}};
  } else if constexpr (std::is_same_v<T, double>) {
    return described(limits({{"type", "number"}}));
  } else if constexpr (std::is_same_v<T, bool>) {
    return described({{"type", "boolean"}});
  } else if constexpr (std::is_same_v<T, std::string>) {
    document::object o{{"type", "string"}};
    if (f.required) o.set("minLength", 1);
    if (!f.words.empty()) {
      document::array list;
      for (const auto w : f.words) list.push_back(w);
      o.set("enum", list);
    }
    return described(o);
  } else if constexpr (std::is_same_v<T, reading>) {
    auto r = schema_of_structure<reading_fields>();
    auto& body = std::get<document::object>(r.is);
    document::array one_of;
    for (auto& [name, part] : body.fields) {
      if (name != "properties") continue;
      for (auto& [key, property] : std::get<document::object>(part.is).fields)
        if (key == "value" || key == "above" || key == "below") property = limits({{"type", "number"}});
    }
    for (const char* key : {"value", "above", "below", "state"}) one_of.push_back(document::object{{"required", document::array{key}}});
    body.set("oneOf", one_of);
    return described({{"oneOf", document::array{limits({{"type", "number"}}), document::object{{"type", "null"}}, r}}});
  } else if constexpr (std::is_same_v<T, document::object>) {
    return described({{"type", "object"}});
  } else {
    return schema_of_structure<T>();
  }
}

}  // namespace detail
}  // namespace job
}  // namespace v1
}  // namespace makegood
