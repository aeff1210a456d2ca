// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <seatload/demand/correspondence.hpp>
#include <seatload/demand/limits.hpp>
#include <seatload/demand/load_band.hpp>
#include <seatload/demand/plunger.hpp>
#include <seatload/demand/preference.hpp>
#include <seatload/demand/revision.hpp>
#include <seatload/spring/ends.hpp>
#include <seatload/units/quantities.hpp>
#include <seatload/wire/grade.hpp>

namespace seatload::demand {

/// How the two ends of the spring are held.
enum class Seats {
    fixed,       ///< both ends flat on parallel plates, held on the axis (nu = 0.5)
    pivots,      ///< one end flat, the other tilts about a point on the axis (nu = 0.7)
    both_pivot,  ///< both ends tilt about points on the axis (nu = 1)
    slides,      ///< flat and parallel, but one plate can move sideways (nu = 1)
    free_end,    ///< one end flat, the other free to tilt and move sideways (nu = 2)
    guided,      ///< a bore or rod keeps the spring straight: no buckling check
};

/// A bore or rod with its two size limits [mm].
struct Fit {
    Length smallest;
    Length largest;
    Length nominal;
};

struct LengthRange {
    Length smallest;
    Length largest;
};

/// The room the spring works in.
struct Space {
    std::optional<Fit> bore;
    std::optional<Fit> rod;
    Length seated_height;                    ///< L1
    Length full_travel_height;               ///< L2
    std::optional<LengthRange> free_length;  ///< envelope, when the free spring must fit somewhere
    Seats seats = Seats::fixed;
    std::optional<Length>
        sideways_play;  ///< how far a sliding plate can move off the axis; default: the spring's play in the bore
};

/// How often it works.
struct Duty {
    std::optional<double> cycles;        ///< absent: static
    std::optional<Frequency> frequency;  ///< of the motion that excites it
    bool peened = false;

    /// EN 13906-1 cl. 6.2: fewer than 1e4 cycles in all count as static (limit from memory).
    bool is_dynamic() const { return cycles && *cycles >= 1e4; }
};

struct Surroundings {
    Celsius temperature{};  ///< hottest the spring gets in service
    std::string medium;     ///< "engine oil"
};

/// Which wire may be used.
struct WireChoice {
    std::vector<std::string> grades;      ///< ids; empty: every grade of the catalogue
    std::vector<Length> diameters;        ///< empty: every stock size
    std::string series = "metric";        ///< stock series the sizes come from
    std::vector<wire::Grade> own_grades;  ///< wire described in the requirement itself
};

struct CountRange {
    double smallest = 0.0;
    double largest = 0.0;
};

/// The combinations looked at: multiples of each step inside each range.
struct Grid {
    Length mean_diameter_step = 0.05 * mm;
    double total_coils_step = 0.5;
    Length free_length_step = 0.1 * mm;
    std::optional<LengthRange> mean_diameter;  ///< absent: all that bore, rod and index 3 to 25 leave
    CountRange total_coils{3.0, 30.0};
    std::optional<LengthRange>
        free_length;  ///< absent: from seated height to three times seated height, cut to the envelope
};

/// Kinds of certificate for the wire that tell its properties (EN 10204:2004).
enum class Certificate {
    test_report,          ///< 2.2, results of like wire
    inspection,           ///< 3.1, results of this lot of wire
    inspection_by_third,  ///< 3.2, the same with someone else's signature
};

/// Who asks for it, where it sits and how many.
struct Identity {
    std::string engine;    ///< "Ottermere M14"
    std::string position;  ///< "ahead latch plunger"
    std::string number;    ///< part number, at most 16 characters (ISO 7200)
    std::string revision;  ///< at most 2 characters
    std::string date;      ///< date of issue, given, never the clock
    std::string owner;     ///< legal owner (ISO 7200)
    std::string creator;
    std::string approver;
};

/// What a mechanism demands of a spring.
struct Requirement {
    Identity identity;
    std::vector<Revision> revisions;  ///< of the part, the earliest first; the last is the identity's
    Space space;
    LoadBand seated_load;            ///< at L1
    LoadBand full_travel_load;       ///< at L2
    std::optional<Plunger> plunger;  ///< from which the loads were worked out
    Duty duty;
    Surroundings surroundings;
    std::vector<int> quantities;  ///< batches to quote
    std::string maker;            ///< whose limits are counted on, by name
    Correspondence correspondence;
    WireChoice wire;
    std::vector<spring::Ends> ends{spring::Ends::closed_ground};
    spring::Hand hand = spring::Hand::right;
    Grid grid;
    Limits limits;
    Preference preference;
    int load_grade = 2;  ///< EN 15800 grade the tolerance room is counted in
    int alternatives = 5;
    std::vector<std::string> notes;          ///< printed on the sheet
    std::string finish;                      ///< surface protection, as ordered
    std::optional<Certificate> certificate;  ///< of the wire; absent: the usual kind
};

}  // namespace seatload::demand
