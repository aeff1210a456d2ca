// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/inspection/samples.hpp>

namespace seatload::inspection {

/// What pieces lost of a load or of their free length by a treatment, as shares of what they had before.
struct SetLoss {
    Kind kind = Kind::seated_load;
    int count = 0;       ///< pieces measured before and after
    double mean = 0.0;   ///< share lost; below zero: gained
    double doubt = 0.0;  ///< half width of the mean's 95 % confidence interval; 0 for one piece
    double largest = 0.0;
    std::string piece;  ///< which lost most
};

/// The losses of every kind that was measured again.
std::vector<SetLoss> set_losses(const Samples& samples);

}  // namespace seatload::inspection
