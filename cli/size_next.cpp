// SPDX-License-Identifier: MIT
#include <cli/size_next.hpp>

#include <cli/papers.hpp>
#include <cli/typed_command.hpp>

namespace seatload::cli {
namespace {

TypedCommand with_files(TypedCommand command, const SizeOptions& options) {
    return command.option("--wire-file", options.wire_file).option("--maker-file", options.maker_file);
}

/// The same command again, without what kept the papers from being written.
std::string papers_next(const SizeOptions& options) {
    TypedCommand size("size");
    for (const std::string& file : options.requirements) size.name(file);
    return with_files(size, options).text() + ", without --no-papers, writes specs, sheets, enquiry and calculation.";
}

std::string change_next(const SizeRun& run, const SizeOptions& options) {
    const std::string change = "change in " + shell_word(run.file) + " what can give way, and size it again";
    if (!run.shortfall || run.shortfall->reliefs.empty()) return change + '.';
    return change + "; " +
           with_files(TypedCommand("size").name(run.file), options).open("--what-if \"NAME=FROM..TO\"").text() +
           " tells before what fits at other values of one number.";
}

}  // namespace

std::string size_next(const SizeRun& run, const SizeOptions& options) {
    return '\n' + next_text(run.offers.empty() ? change_next(run, options) : papers_next(options), options.width);
}

std::string contradicted_next(const std::string& file, const SizeOptions& options) {
    return '\n' + next_text("change in " + shell_word(file) + " what its plunger asks; " +
                                TypedCommand("budget").name(file).text() + " tells how the loads come about.",
                            options.width);
}

}  // namespace seatload::cli
