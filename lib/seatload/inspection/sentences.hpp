// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/inspection/forecast.hpp>
#include <seatload/inspection/lot_verdict.hpp>
#include <seatload/inspection/set_loss.hpp>

// What our own report of an inspection says in words, in English.

namespace seatload::inspection {

/// "0.05 N" with so many decimals; a count has no unit.
std::string shown(double value, Kind kind, int decimals);

/// Decimals that values of this uncertainty deserve: two digits of it, three decimals where none is known.
int decimals_of(double expanded);

/// A limit with the decimals both limits of its characteristic need: "6.50" beside "5.04"; "-" for an open one.
std::string limit_text(const Limits& limits, const std::optional<double>& limit);

/// "0.46 %" of a chance from 0 to 1, or that it is under 0.01 %.
std::string chance_text(double chance);

/// U with two digits: "0.040"; "-" when it is not known.
std::string doubt_text(double expanded);

/// Where each U comes from that was not stated with the samples.
std::vector<std::string> basis_sentences(const Samples& samples);

/// The rule each value was judged by.
std::string rule_sentence();

/// Which characteristic has a further limit on pieces with close end tips, in a sentence after a blank; empty: none
/// that was measured.
std::string tips_sentence(const LotInspection& lot);

/// What the owner does next with a lot that is rejected or not proven, and of whom; empty when it is accepted.
std::string next_sentence(const LotInspection& lot);

/// What the number of pieces measured protects from, with its numbers.
std::vector<std::string> protection_sentences(const LotInspection& lot);

/// What the statistics are, and what they take for granted.
std::string statistics_sentence();

/// How the loads compare with what simulation foretold.
std::vector<std::string> forecast_sentences(const LotInspection& lot, const Forecast& forecast);

/// What a treatment took, beside the guidance.
std::vector<std::string> set_sentences(const LotInspection& lot, const Forecast* forecast);

/// What is left to the eye, and what is no part of the verdict.
std::string eye_sentence(const LotInspection& lot);

}  // namespace seatload::inspection
