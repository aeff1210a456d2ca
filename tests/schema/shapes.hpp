// SPDX-License-Identifier: MIT
#pragma once

#include <cmath>
#include <type_traits>

#include <nlohmann/json.hpp>
#include <seatload/io/date_form.hpp>
#include <seatload/io/demand_forms.hpp>
#include <seatload/io/plunger_forms.hpp>
#include <seatload/io/readings_forms.hpp>
#include <seatload/io/reply_forms.hpp>
#include <seatload/io/span.hpp>
#include <seatload/io/tips_form.hpp>
#include <seatload/io/words.hpp>

#include "patterns.hpp"

namespace seatload::test {

using Json = nlohmann::ordered_json;

/// The schema of a text that matches a pattern, as a definition that several keys share: {"$ref": ...}.
Json shared_text(const std::string& name, const std::string& pattern, const std::string& words);
/// The definitions that a schema refers to.
Json definitions_of(const Json& schema);

/// How a value of a type stands in a file, as a JSON Schema; one specialisation for each Form of lib/seatload/io.
template <class T>
struct Shape;

inline bool is_signed(const io::Span& span) { return span.lowest < 0.0; }

/// "a spring rate" as "spring_rate".
std::string name_of(const units::Dimension& dimension);
/// "A length with its unit (mm, cm, m, in, thou), such as "9 mm".", or a range of them.
std::string words_for(const units::Dimension& dimension, const std::string& what, const std::string& examples);

/// A plain number within a span.
inline Json number_shape(const io::Span& span, std::string_view type = "number") {
    Json json{{"type", type}};
    if (std::isfinite(span.lowest)) json[span.lowest_excluded ? "exclusiveMinimum" : "minimum"] = span.lowest;
    if (std::isfinite(span.highest)) json["maximum"] = span.highest;
    return json;
}

Json quantity_shape(const units::Dimension& dimension, const io::Span& span);
Json stated_shape(const units::Dimension& dimension, const io::Span& span);
Json two_ends_shape(const units::Dimension& dimension, const io::Span& span);
Json interval_shape(const units::Dimension& dimension, const io::Span& span);
Json either(std::initializer_list<Json> shapes);
Json text_shape(const std::string& pattern);
Json blank_shape();

template <io::Quantity Q>
struct Shape<Q> {
    static Json json(const io::Span& span) { return quantity_shape(units::dimension_of<Q>(), span); }
};

template <io::Quantity Q>
struct Shape<bench::Stated<Q>> {
    static Json json(const io::Span& span) { return stated_shape(units::dimension_of<Q>(), span); }
};

/// Both ends, one value for both, or an upper end.
template <io::Quantity Q>
struct Shape<demand::Interval<Q>> {
    static Json json(const io::Span& span) { return interval_shape(units::dimension_of<Q>(), span); }
};

template <>
struct Shape<io::PressureRange> {
    static Json json(const io::Span& span) { return interval_shape(units::pressure_dimension(), span); }
};

template <io::Quantity Q>
struct Shape<units::Band<Q>> {
    static Json json(const io::Span& span) { return two_ends_shape(units::dimension_of<Q>(), span); }
};

template <>
struct Shape<demand::LengthRange> {
    static Json json(const io::Span& span) { return Shape<demand::Interval<Length>>::json(span); }
};

template <>
struct Shape<demand::LoadBand> {
    static Json json(const io::Span& span);
};

template <>
struct Shape<demand::Fit> {
    static Json json(const io::Span& span);
};

template <>
struct Shape<demand::CountRange> {
    static Json json(const io::Span& span);
};

template <>
struct Shape<demand::Interval<double>> {
    static Json json(const io::Span& span);
};

template <>
struct Shape<io::StressShare> {
    static Json json(const io::Span& span);
};

template <>
struct Shape<Share> {
    static Json json(const io::Span& span);
};

template <>
struct Shape<bench::ScaleReading> {
    static Json json(const io::Span& span);
};

template <>
struct Shape<bench::Stated<double>> {
    static Json json(const io::Span& span);
};

template <>
struct Shape<io::StatedCelsius> {
    static Json json(const io::Span& span);
};

template <>
struct Shape<bench::StandardGravity> {
    static Json json(const io::Span&) { return {{"enum", {"standard"}}}; }
};

template <class Q>
struct Shape<io::PlusMinus<Q>> {
    static Json json(const io::Span& span);
};

Json plus_minus_shape(const units::Dimension& dimension);
Json plus_minus_scale();

template <class Q>
Json Shape<io::PlusMinus<Q>>::json(const io::Span&) {
    if constexpr (std::is_same_v<Q, bench::ScaleReading>)
        return plus_minus_scale();
    else
        return plus_minus_shape(units::dimension_of<Q>());
}

template <>
struct Shape<double> {
    static Json json(const io::Span& span) { return number_shape(span); }
};

template <>
struct Shape<int> {
    static Json json(const io::Span& span) { return number_shape(span, "integer"); }
};

template <>
struct Shape<bool> {
    static Json json(const io::Span&) { return {{"type", "boolean"}}; }
};

template <>
struct Shape<std::string> {
    static Json json(const io::Span&) { return {{"type", "string"}}; }
};

template <>
struct Shape<io::TipsApart> {
    static Json json(const io::Span& span) { return Shape<Angle>::json(span); }
};

template <>
struct Shape<io::DateText> {
    static Json json(const io::Span&);
};

template <>
struct Shape<record::Money> {
    static Json json(const io::Span&);
};

template <>
struct Shape<record::LeadTime> {
    static Json json(const io::Span&);
};

template <>
struct Shape<io::Currency> {
    static Json json(const io::Span&);
};

/// A word of a closed list, as the readers list it.
template <class E>
requires requires { io::Form<E>::kWords; }
struct Shape<E> {
    static Json json(const io::Span&) {
        Json words = Json::array();
        for (const io::Word<E>& word : io::Form<E>::kWords) words.push_back(word.text);
        return {{"enum", std::move(words)}};
    }
};

/// A line of a form: no answer yet, or one, numbers between quotes too.
template <class T>
struct Shape<io::Answer<T>> {
    static Json json(const io::Span& span) {
        Json answer = Shape<T>::json(span);
        if constexpr (std::is_same_v<T, int>)
            return either({answer, text_shape("[ \\t]*[0-9]+[ \\t]*"), blank_shape()});
        if constexpr (std::is_same_v<T, double>)
            return either({answer, text_shape("[ \\t]*" + kNumberPattern + "[ \\t]*"), blank_shape()});
        if constexpr (std::is_same_v<T, Share>)
            return either({answer, text_shape("[ \\t]*0(?:\\.0+)?[ \\t]*"), blank_shape()});
        return either({answer, blank_shape()});
    }
};

}  // namespace seatload::test
