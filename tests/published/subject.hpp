// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "published/inputs.hpp"

namespace seatload::published {

/// A tolerance on top of half a unit of the last printed digit, as a share of the number, and why it is right.
struct NamedTolerance {
    double relative = 0.0;
    std::string reason;
};

/// How a source that differs from its own formula differs: (ours - printed)/printed.
struct Disagreement {
    std::string residual;  ///< as printed; "infinite" when ours is
    std::string reason;
};

enum class Rounding { nearest, truncated };

/// One printed number and how we come by it.
struct Row {
    std::string output;  ///< its name in the collection of examples; empty when the case has one number only
    std::string quantity;
    std::string expected;  ///< as printed, with its unit; "none" where no real number solves the formula
    std::map<std::string, std::variant<double, std::string>> given;  ///< what the source goes on with at this point
    std::string tolerance;                                           ///< name of a wider tolerance
    Rounding rounding = Rounding::nearest;
    std::string rounded_up_to;  ///< the step the source rounds up to
    std::optional<Disagreement> disagrees;
    bool added = false;  ///< not a number of the collection: checked to make a point of its own
    std::string note;
};

/// An output of an example that is not a row here, and why, or the test that checks it.
struct Exception {
    std::string output;
    std::string reason;  ///< why it is left out; empty when it is checked elsewhere
    std::string where;   ///< file of the test that checks it
};

/// One example or check value of a source.
struct Case {
    std::string id;
    std::string source;
    std::string evidence;      ///< seen, memory or derived
    bool independent = false;  ///< printed in a publication; false for a number that came out of some program
    std::string verdict;
    Inputs inputs;
    std::vector<Row> rows;
    std::vector<Exception> exceptions;
};

/// One file of tests/published/values.
struct Subject {
    std::string file;
    std::string title;
    std::map<std::string, NamedTolerance> tolerances;
    std::vector<Case> cases;
};

/// Reads a file of the folder by its name. Throws std::runtime_error on anything but the keys described in its README.
Subject read_subject(const std::string& file);

/// The names of all value files, sorted.
std::vector<std::string> subject_files();

/// The folder they stand in.
std::string values_folder();

}  // namespace seatload::published
