// SPDX-License-Identifier: MIT
#include <seatload/io/format_mark.hpp>

#include <algorithm>

namespace seatload::io {
namespace {

/// The commands that take a file of this format, or an empty text.
std::string_view commands_for(std::string_view format) {
    if (format == kRequirementFormat) return "`seatload size` and --requirement of `seatload check`";
    if (format == kSpringFormat) return "`seatload check`";
    if (format == kSpecFormat) return "`seatload check` and `seatload sheet`";
    if (format == kReadingsFormat) return "`seatload bench`";
    if (format == kPlungerFormat) return "`seatload budget`";
    if (format == kReplyFormat) return "`seatload reply`";
    if (format == kSamplesFormat) return "`seatload inspect`, behind the spec";
    if (format == kLotFormat) return "`seatload specs approve`";
    if (format == kMakerFormat) return "--maker-file of `seatload size` and `seatload check`";
    if (format == kWordingFormat) return "--wording of `seatload size` and `seatload sheet`";
    return {};
}

}  // namespace

std::optional<std::string> read_format(Reader& reader, std::initializer_list<std::string_view> accepted) {
    const std::string format = reader.find<std::string>("format").value_or(std::string{});
    if (format.empty() || std::find(accepted.begin(), accepted.end(), format) != accepted.end()) return format;
    const std::string_view commands = commands_for(format);
    std::string hint = "wanted here is \"" + std::string(*accepted.begin()) + "\"";
    if (!commands.empty()) hint += "; this file is for " + std::string(commands);
    reader.error("format", "wrong-kind-of-file"_id, "this is a file of the kind \"" + format + "\"", std::move(hint));
    if (commands.empty()) return format;
    reader.allow_all();
    return std::nullopt;
}

}  // namespace seatload::io
