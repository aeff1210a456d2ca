// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/io/words.hpp>
#include <seatload/wire/grade.hpp>

namespace seatload::io {

template <>
struct Form<wire::Family> : WordForm<wire::Family, Form<wire::Family>> {
    static constexpr Word<wire::Family> kWords[] = {
        {"cold-drawn carbon", wire::Family::cold_drawn_carbon},
        {"oil-tempered", wire::Family::oil_tempered},
        {"austenitic stainless", wire::Family::austenitic_stainless},
        {"precipitation stainless", wire::Family::precipitation_stainless},
        {"copper alloy", wire::Family::copper_alloy},
        {"nickel alloy", wire::Family::nickel_alloy},
    };
};

template <>
struct Form<wire::StrengthLookup> : WordForm<wire::StrengthLookup, Form<wire::StrengthLookup>> {
    static constexpr Word<wire::StrengthLookup> kWords[] = {
        {"next larger", wire::StrengthLookup::next_larger},
        {"step", wire::StrengthLookup::step},
        {"interpolate", wire::StrengthLookup::interpolate},
    };
};

template <>
struct Form<wire::Evidence> : WordForm<wire::Evidence, Form<wire::Evidence>> {
    static constexpr Word<wire::Evidence> kWords[] = {
        {"standard", wire::Evidence::standard}, {"fit", wire::Evidence::fit},     {"memory", wire::Evidence::memory},
        {"estimate", wire::Evidence::estimate}, {"given", wire::Evidence::given},
    };
};

}  // namespace seatload::io
