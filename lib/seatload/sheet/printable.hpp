// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <seatload/core/diagnostic.hpp>
#include <seatload/record/spec.hpp>
#include <seatload/sheet/purchase.hpp>
#include <seatload/wire/grade.hpp>

namespace seatload::sheet {

/// The spec with every text a user wrote made readable() for printing, and without our reasons (`why`), which no paper
/// for the maker may show. Complaints are added to `diagnostics`.
record::Spec printable(record::Spec spec, Diagnostics& diagnostics);

/// The identity with its texts made readable().
demand::Identity printable(demand::Identity identity, Diagnostics& diagnostics);

/// The correspondence with its texts made readable().
demand::Correspondence printable(demand::Correspondence letter, Diagnostics& diagnostics);

/// What is ordered, with its texts made readable().
Purchase printable(Purchase purchase, Diagnostics& diagnostics);

/// The grade with the texts a paper prints made readable().
wire::Grade printable(wire::Grade grade, Diagnostics& diagnostics);

}  // namespace seatload::sheet
