// SPDX-License-Identifier: MIT
// Opt-in: reads JSON text into a document with nlohmann/json, which the including project provides.
#pragma once
#include <nlohmann/json.hpp>
#include <set>
#include <string>
#include "visit.hpp"

namespace makegood {
inline namespace v1 {
namespace job {

namespace detail {
inline document::value from_nlohmann(const nlohmann::ordered_json& j) {
  if (j.is_boolean()) return j.get<bool>();
  if (j.is_number()) return j.get<double>();
  if (j.is_string()) return j.get<std::string>();
  if (j.is_array()) {
    document::array a;
    for (const auto& item : j) a.push_back(from_nlohmann(item));
    return a;
  }
  if (j.is_object()) {
    document::object o;
    for (const auto& [name, item] : j.items()) o.set(name, from_nlohmann(item));
    return o;
  }
  return nullptr;
}
}  // namespace detail

/// JSON text as a document; a syntax error or a name that stands twice is a document_error.
inline document::value parse_json(std::string_view text) {
  std::vector<std::set<std::string>> open;
  std::vector<problem> twice;
  const auto watch = [&](int, nlohmann::ordered_json::parse_event_t event, nlohmann::ordered_json& parsed) {
    using e = nlohmann::ordered_json::parse_event_t;
    if (event == e::object_start) open.emplace_back();
    else if (event == e::object_end) open.pop_back();
    else if (event == e::key && !open.back().insert(parsed.get<std::string>()).second) twice.push_back({parsed.get<std::string>(), "stands twice"});
    return true;
  };
  try {
    const auto j = nlohmann::ordered_json::parse(text, watch);
    if (!twice.empty()) throw document_error(twice);
    return detail::from_nlohmann(j);
  } catch (const nlohmann::json::parse_error& e) {
    throw document_error({{"", std::string("not JSON: ") + e.what()}});
  }
}
inline visit parse_visit(std::string_view text) { return read_visit(parse_json(text)); }

}  // namespace job
}  // namespace v1
}  // namespace makegood
