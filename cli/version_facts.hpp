// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

namespace seatload::cli {

/// Which program and which data it is: equal for equal sources.
struct VersionFacts {
    std::string program;
    /// SHA-256 over the built-in files: of the lines "<SHA-256>  <name>" of all of them by name, as sha256sum writes
    /// them.
    std::string data_sha256;
    std::size_t grades = 0;
    std::vector<std::string> wire;        ///< standards, with the year where the data state one
    std::vector<std::string> tolerances;  ///< the same
    std::vector<std::string> sampling;
    std::vector<std::string> formulas;
    std::vector<std::string> makers;     ///< names of those built in
    std::vector<std::string> languages;  ///< of the papers (ISO 639-1)
};

VersionFacts version_facts();

/// The facts as text of so many columns; the first line is name and version alone.
std::string version_text(const VersionFacts& facts, int width);

/// The facts as JSON.
std::string version_json(const VersionFacts& facts);

}  // namespace seatload::cli
