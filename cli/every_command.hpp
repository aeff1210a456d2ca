// SPDX-License-Identifier: MIT
#pragma once

#include <cli/options.hpp>

namespace CLI {
class App;
}

namespace seatload::cli {

/// The options of all commands, of which one is run.
struct EveryCommand {
    StartOptions start;
    WireOptions wire;
    CheckOptions check;
    SizeOptions size;
    SheetOptions sheet;
    ReportOptions report;
    ReplyOptions reply;
    QuotesOptions quotes;
    BudgetOptions budget;
    BenchOptions bench;
    InspectOptions inspect;
    SpecsOptions specs;
    int version_width = 80;  ///< columns of what --version says
};

/// Tells the app, the program itself, all commands and options with their words; what is parsed then lands in
/// `options`.
void describe_program(CLI::App& app, EveryCommand& options);

}  // namespace seatload::cli
