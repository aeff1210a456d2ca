// SPDX-License-Identifier: MIT
// Amounts worked out by hand in the comments, with each step; and the same sums in decimal floating point of fifty
// digits (Boost.Multiprecision, cpp_dec_float), whose arithmetic is another one than the fractions of the library.
#include <seatload/record/landed_cost.hpp>

#include <boost/multiprecision/cpp_dec_float.hpp>
#include <seatload/record/exchange.hpp>
#include <support/check.hpp>

using namespace seatload;
using namespace seatload::record;

namespace {

Money money(std::int64_t ten_thousandths) { return Money{ten_thousandths}; }

Offer offer_of(std::vector<Price> prices) {
    Offer offer;
    offer.alternative = "A";
    offer.prices = std::move(prices);
    return offer;
}

std::vector<int> pieces_of(const std::vector<LandedCost>& ways) {
    std::vector<int> pieces;
    for (const LandedCost& way : ways) pieces.push_back(way.pieces);
    return pieces;
}

}  // namespace

TEST_CASE("A lot at home costs its price, set-up, tooling and charges, and the tax on all of them") {
    // 50 x 2.40 = 120.00; + 45.00 + 60.00 = 225.00; + 12.50 + 8.00 + 18.50 = 264.00; 20 % of it 52.80; in all 316.80.
    // A piece 316.80 / 50 = 6.336. A later lot without the tooling: (264.00 - 60.00) x 1.20 = 244.80.
    Offer offer = offer_of({{50, money(24000), money(450000), LeadTime{4, LeadUnit::weeks}}});
    offer.tooling = money(600000);
    const Charges charges{money(80000), money(185000), money(125000), {}, {}, Share{0.2}};
    const LandedCost cost = landed_cost(charges, offer, offer.prices[0], 50, {});
    CHECK(lot_text(cost.price) == "120.00");
    CHECK(lot_text(cost.set_up) == "45.00");
    CHECK(lot_text(cost.tooling) == "60.00");
    CHECK(lot_text(cost.duty) == "0.00");
    CHECK(lot_text(cost.tax) == "52.80");
    CHECK(lot_text(cost.total) == "316.80");
    CHECK(piece_text(cost.each()) == "6.336");
    CHECK(lot_text(cost.again) == "244.80");
    CHECK(cost.lead_time == LeadTime{4, LeadUnit::weeks});
    const LandedCost without_tax = landed_cost(charges, offer, offer.prices[0], 50, {1, true});
    CHECK(lot_text(without_tax.total) == "264.00");
}

TEST_CASE("Duty counts on goods and charges, tax on those with the duty, and all at the stated rate") {
    // 100 x 1.385 = 138.50; + 30.00 set-up + 4.25 packing + 22.00 carriage = 194.75; 3.5 % duty 6.81625; together
    // 201.56625; 21 % tax 42.3289125; in all 243.8951625 GBP; at 1.1725: 243.8951625 + 0.1725 x 243.8951625 =
    // 243.8951625 + 42.07191553125 = 285.96707803125. A piece 2.8596707803125.
    const Offer offer = offer_of({{100, money(13850), money(300000), {}}});
    const Charges charges{money(42500), money(220000), {}, {}, Share{0.035}, Share{0.21}};
    const auto rate = read_exchange_rate("gbp = 1.1725");
    REQUIRE(rate.has_value());
    CHECK(rate->currency == "GBP");
    const LandedCost cost = landed_cost(charges, offer, offer.prices[0], 100, {rate->worth, false});
    CHECK(lot_text(cost.total) == "285.97");
    CHECK(piece_text(cost.each()) == "2.860");
    CHECK(rounded_text(cost.total, 11) == "285.96707803125");
    CHECK(rounded_text(cost.duty, 10) == "7.9920531250");  // 6.81625 x 1.1725 = 7.992053125
}

