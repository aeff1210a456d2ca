// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/io/words.hpp>
#include <seatload/spring/ends.hpp>

namespace seatload::io {

template <>
struct Form<spring::Ends> : WordForm<spring::Ends, Form<spring::Ends>> {
    static constexpr Word<spring::Ends> kWords[] = {
        {word(spring::Ends::open), spring::Ends::open},
        {word(spring::Ends::open_ground), spring::Ends::open_ground},
        {word(spring::Ends::closed), spring::Ends::closed},
        {word(spring::Ends::closed_ground), spring::Ends::closed_ground},
    };
};

template <>
struct Form<spring::Hand> : WordForm<spring::Hand, Form<spring::Hand>> {
    static constexpr Word<spring::Hand> kWords[] = {
        {word(spring::Hand::right), spring::Hand::right},
        {word(spring::Hand::left), spring::Hand::left},
    };
};

template <>
struct Form<spring::School> : WordForm<spring::School, Form<spring::School>> {
    static constexpr Word<spring::School> kWords[] = {
        {word(spring::School::en_13906), spring::School::en_13906},
        {word(spring::School::handbook), spring::School::handbook},
    };
};

}  // namespace seatload::io
