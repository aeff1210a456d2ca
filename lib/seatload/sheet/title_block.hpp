// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include <seatload/demand/requirement.hpp>
#include <seatload/sheet/drawing.hpp>
#include <seatload/sheet/wording.hpp>

namespace seatload::sheet {

/// The fields of a title block (ISO 7200), as readable() text.
struct TitleBlock {
    std::string legal_owner;
    std::string title;
    std::string supplementary_title;
    std::string identification_number;
    std::string revision;
    std::string date_of_issue;
    std::string creator;
    std::string approver;
    std::string document_type;
    std::string document_status;  ///< its field is left out when empty
    int sheet = 1;
    int sheets = 1;
    std::optional<std::string> scale;  ///< with the first-angle symbol; absent on sheets without a view
};

/// A title block with the fields that say whose part it is and which: owner, number, revision, date, creator, approver.
TitleBlock title_block_of(const demand::Identity& identity);

/// The same of a report of our own, with its title, what kind of document it is and whom it is for.
TitleBlock title_block_of(const demand::Identity& identity, std::string title, std::string document_type,
                          std::string document_status = "for our own use");

/// Width of a title block [mm] (ISO 7200), and its height as drawn here.
inline constexpr double kTitleBlockWidth = 180.0;
inline constexpr double kTitleBlockHeight = 27.0;

/// The width of the title block of a page [mm]: that of ISO 7200, or a little more on an upright Letter page, where a
/// gap would be left to the frame.
double title_block_width(const Drawing& drawing);

/// Draws the title block with its lower right corner at a point, its fields named in the language of `words`; values
/// too long for their field are narrowed, and a legal owner too long even so goes on two lines, without the field's
/// name.
void draw_title_block(Drawing& drawing, Point lower_right, const TitleBlock& block, const Wording& words);

}  // namespace seatload::sheet
