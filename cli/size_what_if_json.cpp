// SPDX-License-Identifier: MIT
#include <nlohmann/json.hpp>
#include <seatload/io/wire_words.hpp>

#include <cli/size_what_if.hpp>

namespace seatload::cli {
namespace {

using Json = nlohmann::ordered_json;

Json json_of(const sizing::BestSpring& best) {
    const spring::Spring& s = best.spring;
    return {{"tolerance_room", best.merit.tolerance_room},
            {"stress_margin", best.merit.stress_margin},
            {"wire", best.grade},
            {"strength_evidence", io::Form<wire::Evidence>::text(best.strength_evidence)},
            {"wire_diameter_mm", in_mm(s.wire_diameter)},
            {"mean_diameter_mm", in_mm(s.mean_diameter)},
            {"outside_diameter_mm", in_mm(s.outside_diameter())},
            {"total_coils", s.total_coils},
            {"free_length_mm", in_mm(s.free_length)},
            {"ends", spring::word(s.ends)}};
}

}  // namespace

Json what_if_json(const WhatIfView& v) {
    const sizing::WhatIfNumber& number = *v.question.number;
    const auto now = sizing::stated(number, v.requirement);
    Json json{{"requirement", v.file},
              {"what_if",
               {{"quantity", number.key},
                {"name", number.name},
                {"unit", number.easing->unit},
                {"stated", now ? Json(*now) : Json(nullptr)},
                {"from", v.question.from},
                {"to", v.question.to}}},
              {"values", Json::array()}};
    for (const sizing::WhatIfRow& row : v.rows)
        json["values"].push_back({{"value", row.value},
                                  {"is_stated", row.is_stated},
                                  {"looked_at", row.looked_at},
                                  {"fit", row.fit},
                                  {"best", row.best ? json_of(*row.best) : Json(nullptr)}});
    return json;
}

}  // namespace seatload::cli
