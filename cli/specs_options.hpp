// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <cli/paper_options.hpp>

namespace seatload::cli {

/// What happened, by whom and when, as told on the command line.
struct StepOptions {
    std::string by;
    std::string date;
    std::string reason;              ///< of a revision or withdrawal
    std::string without_inspection;  ///< why an approval can do without an accepted lot
    std::string note;
    std::optional<double> hours;     ///< in an engine
    std::vector<std::string> lots;   ///< results of inspections
    std::vector<std::string> files;  ///< to be kept beside: readings, quotations
};

/// Which specs are meant.
struct SpecsFilter {
    std::string engine;    ///< part of its name
    std::string position;  ///< part of its name
    std::string state;     ///< its word
    bool all = false;      ///< earlier revisions and withdrawn specs too
};

/// What a spring is looked for with, as written.
struct FindOptions {
    std::string requirement;
    std::vector<std::string> gives;  ///< "5 N .. 6 N"
    std::vector<std::string> at;     ///< "18 mm", one a load
    std::string bore, rod, temperature, wire, wire_diameter, outside_diameter, free_length;
};

/// What `seatload specs` was asked for; what its other actions take stays empty.
struct SpecsOptions {
    std::string action;  ///< "list", "show", ...
    std::string library = "specs";
    std::string wire_file;
    unsigned threads = 0;
    bool json = false;
    int width = 80;
    std::vector<std::string> specs;  ///< addresses, paths or part numbers; a file with `add`
    std::string revision;
    std::string with;  ///< file of the new contents (revise), or the other spec (diff)
    std::string as;    ///< index of the new revision
    StepOptions step;
    SpecsFilter filter;
    FindOptions find;
    std::string output = "output";
    std::optional<int> quantity;
    std::string order_number;
    PaperOptions look;
};

}  // namespace seatload::cli
