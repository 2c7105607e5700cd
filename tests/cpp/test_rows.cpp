// SPDX-License-Identifier: MIT
// Formulas and checks over many rows: the same bits as one row at a time, on every instruction set and any number of threads.
// MAKEGOOD_POINTS sets the rows of each entry (1003; 100003 for the figure of record).
#include <doctest/doctest.h>
#include <algorithm>
#include <bit>
#include <cmath>
#include <cstdlib>
#include <makegood/electrical/list.hpp>
#include <makegood/heating/list.hpp>
#include <makegood/registry.hpp>
#include <makegood/rules/all.hpp>
#include <random>
#include <thread>

using namespace makegood;

namespace {

std::size_t points() {
  const char* wanted = std::getenv("MAKEGOOD_POINTS");
  return wanted ? std::strtoull(wanted, nullptr, 10) : 1003;  // no multiple of any width
}
bool same(double a, double b) { return std::bit_cast<std::uint64_t>(a) == std::bit_cast<std::uint64_t>(b) || (is_nan(a) && is_nan(b)); }

/// Usual numbers and some a little beyond; now and then none.
std::vector<double> column_of(const argument& a, std::size_t count, std::mt19937& random, double beyond = 0.2, bool missing = true) {
  std::vector<double> x(count);
  const double wide = beyond * (a.usual.high - a.usual.low);
  std::uniform_real_distribution<> number(a.usual.low - wide, a.usual.high + wide);
  for (double& v : x) {
    v = a.table ? static_cast<double>(random() % a.table->rows.size()) : number(random);
    if (missing && random() % 50 == 0) v = no_number;
  }
  return x;
}
/// An instrument for an argument: two ranges that meet in the middle of what is usual; leads where it reads ohms.
instrument ranges_of(const argument& a) {
  const reads kind = read_with(a);
  instrument i{"ranges"};
  if (kind == reads::nothing) return i;
  accuracy fine{1.0, 2, 0.001, 0.0, 0.0, 0.0}, coarse{3.0, 2, 0.01, 0.0, 0.0, 0.0};
  fine.range = 0.5 * (a.usual.low + a.usual.high);
  coarse.range = 100.0 * a.usual.high;
  if (a.unit.symbol == unit::ohm.symbol) {
    fine.nulled = coarse.nulled = false;
    fine.leads_ohm = coarse.leads_ohm = 0.07;
  }
  i.functions = {{kind, coarse}, {kind, fine}};
  return i;
}
struct strided {
  std::vector<char*> data;
  std::vector<std::ptrdiff_t> steps;
  strided(std::vector<std::vector<double>>& columns, std::vector<double>& out) : steps(columns.size() + 1, sizeof(double)) {
    for (auto& c : columns) data.push_back(reinterpret_cast<char*>(c.data()));
    data.push_back(reinterpret_cast<char*>(out.data()));
  }
};

}  // namespace

TEST_CASE("formulas over arrays give the same bits on every instruction set, on two threads, and as one value at a time") {
  std::mt19937 random(99);
  const std::size_t count = points();
  for (const auto& e : catalogue()) {
    if (e.is != entry::what::formula) continue;
    CAPTURE(e.full_name());
    const auto& f = e.formula;
    std::vector<std::vector<double>> columns;
    for (const auto& a : f.args) columns.push_back(column_of(a, count, random));
    std::vector<double> alone(count), together(count);
    std::ptrdiff_t first_refused = -1;
    for (std::size_t k = 0; k < count; ++k) {
      std::vector<double> x;
      for (const auto& c : columns) x.push_back(c[k]);
      const bool missing = std::any_of(x.begin(), x.end(), [](double v) { return is_nan(v); });
      alone[k] = missing ? no_number : f.checked(x.data());
      if (!is_finite(alone[k])) alone[k] = no_number;
      if (!missing && is_nan(alone[k]) && first_refused < 0) first_refused = static_cast<std::ptrdiff_t>(k);
    }
    strided s(columns, together);
    for (const auto set : instruction_sets()) {
      CAPTURE(set);
      const entry other = with_instruction_set(e, set);
      for (const unsigned threads : {1u, 2u}) {
        std::fill(together.begin(), together.end(), 0.0);
        CHECK(batch_rows(other.formula, s.data.data(), s.steps.data(), static_cast<std::ptrdiff_t>(count), {threads, false}) == first_refused);
        std::size_t different = 0;
        if (first_refused < 0 || threads == 1)
          for (std::size_t k = 0; k < count; ++k) different += !same(together[k], alone[k]);
        CHECK(different == 0);
        CHECK(batch_rows(other.formula, s.data.data(), s.steps.data(), static_cast<std::ptrdiff_t>(count), {threads, true}) == -1);
        different = 0;
        for (std::size_t k = 0; k < count; ++k) different += !same(together[k], alone[k]);
        CHECK(different == 0);
      }
    }
  }
}