TEST_CASE("Nothing is rounded before it is shown, and halves are then rounded up") {
    CHECK(rounded_text(exact(money(1250)), 2) == "0.13");
    CHECK(rounded_text(exact(money(1249)), 2) == "0.12");
    CHECK(rounded_text(exact(money(5)), 3) == "0.001");
    CHECK(rounded_text(exact(money(9999999)), 2) == "1000.00");
    CHECK(rounded_text(Exact(1) / 3, 3) == "0.333");
    CHECK(rounded_text(Exact(2) / 3, 3) == "0.667");
    // Three lots of 0.335 are 1.005 and show as 1.01, where 0.34 each would make 1.02.
    CHECK(lot_text(exact(money(3350)) * 3) == "1.01");
    // 0.1 + 0.2 is 0.3; 3.5 % is 35 thousandths, which no binary fraction is.
    CHECK(exact(money(1000)) + exact(money(2000)) == exact(money(3000)));
    CHECK(exact(Share{0.035}) == Exact(35) / 1000);
}

TEST_CASE("Landed costs agree with decimal floating point of fifty digits") {
    using Decimal = boost::multiprecision::cpp_dec_float_50;
    const Decimal parts = 10000;
    for (const int pieces : {1, 7, 20, 50, 333, 100000})
        for (const std::int64_t unit : {1L, 3850L, 13850L, 99999999L})
            for (const std::int64_t fixed : {0L, 42501L, 1200000L})
                for (const double share : {0.0, 0.027, 0.035, 0.2}) {
                    CAPTURE(pieces, unit, fixed, share);
                    Offer offer = offer_of({{pieces, money(unit), money(fixed), {}}});
                    offer.tooling = money(fixed + 7);
                    const Charges charges{money(fixed), money(95000), money(1), {}, Share{share}, Share{0.19}};
                    const auto rate = read_exchange_rate("CHF=1.0649");
                    const LandedCost cost = landed_cost(charges, offer, offer.prices[0], pieces, {rate->worth, false});
                    const Decimal net = (Decimal(unit) * pieces + Decimal(3 * fixed + 7 + 95000 + 1)) / parts;
                    const Decimal duty = net * Decimal(static_cast<int>(share * 1000.0 + 0.5)) / 1000;
                    const Decimal total = (net + duty) * Decimal("1.19") * Decimal("1.0649");
                    const Decimal found = cost.total.convert_to<Decimal>();
                    CHECK(abs(found - total) <= Decimal("1e-40") * (total + 1));
                    const Decimal cents = floor(total * 100 + Decimal("0.5"));
                    CHECK(Decimal(lot_text(cost.total)) * 100 == cents);
                }
}

TEST_CASE("A larger lot is bought where it costs less than a smaller one") {
    // 50 x 1.20 + 20.00 = 80.00; 100 x 0.55 + 20.00 = 75.00.
    const Offer offer = offer_of({{100, money(5500), money(200000), {}}, {50, money(12000), money(200000), {}}});
    const auto ways = purchases({}, offer, 50, {});
    CHECK(pieces_of(ways) == std::vector<int>{50, 100});
    CHECK(lot_text(ways[0].total) == "80.00");
    CHECK(lot_text(ways[1].total) == "75.00");
    CHECK(cheapest(ways)->pieces == 100);
}

TEST_CASE("The price of a quantity holds up to the next one quoted, and the smallest quoted for no fewer") {
    const Offer offer = offer_of({{20, money(30000), {}, {}}, {50, money(20000), {}, {}}});
    // 30 are 30 x 3.00 = 90.00, or 50 x 2.00 = 100.00; 60 are 60 x 2.00.
    CHECK(pieces_of(purchases({}, offer, 30, {})) == std::vector<int>{30, 50});
    CHECK(cheapest(purchases({}, offer, 30, {}))->priced_as == 20);
    CHECK(pieces_of(purchases({}, offer, 60, {})) == std::vector<int>{60});
    CHECK(pieces_of(purchases({}, offer, 5, {})) == std::vector<int>{20, 50});
    // From 50 on it is the price for 50, and never the dearer one for 20.
    CHECK(pieces_of(purchases({}, offer, 50, {})) == std::vector<int>{50});
}

