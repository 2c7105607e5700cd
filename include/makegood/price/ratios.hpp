// SPDX-License-Identifier: MIT
// Markup, margin and tax as plain ratios. Each percentage says what it is a percentage of.
// Subject: price. Real numbers: exact money, rounded once at a stated place, is price/money.hpp.
#pragma once
#include "../formula.hpp"

namespace makegood {
inline namespace v1 {
namespace price {

inline constexpr source margin_source{"Business mathematics question bank", "explanation 3: margin on the price, markup on the cost", "worked-example"};
inline constexpr source vat_share_source{"HMRC, Calculating VAT for VAT-inclusive and VAT-exclusive prices", "VAT fraction: rate/(100 + rate)", "regulation"};
inline constexpr source cost_loss_source{"Doss-Gollin, Rice University CEVE 421/521, Value of information lectures", "week 7, cost/loss ratio", "worked-example"};

namespace detail {
inline constexpr auto whole = constant(100.0, unit::percent);  ///< taken off in per cent, the difference is exact
inline constexpr arg cost_arg = arg{"cost", "C", unit::one, between(0, 1e12), "cost, in any currency"}.usually(5, 2000);
inline constexpr arg markup_arg = arg{"markup_percent", "m", unit::percent, between(0, 10000), "markup, in per cent of the cost"}.usually(5, 60);
inline constexpr arg margin_arg = arg{"margin_percent", "g", unit::percent, range{0.0, 100.0, false, true}, "margin, in per cent of the price"}.usually(5, 50);
}  // namespace detail

inline constexpr auto price_from_markup = formula(
    out{"price_from_markup", "P", unit::one, "Price of what costs C with a markup in per cent of the cost, in the currency of the cost."},
    in(detail::cost_arg, detail::markup_arg), margin_source, [](auto cost, auto markup) { return cost * (1.0 + percent(markup)); },
    remarks{"exact to rounding; a price to charge is rounded once, by quote", "the cost without markup"});

inline constexpr auto price_from_margin = formula(
    out{"price_from_margin", "P", unit::one, "Price of what costs C that leaves a margin in per cent of the price, in the currency of the cost."},
    in(detail::cost_arg, detail::margin_arg), margin_source, [](auto cost, auto margin) { return cost / percent(detail::whole - margin); },
    remarks{"exact to rounding; a price to charge is rounded once, by quote", "the cost without margin; no price leaves 100 %"});

inline constexpr auto margin_from_markup = formula(
    out{"margin_from_markup", "g", unit::percent, "Margin, in per cent of the price, that a markup in per cent of the cost leaves."},
    in(detail::markup_arg), margin_source,
    [](auto markup) { return in_percent(markup / (detail::whole + markup)); },
    remarks{"exact to rounding", "0 % without markup"});

inline constexpr auto markup_from_margin = formula(
    out{"markup_from_margin", "m", unit::percent, "Markup, in per cent of the cost, that leaves a margin in per cent of the price."},
    in(detail::margin_arg), margin_source,
    [](auto margin) { return in_percent(margin / (detail::whole - margin)); },
    remarks{"exact to rounding", "0 % without margin; grows without end towards 100 %"});

inline constexpr auto vat_share_of_gross = formula(
    out{"vat_share_of_gross", "f", unit::one, "Share of a price with tax that is tax, when the rate is in per cent of the price without it."},
    in(arg{"vat_rate_percent", "r", unit::percent, between(0, 100), "rate, in per cent of the price without tax"}.usually(5, 27)), vat_share_source,
    [](auto rate) { return rate / (detail::whole + rate); },
    remarks{"exact to rounding; vat_from_gross gives the fraction in lowest terms and exact money", "0 at the zero rate"});

inline constexpr auto break_even_probability = formula(
    out{"break_even_probability", "p", unit::one, "Probability of success above which an act pays: what it costs over what it saves when it succeeds."},
    in(arg{"cost", "C", unit::one, between(0, 1e12), "cost of the attempt or protection, whether it succeeds or not"}.usually(20, 300),
       arg{"saving", "L", unit::one, positive_to(1e12), "what it saves when it succeeds (the replacement, the loss), in the same currency"}.usually(301, 2000)),
    cost_loss_source, [](auto cost, auto saving) { return cost / saving; },
    requires_that([](auto cost, auto saving) { return cost <= saving; }, "the act costs no more than it can save: else it never pays"),
    remarks{"exact to rounding", "0 for what costs nothing; 1 where the act costs all that it can save"});

}  // namespace price
}  // namespace v1
}  // namespace makegood
