// SPDX-License-Identifier: MIT
#include <cli/report_command.hpp>

#include <seatload/sheet/report.hpp>

#include <cli/graded_spec.hpp>
#include <cli/kept_place.hpp>
#include <cli/papers.hpp>
#include <cli/session.hpp>
#include <cli/typed_command.hpp>

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

/// What follows a calculation: in a library, what the state of its spec lets be done; else its sheet.
std::string after_report(const ReportOptions& options, const std::optional<KeptPlace>& place) {
    if (place) return kept_next(*place);
    return "check it by hand where you doubt it; it stays with you, and " +
           TypedCommand("sheet").name(options.specs.front()).option("--wire-file", options.wire_file).text() +
           " draws the sheet for the maker.";
}

}  // namespace

int run_report(const ReportOptions& options, std::ostream& out, std::ostream& err) {
    const auto references = load_references(options.wire_file);
    if (!references) return refuse(references.error(), err);
    const int code = write_each(
        options.specs, options.output,
        [&](const std::string& path) { return reckon(path, options.output, *references); }, out, err);
    if (code != kDone) return code;
    out << next_text(after_report(options, kept_place(options.specs.front(), options.wire_file, *references)),
                     options.width)
        << std::flush;
    complain(doubts_on_kept(options.specs, options.wire_file, *references), err);
    return code;
}

}  // namespace seatload::cli
