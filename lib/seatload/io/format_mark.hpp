// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string_view>

#include <seatload/io/reader.hpp>

namespace seatload::io {

// The value of the key `format` of each kind of file. Files written by hand may leave it out.
inline constexpr std::string_view kRequirementFormat = "seatload requirement 1";
inline constexpr std::string_view kSpringFormat = "seatload spring 1";
inline constexpr std::string_view kSpecFormat = "seatload spec 1";
inline constexpr std::string_view kReadingsFormat = "seatload readings 1";
inline constexpr std::string_view kPlungerFormat = "seatload plunger 1";
inline constexpr std::string_view kReplyFormat = "seatload reply 1";
inline constexpr std::string_view kSamplesFormat = "seatload samples 1";
inline constexpr std::string_view kLotFormat = "seatload lot 1";
inline constexpr std::string_view kMakerFormat = "seatload maker 1";
inline constexpr std::string_view kWordingFormat = "seatload wording 1";

/// The format a file says it has, empty when it says nothing. Complains when it is none of `accepted`. Nothing when it
/// is another kind of file: its other keys are then let pass, as complaints of them would only hide that.
std::optional<std::string> read_format(Reader& reader, std::initializer_list<std::string_view> accepted);

}  // namespace seatload::io
