// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <seatload/core/diagnostic.hpp>

namespace CLI {
class App;
}

namespace seatload::cli {

/// The word behind "help", without the brackets in which the name of a complaint is shown; nothing when there is none.
std::optional<std::string_view> asked_of_help(int argc, const char* const* argv);

/// What "help NAME" answers when the name is that of a complaint, in lines of so many columns; else nothing.
std::optional<std::string> told_of_complaint(std::string_view name, int width);

/// What is wrong when "help NAME" names neither a command nor a complaint.
std::optional<Diagnostic> unknown_help(const CLI::App& app, const std::string& name);

/// The words given, "help size" turned into "size --help"; what is no command stays to be complained of.
std::vector<const char*> with_help(const CLI::App& app, int argc, const char* const* argv);

}  // namespace seatload::cli
