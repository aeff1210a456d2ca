// SPDX-License-Identifier: MIT
#include <seatload/record/exact.hpp>

#include <cmath>

#include <seatload/core/assert.hpp>

namespace seatload::record {
namespace {

using boost::multiprecision::cpp_int;

constexpr std::int64_t kMoneyParts = 10'000;
constexpr std::int64_t kShareParts = 1'000'000;

}  // namespace

Exact exact(const Money& money) { return Exact(cpp_int(money.ten_thousandths), cpp_int(kMoneyParts)); }

Exact exact(const Share& share) {
    const auto parts = static_cast<std::int64_t>(std::llround(share.value * static_cast<double>(kShareParts)));
    return Exact(cpp_int(parts), cpp_int(kShareParts));
}

std::string rounded_text(const Exact& amount, int decimals) {
    SEATLOAD_ASSERT(amount >= 0 && decimals > 0);
    const cpp_int parts = boost::multiprecision::pow(cpp_int(10), static_cast<unsigned>(decimals));
    const cpp_int numerator = boost::multiprecision::numerator(amount);
    const cpp_int denominator = boost::multiprecision::denominator(amount);
    const cpp_int steps = (numerator * parts * 2 + denominator) / (denominator * 2);
    const cpp_int behind = parts + steps % parts;
    return cpp_int(steps / parts).str() + '.' + behind.str().substr(1);
}

}  // namespace seatload::record
