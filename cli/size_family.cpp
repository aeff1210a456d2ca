// SPDX-License-Identifier: MIT
#include <cli/size_family.hpp>

#include <algorithm>

#include <nlohmann/json.hpp>
#include <seatload/core/append.hpp>
#include <seatload/core/line_wrap.hpp>
#include <seatload/io/requirement_file.hpp>

#include <cli/budget_view.hpp>
#include <cli/size_family_view.hpp>
#include <cli/size_next.hpp>

namespace seatload::cli {
namespace {

constexpr std::size_t kWiresShown = 3;
constexpr std::size_t kLetters = 26;

/// All files read; what is said of them is added to `said`.
std::vector<demand::Requirement> read_all(const std::vector<std::string>& files, const References& refs,
                                          Diagnostics& said) {
    std::vector<demand::Requirement> requirements;
    for (const std::string& file : files) {
        auto read = read_file(file, [&](std::string_view text, const std::string& name) {
            return io::read_requirement(text, name, refs.wires, refs.makers);
        });
        append(said, read.error());
        if (read) requirements.push_back(std::move(read).value());
    }
    return requirements;
}

/// The first of these names that differ from member to member: positions, engines with positions, files with a number.
std::vector<std::string> names_of(const std::vector<demand::Requirement>& requirements,
                                  const std::vector<std::string>& files) {
    const auto differ = [](std::vector<std::string> names) {
        std::sort(names.begin(), names.end());
        return !names.front().empty() && std::adjacent_find(names.begin(), names.end()) == names.end();
    };
    std::vector<std::string> positions, places, numbered;
    for (std::size_t i = 0; i < requirements.size(); ++i) {
        const demand::Identity& identity = requirements[i].identity;
        positions.push_back(identity.position);
        places.push_back(
            identity.engine.empty() || identity.position.empty() ? "" : identity.engine + ' ' + identity.position);
        numbered.push_back(std::to_string(i + 1) + ": " + files[i]);
    }
    return differ(positions) ? positions : differ(places) ? places : differ(files) ? files : numbered;
}

/// The stems of all papers: no two requirements' papers have the same names.
std::vector<std::string> stems_of(const std::vector<demand::Requirement>& requirements) {
    std::vector<std::string> stems;
    for (const demand::Requirement& requirement : requirements) {
        const std::string first = paper_stem(requirement);
        std::string stem = first;
        for (int i = 2; std::find(stems.begin(), stems.end(), stem) != stems.end(); ++i)
            stem = first + '-' + std::to_string(i);
        stems.push_back(stem);
    }
    return stems;
}

std::vector<FamilyMember> size_all(const std::vector<demand::Requirement>& requirements, const References& refs,
                                   const SizeOptions& options, std::ostream& err) {
    const auto names = names_of(requirements, options.requirements);
    const auto stems = stems_of(requirements);
    std::vector<FamilyMember> members;
    for (std::size_t i = 0; i < requirements.size(); ++i) {
        auto contradicted = contradicted_plunger(requirements[i]);
        SizeRun run = contradicted ? SizeRun{options.requirements[i], requirements[i], {}, {}, 0.0, {}, {}, {}}
                                   : size_one(options.requirements[i], requirements[i], refs, options, err);
        members.push_back({std::move(run), std::move(contradicted), names[i], stems[i]});
    }
    return members;
}

bool is_same(const sizing::Candidate& a, const sizing::Candidate& b) {
    return a.wire == b.wire && a.ends == b.ends && a.mean_diameter_mm == b.mean_diameter_mm &&
           a.total_coils == b.total_coils && a.free_length_mm == b.free_length_mm;
}

const Offer* offered(const SizeRun& run, const sizing::Candidate& candidate) {
    for (const Offer& offer : run.offers)
        if (is_same(offer.alternative.candidate, candidate)) return &offer;
    return nullptr;
}

/// A spring of each requirement's space with all that is known of it. When it is to be offered and is not yet, it
/// becomes a further alternative.
std::vector<Offer> springs_of(FamilyView& view, const std::vector<sizing::Candidate>& candidates,
                              const References& refs, const SizeOptions& options, const std::string& why,
                              bool is_to_be_offered) {
    std::vector<Offer> springs;
    for (std::size_t i = 0; i < candidates.size(); ++i) {
        SizeRun& run = view.members[i].run;
        if (const Offer* known = offered(run, candidates[i])) {
            springs.push_back(*known);
            continue;
        }
        Offer offer = make_offer(run, {candidates[i], why}, refs, options);
        if (is_to_be_offered && run.offers.size() < kLetters)
            run.offers.push_back(offer);
        else
            offer.spec.alternative.clear();
        springs.push_back(std::move(offer));
    }
    return springs;
}

std::string together(const FamilyView& view) { return view.members.size() == 2 ? "both" : "all"; }

void find_common_wires(FamilyView& view, sizing::Family family, const References& refs, const SizeOptions& options) {
    const auto wires = sizing::common_wires(family);
    view.wires_that_serve_all = wires.size();
    const std::string why = "most tolerance room with the wire that serves " + together(view) + " best";
    for (const sizing::CommonWire& wire : wires) {
        if (view.wires.size() == kWiresShown) break;
        view.wires.push_back({wire.grade, wire.diameter, wire.merit,
                              springs_of(view, wire.springs, refs, options, why, view.wires.empty())});
    }
    if (wires.empty()) view.near = sizing::near_wire(family, {refs.wires, refs.tolerances, search_options(options)});
}

void find_shared_spring(FamilyView& view, sizing::Family family, const References& refs, const SizeOptions& options) {
    const sizing::SearchOptions how = search_options(options);
    view.shared = sizing::shared_springs(family, refs.tolerances, how);
    if (const auto& best = view.shared.best) {
        auto springs = springs_of(view, best->in_each, refs, options, "the same spring serves " + together(view), true);
        const record::Spec& spec = springs.front().spec;
        view.shared_spring = FamilyWire{spec.wire_grade, spec.spring.wire_diameter, best->merit, std::move(springs)};
    } else if (view.shared.apart == sizing::Apart::nothing) {
        std::vector<const demand::Requirement*> requirements;
        for (const FamilyMember& member : view.members) requirements.push_back(&member.run.requirement);
        view.conflict = sizing::shared_conflict(requirements, {refs.wires, refs.tolerances, how});
    }
}

void find_what_serves_all(FamilyView& view, const References& refs, const SizeOptions& options) {
    if (!view.all_served()) return;
    std::vector<sizing::Member> family;
    for (const FamilyMember& member : view.members)
        family.push_back({member.run.requirement, member.run.space, member.run.census});
    find_common_wires(view, family, refs, options);
    find_shared_spring(view, family, refs, options);
}

/// What the enquiry of one requirement says of one wire; nothing when a spring of it is not offered everywhere.
std::optional<sheet::SameWire> same_wire(const FamilyView& view, const std::vector<Offer>& springs, std::size_t mine) {
    sheet::SameWire same{springs[mine].spec.alternative, {}, false, {}};
    for (std::size_t i = 0; i < springs.size(); ++i) {
        if (springs[i].spec.alternative.empty()) return std::nullopt;
        if (i != mine) same.others.push_back(springs[i].spec);
    }
    for (const FamilyLot& lot : lots_of(view, springs)) same.amounts.push_back({lot.pieces, lot.mass});
    return same;
}

std::vector<sheet::SameWire> same_wires(const FamilyView& view, std::size_t mine) {
    std::vector<sheet::SameWire> all;
    for (const FamilyWire& wire : view.wires)
        if (auto same = same_wire(view, wire.springs, mine)) all.push_back(std::move(*same));
    if (!view.shared_spring) return all;
    auto shared = same_wire(view, view.shared_spring->springs, mine);
    if (!shared) return all;
    shared->is_same_spring = true;
    const auto is_told = [&](const sheet::SameWire& other) {
        if (other.letter != shared->letter) return false;
        for (std::size_t i = 0; i < other.others.size(); ++i)
            if (other.others[i].alternative != shared->others[i].alternative) return false;
        return true;
    };
    std::erase_if(all, is_told);
    all.insert(all.begin(), std::move(*shared));
    return all;
}

std::vector<Paper> papers_of(const FamilyView& view, const References& refs, const SizeOptions& options,
                             Diagnostics& said) {
    std::vector<Paper> papers;
    for (std::size_t i = 0; i < view.members.size(); ++i) {
        const FamilyMember& member = view.members[i];
        if (member.run.offers.empty()) continue;
        for (Paper& paper : size_papers(member.run, member.stem, refs, options, said, same_wires(view, i)))
            papers.push_back(std::move(paper));
    }
    return papers;
}

std::vector<std::filesystem::path> stale_papers_of(const FamilyView& view, const SizeOptions& options,
                                                   const std::vector<Paper>& papers) {
    std::vector<std::filesystem::path> stale;
    if (!options.papers) return stale;
    for (const FamilyMember& member : view.members)
        for (auto& path : stale_papers(options.output, member.stem, papers)) stale.push_back(std::move(path));
    return stale;
}

/// What was found of one of them; `explains`: with what the columns of its tables mean.
std::string text_of(const FamilyMember& member, bool explains, int width) {
    if (!member.contradicted) {
        SizeView view = member.run.view();
        view.explains = explains;
        return size_text(view, member.run.seconds, width);
    }
    return wrapped("", member.run.file + ": no spring can do what its plunger asks.", width, 2) +
           contradictions_text(*member.contradicted, width);
}

/// What to do when no papers were written: the first that springs fit stands for all.
std::string next_of(const FamilyView& view, const SizeOptions& options) {
    const auto served = std::find_if(view.members.begin(), view.members.end(),
                                     [](const FamilyMember& member) { return !member.run.offers.empty(); });
    const FamilyMember& meant = served != view.members.end() ? *served : view.members.front();
    return meant.contradicted ? contradicted_next(meant.run.file, options) : size_next(meant.run, options);
}

void tell(const FamilyView& view, const std::vector<Paper>& papers, const SizeOptions& options, std::ostream& out) {
    if (options.json) {
        out << family_json(view).dump(2) << '\n';
        return;
    }
    bool is_explained = false;
    for (const FamilyMember& member : view.members) {
        out << text_of(member, !is_explained, options.width) << '\n';
        is_explained = is_explained || !member.run.offers.empty();
    }
    out << family_text(view, options.width) << papers_text(papers, stale_papers_of(view, options, papers), options);
    if (papers.empty()) out << next_of(view, options);
}

}  // namespace

bool FamilyView::all_served() const {
    return std::none_of(members.begin(), members.end(),
                        [](const FamilyMember& member) { return member.run.offers.empty(); });
}

int run_size_family(const SizeOptions& options, std::ostream& out, std::ostream& err) {
    if (!options.what_if.empty())
        return refuse({error("exclusive"_id,
                             "--what-if varies a number of one requirement, and " +
                                 std::to_string(options.requirements.size()) + " are given",
                             "name one requirement file at a time")},
                      err);
    if (const Diagnostics wrong = named_twice(options.requirements); !wrong.empty()) return refuse(wrong, err);
    const auto references = load_references(options.wire_file, options.look, options.maker_file);
    if (!references) return refuse(references.error(), err);
    Diagnostics said;
    const auto requirements = read_all(options.requirements, *references, said);
    if (has_error(said)) return refuse(said, err);

    FamilyView view;
    view.members = size_all(requirements, *references, options, err);
    find_what_serves_all(view, *references, options);
    std::vector<Paper> papers;
    if (options.papers) papers = papers_of(view, *references, options, said);
    complain(said, err);
    if (has_error(said)) return kBadInput;
    if (!papers.empty())
        if (const Diagnostics wrong = write_papers(options.output, papers); !wrong.empty()) return refuse(wrong, err);
    for (FamilyMember& member : view.members)
        if (!member.contradicted) explain(member.run, *references, options);
    tell(view, papers, options, out);
    return view.all_served() ? kDone : kNothingFits;
}

}  // namespace seatload::cli