TEST_CASE("Of equal costs the way with fewer pieces is taken") {
    const Offer offer = offer_of({{20, money(30000), {}, {}}, {30, money(20000), {}, {}}});
    CHECK(cheapest(purchases({}, offer, 20, {}))->pieces == 20);
}

TEST_CASE("A least order and a least number of pieces are reached by ordering more") {
    // Set-up 30.00 and 1.00 a piece: 100.00 are reached with 70 pieces. At 0.30 a piece without set-up 10.00 needs
    // 33.3 pieces, so 34.
    Offer offer = offer_of({{20, money(10000), money(300000), {}}});
    Charges charges;
    charges.least_order = money(1000000);
    CHECK(pieces_of(purchases(charges, offer, 20, {})) == std::vector<int>{70});
    CHECK(minimum_missed(charges, offer, offer.prices[0], 69).order == money(1000000));
    CHECK_FALSE(minimum_missed(charges, offer, offer.prices[0], 70).is_stated());
    offer = offer_of({{10, money(3000), {}, {}}});
    charges.least_order = money(100000);
    CHECK(pieces_of(purchases(charges, offer, 10, {})) == std::vector<int>{34});
    offer.least_pieces = 40;
    CHECK(pieces_of(purchases(charges, offer, 10, {})) == std::vector<int>{40});
    CHECK(minimum_missed(charges, offer, offer.prices[0], 39).pieces == 40);
}

TEST_CASE("Free pieces never reach a least order, and an offer without prices cannot be bought") {
    const Offer free_ones = offer_of({{10, money(0), {}, {}}});
    Charges charges;
    charges.least_order = money(1);
    CHECK(purchases(charges, free_ones, 10, {}).empty());
    CHECK(purchases({}, offer_of({{10, {}, money(5), {}}}), 10, {}).empty());
    CHECK_FALSE(cheapest({}).has_value());
}

TEST_CASE("What may raise a cost is open until the maker states it, be it as nothing") {
    using Names = std::vector<std::string>;
    const Price bare{50, money(24000), {}, {}};
    const Price full{50, money(24000), money(0), {}};
    const Charges no_tax{money(0), money(0), money(0), {}, {}, {}};
    const Charges all{money(0), money(0), money(0), {}, Share{0.0}, Share{0.0}};
    CHECK(open_charges({}, bare, {}) == Names{"packing", "carriage", "certificate", "tax", "lot charge"});
    CHECK(open_charges(no_tax, full, {}) == Names{"tax"});
    CHECK(open_charges(no_tax, full, {1, true}).empty());
    CHECK(open_charges(no_tax, full, {1, true, true}) == Names{"duty"});
    CHECK(open_charges(all, full, {1, false, true}).empty());
}

TEST_CASE("Tooling that is not stated leaves the first lot open, and no later one") {
    Offer offer = offer_of({{50, money(24000), money(0), {}}});
    const Charges all{money(0), money(0), money(0), {}, Share{0.0}, Share{0.0}};
    CHECK(landed_cost(all, offer, offer.prices[0], 50, {}).open == std::vector<std::string>{"tooling"});
    CHECK(landed_cost(all, offer, offer.prices[0], 50, {}).open_again.empty());
    offer.tooling = money(0);
    CHECK(landed_cost(all, offer, offer.prices[0], 50, {}).open.empty());
}

TEST_CASE("A rate is digits with a point behind a currency, more than nothing") {
    CHECK(read_exchange_rate("USD=0.9")->worth == Exact(9) / 10);
    CHECK(read_exchange_rate("JPY=0.0061")->worth == Exact(61) / 10000);
    CHECK(read_exchange_rate("USD = 012.50")->worth == Exact(25) / 2);
    for (const char* wrong : {"USD", "USD=", "=1.2", "US=1", "USD=1,2", "USD=0", "USD=-1", "USD=1e2", "USD=1.",
                              "USD=.5", "USD=1.1234567891", "US1=1.2", "USD=1 2"}) {
        CAPTURE(wrong);
        CHECK_FALSE(read_exchange_rate(wrong).has_value());
    }
}
