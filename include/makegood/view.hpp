// SPDX-License-Identifier: MIT
// A look at values that stand in a row elsewhere: tables of units, choices and arguments.
// Core: every subject uses it. std::span would do, but its header brings in the library of ranges.
#pragma once
#include <cstddef>

namespace makegood {
inline namespace v1 {

/// A view converts from arrays and containers, and to std::span where that is included.
template <class T>
class view {
 public:
  constexpr view() = default;
  constexpr view(const T* first, std::size_t size) : first_(first), size_(size) {}
  template <std::size_t N>
  constexpr view(const T (&all)[N]) : first_(all), size_(N) {}
  template <class All>
    requires requires(const All& all) { all.data(), all.size(); }
  constexpr view(const All& all) : first_(all.data()), size_(all.size()) {}

  constexpr const T* begin() const { return first_; }
  constexpr const T* end() const { return first_ + size_; }
  constexpr const T* data() const { return first_; }
  constexpr std::size_t size() const { return size_; }
  constexpr bool empty() const { return size_ == 0; }
  constexpr const T& operator[](std::size_t i) const { return first_[i]; }

 private:
  const T* first_ = nullptr;
  std::size_t size_ = 0;
};

}  // namespace v1
}  // namespace makegood
