// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <seatload/core/result.hpp>
#include <seatload/record/exact.hpp>

namespace seatload::record {

/// What one unit of a currency is worth in the currency all offers are compared in.
struct ExchangeRate {
    std::string currency;  ///< three letters, ISO 4217
    std::string text;      ///< as stated: "1.1725"
    Exact worth;
};

/// A rate written "GBP=1.1725": one pound is worth 1.1725 of the currency compared in. Digits and a decimal point, at
/// most nine decimals, more than zero. Errors: anything else.
Result<ExchangeRate> read_exchange_rate(std::string_view text);

/// A currency as three letters, in capitals; nothing when it is none.
std::optional<std::string> currency_code(std::string_view text);

/// The currency offers are compared in, and what others are worth in it.
struct Exchange {
    std::string home;
    std::vector<ExchangeRate> rates;

    /// What one unit of a currency is worth at home: 1 for the home currency; nothing when no rate is stated.
    std::optional<Exact> worth(std::string_view currency) const;
};

}  // namespace seatload::record
