// SPDX-License-Identifier: MIT
// What the result of a model says: its outcome, where it has one or where its words (src/words/checks.json, "says") tell how it is read.
#include <makegood/job/session.hpp>
#include <algorithm>
#include "whole_visit.hpp"

namespace makegood {
inline namespace v1 {
namespace job {
namespace {
using document::array;
using document::object;

constexpr double settled = 0.95;  // an explanation that is as likely as this is taken as what is so

std::string word_in(const object& o, std::string_view name) {
  const auto* f = o.find(name);
  return f && f->as<std::string>() ? *f->as<std::string>() : std::string();
}
double number_in(const object& o, std::string_view name) {
  const auto* f = o.find(name);
  return f && f->as<double>() ? *f->as<double>() : 0.0;
}
bool flag_in(const object& o, std::string_view name) {
  const auto* f = o.find(name);
  return f && f->as<bool>() && *f->as<bool>();
}
const array* list_in(const object& o, std::string_view name) {
  const auto* f = o.find(name);
  return f ? f->as<array>() : nullptr;
}
std::string joined(const array* list) {
  std::string all;
  if (list)
    for (const auto& one : *list)
      if (one.as<std::string>()) all += (all.empty() ? "" : ", ") + *one.as<std::string>();
  return all;
}
std::string sentence(std::string s) {
  if (!s.empty() && s.back() != '.' && s.back() != '?' && s.back() != '!') s += '.';
  if (!s.empty() && s[0] >= 'a' && s[0] <= 'z') s[0] = static_cast<char>(s[0] - 'a' + 'A');
  return s;
}
outcome outcome_of(std::string_view w) { return w == "pass" ? outcome::pass : w == "fail" ? outcome::fail : outcome::undecided; }

/// A place in a result: names and numbers with dots between them ("explanations.0.fault").
const document::value* at_path(const object& result, std::string_view path) {
  const object* o = &result;
  const document::value* v = nullptr;
  while (!path.empty()) {
    const std::string_view name = path.substr(0, path.find('.'));
    path.remove_prefix(std::min(path.size(), name.size() + 1));
    const array* list = v ? v->as<array>() : nullptr;
    if (list) {
      const auto i = static_cast<std::size_t>(name[0] - '0');
      if (name.size() != 1 || i >= list->size()) return nullptr;
      v = &(*list)[i];
    } else {
      v = o ? o->find(name) : nullptr;
    }
    if (!v) return nullptr;
    o = v->as<object>();
  }
  return v;
}
std::string word_at(const object& result, std::string_view path) {
  const auto* v = path.empty() ? nullptr : at_path(result, path);
  return v && v->as<std::string>() ? *v->as<std::string>() : std::string();
}

/// A result with an outcome of its own: its sentences, or what it found that made it so; numbers and source of the first of these.
answer of_outcome(const object& o, const std::vector<std::string>& sentences) {
  answer a;
  a.is = outcome_of(word_in(o, "outcome"));
  a.why = word_in(o, "reason");
  const std::string all = sentences.empty() ? std::string() : sentences.front();
  a.plain = all;
  if (const auto* list = list_in(o, "findings"))
    for (const auto& one : *list) {
      const auto* x = one.as<object>();
      if (!x || outcome_of(word_in(*x, "outcome")) != a.is) continue;
      const std::string item = word_in(*x, "item");
      if (a.shown.fields.empty())
        for (const char* name : {"value", "limit", "unit", "source"})
          if (const auto* f = x->find(name)) a.shown.set(name, *f);
      if (a.is == outcome::pass && !a.plain.empty()) continue;
      if (!a.plain.empty() && a.plain.back() != '.') a.plain += '.';
      a.plain += (a.plain.empty() ? "" : " ") + sentence((item.empty() ? "" : item + ": ") + word_in(*x, "text"));
    }
  if (a.is == outcome::undecided && a.plain == all && sentences.size() > 1) a.plain += " " + sentences[1];
  if (a.plain.empty()) a.plain = outcome_text(a.is);
  return a;
}
/// A record that proves something: complete, or something lacks, or it shows the contrary.
answer of_proof(const object& says, const object& o) {
  answer a;
  const bool against = flag_in(o, text_in(&says, "against"));
  a.is = against ? outcome::fail : flag_in(o, text_in(&says, "proved")) ? outcome::pass : outcome::undecided;
  a.why = reason_text(reason::precondition_missing);
  a.plain = std::string(text_in(&says, outcome_text(a.is)));
  if (a.is == outcome::undecided) a.plain += " " + joined(list_in(o, text_in(&says, "lacking")));
  return a;
}
/// Things that do not fit together, counted: none is good, if nothing lacks.
answer of_counts(const object& says, const object& o, const std::vector<std::string>& sentences) {
  answer a;
  double n = 0.0;
  for (const auto& name : texts_in(&says, "counts")) n += number_in(o, name);
  const auto* lacking = list_in(o, text_in(&says, "lacking"));
  a.is = n > 0.0 ? outcome::fail : lacking && !lacking->empty() ? outcome::undecided : outcome::pass;
  a.why = reason_text(reason::not_measured);
  a.plain = sentences.empty() ? std::string(outcome_text(a.is)) : sentences.front();
  return a;
}
/// Explanations with their probabilities: which leads, how far, and whether that one means that nothing is wrong.
answer of_ranking(const object& says, const object& words, const object& o, const std::vector<std::string>& sentences) {
  answer a;
  const std::string leads = word_at(o, text_in(&says, "leads"));
  std::string share(text_in(&says, "share"));
  if (const auto hole = share.find("{leads}"); hole != std::string::npos) share.replace(hole, 7, leads);
  const auto* p = leads.empty() ? nullptr : at_path(o, share);
  const double probability = p && p->as<double>() ? *p->as<double>() : 0.0;
  const auto sound = texts_in(&says, "sound");
  const bool is_sound = std::find(sound.begin(), sound.end(), leads) != sound.end();
  a.is = !(probability >= settled) ? outcome::undecided : is_sound ? outcome::pass : outcome::fail;
  a.why = reason_text(leads.empty() ? reason::precondition_missing : reason::straddles_limit);
  std::string title = word_at(o, text_in(&says, "title"));
  if (leads.empty() || title.empty()) {
    a.plain = sentences.empty() ? std::string(outcome_text(a.is)) : sentences.front();
  } else {
    a.plain = std::string(a.is == outcome::undecided ? "It cannot be told yet." : text_in(&words, outcome_text(a.is)));
    a.plain += " Most likely: " + title + " (" + detail::percent_text(probability) + ").";
  }
  a.next = word_at(o, text_in(&says, "next"));
  if (!leads.empty()) a.shown = object{{"probability", probability}};
  return a;
}
}  // namespace

std::optional<answer> answer_of(const object* words, const object& result, const std::vector<std::string>& sentences) {
  const auto* f = words ? words->find("says") : nullptr;
  const auto* says = f ? f->as<object>() : nullptr;
  const std::string_view as = text_in(says, "as");
  answer a;
  if (as == "proof") a = of_proof(*says, result);
  else if (as == "counts") a = of_counts(*says, result, sentences);
  else if (as == "ranking") a = of_ranking(*says, *words, result, sentences);
  else if (!word_in(result, "outcome").empty()) a = of_outcome(result, sentences);
  else return {};
  a.plain = sentence(std::move(a.plain));
  return a;
}

}  // namespace job
}  // namespace v1
}  // namespace makegood
