// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include <seatload/sheet/report_subject.hpp>
#include <seatload/sheet/ruled_table.hpp>

namespace seatload::sheet {

/// Every limit in play: its value, its bound, how far inside it lies, whether it is kept, and the source.
RuledTable limits_table(const ReportSubject& subject, double width);

/// "all 17 limits are kept", or which are broken; and which limits are not in play.
std::string limits_in_words(const ReportSubject& subject);
std::string limits_not_in_play(const ReportSubject& subject);

/// What a spring on a sliding seat leans when its end tips are as far off half a turn apart as the sheet allows, beside
/// its room; empty when lean is not in play or the tips stand anyhow.
std::string lean_as_made(const ReportSubject& subject);

}  // namespace seatload::sheet