TEST_CASE("slopes over arrays are the bits of one row at a time") {
  std::mt19937 random(7);
  const std::size_t count = 203;
  for (const auto& e : catalogue()) {
    if (e.is != entry::what::formula) continue;
    CAPTURE(e.full_name());
    const auto& f = e.formula;
    const std::size_t n = f.args.size();
    std::vector<std::vector<double>> columns, slopes(n, std::vector<double>(count));
    for (const auto& a : f.args) columns.push_back(column_of(a, count, random));
    std::vector<double> value(count);
    std::vector<std::span<const double>> in(columns.begin(), columns.end());
    std::vector<std::span<double>> out(slopes.begin(), slopes.end());
    for (const auto set : instruction_sets()) {
      CAPTURE(set);
      slopes_rows(with_instruction_set(e, set), in, value, out, {1, true});
      std::size_t different = 0, looked_at = 0;
      for (std::size_t k = 0; k < count; ++k) {
        std::vector<double> x, c(n);
        for (const auto& column : columns) x.push_back(column[k]);
        if (std::any_of(x.begin(), x.end(), [](double v) { return is_nan(v); }) || f.check(f.self, x.data()) || !is_finite(f.value(f.self, x.data()))) {
          different += !is_nan(value[k]);
          continue;
        }
        ++looked_at;
        const double y = f.gradient(f.self, x.data(), c.data());
        different += !same(y, value[k]);
        for (std::size_t i = 0; i < n; ++i) different += !f.args[i].table && !same(c[i], slopes[i][k]);
      }
      CHECK(different == 0);
      CHECK(looked_at > 20);
    }
  }
}

TEST_CASE("checks over many rows say what one row at a time says, number by number") {
  std::mt19937 random(3);
  const rulebook every = rules::find("bs7671:2018+a2,england-adf-2021,common-practice,finland-1009-2017,australia-ncc-2019,nhbc-8.4");
  const std::size_t count = std::min<std::size_t>(points(), 4001);
  int checks = 0, outcomes[3] = {}, reasons[7] = {}, censored = 0;
  for (const auto& e : catalogue()) {
    if (e.is != entry::what::check) continue;
    ++checks;
    CAPTURE(e.full_name());
    // bare numbers; a stated instrument; a standard uncertainty in each row; an instrument with ranges and leads that were not nulled
    for (const int manner : {0, 1, 2, 3}) {
      CAPTURE(manner);
      const decision_rule rule(decision_methods[static_cast<std::size_t>(checks + 3 * manner) % std::size(decision_methods)]);
      CAPTURE(rule.name());
      std::vector<std::vector<double>> columns, doubts;
      std::vector<std::vector<signed char>> states;
      for (const auto& a : e.check.args) {
        columns.push_back(column_of(a, count, random, 0.05, !a.table));
        doubts.emplace_back(count);
        states.emplace_back(count, static_cast<signed char>(0));
        for (std::size_t k = 0; k < count; ++k) {
          doubts.back()[k] = 0.01 * std::fabs(columns.back()[k]);
          if (is_nan(doubts.back()[k])) doubts.back()[k] = 0.0;
          if (!a.table && a.instrument != reads::nothing && random() % 8 == 0) states.back()[k] = static_cast<signed char>(random() % 6);
        }
      }
      std::vector<readings> in;
      for (std::size_t i = 0; i < columns.size(); ++i) {
        readings r(columns[i]);
        if (!e.check.args[i].table) {
          if (e.check.args[i].instrument != reads::nothing) r.states = states[i];
          if (manner == 1) {
            r.statement = accuracy{1.5, 3, 0.001, 0.0, 0.0, 0.0};
            r.instrument = i % 2 ? "meter" : "tester";
          }
          if (manner == 2) r.standard_uncertainty = doubts[i];
          if (manner == 3) {
            r.meter = std::make_shared<const instrument>(ranges_of(e.check.args[i]));
            r.instrument = r.meter->id;
          }
        }
        in.push_back(r);
      }
      for (const auto set : instruction_sets()) {
        CAPTURE(set);
        const entry other = with_instruction_set(e, set);
        const verdicts all = judge_rows(other, in, every, {2, true, rule});
        REQUIRE(all.size() == count);
        std::size_t different = 0;
        for (std::size_t k = 0; k < count; ++k) {
          verdict v;
          std::vector<given> alone;
          for (std::size_t i = 0; i < in.size(); ++i) alone.push_back(in[i].at(k, e.check.args[i]));
          if (detail::try_judge(e.check, alone, every, v, rule)) {
            different += all.outcome[k] != outcome::undecided || all.reason[k] != reason::not_measured || !is_nan(all.value[k]);
            continue;
          }
          const bool numbers = !is_nan(v.value);
          different += v.outcome != all.outcome[k] || v.reason != all.reason[k] || (numbers && v.plain != all.plain[k]);
          different += !same(v.value, all.value[k]) || !same(v.lower, all.lower[k]) || !same(v.upper, all.upper[k]) || !same(v.margin, all.margin[k]) ||
                       (numbers && !same(v.standard_uncertainty, all.standard_uncertainty[k])) || !same(v.probability, all.probability[k]);
          ++outcomes[static_cast<int>(v.outcome)];
          ++reasons[static_cast<int>(v.reason)];
          censored += !v.censored().empty();
        }
        CHECK(different == 0);
      }
    }
  }
  CHECK(checks >= 12);
  for (const int n : outcomes) CHECK(n > 100);
  CHECK(reasons[static_cast<int>(reason::straddles_limit)] > 100);
  CHECK(reasons[static_cast<int>(reason::not_measured)] > 100);
  CHECK(censored > 100);
}

