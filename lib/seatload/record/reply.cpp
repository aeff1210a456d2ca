// SPDX-License-Identifier: MIT
#include <seatload/record/reply.hpp>

#include <algorithm>

namespace seatload::record {

std::string money_text(const Money& money) {
    constexpr std::int64_t kWhole = 10000;
    constexpr std::size_t kFewestDecimals = 2;
    std::string decimals = std::to_string(kWhole + money.ten_thousandths % kWhole).substr(1);
    while (decimals.size() > kFewestDecimals && decimals.back() == '0') decimals.pop_back();
    return std::to_string(money.ten_thousandths / kWhole) + '.' + decimals;
}

int calendar_days(const LeadTime& time) {
    constexpr int kWeek = 7;
    constexpr int kWorkingWeek = 5;
    if (time.unit == LeadUnit::days) return time.count;
    if (time.unit == LeadUnit::weeks) return time.count * kWeek;
    return (time.count * kWeek + kWorkingWeek - 1) / kWorkingWeek;
}

bool Offer::is_quoted() const {
    return std::any_of(prices.begin(), prices.end(), [](const Price& price) { return price.unit_price.has_value(); });
}

bool Reply::is_quoted() const {
    return std::any_of(offers.begin(), offers.end(), [](const Offer& offer) { return offer.is_quoted(); });
}

Reply blank_reply(const Spec& first, const std::vector<std::string>& alternatives,
                  const demand::Correspondence& correspondence) {
    Reply reply;
    const demand::Identity& identity = first.identity;
    reply.enquiry = {identity.number,  identity.revision, first.title, alternatives,
                     first.quantities, correspondence,    {}};
    for (const std::string& letter : alternatives) {
        Offer offer;
        offer.alternative = letter;
        for (const int quantity : first.quantities) offer.prices.push_back({quantity, {}, {}, {}});
        if (offer.prices.empty()) offer.prices.push_back({});  // the maker says for how many his price is
        reply.offers.push_back(std::move(offer));
    }
    return reply;
}

}  // namespace seatload::record
