// SPDX-License-Identifier: MIT
// Every kind of file that we write: what is written is read without complaint, and is then written the same; numbers
// come back to the last bit.
#include <fmt/format.h>

#include <seatload/core/sha256.hpp>
#include <seatload/core/text.hpp>
#include <seatload/io/kept_spec_file.hpp>
#include <seatload/io/lot_file.hpp>
#include <seatload/io/reply_file.hpp>
#include <seatload/io/spec_file.hpp>
#include <seatload/io/spring_file.hpp>

#include "property/property.hpp"
#include "support/kept_specimen.hpp"

using namespace seatload;
using namespace seatload::property;
using test::wires;

namespace {

std::string day() { return fmt::format("20{:02}-{:02}-{:02}", whole(0, 100), whole(1, 13), whole(1, 29)); }

template <class Draw>
auto maybe(Draw draw) -> std::optional<decltype(draw())> {
    if (!yes()) return std::nullopt;
    return draw();
}

/// What was read, which must be there.
template <class T>
T sound(Result<T> read, const std::string& text) {
    if (!read.has_value()) RC_FAIL(render(read.error()) + text);
    return std::move(read).value();
}

spring::Spring drawn_spring() {
    const double d = number(0.3, 10.0);
    spring::Spring s;
    s.wire_diameter = d * mm;
    s.mean_diameter = d * number(3.0, 20.0) * mm;
    s.total_coils = number(3.0, 40.0);
    s.free_length = number(10.0, 500.0) * mm;
    s.ends = one_of<spring::Ends>(
        {spring::Ends::closed_ground, spring::Ends::closed, spring::Ends::open, spring::Ends::open_ground});
    s.hand = one_of<spring::Hand>({spring::Hand::right, spring::Hand::left});
    return s;
}

void assert_same(const spring::Spring& a, const spring::Spring& b) {
    RC_ASSERT(in_mm(a.wire_diameter) == in_mm(b.wire_diameter));
    RC_ASSERT(in_mm(a.mean_diameter) == in_mm(b.mean_diameter));
    RC_ASSERT(a.total_coils == b.total_coils);
    RC_ASSERT(in_mm(a.free_length) == in_mm(b.free_length));
    RC_ASSERT(a.ends == b.ends);
    RC_ASSERT(a.hand == b.hand);
}

record::LoadAtLength drawn_load() {
    return {number(1.0, 200.0) * mm, number(0.01, 900.0) * newton, number(0.0, 9.0) * newton, number(0.0, 9.0) * newton,
            maybe([] { return whole(1, 4); })};
}

demand::Fit drawn_fit() {
    const double low = number(1.0, 300.0);
    return {low * mm, (low + number(0.0, 1.0)) * mm, low * mm};
}

void draw_limits(demand::Limits& l) {
    l = demand::school_defaults(yes() ? spring::School::en_13906 : spring::School::handbook);
    l.stress_share = maybe([] { return number(0.1, 0.9); });
    l.buckling_margin = number(1.0, 3.0);
    l.bore_clearance = number(0.0, 1.0) * mm;
    l.load_loss = maybe([] { return Share{number(0.0, 0.5)}; });
    l.coil_step = maybe([] { return number(0.1, 1.0); });
    l.longest_free_length = maybe([] { return number(1.0, 900.0) * mm; });
    l.heed_service_limit = yes();
    l.largest_mass = maybe([] { return number(0.1, 1000.0) * gram; });
}

record::Spec drawn_spec() {
    record::Spec spec = io::read_spec(test::specimen_text(), "specimen", wires()).value();
    spec.identity = {words(9), words(9), "OM14-" + std::to_string(whole(0, 9999)), "B", day(), words(9),
                     words(9), words(9)};
    spec.revisions.clear();
    spec.title = words(9);
    spec.why = words(9);
    spec.wire_grade = "EN10270-1-SH";
    spec.spring = drawn_spring();
    spec.bore_rules = yes();
    spec.seated = drawn_load();
    spec.full_travel = drawn_load();
    spec.seated_demand = {number(0.1, 9.0) * newton, number(9.0, 90.0) * newton};
    spec.full_travel_demand = {std::nullopt, maybe([] { return number(1.0, 90.0) * newton; })};
    spec.diameter_grade = whole(1, 4);
    spec.squareness_grade = whole(1, 4);
    spec.space.bore = maybe(drawn_fit);
    spec.space.rod = maybe(drawn_fit);
    spec.duty = {maybe([] { return number(1.0, 1e9); }), std::nullopt, yes()};
    spec.surroundings = {{number(-60.0, 200.0)}, words(5)};
    draw_limits(spec.limits);
    spec.quantities = {whole(1, 9999)};
    spec.finish = words(9);
    spec.notes = {words(9), words(20)};
    return spec;
}

std::optional<record::Money> money() {
    return maybe([] { return record::Money{whole(0, 2'000'000'000)}; });
}

/// What a maker writes into the form, which is read without blanks at its ends.
std::string answer(int most_pieces) { return std::string(trim(words(most_pieces))); }

record::Offer drawn_offer(const std::string& letter, const std::vector<int>& quantities) {
    record::Offer offer;
    offer.alternative = letter;
    offer.tooling = money();
    offer.least_pieces = maybe([] { return whole(1, 1000); });
    offer.wire = {answer(6), maybe([] { return number(0.1, 20.0) * mm; }),
                  maybe([] { return number(300.0, 3000.0) * MPa; })};
    offer.changes.outside_diameter = maybe([] { return number(1.0, 200.0) * mm; });
    offer.changes.total_coils = maybe([] { return number(2.0, 60.0); });
    offer.changes.free_length = maybe([] { return number(1.0, 900.0) * mm; });
    offer.changes.load_grade = maybe([] { return whole(1, 4); });
    offer.changes.note = answer(12);
    for (const int quantity : quantities)
        offer.prices.push_back({quantity, record::Money{whole(1, 2'000'000'000)}, money(), maybe([] {
                                    return record::LeadTime{whole(1, 99), record::LeadUnit::working_days};
                                })});
    return offer;
}

record::Reply drawn_reply() {
    record::Reply reply;
    const int first = whole(1, 5000);
    reply.enquiry = {answer(4), answer(1), answer(9), {"A", "B"}, {first, 2 * first}, {}, ""};
    reply.maker = {"Maker" + answer(6), answer(6), answer(6), "2026-12-01", "2027-01-31", "EUR", answer(6), answer(6)};
    reply.charges = {money(), money(), money(), money(), maybe([] { return Share{number(0.0, 0.9)}; }), maybe([] {
                         return Share{number(0.0, 0.9)};
                     })};
    for (const char* letter : {"A", "B"}) reply.offers.push_back(drawn_offer(letter, reply.enquiry.quantities));
    return reply;
}

record::LotCharacteristic drawn_characteristic() {
    record::LotCharacteristic c;
    c.kind = one_of(std::vector<inspection::Kind>(inspection::kKinds.begin(), inspection::kKinds.end()));
    c.limits = {maybe([] { return number(0.1, 5.0); }), maybe([] { return number(5.0, 50.0); })};
    c.uncertainty = number(0.0, 1.0);
    c.decides = yes();
    c.inside = whole(0, 100);
    c.unproven = whole(0, 100);
    c.outside = whole(0, 100);
    c.mean = maybe([] { return number(0.1, 50.0); });
    c.deviation = maybe([] { return number(0.0, 1.0); });
    c.verdict = one_of<inspection::Verdict>({inspection::Verdict::accept, inspection::Verdict::not_proven});
    return c;
}

record::Lot drawn_lot() {
    record::Lot lot;
    lot.spec = {words(4), words(1), std::string(64, 'c')};
    lot.name = words(9);
    lot.date = day();
    lot.maker = words(9);
    lot.pieces = whole(1, 10000);
    lot.inspected = whole(0, 10000);
    lot.plan = words(9);
    lot.reasons = {words(9)};
    lot.conditions = {words(9)};
    lot.remarks = {words(9), words(9)};
    for (int left = whole(0, 5); left > 0; --left) lot.characteristics.push_back(drawn_characteristic());
    return lot;
}

}  // namespace

TEST_CASE("A spring file of any numbers is read back to the last bit and written the same") {
    holds("spring", [] {
        record::SpringFile file;
        file.name = words(9);
        file.wire_grade = "EN10270-1-SH";
        file.spring = drawn_spring();
        file.surroundings = {{number(-60.0, 200.0)}, words(5)};
        const std::string text = io::write_spring(file, {"drawn"});
        const auto again = sound(io::read_spring(text, "x.toml", wires()), text);
        assert_same(again.spring, file.spring);
        RC_ASSERT(again.name == file.name);
        RC_ASSERT(again.surroundings.temperature == file.surroundings.temperature);
        RC_ASSERT(io::write_spring(again, {"drawn"}) == text);
    });
}

TEST_CASE("A spec of any numbers and words is read back to the last bit and written the same") {
    holds("spec", [] {
        const record::Spec spec = drawn_spec();
        const std::string text = io::write_spec(spec);
        const auto again = sound(io::read_spec(text, "x.toml", wires()), text);
        assert_same(again.spring, spec.spring);
        RC_ASSERT(in_newton(again.seated.nominal) == in_newton(spec.seated.nominal));
        RC_ASSERT(in_newton(again.full_travel.plus) == in_newton(spec.full_travel.plus));
        RC_ASSERT(again.limits.buckling_margin == spec.limits.buckling_margin);
        RC_ASSERT(again.notes == spec.notes);
        RC_ASSERT(again.identity.engine == spec.identity.engine);
        RC_ASSERT(io::write_spec(again) == text);
    });
}

TEST_CASE("A kept spec keeps the bytes of its spec and any history of words") {
    holds("kept spec", [] {
        record::Step draft;
        draft.date = "2026-11-25";
        draft.by = "A" + words(9);
        draft.sha256 = sha256_hex(test::specimen_text());
        draft.note = words(20);
        record::Step evidence = draft;
        evidence.kind = record::Step::Kind::evidence;
        evidence.trial_hours = number(0.1, 9000.0);
        evidence.conditions = {words(9), words(9)};
        const record::History history{draft, evidence};
        const std::string text = io::write_kept_spec(test::specimen_text(), history);
        const auto again = sound(io::read_kept_spec(text, "x.toml", wires()), text);
        RC_ASSERT(again.content == test::specimen_text());
        RC_ASSERT(again.history.back().trial_hours == evidence.trial_hours);
        RC_ASSERT(again.history.front().note == draft.note);
        RC_ASSERT(again.history.back().conditions == evidence.conditions);
        RC_ASSERT(!again.has_foreign_states);
        RC_ASSERT(sound(io::read_kept_spec(text + "# a remark\n", "x.toml", wires()), text).has_foreign_states);
        RC_ASSERT(io::write_kept_spec(again.content, again.history) == text);
    });
}

TEST_CASE("A maker's reply of any amounts and words is read back and written the same") {
    holds("reply", [] {
        const record::Reply reply = drawn_reply();
        const std::string text = io::write_reply(reply);
        const auto again = sound(io::read_reply(text, "x.toml"), text);
        RC_ASSERT(again.offers.size() == reply.offers.size());
        RC_ASSERT(again.offers[0].tooling == reply.offers[0].tooling);
        RC_ASSERT(again.offers[1].prices[1].unit_price == reply.offers[1].prices[1].unit_price);
        RC_ASSERT(again.offers[0].changes.total_coils == reply.offers[0].changes.total_coils);
        RC_ASSERT(io::write_reply(again) == text);
    });
}

TEST_CASE("The record of a lot of any numbers is read back to the last bit and written the same") {
    holds("lot", [] {
        const record::Lot lot = drawn_lot();
        const std::string text = io::write_lot(lot);
        const auto again = sound(io::read_lot(text, "x.toml"), text);
        RC_ASSERT(again.characteristics.size() == lot.characteristics.size());
        for (std::size_t i = 0; i < lot.characteristics.size(); ++i) {
            RC_ASSERT(again.characteristics[i].limits == lot.characteristics[i].limits);
            RC_ASSERT(again.characteristics[i].mean == lot.characteristics[i].mean);
        }
        RC_ASSERT(again.reasons == lot.reasons);
        RC_ASSERT(io::write_lot(again) == text);
    });
}
