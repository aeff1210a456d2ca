// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>
#include <vector>

#include <seatload/bench/readings.hpp>
#include <seatload/io/spring_forms.hpp>
#include <seatload/io/stated_form.hpp>  // IWYU pragma: export

namespace seatload::io {

// How the values of a readings file stand in it; such files are read and never written.

/// What a scale shows: a mass ("212 g") or a force ("2.08 N").
template <>
struct Form<bench::ScaleReading> {
    static units::Parsed<bench::ScaleReading> read(const Node& node);
    static std::vector<double> numbers(const bench::ScaleReading& reading);
};

/// A doubt of so much both ways: "±0.02 mm", and the same without its sign.
template <class Q>
struct PlusMinus {
    Q width{};
};

/// The text of a doubt without its sign, with a blank for each letter taken away so that places inside it stay right.
Node without_sign(const Node& node);

template <class Q>
struct Form<PlusMinus<Q>> {
    static units::Parsed<PlusMinus<Q>> read(const Node& node) {
        units::Parsed<Q> width = Form<Q>::read(without_sign(node));
        if (!width.value) return {std::nullopt, std::move(width.problem)};
        return {PlusMinus<Q>{*width.value}, {}};
    }
    static std::vector<double> numbers(const PlusMinus<Q>& doubt) { return Form<Q>::numbers(doubt.width); }
};

/// A plain number with or without its doubt: 6.5, "6.5 ±0.1".
template <>
struct Form<bench::Stated<double>> {
    static units::Parsed<bench::Stated<double>> read(const Node& node);
    static std::vector<double> numbers(const bench::Stated<double>& stated) { return {stated.value}; }
};

/// A temperature with or without its doubt, "21 °C ±2 °C"; a doubt in kelvin is taken too.
struct StatedCelsius {
    bench::Stated<double> degrees;
};

template <>
struct Form<StatedCelsius> {
    static units::Parsed<StatedCelsius> read(const Node& node);
    static std::vector<double> numbers(const StatedCelsius& stated) { return {stated.degrees.value}; }
};

template <>
struct Form<bench::Role> : WordForm<bench::Role, Form<bench::Role>> {
    static constexpr Word<bench::Role> kWords[] = {
        {bench::word(bench::Role::suspect), bench::Role::suspect},
        {bench::word(bench::Role::good), bench::Role::good},
        {bench::word(bench::Role::new_made), bench::Role::new_made},
    };
};

template <>
struct Form<bench::Bearing> : WordForm<bench::Bearing, Form<bench::Bearing>> {
    static constexpr Word<bench::Bearing> kWords[] = {
        {"not at all", bench::Bearing::none},
        {"presses it down", bench::Bearing::adds},
        {"lifts it", bench::Bearing::relieves},
    };
};

template <>
struct Form<bench::StandardGravity> {
    static units::Parsed<bench::StandardGravity> read(const Node& node);
    static std::vector<double> numbers(const bench::StandardGravity&) { return {}; }
};

/// Whether a reading was taken as the spring was pressed or as it was let up.
enum class Direction { loading, unloading };

template <>
struct Form<Direction> : WordForm<Direction, Form<Direction>> {
    static constexpr Word<Direction> kWords[] = {
        {"loading", Direction::loading},
        {"unloading", Direction::unloading},
    };
};

}  // namespace seatload::io
