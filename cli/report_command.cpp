// SPDX-License-Identifier: MIT
#include <cli/report_command.hpp>

#include <seatload/sheet/report.hpp>

#include <cli/graded_spec.hpp>
#include <cli/kept_place.hpp>
#include <cli/papers.hpp>
#include <cli/session.hpp>

namespace seatload::cli {
namespace {

Result<Paper> reckon(const std::string& path, const std::filesystem::path& folder, const References& refs) {
    const auto spec = read_graded_spec(path, refs.wires);
    if (!spec) return Diagnostics(spec.error());
    auto pdf = sheet::calculation_report_pdf(
        {{{spec->spec, spec->grade}}, refs.tolerances, refs.wires.sources, refs.english, std::nullopt});
    const Diagnostics said = placed(pdf.error(), path);
    if (!pdf) return said;
    const std::string name = std::filesystem::path(path).stem().string() + "-calculation.pdf";
    return Result<Paper>(Paper{folder / name, std::move(pdf).value()}, said);
}

}  // namespace

int run_report(const ReportOptions& options, std::ostream& out, std::ostream& err) {
    const auto references = load_references(options.wire_file);
    if (!references) return refuse(references.error(), err);
    const int code = write_each(
        options.specs, options.output,
        [&](const std::string& path) { return reckon(path, options.output, *references); }, out, err);
    if (code != kDone) return code;
    if (const auto place = kept_place(options.specs.front(), options.wire_file, *references))
        out << next_text(kept_next(*place), options.width) << std::flush;
    complain(doubts_on_kept(options.specs, options.wire_file, *references), err);
    return code;
}

}  // namespace seatload::cli
