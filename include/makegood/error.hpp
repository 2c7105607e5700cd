// SPDX-License-Identifier: MIT
// Errors of the library: one base class, one class for each way an input can be wrong; and their sentences.
// Core: every subject uses it. Without std::string: its header takes longer to compile than every formula together.
#pragma once
#include <charconv>
#include <cstddef>
#include <exception>
#include <new>
#include <string_view>
#include <utility>

namespace makegood {
inline namespace v1 {

/// A sentence that is put together piece by piece. Copies share its characters, so that an error can be copied without
/// throwing another; only a sentence that nobody shares yet is added to.
class message {
 public:
  message() = default;
  explicit message(std::string_view text) { *this += text; }
  message(const message& other) noexcept : chars_(other.chars_) {
    if (chars_) __atomic_add_fetch(&chars_->owners, 1, __ATOMIC_RELAXED);
  }
  message(message&& other) noexcept : chars_(std::exchange(other.chars_, nullptr)) {}
  message& operator=(message other) noexcept {
    std::swap(chars_, other.chars_);
    return *this;
  }
  ~message() {
    if (chars_ && __atomic_sub_fetch(&chars_->owners, 1, __ATOMIC_ACQ_REL) == 0) ::operator delete(chars_);
  }

  message& operator+=(std::string_view text) {
    const std::size_t size = chars_ ? chars_->size : 0;
    if (!chars_ || size + text.size() > chars_->room || __atomic_load_n(&chars_->owners, __ATOMIC_ACQUIRE) > 1) {
      message larger;
      larger.chars_ = made(size + text.size() < 96 ? 192 : 2 * (size + text.size()));  // most sentences are put together in one block
      larger.put(view());
      larger.put(text);
      *this = std::move(larger);
    } else {
      put(text);
    }
    return *this;
  }
  /// Adds a number: the shortest form that reads back the same, or `digits` significant digits. No locale, no -0.
  message& number(double x, int digits = 0) {
    if (x == 0.0) return *this += "0";
    char buffer[40], plain[40];
    const auto general = digits > 0 ? std::to_chars(buffer, buffer + sizeof buffer, x, std::chars_format::general, digits)
                                    : std::to_chars(buffer, buffer + sizeof buffer, x);
    const std::string_view text(buffer, static_cast<std::size_t>(general.ptr - buffer));
    const double magnitude = x < 0 ? -x : x;
    if (magnitude >= 1e-4 && magnitude < 1e10 && text.find('e') != std::string_view::npos) {  // 1e+05 reads as 100000
      const auto fixed = digits > 0 ? std::to_chars(plain, plain + sizeof plain, x, std::chars_format::fixed, magnitude >= 1.0 ? 0 : digits + 3)
                                    : std::to_chars(plain, plain + sizeof plain, x, std::chars_format::fixed);
      if (fixed.ec == std::errc{}) return *this += {plain, static_cast<std::size_t>(fixed.ptr - plain)};
    }
    return *this += text;
  }
  /// "12.5 m", "0.8" (no unit), "-20 °C".
  message& quantity(double x, std::string_view unit_symbol, int digits = 0) {
    number(x, digits);
    return unit_symbol.empty() ? *this : (*this += " ") += unit_symbol;
  }

  std::string_view view() const { return chars_ ? std::string_view(text(chars_), chars_->size) : std::string_view(); }
  operator std::string_view() const { return view(); }
  const char* c_str() const { return chars_ ? text(chars_) : ""; }
  bool empty() const { return view().empty(); }

 private:
  /// The head of a block; its characters and a closing zero stand behind it.
  struct head {
    std::size_t size, room;
    int owners;
  };
  static char* text(head* h) { return reinterpret_cast<char*>(h + 1); }
  static head* made(std::size_t room) { return ::new (::operator new(sizeof(head) + room + 1)) head{0, room, 1}; }
  void put(std::string_view more) {
    char* end = text(chars_) + chars_->size;
    more.copy(end, more.size());
    end[more.size()] = '\0';
    chars_->size += more.size();
  }
  head* chars_ = nullptr;
};

/// Base of every error that the library throws.
class error : public std::exception {
 public:
  explicit error(message text) : text_(std::move(text)) {}
  explicit error(std::string_view text) : text_(text) {}
  explicit error(const char* text) : text_(std::string_view(text)) {}
  const char* what() const noexcept override { return text_.c_str(); }

 private:
  message text_;
};
/// An argument is outside its permitted range, not a number, or not one of the listed words.
struct range_error : error {
  using error::error;
};
/// Two arguments contradict each other (a final temperature below the initial one).
struct relation_error : error {
  using error::error;
};
/// A rulebook is unknown or cannot be composed.
struct rule_error : error {
  using error::error;
};
/// A solver did not reach the accuracy asked for.
struct convergence_error : error {
  using error::error;
};

}  // namespace v1
}  // namespace makegood
