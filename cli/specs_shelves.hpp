// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/core/result.hpp>
#include <seatload/io/spec_library.hpp>
#include <seatload/record/shelf.hpp>

#include <cli/session.hpp>
#include <cli/specs_options.hpp>
#include <cli/typed_command.hpp>

namespace seatload::cli {

/// The program and its version, as records name it.
std::string program_name();

/// An action of `seatload specs` to be typed next, in the same library and with the same wires: "specs order". Options
/// go before the action, so that no part of a broken line is a command of the usual library.
TypedCommand specs_command(const SpecsOptions& options, const std::string& action);

/// The address a user means by "engine/position", a path of the library, a position alone or a part number. Errors:
/// none is meant, or more than one; what may have been meant.
Result<record::Address> resolve(const io::SpecLibrary& library, const SpecsOptions& options,
                                const wire::Catalogue& wires, const std::string& word);

/// A shelf of the library with a revision of it: the one asked for by its index, else the one last made.
struct OnShelf {
    record::Shelf shelf;
    std::size_t at = 0;

    const record::KeptRevision& revision() const { return shelf.revisions[at]; }
    bool is_latest() const { return at + 1 == shelf.revisions.size(); }
};

/// The one meant by a word and an index. Errors: those of resolve(); nothing there can be read; no such revision.
Result<OnShelf> find_on_shelf(const io::SpecLibrary& library, const SpecsOptions& options, const wire::Catalogue& wires,
                              const std::string& word, const std::string& index);

/// The grade of a spec's wire.
const wire::Grade& grade_of(const record::Spec& spec, const wire::Catalogue& wires);

/// The spec as its papers show it: approved by him who approved it, no longer one of several to be quoted, and with the
/// end tips that are ordered.
record::Spec spec_for_papers(const record::KeptSpec& kept, const References& references);

/// The mark that stands on sheet and order of a kept spec, as sheet::tamper_mark() groups it.
std::string mark_on_papers(const record::KeptSpec& kept, const References& references);

/// A warning when a kept spring may lean on its sliding seat further than there is room.
Diagnostics doubts_on_lean(const record::KeptRevision& revision, const References& references);

/// The filter's state, checked, and whether a shelf and its revisions pass it.
Result<std::optional<record::State>> state_of(const SpecsFilter& filter);
bool is_meant(const record::Shelf& shelf, const SpecsFilter& filter);
/// Whether a revision is among those asked for; without a word on it, earlier and withdrawn ones are not.
bool is_meant(const record::Shelf& shelf, const record::KeptRevision& revision, const SpecsFilter& filter,
              const std::optional<record::State>& state);

/// All shelves an action is about: those meant by its words, or every one the filter passes. What could not be read is
/// added to `said`.
Result<std::vector<record::Shelf>> load_shelves(const io::SpecLibrary& library, const SpecsOptions& options,
                                                const wire::Catalogue& wires, bool earlier, Diagnostics& said);

/// The command that a reader may want next for a revision, as he would type it: "seatload specs trial ..."; empty for
/// one that was superseded.
std::string next_command(const SpecsOptions& options, const record::Shelf& shelf, const record::KeptRevision& revision);

/// The papers of a revision, by its index unless they are written without one too.
std::string order_command(const SpecsOptions& options, const record::Shelf& shelf,
                          const record::KeptRevision& revision);

}  // namespace seatload::cli
