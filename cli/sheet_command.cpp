// SPDX-License-Identifier: MIT
#include <cli/sheet_command.hpp>

#include <seatload/core/diagnostic.hpp>
#include <seatload/io/spec_file.hpp>
#include <seatload/record/makers_copy.hpp>
#include <seatload/record/specify.hpp>
#include <seatload/sheet/spring_sheet.hpp>
#include <seatload/sheet/tamper_mark.hpp>

#include <cli/graded_spec.hpp>
#include <cli/kept_place.hpp>
#include <cli/papers.hpp>
#include <cli/session.hpp>
#include <cli/spec_extract.hpp>
#include <cli/typed_command.hpp>

namespace seatload::cli {
namespace {

Result<Paper> draw(const std::string& path, const std::filesystem::path& folder, const References& refs) {
    const auto read = read_graded_spec(path, refs.wires);
    if (!read) return Diagnostics(read.error());
    const wire::Grade& grade = read->grade;
    const record::Spec spec = record::with_tips_ordered(read->spec, grade, refs.tolerances);
    auto pdf = sheet::spring_sheet_pdf(
        {spec, grade, refs.tolerances, refs.paper, 1, 1, io::write_spec(record::makers_copy(spec))});
    const Diagnostics said = placed(pdf.error(), path);
    if (!pdf) return said;
    const std::filesystem::path name = std::filesystem::path(path).filename().replace_extension(".pdf");
    return Result<Paper>(Paper{folder / name, std::move(pdf).value()}, said);
}

/// What follows a sheet: in a library, what the state of its spec lets be done; else it may come into one.
std::string after_drawing(const SheetOptions& options, const std::optional<KeptPlace>& place) {
    if (place) return kept_next(*place);
    return "look it through before it goes to the maker; " +
           TypedCommand("specs add")
               .name(options.files.front())
               .option("--wire-file", options.wire_file)
               .open("--by NAME --date DATE")
               .text() +
           " keeps the spec under its engine.";
}

int draw_all(const SheetOptions& options, const References& references, std::ostream& out, std::ostream& err) {
    const int code = write_each(
        options.files, options.output, [&](const std::string& path) { return draw(path, options.output, references); },
        out, err);
    if (code != kDone) return code;
    out << next_text(after_drawing(options, kept_place(options.files.front(), options.wire_file, references)),
                     options.width)
        << std::flush;
    complain(doubts_on_kept(options.files, options.wire_file, references), err);
    return code;
}

int extract_all(const SheetOptions& options, const References& references, std::ostream& out, std::ostream& err) {
    const Extracted extracted = extract_specs(options.files, options.output, references.wires);
    complain(extracted.said, err);
    complain(extracted.tampered, err);
    if (has_error(extracted.said)) return kBadInput;
    if (has_error(extracted.tampered)) return kTampered;
    if (const Diagnostics wrong = write_papers(options.output, extracted.papers); !wrong.empty())
        return refuse(wrong, err);
    for (const Paper& paper : extracted.papers)
        out << paper.path.string() << "\n  mark " << sheet::tamper_mark(paper.bytes) << '\n';
    if (!extracted.papers.empty())
        out << next_text(TypedCommand("check")
                                 .name(extracted.papers.front().path.string())
                                 .option("--wire-file", options.wire_file)
                                 .text() +
                             " looks the spring over; compare the mark with that on the paper.",
                         options.width);
    return kDone;
}

}  // namespace

int run_sheet(const SheetOptions& options, std::ostream& out, std::ostream& err) {
    const auto references = load_references(options.wire_file, options.look);
    if (!references) return refuse(references.error(), err);
    if (options.extract && options.look != PaperOptions{})
        return refuse({error("exclusive"_id, "--extract takes a spec out as it is, and draws nothing",
                             "leave out --language, --wording, --units, --paper and --portrait")},
                      err);
    return (options.extract ? extract_all : draw_all)(options, *references, out, err);
}

}  // namespace seatload::cli
