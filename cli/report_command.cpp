// SPDX-License-Identifier: MIT
#include <cli/report_command.hpp>

#include <seatload/io/builtin.hpp>
#include <seatload/io/spec_file.hpp>
#include <seatload/sheet/report.hpp>

#include <cli/papers.hpp>
#include <cli/session.hpp>

namespace seatload::cli {
namespace {

Result<Paper> reckon(const std::string& path, const std::filesystem::path& folder, const References& refs) {
    auto spec = read_file(
        path, [&](std::string_view text, const std::string& name) { return io::read_spec(text, name, refs.wires); });
    if (!spec) return Diagnostics(spec.error());
    const wire::Grade grade = spec->own_grade ? *spec->own_grade : *refs.wires.find(spec->wire_grade);
    const sheet::Wording english(io::builtin_wording());
    auto pdf =
        sheet::calculation_report_pdf({{{*spec, grade}}, refs.tolerances, refs.wires.sources, english, std::nullopt});
    const Diagnostics said = placed(pdf.error(), path);
    if (!pdf) return said;
    const std::string name = std::filesystem::path(path).stem().string() + "-calculation.pdf";
    return Result<Paper>(Paper{folder / name, std::move(pdf).value()}, said);
}

}  // namespace

int run_report(const ReportOptions& options, std::ostream& out, std::ostream& err) {
    const auto references = load_references(options.wire_file);
    if (!references) return refuse(references.error(), err);
    std::vector<Paper> papers;
    Diagnostics said;
    for (const std::string& path : options.specs) {
        auto paper = reckon(path, options.output, *references);
        said.insert(said.end(), paper.error().begin(), paper.error().end());
        if (paper) papers.push_back(std::move(paper).value());
    }
    err << render(sorted(said));
    if (has_error(said)) return kBadInput;
    if (const Diagnostics wrong = write_papers(options.output, papers); !wrong.empty()) return refuse(wrong, err);
    for (const Paper& paper : papers) out << paper.path.string() << '\n';
    return kDone;
}

}  // namespace seatload::cli
