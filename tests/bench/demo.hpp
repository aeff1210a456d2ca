// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <seatload/core/file.hpp>
#include <seatload/io/requirement_file.hpp>
#include <seatload/io/spec_file.hpp>
#include <support/builtin.hpp>

namespace seatload::test {

inline std::string source_file(const std::string& name) {
    return read_text_file(SEATLOAD_SOURCE_DIR "/" + name).value();
}

/// The demo requirement of the ahead latch.
inline demand::Requirement latch() {
    const std::string name = "templates/ahead_latch.toml";
    return io::read_requirement(source_file(name), name, wires()).value();
}

/// The approved spec of its spring.
inline record::Spec latch_spec() {
    const std::string name = "specs/ottermere-m14/ahead-latch-plunger.toml";
    return io::read_spec(source_file(name), name, wires()).value();
}

}  // namespace seatload::test
