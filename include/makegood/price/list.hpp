// SPDX-License-Identifier: MIT
// What the library calculates about prices: one line an entry. Its models are described in src/price.cpp.
#pragma once
#include "../catalogue.hpp"
#include "formulas.hpp"

namespace makegood {
inline namespace v1 {
namespace price {

using entries = list<
    price_from_markup,
    price_from_margin,
    margin_from_markup,
    markup_from_margin,
    vat_share_of_gross,
    break_even_probability>;

}  // namespace price
}  // namespace v1
}  // namespace makegood
