// SPDX-License-Identifier: MIT
// The library of specs under processes killed at any moment, under several at once, and with ten thousand specs.
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <functional>
#include <iostream>
#include <sstream>
#include <thread>

#include <cli/session.hpp>
#include <cli/specs_actions.hpp>
#include <cli/specs_command.hpp>
#include <seatload/core/text.hpp>
#include <seatload/io/spec_library.hpp>
#include <support/check.hpp>
#include <support/kept_specimen.hpp>
#include <support/scratch_folder.hpp>

#include "process.hpp"

using namespace seatload;
using test::ScratchFolder;
using test::write_bytes;
namespace fs = std::filesystem;

namespace {

using Clock = std::chrono::steady_clock;

const record::Address kAhead{"ottermere-m14", "ahead-latch-plunger"};

const cli::References& references() {
    static const cli::References all = cli::load_references("").value();
    return all;
}

cli::SpecsOptions options(const fs::path& library, const std::string& action) {
    cli::SpecsOptions o;
    o.action = action;
    o.library = library.string();
    o.specs = {kAhead.text()};
    o.step.by = "A. Nkemelu";
    o.step.date = "2027-03-01";
    return o;
}

int run(const cli::SpecsOptions& o,
        int (*action)(const cli::SpecsOptions&, const cli::References&, std::ostream&, std::ostream&)) {
    std::ostringstream out, err;
    return action(o, references(), out, err);
}

void begin_library(const fs::path& library) {
    const record::KeptSpec kept = test::approved_specimen();
    write_bytes(library / (kAhead.text() + ".toml"), io::write_kept_spec(kept.content, kept.history));
}

record::Shelf shelf_of(const fs::path& path) {
    const auto library = io::SpecLibrary::open(path, io::SpecLibrary::For::reading);
    REQUIRE(library.has_value());
    return library->shelf(kAhead, test::wires());
}

std::size_t steps_of(const record::Shelf& shelf) {
    std::size_t steps = 0;
    for (const record::KeptRevision& revision : shelf.revisions) steps += revision.kept.history.size();
    return steps;
}

/// The next thing a workshop might do: revise what is approved, approve what is drafted, keep evidence in between.
int do_something(const fs::path& library, unsigned turn) {
    if (turn % 16 == 0) {
        cli::SpecsOptions o = options(library, "revise");
        o.step.reason = "turn " + std::to_string(turn);
        if (run(o, cli::run_specs_revise) == cli::kDone) return cli::kDone;
        o = options(library, "approve");
        o.step.without_inspection = "turn " + std::to_string(turn);
        return run(o, cli::run_specs_step);
    }
    cli::SpecsOptions o = options(library, "evidence");
    o.step.note = "turn " + std::to_string(turn) + ' ' + std::string(100, 'x');
    return run(o, cli::run_specs_step);
}

/// A sequence without a pattern, the same on every machine (a linear congruential generator).
class Sequence {
  public:
    unsigned next(unsigned below) {
        state_ = state_ * 1103515245u + 12345u;
        return (state_ >> 16) % below;
    }

  private:
    unsigned state_ = 20261125;
};

pid_t start(const std::function<int()>& work) {
    const pid_t child = ::fork();
    if (child == 0) ::_exit(work());
    return child;
}

int code_of(pid_t child) {
    int status = 0;
    ::waitpid(child, &status, 0);
    return WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
}

void begin_ten_thousand(const fs::path& library) {
    const record::KeptSpec kept = test::approved_specimen();
    for (int engine = 0; engine < 100; ++engine)
        for (int position = 0; position < 100; ++position) {
            const std::string engine_name = "ottermere x" + std::to_string(100 + engine);
            const std::string position_name = "latch " + std::to_string(100 + position);
            record::KeptSpec one = kept;
            one.spec.identity.engine = engine_name;
            one.spec.identity.position = position_name;
            one.spec.identity.number = std::to_string(1000 + engine) + '-' + std::to_string(1000 + position);
            one.content = io::write_spec(one.spec);
            for (record::Step& step : one.history) step.sha256 = sha256_hex(one.content);
            const record::Address address = record::address_of(one.spec.identity);
            write_bytes(library / (address.text() + ".toml"), io::write_kept_spec(one.content, one.history));
        }
}

struct Timed {
    int code = 0;
    std::string out;
    double seconds = 0.0;
};

Timed timed(const cli::SpecsOptions& o) {
    std::ostringstream out, err;
    const auto start = Clock::now();
    Timed done;
    done.code = cli::run_specs(o, out, err);
    done.seconds = std::chrono::duration<double>(Clock::now() - start).count();
    done.out = out.str() + err.str();
    return done;
}

}  // namespace

