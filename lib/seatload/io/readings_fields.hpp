// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/bench/readings.hpp>
#include <seatload/io/fields.hpp>
#include <seatload/io/readings_forms.hpp>

namespace seatload::io {

inline constexpr Span kCoverage{1.0, 5.0, false, "between 1 and 5"};
inline constexpr Span kDoubtfulTemperature{-50.0, 200.0, false, "between -50 °C and 200 °C"};
inline constexpr Span kPreloads{0.0, 1000.0, false, "0 to 1000"};
inline constexpr Span kCoilsCounted{0.0, 10000.0, true, "more than 0 and at most 10000"};

// The field tables of a readings file.

/// A key whose value is a doubt both ways.
template <class Q>
void plus_minus(FieldReader& f, std::string_view key, Q& member) {
    PlusMinus<Q> doubt{member};
    f.field(key, doubt, kNotNegative, "");
    member = doubt.width;
}

inline void visit_scale(FieldReader& f, bench::Scale& scale) {
    f.needed("step", "\"1 g\"", scale.resolution, kPositive, "");
    plus_minus(f, "span", scale.span_error);
    plus_minus(f, "linearity", scale.linearity);
    plus_minus(f, "zero", scale.zero);
    f.field("tare", scale.tare, kAny, "");
}

inline void visit_gauge(FieldReader& f, bench::HeightGauge& gauge) {
    f.needed("step", "\"0.01 mm\"", gauge.resolution, kPositive, "");
    plus_minus(f, "error", gauge.error);
    plus_minus(f, "span", gauge.span_error);
    plus_minus(f, "zero", gauge.zero);
}

inline void visit_indicator(FieldReader& f, bench::Indicator& indicator) {
    f.needed("step", "\"0.01 mm\"", indicator.resolution, kPositive, "");
    plus_minus(f, "error", indicator.error);
    plus_minus(f, "span", indicator.span_error);
    f.field("height_at_zero", indicator.height_at_zero, kSize, "");
    f.field("bears_on_pan", indicator.bearing, kAny, "");
    plus_minus(f, "force_error", indicator.plunger_error);
    f.field("tare_travel", indicator.tare_travel, kAny, "");
}

inline void visit_preload(FieldReader& f, bench::Preload& preload) {
    f.field("preloads", preload.count, kPreloads, "");
    f.field("preload_height", preload.height, kSize, "");
}

inline void visit_dimensions(FieldReader& f, bench::Dimensions& dimensions) {
    f.field("wire", dimensions.grade, kAny, "");
    f.field("wire_diameter", dimensions.wire_diameter, kSize, "");
    f.field("outside_diameter", dimensions.outside_diameter, kSize, "");
    f.field("total_coils", dimensions.total_coils, kCoilsCounted, "");
    f.field("free_length", dimensions.free_length, kSize, "");
    f.field("free_length_new", dimensions.free_length_new, kSize, "");
    f.field("ends", dimensions.ends, kAny, "");
}

}  // namespace seatload::io
