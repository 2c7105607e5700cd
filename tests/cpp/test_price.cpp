// SPDX-License-Identifier: MIT
// Exact money against slow arithmetic, invoices in columns against quotes one by one, and decision trees against every way through them.
#include <doctest/doctest.h>
#include <cmath>
#include <makegood/price/options.hpp>
#include <makegood/price/quote.hpp>
#include <random>

using namespace makegood;
using namespace makegood::price;

namespace {
std::string refused(auto f) {
  try {
    f();
  } catch (const error& e) {
    return e.what();
  }
  return "";
}
bool has(const std::string& text, std::string_view part) { return text.find(part) != std::string::npos; }
}  // namespace

TEST_CASE("decimal numbers are read exactly, or refused with what to write") {
  CHECK(decimal("17.5") == exact(35, 2));
  CHECK(decimal("-0.050") == exact(-1, 20));
  CHECK(decimal(".5") == exact(1, 2));
  CHECK(decimal("+3.") == exact(3));
  CHECK(decimal_text(decimal("0.10"), 2) == "0.10");
  CHECK(decimal_text(decimal("-1234.5")) == "-1234.5");
  CHECK(decimal_text(exact(1, 3)) == "0.33333333...");
  CHECK(fraction_text(exact(-14, 94)) == "-7/47");
  for (const char* wrong : {"", "-", ".", "1,250.00", "1e3", "nan", "inf", "0x10", "1.2.3", " 1", "1 ", "£5", "1234567890123456", "0.1234567890123"}) {
    CAPTURE(wrong);
    CHECK_THROWS_AS(decimal(wrong), range_error);
  }
  CHECK(has(refused([] { decimal("1,250.00"); }), "\"1250.50\""));
}

TEST_CASE("fractions that do not fit say so, and never wrap") {
  const exact large = decimal("999999999999999.999999999999");
  CHECK_THROWS_AS(large * large * large, range_error);
  CHECK_THROWS_AS(exact(1) / exact(0), range_error);
  CHECK((large * exact(1, 7)) * exact(7) == large);
  const currency gbp = find_currency("GBP");
  const money most{std::numeric_limits<std::int64_t>::max(), gbp}, one{1, gbp};
  CHECK_THROWS_AS(most + one, range_error);
  CHECK((most - one).minor == most.minor - 1);
  CHECK_THROWS_AS(money::from(decimal("999999999999999") * exact(1000), gbp, rounding_mode::half_up), range_error);
  std::mt19937_64 random(8);
  for (int i = 0; i < 20000; ++i) {  // field laws on small fractions, against 64-bit arithmetic
    const auto n = [&] { return static_cast<std::int64_t>(random() % 2001) - 1000; };
    const auto d = [&] { return static_cast<std::int64_t>(random() % 1000) + 1; };
    const std::int64_t a = n(), b = d(), c = n(), e = d();
    const exact x(a, b), y(c, e);
    CHECK((x + y) * exact(wide(b) * e, 1) == exact(a * e + c * b));
    CHECK((x < y) == (a * e < c * b));
    CHECK((x - y) + y == x);
    if (c != 0) CHECK((x / y) * y == x);
  }
}

TEST_CASE("amounts of different currencies do not mix, and a code that is not known says what to give") {
  const money a{100, find_currency("GBP")}, b{100, find_currency("EUR")};
  CHECK_THROWS_AS(a + b, relation_error);
  CHECK(a.text() == "1.00 GBP");
  CHECK(money{100, find_currency("JPY")}.text() == "100 JPY");
  CHECK(money{-5, find_currency("KWD")}.text() == "-0.005 KWD");
  CHECK(has(refused([] { find_currency("XYZ"); }), "digits"));
  CHECK(has(refused([] { find_currency("gbp"); }), "capital"));
  CHECK(make_currency("XYZ", 1).digits == 1);
}

