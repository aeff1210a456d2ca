// SPDX-License-Identifier: MIT
#pragma once

namespace seatload::inspection {

/// k of a one-sided normal tolerance interval: with `confidence`, at least the share `content` of all lies below mean +
/// k s (or above mean - k s). Exact, from the noncentral t distribution. n from 2 on; content and confidence between 0
/// and 1. ISO 16269-6:2014 (from memory).
double one_sided_tolerance_factor(int n, double content, double confidence);

/// k of a two-sided normal tolerance interval: with `confidence`, at least the share `content` of all lies within mean
/// +- k s. Exact for unknown mean and deviation: the chance is integrated over the mean's error. n from 2 on. ISO
/// 16269-6:2014 (from memory); Krishnamoorthy and Mathew, Statistical Tolerance Regions, eq. 2.3.5 (from memory).
double two_sided_tolerance_factor(int n, double content, double confidence);

}  // namespace seatload::inspection
