// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <string>
#include <vector>

#include <seatload/demand/requirement.hpp>

#include "published/printed.hpp"

namespace seatload::published {

/// The spring a source ends up with, and the heights it is put to.
struct Answer {
    std::string pose;
    std::vector<std::string> spring;            ///< wire, mean diameter, total coils, free length, as printed
    std::vector<std::string> heights;           ///< seated, full travel
    bool wire_rounded = false;                  ///< the wire is a number worked out, not a size of a list
    std::map<std::string, std::string> breaks;  ///< by rule: value beyond its limit, as a share of it
    std::string difference;                     ///< why it breaks them
};

/// One published design, posed as a requirement.
struct Design {
    std::string file;
    std::string id;
    std::string source;
    std::string evidence;
    std::string wire_text;    ///< [[own_wire]]
    std::string requirement;  ///< the rest of a requirement, from [space] on
    std::vector<Answer> answers;
};

/// Every design of tests/published/designs. Throws std::runtime_error on a key that is not known or missing.
std::vector<Design> read_designs();
std::string designs_folder();

/// The requirement of a design at the heights of an answer, read as the tool reads it; its grid is the printed answer,
/// give or take half a unit of the last printed digit.
demand::Requirement pose(const Design& design, const Answer& answer);

/// The same with the printed answer alone as its grid.
demand::Requirement pose_exactly(const Design& design, const Answer& answer);

}  // namespace seatload::published