TEST_CASE("each rule of rounding, by counting") {
  // by the distances to the two neighbours, not by remainders
  for (std::int64_t bottom = 1; bottom <= 12; ++bottom)
    for (std::int64_t top = -60; top <= 60; ++top) {
      const std::int64_t size = top < 0 ? -top : top, below = size / bottom;
      const std::int64_t down = size - below * bottom, up = (below + 1) * bottom - size;
      const auto signed_ = [&](std::int64_t x) { return top < 0 ? -x : x; };
      const std::int64_t half_up = down == 0 || down < up ? below : below + 1, half_down = down == 0 || down <= up ? below : below + 1;
      CHECK(rounded_quotient(top, bottom, rounding_mode::down) == signed_(below));
      CHECK(rounded_quotient(top, bottom, rounding_mode::up) == signed_(down == 0 ? below : below + 1));
      CHECK(rounded_quotient(top, bottom, rounding_mode::half_up) == signed_(half_up));
      CHECK(rounded_quotient(top, bottom, rounding_mode::half_down) == signed_(half_down));
      CHECK(rounded_quotient(top, bottom, rounding_mode::half_even) == signed_(down == up && down != 0 ? (below % 2 ? below + 1 : below) : half_up));
    }
  CHECK(rounded(decimal("86.76"), rounding_mode::down, exact(1, 10)) == decimal("86.7"));
  CHECK(rounded(decimal("86.76"), rounding_mode::half_up, exact(1, 2)) == exact(87));
  CHECK(rounded(decimal("86.74"), rounding_mode::half_up, exact(1, 2)) == decimal("86.5"));
}

TEST_CASE("a discount is divided without a penny lost") {
  std::mt19937_64 random(11);
  for (int i = 0; i < 2000; ++i) {
    std::vector<std::int64_t> weights(1 + random() % 9);
    std::int64_t sum = 0;
    for (auto& w : weights) sum += w = random() % 4 == 0 ? 0 : static_cast<std::int64_t>(random() % 100000);
    if (sum == 0) continue;
    const auto amount = static_cast<std::int64_t>(random() % static_cast<std::uint64_t>(sum + 1));
    const auto parts = price::detail::apportioned(amount, weights);
    std::int64_t given = 0;
    for (std::size_t k = 0; k < parts.size(); ++k) {
      given += parts[k];
      CHECK(std::fabs(static_cast<double>(parts[k]) - static_cast<double>(amount) * static_cast<double>(weights[k]) / static_cast<double>(sum)) < 1.0);
      CHECK(parts[k] <= weights[k]);
    }
    CHECK(given == amount);
  }
}

TEST_CASE("invoices in columns are the quotes one by one, under every rule") {
  std::mt19937_64 random(5);
  const std::int64_t rates[] = {2000, 500, 0, 1750, 2100};
  for (const auto& rule : tax_roundings) {
    CAPTURE(rule.key);
    std::vector<std::int64_t> invoice, quantity, unit_price, rate;
    std::vector<quote_sums> wanted;
    for (std::int64_t k = 0; k < 150; ++k) {
      quote_task t;
      t.rounding = rule;
      for (const auto r : rates) t.rates.push_back({std::to_string(r), exact(r, 100)});
      const auto lines = 1 + random() % 6;
      for (std::size_t i = 0; i < lines; ++i) {
        invoice.push_back(k);
        quantity.push_back(static_cast<std::int64_t>(random() % 10000));
        unit_price.push_back(static_cast<std::int64_t>(random() % 100000));
        rate.push_back(rates[random() % 5]);
        quote_line l;
        l.kind = line_kind::materials;
        l.quantity = exact(quantity.back(), 1000);
        l.cost = exact(unit_price.back(), 1000);  // in tenths of a penny
        l.vat = std::to_string(rate.back());
        t.lines.push_back(l);
      }
      wanted.push_back(quote(t).sums);
    }
    const auto got = invoice_totals({invoice, quantity, unit_price, rate, 3, 1, 2}, 150, rule);
    for (std::size_t k = 0; k < wanted.size(); ++k) {
      CHECK(got.net[k] == wanted[k].net);
      CHECK(got.vat[k] == wanted[k].vat);
      CHECK(got.total[k] == wanted[k].total);
    }
  }
  const std::vector<std::int64_t> ids{0, 1, 0}, ones{1, 1, 1}, rate_{2000, 12000, 0};
  CHECK(has(refused([&] { invoice_totals({ids, ones, ones, ones}, 2, tax_roundings[4]); }), "rise"));
  CHECK(has(refused([&] { invoice_totals({ones, ones, ones, rate_}, 2, tax_roundings[4]); }), "line 1: the rate of tax is not from 0 to 100 %"));
}

