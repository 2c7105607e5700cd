// SPDX-License-Identifier: MIT
// An accessory point with unknown conductors: every wiring that explains what is live, dead and continuous in each switch position.
// By exact enumeration; nothing in it says that anything is safe to touch. Subject: electrical. Opt-in.
#pragma once
#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <map>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>
#include "../text.hpp"

namespace makegood {
inline namespace v1 {
namespace electrical {

/// What kinds of switch there may be. An unmarked one has positions "1" and "2" of which nobody knows which is closed.
enum class switch_kind : unsigned char { one_way, pull_cord, double_pole, double_pole_pull_cord, two_way, intermediate };
struct switch_kind_info {
  std::string_view key;
  std::array<std::string_view, 2> positions;
};
inline constexpr switch_kind_info switch_kinds[] = {{"one_way", {"off", "on"}},     {"pull_cord", {"1", "2"}},
                                                    {"double_pole", {"off", "on"}}, {"double_pole_pull_cord", {"1", "2"}},
                                                    {"two_way", {"1", "2"}},        {"intermediate", {"1", "2"}}};
struct point_switch {
  std::string name;
  switch_kind kind = switch_kind::one_way;
  bool neon = false;  ///< a lamp lies across its contacts: the load side is fed through it while the switch is open
};

/// What a reading said. With a meter of high impedance a floating conductor may show any voltage; "ghost" is one that is neither full nor 0.
enum class seen_state : unsigned char { live, dead, ghost, continuous, open };
inline constexpr std::string_view seen_states[] = {"live", "dead", "ghost", "continuous", "open"};
/// Which supply was on while a voltage was read.
enum class supply_state : unsigned char { on, isolated, all_isolated };
inline constexpr std::string_view supply_states[] = {"on", "isolated", "all_isolated"};

/// One reading between two ends: conductors by index, or a reference.
struct point_reading {
  static constexpr int earth = -1, board_neutral = -2, board_line = -3;
  int from = 0;
  int to = earth;
  std::vector<int> positions{};       ///< of each switch, 0 or 1; -1: not known
  seen_state seen = seen_state::dead;
  supply_state supply = supply_state::on;  ///< of a voltage
  bool high_impedance = true;         ///< the meter of a voltage
  bool neutral_disconnected = false;  ///< of a continuity: the circuit's neutral taken off at the board
  bool loads_connected = false;       ///< of a continuity
  bool continuity() const { return seen == seen_state::continuous || seen == seen_state::open; }
};
struct accessory_point {
  std::vector<std::string> conductors;
  std::vector<point_switch> switches{};
  std::vector<point_reading> readings{};
};

/// What a conductor may be.
struct conductor_role {
  std::string key;   ///< "neutral", "switched_line:S1", ...: two of one key behave alike beside the same other conductors
  std::string text;
};
struct proposed_reading {
  point_reading what{};
  double expected_remaining = 0.0;     ///< wirings, on average over what it may show
  double expected_entropy_bits = 0.0;  ///< of equally likely wirings
};
struct reading_effect {
  std::size_t rules_out = 0;  ///< wirings that only this reading excludes, beside all the others
  bool at_least = false;      ///< the count without it was cut off
};
struct ruled_out_role {
  std::size_t role;
  std::vector<std::size_t> by;  ///< readings each of which excludes it alone; none: only several together do
};
struct switched_feed_result {
  std::vector<conductor_role> roles;
  std::vector<std::vector<std::size_t>> wirings;      ///< a role for each conductor, in the order of the conductors
  bool complete = true;                               ///< false: there are more than `most_wirings`, and these are some of them
  std::vector<std::vector<std::size_t>> possible;     ///< for each conductor, the roles that it has in any wiring
  std::vector<std::vector<ruled_out_role>> ruled_out;  ///< for each conductor
  std::vector<reading_effect> effects;                ///< for each reading; none where nothing explains the readings
  std::vector<proposed_reading> next;                 ///< the best first; empty where no reading at the point tells more
  std::size_t distinguishable_count = 0;              ///< groups of wirings that readings at the point can tell apart at all
  std::vector<std::size_t> conflict;                  ///< where nothing explains the readings: an irreducible set of them that nothing explains
  std::vector<std::size_t> suspects;                  ///< ... readings each of which, left out, lets something explain the rest
};

namespace detail {
inline constexpr std::size_t most_wirings = 10000, most_conductors = 8, most_switches = 5, most_readings = 200;

/// What a node is joined to: the origin of a potential, or a floating group of its own.
enum node : unsigned char { node_line, node_neutral, node_other_neutral, node_earth, node_other_line, node_floating };
inline bool cold(int a) { return a == node_neutral || a == node_other_neutral || a == node_earth; }

constexpr unsigned bit(seen_state s) { return 1u << static_cast<unsigned>(s); }

/// What a voltage between two nodes may show.
inline unsigned voltage_between(int a, int b, bool neon, const point_reading& r) {
  const bool line_on = r.supply == supply_state::on, other_on = r.supply != supply_state::all_isolated;
  const auto hot = [&](int n) { return (n == node_line && line_on) || (n == node_other_line && other_on); };
  const auto loose = [&](int n) { return !cold(n) && !hot(n); };
  if (a == b && a != node_other_line) return bit(seen_state::dead);
  if (cold(a) && cold(b)) return bit(seen_state::dead);
  if (hot(a) && hot(b)) return bit(seen_state::dead) | bit(seen_state::live);  // another circuit may be on another phase
  if (!loose(a) && !loose(b)) return bit(seen_state::live);
  if (r.high_impedance) return bit(seen_state::dead) | bit(seen_state::ghost) | bit(seen_state::live);
  return bit(seen_state::dead) | (neon && line_on ? bit(seen_state::ghost) : 0u);
}
/// What a test of continuity may show, with the circuit isolated.
inline unsigned continuity_between(int a, int b, const point_reading& r) {
  constexpr unsigned both = bit(seen_state::continuous) | bit(seen_state::open);
  if (a == b) return a == node_other_neutral || a == node_other_line ? both : bit(seen_state::continuous);  // of one other circuit or of two
  const bool own_neutral = a == node_neutral || b == node_neutral;
  const auto of_supply = [](int n) { return cold(n) || n == node_other_line; };
  if (of_supply(a) && of_supply(b))
    return own_neutral && r.neutral_disconnected && !r.loads_connected ? bit(seen_state::open) : both;  // they meet at the origin, or in a load
  return r.loads_connected ? both : bit(seen_state::open);
}

/// One way in which the switches may be wired: the roles it offers and the node of each in every state.
struct topology {
  struct offered {
    std::size_t role;
    bool neon;
    std::array<unsigned char, 32> node;
  };
  std::vector<offered> roles;
};
inline constexpr unsigned char own_group = 255;  ///< an unused conductor floats alone

class feed_logic {
 public:
  explicit feed_logic(const accessory_point& p) : p_(p), states_(std::size_t{1} << p.switches.size()) {
    check();
    build();
    for (const auto& r : p.readings) states_of_.push_back(states(r));
  }

  switched_feed_result run() const {
    switched_feed_result out;
    out.roles = roles_;
    std::vector<char> all(p_.readings.size(), 1);
    std::vector<const topology*> from;
    out.complete = enumerate(all, most_wirings, out.wirings, &from);
    out.possible.resize(p_.conductors.size());
    for (std::size_t c = 0; c < p_.conductors.size(); ++c) {
      std::set<std::size_t> some;
      for (const auto& w : out.wirings) some.insert(w[c]);
      if (!out.complete) some = singly_possible(c);
      out.possible[c].assign(some.begin(), some.end());
    }
    if (out.wirings.empty()) {
      conflict(out);
      return out;
    }
    rule_out(out);
    for (std::size_t i = 0; i < p_.readings.size(); ++i) {
      auto without = all;
      without[i] = 0;
      std::vector<std::vector<std::size_t>> more;
      const bool whole = enumerate(without, most_wirings, more, nullptr);
      out.effects.push_back({more.size() - std::min(more.size(), out.wirings.size()), !whole});
    }
    if (out.complete) propose(out, from);
    return out;
  }

 private:
  static std::string at_two(const std::vector<const point_switch*>& s, int parity) {
    std::string names;
    for (std::size_t i = 0; i < s.size(); ++i) names += (i == 0 ? "" : i + 1 == s.size() ? " and " : ", ") + s[i]->name;
    return std::string(parity ? "an odd" : "an even") + " number of " + names + " at \"2\"";
  }
  std::size_t role(const std::string& key, const std::string& text) {
    const auto [at, fresh] = index_.emplace(key, roles_.size());
    if (fresh) roles_.push_back({key, text});
    return at->second;
  }
  template <class Node>
  void offer(topology& t, const std::string& key, const std::string& text, bool neon, Node node) {
    topology::offered o{role(key, text), neon, {}};
    for (std::size_t s = 0; s < states_; ++s) o.node[s] = static_cast<unsigned char>(node(s));
    t.roles.push_back(o);
  }
  void check() const {
    const auto demand = [](bool good, const std::string& text) {
      if (!good) throw range_error("switched_feed_logic: " + text);
    };
    demand(!p_.conductors.empty() && p_.conductors.size() <= most_conductors, "1 to 8 conductors at the point; take a larger one in parts");
    demand(p_.switches.size() <= most_switches, "at most 5 switches");
    demand(p_.readings.size() <= most_readings, "at most 200 readings");
    std::set<std::string> names{"earth", "board_neutral", "board_line"};
    for (const auto& c : p_.conductors)
      demand(!c.empty() && names.insert(c).second, "conductor \"" + c + "\": a name of its own, other than \"earth\", \"board_neutral\" and \"board_line\"");
    std::set<std::string> switches;
    std::size_t two_way = 0, intermediate = 0;
    for (const auto& s : p_.switches) {
      demand(!s.name.empty() && switches.insert(s.name).second, "switch \"" + s.name + "\": a name of its own");
      two_way += s.kind == switch_kind::two_way;
      intermediate += s.kind == switch_kind::intermediate;
    }
    demand(two_way <= 2, "at most two two-way switches; one that has nothing to do with the pair is taken as one_way");
    demand(intermediate == 0 || two_way == 2, "an intermediate switch lies between two two-way switches");
    const int n = static_cast<int>(p_.conductors.size());
    for (std::size_t i = 0; i < p_.readings.size(); ++i) {
      const auto& r = p_.readings[i];
      const std::string which = "reading " + std::to_string(i + 1);
      demand(r.from >= point_reading::board_line && r.from < n && r.to >= point_reading::board_line && r.to < n, which + ": no such conductor");
      demand(r.from != r.to, which + ": two different ends");
      demand(r.from >= 0 || r.to >= 0, which + ": one end at least is a conductor of the point");
      demand(r.positions.size() <= p_.switches.size(), which + ": more positions than switches");
      for (const int x : r.positions) demand(x >= -1 && x <= 1, which + ": a position is 0 or 1, or -1 where it is not known");
    }
  }
  std::vector<std::size_t> states(const point_reading& r) const {
    std::vector<std::size_t> some;
    for (std::size_t s = 0; s < states_; ++s) {
      bool fits = true;
      for (std::size_t i = 0; i < r.positions.size(); ++i) fits = fits && (r.positions[i] < 0 || static_cast<std::size_t>(r.positions[i]) == (s >> i & 1u));
      if (fits) some.push_back(s);
    }
    return some;
  }

  /// Every topology: the polarity of what is unmarked, and how two-way switches are joined.
  void build() {
    std::vector<std::size_t> unmarked, two_way, between;
    for (std::size_t i = 0; i < p_.switches.size(); ++i) {
      const auto k = p_.switches[i].kind;
      if (k == switch_kind::pull_cord || k == switch_kind::double_pole_pull_cord) unmarked.push_back(i);
      if (k == switch_kind::two_way) two_way.push_back(i);
      if (k == switch_kind::intermediate) between.push_back(i);
    }
    for (std::size_t polarity = 0; polarity < (std::size_t{1} << unmarked.size()); ++polarity) {
      topology base;
      offer(base, "permanent_line", "permanent line", false, [](std::size_t) { return node_line; });
      offer(base, "other_line", "line of another circuit, or a conductor that is live through a load of one", false,
            [](std::size_t) { return node_other_line; });
      offer(base, "neutral", "neutral of this circuit", false, [](std::size_t) { return node_neutral; });
      offer(base, "other_neutral", "neutral of another circuit (borrowed neutral)", false, [](std::size_t) { return node_other_neutral; });
      offer(base, "earth", "earth", false, [](std::size_t) { return node_earth; });
      offer(base, "unused", "unused or broken, floating", false, [](std::size_t) { return own_group; });
      for (std::size_t i = 0; i < p_.switches.size(); ++i) {
        const auto& s = p_.switches[i];
        if (s.kind == switch_kind::two_way || s.kind == switch_kind::intermediate) continue;
        const auto u = std::find(unmarked.begin(), unmarked.end(), i);
        const bool marked = u == unmarked.end();
        const std::size_t closed = marked ? 1 : polarity >> (u - unmarked.begin()) & 1u;
        const std::string tail = marked ? "" : ":" + std::to_string(closed + 1), words = marked ? "" : ", closed at \"" + std::to_string(closed + 1) + "\"";
        const int floating = node_floating + 2 * static_cast<int>(i);
        offer(base, "switched_line:" + s.name + tail, "switched line of " + s.name + words, s.neon,
              [&](std::size_t state) { return (state >> i & 1u) == closed ? int{node_line} : floating; });
        if (s.kind == switch_kind::double_pole || s.kind == switch_kind::double_pole_pull_cord)
          offer(base, "switched_neutral:" + s.name + tail, "neutral switched by " + s.name + words, s.neon,
                [&](std::size_t state) { return (state >> i & 1u) == closed ? int{node_neutral} : floating + 1; });
      }
      if (two_way.empty()) {
        topologies_.push_back(base);
        continue;
      }
      if (between.empty()) {  // each by itself: both throws, the common on the line
        topology t = base;
        for (const auto i : two_way)
          for (std::size_t throw_ = 0; throw_ < 2; ++throw_)
            offer(t, "throw:" + p_.switches[i].name + ":" + std::to_string(throw_ + 1),
                  "conductor on one throw of " + p_.switches[i].name + " alone, on the line at \"" + std::to_string(throw_ + 1) + "\"", p_.switches[i].neon,
                  [&](std::size_t state) {
                    return (state >> i & 1u) == throw_ ? int{node_line} : node_floating + 20 + 2 * static_cast<int>(i) + static_cast<int>(throw_);
                  });
        topologies_.push_back(t);
      }
      if (two_way.size() < 2) continue;
      conventional(base, two_way, between);
      if (between.empty()) three_wire(base, two_way);
    }
  }
  /// The line at one common, the switched line at the other, two strappers between, crossed or not by each intermediate switch.
  void conventional(const topology& base, const std::vector<std::size_t>& two_way, std::vector<std::size_t> between) {
    constexpr int loose = node_floating + 60;
    std::vector<const point_switch*> all{&p_.switches[two_way[0]], &p_.switches[two_way[1]]};
    bool neon = all[0]->neon || all[1]->neon;
    for (const auto i : between) all.push_back(&p_.switches[i]), neon = neon || p_.switches[i].neon;
    std::sort(between.begin(), between.end());
    do {
      for (std::size_t feed = 0; feed < 2; ++feed)
        for (std::size_t parity = 0; parity < 2; ++parity) {
          const std::size_t first = two_way[feed], last = two_way[1 - feed];
          topology t = base;
          const auto total = [&](std::size_t state) {
            std::size_t x = (state >> first & 1u) ^ (state >> last & 1u);
            for (const auto i : between) x ^= state >> i & 1u;
            return x;
          };
          offer(t, "two_way_line:" + std::to_string(parity), "switched line of the two-way switches, on with " + at_two(all, static_cast<int>(parity)), neon,
                [&](std::size_t state) { return total(state) == parity ? int{node_line} : loose; });
          std::vector<std::string> passed;
          for (std::size_t segment = 0; segment <= between.size(); ++segment) {
            if (segment) passed.push_back(p_.switches[between[segment - 1]].name);
            std::sort(passed.begin(), passed.end());
            std::string beyond;
            for (const auto& name : passed) beyond += (beyond.empty() ? "" : "+") + name;
            for (std::size_t strap = 0; strap < 2; ++strap)
              offer(t, "strapper:" + p_.switches[first].name + ":" + beyond + ":" + std::to_string(strap + 1),
                    "strapper " + std::to_string(strap + 1) + (beyond.empty() ? " of " : " beyond " + beyond + " of ") + "the two-way switches, fed at " +
                        p_.switches[first].name,
                    neon, [&](std::size_t state) {
                      std::size_t fed = state >> first & 1u;
                      for (std::size_t k = 0; k < segment; ++k) fed ^= state >> between[k] & 1u;
                      return fed == strap ? int{node_line} : loose;
                    });
          }
          topologies_.push_back(t);
        }
    } while (std::next_permutation(between.begin(), between.end()));
  }
  /// Commons joined; the line at one throw of both, the switched line at the other throw of both.
  void three_wire(const topology& base, const std::vector<std::size_t>& two_way) {
    constexpr int loose = node_floating + 61;
    const std::vector<const point_switch*> all{&p_.switches[two_way[0]], &p_.switches[two_way[1]]};
    const bool neon = all[0]->neon || all[1]->neon;
    for (std::size_t p = 0; p < 2; ++p)
      for (std::size_t q = 0; q < 2; ++q) {
        topology t = base;
        const auto away = [&](std::size_t state, std::size_t which) { return (state >> two_way[which] & 1u) ^ (which ? q : p); };  // 1: at the switched line
        const std::size_t parity = 1u ^ p ^ q;
        offer(t, "three_wire_line:" + std::to_string(parity),
              "switched line of the two-way switches in three-wire control, on with " + at_two(all, static_cast<int>(parity)), neon,
              [&](std::size_t state) { return away(state, 0) != away(state, 1) ? int{node_line} : loose; });
        offer(t, "three_wire_common:" + std::to_string(p) + std::to_string(q),
              "strapper between the commons in three-wire control, on the line with " + all[0]->name + " at \"" + std::to_string(p + 1) + "\" or " +
                  all[1]->name + " at \"" + std::to_string(q + 1) + "\"",
              neon, [&](std::size_t state) { return away(state, 0) && away(state, 1) ? loose : int{node_line}; });
        topologies_.push_back(t);
      }
  }

  // ---- one reading ----
  struct end {
    int node;
    bool neon;
  };
  static end reference(int which) {
    return {which == point_reading::earth ? node_earth : which == point_reading::board_neutral ? node_neutral : node_line, false};
  }
  static end conductor(const topology::offered& o, std::size_t state, int c) { return {o.node[state] == own_group ? 1000 + c : o.node[state], o.neon}; }
  /// Everything that a reading may show if its ends have these roles (nullptr: a reference).
  static unsigned shows(const point_reading& r, const std::vector<std::size_t>& states, const topology::offered* from, const topology::offered* to) {
    unsigned may = 0;
    for (const auto s : states) {
      const end a = from ? conductor(*from, s, r.from) : reference(r.from), b = to ? conductor(*to, s, r.to) : reference(r.to);
      const auto loose = [](const end& e) { return e.node >= node_floating; };
      may |= r.continuity() ? continuity_between(a.node, b.node, r) : voltage_between(a.node, b.node, (a.neon && loose(a)) || (b.neon && loose(b)), r);
    }
    return may;
  }
  bool explains(std::size_t i, const topology::offered* from, const topology::offered* to) const {
    return shows(p_.readings[i], states_of_[i], from, to) & bit(p_.readings[i].seen);
  }

  // ---- all of them ----
  /// All wirings that explain the readings in use, in one order, up to a number; whether these are all.
  bool enumerate(const std::vector<char>& use, std::size_t most, std::vector<std::vector<std::size_t>>& found, std::vector<const topology*>* from) const {
    const std::size_t n = p_.conductors.size();
    std::map<std::vector<std::size_t>, const topology*> all;
    bool complete = true;
    for (const auto& t : topologies_) {
      std::vector<std::vector<const topology::offered*>> fits(n);
      for (std::size_t c = 0; c < n; ++c)
        for (const auto& o : t.roles) {
          bool good = true;
          for (std::size_t i = 0; i < p_.readings.size() && good; ++i) {
            const auto& r = p_.readings[i];
            if (!use[i] || (r.from >= 0 && r.to >= 0)) continue;
            if (r.from == static_cast<int>(c)) good = explains(i, &o, nullptr);
            else if (r.to == static_cast<int>(c)) good = explains(i, nullptr, &o);
          }
          if (good) fits[c].push_back(&o);
        }
      std::vector<const topology::offered*> chosen(n, nullptr);
      std::vector<std::size_t> key(n);
      const auto go = [&](const auto& self, std::size_t c) -> bool {
        if (c == n) {
          for (std::size_t k = 0; k < n; ++k) key[k] = chosen[k]->role;
          if (all.size() >= most && !all.contains(key)) return false;
          all.emplace(key, &t);
          return true;
        }
        for (const auto* o : fits[c]) {
          chosen[c] = o;
          bool good = true;
          for (std::size_t i = 0; i < p_.readings.size() && good; ++i) {
            const auto& r = p_.readings[i];
            const int here = static_cast<int>(c);
            if (!use[i] || r.from < 0 || r.to < 0 || std::max(r.from, r.to) != here) continue;
            good = explains(i, chosen[static_cast<std::size_t>(r.from)], chosen[static_cast<std::size_t>(r.to)]);
          }
          if (good && !self(self, c + 1)) return false;
        }
        return true;
      };
      if (!go(go, 0)) {
        complete = false;
        break;
      }
    }
    found.clear();
    for (const auto& [wiring, t] : all) {
      found.push_back(wiring);
      if (from) from->push_back(t);
    }
    return complete;
  }
  bool any(const std::vector<char>& use) const {
    std::vector<std::vector<std::size_t>> one;
    enumerate(use, 1, one, nullptr);
    return !one.empty();
  }
  std::set<std::size_t> singly_possible(std::size_t c) const {
    std::set<std::size_t> some;
    for (const auto& t : topologies_)
      for (const auto& o : t.roles) {
        bool good = true;
        for (std::size_t i = 0; i < p_.readings.size() && good; ++i) good = alone(i, c, t, o);
        if (good) some.insert(o.role);
      }
    return some;
  }
  /// Whether one reading by itself lets a conductor have a role in a topology.
  bool alone(std::size_t i, std::size_t c, const topology& t, const topology::offered& o) const {
    const auto& r = p_.readings[i];
    const bool first = r.from == static_cast<int>(c), second = r.to == static_cast<int>(c);
    if (!first && !second) return true;
    if ((first ? r.to : r.from) < 0) return explains(i, first ? &o : nullptr, first ? nullptr : &o);
    for (const auto& other : t.roles)
      if (explains(i, first ? &o : &other, first ? &other : &o)) return true;
    return false;
  }
  void rule_out(switched_feed_result& out) const {
    out.ruled_out.resize(p_.conductors.size());
    for (std::size_t c = 0; c < p_.conductors.size(); ++c)
      for (std::size_t k = 0; k < roles_.size(); ++k) {
        if (std::find(out.possible[c].begin(), out.possible[c].end(), k) != out.possible[c].end()) continue;
        ruled_out_role gone{k, {}};
        for (std::size_t i = 0; i < p_.readings.size(); ++i) {
          bool can = false;
          for (const auto& t : topologies_)
            for (const auto& o : t.roles)
              if (o.role == k) can = can || alone(i, c, t, o);
          if (!can) gone.by.push_back(i);
        }
        out.ruled_out[c].push_back(std::move(gone));
      }
  }
  void conflict(switched_feed_result& out) const {
    std::vector<char> use(p_.readings.size(), 1);
    for (std::size_t i = 0; i < use.size(); ++i) {
      auto without = std::vector<char>(use.size(), 1);
      without[i] = 0;
      if (any(without)) out.suspects.push_back(i);
    }
    for (std::size_t i = use.size(); i-- > 0;) {  // the latest readings go first
      use[i] = 0;
      if (any(use)) use[i] = 1;
    }
    for (std::size_t i = 0; i < use.size(); ++i)
      if (use[i]) out.conflict.push_back(i);
  }
  bool taken(const point_reading& x) const {
    for (const auto& r : p_.readings) {
      auto positions = r.positions;
      positions.resize(p_.switches.size(), -1);
      const bool ends = (r.from == x.from && r.to == x.to) || (r.from == x.to && r.to == x.from);
      if (!ends || positions != x.positions || r.continuity() != x.continuity()) continue;
      if (r.continuity() ? r.neutral_disconnected == x.neutral_disconnected && !r.loads_connected
                         : r.supply == x.supply && r.high_impedance == x.high_impedance)
        return true;
    }
    return false;
  }
  void propose(switched_feed_result& out, const std::vector<const topology*>& from) const {
    const std::size_t n = out.wirings.size();
    const int conductors = static_cast<int>(p_.conductors.size());
    std::vector<std::vector<const topology::offered*>> roles(n);
    for (std::size_t w = 0; w < n; ++w)
      for (const auto k : out.wirings[w])
        for (const auto& o : from[w]->roles)
          if (o.role == k) {
            roles[w].push_back(&o);
            break;
          }
    bool high = p_.readings.empty();
    for (const auto& r : p_.readings) high = high || (!r.continuity() && r.high_impedance);
    std::vector<point_reading> candidates;
    for (std::size_t s = 0; s < states_; ++s) {
      point_reading r;
      for (std::size_t i = 0; i < p_.switches.size(); ++i) r.positions.push_back(static_cast<int>(s >> i & 1u));
      for (int a = 0; a < conductors; ++a) {
        r.from = a;
        r.seen = seen_state::open;  // dead readings first: of two equal ones the dead one is proposed
        r.neutral_disconnected = true;
        for (int b : {point_reading::board_neutral, point_reading::earth, point_reading::board_line}) r.to = b, candidates.push_back(r);
        for (int b = a + 1; b < conductors; ++b) r.to = b, candidates.push_back(r);
      }
    }
    for (std::size_t s = 0; s < states_; ++s) {
      point_reading r;
      for (std::size_t i = 0; i < p_.switches.size(); ++i) r.positions.push_back(static_cast<int>(s >> i & 1u));
      r.seen = seen_state::dead;
      r.high_impedance = high;
      for (int a = 0; a < conductors; ++a) {
        r.from = a;
        r.to = point_reading::earth;
        for (const auto supply : {supply_state::isolated, supply_state::on}) r.supply = supply, candidates.push_back(r);
        for (int b = a + 1; b < conductors; ++b) r.to = b, candidates.push_back(r);
      }
    }
    std::vector<std::uint64_t> signature(n, 1469598103934665603ull);
    std::vector<unsigned> may(n);
    for (const auto& r : candidates) {
      const auto where = states(r);
      for (std::size_t w = 0; w < n; ++w) {
        may[w] = shows(r, where, roles[w][static_cast<std::size_t>(r.from)], r.to >= 0 ? roles[w][static_cast<std::size_t>(r.to)] : nullptr);
        signature[w] = (signature[w] ^ may[w]) * 1099511628211ull;
      }
      if (n < 2 || taken(r)) continue;
      proposed_reading p{r, 0.0, 0.0};
      const double all = static_cast<double>(n);
      for (unsigned o = 0; o < 5; ++o) {
        double probability = 0.0, left = 0.0, sum = 0.0;
        for (std::size_t w = 0; w < n; ++w)
          if (may[w] >> o & 1u) {
            const double q = 1.0 / (all * static_cast<double>(__builtin_popcount(may[w])));
            probability += q;
            left += 1.0;
            sum -= q * std::log2(q);
          }
        if (probability > 0.0) {
          p.expected_remaining += probability * left;
          p.expected_entropy_bits += sum + probability * std::log2(probability);
        }
      }
      if (p.expected_remaining < all * (1.0 - 1e-9)) out.next.push_back(p);
    }
    std::stable_sort(out.next.begin(), out.next.end(), [](const auto& a, const auto& b) { return a.expected_remaining < b.expected_remaining - 1e-9; });
    if (out.next.size() > 5) out.next.resize(5);
    out.distinguishable_count = std::set<std::uint64_t>(signature.begin(), signature.end()).size();
  }

  const accessory_point& p_;
  std::size_t states_;
  std::vector<conductor_role> roles_;
  std::map<std::string, std::size_t> index_;
  std::vector<topology> topologies_;
  std::vector<std::vector<std::size_t>> states_of_;
};
}  // namespace detail

/// Every wiring that explains the readings at a point, what rules out the others, and which reading would tell the rest apart best.
/// Nothing in the result says that a conductor is safe to touch.
inline switched_feed_result switched_feed_logic(const accessory_point& point) { return detail::feed_logic(point).run(); }

}  // namespace electrical
}  // namespace v1
}  // namespace makegood
