// SPDX-License-Identifier: MIT
// Data that people write as JSON and that is compiled in: src/cmake/tokens.py writes it as tokens, one a line; this reads them.
#pragma once
#include <makegood/document.hpp>
#include <cstdlib>
#include <span>
#include <string>
#include <string_view>

namespace makegood::subjects {

struct token_text {
  std::string_view id, tokens;
};

class token_reader {
 public:
  explicit token_reader(std::string_view text) : rest_(text) {}
  document::value value() {
    const auto t = take();
    switch (t.empty() ? ' ' : t[0]) {
      case '{': {
        document::object o;
        while (peek() != '}') {
          const auto name = take().substr(1);
          o.set(std::string(name), value());
        }
        take();
        return o;
      }
      case '[': {
        document::array a;
        while (peek() != ']') a.push_back(value());
        take();
        return a;
      }
      case 's': return std::string(t.substr(1));
      case 'n': return std::strtod(std::string(t.substr(1)).c_str(), nullptr);
      case 't': return true;
      case 'f': return false;
      default: return nullptr;
    }
  }

 private:
  std::string_view rest_;
  char peek() const { return rest_.empty() ? '}' : rest_[0]; }
  std::string_view take() {
    const auto end = rest_.find('\n');
    const auto t = rest_.substr(0, end);
    rest_.remove_prefix(end == std::string_view::npos ? rest_.size() : end + 1);
    return t;
  }
};

/// The data of that name; null where there is none. What is too long for one literal follows under the same name.
inline document::value read_tokens(std::span<const token_text> all, std::string_view id) {
  std::string tokens;
  for (const auto& t : all)
    if (t.id == id) tokens += t.tokens;
  return tokens.empty() ? document::value(nullptr) : token_reader(tokens).value();
}

}  // namespace makegood::subjects
