// SPDX-License-Identifier: MIT
// Monte Carlo: columns are drawn, a formula runs over them as over any arrays, and one pass finds moments and a histogram, by which the
// quantiles are then picked exactly.
#include <makegood/monte_carlo.hpp>
#include <makegood/registry.hpp>
#include <makegood/scalar/columns.hpp>
#include <algorithm>
#include <cmath>
#include <map>
#include <memory>
#include <new>
#include "batch.hpp"
#include "pool.hpp"

namespace makegood {
inline namespace v1 {

// ---- distributions ------------------------------------------------------------------------------------------------------

namespace {
void demand_finite(std::string_view what, std::initializer_list<double> all) {
  for (const double x : all)
    if (!is_finite(x)) throw range_error("distribution." + std::string(what) + ": not a finite number");
}
distribution between_limits(distribution::shape is, std::string_view what, double low, double high, double extra) {
  demand_finite(what, {low, high, extra});
  if (!(low <= high)) throw range_error("distribution." + std::string(what) + ": low = " + number_text(low) + " is above high = " + number_text(high));
  return {is, 0.5 * (low + high), 0.5 * (high - low), extra};
}
}  // namespace

distribution distribution::normal(double mean, double standard_uncertainty) {
  demand_finite("normal", {mean, standard_uncertainty});
  if (!(standard_uncertainty >= 0.0)) throw range_error("distribution.normal: standard_uncertainty must be 0 or more");
  return {shape::normal, mean, standard_uncertainty, 0.0};
}
distribution distribution::rectangular(double low, double high) { return between_limits(shape::rectangular, "rectangular", low, high, 0.0); }
distribution distribution::triangular(double low, double high) { return between_limits(shape::trapezoidal, "triangular", low, high, 0.0); }
distribution distribution::trapezoidal(double low, double high, double top) {
  if (!(top >= 0.0 && top <= 1.0)) throw range_error("distribution.trapezoidal: top is a share of the width, from 0 to 1");
  return between_limits(shape::trapezoidal, "trapezoidal", low, high, top);
}
distribution distribution::arcsine(double low, double high) { return between_limits(shape::arcsine, "arcsine", low, high, 0.0); }
distribution distribution::student(double mean, double scale, double dof) {
  demand_finite("student", {mean, scale});
  if (!(scale >= 0.0)) throw range_error("distribution.student: scale must be 0 or more");
  if (!(dof >= 1.0)) throw range_error("distribution.student: degrees of freedom from 1 on");
  return dof < 1e8 ? distribution{shape::student, mean, scale, dof} : normal(mean, scale);
}
distribution distribution::exponential(double mean) {
  demand_finite("exponential", {mean});
  if (!(mean >= 0.0)) throw range_error("distribution.exponential: mean must be 0 or more");
  return {shape::exponential, 0.0, mean, 0.0};
}
double distribution::standard_uncertainty() const {
  switch (is) {
    case shape::normal:
    case shape::exponential: return scale;
    case shape::rectangular: return scale / std::sqrt(3.0);
    case shape::trapezoidal: return scale * std::sqrt((1.0 + extra * extra) / 6.0);
    case shape::arcsine: return scale / std::sqrt(2.0);
    case shape::student: return extra > 2.0 ? scale * std::sqrt(extra / (extra - 2.0)) : without_end;
  }
  return no_number;
}
measured distribution::as_measured(std::string source) const {
  const double u = is == shape::student ? scale : standard_uncertainty();
  return u > 0.0 ? measured(mean(), u, std::move(source), is == shape::student ? extra : without_end) : measured(mean());
}
std::string distribution::text() const {
  const std::string a = number_text(centre - scale), b = number_text(centre + scale);
  switch (is) {
    case shape::normal: return "normal(" + number_text(centre) + ", " + number_text(scale) + ")";
    case shape::rectangular: return "rectangular(" + a + ", " + b + ")";
    case shape::trapezoidal: return extra == 0.0 ? "triangular(" + a + ", " + b + ")" : "trapezoidal(" + a + ", " + b + ", " + number_text(extra) + ")";
    case shape::arcsine: return "arcsine(" + a + ", " + b + ")";
    case shape::student: return "student(" + number_text(centre) + ", " + number_text(scale) + ", " + number_text(extra) + ")";
    case shape::exponential: return "exponential(" + number_text(scale) + ")";
  }
  return {};
}

void draw(const distribution& d, std::uint64_t seed, std::uint32_t quantity, std::uint64_t first, std::span<double> to, std::string_view instruction_set) {
  if (first % 64 != 0 || to.size() % 64 != 0) throw range_error("draw: first and size are multiples of 64");
  draw_columns c;
  c.kind = {static_cast<draw_kind::shape>(d.is), d.centre, d.scale, d.extra, quantity};
  c.seed = seed;
  c.first = first;
  c.n = to.size();
  c.to = to.data();
  subjects::batches_of(instruction_set).draws->fill(c);
}

namespace detail {
formula_info listed(const void* item, const formula_info& otherwise) {
  for (const auto& e : catalogue())
    if (e.item == item && e.is == entry::what::formula) return e.formula;
  return otherwise;
}
}  // namespace detail

namespace {

// ---- what is drawn --------------------------------------------------------------------------------------------------------

constexpr std::size_t chunk = 2048;    ///< trials whose sums are kept together: sums do not depend on who made them
constexpr std::size_t piece = 512;     ///< trials in the first cache
constexpr std::size_t block = 10240;   ///< JCGM 101, 7.9.4: at least 10^4 trials a block
constexpr std::uint32_t first_argument = 0x10000, first_ensemble = 0x20000;

/// The columns of one formula: which quantities are drawn, and how arguments are made of them.
struct plan {
  struct share {
    std::size_t quantity;
    double u;
  };
  struct argument_of {
    double value = 0.0;
    std::vector<share> shares{};  ///< of named sources
    int own = -1;                 ///< a quantity that is the argument, as drawn
    bool wide() const { return own >= 0 || !shares.empty(); }
  };
  /// Sources that were estimated together share the doubt about their size: a factor √(ν/χ²) for all.
  struct ensemble {
    std::vector<std::size_t> members{};
    unsigned dof = 0;
    std::uint32_t quantity = 0;
  };
  std::vector<draw_kind> quantities{};
  std::vector<argument_of> arguments{};
  std::vector<ensemble> ensembles{};
};

plan plan_of(const formula_info& f, std::span<const uncertain> given, std::vector<measured>& first_order) {
  plan p;
  const std::size_t n = f.args.size();
  if (given.size() > n) throw range_error(std::string(f.result.name) + ": takes at most " + std::to_string(n) + " arguments");
  std::map<std::string, double, std::less<>> sources;  // degrees of freedom, by name in order
  std::map<std::string, std::vector<std::string>, std::less<>> together;
  for (std::size_t i = 0; i < n; ++i) {
    const argument& a = f.args[i];
    if (i >= given.size() && !a.optional) throw range_error(std::string(f.result.name) + ": argument \"" + std::string(a.name) + "\" is missing");
    const uncertain x = i < given.size() ? given[i] : uncertain(a.fallback);
    plan::argument_of of;
    if (const auto* number = std::get_if<double>(&x)) {
      of.value = *number;
      first_order.emplace_back(*number);
    } else if (a.table) {
      throw range_error(std::string(f.result.name) + ": " + std::string(a.name) + " must be one of " + detail::keys_text(*a.table));
    } else if (const auto* m = std::get_if<measured>(&x)) {
      of.value = m->value;
      first_order.push_back(*m);
      for (const auto& part : m->parts) {
        if (!is_finite(part.u)) throw range_error(std::string(f.result.name) + ": " + std::string(a.name) + ": its uncertainty (" + part.source + ") is not a number");
        const auto [at, fresh] = sources.emplace(part.source, part.dof);
        if (!(at->second == part.dof))
          throw range_error(std::string(f.result.name) + ": the source \"" + part.source + "\" was given with different degrees of freedom");
        if (fresh) together[std::string(measured::ensemble_of(part.source))].push_back(part.source);
      }
    } else {
      const auto& d = std::get<distribution>(x);
      of.value = d.mean();
      first_order.push_back(d.as_measured(std::string(a.name)));
      if (d.scale > 0.0) {
        of.own = static_cast<int>(p.quantities.size());
        p.quantities.push_back({static_cast<draw_kind::shape>(d.is), d.centre, d.scale, d.extra, first_argument + static_cast<std::uint32_t>(i)});
      }
    }
    p.arguments.push_back(of);
  }
  std::map<std::string, std::size_t, std::less<>> place;
  std::uint32_t number = 0;
  for (const auto& [name, dof] : sources) {
    if (!(dof >= 1.0)) throw range_error(std::string(f.result.name) + ": the source \"" + name + "\" has fewer than one degree of freedom, or several different ones");
    place[name] = p.quantities.size();
    const bool alone = together[std::string(measured::ensemble_of(name))].size() == 1;
    draw_kind k{draw_kind::shape::normal, 0.0, 1.0, 0.0, number++};
    if (alone && dof < 1e8) k.is = draw_kind::shape::student, k.extra = dof;
    p.quantities.push_back(k);
  }
  std::uint32_t which = 0;
  for (const auto& [name, members] : together) {
    if (members.size() < 2) continue;
    const double dof = sources.find(members[0])->second;
    for (const auto& m : members)
      if (sources.find(m)->second != dof) throw range_error(std::string(f.result.name) + ": \"" + name + "\" was given with different degrees of freedom");
    if (dof > 400.0) continue;  // the factor is then within 0.13 % of one, and normal
    if (dof != std::floor(dof)) throw range_error(std::string(f.result.name) + ": \"" + name + "\": an ensemble of several sources takes whole degrees of freedom");
    plan::ensemble e;
    for (const auto& m : members) e.members.push_back(place[m]);
    e.dof = static_cast<unsigned>(dof);
    e.quantity = first_ensemble + 0x1000 * which++;
    p.ensembles.push_back(e);
  }
  for (std::size_t i = 0; i < given.size(); ++i)
    if (const auto* m = std::get_if<measured>(&given[i]))
      for (const auto& part : m->parts)
        if (part.u != 0.0) p.arguments[i].shares.push_back({place[part.source], part.u});
  // a source that only one argument has, and no other beside it, is drawn as the argument at once
  std::vector<int> uses(p.quantities.size());
  for (const auto& a : p.arguments)
    for (const auto& s : a.shares) ++uses[s.quantity];
  for (const auto& e : p.ensembles)
    for (const std::size_t m : e.members) uses[m] = 2;
  for (auto& a : p.arguments)
    if (a.shares.size() == 1 && uses[a.shares[0].quantity] == 1) {
      auto& k = p.quantities[a.shares[0].quantity];
      k.centre = a.value;
      k.scale = a.shares[0].u;
      a.own = static_cast<int>(a.shares[0].quantity);
      a.shares.clear();
    }
  return p;
}

/// The runs of a formula.
struct runs {
  const formula_info& f;
  const plan& p;
  const draw_table& loops;
  std::uint64_t seed;

  /// Trials begin ... end of y, and the sums of every chunk. Begins are whole chunks.
  void make(double* y, column_sums* sums, std::size_t begin, std::size_t end) const {
    const std::size_t n = p.arguments.size();
    std::vector<double> memory((p.quantities.size() + n + 1) * piece + 8);
    double* const columns = memory.data();
    double* const made = columns + p.quantities.size() * piece;
    double* const spare = made + n * piece;
    std::vector<double> row(n);
    for (std::size_t k = begin; k < end; k += piece) {
      const std::size_t count = std::min(piece, end - k), whole = (count + 63) / 64 * 64;
      for (std::size_t q = 0; q < p.quantities.size(); ++q) loops.fill({p.quantities[q], seed, k, whole, columns + q * piece});
      for (const auto& e : p.ensembles) together(e, k, whole, columns, spare);
      std::array<char*, most_arguments + 1> data{};
      std::array<std::ptrdiff_t, most_arguments + 1> steps{};
      for (std::size_t i = 0; i < n; ++i) {
        const auto& a = p.arguments[i];
        double* x = made + i * piece;
        if (a.own >= 0) {
          x = columns + static_cast<std::size_t>(a.own) * piece;
        } else if (a.shares.empty()) {
          *x = a.value;
        } else {
          std::fill(x, x + count, a.value);
          for (const auto& s : a.shares) loops.add(x, columns + s.quantity * piece, s.u, count);
        }
        data[i] = reinterpret_cast<char*>(x);
        steps[i] = a.wide() ? sizeof(double) : 0;
      }
      if (f.batch) {
        data[n] = reinterpret_cast<char*>(y + k);
        steps[n] = sizeof(double);
        f.batch(f.self, data.data(), steps.data(), static_cast<std::ptrdiff_t>(count), true);
      } else {
        for (std::size_t j = 0; j < count; ++j) {
          for (std::size_t i = 0; i < n; ++i) row[i] = reinterpret_cast<const double*>(data[i])[steps[i] ? j : 0];
          const double v = f.check(f.self, row.data()) ? no_number : f.value(f.self, row.data());
          y[k + j] = is_finite(v) ? v : no_number;
        }
      }
      if (const std::size_t next = k + count; next % chunk == 0 || next == end) {
        const std::size_t from = k / chunk * chunk;
        sums[k / chunk] = loops.sums(y + from, next - from);
      }
    }
  }
  /// A chi-square of whole degrees of freedom: exponential numbers in pairs, and a normal one if they are odd.
  void together(const plan::ensemble& e, std::size_t first, std::size_t n, double* columns, double* spare) const {
    std::vector<double> square(n);
    for (unsigned i = 0; i < e.dof / 2; ++i) {
      loops.fill({{draw_kind::shape::exponential, 0.0, 2.0, 0.0, e.quantity + i}, seed, first, n, spare});
      loops.add(square.data(), spare, 1.0, n);
    }
    if (e.dof % 2) {
      loops.fill({{draw_kind::shape::normal, 0.0, 1.0, 0.0, e.quantity + 0xfff}, seed, first, n, spare});
      for (std::size_t i = 0; i < n; ++i) square[i] += spare[i] * spare[i];
    }
    for (const std::size_t m : e.members)
      for (std::size_t i = 0; i < n; ++i) columns[m * piece + i] *= std::sqrt(static_cast<double>(e.dof) / square[i]);
  }
};

// ---- what is found --------------------------------------------------------------------------------------------------------

/// Memory for numbers that are written before they are read.
struct left_as_it_is : std::allocator<double> {
  template <class T>
  struct rebind {
    using other = left_as_it_is;
  };
  void construct(double*) noexcept {}
};
using trial_values = std::vector<double, left_as_it_is>;

/// Half a unit of the last of `digits` significant digits (JCGM 101, 7.9.2).
double tolerance_of(double u, int digits) {
  if (!(u > 0.0) || !is_finite(u)) return 0.0;
  int power = static_cast<int>(std::floor(std::log10(u))) - (digits - 1);
  if (std::floor(u / std::pow(10.0, power) + 0.5) >= std::pow(10.0, digits)) ++power;  // 0.0996 with two digits is 0.10
  return 0.5 * std::pow(10.0, power);
}
/// Positions of the ends of a coverage interval among sorted values, counted from 1 (JCGM 101, 7.7).
struct ranks {
  std::size_t low, inside;
};
ranks ranks_of(std::size_t n, double probability) {
  const double count = probability * static_cast<double>(n);
  const auto inside = std::min(n - 1, static_cast<std::size_t>(std::floor(count + 0.5)));
  return {std::max<std::size_t>(1, (n - inside + 1) / 2), inside};
}

/// Calls fn(i) for every i whose cell is one of a few: eight cells are looked at together.
template <class Map, class Fn>
void each_in(const unsigned short* cell, std::size_t n, const Map& few, const Fn& fn) {
  typedef unsigned short eight __attribute__((vector_size(16)));
  std::vector<eight> wanted;
  for (const auto& [c, unused] : few) wanted.push_back(eight{} + static_cast<unsigned short>(c));
  for (std::size_t i = 0; i < n; i += 8) {  // behind the end there is room for a whole group
    eight group;
    __builtin_memcpy(&group, cell + i, sizeof group);
    eight hit{};
    for (const auto& w : wanted) hit |= static_cast<eight>(group == w);
    unsigned long long both[2];
    __builtin_memcpy(both, &hit, sizeof both);
    if ((both[0] | both[1]) == 0) [[likely]] continue;
    for (std::size_t k = i; k < i + 8 && k < n; ++k)
      if (hit[static_cast<int>(k - i)]) fn(k);
  }
}

/// Everything that is said of the values; those that are no numbers are taken out of y.
void summarise(monte_carlo_result& r, trial_values& y, const std::vector<column_sums>& sums, const draw_table& loops) {
  column_sums all{0, 0.0, without_end, -without_end};
  for (const auto& s : sums) {
    all.there += s.there;
    all.sum += s.sum;
    all.low = std::min(all.low, s.low);
    all.high = std::max(all.high, s.high);
  }
  const std::size_t n = all.there;
  r.trials = y.size();
  r.refused = y.size() - n;
  if (r.refused) y.erase(std::remove_if(y.begin(), y.end(), [](double x) { return is_nan(x); }), y.end());
  r.mean = all.sum / static_cast<double>(n);
  if (all.low == all.high) {
    r.mean = r.median = r.low = r.high = r.shortest_low = r.shortest_high = all.low;
    return;
  }
  // the histogram spans what a sample says, so that one far value does not take all cells
  std::vector<double> sample(y.begin(), y.begin() + static_cast<std::ptrdiff_t>(std::min<std::size_t>(n, 4096)));
  std::sort(sample.begin(), sample.end());
  const double tail = std::min(0.002, 0.125 * (1.0 - r.probability));
  const auto at = static_cast<std::size_t>(tail * static_cast<double>(sample.size()));
  const double width = sample[sample.size() - 1 - at] - sample[at];
  double low = std::max(all.low, sample[at] - 0.15 * width), high = std::min(all.high, sample[sample.size() - 1 - at] + 0.15 * width);
  if (!(high > low)) low = all.low, high = all.high;
  constexpr auto cells = static_cast<std::size_t>(draw_table::cells);
  r.first_cell = low;
  r.cell = (high - low) / static_cast<double>(cells);
  r.histogram.assign(cells, 0);
  const std::unique_ptr<unsigned short[]> cell(new unsigned short[n + 16]);
  const column_spread s = loops.spread(y.data(), n, r.mean, low, 1.0 / r.cell, r.histogram.data(), cell.get());
  const double variance = s.square / static_cast<double>(n - 1);
  r.standard_uncertainty = std::sqrt(variance);

  std::vector<std::size_t> below(cells + 1);  // values below each cell
  for (std::size_t c = 0; c < cells; ++c) below[c + 1] = below[c] + r.histogram[c];
  const auto cell_of = [&](std::size_t rank) { return static_cast<std::size_t>(std::upper_bound(below.begin(), below.end(), rank - 1) - below.begin()) - 1; };
  const auto about = [&](double rank) {  // by the line through a cell
    const auto c = cell_of(std::clamp<std::size_t>(static_cast<std::size_t>(rank), 1, n));
    return static_cast<double>(c) + (rank - static_cast<double>(below[c])) / static_cast<double>(r.histogram[c]);
  };
  const ranks k = ranks_of(n, r.probability);
  // the shortest interval, from and to the edges of the cells
  std::size_t shortest = k.low;
  double least = about(static_cast<double>(k.low + k.inside)) - about(static_cast<double>(k.low));
  const auto try_from = [&](std::size_t rank) {
    if (rank < 1 || rank + k.inside > n) return;
    const double length = about(static_cast<double>(rank + k.inside)) - about(static_cast<double>(rank));
    if (length < least) least = length, shortest = rank;
  };
  for (std::size_t c = 0; c < cells; ++c) {
    if (r.histogram[c] == 0) continue;
    try_from(below[c] + 1);
    if (below[c] + 1 > k.inside) try_from(below[c] + 1 - k.inside);
  }
  // those values themselves: cells are in order, so each stands in its own
  const std::size_t wanted[] = {k.low, k.low + k.inside, (n + 1) / 2, shortest, shortest + k.inside};
  double* const found[] = {&r.low, &r.high, &r.median, &r.shortest_low, &r.shortest_high};
  std::map<std::size_t, std::vector<double>> inside;
  for (const std::size_t rank : wanted) inside[cell_of(rank)];
  each_in(cell.get(), n, inside, [&](std::size_t i) { inside[cell[i]].push_back(y[i]); });
  for (auto& [c, values] : inside) std::sort(values.begin(), values.end());
  for (std::size_t i = 0; i < std::size(wanted); ++i) *found[i] = inside[cell_of(wanted[i])][wanted[i] - 1 - below[cell_of(wanted[i])]];

  // how far mean, standard uncertainty and ends may be off, from the values themselves
  const double count = static_cast<double>(n), root = std::sqrt(count), fourth = s.fourth / count;
  r.doubt_mean = 2.0 * r.standard_uncertainty / root;
  r.doubt_u = 2.0 * std::sqrt(std::max(0.0, fourth - variance * variance)) / (2.0 * r.standard_uncertainty * root);
  const double q = 0.5 - 0.5 * r.probability, step = std::max(1.0, count * q * 0.1);
  const auto end_doubt = [&](std::size_t rank) {
    const double from = std::max(1.0, static_cast<double>(rank) - step), to = std::min(count, static_cast<double>(rank) + step);
    return 2.0 * std::sqrt(q * (1.0 - q) * count) * r.cell * (about(to) - about(from)) / (to - from);
  };
  r.doubt_low = end_doubt(k.low);
  r.doubt_high = end_doubt(k.low + k.inside);
}

/// Mean, standard uncertainty and ends of one block.
struct of_block {
  double mean, u, low, high;
};
of_block look_at(const double* y, std::size_t n, double probability, std::vector<double>& copy) {
  copy.clear();
  for (std::size_t i = 0; i < n; ++i)
    if (!is_nan(y[i])) copy.push_back(y[i]);
  const std::size_t m = copy.size();
  if (m < 2) return {0.0, 0.0, 0.0, 0.0};
  double sum = 0.0, square = 0.0;
  for (const double x : copy) sum += x;
  const double mean = sum / static_cast<double>(m);
  for (const double x : copy) square += (x - mean) * (x - mean);
  const ranks k = ranks_of(m, probability);
  const auto low = copy.begin() + static_cast<std::ptrdiff_t>(k.low - 1), high = copy.begin() + static_cast<std::ptrdiff_t>(k.low + k.inside - 1);
  std::nth_element(copy.begin(), high, copy.end());
  const double high_end = *high;
  std::nth_element(copy.begin(), low, high);
  return {mean, std::sqrt(square / static_cast<double>(m - 1)), *low, high_end};
}

monte_carlo_result run_plan(const formula_info& f, const plan& p, const monte_carlo_options& how, double share_of_tolerance) {
  const std::string name(f.result.name);
  if (!(how.probability > 0.0 && how.probability < 1.0)) throw range_error(name + ": probability lies between 0 and 1");
  if (how.digits < 1 || how.digits > 6) throw range_error(name + ": digits is from 1 to 6");
  constexpr std::size_t ceiling = 1'000'000'000;
  if (how.trials != 0 && (how.trials < 1000 || how.trials > ceiling)) throw range_error(name + ": trials is from 1000 to 1000000000, or left out");
  const double needed = 100.0 / (1.0 - how.probability);
  if (needed > 1e8) throw range_error(name + ": a probability that near 1 needs more than 10^8 trials a block");
  const std::size_t size = std::max(block, static_cast<std::size_t>(std::ceil(needed / block)) * block);
  const draw_table& loops = *subjects::batches_of(how.instruction_set).draws;
  const runs made{f, p, loops, how.seed};
  monte_carlo_result r;
  r.probability = how.probability;
  r.seed = how.seed;
  trial_values y;
  std::vector<column_sums> sums;
  const auto extend = [&](std::size_t to) {  // from a whole chunk on
    const std::size_t from = y.size();
    y.resize(to);
    sums.resize((to + chunk - 1) / chunk);
    const auto work = [&](std::size_t begin, std::size_t end) {
      made.make(y.data(), sums.data(), from + begin, from + end);
      return std::ptrdiff_t{-1};
    };
    using work_t = decltype(work);
    subjects::run_rows([](const void* w, std::size_t b, std::size_t e) { return (*static_cast<work_t*>(w))(b, e); }, &work, to - from, how.threads);
  };
  const auto refuse_refused = [&] {
    std::size_t there = 0;
    for (const auto& s : sums) there += s.there;
    const std::size_t refused = y.size() - there;
    if (there >= 2 && static_cast<double>(refused) <= how.refused_share * static_cast<double>(y.size())) return;
    std::string text = name + ": " + std::to_string(refused) + " of " + std::to_string(y.size()) + " draws are not permitted";
    std::vector<double> row;
    for (const auto& a : p.arguments) row.push_back(a.value);
    text += " (a share of " + number_text(how.refused_share) + " is): the doubt of the arguments reaches beyond what the formula takes";
    if (const fault why = f.check(f.self, row.data())) text = f.refusal(f.self, why, row.data());
    throw range_error(text + ". Give the arguments distributions that end where the quantity does");
  };
  if (how.trials) {
    extend(how.trials);
    refuse_refused();
    summarise(r, y, sums, loops);
    r.tolerance = tolerance_of(r.standard_uncertainty, how.digits) * share_of_tolerance;
  } else {
    std::vector<of_block> blocks;
    std::vector<double> copy;
    bool enough = false;
    double doubt[4] = {};
    while (!enough && y.size() + size <= std::max(how.most, 2 * size)) {
      const std::size_t before = y.size(), more = std::max<std::size_t>(1, std::min<std::size_t>(before / size < 8 ? 4 : 16, (std::max(how.most, 2 * size) - before) / size));
      extend(before + more * size);
      refuse_refused();
      for (std::size_t b = 0; b < more && !enough; ++b) {
        blocks.push_back(look_at(y.data() + before + b * size, size, how.probability, copy));
        const auto h = static_cast<double>(blocks.size());
        if (blocks.size() < 2) continue;
        of_block mean{}, square{};
        for (const auto& x : blocks) mean.mean += x.mean / h, mean.u += x.u * x.u / h, mean.low += x.low / h, mean.high += x.high / h;
        mean.u = std::sqrt(mean.u);
        for (const auto& x : blocks) {
          square.mean += (x.mean - mean.mean) * (x.mean - mean.mean);
          square.u += (x.u - mean.u) * (x.u - mean.u);
          square.low += (x.low - mean.low) * (x.low - mean.low);
          square.high += (x.high - mean.high) * (x.high - mean.high);
        }
        const double by = 1.0 / (h * (h - 1.0));
        const double now[4] = {2.0 * std::sqrt(square.mean * by), 2.0 * std::sqrt(square.u * by), 2.0 * std::sqrt(square.low * by), 2.0 * std::sqrt(square.high * by)};
        r.tolerance = tolerance_of(mean.u, how.digits) * share_of_tolerance;
        std::copy(now, now + 4, doubt);
        enough = std::all_of(now, now + 4, [&](double d) { return d <= r.tolerance; });
        if (enough) {  // what was drawn beyond is not used: the result does not depend on how many blocks came at once
          y.resize(before + (b + 1) * size);
          sums.resize(y.size() / chunk);
        }
      }
    }
    summarise(r, y, sums, loops);
    r.doubt_mean = doubt[0];
    r.doubt_u = doubt[1];
    r.doubt_low = doubt[2];
    r.doubt_high = doubt[3];
  }
  r.converged = std::max({r.doubt_mean, r.doubt_u, r.doubt_low, r.doubt_high}) <= r.tolerance;
  return r;
}

}  // namespace

monte_carlo_result monte_carlo(const formula_info& f, std::span<const uncertain> arguments, const monte_carlo_options& how) {
  std::vector<measured> unused;
  return run_plan(f, plan_of(f, arguments, unused), how, 1.0);
}

propagated propagate(const formula_info& f, std::span<const uncertain> arguments, const monte_carlo_options& how) {
  std::vector<measured> x;
  const plan p = plan_of(f, arguments, x);
  propagated r;
  std::vector<double> values, slopes(x.size());
  for (const auto& m : x) values.push_back(m.value);
  const auto refuse = [&](fault why) {
    const std::string text(f.refusal(f.self, why, values.data()));
    if (why.kind == fault::what::relation) throw relation_error(text);
    throw range_error(text);
  };
  if (const fault bad = f.check(f.self, values.data())) refuse(bad);
  const double y = f.gradient(f.self, values.data(), slopes.data());
  if (!is_finite(y)) refuse({fault::what::no_result, -1});
  r.first_order = combine(y, slopes.data(), x.data(), x.size());
  r.monte_carlo = run_plan(f, p, how, 0.2);
  const auto& m = r.monte_carlo;
  std::string why;
  double half = no_number;
  try {
    half = r.first_order.expanded_uncertainty(how.probability);
  } catch (const range_error& e) {
    why = e.what();
  }
  r.first_low = y - half;
  r.first_high = y + half;
  // the tolerance is that of the first order's uncertainty; what Monte Carlo itself may be off counts against it
  const double u = r.first_order.standard_uncertainty(), tolerance = tolerance_of(u > 0.0 ? u : m.standard_uncertainty, how.digits);
  const double off_low = std::fabs(r.first_low - m.low), off_high = std::fabs(r.first_high - m.high), off = off_low > off_high ? off_low : off_high;
  const double own = m.converged ? 0.0 : std::max(m.doubt_low, m.doubt_high);
  r.validated = is_finite(half) && is_finite(u) && off + own <= tolerance;
  const std::string_view unit = f.result.unit.symbol;
  if (r.validated) {
    r.word = "The first order holds: both ends of its interval are within " + quantity_text(tolerance, unit, 3) + " of those of Monte Carlo (" + std::to_string(m.trials) + " trials).";
  } else if (!is_finite(half) || !is_finite(u)) {
    r.word = "The first order has no interval" + (why.empty() ? std::string() : " (" + why + ")") + ": the result is that of Monte Carlo (" + std::to_string(m.trials) + " trials).";
  } else {
    r.word = "The first order does not hold: an end of its interval is " + quantity_text(off, unit, 3) + " from that of Monte Carlo, more than " +
             quantity_text(tolerance, unit, 3) + "; the result is that of Monte Carlo (" + std::to_string(m.trials) + " trials).";
  }
  return r;
}

}  // namespace v1
}  // namespace makegood
