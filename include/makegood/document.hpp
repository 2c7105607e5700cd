// SPDX-License-Identifier: MIT
// A document (JSON, a Python dict, ...) as a plain tree, and writing it as JSON text. No reader of text: that is opt-in.
// Core of the doors: the catalogue, the ledger and the visit speak it.
#pragma once
#include <algorithm>
#include <initializer_list>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>
#include "text.hpp"

namespace makegood {
inline namespace v1 {

/// One thing wrong in a document, with its path ("circuits[2].length_m").
struct problem {
  std::string path;
  std::string text;
};
/// A document (a visit) has one or more problems; all of them are listed.
struct document_error : error {
  explicit document_error(std::vector<problem> found) : error(join(found)), problems(std::move(found)) {}
  document_error(std::string path, std::string text) : document_error(std::vector<problem>{{std::move(path), std::move(text)}}) {}
  std::vector<problem> problems;

 private:
  static message join(const std::vector<problem>& found) {
    message text;
    for (const auto& p : found) {
      if (!text.empty()) text += "\n";
      text += p.path;
      if (!p.path.empty()) text += ": ";
      text += p.text;
    }
    return text;
  }
};

namespace document {

/// A document deeper than this is no visit.
inline constexpr std::size_t deepest = 60;

struct value;
using array = std::vector<value>;
/// Fields in the order in which they were written.
struct object {
  std::vector<std::pair<std::string, value>> fields;
  object() = default;
  object(std::initializer_list<std::pair<std::string, value>> f);
  const value* find(std::string_view name) const;
  value& set(std::string name, value v);
};
/// null, true or false, a number, a text, a list or an object.
struct value {
  std::variant<std::nullptr_t, bool, double, std::string, array, object> is{nullptr};
  value() = default;
  value(std::nullptr_t) {}
  value(bool x) : is(x) {}
  value(double x) : is(x) {}
  value(int x) : is(static_cast<double>(x)) {}
  value(std::size_t x) : is(static_cast<double>(x)) {}
  value(std::string x) : is(std::move(x)) {}
  value(std::string_view x) : is(std::string(x)) {}
  value(const char* x) : is(std::string(x)) {}
  value(array x) : is(std::move(x)) {}
  value(object x) : is(std::move(x)) {}
  template <class T>
  const T* as() const { return std::get_if<T>(&is); }
  bool is_null() const { return std::holds_alternative<std::nullptr_t>(is); }
};
inline object::object(std::initializer_list<std::pair<std::string, value>> f) : fields(f) {}
inline const value* object::find(std::string_view name) const {
  for (const auto& f : fields)
    if (f.first == name) return &f.second;
  return nullptr;
}
inline value& object::set(std::string name, value v) {
  fields.emplace_back(std::move(name), std::move(v));
  return fields.back().second;
}
/// A number, or null where there is none.
inline value number_or_null(double x) { return is_finite(x) ? value(x) : value(nullptr); }

inline std::string_view type_name(const value& v) {
  constexpr std::string_view names[] = {"null", "true or false", "a number", "a text", "a list", "an object"};
  return names[v.is.index()];
}

/// The nearest of some names by edit distance, or "".
inline std::string nearest(std::string_view wrong, std::span<const std::string_view> names) {
  std::string best;
  std::size_t least = wrong.size() / 3 + 2;
  std::vector<std::size_t> row;
  for (const auto name : names) {
    row.resize(name.size() + 1);
    for (std::size_t j = 0; j <= name.size(); ++j) row[j] = j;
    for (std::size_t i = 1; i <= wrong.size(); ++i) {
      std::size_t diagonal = row[0];
      row[0] = i;
      for (std::size_t j = 1; j <= name.size(); ++j) {
        const std::size_t above = row[j];
        row[j] = std::min({row[j] + 1, row[j - 1] + 1, diagonal + (wrong[i - 1] == name[j - 1] ? 0u : 1u)});
        diagonal = above;
      }
    }
    if (row[name.size()] < least) {
      least = row[name.size()];
      best = name;
    }
  }
  return best;
}

namespace detail {
inline void write_text(std::string& out, std::string_view text) {
  constexpr char hex[] = "0123456789abcdef";
  out += '"';
  for (const char c : text) {
    switch (c) {
      case '"': out += "\\\""; break;
      case '\\': out += "\\\\"; break;
      case '\n': out += "\\n"; break;
      case '\r': out += "\\r"; break;
      case '\t': out += "\\t"; break;
      default:
        if (static_cast<unsigned char>(c) < 0x20) {
          out += "\\u00";
          out += hex[(c >> 4) & 15];
          out += hex[c & 15];
        } else {
          out += c;
        }
    }
  }
  out += '"';
}
inline void write(std::string& out, const value& v, int depth) {
  const std::string indent(static_cast<std::size_t>(2 * (depth + 1)), ' ');
  const auto close = [&](char c) {
    out += '\n';
    out.append(static_cast<std::size_t>(2 * depth), ' ');
    out += c;
  };
  if (v.is_null()) out += "null";
  else if (const auto* b = v.as<bool>()) out += *b ? "true" : "false";
  else if (const auto* x = v.as<double>()) out += is_finite(*x) ? number_text(*x) : "null";
  else if (const auto* t = v.as<std::string>()) write_text(out, *t);
  else if (const auto* a = v.as<array>()) {
    out += '[';
    for (std::size_t i = 0; i < a->size(); ++i) {
      out += i ? ",\n" : "\n";
      out += indent;
      write(out, (*a)[i], depth + 1);
    }
    if (!a->empty()) close(']');
    else out += ']';
  } else if (const auto* o = v.as<object>()) {
    out += '{';
    for (std::size_t i = 0; i < o->fields.size(); ++i) {
      out += i ? ",\n" : "\n";
      out += indent;
      write_text(out, o->fields[i].first);
      out += ": ";
      write(out, o->fields[i].second, depth + 1);
    }
    if (!o->fields.empty()) close('}');
    else out += '}';
  }
}
}  // namespace detail

/// The document as indented JSON (RFC 8259); numbers in the shortest form that reads back the same.
inline std::string to_json(const value& v) {
  std::string text;
  detail::write(text, v, 0);
  text += '\n';
  return text;
}

}  // namespace document
}  // namespace v1
}  // namespace makegood
