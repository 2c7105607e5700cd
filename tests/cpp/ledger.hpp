// SPDX-License-Identifier: MIT
// The rows of tests/published as C++ sees them.
#pragma once
#include <fstream>
#include <iterator>
#include <makegood/job/json.hpp>
#include <map>
#include <string>
#include <vector>

namespace ledger {

using row = std::map<std::string, std::string>;

/// RFC 4180: quoted fields, doubled quotes, line ends inside quotes.
inline std::vector<row> read(const std::string& path) {
  std::ifstream file(path, std::ios::binary);
  const std::string text((std::istreambuf_iterator<char>(file)), std::istreambuf_iterator<char>());
  std::vector<std::vector<std::string>> lines(1, std::vector<std::string>(1));
  bool quoted = false;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char c = text[i];
    auto& field = lines.back().back();
    if (quoted) {
      if (c == '"' && i + 1 < text.size() && text[i + 1] == '"') field += text[++i];
      else if (c == '"') quoted = false;
      else field += c;
    } else if (c == '"') quoted = true;
    else if (c == ',') lines.back().emplace_back();
    else if (c == '\n') lines.emplace_back(1);
    else if (c != '\r') field += c;
  }
  std::vector<row> rows;
  for (std::size_t k = 1; k < lines.size(); ++k) {
    if (lines[k].size() < lines[0].size()) continue;
    row r;
    for (std::size_t j = 0; j < lines[0].size(); ++j) r[lines[0][j]] = lines[k][j];
    rows.push_back(r);
  }
  return rows;
}
inline std::vector<row> all() {
  std::vector<row> rows;
  for (const char* name : {"electrical", "sensing", "heating", "air", "setting_out", "lighting", "price", "decision", "decision_rules"})
    for (auto& r : read(std::string(MAKEGOOD_PUBLISHED_DIR) + "/" + name + ".csv")) rows.push_back(r);
  return rows;
}
inline double tolerance(const row& r, double expected) {
  const auto number = [](const std::string& t) { return t.empty() ? 0.0 : std::stod(t); };
  return std::max(number(r.at("tol_abs")), number(r.at("tol_rel")) * std::fabs(expected));
}

}  // namespace ledger
