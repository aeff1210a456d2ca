// SPDX-License-Identifier: MIT
#include <seatload/spring/coils.hpp>
#include <seatload/spring/ends.hpp>

#include "support/check.hpp"

using namespace seatload::spring;

TEST_CASE("dead coils and solid lengths are those of the textbook table") {
    // Shigley, Table 10-1: end coils 0, 1, 2, 2; solid length d (Nt + 1), d Nt, d (Nt + 1), d Nt.
    struct Row {
        Ends ends;
        double dead, solid_wires;
    };
    for (const Row& row : {Row{Ends::open, 0.0, 9.5}, Row{Ends::open_ground, 1.0, 8.5}, Row{Ends::closed, 2.0, 9.5},
                           Row{Ends::closed_ground, 2.0, 8.5}}) {
        INFO(word(row.ends));
        CHECK(dead_coils(row.ends) == row.dead);
        CHECK(active_coils(row.ends, 8.5) == 8.5 - row.dead);
        CHECK(textbook_solid_wires(row.ends, 8.5) == row.solid_wires);
    }
}

TEST_CASE("the standard allows half a coil more for closed ends that are not ground") {
    // EN 13906-1 cl. 9.10 (memory): (nt + 1.5) dmax against the textbook's (nt + 1) d; the same for the other ends.
    for (const Ends ends : kAllEnds)
        CHECK(en_solid_wires(ends, 8.5) - textbook_solid_wires(ends, 8.5) == (ends == Ends::closed ? 0.5 : 0.0));
}

TEST_CASE("hot-coiled ends") {
    // EN 13906-1 cl. 9.10 (memory).
    CHECK(hot_coiled_solid_wires(true, 8.0) == 7.7);
    CHECK(hot_coiled_solid_wires(false, 8.0) == 9.1);
}

TEST_CASE("ends have the trade's words") {
    CHECK(word(Ends::open) == "open");
    CHECK(word(Ends::open_ground) == "open and ground");
    CHECK(word(Ends::closed) == "closed");
    CHECK(word(Ends::closed_ground) == "closed and ground");
    CHECK(word(Hand::right) == "right");
    CHECK(word(Hand::left) == "left");
    CHECK(word(School::en_13906) == "EN 13906-1");
    CHECK(word(School::handbook) == "handbook");
    for (const Ends ends : kAllEnds) {
        CHECK(are_ground(ends) == (word(ends).find("ground") != std::string_view::npos));
        CHECK(are_closed(ends) == (word(ends).find("closed") != std::string_view::npos));
    }
}
