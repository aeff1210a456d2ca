// SPDX-License-Identifier: MIT
#include <seatload/io/demand_forms.hpp>

#include <array>
#include <charconv>
#include <cmath>
#include <limits>

#include <seatload/core/text.hpp>
#include <seatload/io/refused.hpp>

namespace seatload::io {
namespace {

constexpr std::string_view kYieldShare = "torsional yield";

const units::Dimension& length() { return units::dimension_of<Length>(); }
std::string text_of(Length value) { return quantity_text(length(), in_mm(value)); }
std::string text_of(Force value) { return quantity_text(units::dimension_of<Force>(), in_newton(value)); }

std::vector<double> numbers_of(std::initializer_list<std::optional<double>> candidates) {
    std::vector<double> numbers;
    for (const auto& candidate : candidates)
        if (candidate) numbers.push_back(*candidate);
    return numbers;
}

/// A problem when the limits of a band are the wrong way round.
std::optional<units::Problem> upside_down(const units::BandNumbers& band) {
    if (!band.at_least || !band.at_most || *band.at_least <= *band.at_most) return std::nullopt;
    return units::Problem{"upside-down"_id, "the range is upside down: its lower limit is above its upper limit",
                          "write the smaller value first", 0};
}

/// The shortest width that, added to or taken from a nominal size, gives the limit exactly; nothing when none is found.
std::optional<double> exact_width(double nominal, double limit) {
    const double width = std::abs(limit - nominal);
    const auto gives_limit = [&](double w) { return (limit < nominal ? nominal - w : nominal + w) == limit; };
    for (const int decimals : {3, 4, 6}) {
        const std::string text = fixed(width, decimals);
        double rounded = 0.0;
        std::from_chars(text.data(), text.data() + text.size(), rounded);
        if (gives_limit(rounded)) return rounded;
    }
    const double infinity = std::numeric_limits<double>::infinity();
    for (const double w : {width, std::nextafter(width, infinity), std::nextafter(width, -infinity)})
        if (gives_limit(w)) return w;
    return std::nullopt;
}

}  // namespace

units::Parsed<demand::LoadBand> Form<demand::LoadBand>::read(const Node& node) {
    units::Parsed<units::BandNumbers> band = read_band(node, units::dimension_of<Force>());
    if (!band.value) return {std::nullopt, std::move(band.problem)};
    if (band.value->single) {
        const std::string load = shortest(*band.value->nominal);
        return refused<demand::LoadBand>("no-tolerance"_id,
                                         "one load alone says nothing of what the mechanism can take",
                                         "write a band, such as \"" + load + " N ±10 %\", \"at least " + load +
                                             " N\" or \"at most " + load + " N\"");
    }
    if (auto problem = upside_down(*band.value)) return {std::nullopt, std::move(*problem)};
    demand::LoadBand loads;
    if (band.value->at_least) loads.at_least = *band.value->at_least * newton;
    if (band.value->at_most) loads.at_most = *band.value->at_most * newton;
    return {loads, {}};
}

std::string Form<demand::LoadBand>::write(const demand::LoadBand& band) {
    if (band.at_least && band.at_most) return quoted_text(text_of(*band.at_least) + " .. " + text_of(*band.at_most));
    if (band.at_least) return quoted_text("at least " + text_of(*band.at_least));
    SEATLOAD_ASSERT(band.at_most.has_value());
    return quoted_text("at most " + text_of(*band.at_most));
}

std::vector<double> Form<demand::LoadBand>::numbers(const demand::LoadBand& band) {
    const auto plain = [](const std::optional<Force>& force) {
        return force ? std::optional(in_newton(*force)) : std::nullopt;
    };
    return numbers_of({plain(band.at_least), plain(band.at_most)});
}

units::Parsed<demand::Fit> Form<demand::Fit>::read(const Node& node) {
    units::Parsed<units::BandNumbers> band = read_band(node, length());
    if (!band.value) return {std::nullopt, std::move(band.problem)};
    if (!band.value->at_least || !band.value->at_most)
        return refused<demand::Fit>("bad-range"_id, "both limits of the size are wanted",
                                    "write for example \"9.00 mm .. 9.05 mm\"");
    if (auto problem = upside_down(*band.value)) return {std::nullopt, std::move(*problem)};
    const double nominal = band.value->nominal.value_or(*band.value->at_least);
    return {demand::Fit{*band.value->at_least * mm, *band.value->at_most * mm, nominal * mm}, {}};
}

std::string Form<demand::Fit>::write(const demand::Fit& fit) {
    const std::string range = text_of(fit.smallest) + " .. " + text_of(fit.largest);
    if (fit.nominal == fit.smallest && fit.nominal == fit.largest) return quoted_text(text_of(fit.nominal));
    if (fit.nominal == fit.smallest) return quoted_text(range);
    const auto above = exact_width(in_mm(fit.nominal), in_mm(fit.largest));
    const auto below = exact_width(in_mm(fit.nominal), in_mm(fit.smallest));
    if (!above || !below) return quoted_text(range);
    return quoted_text(text_of(fit.nominal) + " +" + text_of(*above * mm) + " -" + text_of(*below * mm));
}

std::vector<double> Form<demand::Fit>::numbers(const demand::Fit& fit) {
    return {in_mm(fit.smallest), in_mm(fit.largest), in_mm(fit.nominal)};
}

units::Parsed<demand::LengthRange> Form<demand::LengthRange>::read(const Node& node) {
    units::Parsed<units::BandNumbers> band = read_band(node, length());
    if (!band.value) return {std::nullopt, std::move(band.problem)};
    if (auto problem = upside_down(*band.value)) return {std::nullopt, std::move(*problem)};
    if (!band.value->at_most)
        return refused<demand::LengthRange>("bad-range"_id, "an upper limit is wanted",
                                            "write for example \"16 mm .. 25 mm\"");
    return {demand::LengthRange{band.value->at_least.value_or(0.0) * mm, *band.value->at_most * mm}, {}};
}

std::string Form<demand::LengthRange>::write(const demand::LengthRange& range) {
    return quoted_text(text_of(range.smallest) + " .. " + text_of(range.largest));
}

std::vector<double> Form<demand::LengthRange>::numbers(const demand::LengthRange& range) {
    return {in_mm(range.smallest), in_mm(range.largest)};
}

units::Parsed<demand::CountRange> Form<demand::CountRange>::read(const Node& node) {
    const auto* text = std::get_if<std::string>(&node.value);
    if (text == nullptr) return {std::nullopt, wrong_kind(node, "a range of counts", "\"5 .. 12\"")};
    std::array<double, 2> ends{};
    const std::size_t dots = text->find("..");
    if (dots == std::string::npos)
        return refused<demand::CountRange>("bad-range"_id, "a range of counts is wanted",
                                           "write for example \"5 .. 12\"");
    const std::array<std::string_view, 2> pieces{trim(std::string_view(*text).substr(0, dots)),
                                                 trim(std::string_view(*text).substr(dots + 2))};
    for (std::size_t i = 0; i < 2; ++i) {
        const auto [end, error] = std::from_chars(pieces[i].data(), pieces[i].data() + pieces[i].size(), ends[i]);
        if (error != std::errc{} || end != pieces[i].data() + pieces[i].size() || !std::isfinite(ends[i]))
            return refused<demand::CountRange>("not-a-number"_id,
                                               "\"" + std::string(pieces[i]) + "\" is not a plain number",
                                               "write for example \"5 .. 12.5\"");
    }
    if (ends[0] > ends[1]) return {std::nullopt, *upside_down({std::nullopt, ends[0], ends[1], false})};
    return {demand::CountRange{ends[0], ends[1]}, {}};
}

std::string Form<demand::CountRange>::write(const demand::CountRange& range) {
    return quoted_text(shortest(range.smallest) + " .. " + shortest(range.largest));
}

std::vector<double> Form<demand::CountRange>::numbers(const demand::CountRange& range) {
    return {range.smallest, range.largest};
}

units::Parsed<StressShare> Form<StressShare>::read(const Node& node) {
    const auto* text = std::get_if<std::string>(&node.value);
    if (text != nullptr && lower(*text) == kYieldShare) return {StressShare{}, {}};
    units::Parsed<Share> share = Form<Share>::read(node);
    if (!share.value) {
        share.problem.hint = "write 0.56, \"56 %\" or \"" + std::string(kYieldShare) + "\"";
        return {std::nullopt, std::move(share.problem)};
    }
    return {StressShare{share.value->value}, {}};
}

std::string Form<StressShare>::write(const StressShare& share) {
    return share.of_tensile ? decimal_text(*share.of_tensile) : quoted_text(kYieldShare);
}

std::vector<double> Form<StressShare>::numbers(const StressShare& share) { return numbers_of({share.of_tensile}); }

}  // namespace seatload::io
