// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <seatload/inspection/lot_verdict.hpp>
#include <seatload/record/spec.hpp>

namespace seatload::record {

/// The spec a lot was inspected by.
struct InspectedSpec {
    std::string number;
    std::string revision;
    std::string sha256;  ///< of the bytes of its file
};

/// A characteristic of a lot in brief, in the unit of its kind.
struct LotCharacteristic {
    inspection::Kind kind = inspection::Kind::seated_load;
    inspection::Limits limits;
    double uncertainty = 0.0;  ///< U, k = 2
    bool decides = false;      ///< whether it counts for the verdict
    int inside = 0;
    int unproven = 0;
    int outside = 0;
    std::optional<double> mean;
    std::optional<double> deviation;
    inspection::Verdict verdict = inspection::Verdict::not_proven;
};

/// What an inspection found of a lot, to be kept with the spec.
struct Lot {
    InspectedSpec spec;
    std::string name;
    std::string date;
    std::string maker;
    int pieces = 0;     ///< of the lot
    int inspected = 0;  ///< pieces measured
    std::string plan;   ///< in words
    inspection::Verdict verdict = inspection::Verdict::not_proven;
    std::vector<std::string> reasons;     ///< why the lot is not accepted
    std::vector<std::string> conditions;  ///< of a lot accepted on condition: what nobody measured and must hold
    std::vector<std::string> remarks;
    std::vector<LotCharacteristic> characteristics;  ///< those that were measured or had to be
};

/// "every piece", or the row of the tables: "ISO 2859-1, level II, AQL 1, normal: 13 pieces, Ac 0, Re 1".
std::string plan_words(const inspection::LotPlan& plan);

/// The record of an inspection.
Lot lot_of(const inspection::LotInspection& inspection, const Spec& spec, const std::string& spec_sha256);

}  // namespace seatload::record
