// SPDX-License-Identifier: MIT
#include <algorithm>
#include <ctime>
#include <iomanip>
#include <iostream>
#include <optional>

#include <seatload/check/rule.hpp>
#include <seatload/sizing/search.hpp>
#include <support/builtin.hpp>
#include <support/check.hpp>
#include <support/random_requirement.hpp>

#include "optimiser.hpp"

// A search claims that nothing on its grid is better than what it tells. Optimisers that know nothing of springs look
// for one, by the same measure: 30 requirements, four optimisers, each with 20 000 questions.

using namespace seatload;
using sizing::Merit;

namespace {

constexpr unsigned kRequirements = 30;
constexpr int kQuestions = 20000;

long index_of(double share, long count) {
    return std::clamp(static_cast<long>(share * static_cast<double>(count)), 0L, count - 1);
}

/// The combination of a space that a point of the unit cube stands for.
class Questions {
  public:
    explicit Questions(const sizing::Space& space) : space_(space) {}

    /// Small for a good spring; a spring that breaks limits is worse than any that fits, the more so the further it
    /// breaks them.
    double ask(const test::UnitPoint& at) {
        const auto& wire = space_.wires[static_cast<std::size_t>(index_of(at[0], std::ssize(space_.wires)))];
        const spring::Ends ends = space_.ends[static_cast<std::size_t>(index_of(at[1], std::ssize(space_.ends)))];
        const check::Coil coil(space_.demand, wire.numbers, test::tolerances(),
                               wire.mean_diameters.at(index_of(at[2], wire.mean_diameters.count)), ends,
                               space_.total_coils.at(index_of(at[3], space_.total_coils.count)));
        if (coil.active_coils <= 0.0) return kUnwindable;
        const double L0 = space_.free_lengths.at(index_of(at[4], space_.free_lengths.count));
        const double broken = breach(coil, L0);
        if (broken > 0.0) return kUnfit + broken;
        const Merit found = sizing::merit(coil, L0);
        if (!best_ || sizing::better(found, *best_)) best_ = found;
        const double leaning = kLeaning * sizing::standing(found)[0];
        return leaning - sizing::room_in_tenths(found.tolerance_room) - found.stress_margin;
    }

    const std::optional<Merit>& best() const { return best_; }

  private:
    static constexpr double kUnwindable = 1e9, kUnfit = 1e6, kLeaning = 1e5, kMostCounted = 10.0;

    /// How far limits are broken, each as a share of itself.
    double breach(const check::Coil& coil, double L0) const {
        double sum = 0.0;
        for (const check::Rule& rule : check::rules()) {
            if (!rule.applies(space_.demand, coil.ends)) continue;
            const check::Measure m = rule.measure(coil, L0);
            if (!check::passes(rule.sense, m)) sum += std::clamp(-check::margin(rule.sense, m), 1e-6, kMostCounted);
        }
        return sum;
    }

    const sizing::Space& space_;
    std::optional<Merit> best_;
};

std::optional<Merit> best_of(const sizing::Census& census) {
    std::optional<Merit> best;
    for (const auto& candidate : census.best)
        if (candidate && (!best || sizing::better(candidate->merit, *best))) best = candidate->merit;
    return best;
}

/// Time of the processor, of all threads together.
template <class Work>
double milliseconds(const Work& work) {
    const std::clock_t start = std::clock();
    work();
    return 1e3 * static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
}

struct Tally {
    double ms = 0.0;
    unsigned found_some = 0, found_as_good = 0;
};

}  // namespace

TEST_CASE("no optimiser finds a spring on the grid that is better than the best of the search") {
    const auto optimisers = test::optimisers();
    std::vector<Tally> tallies(optimisers.size());
    double search_ms = 0.0;
    unsigned with_springs = 0;
    for (unsigned seed = 1000; seed < 1000 + kRequirements; ++seed) {
        CAPTURE(seed);
        const sizing::Space space = sizing::search_space(test::random_requirement(seed), test::wires());
        std::optional<Merit> ours;
        search_ms += milliseconds([&] { ours = best_of(sizing::search(space, test::tolerances())); });
        if (ours) ++with_springs;
        for (std::size_t i = 0; i < optimisers.size(); ++i) {
            CAPTURE(optimisers[i].name);
            Questions questions(space);
            tallies[i].ms += milliseconds([&] {
                test::minimise(
                    optimisers[i], [&](const test::UnitPoint& at) { return questions.ask(at); }, kQuestions, seed);
            });
            const auto& theirs = questions.best();
            if (!theirs) continue;
            ++tallies[i].found_some;
            REQUIRE(ours.has_value());
            CHECK_FALSE(sizing::better(*theirs, *ours));
            if (sizing::standing(*theirs) == sizing::standing(*ours)) ++tallies[i].found_as_good;
        }
    }
    CHECK(with_springs >= kRequirements / 2);
    unsigned most_as_good = 0;
    std::cout << std::fixed << std::setprecision(1) << "exact search: " << search_ms << " ms of processor time for "
              << kRequirements << " requirements, " << with_springs << " of them with springs\n";
    for (std::size_t i = 0; i < optimisers.size(); ++i) {
        const Tally& t = tallies[i];
        most_as_good = std::max(most_as_good, t.found_as_good);
        std::cout << optimisers[i].name << ": " << t.ms << " ms, springs found for " << t.found_some
                  << ", as good as the search for " << t.found_as_good << "\n";
    }
    // They do look in earnest: the best of them comes up with an equal for some.
    CHECK(most_as_good >= with_springs / 4);
}
