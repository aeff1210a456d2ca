// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/demand/requirement.hpp>
#include <seatload/io/words.hpp>

namespace seatload::io {

template <>
struct Form<demand::Seats> : WordForm<demand::Seats, Form<demand::Seats>> {
    static constexpr Word<demand::Seats> kWords[] = {
        {"fixed", demand::Seats::fixed},
        {"one end tilts", demand::Seats::pivots},
        {"both ends tilt", demand::Seats::both_pivot},
        {"slides", demand::Seats::slides},
        {"one end free", demand::Seats::free_end},
        {"guided", demand::Seats::guided},
    };
};

template <>
struct Form<demand::Certificate> : WordForm<demand::Certificate, Form<demand::Certificate>> {
    static constexpr Word<demand::Certificate> kWords[] = {
        {"2.2", demand::Certificate::test_report},
        {"3.1", demand::Certificate::inspection},
        {"3.2", demand::Certificate::inspection_by_third},
    };
};

template <>
struct Form<demand::StressLength> : WordForm<demand::StressLength, Form<demand::StressLength>> {
    static constexpr Word<demand::StressLength> kWords[] = {
        {"solid", demand::StressLength::solid},
        {"smallest permissible", demand::StressLength::smallest_permissible},
        {"full travel", demand::StressLength::full_travel},
    };
};

template <>
struct Form<demand::StressFactor> : WordForm<demand::StressFactor, Form<demand::StressFactor>> {
    static constexpr Word<demand::StressFactor> kWords[] = {
        {"none", demand::StressFactor::none},
        {"Bergsträsser", demand::StressFactor::bergstraesser},
        {"Bergstraesser", demand::StressFactor::bergstraesser},
        {"Wahl", demand::StressFactor::wahl},
    };
};

template <>
struct Form<demand::GapRule> : WordForm<demand::GapRule, Form<demand::GapRule>> {
    static constexpr Word<demand::GapRule> kWords[] = {
        {"EN Sa", demand::GapRule::en_sa},
        {"share of travel", demand::GapRule::share_of_travel},
    };
};

template <>
struct Form<demand::SolidForm> : WordForm<demand::SolidForm, Form<demand::SolidForm>> {
    static constexpr Word<demand::SolidForm> kWords[] = {
        {"EN", demand::SolidForm::en},
        {"textbook", demand::SolidForm::textbook},
    };
};

template <>
struct Form<demand::GrowthForm> : WordForm<demand::GrowthForm, Form<demand::GrowthForm>> {
    static constexpr Word<demand::GrowthForm> kWords[] = {
        {"ends free", demand::GrowthForm::ends_free},
        {"ends held", demand::GrowthForm::ends_held},
    };
};

template <>
struct Form<demand::FatigueLine> : WordForm<demand::FatigueLine, Form<demand::FatigueLine>> {
    static constexpr Word<demand::FatigueLine> kWords[] = {
        {"Goodman", demand::FatigueLine::goodman},
        {"Gerber", demand::FatigueLine::gerber},
        {"Sines", demand::FatigueLine::sines},
    };
};

/// A load that is needed: a band, one value with its tolerance, or a bound. One value alone is refused.
template <>
struct Form<demand::LoadBand> {
    static units::Parsed<demand::LoadBand> read(const Node& node);
    static std::string write(const demand::LoadBand& band);
    static std::vector<double> numbers(const demand::LoadBand& band);
    static bool is_empty(const demand::LoadBand& band) { return !band.at_least && !band.at_most; }
};

/// The size of a bore or rod: one value, one with tolerances, or two limits.
template <>
struct Form<demand::Fit> {
    static units::Parsed<demand::Fit> read(const Node& node);
    static std::string write(const demand::Fit& fit);
    static std::vector<double> numbers(const demand::Fit& fit);
};

/// Two lengths "16 mm .. 25 mm", or one for both.
template <>
struct Form<demand::LengthRange> {
    static units::Parsed<demand::LengthRange> read(const Node& node);
    static std::string write(const demand::LengthRange& range);
    static std::vector<double> numbers(const demand::LengthRange& range);
};

/// Two plain numbers in a text, "5 .. 12.5".
template <>
struct Form<demand::CountRange> {
    static units::Parsed<demand::CountRange> read(const Node& node);
    static std::string write(const demand::CountRange& range);
    static std::vector<double> numbers(const demand::CountRange& range);
};

/// The share of Rm a static stress may reach: a plain number, per cent, or the torsional yield share of the wire's
/// family.
struct StressShare {
    std::optional<double> of_tensile;  ///< absent: the torsional yield share
};

template <>
struct Form<StressShare> {
    static units::Parsed<StressShare> read(const Node& node);
    static std::string write(const StressShare& share);
    static std::vector<double> numbers(const StressShare& share);
};

}  // namespace seatload::io
