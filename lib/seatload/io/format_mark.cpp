// SPDX-License-Identifier: MIT
#include <seatload/io/format_mark.hpp>

#include <algorithm>

namespace seatload::io {

std::string read_format(Reader& reader, std::initializer_list<std::string_view> accepted) {
    const auto format = reader.find<std::string>("format");
    if (!format) return {};
    if (std::find(accepted.begin(), accepted.end(), *format) == accepted.end())
        reader.error("format", "this is a file of the kind \"" + *format + "\"",
                     "wanted here is \"" + std::string(*accepted.begin()) + "\"");
    return *format;
}

}  // namespace seatload::io
