// SPDX-License-Identifier: MIT
// The words that come with the library (src/words/*.json, written into this file when it is built).
#include <makegood/job/words.hpp>
#include "tokens.hpp"

namespace makegood {
inline namespace v1 {
namespace job {
namespace {
constexpr subjects::token_text texts[] = {
#include "words.inc"
};
const document::object* part(std::string_view group, std::string_view name) {
  const auto* all = words().find(group);
  const auto* list = all ? all->as<document::object>() : nullptr;
  const auto* one = list ? list->find(name) : nullptr;
  return one ? one->as<document::object>() : nullptr;
}
}  // namespace

const document::object& words() {
  static const document::object all = [] {
    document::object o;
    for (const auto& t : texts)
      if (!o.find(t.id)) o.set(std::string(t.id), subjects::read_tokens(texts, t.id));
    return o;
  }();
  return all;
}
const document::object* words_of_check(std::string_view call) { return part("checks", call); }
const document::object* words_of_observation(std::string_view kind) { return part("observations", kind); }

}  // namespace job
}  // namespace v1
}  // namespace makegood