TEST_CASE("a quote names the line that is to blame") {
  quote_task t;
  t.rates = {{"standard", exact(20)}};
  quote_line good;
  good.name = "work";
  good.kind = line_kind::labour;
  good.time_h = exact(2), good.rate_per_h = exact(50);
  t.lines = {good, good};
  const auto with = [&](auto change) {
    quote_task other = t;
    change(other);
    return refused([&] { quote(other); });
  };
  CHECK(with([](auto&) {}).empty());
  CHECK(has(with([](auto& o) { o.lines[1].time_h = decimal("-1.5"); }), "lines[1] \"work\": time_h = -1.5 h is below 0"));
  CHECK(has(with([](auto& o) { o.rates[0].percent = exact(120); }), "120 % is above 100 %"));
  CHECK(has(with([](auto& o) { o.lines[0].currency = "EUR"; }), "lines[0] \"work\": is in EUR, the quote in GBP"));
  CHECK(has(with([](auto& o) { o.lines[1].vat = "reducd"; }), "lines[1] \"work\": vat = \"reducd\" is not one of"));
  CHECK(has(with([](auto& o) { o.lines[1].rate_per_h.reset(); }), "rate_per_h is missing beside time_h"));
  CHECK(has(with([](auto& o) { o.lines[1].time_h = decimal("9999"), o.lines[1].rate_per_h = decimal("999999999999999"); }), "lines[1] \"work\": the numbers are too large"));
  CHECK(has(with([](auto& o) { o.discount_amount = exact(201); }), "more than all lines together"));
  CHECK(has(with([](auto& o) { o.retailer = true, o.rounding = find_tax_rounding("total_down"); }), "retailer"));
  CHECK(has(with([](auto& o) { o.rates.clear(); }), "lines[0]: no rate of tax"));
}

TEST_CASE("a call-back that is not shown is charged in a line that is, and tax does not notice") {
  quote_task t;
  t.rates = {{"standard", exact(20)}, {"reduced", exact(5)}};
  t.rounding = find_tax_rounding("line_half_up");
  quote_line a, b, c;
  a.name = "cable", a.kind = line_kind::fixed, a.amount = decimal("10.03"), a.vat = "reduced";
  b.name = "work", b.kind = line_kind::fixed, b.amount = decimal("100.01");
  c.kind = line_kind::call_back, c.probability = decimal("0.05"), c.visit_cost = decimal("80.50"), c.shown = false;
  t.lines = {a, b, c};
  const auto r = quote(t);
  CHECK(r.lines[2].within == 1);
  CHECK(r.lines[1].charged == 10001 + 403);  // 4.025, half up
  CHECK(r.lines[2].charged == 0);
  CHECK(r.lines[0].charged + r.lines[1].charged == r.sums.net);
  CHECK(r.sums.vat == 50 + 2081);  // 5 % of 10.03 = 0.5015; 20 % of 104.04 = 20.808
  t.registered = false;
  const auto plain = quote(t);
  CHECK(plain.sums.vat == 0);
  CHECK(plain.sums.total == r.sums.net);
  CHECK(plain.rates.empty());
}

TEST_CASE("spreads have the means and quantiles of their closed forms") {
  const random::schedule<std::uint64_t> key(3);
  const auto sorted = [&](const spread& s) {
    std::vector<double> x(200000);
    for (std::size_t i = 0; i < x.size(); ++i) x[i] = s.drawn(random::draw<std::uint64_t>(i, 1, key));
    std::sort(x.begin(), x.end());
    return x;
  };
  const auto mean = [](const std::vector<double>& x) { return std::accumulate(x.begin(), x.end(), 0.0) / static_cast<double>(x.size()); };
  const auto t = sorted(spread::triangular(2, 3, 7));
  CHECK(mean(t) == doctest::Approx(4.0).epsilon(0.002));
  CHECK(at_share(t, 0.2) == doctest::Approx(3.0).epsilon(0.003));                       // (3 - 2)/(7 - 2) lies below the likely one
  CHECK(at_share(t, 0.9) == doctest::Approx(7 - std::sqrt(0.1 * 5 * 4)).epsilon(0.002));
  const auto p = sorted(spread::pert(0, 5, 10));                                        // beta(3, 3): distribution function x³(10 - 15x + 6x²)
  CHECK(mean(p) == doctest::Approx(5.0).epsilon(0.002));
  const double x = at_share(p, 0.9) / 10;
  CHECK(x * x * x * (10 - 15 * x + 6 * x * x) == doctest::Approx(0.9).epsilon(0.002));
  const auto edge = sorted(spread::pert(2, 2, 7));                                      // beta(1, 5): 1 - (1 - x)^5
  CHECK(at_share(edge, 0.5) == doctest::Approx(2 + 5 * (1 - std::pow(0.5, 0.2))).epsilon(0.003));
  const auto l = sorted(spread::lognormal(4, 8));
  CHECK(at_share(l, 0.5) == doctest::Approx(4.0).epsilon(0.005));
  CHECK(at_share(l, 0.9) == doctest::Approx(8.0).epsilon(0.01));
  CHECK(mean(l) == doctest::Approx(spread::lognormal(4, 8).mean()).epsilon(0.005));
  CHECK_THROWS_AS(spread::triangular(3, 2, 7), range_error);
  CHECK_THROWS_AS(spread::lognormal(4, 4), range_error);
}

