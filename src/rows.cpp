// SPDX-License-Identifier: MIT
// Formulas and checks over many rows: columns in, columns out.
#include <makegood/registry.hpp>
#include <makegood/scalar/columns.hpp>
#include <algorithm>
#include <array>
#include <deque>
#include "pool.hpp"

namespace makegood {
inline namespace v1 {

given readings::at(std::size_t row, const argument& a) const {
  if (all) return *all;
  if (a.table) return given(a.table->rows[static_cast<std::size_t>(values[row])].key);
  const auto state = states.empty() ? reading::state::value : static_cast<reading::state>(states[row]);
  reading r;
  r.is = state == reading::state::value && is_nan(values[row]) ? reading::state::not_measured : state;
  if (r.has_number()) r.number = values[row];
  if (r.is == reading::state::value && (exact || !parts.empty())) {
    measured m(r.number);
    for (const auto& p : parts) m.add(p.source, p.u[row], p.dof);
    m.assumed = assumed;
    return m;
  }
  r.instrument = instrument;
  r.statement = statement;
  if (!statement) r.meter = meter;
  if (!standard_uncertainty.empty()) {
    accuracy own{};
    own.standard_uncertainty = standard_uncertainty[row];
    r.statement = own;
  }
  return r;
}

std::size_t verdicts::count(makegood::outcome o) const { return static_cast<std::size_t>(std::count(outcome.begin(), outcome.end(), o)); }

verdict verdicts::at(std::size_t row) const {
  std::vector<given> list;
  for (std::size_t i = 0; i < arguments.size(); ++i) list.push_back(arguments[i].at(row, check->check.args[i]));
  return detail::judge(check->check, list, book, decided_by);
}

namespace {

/// One call: the columns that the batch function sees, and what they point into.
struct rows_of_a_check {
  std::array<const double*, most_arguments> x{};
  std::array<bool, most_arguments> wide{};
  std::array<double, most_arguments> single{};
  std::array<const signed char*, most_arguments> states{};
  std::array<signed char, most_arguments> single_state{};
  std::vector<std::vector<signed char>> state_columns{};
  std::deque<std::vector<double>> number_columns{};  ///< readings freed from their leads, doubts by range
  std::vector<detail::doubt_term> terms{};
  std::deque<std::string> names{};
  std::vector<choice_row> rules{};
  std::vector<unsigned char> rule_is{}, rule_missing{};
  bool assumed = false;
};

[[noreturn]] void refuse(const check_info& c, const std::string& text) { detail::refused(c, text).raise(); }

unsigned char limits_of(comparator compare, bool two_sided) {
  unsigned char is = 0;
  if (two_sided || compare == comparator::at_least || compare == comparator::above) is |= check_columns::lower_limit;
  if (two_sided || compare == comparator::at_most || compare == comparator::below) is |= check_columns::upper_limit;
  if (compare == comparator::below || compare == comparator::above) is |= check_columns::strict;
  return is;
}

void add_rule(rows_of_a_check& r, const check_info& c, const rulebook& book, std::string_view key) {
  choice_row row{key, "", {}, {}};
  unsigned char is = limits_of(c.default_compare, c.two_sided), missing = 0;
  if (!c.limit_id.empty()) {
    const auto a = book.find(c.limit_id, key);
    if (!a.found() || a.needs_makers_figure()) {
      is = check_columns::no_rule;
      missing = static_cast<unsigned char>(a.found() ? reason::needs_makers_figure : reason::no_rule_in_book);
    } else {
      std::copy(a.numbers().begin(), a.numbers().end(), row.values.begin());
      is = limits_of(a.compare(), c.two_sided);
    }
  }
  r.rules.push_back(row);
  r.rule_is.push_back(is);
  r.rule_missing.push_back(missing);
}

/// The doubt of a column by the statement of its instrument; several ranges have each their own sources. Leads are taken off.
template <class Add>
void add_statements(rows_of_a_check& r, const check_info& c, const argument& a, std::size_t i, const readings& g, std::size_t rows, const Add& add) {
  const reads kind = g.statement || g.meter ? read_with(a) : a.instrument;
  std::vector<const accuracy*> of_row, different;
  if (g.statement) {
    different.push_back(&*g.statement);
  } else if (g.meter) {
    for (const double x : g.values) {
      of_row.push_back(g.meter->statement_for(kind, x));
      if (std::find(different.begin(), different.end(), of_row.back()) == different.end()) different.push_back(of_row.back());
    }
  }
  if (different.empty()) different.push_back(nullptr);
  const auto stated = [&](std::size_t k) { return different.size() == 1 ? different[0] : of_row[k]; };
  for (const accuracy* d : different) {
    if (d && d->has_leads() && a.unit.symbol != unit::ohm.symbol) refuse(c, std::string(a.name) + ": " + std::string(detail::leads_not_here));
    const auto add_range = [&](std::string_view source, bool, bool of_reading, double size) {
      auto& sizes = r.number_columns.emplace_back(rows);
      for (std::size_t k = 0; k < rows; ++k) sizes[k] = stated(k) == d ? size : 0.0;
      r.terms.push_back({r.names.emplace_back(source), i, of_reading, size, sizes.data()});
    };
    if (different.size() == 1) r.assumed = each_source(d, g.instrument, {}, kind, a.name, add) || r.assumed;
    else r.assumed = each_source(d, g.instrument, {}, kind, a.name, add_range) || r.assumed;
  }
  if (std::any_of(different.begin(), different.end(), [](const accuracy* d) { return d && d->bias() > 0.0; })) {
    auto& corrected = r.number_columns.emplace_back(g.values.begin(), g.values.end());
    for (std::size_t k = 0; k < rows; ++k)
      if (const accuracy* d = stated(k)) corrected[k] = corrected[k] - d->bias();
    r.x[i] = corrected.data();
  }
}

/// The column of argument i, and its doubt.
void add_argument(rows_of_a_check& r, const check_info& c, std::size_t i, const readings& g, std::size_t rows) {
  const auto& a = c.args[i];
  const auto add = [&](std::string_view source, bool lasting, bool of_reading, double size) {
    if (!is_finite(size)) refuse(c, std::string(a.name) + ": its uncertainty (" + std::string(source) + ") is not a number");
    r.terms.push_back({lasting ? source : std::string_view(r.names.emplace_back(source)), i, of_reading, size});
  };
  r.x[i] = &r.single[i];
  if (g.all) {
    const auto& one = g.all->is;
    const auto* word = std::get_if<std::string>(&one);
    if (a.table) {
      if (!word) refuse(c, std::string(a.name) + " must be one of " + detail::keys_text(*a.table));
      const int row = a.table->find(*word);
      if (row < 0) detail::throw_unknown_key(c.name, a, *word);
      r.single[i] = row;
      return;
    }
    if (word) refuse(c, std::string(a.name) + " must be a number in " + std::string(a.unit.symbol));
    if (const auto* m = std::get_if<measured>(&one)) {
      r.single[i] = m->value;
      r.assumed = r.assumed || (m->assumed && !m->parts.empty());
      for (const auto& p : m->parts) add(p.source, true, false, p.u);
    } else {
      const reading read = std::holds_alternative<double>(one) ? reading(std::get<double>(one)) : std::get<reading>(one);
      const reads kind = read.statement || read.meter ? read_with(a) : a.instrument;
      const accuracy* stated = read.stated_for(kind);
      if (stated && stated->has_leads() && a.unit.symbol != unit::ohm.symbol) refuse(c, std::string(a.name) + ": " + std::string(detail::leads_not_here));
      std::vector<note> told;
      r.single[i] = !read.has_number() ? 0.0 : stated ? detail::reading_corrected(*stated, read.number, i, told) : read.number;
      if (read.is != reading::state::value) {
        r.state_columns.emplace_back(rows, static_cast<signed char>(read.is));
        r.states[i] = r.state_columns.back().data();
      }
      if (read.has_number()) r.assumed = each_source(stated, read.instrument, read.label, kind, a.name, add) || r.assumed;
      if (is_nan(r.single[i])) refuse(c, std::string(a.name) + ": " + detail::out_of_range_text(a, r.single[i]));  // said once, it is no missing row
    }
    return;
  }
  r.x[i] = g.values.data();
  r.wide[i] = true;
  if (!g.states.empty()) {
    for (const signed char s : g.states)
      if (s < 0 || s > static_cast<signed char>(reading::state::pending)) refuse(c, std::string(a.name) + ": a state is a number from 0 to 5");
    r.states[i] = g.states.data();
  }
  if (a.table) {
    for (const double x : g.values)
      if (!(x >= 0.0 && x < static_cast<double>(a.table->rows.size()) && x == static_cast<double>(static_cast<int>(x))))
        refuse(c, std::string(a.name) + " must be one of " + detail::keys_text(*a.table));
    return;
  }
  if (!g.standard_uncertainty.empty()) {
    std::string name(g.instrument.empty() ? std::string("an unnamed instrument") : g.instrument);
    const auto* typical = class_of(read_with(a));
    name += ", " + std::string(typical ? typical->key : "reading") + ", " + std::string(a.name) + ", stated";
    detail::doubt_term t{r.names.emplace_back(name), i, false, 0.0};
    for (const double u : g.standard_uncertainty)
      if (!(u >= 0.0) || !is_finite(u)) refuse(c, std::string(a.name) + ": a standard uncertainty must be 0 or more");
    t.column = g.standard_uncertainty.data();
    r.terms.push_back(t);
  } else if (!g.parts.empty()) {
    for (const auto& p : g.parts) {
      for (const double u : p.u)
        if (!is_finite(u)) refuse(c, std::string(a.name) + ": its uncertainty (" + p.source + ") is not a number");
      detail::doubt_term t{r.names.emplace_back(p.source), i, false, 0.0};
      t.column = p.u.data();
      r.terms.push_back(t);
    }
    r.assumed = r.assumed || g.assumed;
  } else if (!g.exact) {
    add_statements(r, c, a, i, g, rows, add);
  }
}

template <class Work>
std::ptrdiff_t run_over(const Work& work, std::size_t n, unsigned threads) {
  return subjects::run_rows([](const void* w, std::size_t begin, std::size_t end) { return (*static_cast<const Work*>(w))(begin, end); }, &work, n, threads);
}

}  // namespace

verdicts judge_rows(const entry& e, std::span<const readings> arguments, const rulebook& book, const rows_options& how) {
  const check_info& c = e.check;
  const std::size_t n = c.args.size();
  if (e.is != entry::what::check || !e.check_rows) throw range_error(std::string(e.name()) + ": not a check that is calculated over rows");
  if (arguments.size() < c.required() || arguments.size() > n)
    refuse(c, "takes " + std::to_string(c.required()) + " to " + std::to_string(n) + " arguments");
  verdicts v;
  v.check = &e;
  v.book = book;
  v.decided_by = how.rule;
  v.arguments.assign(arguments.begin(), arguments.end());
  for (std::size_t i = arguments.size(); i < n; ++i)
    v.arguments.emplace_back(c.args[i].table ? given(c.args[i].table->rows[static_cast<std::size_t>(c.args[i].fallback)].key) : given(measured::exact(c.args[i].fallback)));
  std::size_t rows = 1;
  for (const auto& g : v.arguments)
    if (!g.all) rows = g.values.size();
  for (std::size_t i = 0; i < n; ++i) {
    const auto& g = v.arguments[i];
    for (const std::size_t size : {g.all ? rows : g.values.size(), g.states.empty() ? rows : g.states.size(), g.standard_uncertainty.empty() ? rows : g.standard_uncertainty.size()})
      if (size != rows) refuse(c, std::string(c.args[i].name) + ": " + std::to_string(size) + " rows where others have " + std::to_string(rows));
    for (const auto& p : g.parts)
      if (p.u.size() != rows) refuse(c, std::string(c.args[i].name) + ": " + std::to_string(p.u.size()) + " rows of uncertainties where others have " + std::to_string(rows));
  }
  rows_of_a_check r;
  r.state_columns.reserve(n);
  for (std::size_t i = 0; i < n; ++i) add_argument(r, c, i, v.arguments[i], rows);
  detail::sort_terms(r.terms);
  const auto condition = static_cast<std::size_t>(c.condition);
  const bool rule_by_row = c.condition >= 0 && r.wide[condition];
  if (rule_by_row)
    for (const auto& row : c.args[condition].table->rows) add_rule(r, c, book, row.key);
  else add_rule(r, c, book, c.condition >= 0 ? c.args[condition].table->rows[static_cast<std::size_t>(r.single[condition])].key : std::string_view());
  const choice_table rule{c.columns, r.rules};

  v.assumed = r.assumed;
  v.outcome.resize(rows);
  v.plain.resize(rows);
  v.reason.resize(rows);
  for (auto* column : {&v.value, &v.lower, &v.upper, &v.margin, &v.standard_uncertainty, &v.probability}) column->resize(rows);
  check_columns k;
  k.x = r.x.data();
  k.wide = r.wide.data();
  k.states = r.states.data();
  k.terms = r.terms.data();
  k.term_count = r.terms.size();
  k.rule = &rule;
  k.rule_is = r.rule_is.data();
  k.rule_missing = r.rule_missing.data();
  k.condition = rule_by_row ? c.condition : -1;
  k.two_sided = c.two_sided;
  k.may_doubt = c.may_doubt;
  k.nan_for_errors = how.nan_for_errors;
  k.by_probability = how.rule.by_probability();
  k.accept = how.rule.accept;
  k.reject = how.rule.reject;
  k.value = v.value.data();
  k.lower = v.lower.data();
  k.upper = v.upper.data();
  k.margin = v.margin.data();
  k.standard_uncertainty = v.standard_uncertainty.data();
  k.probability = v.probability.data();
  k.outcome = reinterpret_cast<unsigned char*>(v.outcome.data());
  k.reason = reinterpret_cast<unsigned char*>(v.reason.data());
  k.plain = reinterpret_cast<unsigned char*>(v.plain.data());
  const auto work = [&](std::size_t begin, std::size_t end) { return e.check_rows(k, begin, end); };
  if (const auto bad = run_over(work, rows, how.threads); bad >= 0) {
    const std::string where = " (row " + std::to_string(bad) + "; errors=\"nan\" counts such a row as not measured)";
    try {
      v.at(static_cast<std::size_t>(bad));
    } catch (const relation_error& why) {
      throw relation_error(std::string(why.what()) + where);
    } catch (const range_error& why) {
      throw range_error(std::string(why.what()) + where);
    }
    throw error(std::string(c.name) + ": a row is refused, but not alone" + where);
  }
  return v;
}

namespace {
/// The columns of a formula's arguments, and the run over them; a row that is refused is said in words.
struct rows_of_a_formula {
  std::array<const double*, most_arguments> x{};
  std::array<bool, most_arguments> wide{};

  rows_of_a_formula(const entry& e, std::span<const std::span<const double>> arguments, std::size_t rows) {
    const formula_info& f = e.formula;
    if (e.is != entry::what::formula || !f.slopes) throw range_error(std::string(e.name()) + ": not a formula");
    if (arguments.size() != f.args.size()) throw range_error(std::string(e.name()) + ": takes " + std::to_string(f.args.size()) + " columns");
    for (std::size_t i = 0; i < arguments.size(); ++i) {
      if (arguments[i].size() != 1 && arguments[i].size() != rows)
        throw range_error(std::string(e.name()) + ": " + std::string(f.args[i].name) + ": " + std::to_string(arguments[i].size()) + " rows where others have " + std::to_string(rows));
      x[i] = arguments[i].data();
      wide[i] = arguments[i].size() != 1;
    }
  }
  void run(const formula_info& f, const slope_columns& c, std::size_t rows, unsigned threads) const {
    const auto work = [&](std::size_t begin, std::size_t end) { return f.slopes(c, begin, end); };
    const auto bad = run_over(work, rows, threads);
    if (bad < 0) return;
    std::array<double, most_arguments> at{};
    for (std::size_t i = 0; i < f.args.size(); ++i) at[i] = x[i][wide[i] ? bad : 0];
    fault why = f.check(f.self, at.data());
    if (!why) why = {fault::what::no_result, -1};
    const std::string text = std::string(f.refusal(f.self, why, at.data())) + " (row " + std::to_string(bad) + "; errors=\"nan\" gives NaN instead)";
    if (why.kind == fault::what::relation) throw relation_error(text);
    throw range_error(text);
  }
};
}  // namespace

void slopes_rows(const entry& e, std::span<const std::span<const double>> arguments, std::span<double> value,
                 std::span<const std::span<double>> slopes, const rows_options& how) {
  const std::size_t rows = value.size();
  const rows_of_a_formula in(e, arguments, rows);
  if (slopes.size() != arguments.size()) throw range_error(std::string(e.name()) + ": as many slopes as arguments");
  std::array<double*, most_arguments> out{};
  for (std::size_t i = 0; i < slopes.size(); ++i) {
    if (!slopes[i].empty() && slopes[i].size() != rows) throw range_error(std::string(e.name()) + ": a column of slopes has another length than the values");
    out[i] = slopes[i].empty() ? nullptr : slopes[i].data();
  }
  slope_columns c;
  c.x = in.x.data();
  c.wide = in.wide.data();
  c.value = value.data();
  c.slopes = out.data();
  c.nan_for_errors = how.nan_for_errors;
  in.run(e.formula, c, rows, how.threads);
}

void uncertainty_rows(const entry& e, std::span<const std::span<const double>> arguments, std::span<const std::span<const double>> u,
                      std::span<double> value, std::span<double> standard_uncertainty, const rows_options& how) {
  const std::size_t rows = value.size();
  const rows_of_a_formula in(e, arguments, rows);
  if (u.size() != arguments.size()) throw range_error(std::string(e.name()) + ": as many uncertainties as arguments");
  if (standard_uncertainty.size() != rows) throw range_error(std::string(e.name()) + ": the uncertainties have another length than the values");
  std::array<const double*, most_arguments> of{};
  std::array<bool, most_arguments> wide{};
  for (std::size_t i = 0; i < u.size(); ++i) {
    if (u[i].empty() || e.formula.args[i].table) continue;
    if (u[i].size() != 1 && u[i].size() != rows) throw range_error(std::string(e.name()) + ": " + std::string(e.formula.args[i].name) + ": its uncertainties have another length");
    of[i] = u[i].data();
    wide[i] = u[i].size() != 1;
  }
  slope_columns c;
  c.x = in.x.data();
  c.wide = in.wide.data();
  c.value = value.data();
  c.nan_for_errors = how.nan_for_errors;
  c.u = of.data();
  c.u_wide = wide.data();
  c.standard_uncertainty = standard_uncertainty.data();
  in.run(e.formula, c, rows, how.threads);
}

std::ptrdiff_t batch_rows(const formula_info& f, char** data, const std::ptrdiff_t* steps, std::ptrdiff_t n, const rows_options& how) {
  if (how.threads <= 1) return f.batch(f.self, data, steps, n, how.nan_for_errors);
  const auto work = [&](std::size_t begin, std::size_t end) {
    std::array<char*, most_arguments + 1> part{};
    const auto from = static_cast<std::ptrdiff_t>(begin);
    for (std::size_t i = 0; i <= f.args.size(); ++i) part[i] = data[i] + from * steps[i];
    const auto bad = f.batch(f.self, part.data(), steps, static_cast<std::ptrdiff_t>(end) - from, how.nan_for_errors);
    return bad < 0 ? bad : bad + from;
  };
  return run_over(work, static_cast<std::size_t>(n), how.threads);
}

}  // namespace v1
}  // namespace makegood
