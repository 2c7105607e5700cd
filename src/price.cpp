// SPDX-License-Identifier: MIT
// Models of the subject price: exact money, quotes, and which of several options to take.
#include <makegood/price/list.hpp>
#include <makegood/price/options.hpp>
#include <makegood/price/quote.hpp>
#include <cmath>
#include "subjects.hpp"

namespace makegood::subjects {
namespace {
namespace pr = makegood::price;
using document::array;
using document::object;

// ---- reading exact numbers -----------------------------------------------------------------------------------------------

constexpr double whole_to = 9007199254740992.0;  // up to here every whole number is a double
[[noreturn]] void refuse(const std::string& where, const std::string& why) { throw range_error(where + ": " + why); }

/// A decimal number: a text, or a number without a fraction. "48.00 GBP" names its currency, which must be that of the call.
pr::exact exact_from(const std::string& where, const document::value& v, const pr::currency* of = nullptr) {
  if (const auto* x = v.as<double>()) {
    if (!(std::fabs(*x) <= whole_to)) refuse(where, is_finite(*x) ? "so large a number is exact as text only" : "must be a decimal number as text, such as \"17.5\"");
    if (*x != std::floor(*x)) refuse(where, number_text(*x) + " is a binary fraction, which is not what it prints: give it as text, \"" + number_text(*x) + "\"");
    return pr::exact(static_cast<std::int64_t>(*x));
  }
  const auto* t = v.as<std::string>();
  if (!t) refuse(where, "must be a decimal number as text, such as \"17.5\", or a whole number, not " + std::string(document::type_name(v)));
  std::string_view digits = *t;
  if (const auto gap = digits.rfind(' '); gap != std::string_view::npos && of) {
    const auto code = digits.substr(gap + 1);
    if (code != of->name()) {
      (void)pr::make_currency(code, 2);
      refuse(where, "\"" + *t + "\" is in " + std::string(code) + ", the rest in " + std::string(of->name()) + ": no rate of exchange is assumed");
    }
    digits = digits.substr(0, gap);
  }
  try {
    return pr::decimal(digits);
  } catch (const range_error& e) {
    refuse(where, e.what());
  }
}
/// Fields of one object of a call; every message names call, place and field.
struct reader {
  std::string where;
  const object* from;
  const document::value* find(std::string_view name) const {
    const auto* v = from->find(name);
    return v && !v->is_null() ? v : nullptr;
  }
  const document::value& need(std::string_view name) const {
    const auto* v = find(name);
    if (!v) refuse(where, "\"" + std::string(name) + "\" is missing");
    return *v;
  }
  std::string at(std::string_view name) const { return where + ": " + std::string(name); }
  template <class... Name>
  void only(Name... known) const {
    constexpr std::size_t n = sizeof...(Name);
    const std::string_view names[n] = {known...};
    for (const auto& f : from->fields)
      if (((f.first != known) && ...)) {
        const auto near = document::nearest(f.first, names);
        refuse(where, "no field \"" + f.first + "\"" + (near.empty() ? "" : "; did you mean \"" + near + "\"?"));
      }
  }
  std::string text(std::string_view name) const {
    const auto* t = need(name).as<std::string>();
    if (!t) refuse(at(name), "must be a text, not " + std::string(document::type_name(need(name))));
    return *t;
  }
  std::string text_or(std::string_view name, std::string_view otherwise) const { return find(name) ? text(name) : std::string(otherwise); }
  bool truth_or(std::string_view name, bool otherwise) const {
    const auto* v = find(name);
    if (!v) return otherwise;
    const auto* b = v->as<bool>();
    if (!b) refuse(at(name), "must be true or false, not " + std::string(document::type_name(*v)));
    return *b;
  }
  double number(std::string_view name) const {
    const auto& v = need(name);
    if (v.as<std::string>()) return pr::to_double(exact_from(at(name), v));
    const auto* x = v.as<double>();
    if (!x) refuse(at(name), "must be a number, not " + std::string(document::type_name(v)));
    return *x;
  }
  double number_or(std::string_view name, double otherwise) const { return find(name) ? number(name) : otherwise; }
  std::optional<pr::exact> exact_or_none(std::string_view name, const pr::currency* of = nullptr) const {
    const auto* v = find(name);
    if (!v) return std::nullopt;
    return exact_from(at(name), *v, of);
  }
  reader inner(std::string_view name) const {
    const auto* o = need(name).as<object>();
    if (!o) refuse(at(name), "must be an object, not " + std::string(document::type_name(need(name))));
    return {at(name), o};
  }
  std::vector<std::string> texts(std::string_view name) const {
    std::vector<std::string> all;
    const auto* v = find(name);
    if (!v) return all;
    const auto* a = v->as<array>();
    if (!a) refuse(at(name), "must be a list of texts, not " + std::string(document::type_name(*v)));
    for (const auto& one : *a) {
      const auto* t = one.as<std::string>();
      if (!t) refuse(at(name), "must be a list of texts");
      all.push_back(*t);
    }
    return all;
  }
  /// A probability: a text exactly, a number to nine decimals.
  pr::exact probability(std::string_view name) const {
    const auto& v = need(name);
    const auto* x = v.as<double>();
    if (!x) return exact_from(at(name), v);
    if (!(*x >= 0.0 && *x <= 1.0)) refuse(at(name), "a probability is from 0 to 1, not " + number_text(*x));
    return pr::exact(static_cast<std::int64_t>(*x * 1e9 + 0.5), pr::wide(1000000000));
  }
};
template <class Words>
std::size_t word_of(const std::string& where, const std::string& word, const Words& words) {
  std::string known;
  std::size_t i = 0;
  for (const std::string_view w : words) {
    if (w == word) return i;
    known += (i++ ? ", \"" : "\"") + std::string(w) + "\"";
  }
  refuse(where, "\"" + word + "\" is not one of " + known);
}
pr::rounding_mode mode_of(const std::string& where, const std::string& word) { return static_cast<pr::rounding_mode>(word_of(where, word, pr::rounding_modes)); }
pr::currency currency_of(const reader& in) {
  const auto* v = in.find("currency");
  if (!v) return pr::find_currency("GBP");
  if (const auto* t = v->as<std::string>()) {
    try {
      return pr::find_currency(*t);
    } catch (const range_error& e) {
      refuse(in.where, e.what());
    }
  }
  const reader own = in.inner("currency");
  own.only("code", "digits");
  try {
    return pr::make_currency(own.text("code"), static_cast<int>(own.number("digits")));
  } catch (const range_error& e) {
    refuse(in.where, e.what());
  }
}
double minor_number(std::int64_t minor) {
  if (std::fabs(static_cast<double>(minor)) > whole_to) pr::detail::too_large();
  return static_cast<double>(minor);
}
pr::drawing drawing_of(const reader& in) {
  pr::drawing d;
  const double seed = in.number_or("seed", 1.0), draws = in.number_or("draws", 10000.0);
  if (!(seed >= 0.0 && seed <= whole_to && seed == std::floor(seed))) refuse(in.at("seed"), "a whole number from 0");
  if (!(draws >= 100.0 && draws <= 1e7 && draws == std::floor(draws))) refuse(in.at("draws"), "a whole number from 100 to 10000000");
  d.seed = static_cast<std::uint64_t>(seed);
  d.draws = static_cast<std::size_t>(draws);
  return d;
}
array list_of(const std::vector<std::string>& x) { return array(x.begin(), x.end()); }

constexpr model_argument currency_argument{"currency", "text or object", "code of ISO 4217, or {\"code\", \"digits\"} for one of your own; \"GBP\"", true};
constexpr model_argument seed_argument{"seed", "number", "of the draws; 1", true};
constexpr model_argument draws_argument{"draws", "number", "how many, where something is spread: 100 to 10000000; 10000", true};

// ---- single amounts ------------------------------------------------------------------------------------------------------

constexpr model_argument round_arguments[] = {
    {"amount", "amount", "in major units: text such as \"56.496\", a whole number or a Decimal"},
    {"mode", "text", "\"half_up\", \"half_even\", \"half_down\", \"down\" (towards 0) or \"up\" (away from 0)"},
    currency_argument};
document::value run_round(const object& inputs, const rulebook&) {
  const reader in{"round_money", &inputs};
  in.only("amount", "mode", "currency");
  const auto of = currency_of(in);
  const auto mode = mode_of(in.at("mode"), in.text("mode"));
  const auto amount = exact_from(in.at("amount"), in.need("amount"), &of);
  const auto m = pr::money::from(amount, of, mode);
  return object{{"rounded_minor", minor_number(m.minor)},
                {"rounded", m.digits()},
                {"currency", of.name()},
                {"text", array{pr::decimal_text(amount, of.digits) + " " + std::string(of.name()) + ", " + std::string(pr::rounding_texts[static_cast<std::size_t>(mode)]) + ": " + m.text() + "."}}};
}
constexpr model round_money{{"round_money", "An exact amount as whole minor units of its currency, rounded once by a named rule.", round_arguments, pr::hmrc_half_up, run_round, nullptr}};

constexpr model_argument gross_arguments[] = {
    {"gross", "amount", "price with tax, in major units"},
    {"rate_percent", "amount", "rate of tax in per cent of the price without it, 0 to 100"},
    {"mode", "text", "how the tax is rounded; \"half_up\"", true},
    currency_argument};
document::value run_gross(const object& inputs, const rulebook&) {
  const reader in{"vat_from_gross", &inputs};
  in.only("gross", "rate_percent", "mode", "currency");
  const auto of = currency_of(in);
  const auto mode = mode_of(in.at("mode"), in.text_or("mode", "half_up"));
  const auto given = exact_from(in.at("gross"), in.need("gross"), &of), percent = exact_from(in.at("rate_percent"), in.need("rate_percent"));
  const auto gross = pr::money::from(given, of, mode);
  if (!(gross.amount() == given)) refuse(in.at("gross"), pr::decimal_text(given) + " has more digits than " + std::string(of.name()));
  const auto fraction = pr::tax_fraction(percent);
  const auto vat = pr::money::from(given * fraction, of, mode), net = gross - vat;
  return object{{"vat_minor", minor_number(vat.minor)},
                {"net_minor", minor_number(net.minor)},
                {"vat", vat.digits()},
                {"net", net.digits()},
                {"fraction", pr::fraction_text(fraction)},
                {"currency", of.name()},
                {"text", array{"Tax is " + pr::fraction_text(fraction) + " of the price with it: " + gross.text() + " × " + pr::fraction_text(fraction) + " = " + pr::decimal_text(given * fraction, of.digits) +
                               ", " + std::string(pr::rounding_texts[static_cast<std::size_t>(mode)]) + ": " + vat.text() + "; without tax: " + net.text() + "."}}};
}
constexpr model vat_from_gross{{"vat_from_gross", "The tax in a price with tax, the price without it, and the fraction that the tax is of the price with it, exactly.", gross_arguments,
                                pr::vat_share_source, run_gross, nullptr}};

// ---- quotes -------------------------------------------------------------------------------------------------------------

pr::spread spread_of(const reader& in, double likely, std::string_view low, std::string_view high, std::string_view p90) {
  const std::string kind = in.text("kind");
  const auto which = static_cast<pr::spread_kind>(word_of(in.at("kind"), kind, pr::spread_kinds));
  try {
    switch (which) {
      case pr::spread_kind::triangular:
      case pr::spread_kind::pert:
        in.only("kind", low, high);
        return which == pr::spread_kind::pert ? pr::spread::pert(in.number(low), likely, in.number(high)) : pr::spread::triangular(in.number(low), likely, in.number(high));
      case pr::spread_kind::lognormal: in.only("kind", p90); return pr::spread::lognormal(likely, in.number(p90));
      case pr::spread_kind::none: in.only("kind"); break;
    }
  } catch (const range_error& e) {
    const std::string_view said = e.what();
    if (said.starts_with(in.where)) throw;
    refuse(in.where, std::string(said));
  }
  return {};
}
constexpr model_argument quote_arguments[] = {
    {"lines", "objects",
     "each with \"kind\" and, optionally, \"name\", \"vat\" (a name of `vat`, \"zero\", \"exempt\" or \"outside_scope\"), \"shown\" (to the client; true, of a call-back false) and \"currency\" (held "
     "against that of the quote). Money in major units as text, whole number or Decimal; quantities the same. \"labour\": \"time_h\", \"rate_per_h\", \"minimum\" (of what the time comes to), "
     "\"call_out\", \"increment_h\" (time is charged in whole ones, upwards). \"travel\": \"distance_km\" and \"rate_per_km\" or \"distance_miles\" and \"rate_per_mile\", \"time_h\" and \"rate_per_h\". "
     "\"materials\": \"cost\" of one, \"quantity\" (1), \"markup_percent\" of the cost or \"margin_percent\" of the price. \"parking\", \"waste\", \"fixed\": \"amount\". \"contingency\": \"percent\" of "
     "the lines before it. \"call_back\": \"probability\" and \"visit_cost\" of a second visit; it is charged in the first line of the same rate that is shown. \"spread\" of a time_h, which is its "
     "likely value (lognormal: its median): {\"kind\": \"triangular\" or \"pert\", \"low_h\", \"high_h\"} or {\"kind\": \"lognormal\", \"p90_h\"}"},
    {"vat", "object", "rates by name, in per cent of the price without tax, such as {\"standard\": \"20\", \"reduced\": \"5\"}; the first is that of lines that name none", true},
    {"rounding", "text or object",
     "of tax: \"line_half_up\", \"line_down_tenth\", \"line_nearest_half\", \"line_half_even\", \"rate_half_up\" (default), \"rate_half_even\", \"total_half_up\", \"total_half_even\", \"total_down\"; or "
     "your own: {\"scope\": \"line\", \"rate\" or \"total\", \"mode\", \"step_minor\" (\"1\"), \"total_mode\", \"source\"}",
     true},
    {"registered", "bool", "for VAT; if not, no tax is charged or shown; true", true},
    currency_argument,
    {"discount", "object", "{\"percent\"} of all lines, or {\"amount\"}; taken from each line in proportion", true},
    {"budget", "amount", "the probability that the total exceeds it is given", true},
    {"retailer", "bool", "a retailer may not round tax down; false", true},
    {"line_mode", "text", "how the price of each line is rounded to a whole minor unit; \"half_up\"", true},
    {"show_call_back", "bool", "to the client, on a line of its own; false", true},
    seed_argument,
    draws_argument};
pr::quote_line line_of(const reader& l, const pr::currency& of, bool show_call_back) {
  pr::quote_line x;
  x.name = l.text_or("name", "");
  x.kind = static_cast<pr::line_kind>(word_of(l.at("kind"), l.text("kind"), pr::line_kinds));
  switch (x.kind) {
    case pr::line_kind::labour: l.only("kind", "name", "vat", "shown", "currency", "time_h", "rate_per_h", "minimum", "call_out", "increment_h", "spread"); break;
    case pr::line_kind::travel:
      l.only("kind", "name", "vat", "shown", "currency", "time_h", "rate_per_h", "increment_h", "distance_km", "rate_per_km", "distance_miles", "rate_per_mile", "spread");
      break;
    case pr::line_kind::materials: l.only("kind", "name", "vat", "shown", "currency", "cost", "quantity", "markup_percent", "margin_percent"); break;
    case pr::line_kind::contingency: l.only("kind", "name", "vat", "shown", "currency", "percent"); break;
    case pr::line_kind::call_back: l.only("kind", "name", "vat", "shown", "currency", "probability", "visit_cost"); break;
    case pr::line_kind::parking:
    case pr::line_kind::waste:
    case pr::line_kind::fixed: l.only("kind", "name", "vat", "shown", "currency", "amount"); break;
  }
  x.vat = l.text_or("vat", "");
  x.currency = l.text_or("currency", "");
  x.shown = l.truth_or("shown", x.kind != pr::line_kind::call_back || show_call_back);
  x.time_h = l.exact_or_none("time_h");
  x.rate_per_h = l.exact_or_none("rate_per_h", &of);
  x.minimum = l.exact_or_none("minimum", &of);
  x.call_out = l.exact_or_none("call_out", &of);
  x.increment_h = l.exact_or_none("increment_h");
  if ((l.find("distance_km") || l.find("rate_per_km")) && (l.find("distance_miles") || l.find("rate_per_mile"))) refuse(l.where, "a distance in km or in miles, with a rate for the same");
  const bool miles = l.find("distance_miles") || l.find("rate_per_mile");
  x.distance_unit = miles ? "mile" : "km";
  x.distance = l.exact_or_none(miles ? "distance_miles" : "distance_km");
  x.rate_per_distance = l.exact_or_none(miles ? "rate_per_mile" : "rate_per_km", &of);
  x.cost = l.exact_or_none("cost", &of);
  x.quantity = l.exact_or_none("quantity");
  x.markup_percent = l.exact_or_none("markup_percent");
  x.margin_percent = l.exact_or_none("margin_percent");
  x.amount = l.exact_or_none("amount", &of);
  x.percent = l.exact_or_none("percent");
  if (l.find("probability")) x.probability = l.probability("probability");
  x.visit_cost = l.exact_or_none("visit_cost", &of);
  if (l.find("spread")) {
    if (!x.time_h) refuse(l.where, "a spread of a duration that is not given: \"time_h\" is missing");
    x.time_spread = spread_of(l.inner("spread"), pr::to_double(*x.time_h), "low_h", "high_h", "p90_h");
    if (x.time_spread.kind() != pr::spread_kind::lognormal && x.time_spread.kind() != pr::spread_kind::none && l.inner("spread").number("low_h") < 0.0) refuse(l.inner("spread").at("low_h"), "is below 0 h");
    if (x.time_spread.most() > 1e5) refuse(l.at("spread"), "goes beyond 100000 h");
  }
  return x;
}
document::value run_quote(const object& inputs, const rulebook&) {
  const reader in{"quote", &inputs};
  in.only("lines", "vat", "rounding", "registered", "currency", "discount", "budget", "retailer", "line_mode", "show_call_back", "seed", "draws");
  pr::quote_task t;
  t.currency = currency_of(in);
  t.registered = in.truth_or("registered", true);
  t.retailer = in.truth_or("retailer", false);
  t.line_mode = mode_of(in.at("line_mode"), in.text_or("line_mode", "half_up"));
  t.draw = drawing_of(in);
  t.budget = in.exact_or_none("budget", &t.currency);
  if (in.find("vat")) {
    const reader v = in.inner("vat");
    for (const auto& f : v.from->fields) t.rates.push_back({f.first, exact_from(v.at(f.first), f.second)});
  }
  std::string own_source;
  if (const auto* v = in.find("rounding")) {
    if (const auto* key = v->as<std::string>()) {
      t.rounding = pr::find_tax_rounding(*key);
    } else {
      const reader own = in.inner("rounding");
      own.only("scope", "mode", "step_minor", "total_mode", "source");
      const auto step = own.find("step_minor") ? exact_from(own.at("step_minor"), own.need("step_minor")) : pr::exact(1);
      if (!(step > pr::exact(0)) || step > pr::exact(1000000)) refuse(own.at("step_minor"), "above 0, to 1000000 minor units");
      own_source = own.text_or("source", "");
      t.rounding = {"your own", "your own rule", static_cast<pr::tax_scope>(word_of(own.at("scope"), own.text("scope"), pr::tax_scopes)), mode_of(own.at("mode"), own.text("mode")),
                    static_cast<std::int64_t>(step.top()), static_cast<std::int64_t>(step.bottom()), mode_of(own.at("total_mode"), own.text_or("total_mode", "half_up")), true, source{own_source, "", "stated"}};
    }
  }
  if (in.find("discount")) {
    const reader d = in.inner("discount");
    d.only("percent", "amount");
    t.discount_percent = d.exact_or_none("percent");
    t.discount_amount = d.exact_or_none("amount", &t.currency);
    if (!t.discount_percent && !t.discount_amount) refuse(d.where, "\"percent\" or \"amount\" is missing");
  }
  const auto* lines = in.need("lines").as<array>();
  if (!lines) refuse(in.at("lines"), "must be a list of objects, not " + std::string(document::type_name(in.need("lines"))));
  if (lines->size() > 10000) refuse(in.at("lines"), "at most 10000");
  const bool show = in.truth_or("show_call_back", false);
  for (std::size_t i = 0; i < lines->size(); ++i) {
    const auto* o = (*lines)[i].as<object>();
    const std::string at = "quote: lines[" + std::to_string(i) + "]";
    if (!o) refuse(at, "must be an object, not " + std::string(document::type_name((*lines)[i])));
    const auto* name = o->find("name");
    t.lines.push_back(line_of({at + (name && name->as<std::string>() ? " \"" + *name->as<std::string>() + "\"" : ""), o}, t.currency, show));
  }
  const auto r = pr::quote(t);
  const auto digits = [&](std::int64_t minor) { return pr::money{minor, r.currency}.digits(); };
  const auto or_null = [&](bool there, document::value v) { return there ? v : document::value(nullptr); };
  const pr::exact scale(pr::detail::power_of_ten(r.currency.digits), 1);
  array all, client, rates, client_text;
  for (const auto& l : r.lines) {
    all.push_back(object{{"name", l.name}, {"kind", pr::line_kinds[static_cast<std::size_t>(l.kind)]}, {"net_minor", minor_number(l.net)}, {"discount_minor", minor_number(l.discount)},
                         {"vat_rate", or_null(!l.rate.empty(), l.rate)}, {"vat", or_null(l.vat.has_value(), l.vat ? pr::decimal_text(*l.vat / scale, r.currency.digits) : std::string())},
                         {"shown", l.shown}, {"charged_in", l.within}, {"working", l.working}});
    if (!l.shown) continue;
    const std::string name = l.name.empty() ? std::string(pr::line_kinds[static_cast<std::size_t>(l.kind)]) : l.name;
    client.push_back(object{{"name", name}, {"net_minor", minor_number(l.charged)}, {"net", digits(l.charged)}, {"vat_rate", or_null(!l.rate.empty(), l.rate)}});
    client_text.push_back(name + ": " + pr::money{l.charged, r.currency}.text() + ".");
  }
  for (const auto& x : r.rates)
    rates.push_back(object{{"name", x.name}, {"rate_percent", or_null(x.percent.has_value(), x.percent ? pr::decimal_text(*x.percent) : std::string())}, {"net_minor", minor_number(x.net)},
                           {"net", digits(x.net)}, {"vat", pr::decimal_text(x.vat / scale, r.currency.digits)}});
  client_text.push_back("Net: " + pr::money{r.sums.net, r.currency}.text() + ".");
  if (t.registered) client_text.push_back("VAT: " + pr::money{r.sums.vat, r.currency}.text() + ".");
  client_text.push_back("Total: " + pr::money{r.sums.total, r.currency}.text() + ".");
  return object{{"currency", r.currency.name()},
                {"net_minor", minor_number(r.sums.net)},
                {"vat_minor", or_null(t.registered, minor_number(r.sums.vat))},
                {"total_minor", minor_number(r.sums.total)},
                {"net", digits(r.sums.net)},
                {"vat", or_null(t.registered, digits(r.sums.vat))},
                {"total", digits(r.sums.total)},
                {"discount_minor", minor_number(r.discount)},
                {"lines", all},
                {"rates", rates},
                {"client_lines", client},
                {"p10_minor", minor_number(r.p10)},
                {"p50_minor", minor_number(r.p50)},
                {"p90_minor", minor_number(r.p90)},
                {"over_budget_probability", document::number_or_null(r.over_budget)},
                {"drawn", or_null(r.spread, object{{"draws", static_cast<double>(r.draw.draws)}, {"seed", static_cast<double>(r.draw.seed)}})},
                {"rounding", object{{"rule", t.rounding.key}, {"text", t.rounding.text}, {"source", t.rounding.from.title}, {"clause", t.rounding.from.clause}, {"grade", t.rounding.from.grade}}},
                {"text", list_of(r.text)},
                {"client_text", client_text}};
}
constexpr model quote_model{{"quote",
                             "A quote in exact money: labour, travel, materials, contingency, discount, the risk of a call-back; VAT by line, rate or as a whole by a named rule of rounding; the "
                             "total, and what it comes to in one, five and nine of ten cases where durations are spread.",
                             quote_arguments, pr::hmrc_half_up, run_quote, nullptr}};

// ---- options -------------------------------------------------------------------------------------------------------------

constexpr std::string_view acts[] = {"repair", "work_around", "replace", "isolate", "decline", "other"};
constexpr model_argument options_arguments[] = {
    {"options", "objects",
     "each with \"name\", \"act\" (\"repair\", \"work_around\", \"replace\", \"isolate\", \"decline\" or \"other\"; \"isolate\" means isolated, secured and labelled), \"cost\" (due whether it succeeds or "
     "not; in major units as text, whole number or Decimal), \"cost_under\" ({hypothesis: cost}, in its place), \"spread\" of the cost, which is its likely value ({\"kind\": \"triangular\" or \"pert\", "
     "\"low\", \"high\"} or {\"kind\": \"lognormal\", \"p90\"}), \"minutes\", \"cures\" (list of hypotheses, or {hypothesis: probability of success}), \"if_it_fails\" (name of the option that follows, or "
     "\"cheapest\" of those left), \"cost_if_uncured\" (what follows when the fault stays), \"not_proved\" (list of what it leaves without proof), \"isolates\", \"secures\", \"labels\" (false), \"call_back\" "
     "({\"probability\", \"cost\"} of a second visit after a cure)"},
    {"probabilities", "object", "{hypothesis: probability}, adding up to 1, as a diagnosis gives them"},
    {"dangerous", "texts", "the hypotheses under which life or fire is at risk while they are not cured", true},
    {"budget", "amount", "the probability that an option exceeds it is given", true},
    currency_argument,
    {"negligible_probability", "number", "a dangerous hypothesis no more likely than this counts as excluded, 0 to 0.001; 0", true},
    seed_argument,
    draws_argument};
document::value run_options(const object& inputs, const rulebook&) {
  const reader in{"compare_options", &inputs};
  in.only("options", "probabilities", "dangerous", "budget", "currency", "negligible_probability", "seed", "draws");
  const auto of = currency_of(in);
  pr::options_task t;
  t.draw = drawing_of(in);
  t.negligible = in.number_or("negligible_probability", 0.0);
  if (const auto b = in.exact_or_none("budget", &of)) t.budget = pr::to_double(*b);
  const reader p = in.inner("probabilities");
  for (const auto& f : p.from->fields) t.hypotheses.push_back({f.first, p.number(f.first), false});
  const auto hypothesis = [&](const std::string& where, const std::string& name) {
    std::vector<std::string_view> names;
    for (const auto& h : t.hypotheses) names.push_back(h.name);
    for (std::size_t h = 0; h < names.size(); ++h)
      if (names[h] == name) return h;
    const auto near = document::nearest(name, names);
    refuse(where, "\"" + name + "\" is not among the probabilities" + (near.empty() ? "" : "; did you mean \"" + near + "\"?"));
  };
  for (const auto& name : in.texts("dangerous")) t.hypotheses[hypothesis(in.at("dangerous"), name)].dangerous = true;
  const auto* list_ = in.need("options").as<array>();
  if (!list_) refuse(in.at("options"), "must be a list of objects, not " + std::string(document::type_name(in.need("options"))));
  std::vector<std::string> followers, act;
  for (std::size_t i = 0; i < list_->size(); ++i) {
    const auto* o = (*list_)[i].as<object>();
    const std::string at = "compare_options: options[" + std::to_string(i) + "]";
    if (!o) refuse(at, "must be an object, not " + std::string(document::type_name((*list_)[i])));
    const auto* named = o->find("name");
    const reader x{at + (named && named->as<std::string>() ? " \"" + *named->as<std::string>() + "\"" : ""), o};
    x.only("name", "act", "cost", "cost_under", "spread", "minutes", "cures", "if_it_fails", "cost_if_uncured", "not_proved", "isolates", "secures", "labels", "call_back");
    pr::option_row row;
    row.name = x.text("name");
    act.push_back(std::string(acts[word_of(x.at("act"), x.text_or("act", "other"), acts)]));
    const bool isolate = act.back() == "isolate";
    row.isolates = x.truth_or("isolates", isolate), row.secures = x.truth_or("secures", isolate), row.labels = x.truth_or("labels", isolate);
    if (!x.find("cost") && !x.find("cost_under")) refuse(x.where, "\"cost\" is missing");
    const double cost = x.find("cost") ? pr::to_double(*x.exact_or_none("cost", &of)) : 0.0;
    row.cost = pr::spread(cost);
    if (x.find("spread")) row.cost = spread_of(x.inner("spread"), cost, "low", "high", "p90");
    if (row.cost.kind() == pr::spread_kind::none) row.cost = pr::spread(cost);
    if (x.find("cost_under")) {
      const reader under = x.inner("cost_under");
      row.cost_under.resize(t.hypotheses.size());
      for (const auto& f : under.from->fields) row.cost_under[hypothesis(under.where, f.first)] = pr::to_double(exact_from(under.at(f.first), f.second, &of));
      if (!x.find("cost"))
        for (std::size_t h = 0; h < t.hypotheses.size(); ++h)
          if (!row.cost_under[h]) refuse(under.where, "\"" + t.hypotheses[h].name + "\" is missing, and there is no \"cost\" for it");
    }
    row.minutes = x.number_or("minutes", 0.0);
    row.success.assign(t.hypotheses.size(), 0.0);
    if (const auto* c = x.find("cures")) {
      if (c->as<object>()) {
        const reader cures = x.inner("cures");
        for (const auto& f : cures.from->fields) row.success[hypothesis(cures.where, f.first)] = cures.number(f.first);
      } else {
        for (const auto& name : x.texts("cures")) row.success[hypothesis(x.at("cures"), name)] = 1.0;
      }
    }
    if (const auto u = x.exact_or_none("cost_if_uncured", &of)) row.cost_uncured = pr::to_double(*u);
    row.unproved = x.texts("not_proved");
    if (x.find("call_back")) {
      const reader back = x.inner("call_back");
      back.only("probability", "cost");
      row.call_back_probability = back.number("probability");
      (void)back.need("cost");
      row.call_back_cost = pr::to_double(*back.exact_or_none("cost", &of));
    }
    followers.push_back(x.text_or("if_it_fails", ""));
    t.options.push_back(std::move(row));
  }
  for (std::size_t i = 0; i < followers.size(); ++i) {
    if (followers[i].empty()) continue;
    int next = followers[i] == "cheapest" ? pr::option_row::cheapest_next : -1;
    for (std::size_t o = 0; o < t.options.size(); ++o)
      if (t.options[o].name == followers[i]) next = static_cast<int>(o);
    if (next == -1) refuse("compare_options: options[" + std::to_string(i) + "] \"" + t.options[i].name + "\"", "if_it_fails = \"" + followers[i] + "\" is no option");
    t.options[i].next = next;
  }
  const auto r = pr::compare_options(t);

  const std::string code = " " + std::string(of.name());
  const auto amount = [&](double x) {  // a statistic, printed to the minor unit
    const double scale = std::pow(10.0, of.digits);
    if (!(std::fabs(x * scale) < whole_to)) return number_text(x) + code;
    return pr::money{static_cast<std::int64_t>(std::llround(x * scale)), of}.text();
  };
  const auto name_of = [&](int o) { return o < 0 ? document::value(nullptr) : document::value(r.options[static_cast<std::size_t>(o)].name); };
  const auto named = [&](int o) { return "\"" + r.options[static_cast<std::size_t>(o)].name + "\""; };
  array rows, flips;
  std::vector<std::string> text;
  for (std::size_t o = 0; o < r.options.size(); ++o) {
    const auto& x = r.options[o];
    array plan;
    std::string way;
    for (const auto step : x.plan) {
      plan.push_back(r.options[step].name);
      way += (way.empty() ? "" : ", and if that fails ") + r.options[step].name;
    }
    object under, regret;
    for (std::size_t h = 0; h < t.hypotheses.size(); ++h) {
      under.set(t.hypotheses[h].name, x.cost[h]);
      if (x.permitted) regret.set(t.hypotheses[h].name, x.regret[h]);
    }
    rows.push_back(object{{"name", x.name},
                          {"act", act[o]},
                          {"permitted", x.permitted},
                          {"reasons", list_of(x.reasons)},
                          {"plan", plan},
                          {"expected_cost", x.expected},
                          {"expected_call_back_cost", x.expected_call_back},
                          {"expected_minutes", x.expected_minutes},
                          {"worst_cost", x.worst},
                          {"p10_cost", x.p10},
                          {"p50_cost", x.p50},
                          {"p90_cost", x.p90},
                          {"over_budget_probability", document::number_or_null(x.over_budget)},
                          {"success_probability", x.success},
                          {"cured_probability", x.cured},
                          {"danger_left_probability", x.danger_left},
                          {"pays_above_probability", document::number_or_null(x.pays_above)},
                          {"not_proved", list_of(x.unproved)},
                          {"cost_under", under},
                          {"regret_under", x.permitted ? document::value(regret) : document::value(nullptr)},
                          {"greatest_regret", document::number_or_null(x.greatest_regret)},
                          {"dominated_by", name_of(x.dominated_by)}});
    std::string said = way + ": " + amount(x.expected) + " expected, " + amount(x.worst) + " at worst" + (x.permitted ? "" : "; not permitted");
    for (const auto& why : x.reasons) said += "; " + why;
    if (x.dominated_by >= 0) said += "; never cheaper than " + named(x.dominated_by);
    text.push_back(said + ".");
  }
  for (const auto& f : r.flips) {
    flips.push_back(object{{"hypothesis", t.hypotheses[f.hypothesis].name}, {"now", f.now}, {"at", f.at}, {"from", r.options[f.from].name}, {"to", r.options[f.to].name}});
    text.push_back(std::string(f.at < f.now ? "Below " : "Above ") + number_text(f.at, 3) + " for \"" + t.hypotheses[f.hypothesis].name + "\" (now " + number_text(f.now, 3) + "), \"" + r.options[f.to].name +
                   "\" would be cheaper than \"" + r.options[f.from].name + "\".");
  }
  if (r.cheapest >= 0) {
    text.push_back("Of what is permitted the cheapest is " + named(r.cheapest) + "; least to regret has " + named(r.least_regret) + "; the least worst case has " + named(r.least_worst) + ".");
    text.push_back("Knowing the fault beforehand would be worth " + amount(r.evpi) + " at most: a test that costs more cannot pay for itself by the price alone.");
  } else {
    text.push_back("None of these options is permitted as given.");
  }
  text.push_back(r.isolation_among_them ? "Isolating, securing and labelling is always on offer." : "Isolating, securing and labelling is always on offer: it is not among these options, give its cost.");
  return object{{"currency", of.name()},
                {"cheapest", name_of(r.cheapest)},
                {"least_regret", name_of(r.least_regret)},
                {"least_worst_case", name_of(r.least_worst)},
                {"expected_cost", r.cheapest < 0 ? document::value(nullptr) : document::value(r.options[static_cast<std::size_t>(r.cheapest)].expected)},
                {"value_of_knowing", document::number_or_null(r.evpi)},
                {"options", rows},
                {"flips", flips},
                {"isolation_among_them", r.isolation_among_them},
                {"drawn", object{{"draws", static_cast<double>(t.draw.draws)}, {"seed", static_cast<double>(t.draw.seed)}}},
                {"text", list_of(text)},
                {"cautions", array{"Danger is not weighed against money: what may leave it, or leaves something unproved, is permitted only isolated, secured and labelled.",
                                   "Prove dead before touching; a dead test comes before a live one."}}};
}
constexpr model options_model{{"compare_options",
                               "Repair, work around, replace, isolate or decline, from the probabilities of a diagnosis: expected cost, spread and worst case of each, attempts and what follows their "
                               "failure, regret, what is left dangerous or without proof, where the choice turns, and what knowing would be worth.",
                               options_arguments, {"Middleton, Value of information in decision trees (textbook chapter 19)", "figure 19.2, expected values of acts"}, run_options, nullptr}};

}  // namespace

void price(std::vector<entry>& all) {
  append(all, "price", makegood::price::entries{});
  append(all, "price", list<round_money, vat_from_gross, quote_model, options_model>{});
}
}  // namespace makegood::subjects
