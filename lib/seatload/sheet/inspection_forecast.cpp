// SPDX-License-Identifier: MIT
#include <seatload/sheet/inspection_forecast.hpp>

#include <seatload/sheet/report_simulation.hpp>
#include <seatload/sheet/report_subject.hpp>

namespace seatload::sheet {

Result<inspection::Forecast> forecast(const record::Spec& spec, const wire::Grade& grade,
                                      const tolerance::Tables& tables) {
    const auto subject = report_subject(spec, grade, tables);
    if (!subject) return subject.error();
    const ReportSimulation found = simulated(*subject);
    inspection::Forecast out;
    for (std::size_t i = 0; i < out.loads.size(); ++i)
        out.loads[i] = {found.adjusted.mean[i], found.adjusted.standard_deviation[i], found.any.standard_deviation[i]};
    out.share_good = static_cast<double>(found.adjusted.inside[0]) / static_cast<double>(found.adjusted.springs);
    out.load_loss = subject->values.load_loss;
    out.loss_is_stated = spec.limits.load_loss.has_value();
    return out;
}

}  // namespace seatload::sheet
