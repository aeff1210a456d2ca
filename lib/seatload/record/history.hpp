// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <seatload/record/key_results.hpp>

namespace seatload::record {

/// How far a revision of a kept spec has come.
enum class State {
    draft,       ///< may still be edited
    trial,       ///< frozen: springs of it are made and tried
    approved,    ///< frozen, and in force unless a later revision was approved
    superseded,  ///< a later revision took its place
    withdrawn,   ///< not to be used
};

/// A file that lies beside a spec, with the SHA-256 of its bytes.
struct KeptFile {
    std::string name;
    std::string sha256;

    bool operator==(const KeptFile&) const = default;
};

/// What happened to a revision of a kept spec: it reached a state, or evidence came in.
struct Step {
    enum class Kind { draft, trial, approved, withdrawn, evidence };

    Kind kind = Kind::draft;
    std::string date;                     ///< ISO 8601, given, never the clock
    std::string by;                       ///< who answers for it
    std::string sha256;                   ///< of the content at that time
    std::string reason;                   ///< of a revision, of a withdrawal, or of an approval without an inspection
    std::vector<std::string> conditions;  ///< of an approval: what its lots were accepted on and nobody measured
    std::vector<KeptFile> lots;           ///< results of inspections
    std::vector<KeptFile> files;          ///< readings, quotations and the like
    std::optional<double> trial_hours;    ///< in an engine
    std::string note;
    std::optional<KeyResults> results;  ///< what was worked out when it was approved
};

/// What happened, the earliest first; never empty in a kept spec.
using History = std::vector<Step>;

/// The state a history ends in; superseded is not among them, as that is told by the later revision.
State state_of(const History& history);

/// The step that brought about the state.
const Step& last_change(const History& history);

/// The step of the approval, or null.
const Step* approval_of(const History& history);

/// Whether the content must stay as it is.
bool is_frozen(State state);

/// The SHA-256 that a frozen content must have, or nothing.
std::optional<std::string> frozen_sha256(const History& history);

/// All hours in an engine put together [h].
double trial_hours(const History& history);

/// "draft", "trial", ...
std::string_view word(State state);
std::string_view word(Step::Kind kind);

/// The index of the revision after one: the next letter (I and O are passed over: common practice, no source), or the
/// next number; "A" after none. Empty when two characters do not hold it.
std::string next_index(const std::string& index);

}  // namespace seatload::record