namespace {

/// What became of processes that were killed.
struct Toll {
    std::size_t killed = 0;
    std::size_t killed_after_the_change = 0;
    std::size_t too_late = 0;
};

/// As long as a change takes [us], so that kills fall before, into and behind what is written.
unsigned longest_change(const fs::path& library) {
    double longest = 0.0;
    for (unsigned turn = 0; turn < 9; ++turn) {
        const auto before = Clock::now();
        CHECK(code_of(start([&] { return do_something(library, turn); })) == cli::kDone);
        longest = std::max(longest, std::chrono::duration<double, std::micro>(Clock::now() - before).count());
    }
    return static_cast<unsigned>(std::min(longest, 20000.0)) + 1;
}

/// Starts a change, kills it after a while, and sees what is there.
void kill_one(const fs::path& library, unsigned turn, unsigned after_us, std::size_t& steps, Toll& toll) {
    const pid_t child = start([&] { return do_something(library, turn); });
    std::this_thread::sleep_for(std::chrono::microseconds(after_us));
    ::kill(child, SIGKILL);
    const int code = code_of(child);
    const record::Shelf shelf = shelf_of(library);
    CAPTURE(turn, code, render(shelf.wrong));
    REQUIRE(shelf.wrong.empty());
    REQUIRE_FALSE(shelf.revisions.empty());
    for (const record::KeptRevision& revision : shelf.revisions) REQUIRE_FALSE(revision.kept.is_altered());
    const std::size_t now = steps_of(shelf);
    REQUIRE((now == steps + 1 || (now == steps && code != cli::kDone)));
    toll.too_late += code == cli::kDone ? 1 : 0;
    toll.killed += code == cli::kDone ? 0 : 1;
    toll.killed_after_the_change += code != cli::kDone && now > steps ? 1 : 0;
    steps = now;
}

}  // namespace

TEST_CASE("a thousand kills at any moment lose no step that was told done and tear no spec") {
    references();
    Sequence sequence;
    Toll toll;
    for (unsigned round = 0; round < 10; ++round) {
        const ScratchFolder scratch;
        const fs::path library = scratch / "specs";
        begin_library(library);
        const unsigned longest = longest_change(library);
        std::size_t steps = steps_of(shelf_of(library));
        for (unsigned turn = 0; turn < 100; ++turn) kill_one(library, turn, sequence.next(longest), steps, toll);
        // What processes leave that are killed between the two names of a file is removed by the next, not heaped up:
        // one in each of two folders.
        std::size_t aside = 0;
        for (const auto& entry : fs::recursive_directory_iterator(library))
            aside += entry.path().filename().string().starts_with(".aside") ? 1 : 0;
        CHECK(aside <= 2);
    }
    std::cout << toll.killed << " processes killed, " << toll.killed_after_the_change
              << " of them after their change was made; " << toll.too_late << " kills came too late\n";
    CHECK(toll.killed + toll.too_late == 1000);
    CHECK(toll.killed > 100);
}

TEST_CASE("steps of several processes at once are all kept, and readers never see half of one") {
    constexpr int kEach = 60;
    const ScratchFolder scratch;
    const fs::path library = scratch / "specs";
    begin_library(library);
    references();
    const std::size_t before = steps_of(shelf_of(library));
    const auto write_many = [&] {
        for (int i = 0; i < kEach; ++i) {
            cli::SpecsOptions o = options(library, "evidence");
            o.step.note = "one of many";
            if (run(o, cli::run_specs_step) != cli::kDone) return 1;
        }
        return 0;
    };
    const auto read_many = [&] {
        for (int i = 0; i < kEach; ++i) {
            const auto open = io::SpecLibrary::open(library, io::SpecLibrary::For::reading);
            if (!open) return 1;
            const record::Shelf shelf = open->shelf(kAhead, references().wires);
            if (!shelf.wrong.empty() || shelf.revisions.size() != 1 || shelf.revisions[0].kept.is_altered()) return 1;
        }
        return 0;
    };
    const std::vector<pid_t> children{start(write_many), start(write_many), start(read_many)};
    for (const pid_t child : children) CHECK(code_of(child) == 0);
    CHECK(steps_of(shelf_of(library)) == before + 2 * kEach);
}

TEST_CASE("of two programs that approve the same draft one is told that it came too late") {
    const ScratchFolder scratch;
    record::KeptSpec kept = test::kept_specimen();
    write_bytes(scratch / "specs" / (kAhead.text() + ".toml"), io::write_kept_spec(kept.content, kept.history));
    const auto approve = [&](const std::string& name) {
        return start([&scratch, name] {
            return test::run_program({SEATLOAD_PROGRAM, "specs", "approve", kAhead.text(), "--by", name, "--date",
                                      "2027-02-01", "--without-inspection", "as supplied for years"},
                                     scratch.path(), {})
                .code;
        });
    };
    const pid_t one = approve("A. Nkemelu"), other = approve("B. Haugland");
    const int first = code_of(one), second = code_of(other);
    CHECK(first + second == cli::kBadInput);
    CHECK(steps_of(shelf_of(scratch / "specs")) == 2);
}

TEST_CASE("ten thousand specs are listed, searched and verified alike by any number of threads") {
    const ScratchFolder scratch;
    const fs::path library = scratch / "specs";
    begin_ten_thousand(library);
    cli::SpecsOptions o;
    o.library = library.string();
    const std::vector<std::pair<std::string, std::string>> told{
        {"list", "10 000 listed: "},
        {"find", "10 000 of 10 000 kept"},
        {"verify", "10 000 revisions looked at: all as they were"},
    };
    for (const auto& [action, counted] : told) {
        o.action = action;
        o.find.gives = {"5 N .. 6 N"};
        o.find.at = {"15 mm"};
        o.find.bore = "9 mm";
        o.threads = 1;
        const Timed one = timed(o);
        o.threads = 2;
        const Timed two = timed(o);
        CHECK(one.code == cli::kDone);
        CHECK(two.code == one.code);
        CHECK(two.out == one.out);
        CHECK_THAT(one.out, ContainsSubstring(counted));
        std::cout << action << " of 10 000 specs: " << fixed(one.seconds, 2) << " s in one thread, "
                  << fixed(two.seconds, 2) << " s in two\n";
    }
}
