// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include <seatload/inspection/characteristic.hpp>

namespace seatload::io {

/// What the cells of a column of samples are.
struct SampleColumn {
    enum class Use {
        name,    ///< of the piece
        value,   ///< as measured
        after,   ///< measured again after a treatment
        shown,   ///< what the scale of a bench showed for a load
        remark,  ///< passed over
    };
    Use use = Use::remark;
    inspection::Kind kind = inspection::Kind::seated_load;
    std::string name;  ///< as written
    std::string unit;  ///< in the heading of a CSV table; empty in rows of TOML

    bool has_unit() const;
    bool operator==(const SampleColumn& other) const { return use == other.use && kind == other.kind; }
};

/// The column of this name, or nothing. Names are "piece", "remark", those of the kinds, the same with "_after" for the
/// loads and the free length, and "seated_scale" and "full_travel_scale".
std::optional<SampleColumn> sample_column(std::string_view name);

/// A hint for a name that is none: what may have been meant, and what there is.
std::string sample_column_hint(std::string_view name);

}  // namespace seatload::io
