// SPDX-License-Identifier: MIT
#include "pool.hpp"
#include <algorithm>
#include <atomic>
#include <chrono>
#include <condition_variable>
#include <limits>
#include <memory>
#include <mutex>
#include <thread>
#include <vector>
#if defined(__unix__) || defined(__APPLE__)
#include <pthread.h>
#endif

namespace makegood::subjects {
namespace {

constexpr std::size_t none = std::numeric_limits<std::size_t>::max();
constexpr std::size_t first_block = 2048;  ///< done alone and timed; a multiple of every register's width
constexpr double worth_waking_s = 100e-6;  ///< below, one thread is as quick

/// One call's rows; whoever is free takes the next block.
struct job {
  rows_function run;
  const void* work;
  std::size_t end, block;
  std::atomic<std::size_t> next;
  std::atomic<std::size_t> refused{none};
  std::size_t helpers = 0;  ///< workers inside, guarded by the pool's mutex

  void help() {
    for (;;) {
      const std::size_t from = next.fetch_add(block);
      if (from >= end) return;
      if (const auto bad = run(work, from, std::min(from + block, end)); bad >= 0) {
        std::size_t least = refused.load();
        while (static_cast<std::size_t>(bad) < least && !refused.compare_exchange_weak(least, static_cast<std::size_t>(bad))) {
        }
      }
    }
  }
};

class pool {
 public:
  void run(job& j, unsigned threads) {
    const std::unique_lock one_at_a_time(calls_, std::try_to_lock);
    if (!one_at_a_time.owns_lock()) return j.help();  // somebody else has the workers: alone is quicker than waiting
    {
      const std::lock_guard lock(mutex_);
      while (workers_ + 1 < threads) {
        std::thread([this] { wait_for_work(); }).detach();  // it waits until the process ends
        ++workers_;
      }
      wanted_ = threads - 1;
      job_ = &j;
      ++number_;
    }
    wake_.notify_all();
    j.help();
    std::unique_lock lock(mutex_);
    job_ = nullptr;
    idle_.wait(lock, [&j] { return j.helpers == 0; });
  }

 private:
  std::mutex calls_, mutex_;
  std::condition_variable wake_, idle_;
  job* job_ = nullptr;
  std::size_t workers_ = 0, wanted_ = 0;
  std::size_t number_ = 0;  ///< of the job

  void wait_for_work() {
    std::unique_lock lock(mutex_);
    std::size_t seen = 0;
    for (;;) {
      wake_.wait(lock, [&] { return job_ && number_ != seen && job_->helpers < wanted_; });
      job* const j = job_;
      seen = number_;
      ++j->helpers;
      lock.unlock();
      j->help();
      lock.lock();
      if (--j->helpers == 0) idle_.notify_all();
    }
  }
};

/// Made when first needed and never taken apart: its threads may still wait when the process ends. A child process begins with none.
std::atomic<pool*> the_pool{nullptr};

pool& pool_in_use() {
#if defined(__unix__) || defined(__APPLE__)
  static const int registered = pthread_atfork(nullptr, nullptr, [] { the_pool.store(nullptr); });
  (void)registered;
#endif
  pool* p = the_pool.load();
  if (!p) {
    auto fresh = std::make_unique<pool>();
    if (the_pool.compare_exchange_strong(p, fresh.get())) p = fresh.release();
  }
  return *p;
}

}  // namespace

std::ptrdiff_t run_rows(rows_function run, const void* work, std::size_t n, unsigned threads) {
  if (threads <= 1 || n < 2 * first_block) return run(work, 0, n);
  const auto begin = std::chrono::steady_clock::now();
  if (const auto bad = run(work, 0, first_block); bad >= 0) return bad;
  const double took = std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
  const std::size_t left = n - first_block;
  if (took * static_cast<double>(left) / first_block < worth_waking_s) return run(work, first_block, n);
  const std::size_t share = left / (4 * static_cast<std::size_t>(threads));
  job j{run, work, n, std::max(first_block, share - share % first_block), first_block};
  pool_in_use().run(j, threads);
  const std::size_t refused = j.refused.load();
  return refused == none ? -1 : static_cast<std::ptrdiff_t>(refused);
}

}  // namespace makegood::subjects
