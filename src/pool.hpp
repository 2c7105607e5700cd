// SPDX-License-Identifier: MIT
// Rows spread over a few threads that wait for work. One thread unless the caller asks for more; the results are the same bits.
#pragma once
#include <cstddef>

namespace makegood::subjects {

/// A part of the rows, begin to end; returns the first row refused, or -1.
using rows_function = std::ptrdiff_t (*)(const void* work, std::size_t begin, std::size_t end);

/// All rows from 0 to n, on at most `threads` threads, and only where the work pays for waking them. Returns the first row refused, or -1.
/// May be called from several threads and after a fork.
std::ptrdiff_t run_rows(rows_function run, const void* work, std::size_t n, unsigned threads);

}  // namespace makegood::subjects
