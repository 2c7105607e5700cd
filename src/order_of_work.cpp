// SPDX-License-Identifier: MIT
// The rest of the subject job: what is done in the time there is, and in which order.
#include <makegood/job/order_of_work.hpp>
#include "subjects.hpp"

namespace makegood::subjects {
namespace {
namespace job = makegood::job;
using document::array;
using document::object;

constexpr std::string_view who = "order_of_work";

/// The fields of one object of a list; messages name its place.
class part {
 public:
  template <std::size_t N>
  part(std::string path, const document::value& v, const std::string_view (&known)[N]) : path_(std::move(path)), from_(v.as<object>()) {
    if (!from_) throw range_error(std::string(who) + ": " + path_ + " must be an object, not " + std::string(document::type_name(v)));
    for (const auto& f : from_->fields)
      if (std::find(std::begin(known), std::end(known), f.first) == std::end(known)) {
        const std::string near = document::nearest(f.first, known);
        throw range_error(std::string(who) + ": " + path_ + " has no field \"" + f.first + "\"" + (near.empty() ? "" : "; did you mean \"" + near + "\"?"));
      }
  }
  const document::value* find(std::string_view name) const {
    const auto* v = from_->find(name);
    return v && !v->is_null() ? v : nullptr;
  }
  double number(std::string_view name, double otherwise) const { return as<double>(name, "a number", otherwise); }
  double number(std::string_view name) const {
    if (!find(name)) throw range_error(std::string(who) + ": " + path_ + "." + std::string(name) + " is missing");
    return number(name, 0.0);
  }
  std::string text(std::string_view name) const { return as<std::string>(name, "a text", {}); }
  bool flag(std::string_view name) const { return as<bool>(name, "true or false", false); }
  std::vector<std::string> texts(std::string_view name) const {
    std::vector<std::string> list_;
    for (const auto& v : as<array>(name, "a list of texts", {})) {
      const auto* t = v.as<std::string>();
      if (!t) throw range_error(std::string(who) + ": " + path_ + "." + std::string(name) + " must be a list of texts");
      list_.push_back(*t);
    }
    return list_;
  }
  const std::string& path() const { return path_; }

