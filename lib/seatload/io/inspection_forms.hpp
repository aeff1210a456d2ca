// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include <seatload/inspection/samples.hpp>
#include <seatload/inspection/verdict.hpp>
#include <seatload/io/reader.hpp>
#include <seatload/io/words.hpp>

namespace seatload::io {

template <>
struct Form<inspection::Kind> : WordForm<inspection::Kind, Form<inspection::Kind>> {
    using Kind = inspection::Kind;
    static constexpr Word<Kind> kWords[] = {
        {key(Kind::seated_load), Kind::seated_load},           {key(Kind::full_travel_load), Kind::full_travel_load},
        {key(Kind::outside_diameter), Kind::outside_diameter}, {key(Kind::inside_diameter), Kind::inside_diameter},
        {key(Kind::free_length), Kind::free_length},           {key(Kind::wire_diameter), Kind::wire_diameter},
        {key(Kind::total_coils), Kind::total_coils},           {key(Kind::squareness), Kind::squareness},
        {key(Kind::parallelism), Kind::parallelism},
    };
};

template <>
struct Form<inspection::Verdict> : WordForm<inspection::Verdict, Form<inspection::Verdict>> {
    using Verdict = inspection::Verdict;
    static constexpr Word<Verdict> kWords[] = {
        {word(Verdict::accept), Verdict::accept},
        {word(Verdict::reject), Verdict::reject},
        {word(Verdict::not_proven), Verdict::not_proven},
    };
};

template <>
struct Form<inspection::Level> : WordForm<inspection::Level, Form<inspection::Level>> {
    using Level = inspection::Level;
    static constexpr Word<Level> kWords[] = {{"S-1", Level::s1},   {"S-2", Level::s2}, {"S-3", Level::s3},
                                             {"S-4", Level::s4},   {"I", Level::one},  {"II", Level::two},
                                             {"III", Level::three}};
};

template <>
struct Form<inspection::Severity> : WordForm<inspection::Severity, Form<inspection::Severity>> {
    using Severity = inspection::Severity;
    static constexpr Word<Severity> kWords[] = {{word(Severity::normal), Severity::normal},
                                                {word(Severity::tightened), Severity::tightened},
                                                {word(Severity::reduced), Severity::reduced}};
};

/// The value under a key in the unit of a kind ("5.80 N", "8.45 mm", 6.5); nothing when the key is absent, or wrong
/// (then complained of).
std::optional<double> find_measured(Reader& table, std::string_view key, inspection::Kind kind,
                                    const Span& span = kAny);

/// What is wrong with a unit for a kind, or nothing; a plain count has none.
std::optional<units::Problem> problem_of_unit(inspection::Kind kind, const std::string& unit, Position at);

/// A value of a kind as a node states it.
units::Parsed<double> read_measured(const Node& node, inspection::Kind kind);

/// Its TOML text, which reads back to the same number.
std::string write_measured(double value, inspection::Kind kind);

}  // namespace seatload::io
