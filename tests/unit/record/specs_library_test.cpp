// SPDX-License-Identifier: MIT
// That the specs kept in specs/ are whole, in all states, and still serve where they are to be put.
#include <filesystem>
#include <set>

#include <seatload/check/evaluation.hpp>
#include <seatload/core/sha256.hpp>
#include <seatload/inspection/verdict.hpp>
#include <seatload/io/lot_file.hpp>
#include <seatload/io/reply_file.hpp>
#include <seatload/io/requirement_file.hpp>
#include <seatload/io/spec_library.hpp>
#include <seatload/record/approval.hpp>
#include <seatload/record/drift.hpp>
#include <seatload/record/sought.hpp>
#include <support/builtin.hpp>
#include <support/check.hpp>

using namespace seatload;
using record::State;
namespace fs = std::filesystem;

namespace {

/// The library as it lies in the source folder.
struct Kept {
    io::SpecLibrary library;
    std::vector<record::Shelf> shelves;
};

Kept kept() {
    auto library =
        io::SpecLibrary::open(fs::path(SEATLOAD_SOURCE_DIR) / "specs", io::SpecLibrary::For::reading).value();
    const auto addresses = library.addresses();
    INFO(render(addresses.error()));
    REQUIRE(addresses.has_value());
    REQUIRE(addresses.error().empty());
    auto shelves = library.shelves(*addresses, test::wires(), true, 0);
    return {std::move(library), std::move(shelves)};
}

const wire::Grade& grade_of(const record::Spec& spec) {
    return spec.own_grade ? *spec.own_grade : *test::wires().find(spec.wire_grade);
}

}  // namespace

TEST_CASE("eight specs of two engines are kept, in all states and with all kinds of evidence") {
    const Kept all = kept();
    CHECK(all.shelves.size() == 8);
    std::set<std::string> engines, states;
    std::set<inspection::Verdict> verdicts;
    std::size_t files = 0;
    for (const record::Shelf& shelf : all.shelves) {
        engines.insert(shelf.address.engine);
        for (const record::KeptRevision& revision : shelf.revisions) {
            states.emplace(word(revision.state));
            for (const record::Step& step : revision.kept.history) {
                files += step.files.size();
                for (const record::KeptFile& file : step.lots)
                    verdicts.insert(
                        io::read_lot(all.library.beside(shelf.address, file.name).value(), file.name)->verdict);
            }
        }
    }
    CHECK(engines.size() == 2);
    CHECK(states == std::set<std::string>{"approved", "draft", "superseded", "trial", "withdrawn"});
    CHECK(verdicts.contains(inspection::Verdict::accept));
    CHECK(verdicts.contains(inspection::Verdict::reject));
    CHECK(files > 8);
}

TEST_CASE("every kept spec is as it was frozen, its evidence too, and comes out as when it was approved") {
    const Kept all = kept();
    for (const record::Shelf& shelf : all.shelves) {
        CAPTURE(shelf.address.text());
        INFO(render(shelf.wrong));
        REQUIRE(shelf.wrong.empty());
        for (const record::KeptRevision& revision : shelf.revisions) {
            CAPTURE(revision.index());
            CHECK_FALSE(revision.kept.is_altered());
            CHECK(record::address_of(revision.kept.spec.identity) == shelf.address);
            const record::Drift drift =
                record::drift_of(revision.kept, grade_of(revision.kept.spec), test::tolerances(), "now");
            CHECK(drift.moved.empty());
            CHECK(drift.broken.empty());
            CHECK(drift.unusable.empty());
            for (const record::Step& step : revision.kept.history)
                for (const auto* files : {&step.lots, &step.files})
                    for (const record::KeptFile& file : *files)
                        CHECK(sha256_hex(all.library.beside(shelf.address, file.name).value()) == file.sha256);
        }
    }
}

TEST_CASE("every kept spec fits the requirement kept with it") {
    const Kept all = kept();
    std::size_t judged = 0;
    for (const record::Shelf& shelf : all.shelves)
        for (const record::KeptRevision& revision : shelf.revisions)
            for (const record::Step& step : revision.kept.history)
                for (const record::KeptFile& file : step.files) {
                    const std::string text = all.library.beside(shelf.address, file.name).value();
                    if (text.find("\"seatload requirement 1\"") == std::string::npos) continue;
                    record::Sought sought;
                    sought.requirement = io::read_requirement(text, file.name, test::wires()).value();
                    const record::Spec& spec = revision.kept.spec;
                    const record::FoundSpring found = record::judged(spec, grade_of(spec), sought, test::tolerances());
                    CAPTURE(shelf.address.text(), revision.index(), file.name, found.misses, found.remarks);
                    CHECK(found.fits);
                    ++judged;
                }
    CHECK(judged >= all.shelves.size());
}

TEST_CASE("no lot, reply or requirement is dated after the state that it came in with") {
    const Kept all = kept();
    std::size_t lots = 0, replies = 0;
    for (const record::Shelf& shelf : all.shelves)
        for (const record::KeptRevision& revision : shelf.revisions)
            for (const record::Step& step : revision.kept.history) {
                CAPTURE(shelf.address.text(), revision.index(), step.date);
                for (const record::KeptFile& file : step.lots) {
                    CHECK(io::read_lot(all.library.beside(shelf.address, file.name).value(), file.name)->date <=
                          step.date);
                    ++lots;
                }
                for (const record::KeptFile& file : step.files) {
                    const std::string text = all.library.beside(shelf.address, file.name).value();
                    if (text.find("\"seatload requirement 1\"") != std::string::npos)
                        CHECK(io::read_requirement(text, file.name, test::wires())->identity.date <= step.date);
                    if (text.find("\"seatload reply 1\"") == std::string::npos) continue;
                    CHECK(io::read_reply(text, file.name)->maker.date <= step.date);
                    ++replies;
                }
            }
    CHECK(lots >= 6);
    CHECK(replies >= 3);
}

TEST_CASE("every approval rests on an accepted lot of that very spec, or says why it does without") {
    const Kept all = kept();
    std::size_t with_lot = 0, without = 0;
    for (const record::Shelf& shelf : all.shelves)
        for (const record::KeptRevision& revision : shelf.revisions) {
            const record::Step* approval = record::approval_of(revision.kept.history);
            if (approval == nullptr) continue;
            CAPTURE(shelf.address.text(), revision.index());
            bool accepted = false;
            for (const record::Step& step : revision.kept.history)
                for (const record::KeptFile& file : step.lots) {
                    const auto lot =
                        io::read_lot(all.library.beside(shelf.address, file.name).value(), file.name).value();
                    CHECK(record::not_of_this_spec(lot, revision.kept, "") == "");
                    accepted = accepted || lot.verdict == inspection::Verdict::accept;
                }
            CHECK(accepted == approval->reason.empty());
            (accepted ? with_lot : without) += 1;
        }
    CHECK(with_lot >= 2);
    CHECK(without >= 1);
}
