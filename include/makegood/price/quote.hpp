// SPDX-License-Identifier: MIT
// A quote in exact money: labour, travel, materials, discount, contingency, the risk of a call-back, tax by named rules, totals with their
// working, and what the total may come to when durations are spread.
// Subject: price. Opt-in.
#pragma once
#include <algorithm>
#include <optional>
#include <span>
#include <string>
#include <utility>
#include <vector>
#include "money.hpp"
#include "spread.hpp"

namespace makegood {
inline namespace v1 {
namespace price {

enum class line_kind : unsigned char { labour, travel, materials, parking, waste, fixed, contingency, call_back };
inline constexpr std::string_view line_kinds[] = {"labour", "travel", "materials", "parking", "waste", "fixed", "contingency", "call_back"};

/// One line. Which numbers count says its kind; all money is in major units of the currency of the quote.
struct quote_line {
  std::string name{};
  line_kind kind = line_kind::fixed;
  std::optional<exact> time_h{}, rate_per_h{};          ///< labour, and the time of travel
  std::optional<exact> minimum{}, call_out{};           ///< labour: the least that its time is charged at; a sum for coming
  std::optional<exact> increment_h{};                   ///< time is charged in whole steps of this, upwards
  std::optional<exact> distance{}, rate_per_distance{}; ///< travel
  std::string distance_unit = "km";
  std::optional<exact> cost{}, quantity{};              ///< materials: cost of one, and how many (1)
  std::optional<exact> markup_percent{};                ///< in per cent of the cost
  std::optional<exact> margin_percent{};                ///< in per cent of the price
  std::optional<exact> amount{};                        ///< parking, waste, fixed
  std::optional<exact> percent{};                       ///< contingency: in per cent of all lines before it
  std::optional<exact> probability{}, visit_cost{};     ///< call-back: how likely, and what the visit costs
  std::string vat = "";                                 ///< name of a rate; empty: the default
  std::string currency = "";                            ///< only to be held against that of the quote
  bool shown = true;                                    ///< to the client; of a call-back only when asked for
  spread time_spread{};                                 ///< of the time, in hours; none: as given
};
/// A named rate of tax. Beside those of the caller there are "zero", "exempt" and "outside_scope".
struct vat_rate {
  std::string name;
  std::optional<exact> percent;  ///< none: exempt, or outside the scope
};
struct quote_task {
  std::vector<quote_line> lines{};
  price::currency currency{{'G', 'B', 'P', '\0'}, 2};
  std::vector<vat_rate> rates{};
  std::string default_rate = "";  ///< empty: the first of `rates`
  bool registered = true;
  bool retailer = false;
  tax_rounding rounding = tax_roundings[4];
  rounding_mode line_mode = rounding_mode::half_up;  ///< each line's price to a whole minor unit
  std::optional<exact> discount_percent{}, discount_amount{};
  std::optional<exact> budget{};
  drawing draw{};
};

struct quoted_line {
  std::string name{};
  line_kind kind = line_kind::fixed;
  std::int64_t net = 0;       ///< as its working says, before discount
  std::int64_t discount = 0;  ///< its part of the discount
  std::string rate{};         ///< name of its rate of tax
  std::optional<exact> vat{}; ///< minor units, of what is charged under it; only where tax goes by line
  bool shown = true;
  std::size_t within = 0;     ///< the line that it is charged in: itself, or that which hides it
  std::int64_t charged = 0;   ///< what the client sees on this line: its own and what hides in it, less discount
  std::string working{};
};
struct quoted_rate {
  std::string name{};
  std::optional<exact> percent{};
  std::int64_t net = 0;
  exact vat{};  ///< minor units; whole unless tax is rounded as a whole or by lines of less than one
};
struct quote_sums {
  std::int64_t net = 0, vat = 0, total = 0;
};
struct quote_result {
  price::currency currency{};
  std::vector<quoted_line> lines{};
  std::vector<quoted_rate> rates{};
  quote_sums sums{};
  std::int64_t discount = 0;
  bool spread = false;  ///< some duration is
  std::int64_t p10 = 0, p50 = 0, p90 = 0;
  double mean = 0.0;    ///< of the drawn totals, minor units
  double over_budget = no_number;
  drawing draw{};
  std::vector<std::string> text{};
};

namespace detail {

/// Divides a whole amount in proportion to weights from 0: largest remainders, the first of equal ones. The parts add up to it.
inline std::vector<std::int64_t> apportioned(std::int64_t amount, std::span<const std::int64_t> weights) {
  std::vector<std::int64_t> part(weights.size(), 0);
  wide sum = 0;
  for (const auto w : weights) sum += w;
  if (sum <= 0) return part;
  std::vector<std::pair<wide, std::size_t>> rest;
  wide given = 0;
  for (std::size_t i = 0; i < weights.size(); ++i) {
    const wide share = times(amount, weights[i]);
    part[i] = static_cast<std::int64_t>(share / sum);
    given += part[i];
    rest.emplace_back(share % sum, i);
  }
  std::stable_sort(rest.begin(), rest.end(), [](const auto& a, const auto& b) { return a.first > b.first; });
  for (std::size_t k = 0; k < rest.size() && given < amount; ++k, ++given) ++part[rest[k].second];
  return part;
}

/// A quote whose lines are checked; prices them for given times.
class quoting {
 public:
  explicit quoting(const quote_task& task) : t_(task), scale_(power_of_ten(task.currency.digits), 1) {
    if (t_.lines.empty()) throw range_error("quote: at least one line");
    if (t_.retailer && !t_.rounding.retailers)
      throw relation_error("quote: rounding: a retailer may not round tax as \"" + std::string(t_.rounding.key) + "\" does (" + std::string(t_.rounding.from.clause) + ")");
    all_rates_ = t_.rates;
    for (std::size_t i = 0; i < all_rates_.size(); ++i) {
      const auto& r = all_rates_[i];
      if (r.percent) demand_tax_rate(*r.percent, "quote: vat \"" + r.name + "\"");
      for (const std::string_view own : {"zero", "exempt", "outside_scope"})
        if (r.name == own) throw range_error("quote: vat: the name \"" + r.name + "\" has its own meaning: give the rate another one");
      for (std::size_t j = 0; j < i; ++j)
        if (all_rates_[j].name == r.name) throw range_error("quote: vat: the name \"" + r.name + "\" stands twice");
    }
    all_rates_.push_back({"zero", exact(0)});
    all_rates_.push_back({"exempt", std::nullopt});
    all_rates_.push_back({"outside_scope", std::nullopt});
    if (t_.registered && t_.rates.empty() && t_.default_rate.empty())
      for (std::size_t i = 0; i < t_.lines.size(); ++i)
        if (t_.lines[i].vat.empty()) throw range_error("quote: lines[" + std::to_string(i) + "]: no rate of tax: give \"vat\" with its rates, a rate to the line, or \"registered\" false");
    if (t_.discount_percent && t_.discount_amount) throw relation_error("quote: discount: in per cent or as an amount, not both");
    if (t_.discount_percent && (t_.discount_percent->negative() || *t_.discount_percent > exact(100)))
      throw range_error("quote: discount: " + decimal_text(*t_.discount_percent) + " % must be from 0 to 100 %");
    if (t_.discount_amount && t_.discount_amount->negative()) throw range_error("quote: discount: " + decimal_text(*t_.discount_amount) + " must be 0 or more");
    if (t_.budget && t_.budget->negative()) throw range_error("quote: budget: " + decimal_text(*t_.budget) + " must be 0 or more");
    for (std::size_t i = 0; i < t_.lines.size(); ++i) {
      check(i);
      rate_.push_back(t_.registered ? rate_of(i) : 0);
    }
    // what is not shown is charged in the first line shown of the same rate; where there is none it is shown
    for (std::size_t i = 0; i < t_.lines.size(); ++i) {
      std::size_t in = i;
      if (!t_.lines[i].shown)
        for (std::size_t j = t_.lines.size(); j-- > 0;)
          if (t_.lines[j].shown && rate_[j] == rate_[i]) in = j;
      within_.push_back(in);
    }
  }

  /// "lines[2] \"cable\""
  std::string place(std::size_t i) const { return "quote: lines[" + std::to_string(i) + "]" + (t_.lines[i].name.empty() ? "" : " \"" + t_.lines[i].name + "\""); }
  /// What a line cannot do, said with its place.
  template <class F>
  auto named(std::size_t i, const F& f) const {
    try {
      return f();
    } catch (const range_error& e) {
      throw range_error(place(i) + ": " + e.what());
    }
  }
  /// The price of a line before rounding, in major units; with the lines before it for a contingency.
  exact price_of(std::size_t i, const std::optional<exact>& time, const exact& before, std::string* working = nullptr) const {
    const quote_line& l = t_.lines[i];
    const std::string code = " " + std::string(t_.currency.name());
    const auto say = [&](const std::string& words) {
      if (working) *working += words;
    };
    exact sum;
    if (time) {
      exact charged = *time;
      if (l.increment_h) charged = rounded(charged, rounding_mode::up, *l.increment_h);
      sum = charged * *l.rate_per_h;
      say(decimal_text(charged) + " h × " + decimal_text(*l.rate_per_h, t_.currency.digits) + code + "/h");
      if (l.minimum && sum < *l.minimum) {
        say(" = " + decimal_text(sum, t_.currency.digits) + code + ", below the minimum charge of " + decimal_text(*l.minimum, t_.currency.digits) + code);
        sum = *l.minimum;
      }
    }
    if (l.call_out) {
      sum = sum + *l.call_out;
      say((time ? " + " : "") + decimal_text(*l.call_out, t_.currency.digits) + code + " for coming");
    }
    if (l.distance) {
      sum = sum + *l.distance * *l.rate_per_distance;
      say(std::string(time ? " + " : "") + decimal_text(*l.distance) + " " + l.distance_unit + " × " + decimal_text(*l.rate_per_distance, t_.currency.digits) + code + "/" + l.distance_unit);
    }
    if (l.cost) {
      const exact quantity = l.quantity.value_or(exact(1));
      sum = *l.cost * quantity;
      say((l.quantity ? decimal_text(quantity) + " × " : std::string()) + decimal_text(*l.cost, t_.currency.digits) + code);
      if (l.markup_percent) {
        sum = sum * (exact(1) + *l.markup_percent / exact(100));
        say(" × (1 + " + decimal_text(*l.markup_percent) + "/100), markup in per cent of the cost");
      }
      if (l.margin_percent) {
        sum = sum / (exact(1) - *l.margin_percent / exact(100));
        say(" / (1 - " + decimal_text(*l.margin_percent) + "/100), margin in per cent of the price");
      }
    }
    if (l.amount) {
      sum = *l.amount;
      say(decimal_text(sum, t_.currency.digits) + code);
    }
    if (l.kind == line_kind::contingency) {
      sum = before * *l.percent / exact(100);
      say(decimal_text(*l.percent) + " % of the lines before, " + decimal_text(before, t_.currency.digits) + code);
    }
    if (l.kind == line_kind::call_back) {
      sum = *l.probability * *l.visit_cost;
      say("probability " + decimal_text(*l.probability) + " × " + decimal_text(*l.visit_cost, t_.currency.digits) + code + " for a second visit");
    }
    return sum;
  }
  std::int64_t rounded_minor(const exact& major) const { return money::from(major, t_.currency, t_.line_mode).minor; }

  /// Net prices of all lines in minor units, for these times.
  void nets(const std::vector<std::optional<exact>>& times_, std::vector<std::int64_t>& net, quote_result* say = nullptr) const {
    wide before = 0;
    net.resize(t_.lines.size());
    for (std::size_t i = 0; i < t_.lines.size(); ++i) {
      std::string working;
      const exact before_major = exact(before, 1) / scale_;
      const exact price = named(i, [&] { return price_of(i, times_[i], before_major, say ? &working : nullptr); });
      net[i] = named(i, [&] { return rounded_minor(price); });
      before += net[i];
      if (say) {
        working += " = " + decimal_text(price, t_.currency.digits);
        if (exact shown = exact(net[i]) / scale_; !(shown == price)) working += ", rounded " + std::string(rounding_texts[static_cast<std::size_t>(t_.line_mode)]) + ": " + decimal_text(shown, t_.currency.digits);
        say->lines[i].working = working + " " + std::string(t_.currency.name());
      }
    }
  }
  /// Discount, tax and totals of net prices.
  quote_sums totals(const std::vector<std::int64_t>& net, quote_result* say = nullptr) const {
    const std::size_t n = net.size();
    wide lines_sum = 0;
    for (const auto x : net) lines_sum += x;
    std::int64_t discount = 0;
    if (t_.discount_percent) discount = money::checked(rounded(exact(lines_sum, 1) * *t_.discount_percent / exact(100), t_.line_mode).top(), t_.currency).minor;
    if (t_.discount_amount) {
      discount = rounded_minor(*t_.discount_amount);
      if (discount > lines_sum) {
        if (say) throw relation_error("quote: discount: " + decimal_text(*t_.discount_amount, t_.currency.digits) + " is more than all lines together");
        discount = static_cast<std::int64_t>(lines_sum);
      }
    }
    const auto parts = discount ? apportioned(discount, net) : std::vector<std::int64_t>(n, 0);
    std::vector<std::int64_t> charged(n, 0);
    for (std::size_t i = 0; i < n; ++i) charged[within_[i]] += net[i] - parts[i];

    std::vector<wide> by_rate(all_rates_.size(), 0);
    std::vector<exact> tax(all_rates_.size());
    exact sum;
    const exact step = t_.rounding.step();
    std::vector<std::optional<exact>> of_line(n);
    if (t_.registered) {
      for (std::size_t i = 0; i < n; ++i) {
        by_rate[rate_[i]] += charged[i];
        const auto& percent = all_rates_[rate_[i]].percent;
        if (!percent || within_[i] != i) continue;
        if (t_.rounding.scope != tax_scope::line) continue;
        of_line[i] = rounded(exact(charged[i]) * *percent / exact(100), t_.rounding.mode, step);
        tax[rate_[i]] = tax[rate_[i]] + *of_line[i];
      }
      for (std::size_t r = 0; r < all_rates_.size(); ++r) {
        const auto& percent = all_rates_[r].percent;
        if (percent && t_.rounding.scope != tax_scope::line) {
          tax[r] = exact(by_rate[r], 1) * *percent / exact(100);
          if (t_.rounding.scope == tax_scope::rate) tax[r] = rounded(tax[r], t_.rounding.mode, step);
        }
        sum = sum + tax[r];
      }
    }
    const exact vat = rounded(sum, t_.rounding.scope == tax_scope::total ? t_.rounding.mode : t_.rounding.total, t_.rounding.scope == tax_scope::total ? step : exact(1));
    quote_sums s;
    s.net = money::checked(lines_sum - discount, t_.currency).minor;
    s.vat = money::checked(rounded(vat, t_.rounding.total).top(), t_.currency).minor;
    s.total = money::checked(wide(s.net) + s.vat, t_.currency).minor;
    if (say) {
      say->discount = discount;
      for (std::size_t i = 0; i < n; ++i) {
        auto& l = say->lines[i];
        l.net = net[i], l.discount = parts[i], l.charged = charged[i], l.within = within_[i], l.vat = of_line[i];
        l.shown = within_[i] == i;
        l.rate = t_.registered ? all_rates_[rate_[i]].name : std::string();
      }
      if (t_.registered)
        for (std::size_t r = 0; r < all_rates_.size(); ++r)
          if (std::find(rate_.begin(), rate_.end(), r) != rate_.end()) say->rates.push_back({all_rates_[r].name, all_rates_[r].percent, static_cast<std::int64_t>(by_rate[r]), tax[r]});
    }
    return s;
  }

 private:
  std::size_t rate_of(std::size_t i) const {
    const std::string& own = t_.lines[i].vat;
    const std::string name = !own.empty() ? own : !t_.default_rate.empty() ? t_.default_rate : t_.rates.front().name;
    std::string known;
    for (std::size_t r = 0; r < all_rates_.size(); ++r) {
      if (all_rates_[r].name == name) return r;
      known += (known.empty() ? "\"" : ", \"") + all_rates_[r].name + "\"";
    }
    throw range_error(place(i) + ": vat = \"" + name + "\" is not one of " + known);
  }
  void check(std::size_t i) const {
    const quote_line& l = t_.lines[i];
    const auto refuse = [&](const std::string& why) { throw range_error(place(i) + ": " + why); };
    const auto from_zero = [&](const std::optional<exact>& x, std::string_view what, std::string_view unit) {
      if (x && x->negative()) refuse(std::string(what) + " = " + decimal_text(*x) + std::string(unit) + " is below 0");
    };
    const auto both = [&](const std::optional<exact>& a, const std::optional<exact>& b, std::string_view first, std::string_view second) {
      if (a.has_value() != b.has_value()) refuse(std::string(a ? second : first) + " is missing beside " + std::string(a ? first : second));
    };
    if (!l.currency.empty() && l.currency != t_.currency.name()) refuse("is in " + l.currency + ", the quote in " + std::string(t_.currency.name()) + ": no rate of exchange is assumed");
    from_zero(l.time_h, "time_h", " h");
    from_zero(l.rate_per_h, "rate_per_h", "");
    from_zero(l.minimum, "minimum", "");
    from_zero(l.call_out, "call_out", "");
    from_zero(l.distance, "distance", " " + l.distance_unit);
    from_zero(l.rate_per_distance, "rate_per_distance", "");
    from_zero(l.cost, "cost", "");
    from_zero(l.quantity, "quantity", "");
    from_zero(l.amount, "amount", "");
    from_zero(l.markup_percent, "markup_percent", " %");
    from_zero(l.margin_percent, "margin_percent", " %");
    from_zero(l.percent, "percent", " %");
    from_zero(l.visit_cost, "visit_cost", "");
    from_zero(l.probability, "probability", "");
    if (l.increment_h && !(*l.increment_h > exact(0))) refuse("increment_h must be above 0");
    if (l.time_h && *l.time_h > exact(10000)) refuse("time_h = " + decimal_text(*l.time_h) + " h is above 10000 h; if it was in minutes, divide by 60");
    both(l.time_h, l.rate_per_h, "time_h", "rate_per_h");
    both(l.distance, l.rate_per_distance, "distance", "rate_per_distance");
    if (l.markup_percent && l.margin_percent) refuse("markup_percent is on the cost, margin_percent on the price: give one of them");
    if (l.margin_percent && *l.margin_percent >= exact(100)) refuse("margin_percent = " + decimal_text(*l.margin_percent) + " %: a margin is in per cent of the price and stays below 100; a markup is in per cent of the cost");
    if (l.markup_percent && *l.markup_percent > exact(10000)) refuse("markup_percent = " + decimal_text(*l.markup_percent) + " % is above 10000 %");
    if (l.probability && *l.probability > exact(1)) refuse("probability = " + decimal_text(*l.probability) + " is above 1");
    if (l.percent && *l.percent > exact(100)) refuse("percent = " + decimal_text(*l.percent) + " % is above 100 %");
    if (l.time_spread.kind() != spread_kind::none && !l.time_h) refuse("a spread of a duration that is not given");
    bool complete = false;
    switch (l.kind) {
      case line_kind::labour: complete = l.time_h || l.call_out; break;
      case line_kind::travel: complete = l.time_h || l.distance; break;
      case line_kind::materials: complete = l.cost.has_value(); break;
      case line_kind::parking:
      case line_kind::waste:
      case line_kind::fixed: complete = l.amount.has_value(); break;
      case line_kind::contingency: complete = l.percent.has_value(); break;
      case line_kind::call_back: complete = l.probability && l.visit_cost; break;
    }
    if (!complete) {
      constexpr std::string_view needs[] = {"time_h with rate_per_h, or call_out", "a distance with its rate, or time_h with rate_per_h", "cost", "amount", "amount", "amount", "percent", "probability and visit_cost"};
      refuse("\"" + std::string(line_kinds[static_cast<std::size_t>(l.kind)]) + "\" needs " + std::string(needs[static_cast<std::size_t>(l.kind)]));
    }
  }

  const quote_task& t_;
  exact scale_;
  std::vector<vat_rate> all_rates_{};
  std::vector<std::size_t> rate_{}, within_{};
};

}  // namespace detail

/// A quote: every line with its working, tax by rate, totals; and, where durations are spread, what the total comes to in one, five and
/// nine of ten cases. A drawn duration is taken to 1/10000 h, so that every drawn total is one that the quote itself would give.
inline quote_result quote(const quote_task& task) {
  const detail::quoting q(task);
  quote_result r;
  r.currency = task.currency;
  r.draw = task.draw;
  const std::size_t n = task.lines.size();
  std::vector<std::optional<exact>> times(n);
  for (std::size_t i = 0; i < n; ++i) {
    quoted_line l;
    l.name = task.lines[i].name;
    l.kind = task.lines[i].kind;
    r.lines.push_back(std::move(l));
    times[i] = task.lines[i].time_h;
    r.spread = r.spread || task.lines[i].time_spread.kind() != spread_kind::none;
  }
  std::vector<std::int64_t> net;
  q.nets(times, net, &r);
  r.sums = q.totals(net, &r);

  const auto amount = [&](std::int64_t minor) { return money{minor, task.currency}.text(); };
  for (const auto& l : r.lines)
    r.text.push_back((l.name.empty() ? std::string(line_kinds[static_cast<std::size_t>(l.kind)]) : l.name) + ": " + l.working + (l.shown ? "" : " (not shown to the client: charged in " + (r.lines[l.within].name.empty() ? "line " + std::to_string(l.within + 1) : r.lines[l.within].name) + ")") + ".");
  if (r.discount) r.text.push_back("Discount of " + amount(r.discount) + ", on each line in proportion.");
  r.text.push_back("Net: " + amount(r.sums.net) + ".");
  if (!task.registered) r.text.push_back("Not registered for VAT: none is charged or shown, and what was paid on purchases stays in their cost.");
  for (const auto& rate : r.rates) {
    const exact scale(detail::power_of_ten(task.currency.digits), 1);
    if (rate.percent) r.text.push_back("VAT " + rate.name + ": " + decimal_text(*rate.percent) + " % of " + amount(rate.net) + " = " + decimal_text(exact(rate.net) * *rate.percent / (exact(100) * scale)) + ".");
    else r.text.push_back("VAT " + rate.name + ": none on " + amount(rate.net) + ".");
  }
  if (task.registered) r.text.push_back("VAT: " + amount(r.sums.vat) + " (" + std::string(task.rounding.text) + ").");
  r.text.push_back("Total: " + amount(r.sums.total) + ".");

  r.p10 = r.p50 = r.p90 = r.sums.total;
  r.mean = static_cast<double>(r.sums.total);
  const double budget = task.budget ? to_double(*task.budget * exact(detail::power_of_ten(task.currency.digits), 1)) : no_number;
  if (task.budget) r.over_budget = static_cast<double>(r.sums.total) > budget ? 1.0 : 0.0;
  if (r.spread) {
    if (task.draw.draws < 100 || task.draw.draws > 10000000) throw range_error("quote: draws: from 100 to 10000000");
    const random::schedule<std::uint64_t> key(task.draw.seed);
    std::vector<std::int64_t> drawn(task.draw.draws);
    double sum = 0.0, over = 0.0;
    for (std::size_t d = 0; d < task.draw.draws; ++d) {
      for (std::size_t i = 0; i < n; ++i) {
        const auto& s = task.lines[i].time_spread;
        if (s.kind() == spread_kind::none) continue;
        const double h = s.drawn(random::draw<std::uint64_t>(d, static_cast<std::uint32_t>(i), key));
        times[i] = exact(static_cast<std::int64_t>(h * 1e4 + 0.5)) / exact(10000);
      }
      q.nets(times, net);
      drawn[d] = q.totals(net).total;
      sum += static_cast<double>(drawn[d]);
      if (task.budget && exact(drawn[d]) > *task.budget * exact(detail::power_of_ten(task.currency.digits), 1)) over += 1.0;
    }
    std::sort(drawn.begin(), drawn.end());
    r.p10 = at_share(drawn, 0.1), r.p50 = at_share(drawn, 0.5), r.p90 = at_share(drawn, 0.9);
    r.mean = sum / static_cast<double>(drawn.size());
    if (task.budget) r.over_budget = over / static_cast<double>(drawn.size());
    r.text.push_back("With the durations as spread: " + amount(r.p10) + " or less in one of ten cases, " + amount(r.p50) + " in half of them, " + amount(r.p90) + " in nine of ten (" +
                     std::to_string(task.draw.draws) + " draws, seed " + std::to_string(task.draw.seed) + ").");
  }
  if (task.budget)
    r.text.push_back("Budget " + decimal_text(*task.budget, task.currency.digits) + " " + std::string(task.currency.name()) + ": exceeded with probability " + number_text(r.over_budget, 3) + ".");
  return r;
}

// ---- many invoices -----------------------------------------------------------------------------------------------------

/// Lines of many invoices, in columns of whole numbers. A line is quantity × price, less nothing, at a rate in per cent.
struct invoice_columns {
  std::span<const std::int64_t> invoice{};   ///< which invoice a line belongs to: from 0, rising
  std::span<const std::int64_t> quantity{};  ///< in 10^-quantity_digits
  std::span<const std::int64_t> price{};     ///< of one, in 10^-price_digits of a minor unit
  std::span<const std::int64_t> rate{};      ///< in 10^-rate_digits per cent; 0: zero rate, exempt or outside the scope
  int quantity_digits = 0, price_digits = 0, rate_digits = 2;
};
/// One number an invoice, in minor units.
struct invoice_sums {
  std::vector<std::int64_t> net, vat, total;
};
/// Net, tax and total of each invoice, exactly, each number rounded where the rule says: the same as `quote`, one integer pass.
inline invoice_sums invoice_totals(const invoice_columns& c, std::size_t invoices, const tax_rounding& rounding, rounding_mode line_mode = rounding_mode::half_up) {
  const std::size_t n = c.invoice.size();
  constexpr std::string_view who = "invoice_totals: ";
  if (c.quantity.size() != n || c.price.size() != n || c.rate.size() != n) throw range_error(std::string(who) + "the columns are of different lengths");
  for (const int d : {c.quantity_digits, c.price_digits, c.rate_digits})
    if (d < 0 || d > 9) throw range_error(std::string(who) + "digits: from 0 to 9");
  const wide line_scale = detail::power_of_ten(c.quantity_digits + c.price_digits);
  const wide tax_scale = detail::power_of_ten(c.rate_digits + 2);
  const std::int64_t top_rate = static_cast<std::int64_t>(tax_scale);
  const auto at = [&](std::size_t i) { return std::string(who) + "line " + std::to_string(i) + ": "; };
  const auto fits = [&](wide x, std::size_t i) {
    if (x > std::numeric_limits<std::int64_t>::max() || x < std::numeric_limits<std::int64_t>::min()) throw range_error(at(i) + "the numbers are too large for exact money");
    return static_cast<std::int64_t>(x);
  };
  invoice_sums s;
  s.net.assign(invoices, 0), s.vat.assign(invoices, 0), s.total.assign(invoices, 0);
  struct sum_at {
    std::int64_t rate;
    wide net;
  };
  std::vector<sum_at> rates;
  std::size_t i = 0;
  while (i < n) {
    const std::int64_t id = c.invoice[i];
    if (id < 0 || static_cast<std::size_t>(id) >= invoices) throw range_error(at(i) + "invoice " + std::to_string(id) + " is not from 0 to " + std::to_string(invoices) + " - 1");
    const std::size_t k = static_cast<std::size_t>(id);
    rates.clear();
    wide net = 0, tax_steps = 0, tax_whole = 0;  // in steps of the rule; in 1/tax_scale of a minor unit
    std::size_t j = i;
    for (; j < n && c.invoice[j] == id; ++j) {
      if (c.quantity[j] < 0) throw range_error(at(j) + "the quantity is below 0");
      if (c.rate[j] < 0 || c.rate[j] > top_rate) throw range_error(at(j) + "the rate of tax is not from 0 to 100 %");
      const std::int64_t line = fits(rounded_quotient(wide(c.quantity[j]) * c.price[j], line_scale, line_mode), j);
      net += line;
      if (rounding.scope == tax_scope::line) {
        tax_steps += rounded_quotient(detail::times(wide(line) * c.rate[j], rounding.step_bottom), detail::times(tax_scale, rounding.step_top), rounding.mode);
      } else if (rounding.scope == tax_scope::total) {
        tax_whole = detail::plus(tax_whole, wide(line) * c.rate[j]);
      } else {
        std::size_t r = 0;
        while (r < rates.size() && rates[r].rate != c.rate[j]) ++r;
        if (r == rates.size()) rates.push_back({c.rate[j], 0});
        rates[r].net += line;
      }
    }
    if (j < n && c.invoice[j] < id) throw range_error(at(j) + "the invoices must rise");
    for (const auto& r : rates) tax_steps += rounded_quotient(detail::times(detail::times(r.net, r.rate), rounding.step_bottom), detail::times(tax_scale, rounding.step_top), rounding.mode);
    if (rounding.scope == tax_scope::total) tax_steps = rounded_quotient(detail::times(tax_whole, rounding.step_bottom), detail::times(tax_scale, rounding.step_top), rounding.mode);
    const wide vat = rounded_quotient(detail::times(tax_steps, rounding.step_top), rounding.step_bottom, rounding.total);
    s.net[k] = fits(net, i), s.vat[k] = fits(vat, i), s.total[k] = fits(net + vat, i);
    i = j;
  }
  return s;
}

}  // namespace price
}  // namespace v1
}  // namespace makegood
