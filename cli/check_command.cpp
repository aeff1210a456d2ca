// SPDX-License-Identifier: MIT
#include <cli/check_command.hpp>

#include <nlohmann/json.hpp>
#include <seatload/io/requirement_file.hpp>
#include <seatload/io/spring_file.hpp>
#include <seatload/record/spec_outlook.hpp>

#include <cli/evaluation_view.hpp>
#include <cli/kept_place.hpp>
#include <cli/papers.hpp>
#include <cli/session.hpp>
#include <cli/typed_command.hpp>

namespace seatload::cli {
namespace {

/// A spring file read and evaluated.
struct Checked {
    record::SpringFile file;
    wire::Grade grade;
    demand::Requirement requirement;
    check::Evaluation evaluation;
};

/// The requirement a spring is judged by when none is given: the school's limits at its own heights.
demand::Requirement own_requirement(const record::SpringFile& file) {
    demand::Requirement r;
    r.limits = demand::school_defaults(spring::School::en_13906);
    r.space.seated_height = file.seated_height.value_or(file.spring.free_length);
    r.space.full_travel_height = file.full_travel_height.value_or(r.space.seated_height);
    r.surroundings = file.surroundings;
    return r;
}

void append(Diagnostics& to, const Diagnostics& from) { to.insert(to.end(), from.begin(), from.end()); }

Result<Checked> check_one(const std::string& path, const std::optional<demand::Requirement>& requirement,
                          const References& refs) {
    auto file = read_file(
        path, [&](std::string_view text, const std::string& name) { return io::read_spring(text, name, refs.wires); });
    if (!file) return Diagnostics(file.error());
    const wire::Grade grade = file->own_grade ? *file->own_grade : *refs.wires.find(file->wire_grade);
    const demand::Requirement judged = requirement ? *requirement : file->requirement.value_or(own_requirement(*file));
    const bool has_heights = requirement || file->requirement || (file->seated_height && file->full_travel_height);
    auto evaluation = check::evaluate(file->spring, grade, judged, refs.tolerances, has_heights);
    if (!evaluation) return placed(evaluation.error(), path);
    return Checked{std::move(file).value(), grade, judged, std::move(evaluation).value()};
}

std::vector<record::MeasuredVerdict> measured_verdicts(const Checked& c) {
    if (!c.file.measured) return {};
    return record::judge_measured(*c.file.measured, c.evaluation, c.requirement);
}

/// What tolerances do to a spring that keeps a demand; they are of no use to one that breaks it.
std::optional<sizing::Outlook> outlook_of(const Checked& c, bool has_demand, const tolerance::Tables& tables) {
    if (!has_demand || !c.evaluation.fits()) return std::nullopt;
    if (c.file.spec) return record::spec_outlook(*c.file.spec, c.grade, c.requirement, tables);
    return sizing::outlook({c.file.spring, c.grade, c.requirement, tables});
}

/// What to do with a spring that was looked at by itself, or that will not do.
std::string what_next(const CheckOptions& options, const References& references, bool all_fit, bool has_demand) {
    if (options.requirement.empty())
        if (const auto place = kept_place(options.springs.front(), options.wire_file, references))
            return next_text(kept_next(*place), options.width);
    const auto command = [&](const char* name) { return TypedCommand(name).name(options.springs.front()); };
    if (options.requirement.empty() && !has_demand)
        return next_text(command("check").open("-r REQUIREMENT").text() + " tells whether it will do in its place.",
                         options.width);
    if (!options.requirement.empty() && !all_fit)
        return next_text(TypedCommand("size").name(options.requirement).text() + " finds the springs that meet it.",
                         options.width);
    if (options.requirement.empty() && all_fit)
        return next_text(
            command("sheet").text() + " draws its sheet, " + command("report").text() + " writes the calculation.",
            options.width);
    return {};
}

}  // namespace

int run_check(const CheckOptions& options, std::ostream& out, std::ostream& err) {
    const auto references = load_references(options.wire_file, {}, options.maker_file);
    if (!references) return refuse(references.error(), err);
    Diagnostics wrong;
    std::optional<demand::Requirement> requirement;
    if (!options.requirement.empty()) {
        auto read = read_file(options.requirement, [&](std::string_view text, const std::string& name) {
            return io::read_requirement(text, name, references->wires, references->makers);
        });
        if (read)
            requirement = *read;
        else
            append(wrong, read.error());
    }
    std::vector<Checked> checked;
    for (const std::string& path : options.springs) {
        auto one = check_one(path, requirement, *references);
        if (one)
            checked.push_back(std::move(one).value());
        else
            append(wrong, one.error());
    }
    if (!wrong.empty()) return refuse(wrong, err);

    bool all_fit = true;
    nlohmann::ordered_json array = nlohmann::ordered_json::array();
    for (std::size_t i = 0; i < checked.size(); ++i) {
        const Checked& c = checked[i];
        const Judge judge = requirement          ? Judge::requirement
                            : c.file.requirement ? Judge::own_spec
                                                 : Judge::usual_limits;
        const auto outlook = outlook_of(c, judge != Judge::usual_limits, references->tolerances);
        const EvaluationView view{options.springs[i],
                                  c.file.name,
                                  c.grade,
                                  c.requirement,
                                  c.evaluation,
                                  judge,
                                  c.file.measured ? &*c.file.measured : nullptr,
                                  measured_verdicts(c),
                                  outlook ? &*outlook : nullptr,
                                  judge != Judge::usual_limits || c.file.is_temperature_stated};
        all_fit = all_fit && view.fits();
        if (options.json)
            array.push_back(evaluation_json(view));
        else
            out << (i == 0 ? "" : "\n") << evaluation_text(view, options.width);
    }
    if (options.json) {
        out << array.dump(2) << '\n';
    } else if (checked.size() == 1) {
        const bool has_demand = checked.front().file.requirement.has_value();
        const std::string next = what_next(options, *references, all_fit, has_demand);
        if (!next.empty()) out << '\n' << next;
    }
    out << std::flush;
    complain(doubts_on_kept(options.springs, options.wire_file, *references), err);
    return all_fit ? kDone : kNothingFits;
}

}  // namespace seatload::cli
