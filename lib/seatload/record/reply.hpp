// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include <seatload/record/spec.hpp>

namespace seatload::record {

/// An amount in the currency of its reply, exact to a ten-thousandth: makers quote small springs in parts of a cent.
struct Money {
    std::int64_t ten_thousandths = 0;

    auto operator<=>(const Money&) const = default;
};

/// The amount with a point, two decimals or as many more (up to four) as it has: "2.40", "0.385".
std::string money_text(const Money& money);

enum class LeadUnit { days, working_days, weeks };

/// From the order to the goods leaving the maker.
struct LeadTime {
    int count = 0;
    LeadUnit unit = LeadUnit::weeks;

    bool operator==(const LeadTime&) const = default;
};

/// The days of the calendar a lead time takes, five working days to a week, a part of a day as a whole one.
int calendar_days(const LeadTime& time);

/// What a reply answers.
struct Enquired {
    std::string number;
    std::string revision;
    std::string title;
    std::vector<std::string> alternatives;  ///< the letters asked for
    std::vector<int> quantities;            ///< the lots asked for
    demand::Correspondence correspondence;  ///< with whom asked
    std::string mark;                       ///< SHA-256 of the specs that were enquired for; may be empty
};

struct Maker {
    std::string firm;
    std::string person;
    std::string quotation;    ///< the maker's own number of it
    std::string date;         ///< of the reply, ISO 8601; may be empty
    std::string valid_until;  ///< ISO 8601; may be empty
    std::string currency;     ///< three letters, ISO 4217
    std::string delivery_terms;
    std::string certificates;  ///< what comes with the lot, in words
};

/// What comes on top of every lot, whichever alternative is ordered; an absent amount was not stated.
struct Charges {
    std::optional<Money> packing;
    std::optional<Money> carriage;
    std::optional<Money> certificate;
    std::optional<Money> least_order;  ///< value below which the maker takes no order
    std::optional<Share> duty;
    std::optional<Share> tax;
};

/// The wire the maker would wind from; what is absent is as on the sheet.
struct HeldWire {
    std::string grade;  ///< an id of the catalogue or the maker's own words
    std::optional<Length> diameter;
    std::optional<Stress> tensile_strength;

    bool is_stated() const { return !grade.empty() || diameter || tensile_strength; }
};

/// What the maker would have otherwise than on the sheet.
struct AskedChanges {
    std::optional<Length> outside_diameter;
    std::optional<double> total_coils;
    std::optional<Length> free_length;
    std::optional<spring::Ends> ends;
    std::optional<int> load_grade;       ///< EN 15800
    std::optional<int> diameter_grade;   ///< EN 15800, of the coil diameter
    std::optional<double> tips_degrees;  ///< end tips from half a turn apart, plus-minus
    std::string note;

    bool is_stated() const {
        return outside_diameter || total_coils || free_length || ends || load_grade || diameter_grade || tips_degrees ||
               !note.empty();
    }
};

/// What a lot of so many pieces costs.
struct Price {
    int quantity = 0;                 ///< 0: to be filled in, as long as no price stands with it
    std::optional<Money> unit_price;  ///< a piece; absent: not quoted
    std::optional<Money> lot_charge;  ///< for setting up, with each lot
    std::optional<LeadTime> lead_time;
};

/// What a maker offers for one alternative.
struct Offer {
    std::string alternative;
    std::optional<Money> tooling;     ///< once, not with a repeated order
    std::optional<int> least_pieces;  ///< fewer are not wound
    HeldWire wire;
    AskedChanges changes;
    std::vector<Price> prices;

    bool is_quoted() const;
};

/// A maker's answer to an enquiry.
struct Reply {
    Enquired enquiry;
    Maker maker;
    Charges charges;
    std::vector<Offer> offers;

    bool is_quoted() const;
};

/// The reply before the maker has filled it in: an offer for each alternative, a price for each quantity (one of a
/// quantity left open where none is stated), all without answers. Number, revision, title and quantities are those of
/// `first`; nothing else of it is taken over.
Reply blank_reply(const Spec& first, const std::vector<std::string>& alternatives,
                  const demand::Correspondence& correspondence = {});

}  // namespace seatload::record
