// SPDX-License-Identifier: MIT
#pragma once

namespace seatload::inspection {

/// Chance that a lot of `lot` pieces, `bad` of them bad, is accepted when `size` are taken at random and at most
/// `accept` of these may be bad (hypergeometric). 0 <= bad <= lot, 1 <= size <= lot.
double chance_of_acceptance(int lot, int bad, int size, int accept);

/// The same for a lot that is very large beside the sample, by its bad share from 0 to 1 (binomial).
double chance_of_acceptance(double bad_share, int size, int accept);

/// The bad share [0 to 1] at which such a large lot is accepted with a chance: 0.1 gives the limiting quality, 0.95
/// what a plan lets pass nearly always.
double bad_share_at(double chance, int size, int accept);

/// The fewest bad pieces of a lot that are found out: the lot is then accepted with at most that chance. The lot's
/// size + 1 when even a wholly bad lot is accepted more often.
int fewest_found_out(int lot, int size, int accept, double chance);

}  // namespace seatload::inspection
