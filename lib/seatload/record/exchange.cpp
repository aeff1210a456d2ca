// SPDX-License-Identifier: MIT
#include <seatload/record/exchange.hpp>

#include <algorithm>

#include <seatload/core/diagnostic.hpp>
#include <seatload/core/text.hpp>

namespace seatload::record {
namespace {

using boost::multiprecision::cpp_int;

constexpr std::size_t kCode = 3;
constexpr std::size_t kMostDigits = 9;  ///< before the point, and behind it

bool is_digits(std::string_view text) {
    return !text.empty() && text.find_first_not_of("0123456789") == std::string_view::npos;
}

/// "1.1725" as a fraction; nothing for anything but digits and a point.
std::optional<Exact> decimal(std::string_view text) {
    const std::size_t point = text.find('.');
    const std::string_view whole = text.substr(0, point);
    const std::string_view behind = point == std::string_view::npos ? std::string_view{} : text.substr(point + 1);
    if (!is_digits(whole) || (point != std::string_view::npos && !is_digits(behind))) return std::nullopt;
    if (whole.size() > kMostDigits || behind.size() > kMostDigits) return std::nullopt;
    // A leading zero would have the digits read as octal ones.
    std::string digits = std::string(whole) + std::string(behind);
    digits.erase(0, std::min(digits.find_first_not_of('0'), digits.size() - 1));
    const cpp_int parts = boost::multiprecision::pow(cpp_int(10), static_cast<unsigned>(behind.size()));
    return Exact(cpp_int(digits), parts);
}

}  // namespace

std::optional<std::string> currency_code(std::string_view text) {
    std::string code(trim(text));
    for (char& c : code)
        if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
    const bool is_code =
        code.size() == kCode && std::all_of(code.begin(), code.end(), [](char c) { return c >= 'A' && c <= 'Z'; });
    return is_code ? std::optional(code) : std::nullopt;
}

Result<ExchangeRate> read_exchange_rate(std::string_view text) {
    const std::size_t sign = text.find('=');
    const auto currency = currency_code(text.substr(0, sign));
    const std::string_view number = sign == std::string_view::npos ? std::string_view{} : trim(text.substr(sign + 1));
    const auto worth = decimal(number);
    if (!currency || !worth || *worth == 0)
        return error("bad-rate"_id, "--rate: \"" + std::string(text) + "\" is not an exchange rate",
                     "write what one unit is worth in the currency you compare in, with a decimal point: "
                     "--rate GBP=1.1725");
    return ExchangeRate{*currency, std::string(number), *worth};
}

std::optional<Exact> Exchange::worth(std::string_view currency) const {
    if (currency == home) return Exact(1);
    const auto rate =
        std::find_if(rates.begin(), rates.end(), [&](const ExchangeRate& r) { return r.currency == currency; });
    return rate == rates.end() ? std::nullopt : std::optional(rate->worth);
}

}  // namespace seatload::record
