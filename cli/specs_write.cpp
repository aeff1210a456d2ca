// SPDX-License-Identifier: MIT
#include <cli/specs_write.hpp>

#include <seatload/io/kept_spec_file.hpp>
#include <seatload/io/spec_file.hpp>
#include <seatload/io/spec_remarks.hpp>
#include <seatload/record/specify.hpp>

#include <cli/spec_seal.hpp>

namespace seatload::cli {
namespace {

constexpr std::string_view kSeal = "# as written by seatload ";

Diagnostics not_stated(const demand::Identity& identity, const std::string& file) {
    Diagnostics wrong;
    const auto want = [&](const std::string& value, const std::string& key, const std::string& example) {
        if (value.empty())
            wrong.push_back(error_in(file, "incomplete-address"_id,
                                     "identity." + key + " is missing, which a library goes by",
                                     "write under [identity]: " + key + " = \"" + example + "\""));
    };
    want(identity.engine, "engine", "Ottermere M14");
    want(identity.position, "position", "ahead latch plunger");
    want(identity.number, "number", "OM14-LAT-AHD");
    want(identity.revision, "revision", "A");
    return wrong;
}

/// That what is about to be written can be read again, and says the same.
void see_that_it_reads_back(std::string_view text, std::string_view content, std::size_t steps,
                            const wire::Catalogue& wires) {
    const auto again = io::read_kept_spec(text, "what is about to be written", wires);
    if (!again) throw InternalError("a kept spec that does not read back:\n" + render(again.error()));
    SEATLOAD_ASSERT(again->content == content);
    SEATLOAD_ASSERT(again->history.size() == steps);
}

}  // namespace

std::string without_seal(std::string_view text) {
    const std::size_t at = text.rfind(kSeal);
    const bool is_last = at != std::string_view::npos && text.find('\n', at) + 1 == text.size();
    return std::string(is_last ? text.substr(0, at) : text);
}

Result<std::string> content_for_library(std::string_view text, const std::string& file, const References& references) {
    const std::string_view content = io::spec_content(text);
    const auto spec = io::read_spec(content, file, references.wires);
    if (!spec) return Diagnostics(spec.error());
    if (Diagnostics wrong = not_stated(spec->identity, file); !wrong.empty()) return wrong;
    const record::Spec whole =
        record::with_tips_ordered(*spec, grade_of(*spec, references.wires), references.tolerances);
    const std::string arranged = whole.limits.tips_degrees == spec->limits.tips_degrees
                                     ? io::arranged_spec(content, file, references.wires).value()
                                     : io::written_with_remarks(whole, content);
    const Diagnostics& said = spec.error();
    return {is_sealed(arranged) ? arranged : without_seal(arranged), said};
}

Diagnostics write_step(const io::SpecLibrary& library, const OnShelf& on_shelf, const record::Step& step,
                       const wire::Catalogue& wires) {
    const record::KeptRevision& revision = on_shelf.revision();
    record::History history = revision.kept.history;
    history.push_back(step);
    const std::string text = io::write_kept_spec(revision.kept.content, history);
    see_that_it_reads_back(text, revision.kept.content, history.size(), wires);
    const record::Address& address = on_shelf.shelf.address;
    return on_shelf.is_latest() ? library.put(address, text) : library.put_earlier(address, revision.index(), text);
}

Diagnostics write_new(const io::SpecLibrary& library, const record::Address& address, std::string_view content,
                      const record::Step& step, const wire::Catalogue& wires) {
    const std::string text = io::write_kept_spec(content, {step});
    see_that_it_reads_back(text, content, 1, wires);
    return library.put(address, text);
}

}  // namespace seatload::cli
