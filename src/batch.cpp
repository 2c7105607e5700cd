// SPDX-License-Identifier: MIT
// Compiled once for each instruction set, with -DMAKEGOOD_ISA_TAG=<its name>. Nothing here may leave a function without that
// name in its own: the linker would keep one copy for every processor. tests/batch_symbols.cmake holds it to that.
#include <makegood/scalar/batch_check.hpp>
#include <makegood/scalar/batch_draw.hpp>

#include <makegood/air/list.hpp>
#include <makegood/electrical/list.hpp>
#include <makegood/heating/list.hpp>
#include <makegood/lighting/list.hpp>
#include <makegood/price/list.hpp>
#include <makegood/sensing/list.hpp>
#include <makegood/setting_out/list.hpp>
#include "batch.hpp"

namespace makegood::subjects::MAKEGOOD_ISA_TAG {
namespace {

template <const auto& Item>
constexpr batch_row row_of() {
  using T = std::remove_cvref_t<decltype(Item)>;
  if constexpr (requires { Item.kernel; }) return {&Item, &v1::MAKEGOOD_ISA_TAG::batch<Item>::run, &v1::MAKEGOOD_ISA_TAG::batch_slopes<Item>::run, nullptr};
  else if constexpr (requires { T::is_check; }) return {&Item, nullptr, nullptr, &v1::MAKEGOOD_ISA_TAG::batch_check<Item>::run};
  else return {nullptr, nullptr, nullptr, nullptr};
}
template <class... List>
struct table;
template <const auto&... A>
struct table<list<A...>> {
  static constexpr batch_row rows[] = {row_of<A>()...};
};
template <const auto&... A, const auto&... B, class... Rest>
struct table<list<A...>, list<B...>, Rest...> : table<list<A..., B...>, Rest...> {};
using all = table<makegood::electrical::entries, makegood::sensing::entries, makegood::heating::entries, makegood::air::entries,
                  makegood::setting_out::entries, makegood::lighting::entries, makegood::price::entries>;

constexpr draw_table draws = v1::MAKEGOOD_ISA_TAG::batch_draw::table();

#define MAKEGOOD_TEXT(x) #x
#define MAKEGOOD_TEXT_OF(x) MAKEGOOD_TEXT(x)

}  // namespace

batch_table batches() { return {MAKEGOOD_TEXT_OF(MAKEGOOD_ISA_TAG), all::rows, sizeof all::rows / sizeof all::rows[0], &draws}; }

}  // namespace makegood::subjects::MAKEGOOD_ISA_TAG
