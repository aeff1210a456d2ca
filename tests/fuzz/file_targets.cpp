// SPDX-License-Identifier: MIT
// Every reader of a file: what it answers, and that what it read is the same when written and read again.
#include <seatload/bench/measured.hpp>
#include <seatload/demand/budget.hpp>
#include <seatload/inspection/sampling_plan.hpp>
#include <seatload/io/kept_spec_file.hpp>
#include <seatload/io/lot_file.hpp>
#include <seatload/io/maker_file.hpp>
#include <seatload/io/plunger_file.hpp>
#include <seatload/io/plunger_requirement.hpp>
#include <seatload/io/readings_file.hpp>
#include <seatload/io/reply_file.hpp>
#include <seatload/io/requirement_file.hpp>
#include <seatload/io/samples_file.hpp>
#include <seatload/io/spec_file.hpp>
#include <seatload/io/spring_file.hpp>
#include <seatload/io/tolerance_file.hpp>
#include <seatload/io/wire_file.hpp>
#include <seatload/io/wording_file.hpp>

#include "fuzz/invariants.hpp"
#include "fuzz/targets.hpp"
#include "support/builtin.hpp"

namespace seatload::fuzz {
namespace {

using test::wires;

const std::string kName = "given.toml";

Texts alone(std::string_view bytes) { return {{kName, std::string(bytes)}}; }

const demand::Makers& makers() {
    static const demand::Makers all = io::builtin_makers();
    return all;
}

const inspection::SamplingTables& sampling() {
    static const inspection::SamplingTables tables = io::builtin_sampling().value();
    return tables;
}

/// Opens one table under whatever name it is asked for, and notes the name.
struct Beside {
    std::string table;
    bool is_there = false;
    Texts& texts;

    io::FileOpener opener() {
        return [this](const std::string& path) -> Result<std::string> {
            texts[path] = table;
            if (!is_there) return error_in(path, "no-such-file"_id, "there is no such file");
            return table;
        };
    }
};

/// Reads the part before kBetweenFiles, with the part behind it as the table beside.
template <class Read>
void read_with_table(std::string_view bytes, const Read& read) {
    const std::size_t cut = bytes.find(kBetweenFiles);
    Texts texts = alone(bytes.substr(0, cut));
    Beside beside{"", cut != std::string_view::npos, texts};
    if (beside.is_there) beside.table = bytes.substr(cut + 1);
    const std::string text = texts.at(kName);
    read(text, beside.opener(), texts);
}

void answer_readings(const std::string& text, const io::FileOpener& open, const Texts& texts) {
    const auto session = io::read_readings(text, kName, wires(), open);
    require_answer(session, texts);
    if (!session) return;
    for (const bench::SpringRun& run : session->springs)
        require(bench::measure(*session, run).spring.has_value(), "readings that were taken make no spring");
}

void answer_samples(const std::string& text, const io::FileOpener& open, const Texts& texts) {
    require_answer(io::read_samples(text, kName, sampling(), wires(), open), texts);
}

/// A file that is answered and, when it is taken, is the same when written and read again.
template <class Read, class Write>
void require_rewritten(std::string_view bytes, const Read& read, const Write& write) {
    const auto value = read(bytes, kName);
    require_answer(value, alone(bytes));
    if (value) require_identity(*value, write, [&](const std::string& text) { return read(text, "again.toml"); });
}

}  // namespace

void read_requirement(std::string_view bytes) {
    require_answer(io::read_requirement(bytes, kName, wires(), makers()), alone(bytes));
}

void read_spring(std::string_view bytes) {
    const auto spring = io::read_spring(bytes, kName, wires());
    require_answer(spring, alone(bytes));
    if (!spring || spring->spec) return;
    require_identity(
        *spring, [](const record::SpringFile& file) { return io::write_spring(file, {}); },
        [](const std::string& text) { return io::read_spring(text, "again.toml", wires()); });
}

void read_reply(std::string_view bytes) {
    require_rewritten(
        bytes, [](const auto& text, const std::string& name) { return io::read_reply(text, name); }, io::write_reply);
}

void read_spec(std::string_view bytes) {
    require_rewritten(
        bytes, [](const auto& text, const std::string& name) { return io::read_spec(text, name, wires()); },
        io::write_spec);
}

void read_kept_spec(std::string_view bytes) {
    const auto kept = io::read_kept_spec(bytes, kName, wires());
    require_answer(kept, alone(bytes));
    if (!kept) return;
    require_identity(
        *kept, [](const record::KeptSpec& k) { return io::write_kept_spec(k.content, k.history); },
        [](const std::string& text) { return io::read_kept_spec(text, "again.toml", wires()); });
}

void read_lot(std::string_view bytes) {
    require_rewritten(
        bytes, [](const auto& text, const std::string& name) { return io::read_lot(text, name); }, io::write_lot);
}

void read_plunger(std::string_view bytes) {
    const auto file = io::read_plunger(bytes, kName);
    require_answer(file, alone(bytes));
    if (!file) return;
    const demand::Budget budget = demand::plunger_budget(file->plunger, file->spring);
    if (!budget.is_possible() || !file->space) return;
    const Texts written{{kName, io::write_budget_requirement(*file, budget, "plunger.toml")}};
    require_answer(io::read_requirement(written.at(kName), kName, wires(), makers()), written);
}

void read_maker(std::string_view bytes) { require_answer(io::read_maker(bytes, kName), alone(bytes)); }

void read_wire(std::string_view bytes) { require_answer(io::read_wire_file(bytes, kName, wires()), alone(bytes)); }

void read_tolerances(std::string_view bytes) { require_answer(io::read_tolerances(bytes, kName), alone(bytes)); }

void read_wording(std::string_view bytes) {
    static const record::PhraseBook model = io::builtin_wording();
    require_answer(io::read_wording(bytes, kName, model), alone(bytes));
    require_answer(io::read_wording(bytes, kName), alone(bytes));
}

void read_readings(std::string_view bytes) { read_with_table(bytes, answer_readings); }

void read_samples(std::string_view bytes) { read_with_table(bytes, answer_samples); }

void read_readings_table(std::string_view bytes) {
    static const std::string kSession =
        "[scale]\nstep = \"1 g\"\n[gauge]\nstep = \"0.01 mm\"\n[[spring]]\nname = \"found\"\ntable = \"table.csv\"\n";
    read_readings(kSession + kBetweenFiles + std::string(bytes));
}

void read_samples_table(std::string_view bytes) {
    static const std::string kLot =
        "[lot]\nname = \"first\"\npieces = 50\n[uncertainty]\nseated_load = \"±0.05 N\"\n"
        "full_travel_load = \"±0.05 N\"\noutside_diameter = \"±0.02 mm\"\nfree_length = \"±0.1 mm\"\n"
        "[after]\ntreatment = \"heat\"\n[pieces]\ntable = \"table.csv\"\n";
    read_samples(kLot + kBetweenFiles + std::string(bytes));
}

}  // namespace seatload::fuzz
