// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/core/diagnostic.hpp>
#include <seatload/record/kept_spec.hpp>

namespace seatload::record {

/// Where a kept spec has its place: folder of the engine and name of the position, both plain names.
struct Address {
    std::string engine;
    std::string position;

    std::string text() const { return engine + '/' + position; }
    auto operator<=>(const Address&) const = default;
};

/// The place of a spec of an engine and a position, as words make file names.
Address address_of(const demand::Identity& identity);

/// A revision with the file it was read from.
struct KeptRevision {
    std::string file;  ///< as it is shown to people
    KeptSpec kept;
    State state = State::draft;  ///< with what later revisions make of it

    const std::string& index() const { return kept.spec.identity.revision; }
};

/// Everything kept at an address.
struct Shelf {
    Address address;
    std::vector<KeptRevision> revisions;  ///< the earliest first; those that could not be read are left out
    std::vector<std::string> beside;      ///< names of the other files kept there
    Diagnostics wrong;                    ///< what could not be read

    /// The revision last made, or null.
    const KeptRevision* latest() const { return revisions.empty() ? nullptr : &revisions.back(); }
    /// The approved revision that is to be ordered, or null: the last one ever approved, unless it was withdrawn. An
    /// earlier one never comes back by that, as there was a reason to change it.
    const KeptRevision* in_force() const;
    /// The revision with an index, or null.
    const KeptRevision* revision(const std::string& index) const;
};

/// Puts the revisions in their order and tells their states, each with what the later ones make of it: one that was
/// approved is superseded once a later one was, one that never was as soon as there is a later one.
void settle(Shelf& shelf);

}  // namespace seatload::record
