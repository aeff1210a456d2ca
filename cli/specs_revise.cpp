// SPDX-License-Identifier: MIT
#include <seatload/core/file.hpp>
#include <seatload/core/line_wrap.hpp>
#include <seatload/core/sha256.hpp>
#include <seatload/core/text.hpp>
#include <seatload/io/kept_spec_file.hpp>
#include <seatload/io/spec_file.hpp>
#include <seatload/io/spec_remarks.hpp>
#include <seatload/record/specify.hpp>

#include <cli/specs_actions.hpp>
#include <cli/specs_evidence.hpp>
#include <cli/specs_shelves.hpp>
#include <cli/specs_write.hpp>

namespace seatload::cli {
namespace {

constexpr std::size_t kLongestIndex = 2;  // ISO 7200

/// What a new revision is made from: the text of a file, or of the revision before.
Result<std::string> base_text(const SpecsOptions& options, const OnShelf& before) {
    if (options.with.empty()) return std::string(before.revision().kept.content);
    auto text = read_text_file(options.with);
    if (!text) return Diagnostics(text.error());
    return std::string(io::spec_content(*text));
}

Diagnostics wrong_index(const std::string& index, const OnShelf& before) {
    const std::string& old = before.revision().index();
    if (index.empty())
        return {error("bad-index"_id, "the revision after \"" + old + "\" is not known", "name it with --as INDEX")};
    if (index.size() > kLongestIndex ||
        index.find_first_not_of("ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789") != std::string::npos)
        return {error("bad-index"_id, "--as: \"" + index + "\" is no index of a revision",
                      "one or two capital letters or digits make one")};
    const bool comes_after = index.size() > old.size() || (index.size() == old.size() && index > old);
    if (!comes_after || before.shelf.revision(index) != nullptr)
        return {error("bad-index"_id, "--as: \"" + index + "\" does not come after \"" + old + "\"",
                      "revisions are told apart and put in order by their index")};
    return {};
}

Diagnostics not_the_same_part(const record::Spec& now, const OnShelf& before, const std::string& file) {
    const demand::Identity& old = before.revision().kept.spec.identity;
    if (record::address_of(now.identity) == before.shelf.address && now.identity.number == old.number) return {};
    return {error_in(
        file, "wrong-spring"_id,
        "this is " + now.identity.number + ", " + now.identity.engine + ", " + now.identity.position,
        "a revision of " + before.shelf.address.text() + " keeps its number " + old.number + ", engine and position")};
}

/// The spec of the new revision: the list of changes goes on.
record::Spec revised(record::Spec spec, const OnShelf& before, const std::string& index, const record::Step& step) {
    const record::Spec& old = before.revision().kept.spec;
    spec.revisions = old.revisions;
    if (spec.revisions.empty())
        spec.revisions.push_back(record::first_issue(
            old.identity, old.identity.date.empty() ? before.revision().kept.history.front().date : old.identity.date));
    spec.revisions.push_back({index, step.date, step.reason, step.by});
    spec.identity.revision = index;
    spec.identity.date = step.date;
    return spec;
}

Diagnostics not_to_be_revised(const OnShelf& before) {
    if (before.revision().state != record::State::draft) return {};
    return {error_in(before.revision().file, "cannot-follow"_id, "this revision is a draft",
                     "a draft is changed by editing its file")};
}

/// What becomes of the revisions before: the one in force stays so, one on trial is given up.
std::string fate_of_before(const OnShelf& before) {
    std::string words;
    if (before.revision().state == record::State::trial)
        words = " Revision " + before.revision().index() + " was only on trial, and is given up for this one.";
    const record::KeptRevision* const in_force = before.shelf.in_force();
    if (in_force == nullptr) return words;
    return words + (in_force == &before.revision() ? " The revision before" : " Revision " + in_force->index()) +
           " stays in force until this one is approved.";
}

/// Makes the new revision; its index comes back, and what becomes of the one before.
Result<std::string> revise(const SpecsOptions& options, const References& references, record::Address& address,
                           std::string& fate) {
    const auto library = io::SpecLibrary::open(options.library, io::SpecLibrary::For::writing);
    if (!library) return Diagnostics(library.error());
    const auto before = find_on_shelf(*library, options, references.wires, options.specs.front(), {});
    if (!before) return Diagnostics(before.error());
    address = before->shelf.address;
    fate = fate_of_before(*before);
    if (Diagnostics wrong = not_to_be_revised(*before); !wrong.empty()) return wrong;
    if (Diagnostics wrong = foreign_line(before->revision(), Severity::error); !wrong.empty()) return wrong;
    if (trim(options.step.reason).empty())
        return error_in(before->revision().file, "no-reason"_id, "it is not said why it is changed",
                        "say it with --reason WORDS: it goes into the list of revisions on the sheet");
    auto step = told_step(options.step, record::Step::Kind::draft, before->revision().kept.history);
    if (!step) return Diagnostics(step.error());
    record::Step draft = std::move(step).value();
    const std::string index = options.as.empty() ? record::next_index(before->revision().index()) : options.as;
    if (Diagnostics wrong = wrong_index(index, *before); !wrong.empty()) return wrong;
    const auto evidence = read_evidence(options.step);
    if (!evidence) return Diagnostics(evidence.error());
    const auto text = base_text(options, *before);
    if (!text) return Diagnostics(text.error());
    const std::string file = options.with.empty() ? before->revision().file : options.with;
    const auto base = io::read_spec(*text, file, references.wires);
    if (!base) return Diagnostics(base.error());
    if (Diagnostics wrong = not_the_same_part(*base, *before, file); !wrong.empty()) return wrong;
    const record::Spec spec = record::with_tips_ordered(revised(*base, *before, index, draft),
                                                        grade_of(*base, references.wires), references.tolerances);
    const std::string content = without_seal(io::written_with_remarks(spec, without_seal(*text)));
    draft.sha256 = sha256_hex(content);
    if (Diagnostics wrong = keep_evidence(*library, address, *evidence, draft); !wrong.empty()) return wrong;
    const record::KeptSpec& old = before->revision().kept;
    // First the old one aside, which no reader minds, then the new one in its place.
    if (Diagnostics wrong =
            library->put_earlier(address, before->revision().index(), io::write_kept_spec(old.content, old.history));
        !wrong.empty())
        return wrong;
    if (Diagnostics wrong = write_new(*library, address, content, draft, references.wires); !wrong.empty())
        return wrong;
    return index;
}

}  // namespace

int run_specs_revise(const SpecsOptions& options, const References& references, std::ostream& out, std::ostream& err) {
    record::Address address;
    std::string fate;
    const auto index = revise(options, references, address, fate);
    if (!index) return refuse(index.error(), err);
    const std::string path = (std::filesystem::path(options.library) / (address.text() + ".toml")).string();
    out << path << ": draft of revision " << *index << '\n'
        << wrapped("  Next: ",
                   "make the change in it" + std::string(options.with.empty() ? "" : " if there is more to make") +
                       "; " + specs_command(options, "diff").name(address.text()).text() + " shows what it brings." +
                       fate,
                   options.width, 4);
    return kDone;
}

}  // namespace seatload::cli
