// SPDX-License-Identifier: MIT
#include <seatload/inspection/protection.hpp>

#include <algorithm>

#include <boost/math/distributions/binomial.hpp>
#include <boost/math/distributions/hypergeometric.hpp>
#include <seatload/core/assert.hpp>

namespace seatload::inspection {

double chance_of_acceptance(int lot, int bad, int size, int accept) {
    SEATLOAD_ASSERT(bad >= 0 && bad <= lot && size >= 1 && size <= lot && accept >= 0);
    const int fewest_drawn = std::max(0, size + bad - lot);
    const int most_drawn = std::min(size, bad);
    if (accept < fewest_drawn) return 0.0;
    if (accept >= most_drawn) return 1.0;
    const boost::math::hypergeometric drawn(static_cast<unsigned>(bad), static_cast<unsigned>(size),
                                            static_cast<unsigned>(lot));
    return boost::math::cdf(drawn, accept);
}

double chance_of_acceptance(double bad_share, int size, int accept) {
    return boost::math::cdf(boost::math::binomial(size, bad_share), accept);
}

double bad_share_at(double chance, int size, int accept) {
    // The share at which so few are found with just that chance (Clopper and Pearson's upper bound).
    return boost::math::binomial::find_upper_bound_on_p(size, accept, chance);
}

int fewest_found_out(int lot, int size, int accept, double chance) {
    // The more are bad, the seldomer the lot passes: halve the span between too few and enough.
    int too_few = accept, enough = lot + 1;
    while (enough - too_few > 1) {
        const int bad = too_few + (enough - too_few) / 2;
        (chance_of_acceptance(lot, bad, size, accept) > chance ? too_few : enough) = bad;
    }
    return enough;
}

}  // namespace seatload::inspection
