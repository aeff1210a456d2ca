// SPDX-License-Identifier: MIT
#include <seatload/record/landed_cost.hpp>

#include <algorithm>
#include <limits>

#include <seatload/core/assert.hpp>

namespace seatload::record {
namespace {

using boost::multiprecision::cpp_int;

template <class T>
Exact or_nothing(const std::optional<T>& amount) {
    return amount ? exact(*amount) : Exact(0);
}

/// Price, set-up and tooling in the reply's currency.
Exact order_value(const Offer& offer, const Price& price, int pieces) {
    return exact(*price.unit_price) * pieces + or_nothing(price.lot_charge) + or_nothing(offer.tooling);
}

/// Prices quoted, the smallest quantity first.
std::vector<Price> quoted(const Offer& offer) {
    std::vector<Price> prices;
    for (const Price& price : offer.prices)
        if (price.unit_price) prices.push_back(price);
    std::sort(prices.begin(), prices.end(), [](const Price& a, const Price& b) { return a.quantity < b.quantity; });
    return prices;
}

/// The fewest pieces whose order is worth `least`; nothing when no number of them is.
std::optional<int> pieces_worth(const Money& least, const Offer& offer, const Price& price) {
    const Exact rest = exact(least) - order_value(offer, price, 0);
    if (rest <= 0) return 0;
    const Exact unit = exact(*price.unit_price);
    if (unit == 0) return std::nullopt;
    const Exact count = rest / unit;
    const cpp_int below = numerator(count) / denominator(count);
    const cpp_int pieces = Exact(below) == count ? below : below + 1;
    if (pieces > std::numeric_limits<int>::max()) return std::nullopt;
    return pieces.convert_to<int>();
}

/// The fewest pieces from `need` on that can be ordered at a price.
std::optional<int> orderable(const Charges& charges, const Offer& offer, const Price& price, int need) {
    int pieces = std::max({need, price.quantity, offer.least_pieces.value_or(0)});
    if (charges.least_order) {
        const auto worth = pieces_worth(*charges.least_order, offer, price);
        if (!worth) return std::nullopt;
        pieces = std::max(pieces, *worth);
    }
    return pieces;
}

}  // namespace

LandedCost landed_cost(const Charges& charges, const Offer& offer, const Price& price, int pieces, const Terms& terms) {
    SEATLOAD_ASSERT(price.unit_price && pieces > 0);
    LandedCost c;
    c.pieces = pieces;
    c.priced_as = price.quantity;
    c.lead_time = price.lead_time;
    c.price = exact(*price.unit_price) * pieces * terms.worth;
    c.set_up = or_nothing(price.lot_charge) * terms.worth;
    c.tooling = or_nothing(offer.tooling) * terms.worth;
    c.certificate = or_nothing(charges.certificate) * terms.worth;
    c.packing = or_nothing(charges.packing) * terms.worth;
    c.carriage = or_nothing(charges.carriage) * terms.worth;
    const Exact duty = or_nothing(charges.duty);
    const Exact tax = terms.reclaims_tax ? Exact(0) : or_nothing(charges.tax);
    const Exact without_tooling = c.price + c.set_up + c.certificate + c.packing + c.carriage;
    const Exact net = without_tooling + c.tooling;
    c.duty = net * duty;
    c.tax = (net + c.duty) * tax;
    c.total = net + c.duty + c.tax;
    c.again = without_tooling * (1 + duty) * (1 + tax);
    c.open = c.open_again = open_charges(charges, price, terms);
    if (!offer.tooling) c.open.emplace_back("tooling");
    return c;
}

Minimum minimum_missed(const Charges& charges, const Offer& offer, const Price& price, int pieces) {
    Minimum missed;
    if (offer.least_pieces && pieces < *offer.least_pieces) missed.pieces = offer.least_pieces;
    if (charges.least_order && order_value(offer, price, pieces) < exact(*charges.least_order))
        missed.order = charges.least_order;
    return missed;
}

std::vector<LandedCost> purchases(const Charges& charges, const Offer& offer, int need, const Terms& terms) {
    std::vector<LandedCost> ways;
    const std::vector<Price> prices = quoted(offer);
    for (std::size_t i = 0; i < prices.size(); ++i) {
        const auto pieces = orderable(charges, offer, prices[i], need);
        const bool is_next_price = pieces && i + 1 < prices.size() && *pieces >= prices[i + 1].quantity;
        if (pieces && !is_next_price) ways.push_back(landed_cost(charges, offer, prices[i], *pieces, terms));
    }
    return ways;
}

std::optional<LandedCost> cheapest(const std::vector<LandedCost>& purchases) {
    const auto best =
        std::min_element(purchases.begin(), purchases.end(), [](const LandedCost& a, const LandedCost& b) {
            return a.total != b.total ? a.total < b.total : a.pieces < b.pieces;
        });
    return best == purchases.end() ? std::nullopt : std::optional(*best);
}

std::vector<std::string> open_charges(const Charges& charges, const Price& price, const Terms& terms) {
    std::vector<std::string> open;
    if (!charges.packing) open.emplace_back("packing");
    if (!charges.carriage) open.emplace_back("carriage");
    if (!charges.certificate) open.emplace_back("certificate");
    if (!charges.duty && terms.may_owe_duty) open.emplace_back("duty");
    if (!charges.tax && !terms.reclaims_tax) open.emplace_back("tax");
    if (!price.lot_charge) open.emplace_back("lot charge");
    return open;
}

}  // namespace seatload::record