namespace {
/// Every way through the options from one of them on, one by one: written without plans and leaves.
struct enumeration {
  const options_task& t;
  double expected = 0.0, uncured = 0.0, worst = -1e300;
  void go(std::size_t o, std::size_t h, double p, double paid) {
    if (p <= 0.0) return;
    const auto& x = t.options[o];
    paid += x.cost_under.empty() || !x.cost_under[h] ? x.cost.mean() : *x.cost_under[h];
    const double good = p * x.success[h], bad = p * (1.0 - x.success[h]);
    end(good * x.call_back_probability, paid + x.call_back_cost);
    end(good * (1.0 - x.call_back_probability), paid);
    if (x.next >= 0) go(static_cast<std::size_t>(x.next), h, bad, paid);
    else if (bad > 0.0) uncured += bad, end(bad, paid + x.cost_uncured);
  }
  void end(double p, double cost) {
    if (p <= 0.0) return;
    expected += p * cost;
    worst = std::max(worst, cost);
  }
};
options_task random_task(std::mt19937_64& random) {
  options_task t;
  const auto unit = [&] { return std::uniform_real_distribution<>(0.0, 1.0)(random); };
  const std::size_t m = 1 + random() % 4, n = 1 + random() % 5;
  double sum = 0.0;
  for (std::size_t h = 0; h < m; ++h) {
    t.hypotheses.push_back({"h" + std::to_string(h), unit() + 0.01, random() % 4 == 0});
    sum += t.hypotheses.back().probability;
  }
  for (auto& h : t.hypotheses) h.probability /= sum;
  for (std::size_t o = 0; o < n; ++o) {
    option_row x;
    x.name = "o" + std::to_string(o);
    x.cost = spread(std::floor(1000 * unit()));
    for (std::size_t h = 0; h < m; ++h) x.success.push_back(random() % 3 == 0 ? 0.0 : random() % 3 == 0 ? 1.0 : unit());
    if (o > 0 && random() % 2) x.next = static_cast<int>(random() % o);
    x.cost_uncured = random() % 2 ? 0.0 : std::floor(2000 * unit());
    if (random() % 2) x.call_back_probability = unit(), x.call_back_cost = 80;
    if (random() % 3 == 0) x.isolates = x.secures = x.labels = true;
    t.options.push_back(x);
  }
  return t;
}
}  // namespace

