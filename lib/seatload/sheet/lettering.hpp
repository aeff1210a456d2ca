// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <seatload/core/diagnostic.hpp>
#include <seatload/sheet/drawing.hpp>

namespace seatload::sheet {

enum class Script { plain, sub, super };

/// A piece of lettering in one script.
struct Run {
    std::string words;
    Script script = Script::plain;
};

// Scripts are marked inside a text by control characters, which readable() takes out of anything a user wrote: no user
// text can be mistaken for markup, and nothing has to be escaped.
inline constexpr char kSub = '\x01';
inline constexpr char kSuper = '\x02';
inline constexpr char kPlain = '\x03';

/// "F" and "1" as F with a subscript.
std::string with_sub(std::string_view letter, std::string_view index);
std::string with_super(std::string_view letter, std::string_view exponent);

/// The pieces of a marked-up text, in order; none is empty.
std::vector<Run> runs(std::string_view words);
/// The text without its script marks, as a search in the PDF finds it.
std::string plain(std::string_view words);

/// Size of the letters in a run over that of plain ones (one step down the ISO 3098 series).
inline constexpr double kScriptSize = 0.72;
/// How far a script's base line lies off the main one, over capital height.
constexpr double script_rise(Script script) {
    return script == Script::sub ? -0.25 : script == Script::super ? 0.5 : 0.0;
}

/// Width of a text as drawn [mm].
double text_width(std::string_view words, double height, Face face = Face::regular);
double text_width(const Text& text);

/// The upright box around a text as drawn, ascenders and descenders included [mm].
/// A turned text must be turned by a multiple of 90 degrees.
Box text_box(const Text& text);

/// The text narrowed so far that it is no wider than `width`, but never below `narrowest` of its natural width; one
/// that is too long even so is cut and ends in "…".
Text fitted(Text text, double width, double narrowest = 0.7);

/// A user's text made fit for printing: control characters become blanks, and characters the typeface lacks become □,
/// each with a warning naming them. Text that is not UTF-8 is an error. `what` names the text ("title").
std::string readable(std::string_view text, std::string_view what, Diagnostics& diagnostics);

}  // namespace seatload::sheet
