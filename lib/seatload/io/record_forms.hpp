// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/io/words.hpp>
#include <seatload/record/spec.hpp>

namespace seatload::io {

template <>
struct Form<record::Adjustable> : WordForm<record::Adjustable, Form<record::Adjustable>> {
    static constexpr Word<record::Adjustable> kWords[] = {
        {"free length", record::Adjustable::free_length},
        {"coils and wire diameter", record::Adjustable::coils_and_wire},
        {"coils and coil diameter", record::Adjustable::coils_and_diameter},
    };
};

/// Which coil diameter is required of the maker.
enum class RequiredDiameter { outside, inside };

template <>
struct Form<RequiredDiameter> : WordForm<RequiredDiameter, Form<RequiredDiameter>> {
    static constexpr Word<RequiredDiameter> kWords[] = {
        {"outside", RequiredDiameter::outside},
        {"inside", RequiredDiameter::inside},
    };
};

}  // namespace seatload::io