TEST_CASE("rows of a check: rules by word, missing rules, overrides, replay") {
  const entry& e = entry_of(electrical::check_voltage_drop);
  const std::vector<double> drop{5.0, 9.0, no_number, 12.0}, kind{0, 1, 1, 1};
  const double volts = 230;
  const auto judged = [&](const rulebook& book) { return judge_rows(e, std::vector<readings>{readings(drop), readings(volts), readings(kind)}, book); };
  const verdicts v = judged(rules::bs7671_2018_a2);
  CHECK(v.outcome == std::vector{outcome::pass, outcome::pass, outcome::undecided, outcome::fail});
  CHECK(v.reason[2] == reason::not_measured);
  CHECK(v.count(outcome::pass) == 2);
  CHECK(v.at(3).source_clause() != "");
  CHECK(v.at(3).worked().size() == 2);
  CHECK(v.at(3).limit() == v.upper[3]);
  const verdicts none = judged({});
  CHECK(none.reason[0] == reason::no_rule_in_book);
  CHECK(is_nan(none.value[0]));
  const verdicts strict = judged(rulebook(rules::bs7671_2018_a2).with({"site", "voltage_drop_limit", "other", comparator::at_most, {1.0, 0, 0, 0}, "agreed"}));
  CHECK(strict.outcome == std::vector{outcome::pass, outcome::fail, outcome::undecided, outcome::fail});
  CHECK(strict.at(1).overrides().size() == 1);
}

TEST_CASE("nonsense in a row is an error that names the row") {
  const entry& e = entry_of(electrical::check_voltage_drop);
  const std::vector<double> drop{5.0, 9.0, -1.0};
  const auto text_of = [&](const std::vector<readings>& in) -> std::string {
    try {
      judge_rows(e, in, rules::bs7671_2018_a2);
    } catch (const error& why) {
      return why.what();
    }
    return {};
  };
  CHECK(text_of({readings(drop), readings(230.0), readings("lighting")}) ==
        "check_voltage_drop: voltage_drop_v: -1 V is below 0 V (row 2; errors=\"nan\" counts such a row as not measured)");
  CHECK(text_of({readings(drop), readings(std::vector<double>{230.0, 230.0}), readings("lighting")}).find("rows where others have") != std::string::npos);
  CHECK(text_of({readings(drop), readings(230.0), readings("lightning")}).find("is not one of") != std::string::npos);
  CHECK(text_of({readings(drop), readings(230.0)}).find("takes 3 to 4 arguments") != std::string::npos);
  CHECK(text_of({readings(drop), readings(no_number), readings("lighting")}).find("not a number") != std::string::npos);
}

TEST_CASE("array calls from several threads at once do not meet") {
  const entry& e = *find_entry("air.friction_factor_colebrook");
  const std::size_t count = 60000;
  std::mt19937 random(5);
  std::vector<std::vector<double>> columns;
  for (const auto& a : e.formula.args) columns.push_back(column_of(a, count, random, 0.0, false));
  std::vector<std::vector<double>> results(4, std::vector<double>(count));
  std::vector<std::thread> callers;
  for (auto& r : results)
    callers.emplace_back([&e, &columns, &r] {
      auto mine = columns;
      strided s(mine, r);
      batch_rows(e.formula, s.data.data(), s.steps.data(), static_cast<std::ptrdiff_t>(r.size()), {2, true});
    });
  for (auto& t : callers) t.join();
  for (const auto& r : results) {
    std::size_t different = 0;
    for (std::size_t k = 0; k < count; ++k) different += !same(r[k], results[0][k]);
    CHECK(different == 0);
    CHECK(is_finite(r[count - 1]));
  }
}
