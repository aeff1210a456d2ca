// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string_view>

namespace seatload::fuzz {

/// A function that is given any bytes at all: it throws when something is not as promised, and must come back soon.
struct Target {
    std::string_view name;
    void (*run)(std::string_view bytes);
};

/// Every reader, and the search on tiny grids.
std::span<const Target> targets();

/// The target of a name; throws when there is none.
const Target& target(std::string_view name);

// Texts of one file.
void read_requirement(std::string_view bytes);
void read_spring(std::string_view bytes);
void read_reply(std::string_view bytes);
void read_spec(std::string_view bytes);
void read_kept_spec(std::string_view bytes);
void read_lot(std::string_view bytes);
void read_plunger(std::string_view bytes);
void read_maker(std::string_view bytes);
void read_wire(std::string_view bytes);
void read_tolerances(std::string_view bytes);
void read_wording(std::string_view bytes);

// A TOML text and, behind the byte kBetweenFiles, the CSV table that lies beside it.
inline constexpr char kBetweenFiles = '\x1e';
void read_readings(std::string_view bytes);
void read_samples(std::string_view bytes);

// A CSV table alone, beside a sound TOML text.
void read_readings_table(std::string_view bytes);
void read_samples_table(std::string_view bytes);

// The first byte chooses the dimension, the rest is what a user wrote.
void read_quantity(std::string_view bytes);
// What is put behind --what-if.
void read_what_if(std::string_view bytes);

// Bytes are drawn from to make a small requirement.
void size_tiny_grid(std::string_view bytes);

}  // namespace seatload::fuzz