TEST_CASE("trees of options against every way through them") {
  std::mt19937_64 random(77);
  int chosen = 0, refused_ = 0, flips = 0;
  for (int i = 0; i < 1500; ++i) {
    const options_task t = random_task(random);
    const auto r = compare_options(t);
    double best = 1e300;
    for (std::size_t o = 0; o < t.options.size(); ++o) {
      enumeration e{t};
      double danger = 0.0;
      for (std::size_t h = 0; h < t.hypotheses.size(); ++h) {
        const double before = e.uncured;
        e.go(o, h, t.hypotheses[h].probability, 0.0);
        if (t.hypotheses[h].dangerous) danger += e.uncured - before;
      }
      const auto& x = r.options[o];
      CHECK(x.expected == doctest::Approx(e.expected).epsilon(1e-12));
      CHECK(x.worst == doctest::Approx(e.worst).epsilon(1e-12));
      CHECK(1.0 - x.cured == doctest::Approx(e.uncured).epsilon(1e-12));
      std::size_t last = o;
      while (t.options[last].next >= 0) last = static_cast<std::size_t>(t.options[last].next);
      CHECK(x.permitted == (t.options[last].makes_safe_to_leave() || danger == 0.0));
      if (x.permitted) best = std::min(best, x.expected);
      refused_ += !x.permitted;
      CHECK(x.p10 <= x.p50);
      CHECK(x.p50 <= x.p90);
      CHECK(x.p90 <= x.worst * (1.0 + 1e-12));
    }
    if (r.cheapest < 0) continue;
    ++chosen;
    const auto& c = r.options[static_cast<std::size_t>(r.cheapest)];
    CHECK(c.expected == best);
    CHECK(c.permitted);
    CHECK(c.dominated_by == -1);
    CHECK(r.evpi >= 0.0);
    CHECK(r.evpi <= c.greatest_regret * (1.0 + 1e-12) + 1e-9);
    for (const auto& x : r.options) {
      if (!x.permitted) continue;
      CHECK(x.greatest_regret >= r.options[static_cast<std::size_t>(r.least_regret)].greatest_regret);
      if (x.dominated_by >= 0) CHECK(x.expected >= r.options[static_cast<std::size_t>(x.dominated_by)].expected);
    }
    // one option more never makes the best dearer
    options_task more = t;
    more.options.push_back(t.options.front());
    more.options.back().name = "one more";
    more.options.back().cost = spread(std::floor(300.0 * static_cast<double>(random() % 10)));
    const auto after = compare_options(more);
    CHECK(after.options[static_cast<std::size_t>(after.cheapest)].expected <= c.expected);
    // just beyond a flip the other one is the cheapest, just before it this one still is
    for (const auto& f : r.flips) {
      for (const double away : {-1e-6, 1e-6}) {
        const double p = f.at + away;
        if (p < 0.0 || p > 1.0) continue;
        double here = 0.0, there = 0.0;
        for (std::size_t h = 0; h < t.hypotheses.size(); ++h) {
          const double q = h == f.hypothesis ? p : t.hypotheses[h].probability * (1.0 - p) / (1.0 - t.hypotheses[f.hypothesis].probability);
          here += q * r.options[f.from].cost[h];
          there += q * r.options[f.to].cost[h];
        }
        const bool beyond = (away > 0.0) == (f.at >= f.now);
        CHECK((beyond ? there <= here + 1e-9 : there >= here - 1e-9));
      }
      ++flips;
    }
  }
  CHECK(chosen > 300);
  CHECK(refused_ > 300);
  CHECK(flips > 100);
}

TEST_CASE("the cheapest continuation is no dearer than any that is named") {
  std::mt19937_64 random(78);
  for (int i = 0; i < 300; ++i) {
    options_task t = random_task(random);
    for (auto& o : t.options) o.next = -1;
    for (auto& h : t.hypotheses) h.dangerous = false;
    option_row first = t.options.front();
    first.name = "first";
    first.next = option_row::cheapest_next;
    t.options.push_back(first);
    const std::size_t last = t.options.size() - 1;
    const auto open = compare_options(t);
    CHECK((open.options[last].plan.size() == 2 || open.options[last].cured == doctest::Approx(1.0)));
    for (std::size_t o = 0; o < last; ++o) {
      t.options[last].next = static_cast<int>(o);
      CHECK(open.options[last].expected <= compare_options(t).options[last].expected + 1e-9);
    }
  }
}

TEST_CASE("danger is not for sale") {
  options_task t;
  t.hypotheses = {{"sound", 0.999, false}, {"live metal", 0.001, true}};
  option_row leave, isolate;
  leave.name = "leave it", leave.cost = spread(0), leave.success = {1, 0};
  isolate.name = "isolate", isolate.cost = spread(5000), isolate.success = {1, 0}, isolate.isolates = isolate.secures = true;
  t.options = {leave, isolate};
  auto r = compare_options(t);
  CHECK(r.cheapest == -1);
  CHECK(has(r.options[0].reasons.at(0), "\"live metal\", a danger, not isolated, secured, labelled"));
  CHECK(has(r.options[1].reasons.at(0), "not labelled"));
  t.options[1].labels = true;
  r = compare_options(t);
  CHECK(r.cheapest == 1);
  CHECK_FALSE(r.options[0].permitted);
  t.negligible = 0.002;
  CHECK_THROWS_AS(compare_options(t), range_error);
  t.negligible = 0.0;
  t.hypotheses[1].dangerous = false;
  t.options[0].unproved = {"insulation of the supply cable"};
  r = compare_options(t);
  CHECK_FALSE(r.options[0].permitted);
  CHECK(has(r.options[0].reasons.at(0), "unproved: insulation of the supply cable"));
}
