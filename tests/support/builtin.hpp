// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/io/builtin.hpp>

namespace seatload::test {

/// The built-in wire data, read once for a test program.
inline const wire::Catalogue& wires() {
    static const wire::Catalogue catalogue = io::builtin_catalogue().value();
    return catalogue;
}

/// The built-in tolerance tables.
inline const tolerance::Tables& tolerances() {
    static const tolerance::Tables tables = io::builtin_tolerances().value();
    return tables;
}

}  // namespace seatload::test
