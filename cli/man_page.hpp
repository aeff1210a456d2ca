// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include <cli/command_table.hpp>
#include <cli/man_texts.hpp>

namespace seatload::cli {

/// The name of a page without its section: "seatload-size", "seatload" for the program.
std::string man_name(std::string_view command);

/// The manual page (man(7) macros, ASCII alone) of a command of the program, or with an empty text.command of the
/// program itself. A command that is not in the table is an error of ours.
std::string man_page(const CommandEntry& program, const ManText& text, std::string_view version);

}  // namespace seatload::cli