 private:
  template <class T>
  T as(std::string_view name, std::string_view kind, T otherwise) const {
    const auto* v = find(name);
    if (!v) return otherwise;
    const auto* x = v->as<T>();
    if (!x) throw range_error(std::string(who) + ": " + path_ + "." + std::string(name) + " must be " + std::string(kind) + ", not " + std::string(document::type_name(*v)));
    return *x;
  }
  std::string path_;
  const object* from_;
};
const array& list_in(const fields& in, std::string_view name) {
  const auto& v = in.need(name);
  const auto* a = v.as<array>();
  if (!a) throw range_error(std::string(who) + ": \"" + std::string(name) + "\" must be a list of objects, not " + std::string(document::type_name(v)));
  return *a;
}
array texts_of(const std::vector<std::string>& list_) {
  array a;
  for (const auto& t : list_) a.emplace_back(t);
  return a;
}
document::value text_or_null(const std::string& t) { return t.empty() ? document::value(nullptr) : document::value(t); }

constexpr std::string_view task_names[] = {"id", "title", "minutes", "low", "high", "risk", "access", "circuit", "state", "needs", "must"};
constexpr std::string_view group_names[] = {"id", "title", "setup_min", "close_min", "isolates"};
constexpr std::string_view reasons[] = {"no_risk", "serves_none", "needs", "does_not_fit"};

constexpr model_argument order_of_work_arguments[] = {
    {"tasks", "objects",
     "up to 64, one object each: \"id\"; \"title\"; \"minutes\" (likely, 0 to 10080), \"low\" and \"high\" (triangular spread; left out: none); \"risk\" that is gone once it is "
     "done (0 to 1e12, in any one measure that adds up, such as expected harm; 0); \"access\" (id of a group that is opened for it); \"state\": \"dead\" or \"live\", and "
     "\"circuit\" (dead: id of a group that isolates); \"needs\" (ids of tasks that come before); \"must\" (true: done whatever and first, as making safe is)"},
    {"available_min", "number", "time there is, with everything closed again, 0 to 10080 min"},
    {"groups", "objects",
     "what is opened or isolated once for tasks that follow each other, and again if it is left and returned to: \"id\", \"title\", \"setup_min\", \"close_min\" (0 to "
     "10080 min; 0), \"isolates\" (true: the isolation of a circuit)",
     true},
    {"travel_min", "number", "travel of a later visit, 0 to 10080 min; 0", true}};
document::value run_order_of_work(const object& inputs, const rulebook&) {
  const fields in(who, inputs);
  in.only("tasks", "available_min", "groups", "travel_min");
  std::vector<job::work_task> tasks;
  std::vector<job::work_setup> groups;
  const auto& given = list_in(in, "tasks");
  for (std::size_t i = 0; i < given.size(); ++i) {
    const part p("tasks[" + std::to_string(i) + "]", given[i], task_names);
    job::work_task t;
    t.id = p.text("id");
    t.title = p.text("title");
    t.minutes = p.number("minutes");
    t.low = p.number("low", no_number);
    t.high = p.number("high", no_number);
    t.risk = p.number("risk", 0.0);
    t.access = p.text("access");
    t.circuit = p.text("circuit");
    const std::string state = p.text("state");
    if (!state.empty() && state != "dead" && state != "live")
      throw range_error(std::string(who) + ": " + p.path() + ".state = \"" + state + "\" is not one of \"dead\", \"live\"");
    t.state = state == "dead" ? job::supply_state::dead : state == "live" ? job::supply_state::live : job::supply_state::any;
    t.needs = p.texts("needs");
    t.must = p.flag("must");
    tasks.push_back(std::move(t));
  }
  if (in.has("groups")) {
    const auto& list_ = list_in(in, "groups");
    for (std::size_t i = 0; i < list_.size(); ++i) {
      const part p("groups[" + std::to_string(i) + "]", list_[i], group_names);
      groups.push_back({p.text("id"), p.text("title"), p.number("setup_min", 0.0), p.number("close_min", 0.0), p.flag("isolates")});
    }
  }
  job::work_limits limits;
  limits.available_min = in.number("available_min");
  limits.travel_min = in.has("travel_min") ? in.number("travel_min") : 0.0;
  const auto r = job::order_of_work(tasks, groups, limits);
  array steps, left_out;
  for (const auto& s : r.steps) {
    const auto& t = tasks[s.task];
    steps.push_back(object{{"n", steps.size() + 1}, {"id", t.id}, {"title", t.title.empty() ? t.id : t.title}, {"begin_min", s.begin_min}, {"change_min", s.change_min},
                           {"minutes", s.minutes}, {"end_min", s.end_min}, {"risk", t.risk}, {"risk_per_min", s.risk_per_min}, {"must", s.must},
                           {"access", text_or_null(t.access)}, {"closes", texts_of(s.closes)}, {"opens", texts_of(s.opens)}, {"why", s.why}});
  }
  for (const auto& l : r.left_out) {
    const auto& t = tasks[l.task];
    left_out.push_back(object{{"id", t.id}, {"title", t.title.empty() ? t.id : t.title}, {"minutes", t.minutes}, {"risk", t.risk}, {"reason", reasons[static_cast<std::size_t>(l.is)]},
                              {"needs", text_or_null(l.needs)}, {"short_min", l.short_min}, {"why", l.why}});
  }
  return object{{"text", texts_of(r.text)}, {"steps", steps}, {"left_out", left_out}, {"exact", r.exact}, {"available_min", limits.available_min}, {"used_min", r.used_min},
                {"close_min", r.close_min}, {"over_min", r.over_min}, {"all_min", r.all_min}, {"later_min", r.later_min}, {"fits_probability", r.fits_probability},
                {"risk_before", r.risk_before}, {"risk_removed", r.risk_removed}, {"risk_minutes", r.risk_minutes},
                {"caution", "An order, not a permission: before each task that is done dead, isolate, lock off, and prove dead with a tester that is proved before and after. Danger "
                            "that cannot be ended in the time is isolated and labelled."}};
}
constexpr source smith{"Dynamic programming over sets of tasks; W. E. Smith, Naval Research Logistics Quarterly 3 (1956) 59, where nothing is shared", "held to full enumeration", "derived"};
constexpr model planned_work{{"order_of_work",
                               "What is done in the time and in which order, so that the most risk is removed, and as early as it can be; exact for up to 14 tasks, what must be done first, what is "
                               "left out and why.",
                               order_of_work_arguments, smith, run_order_of_work, nullptr}};
}  // namespace

void order_of_work(std::vector<entry>& all) { append(all, "job", list<planned_work>{}); }

}  // namespace makegood::subjects
