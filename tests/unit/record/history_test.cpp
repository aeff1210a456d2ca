// SPDX-License-Identifier: MIT
// States of kept specs, what may be approved, and what is told of a spring that no longer comes out as it did.
#include <algorithm>
#include <cmath>

#include <seatload/core/sha256.hpp>
#include <seatload/core/text.hpp>
#include <seatload/io/spec_file.hpp>
#include <seatload/record/approval.hpp>
#include <seatload/record/drift.hpp>
#include <seatload/record/shelf.hpp>
#include <seatload/record/specify.hpp>
#include <support/builtin.hpp>
#include <support/check.hpp>
#include <support/kept_specimen.hpp>

using namespace seatload;
using inspection::Verdict;
using record::State;
using record::Step;

namespace {

Step step(Step::Kind kind) {
    Step s;
    s.kind = kind;
    s.sha256 = "frozen";
    return s;
}

record::KeptRevision revision(const std::string& index, std::vector<Step::Kind> kinds) {
    record::KeptRevision r;
    r.kept.spec.identity.revision = index;
    for (const Step::Kind kind : kinds) r.kept.history.push_back(step(kind));
    return r;
}

check::Evaluation evaluated(const record::Spec& spec) {
    return check::evaluate(spec.spring, *test::wires().find(spec.wire_grade), record::requirement_of(spec),
                           test::tolerances())
        .value();
}

record::Lot lot_of(const record::KeptSpec& kept, Verdict verdict) {
    record::Lot lot;
    lot.spec = {kept.spec.identity.number, kept.spec.identity.revision, kept.sha256};
    lot.verdict = verdict;
    return lot;
}

std::vector<record::Refusal> refusals(const record::KeptSpec& kept, const record::Lot& lot,
                                      const std::string& reason = {}) {
    return record::approval_refusals(kept, evaluated(kept.spec), {{{"lot.toml", lot}}, "", reason});
}

}  // namespace

TEST_CASE("revisions are counted on in letters without I and O, or in numbers") {
    CHECK(record::next_index("") == "A");
    CHECK(record::next_index("A") == "B");
    CHECK(record::next_index("H") == "J");
    CHECK(record::next_index("N") == "P");
    CHECK(record::next_index("Z") == "AA");
    CHECK(record::next_index("AZ") == "BA");
    CHECK(record::next_index("ZZ").empty());
    CHECK(record::next_index("9") == "10");
    CHECK(record::next_index("99").empty());
    CHECK(record::next_index("a").empty());
}

TEST_CASE("a later approval supersedes an earlier one, a draft does not") {
    record::Shelf shelf;
    shelf.revisions = {revision("B", {Step::Kind::draft}), revision("A", {Step::Kind::draft, Step::Kind::approved})};
    record::settle(shelf);
    REQUIRE(shelf.in_force() != nullptr);
    CHECK(shelf.in_force()->index() == "A");
    CHECK(shelf.latest()->index() == "B");
    shelf.revisions.back().kept.history.push_back(step(Step::Kind::trial));
    record::settle(shelf);
    CHECK(shelf.revision("A")->state == State::approved);
    shelf.revisions.back().kept.history.push_back(step(Step::Kind::approved));
    record::settle(shelf);
    CHECK(shelf.revision("A")->state == State::superseded);
    CHECK(shelf.in_force()->index() == "B");
}

TEST_CASE("a withdrawn revision brings no earlier one back into force") {
    record::Shelf shelf;
    shelf.revisions = {
        revision("A", {Step::Kind::draft, Step::Kind::approved}),
        revision("B", {Step::Kind::draft, Step::Kind::approved, Step::Kind::withdrawn}),
    };
    record::settle(shelf);
    CHECK(shelf.revision("A")->state == State::superseded);
    CHECK(shelf.revision("B")->state == State::withdrawn);
    CHECK(shelf.in_force() == nullptr);
}

TEST_CASE("a trial given up for a later revision is superseded, and revisions stand in the order of their indices") {
    record::Shelf shelf;
    for (const char* index : {"AA", "C", "A", "B"}) shelf.revisions.push_back(revision(index, {Step::Kind::draft}));
    shelf.revisions[2].kept.history.push_back(step(Step::Kind::trial));
    record::settle(shelf);
    std::string order;
    for (const record::KeptRevision& r : shelf.revisions) order += r.index() + ' ';
    CHECK(order == "A B C AA ");
    CHECK(shelf.revision("A")->state == State::superseded);
    CHECK(shelf.latest()->state == State::draft);
}

TEST_CASE("evidence changes no state, and hours in engines add up") {
    record::History history{step(Step::Kind::draft), step(Step::Kind::trial), step(Step::Kind::evidence)};
    history[1].trial_hours = 12.0;
    history[2].trial_hours = 30.5;
    CHECK(record::state_of(history) == State::trial);
    CHECK(record::trial_hours(history) == 42.5);
    CHECK(record::frozen_sha256(history) == "frozen");
    history.resize(1);
    CHECK_FALSE(record::frozen_sha256(history).has_value());
}

