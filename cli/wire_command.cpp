// SPDX-License-Identifier: MIT
#include <cli/wire_command.hpp>

#include <seatload/core/file.hpp>
#include <seatload/core/text.hpp>
#include <seatload/io/builtin.hpp>
#include <seatload/io/wire_file.hpp>
#include <seatload/units/format.hpp>
#include <seatload/units/parse.hpp>
#include <seatload/wire/strength.hpp>

#include <cli/papers.hpp>
#include <cli/session.hpp>
#include <cli/wire_view.hpp>

namespace seatload::cli {
namespace {

Result<wire::Catalogue> catalogue_for(const WireOptions& options) {
    Result<wire::Catalogue> builtin = io::builtin_catalogue();
    if (!builtin) throw InternalError("the built-in wire data cannot be read:\n" + render(builtin.error()));
    if (options.file.empty()) return builtin;
    Result<std::string> text = read_text_file(options.file);
    if (!text) return text.error();
    return io::read_wire_file(*text, options.file, *builtin);
}

/// The grade asked for, null when all are, and what is wrong with the name.
const wire::Grade* grade_for(const WireOptions& options, const wire::Catalogue& catalogue, Diagnostics& wrong) {
    if (options.grade.empty()) return nullptr;
    const wire::Grade* grade = catalogue.find(options.grade);
    if (grade != nullptr) return grade;
    std::string hint = catalogue.suggestion(options.grade);
    if (hint.empty()) hint = "\"seatload wire\" lists the grades";
    wrong.push_back(error("unknown-grade"_id, "no wire grade is called \"" + options.grade + "\"", std::move(hint)));
    return nullptr;
}

void check_series(const WireOptions& options, const wire::Catalogue& catalogue, Diagnostics& wrong) {
    if (catalogue.find_series(options.series) != nullptr) return;
    const std::vector<std::string> known = catalogue.series_ids();
    std::string hint = did_you_mean(options.series, known);
    if (hint.empty()) hint = "known: " + join(known, ", ");
    wrong.push_back(
        error("unknown-series"_id, "no series of stock sizes is called \"" + options.series + "\"", std::move(hint)));
}

std::optional<Length> diameter_for(const WireOptions& options, const wire::Grade* grade, Diagnostics& wrong) {
    if (options.diameter.empty()) return std::nullopt;
    const units::Parsed<Length> parsed = units::parse<Length>(options.diameter);
    if (!parsed.value) {
        wrong.push_back(error(parsed.problem.id, "--diameter \"" + options.diameter + "\": " + parsed.problem.message,
                              parsed.problem.hint));
    } else if (grade != nullptr && !wire::strength_at(*grade, *parsed.value)) {
        const wire::DiameterRange range = wire::strength_range(*grade);
        wrong.push_back(error("no-strength"_id,
                              "no strength of " + grade->id + " is known at " + units::shown_wire(*parsed.value),
                              "it is known from " + units::shown_wire(range.smallest) + " to " +
                                  units::shown_wire(range.largest) + " and never extrapolated"));
    }
    return parsed.value;
}

/// How a grade is looked at, or asked for.
std::string what_next(const WireView& view, int width) {
    if (view.grade == nullptr)
        return '\n' + next_text("`seatload wire GRADE` shows the sizes and strengths of one.", width);
    return '\n' + next_text("under [wire] of a requirement, grades = [\"" + view.grade->id +
                                "\"] has `seatload size` wind of it alone.",
                            width);
}

}  // namespace

int run_wire(const WireOptions& options, std::ostream& out, std::ostream& err) {
    const Result<wire::Catalogue> catalogue = catalogue_for(options);
    if (!catalogue) {
        complain(catalogue.error(), err);
        return 2;
    }
    Diagnostics wrong = catalogue.error();
    WireView view{*catalogue, grade_for(options, *catalogue, wrong), options.series, {}};
    check_series(options, *catalogue, wrong);
    view.diameter = diameter_for(options, view.grade, wrong);
    complain(wrong, err);
    if (has_error(wrong)) return 2;
    out << (options.json ? wire_json(view) : wire_text(view, options.width) + what_next(view, options.width));
    return 0;
}

}  // namespace seatload::cli
