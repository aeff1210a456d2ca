// SPDX-License-Identifier: MIT
#include <seatload/tolerance/simulation.hpp>

#include <algorithm>
#include <atomic>
#include <cmath>
#include <thread>

#include <boost/random/mersenne_twister.hpp>
#include <boost/random/normal_distribution.hpp>
#include <seatload/core/assert.hpp>
#include <seatload/core/crew.hpp>
#include <seatload/spring/rate.hpp>
#include <seatload/tolerance/counter_random.hpp>
#include <seatload/tolerance/cut_normal.hpp>

namespace seatload::tolerance {
namespace {

constexpr long kBlock = 4096;  ///< springs drawn from one seed

/// Draws numbers of a drawing; the same block draws the same numbers each time it is asked.
class Draw {
  public:
    explicit Draw(std::uint64_t seed) : generator_(seed) {}

    /// Normal, a tolerance being three standard deviations and nothing lying beyond it.
    double operator()(double nominal, double plus_minus) {
        double z = normal_(generator_);
        while (std::abs(z) > kDeviations) z = normal_(generator_);
        return nominal + plus_minus * (z / kDeviations);
    }

  private:
    boost::random::mt19937_64 generator_;
    boost::random::normal_distribution<double> normal_;
};

/// How far a number strays among the springs looked at.
double reach(const Spread& s, Lot lot) { return lot == Lot::any ? s.plus_minus : s.plus_minus * s.within_lot; }

/// A spring as far as its loads go.
struct Made {
    double rate_n_mm;
    double free_length_mm;
};

Made make(const LotModel& m, Lot lot, Draw& draw) {
    const auto drawn = [&](const Spread& s) { return draw(s.nominal, reach(s, lot)); };
    const double d = drawn(m.wire_diameter);
    const double ruling = drawn(m.coil_diameter);
    const double n = drawn(m.active_coils);
    const double L0 = drawn(m.free_length);
    const double G = drawn(m.shear_modulus);
    return {spring::rate(G, d, m.outside_rules ? ruling - d : ruling + d, n), L0};
}

/// Sum and sum of squares about a number near the mean, so that nothing is lost to cancellation.
struct Moments {
    double about = 0.0;
    double sum = 0.0;
    double squares = 0.0;

    void add(double value) {
        const double x = value - about;
        sum += x;
        squares += x * x;
    }
    void add(const Moments& other) { sum += other.sum, squares += other.squares; }
    double mean(double count) const { return about + sum / count; }
    double deviation(double count) const {
        return std::sqrt(std::max(0.0, (squares - sum * sum / count) / (count - 1.0)));
    }
};

/// What is counted of the springs of one block.
struct Tally {
    std::array<Moments, 2> load;
    Moments rate;
    std::array<std::vector<long>, 2> histogram;
    std::vector<long> inside;
};

/// What an adjusting does to each spring of a lot: coils alter the rate, the free length moves.
struct Adjusting {
    double rate_factor = 1.0;
    double shift_mm = 0.0;
};

class Simulation {
  public:
    Simulation(const LotModel& model, const SimulationOptions& options)
        : model_(model),
          options_(options),
          blocks_((options.springs + kBlock - 1) / kBlock),
          rate_about_(spring::rate(model.shear_modulus.nominal, model.wire_diameter.nominal,
                                   model.outside_rules ? model.coil_diameter.nominal - model.wire_diameter.nominal
                                                       : model.coil_diameter.nominal + model.wire_diameter.nominal,
                                   model.active_coils.nominal)) {}

    Simulated run() {
        Adjusting adjusting;
        if (options_.lot == Lot::adjusted) adjusting = adjusted(tallied(adjusting, false));
        return summed(tallied(adjusting, true), adjusting);
    }

  private:
    double nominal_load(std::size_t i) const { return rate_about_ * (model_.free_length.nominal - model_.lengths[i]); }

    Tally empty() const {
        Tally t;
        for (std::size_t i = 0; i < 2; ++i) {
            t.load[i].about = nominal_load(i);
            t.histogram[i].assign(static_cast<std::size_t>(options_.bins), 0);
        }
        t.rate.about = rate_about_;
        t.inside.assign(options_.windows.size(), 0);
        return t;
    }

    void count(Tally& t, const std::array<double, 2>& load) const {
        for (std::size_t i = 0; i < 2; ++i) {
            const double width = options_.histogram_to[i] - options_.histogram_from[i];
            const double bin = (load[i] - options_.histogram_from[i]) / width * options_.bins;
            if (bin >= 0.0 && bin < options_.bins) ++t.histogram[i][static_cast<std::size_t>(bin)];
        }
        for (std::size_t w = 0; w < options_.windows.size(); ++w) {
            const LoadWindow& window = options_.windows[w];
            if (load[0] >= window.least[0] && load[0] <= window.most[0] && load[1] >= window.least[1] &&
                load[1] <= window.most[1])
                ++t.inside[w];
        }
    }

