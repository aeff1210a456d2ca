// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <seatload/record/exact.hpp>
#include <seatload/record/reply.hpp>

namespace seatload::record {

/// How a lot is paid for.
struct Terms {
    Exact worth = 1;            ///< of one unit of the reply's currency in the one compared in
    bool reclaims_tax = false;  ///< tax is got back and does not count
    bool may_owe_duty = false;  ///< the goods may cross a border
};

/// What a lot costs until it lies on the bench, in the currency compared in, exactly:
///   goods   = pieces x price + set-up + tooling
///   charges = certificate + packing + carriage
///   duty    = its share of goods and charges    (the customs value with carriage, as in the EU: common practice, no
///   source) tax     = its share of goods, charges and duty    (common practice, no source)
/// What is not stated counts as nothing, and is named.
struct LandedCost {
    int pieces = 0;
    int priced_as = 0;  ///< the quantity whose price holds
    Exact price;        ///< of all pieces
    Exact set_up;
    Exact tooling;
    Exact certificate;
    Exact packing;
    Exact carriage;
    Exact duty;
    Exact tax;
    Exact total;
    Exact again;  ///< the total of a later lot, without the tooling
    std::optional<LeadTime> lead_time;
    std::vector<std::string> open;        ///< what may raise the total and was not stated
    std::vector<std::string> open_again;  ///< and that of a later lot

    Exact each() const { return total / pieces; }
};

/// What stands in the way of ordering a lot as quoted.
struct Minimum {
    std::optional<int> pieces;   ///< no fewer
    std::optional<Money> order;  ///< no order of a lower value, in the reply's currency

    bool is_stated() const { return pieces || order; }
};

/// The cost of so many pieces at the price of one quoted quantity, which must have a unit price.
LandedCost landed_cost(const Charges& charges, const Offer& offer, const Price& price, int pieces, const Terms& terms);

/// What of the minimums a lot stays under; nothing: none. The value of an order is that of the goods with their set-up
/// and tooling.
Minimum minimum_missed(const Charges& charges, const Offer& offer, const Price& price, int pieces);

/// The ways to get at least so many pieces, one a quoted price at most, fewest pieces first. The price of a quantity
/// holds from it up to the next one quoted, and that of the smallest for no fewer (price breaks: common practice, no
/// source); minimums are reached by ordering more.
std::vector<LandedCost> purchases(const Charges& charges, const Offer& offer, int need, const Terms& terms);

/// The cheapest of them in all, of equals the one with fewer pieces; nothing when there is none.
std::optional<LandedCost> cheapest(const std::vector<LandedCost>& purchases);

/// What the maker left open that may raise the cost of every lot, by the names of the form: "packing", "carriage",
/// "certificate", "lot charge"; "duty" where it may be owed, "tax" unless it is got back.
std::vector<std::string> open_charges(const Charges& charges, const Price& price, const Terms& terms);

}  // namespace seatload::record
