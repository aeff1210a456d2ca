// SPDX-License-Identifier: MIT
#include "optimiser.hpp"

#include <nlopt.h>

#include <algorithm>
#include <memory>
#include <stdexcept>

namespace seatload::test {
namespace {

using Function = std::function<double(const UnitPoint&)>;

double asked(unsigned count, const double* x, double*, void* data) {
    UnitPoint at{};
    std::copy_n(x, std::min<std::size_t>(count, at.size()), at.begin());
    return (*static_cast<const Function*>(data))(at);
}

}  // namespace

std::array<Optimiser, 4> optimisers() {
    return {{{"controlled random search", NLOPT_GN_CRS2_LM},
             {"evolution strategy with ranking", NLOPT_GN_ISRES},
             {"evolution", NLOPT_GN_ESCH},
             {"dividing rectangles", NLOPT_GN_DIRECT_L_RAND}}};
}

void minimise(const Optimiser& optimiser, const Function& function, int questions, unsigned long seed) {
    nlopt_srand(seed);
    const std::unique_ptr<nlopt_opt_s, decltype(&nlopt_destroy)> run(
        nlopt_create(static_cast<nlopt_algorithm>(optimiser.algorithm), UnitPoint{}.size()), &nlopt_destroy);
    Function target = function;
    nlopt_set_lower_bounds1(run.get(), 0.0);
    nlopt_set_upper_bounds1(run.get(), 1.0);
    nlopt_set_min_objective(run.get(), asked, &target);
    nlopt_set_maxeval(run.get(), questions);
    UnitPoint x;
    x.fill(0.5);
    double least = 0.0;
    const nlopt_result result = nlopt_optimize(run.get(), x.data(), &least);
    // Rounding stops an optimiser that has come as far as it can.
    if (result < 0 && result != NLOPT_ROUNDOFF_LIMITED) throw std::runtime_error(nlopt_result_to_string(result));
}

}  // namespace seatload::test
