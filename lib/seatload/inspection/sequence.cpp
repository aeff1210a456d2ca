// SPDX-License-Identifier: MIT
#include <seatload/inspection/sequence.hpp>

#include <algorithm>
#include <cmath>
#include <map>

#include <boost/math/distributions/normal.hpp>
#include <boost/math/special_functions/gamma.hpp>

namespace seatload::inspection {
namespace {

constexpr int kMostExact = 60;

/// Ways to choose, as a share of exp(`log_all`): of many values they are more than a double holds.
double choose_share(int n, int k, int m, int l, double log_all) {
    if (k < 0 || k > n || l < 0 || l > m) return 0.0;
    const auto log_choose = [](double of, double some) {
        return boost::math::lgamma(of + 1.0) - boost::math::lgamma(some + 1.0) - boost::math::lgamma(of - some + 1.0);
    };
    return std::exp(log_choose(n, k) + log_choose(m, l) - log_all);
}

/// Chance of just so many runs.
double chance_of_runs(int above, int below, int runs) {
    const int k = runs / 2;
    const double log_all =
        boost::math::lgamma(above + below + 1.0) - boost::math::lgamma(above + 1.0) - boost::math::lgamma(below + 1.0);
    if (runs % 2 == 0) return 2.0 * choose_share(above - 1, k - 1, below - 1, k - 1, log_all);
    return choose_share(above - 1, k, below - 1, k - 1, log_all) +
           choose_share(above - 1, k - 1, below - 1, k, log_all);
}

/// Chances of 0, 1, 2 ... pairs in the wrong order among n values.
std::vector<double> inversions(int n) {
    std::vector<double> chances{1.0};
    for (int i = 2; i <= n; ++i) {
        std::vector<double> next(chances.size() + static_cast<std::size_t>(i) - 1, 0.0);
        for (std::size_t have = 0; have < chances.size(); ++have)
            for (std::size_t more = 0; more < static_cast<std::size_t>(i); ++more)
                next[have + more] += chances[have] / i;
        chances = std::move(next);
    }
    return chances;
}

double two_tails(double s, double variance) {
    // Half a step of S, which goes in twos, for continuity.
    const double z = std::max(0.0, std::abs(s) - 1.0) / std::sqrt(variance);
    return std::min(1.0, 2.0 * boost::math::cdf(boost::math::complement(boost::math::normal(), z)));
}

double variance_of_s(double n) { return n * (n - 1.0) * (2.0 * n + 5.0) / 18.0; }

/// Ties take from the variance of S (Kendall, Rank Correlation Methods, ch. 4).
double trend_with_ties(const std::vector<double>& values, long s, bool& tied) {
    std::map<double, int> counts;
    for (const double v : values) ++counts[v];
    double variance = variance_of_s(static_cast<double>(values.size()));
    for (const auto& [value, count] : counts) variance -= variance_of_s(count);
    tied = counts.size() < values.size();
    return variance > 0.0 ? two_tails(static_cast<double>(s), variance) : 1.0;
}

long rising_less_falling(const std::vector<double>& values) {
    long s = 0;
    for (std::size_t i = 0; i < values.size(); ++i)
        for (std::size_t j = i + 1; j < values.size(); ++j)
            s += values[j] > values[i] ? 1 : values[j] < values[i] ? -1 : 0;
    return s;
}

double median(std::vector<double> values) {
    std::sort(values.begin(), values.end());
    const std::size_t half = values.size() / 2;
    return values.size() % 2 == 1 ? values[half] : 0.5 * (values[half - 1] + values[half]);
}

void count_runs(const std::vector<double>& values, Sequence& sequence) {
    const double middle = median(values);
    int above = 0, below = 0;
    bool was_above = false;
    for (const double v : values) {
        if (v == middle) continue;
        const bool is_above = v > middle;
        if (above + below == 0 || is_above != was_above) ++sequence.runs;
        was_above = is_above;
        ++(is_above ? above : below);
    }
    if (above > 0 && below > 0) sequence.few = chance_of_so_few_runs(above, below, sequence.runs);
}

}  // namespace

double chance_of_so_few_runs(int above, int below, int runs) {
    double sum = 0.0;
    for (int r = 2; r <= runs; ++r) sum += chance_of_runs(above, below, r);
    return std::min(1.0, sum);
}

double chance_of_trend(int n, long s) {
    if (n > kMostExact) return two_tails(static_cast<double>(s), variance_of_s(n));
    const std::vector<double> chances = inversions(n);
    const long pairs = static_cast<long>(n) * (n - 1) / 2;
    const long most_wrong = (pairs - std::abs(s)) / 2;
    double tail = 0.0;
    for (long wrong = 0; wrong <= most_wrong; ++wrong) tail += chances[static_cast<std::size_t>(wrong)];
    return std::min(1.0, 2.0 * tail);
}

std::optional<Sequence> sequence_of(const std::vector<double>& values) {
    if (static_cast<int>(values.size()) < kFewestInOrder) return std::nullopt;
    Sequence sequence;
    count_runs(values, sequence);
    sequence.s = rising_less_falling(values);
    bool tied = false;
    sequence.trend = trend_with_ties(values, sequence.s, tied);
    if (!tied) sequence.trend = chance_of_trend(static_cast<int>(values.size()), sequence.s);
    return sequence;
}

}  // namespace seatload::inspection
