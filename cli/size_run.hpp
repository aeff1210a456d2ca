// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <ostream>
#include <string>
#include <vector>

#include <seatload/demand/budget.hpp>
#include <seatload/sheet/same_wire.hpp>

#include <cli/options.hpp>
#include <cli/papers.hpp>
#include <cli/session.hpp>
#include <cli/size_view.hpp>

namespace seatload::cli {

/// One requirement, searched.
struct SizeRun {
    std::string file;
    demand::Requirement requirement;
    sizing::Space space;
    sizing::Census census;
    double seconds = 0.0;  ///< the search took
    std::vector<Offer> offers;
    std::optional<sizing::HeldSeat> held_seat;      ///< as in SizeView
    std::optional<sizing::Shortfall> shortfall;     ///< as in SizeView
    std::optional<sizing::TightLimits> tight = {};  ///< as in SizeView

    SizeView view() const { return {file, requirement, space, census, offers, held_seat, shortfall, tight}; }
};

/// How a search is to be done; it shows no progress.
sizing::SearchOptions search_options(const SizeOptions& options);

/// The requirement searched, and its alternatives evaluated; shows its progress on `err` when that is asked for.
SizeRun size_one(const std::string& file, const demand::Requirement& requirement, const References& refs,
                 const SizeOptions& options, std::ostream& err);

/// A fitting spring of the run's space with all that is known of it, under the next letter.
Offer make_offer(const SizeRun& run, const sizing::Alternative& alternative, const References& refs,
                 const SizeOptions& options);

/// Finds out why nothing fits, or which limits hold the answer when little does.
void explain(SizeRun& run, const References& refs, const SizeOptions& options);

/// The name all papers of a requirement begin with.
std::string paper_stem(const demand::Requirement& requirement);

/// Specs, sheets, the enquiry and the calculation report, all in memory; what is said of them is added to `said`. The
/// enquiry tells which alternatives are of the same wire as others enquired for apart.
std::vector<Paper> size_papers(const SizeRun& run, const std::string& stem, const References& refs,
                               const SizeOptions& options, Diagnostics& said,
                               const std::vector<sheet::SameWire>& same_wire = {});

/// The wire of a run's candidate.
const wire::Grade& grade_of(const SizeRun& run, const sizing::Candidate& candidate);

/// The budget of a requirement's plunger when no spring can keep it.
std::optional<demand::Budget> contradicted_plunger(const demand::Requirement& requirement);

/// The papers written, and those left there by an earlier run, by name.
std::string papers_text(const std::vector<Paper>& papers, const std::vector<std::filesystem::path>& stale,
                        const SizeOptions& options);

}  // namespace seatload::cli
