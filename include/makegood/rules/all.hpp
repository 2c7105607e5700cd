// SPDX-License-Identifier: MIT
// Every rulebook that the library ships, and finding them by id ("bs7671:2018+a2,england-adf-2021").
#pragma once
#include "common_practice.hpp"
#include "england_adf_2021.hpp"
#include "england_adp_2013.hpp"
#include "heating_standards.hpp"
#include "iec60364.hpp"
#include "joists.hpp"
#include "notification_books.hpp"
#include "bs7671_2001.hpp"
#include "bs7671_2008.hpp"
#include "bs7671_2018_a2.hpp"
#include "rooms_abroad.hpp"
#include "ventilation_books.hpp"

namespace makegood {
inline namespace v1 {
namespace rules {

inline constexpr const rule_table* all[] = {&bs7671_2018_a2, &bs7671_2008_a3, &bs7671_2008, &bs7671_2001, &iec60364, &england_adf_2021, &heating_standards, &common_practice,
                                            &england_adf_1995, &scotland_3_14, &northern_ireland_k, &ireland_tgd_f, &finland_1009, &australia_ncc_2019, &australia_ncc_2022, &us_irc,
                                            &ashrae_62_2, &france_1982, &france_work, &france_overseas, &poland_b_03430, &netherlands_2012, &new_zealand_2019, &iso13788, &nhbc_8_4,
                                            &ventilation_guide_2010,
                                            &england_adp_2013, &wales_adp_2006, &scotland_warrant_house, &scotland_warrant_flat, &northern_ireland_electrical,
                                            &nfc15100_2015, &dinvde0100_701_2008, &din18015_3, &gb_joists, &ie_joists, &nhbc_joists, &us_joists};

/// Composes a rulebook from ids separated by commas. An unknown id names the known ones.
inline rulebook find(std::string_view ids) {
  rulebook book;
  std::size_t at = 0;
  while (at <= ids.size()) {
    std::size_t end = ids.find(',', at);
    if (end == std::string_view::npos) end = ids.size();
    std::string_view id = ids.substr(at, end - at);
    while (!id.empty() && id.front() == ' ') id.remove_prefix(1);
    while (!id.empty() && id.back() == ' ') id.remove_suffix(1);
    const rule_table* found = nullptr;
    for (const auto* t : all)
      if (t->id == id) found = t;
    if (!found) {
      std::string text = "no rulebook \"" + std::string(id) + "\"; known: ";
      for (const auto* t : all) text += (t == all[0] ? "" : ", ") + std::string(t->id);
      throw rule_error(text);
    }
    book = book + rulebook(*found);
    at = end + 1;
  }
  return book;
}

}  // namespace rules
}  // namespace v1
}  // namespace makegood
