// SPDX-License-Identifier: MIT
#include <cmath>

#include <nlohmann/json.hpp>

#include <cli/outlook_view.hpp>

namespace seatload::cli {
namespace {

using Json = nlohmann::ordered_json;
using sizing::OutlookCase;
using sizing::OutlookQuantity;

/// Digits that do not hang on a machine's last bit: seven are told of what is simulated.
double seven_digits(double value) {
    if (value == 0.0 || !std::isfinite(value)) return value;
    const double scale = std::pow(10.0, 6.0 - std::floor(std::log10(std::abs(value))));
    return std::round(value * scale) / scale;
}

Json bounded(double value) { return std::isfinite(value) ? Json(seven_digits(value)) : Json(nullptr); }
Json bounded(const std::optional<double>& value) { return value ? bounded(*value) : Json(nullptr); }

Json range(const sizing::MadeRange& r) { return {{"least", bounded(r.least)}, {"most", bounded(r.most)}}; }

Json quantity(const OutlookQuantity& q) {
    return {{"id", q.id},
            {"unit", q.unit},
            {"at_least", bounded(q.least)},
            {"at_most", bounded(q.most)},
            {"nominal", bounded(q.nominal)},
            {"worst_case", range(q.worst)},
            {"middle_99_percent", range(q.middle)},
            {"mean", bounded(q.mean)},
            {"standard_deviation", bounded(q.deviation)},
            {"springs_that_break_it", q.broken}};
}

Json influences(const std::array<std::array<double, tolerance::kInfluences>, 2>& deviations) {
    const auto shares = tolerance::influence_shares(deviations);
    Json json = Json::array();
    for (std::size_t i = 0; i < tolerance::kInfluences; ++i)
        json.push_back({{"dimension", tolerance::kInfluenceNames[i]},
                        {"seated_load_deviation_n", seven_digits(deviations[0][i])},
                        {"full_travel_load_deviation_n", seven_digits(deviations[1][i])},
                        {"share_of_variance", seven_digits(shares[i])}});
    return json;
}

Json allowance(const tolerance::MadeAllowance& a) {
    return {{"wire_diameter_mm", seven_digits(a.wire_diameter)},
            {"shear_modulus_mpa", seven_digits(a.shear_modulus)},
            {"lot_mean_coil_diameter_mm", seven_digits(a.lot_coil_diameter)},
            {"coil_diameter_within_lot_mm", seven_digits(a.coil_diameter)},
            {"active_coils_within_lot", seven_digits(a.active_coils)},
            {"free_length_within_lot_mm", seven_digits(a.free_length)}};
}

Json one_case(const OutlookCase& c) {
    Json json{{"load_grade", c.grades.load},
              {"diameter_grade", c.grades.diameter},
              {"load_ordered_tighter", c.grades.is_load_tighter},
              {"springs", c.springs},
              {"meet_the_demand", c.good},
              {"share", c.share()},
              {"keeps_99_percent", c.keeps()}};
    const OutlookQuantity* first = c.first_to_break();
    json["breaks_first"] = first != nullptr ? Json(first->id) : Json(nullptr);
    json["largest_influence"] = tolerance::kInfluenceNames[static_cast<std::size_t>(c.largest_influence())];
    json["plus_minus"] = allowance(c.allowance);
    json["quantities"] = Json::array();
    for (const OutlookQuantity& each : c.quantities) json["quantities"].push_back(quantity(each));
    json["influences_as_made"] = influences(c.as_made);
    json["influences_adjusted"] = influences(c.adjusted);
    return json;
}

}  // namespace

Json outlook_json(const sizing::Outlook& o) {
    const auto coarsest = o.coarsest();
    Json json{{"coarsest_grade_that_keeps_99_percent", coarsest ? Json(*coarsest) : Json(nullptr)}};
    json["grades"] = Json::array();
    for (const OutlookCase& each : o.by_grade) json["grades"].push_back(one_case(each));
    json["as_ordered"] = o.stated ? one_case(*o.stated) : Json(nullptr);
    return json;
}

}  // namespace seatload::cli