    Tally block(long index, const Adjusting& adjusting, bool in_full) const {
        Tally t = empty();
        Draw draw(counter_random(options_.seed, static_cast<std::uint64_t>(index)));
        const long springs = std::min(kBlock, options_.springs - index * kBlock);
        for (long s = 0; s < springs; ++s) {
            const Made made = make(model_, options_.lot, draw);
            const double R = adjusting.rate_factor * made.rate_n_mm;
            const double L0 = made.free_length_mm + adjusting.shift_mm;
            const std::array<double, 2> load{R * (L0 - model_.lengths[0]), R * (L0 - model_.lengths[1])};
            t.rate.add(R);
            for (std::size_t i = 0; i < 2; ++i) t.load[i].add(load[i]);
            if (in_full) count(t, load);
        }
        return t;
    }

    /// All blocks, worked on by as many threads as wanted and added up in their order.
    Tally tallied(const Adjusting& adjusting, bool in_full) const {
        std::vector<Tally> blocks(static_cast<std::size_t>(blocks_));
        std::atomic<long> next = 0;
        const unsigned wanted =
            options_.threads != 0 ? options_.threads : std::max(1u, std::thread::hardware_concurrency());
        run_crew(static_cast<unsigned>(std::min<long>(wanted, blocks_)), [&](unsigned) {
            for (long i = next++; i < blocks_; i = next++)
                blocks[static_cast<std::size_t>(i)] = block(i, adjusting, in_full);
        });
        Tally all = empty();
        for (const Tally& one : blocks) {
            all.rate.add(one.rate);
            for (std::size_t i = 0; i < 2; ++i) {
                all.load[i].add(one.load[i]);
                for (std::size_t b = 0; b < all.histogram[i].size(); ++b) all.histogram[i][b] += one.histogram[i][b];
            }
            for (std::size_t w = 0; w < all.inside.size(); ++w) all.inside[w] += one.inside[w];
        }
        return all;
    }

    double springs() const { return static_cast<double>(options_.springs); }

    /// What brings both means of a lot to where they are wanted. With F_i = a R (L0 + b - L_i), the difference of the
    /// means gives the rate's factor a, and then either of them the shift b.
    Adjusting adjusted(const Tally& found) const {
        const double F1 = found.load[0].mean(springs());
        const double F2 = found.load[1].mean(springs());
        SEATLOAD_ASSERT(F1 != F2);
        const double a = (options_.adjusted_to[1] - options_.adjusted_to[0]) / (F2 - F1);
        return {a, (options_.adjusted_to[0] / a - F1) / found.rate.mean(springs())};
    }

    Simulated summed(Tally all, const Adjusting& adjusting) const {
        Simulated out;
        out.springs = options_.springs;
        for (std::size_t i = 0; i < 2; ++i) {
            out.mean[i] = all.load[i].mean(springs());
            out.standard_deviation[i] = all.load[i].deviation(springs());
        }
        out.rate_mean = all.rate.mean(springs());
        out.rate_standard_deviation = all.rate.deviation(springs());
        out.histogram = std::move(all.histogram);
        out.inside = std::move(all.inside);
        out.rate_factor = adjusting.rate_factor;
        out.free_length_shift = adjusting.shift_mm;
        return out;
    }

    const LotModel& model_;
    const SimulationOptions& options_;
    long blocks_;
    double rate_about_;
};

}  // namespace

Simulated simulate(const LotModel& model, const SimulationOptions& options) {
    SEATLOAD_ASSERT(options.springs >= 2 && options.bins >= 1);
    return Simulation(model, options).run();
}

double first_order_deviation_n(const LotModel& m, Lot lot, double length_mm) {
    const double d = m.wire_diameter.nominal;
    const double D = m.outside_rules ? m.coil_diameter.nominal - d : m.coil_diameter.nominal + d;
    const double R = spring::rate(m.shear_modulus.nominal, d, D, m.active_coils.nominal);
    const double F = R * (m.free_length.nominal - length_mm);
    // A thicker wire takes from the mean diameter when De is kept, and adds to it when Di is.
    const double by_wire = F * (4.0 / d + (m.outside_rules ? 3.0 : -3.0) / D);
    const auto part = [&](double slope, const Spread& s) {
        const double x = slope * reach(s, lot) / kDeviations;
        return x * x;
    };
    return std::sqrt(part(by_wire, m.wire_diameter) + part(3.0 * F / D, m.coil_diameter) +
                     part(F / m.active_coils.nominal, m.active_coils) + part(R, m.free_length) +
                     part(F / m.shear_modulus.nominal, m.shear_modulus));
}

}  // namespace seatload::tolerance
