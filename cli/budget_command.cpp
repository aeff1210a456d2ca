// SPDX-License-Identifier: MIT
#include <cli/budget_command.hpp>

#include <filesystem>

#include <nlohmann/json.hpp>
#include <seatload/core/file_name.hpp>
#include <seatload/io/builtin.hpp>
#include <seatload/io/plunger_file.hpp>
#include <seatload/io/plunger_requirement.hpp>
#include <seatload/sheet/pressure_sheet.hpp>

#include <cli/budget_spring.hpp>
#include <cli/budget_view.hpp>
#include <cli/papers.hpp>
#include <cli/session.hpp>
#include <cli/spec_seal.hpp>
#include <cli/typed_command.hpp>

namespace seatload::cli {
namespace {

/// The requirement, when some spring can meet it, and the pressure diagram in any case.
Result<std::vector<Paper>> papers_of(const BudgetOptions& options, const record::PlungerFile& file,
                                     const demand::Budget& budget) {
    const std::string name = file_stem(file.identity.engine + ' ' + file.identity.position);
    const std::filesystem::path folder = options.output;
    std::vector<Paper> papers;
    if (budget.is_possible()) {
        const std::string source = std::filesystem::path(options.plunger).filename().string();
        const std::filesystem::path path = folder / (name + "-requirement.toml");
        // completed by hand it is kept; as the last run wrote it, it follows the plunger
        if (!options.overwrite)
            if (Diagnostics wrong = edits_in_the_way(path, "requirement", "budget"); !wrong.empty()) return wrong;
        papers.push_back({path, sealed(io::write_budget_requirement(file, budget, source), "budget")});
    }
    const sheet::Wording english(io::builtin_wording());
    auto diagram = sheet::pressure_sheet_pdf({file, budget, english});
    const Diagnostics said = placed(diagram.error(), options.plunger);
    if (!diagram) return said;
    papers.push_back({folder / (name + "-pressure.pdf"), std::move(diagram).value()});
    return {std::move(papers), said};
}

/// What to do with what was found: go on with the requirement, write it, or mend the plunger, as was told above.
std::string what_next(const BudgetOptions& options, const demand::Budget& budget, const std::vector<Paper>& papers) {
    if (!budget.is_possible()) return {};
    if (papers.empty())
        return '\n' + next_text("with --output FOLDER a requirement to go on with and a pressure sheet are written.",
                                options.width);
    return next_text("add to the requirement what else is known of wire and limits, and " +
                         TypedCommand("size").name(papers.front().path.string()).text() + " finds the springs.",
                     options.width);
}

}  // namespace

int run_budget(const BudgetOptions& options, std::ostream& out, std::ostream& err) {
    auto read = read_file(options.plunger, io::read_plunger);
    complain(read.error(), err);
    if (!read) return kBadInput;
    record::PlungerFile file = std::move(read).value();
    if (!options.spring.empty())
        if (const Diagnostics wrong = look_at_spring(options.spring, file); !wrong.empty()) return refuse(wrong, err);
    const demand::Budget budget = demand::plunger_budget(file.plunger, file.spring);
    const BudgetView view{options.plunger, file, budget};
    std::vector<Paper> papers;
    if (!options.output.empty()) {
        auto made = papers_of(options, file, budget);
        complain(made.error(), err);
        if (!made) return kBadInput;
        papers = std::move(made).value();
        if (const Diagnostics wrong = write_papers(options.output, papers); !wrong.empty()) return refuse(wrong, err);
    }
    if (options.json)
        out << budget_json(view).dump(2) << '\n';
    else
        out << budget_text(view, options.width);
    if (!options.json) out << (papers.empty() ? "" : written_text(papers)) << what_next(options, budget, papers);
    const bool spring_holds = !file.spring || broken_titles(view).empty();
    return budget.is_possible() && spring_holds ? kDone : kNothingFits;
}

}  // namespace seatload::cli