TEST_CASE("an accepted lot of this very spec, or a reason, lets it be approved, and nothing less") {
    const record::KeptSpec kept = test::kept_specimen();
    CHECK(refusals(kept, lot_of(kept, Verdict::accept)).empty());
    CHECK(record::approval_refusals(kept, evaluated(kept.spec), {{}, "", "as supplied for years"}).empty());
    CHECK(record::approval_refusals(kept, evaluated(kept.spec), {}).size() == 1);
    CHECK_FALSE(refusals(kept, lot_of(kept, Verdict::not_proven)).empty());
    CHECK(refusals(kept, lot_of(kept, Verdict::not_proven), "gauge at the calibrator's").empty());
}

TEST_CASE("a rejected lot, or one of another number, revision or content, lets nothing be approved") {
    const record::KeptSpec kept = test::kept_specimen();
    CHECK_FALSE(refusals(kept, lot_of(kept, Verdict::reject), "in a hurry").empty());
    record::Lot lot = lot_of(kept, Verdict::accept);
    lot.spec.number = "OM14-LAT-AST";
    CHECK_FALSE(refusals(kept, lot, "in a hurry").empty());
    lot = lot_of(kept, Verdict::accept);
    lot.spec.revision = "B";
    CHECK_FALSE(refusals(kept, lot, "in a hurry").empty());
    lot = lot_of(kept, Verdict::accept);
    lot.spec.sha256 = sha256_hex("another content");
    CHECK_FALSE(refusals(kept, lot, "in a hurry").empty());
    const check::Evaluation evaluation = evaluated(kept.spec);
    CHECK(record::approval_refusals(kept, evaluation, {{{"lot.toml", lot}}, lot.spec.sha256, ""}).empty());
}

TEST_CASE("a lot that is accepted after a rejected one counts in its place, one from before does not") {
    const record::KeptSpec kept = test::kept_specimen();
    const auto lot = [&](Verdict verdict, std::size_t step, const std::string& date = "") {
        record::LotEvidence evidence{"lot.toml", lot_of(kept, verdict), step};
        evidence.lot.date = date;
        return evidence;
    };
    const auto is_approved = [&](const std::vector<record::LotEvidence>& lots) {
        return record::approval_refusals(kept, evaluated(kept.spec), {lots, "", ""}).empty();
    };
    CHECK(is_approved({lot(Verdict::accept, 2), lot(Verdict::reject, 1)}));
    CHECK(is_approved({lot(Verdict::accept, 2), lot(Verdict::not_proven, 1)}));
    CHECK(is_approved({lot(Verdict::accept, 3), lot(Verdict::reject, 1), lot(Verdict::reject, 2)}));
    CHECK_FALSE(is_approved({lot(Verdict::reject, 2), lot(Verdict::accept, 1)}));
    CHECK_FALSE(is_approved({lot(Verdict::accept, 1), lot(Verdict::reject, 1)}));
    // A record that is kept later and was made earlier is of an earlier lot.
    CHECK_FALSE(is_approved({lot(Verdict::accept, 2, "2027-01-04"), lot(Verdict::reject, 1, "2027-02-01")}));
    CHECK(is_approved({lot(Verdict::accept, 2, "2027-02-01"), lot(Verdict::reject, 2, "2027-01-04")}));
    CHECK_FALSE(is_approved({lot(Verdict::accept, 2, "2027-02-01"), lot(Verdict::reject, 2, "2027-02-01")}));
}

TEST_CASE("a lot of another content overcomes nothing, and is overcome by a later one of the spec itself") {
    const record::KeptSpec kept = test::kept_specimen();
    record::Lot other = lot_of(kept, Verdict::accept);
    other.spec.sha256 = sha256_hex("another content");
    const record::LotEvidence strange{"strange.toml", other, 1};
    const auto refused = [&](const std::vector<record::LotEvidence>& lots) {
        return record::approval_refusals(kept, evaluated(kept.spec), {lots, "", ""}).size();
    };
    CHECK(refused({strange}) == 2);  // and none that is good
    CHECK(refused({strange, {"good.toml", lot_of(kept, Verdict::accept), 2}}) == 0);
    CHECK(refused({{"bad.toml", lot_of(kept, Verdict::reject), 0}, strange}) == 3);
}

