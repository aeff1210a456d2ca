// SPDX-License-Identifier: MIT
#pragma once

#include <ostream>
#include <string>
#include <vector>

#include <seatload/core/file.hpp>
#include <seatload/core/result.hpp>
#include <seatload/demand/maker.hpp>
#include <seatload/sheet/paper.hpp>
#include <seatload/tolerance/tables.hpp>
#include <seatload/wire/catalogue.hpp>

#include <cli/paper_options.hpp>

namespace seatload::cli {

inline constexpr int kDone = 0;
inline constexpr int kNothingFits = 1;  ///< or a check failed
inline constexpr int kTampered = 1;     ///< a check that failed
inline constexpr int kBadInput = 2;

/// The data every command works with.
struct References {
    wire::Catalogue wires;
    tolerance::Tables tolerances;
    demand::Makers makers;
    sheet::Paper paper;      ///< how papers for the maker are to look
    sheet::Wording english;  ///< of our own reports
};

/// The built-in data, with the user's own wire file laid over it when one is named, and the paper asked for. With a
/// file of a maker's limits every order is taken to go to him.
Result<References> load_references(const std::string& wire_file, const PaperOptions& paper = {},
                                   const std::string& maker_file = {});

/// Why a file of this name and beginning is none of TOML that anything could be said of line by line: a PDF, a table.
Diagnostics not_toml(const std::string& path, std::string_view text);

/// What a reader makes of a file's text.
template <class Reader>
auto read_file(const std::string& path, const Reader& reader) -> decltype(reader(std::string_view{}, path)) {
    const auto text = read_text_file(path);
    if (!text) return Diagnostics(text.error());
    if (Diagnostics wrong = not_toml(path, *text); !wrong.empty()) return wrong;
    return reader(*text, path);
}

/// The files named more than once, by whatever spelling of their path.
Diagnostics named_twice(const std::vector<std::string>& files);

/// The diagnostics, those without a place laid to a file: what judges or draws a spring does not know where it was
/// written.
Diagnostics placed(Diagnostics diagnostics, const std::string& path);

/// Tells how many columns a line on a stream may have; until then it is 80.
void set_columns(std::ostream& stream, int columns);

/// Says the diagnostics on `err`, by place; of a file that is not there, also which one may have been meant.
void complain(Diagnostics diagnostics, std::ostream& err);

/// Says what is wrong on `err` and returns kBadInput.
int refuse(const Diagnostics& diagnostics, std::ostream& err);

}  // namespace seatload::cli
