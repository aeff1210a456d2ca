// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <filesystem>
#include <vector>

namespace seatload::test {

/// A picture in grey, row by row from the top: 0 black, 255 white.
struct Picture {
    unsigned width = 0;
    unsigned height = 0;
    std::vector<std::uint8_t> grey;

    std::uint8_t& at(unsigned column, unsigned row) { return grey[std::size_t{row} * width + column]; }
};

/// The picture in a PNG file, colours as grey. Throws std::runtime_error when there is none.
Picture read_png(const std::filesystem::path& path);

/// The picture in 16 greys, which fill half the space as a PNG file; no pixel changes by more than 8 steps.
Picture in_few_greys(Picture picture);

/// Writes the picture as a PNG file. Throws std::runtime_error when it cannot be written.
void write_png(const std::filesystem::path& path, const Picture& picture);

}  // namespace seatload::test
