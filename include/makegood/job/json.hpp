// SPDX-License-Identifier: MIT
// Opt-in: reads JSON text into a document with nlohmann/json, which the including project provides.
#pragma once
#include <nlohmann/json.hpp>
#include <cstdint>
#include <string>
#include <utility>
#include "visit.hpp"

namespace makegood {
inline namespace v1 {
namespace job {

namespace detail {
/// Builds the document as the text is read: nothing is lost, not even a name that stands twice.
class json_builder {
 public:
  document::value result;
  std::string trouble;

  bool null() { return put(nullptr); }
  bool boolean(bool x) { return put(x); }
  bool number_integer(std::int64_t x) { return put(static_cast<double>(x)); }
  bool number_unsigned(std::uint64_t x) { return put(static_cast<double>(x)); }
  bool number_float(double x, const std::string&) { return put(x); }
  bool string(std::string& x) { return put(x); }
  template <class Binary>
  bool binary(Binary&) { return false; }
  bool start_object(std::size_t) { return open(document::object{}); }
  bool end_object() { return close(); }
  bool start_array(std::size_t) { return open(document::array{}); }
  bool end_array() { return close(); }
  bool key(std::string& name) {
    names_.push_back(name);
    return true;
  }
  template <class Exception>
  bool parse_error(std::size_t, const std::string&, const Exception& e) {
    trouble = std::string("not JSON: ") + e.what();
    return false;
  }

 private:
  std::vector<document::value> open_;
  std::vector<std::string> names_;

  bool put(document::value v) {
    if (open_.empty()) {
      result = std::move(v);
    } else if (auto* a = std::get_if<document::array>(&open_.back().is)) {
      a->push_back(std::move(v));
    } else {
      std::get<document::object>(open_.back().is).set(names_.back(), std::move(v));
      names_.pop_back();
    }
    return true;
  }
  bool open(document::value v) {
    if (open_.size() >= document::deepest) {
      trouble = "is nested too deeply";
      return false;
    }
    open_.push_back(std::move(v));
    return true;
  }
  bool close() {
    document::value v = std::move(open_.back());
    open_.pop_back();
    return put(std::move(v));
  }
};
}  // namespace detail

/// JSON text as a document; a syntax error is a document_error.
inline document::value parse_json(std::string_view text) {
  detail::json_builder builder;
  if (!nlohmann::json::sax_parse(text.begin(), text.end(), &builder)) throw document_error("", builder.trouble);
  return std::move(builder.result);
}
inline visit parse_visit(std::string_view text) { return read_visit(parse_json(text)); }

}  // namespace job
}  // namespace v1
}  // namespace makegood
