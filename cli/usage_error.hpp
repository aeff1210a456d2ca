// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/core/diagnostic.hpp>

namespace CLI {
class App;
class ParseError;
}  // namespace CLI

namespace seatload::cli {

/// The names of the commands of a program, or of the actions of a command.
std::vector<std::string> command_names(const CLI::App& app);

/// A complaint of the words typed; what may have been meant, or `otherwise`, goes before where more is told.
Diagnostic usage_error(const CLI::App& command, DiagnosticId id, const std::string& message,
                       const std::string& meant = {}, const std::string& otherwise = {});

/// What is wrong with the words; the library's own message names neither the command mistyped nor the one meant.
Diagnostic usage_error(const CLI::App& app, int argc, const char* const* argv, const CLI::ParseError& error);

}  // namespace seatload::cli