TEST_CASE(
    "conditions of the lots an approval rests on are gathered once each, and fall away with a lot that has none") {
    using Words = std::vector<std::string>;
    const record::KeptSpec kept = test::kept_specimen();
    const auto on = [&](const Words& wanted, Verdict verdict = Verdict::accept) {
        record::LotEvidence evidence{"lot.toml", lot_of(kept, verdict)};
        evidence.lot.conditions = wanted;
        return evidence;
    };
    const auto conditions = [&](std::vector<record::LotEvidence> lots) {
        return record::conditions_of(kept, {std::move(lots), "", ""});
    };
    CHECK(conditions({on({"tips"}), on({"tips", "length"})}) == Words{"tips", "length"});
    CHECK(conditions({on({"tips"}), on({})}).empty());
    CHECK(conditions({on({"tips"}), on({}, Verdict::not_proven)}) == Words{"tips"});
    CHECK(conditions({}).empty());
}

TEST_CASE("a spring that breaks a limit of its own is not approved, whatever the lot") {
    record::KeptSpec kept = test::kept_specimen();
    kept.spec.seated_demand.at_least = 5.9 * newton;  // it gives 5.76 N
    const auto why = refusals(kept, lot_of(kept, Verdict::accept), "in a hurry");
    REQUIRE(why.size() == 1);
    CHECK(why.front().kind == record::Refusal::Kind::own_limit);
    CHECK_THAT(why.front().why, ContainsSubstring("limit of its own"));
}

TEST_CASE("a trial whose content was changed is not approved") {
    record::KeptSpec kept = test::kept_specimen();
    kept.history = {step(Step::Kind::draft), step(Step::Kind::trial)};
    CHECK(kept.is_altered());
    CHECK_FALSE(refusals(kept, lot_of(kept, Verdict::accept)).empty());
}

TEST_CASE("nothing has moved of a spec worked out with the same data") {
    const record::Drift drift = record::drift_of(test::approved_specimen(), *test::wires().find("ASTM-A313-631-CH900"),
                                                 test::tolerances(), "now");
    CHECK_FALSE(drift.is_any());
    CHECK(drift.causes.empty());
}

TEST_CASE("a change of wire data is named as the cause of what moved") {
    const record::KeptSpec kept = test::approved_specimen();
    wire::Grade grade = *test::wires().find(kept.spec.wire_grade);
    for (wire::ModuliRow& row : grade.moduli) row.shear = 1.1 * row.shear;
    const record::Drift drift = record::drift_of(kept, grade, test::tolerances(), "now");
    // F = G d^4 s / (8 D^3 n): a tenth more of G gives a tenth more load (EN 13906-1).
    const auto load = std::find_if(drift.moved.begin(), drift.moved.end(),
                                   [](const record::Moved& m) { return m.kind->key == "seated_load"; });
    REQUIRE(load != drift.moved.end());
    CHECK_THAT(load->now / load->before, WithinRel(1.1, 1e-5));
    const std::string causes = join(drift.causes, "; ");
    CHECK_THAT(causes, ContainsSubstring("data of wire ASTM-A313-631-CH900"));
    CHECK_THAT(causes, ContainsSubstring("shear modulus G"));
    CHECK_THAT(causes, ContainsSubstring("comes out as it did"));
    CHECK(causes.find("worked out otherwise") == std::string::npos);
}

TEST_CASE("a change of formulas is told from one of data") {
    record::KeptSpec kept = test::approved_specimen();
    record::KeyResults& then = *kept.history.back().results;
    const auto kinds = record::result_kinds();
    for (std::size_t i = 0; i < kinds.size(); ++i)
        if (kinds[i].key == "rate") then.values[i] *= 1.01;
    then.program = "then";
    const record::Drift drift =
        record::drift_of(kept, *test::wires().find(kept.spec.wire_grade), test::tolerances(), "now");
    REQUIRE(drift.moved.size() == 1);
    CHECK_THAT(join(drift.causes, "; "), ContainsSubstring("by then then, by now now"));
}

TEST_CASE("of a spec that was edited since it was frozen nothing is told to have moved") {
    record::KeptSpec kept = test::approved_specimen();
    kept.history.back().results->values.front() *= 1.01;
    kept.sha256 = std::string(64, 'e');
    REQUIRE(kept.is_altered());
    const record::Drift drift =
        record::drift_of(kept, *test::wires().find(kept.spec.wire_grade), test::tolerances(), "now");
    CHECK_FALSE(drift.is_any());
    CHECK(drift.causes.empty());
}

TEST_CASE("weaker wire shows as a limit broken today") {
    const record::KeptSpec kept = test::approved_specimen();
    wire::Grade grade = *test::wires().find(kept.spec.wire_grade);
    const Length d = kept.spec.spring.wire_diameter;
    grade.strength = wire::StrengthGiven{900.0 * MPa, d, d};
    const record::Drift drift = record::drift_of(kept, grade, test::tolerances(), "now");
    CHECK_FALSE(drift.broken.empty());
    grade.strength = wire::StrengthGiven{900.0 * MPa, 2.0 * d, 3.0 * d};
    CHECK_FALSE(record::drift_of(kept, grade, test::tolerances(), "now").unusable.empty());
}
