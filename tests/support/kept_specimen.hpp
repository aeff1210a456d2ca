// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <string>

#include <seatload/core/sha256.hpp>
#include <seatload/io/kept_spec_file.hpp>
#include <seatload/io/spec_file.hpp>
#include <seatload/record/specify.hpp>
#include <support/builtin.hpp>
#include <support/scratch_folder.hpp>

namespace seatload::test {

/// The text of a spec that fits its own limits: the spring of the ahead latch plunger.
inline std::string specimen_text() {
    return bytes_of(std::filesystem::path(SEATLOAD_SOURCE_DIR) / "tests/unit/record/ahead_latch_spec.toml");
}

/// A kept draft of it.
inline record::KeptSpec kept_specimen() {
    record::KeptSpec kept;
    kept.content = specimen_text();
    kept.sha256 = sha256_hex(kept.content);
    kept.spec = io::read_spec(kept.content, "specimen", wires()).value();
    record::Step draft;
    draft.date = "2026-11-25";
    draft.by = "A. Nkemelu";
    draft.sha256 = kept.sha256;
    kept.history = {draft};
    return kept;
}

/// The same, approved with its results.
inline record::KeptSpec approved_specimen() {
    record::KeptSpec kept = kept_specimen();
    const wire::Grade& grade = *wires().find(kept.spec.wire_grade);
    const auto evaluation =
        check::evaluate(kept.spec.spring, grade, record::requirement_of(kept.spec), tolerances()).value();
    record::Step approved;
    approved.kind = record::Step::Kind::approved;
    approved.date = "2027-02-01";
    approved.by = "B. Haugland";
    approved.sha256 = kept.sha256;
    approved.reason = "as supplied for years";
    approved.results = record::key_results({evaluation, kept.spec, grade, tolerances()}, "seatload 0");
    kept.history.push_back(approved);
    return kept;
}

}  // namespace seatload::test
