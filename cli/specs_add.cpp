// SPDX-License-Identifier: MIT
#include <seatload/core/file.hpp>
#include <seatload/core/line_wrap.hpp>
#include <seatload/core/sha256.hpp>
#include <seatload/io/spec_file.hpp>

#include <cli/specs_actions.hpp>
#include <cli/specs_evidence.hpp>
#include <cli/specs_shelves.hpp>
#include <cli/specs_write.hpp>

namespace seatload::cli {
namespace {

/// A spec about to be taken in.
struct Incoming {
    record::Address address;
    std::string content;
};

Result<Incoming> incoming(const std::string& file, const References& references) {
    const auto text = read_text_file(file);
    if (!text) return Diagnostics(text.error());
    auto content = content_for_library(*text, file, references);
    if (!content) return Diagnostics(content.error());
    const auto spec = io::read_spec(*content, file, references.wires);
    SEATLOAD_ASSERT(spec.has_value());
    return Incoming{record::address_of(spec->identity), std::move(content).value()};
}

/// Warnings of what keeps it from being drawn: a draft may be wrong as long as it is one.
Diagnostics contradictions(const Incoming& incoming, const std::string& file, const References& references) {
    const auto spec = io::read_spec(incoming.content, file, references.wires);
    SEATLOAD_ASSERT(spec.has_value());
    Diagnostics said = not_to_be_drawn(*spec, file, references);
    for (Diagnostic& each : said) each.severity = Severity::warning;
    return said;
}

/// Takes one file in; its address comes back, and what is to be mended before it goes on trial.
Result<record::Address> take_in(const std::string& file, const SpecsOptions& options, const References& references) {
    const auto spec = incoming(file, references);
    if (!spec) return Diagnostics(spec.error());
    const auto evidence = read_evidence(options.step);
    if (!evidence) return Diagnostics(evidence.error());
    auto step = told_step(options.step, record::Step::Kind::draft, {});
    if (!step) return Diagnostics(step.error());
    const auto library = io::SpecLibrary::open(options.library, io::SpecLibrary::For::writing);
    if (!library) return Diagnostics(library.error());
    if (library->has(spec->address))
        return error_in(file, "kept-already"_id,
                        "a spec of this engine and position is kept already: " + spec->address.text(),
                        "a changed one comes in by " + specs_command(options, "revise")
                                                           .name(spec->address.text())
                                                           .option("--with", file)
                                                           .open("--reason WORDS --by NAME --date DATE")
                                                           .text());
    record::Step draft = std::move(step).value();
    draft.sha256 = sha256_hex(spec->content);
    if (Diagnostics wrong = keep_evidence(*library, spec->address, *evidence, draft); !wrong.empty()) return wrong;
    if (Diagnostics wrong = write_new(*library, spec->address, spec->content, draft, references.wires); !wrong.empty())
        return wrong;
    return {spec->address, contradictions(*spec, file, references)};
}

}  // namespace

int run_specs_add(const SpecsOptions& options, const References& references, std::ostream& out, std::ostream& err) {
    const std::string& file = options.specs.front();
    const auto address = take_in(file, options, references);
    if (!address) return refuse(address.error(), err);
    const std::string path = (std::filesystem::path(options.library) / (address->text() + ".toml")).string();
    out << path << ": draft\n"
        << wrapped("  Next: ",
                   "edit it as long as it is a draft; " +
                       specs_command(options, "trial").name(address->text()).open("--by NAME --date DATE").text() +
                       " freezes it, for springs to be made and tried.",
                   options.width, 4)
        << std::flush;
    complain(address.error(), err);
    return kDone;
}

}  // namespace seatload::cli
