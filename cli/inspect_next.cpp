// SPDX-License-Identifier: MIT
#include <cli/inspect_next.hpp>

#include <optional>

#include <seatload/core/sha256.hpp>

#include <cli/specs_shelves.hpp>
#include <cli/specs_write.hpp>
#include <cli/typed_command.hpp>

namespace seatload::cli {
namespace {

namespace fs = std::filesystem;

constexpr const char* kWho = "--by NAME --date DATE";

/// Libraries the spec may be kept in: the one its file lies in, as a revision last made or as an earlier one; the
/// usual.
std::vector<std::string> libraries_near(const std::string& spec) {
    std::vector<std::string> folders;
    for (const char* up : {"..", "../.."}) {
        std::string folder = (fs::path(spec).parent_path() / up).lexically_normal().string();
        while (folder.size() > 1 && folder.back() == '/') folder.pop_back();
        folders.push_back(folder.empty() ? "." : folder);
    }
    folders.push_back(SpecsOptions().library);
    return folders;
}

/// Where a spec is kept.
struct Place {
    SpecsOptions options;
    record::Shelf shelf;
    const record::KeptRevision* revision = nullptr;  ///< that of the same contents; null: another one is kept there
};

/// The place of the spec with this content; else one where another spec of its engine and position is kept.
std::optional<Place> place_of(const InspectOptions& options, const record::Address& address, const std::string& sha256,
                              const References& references) {
    std::optional<Place> other;
    for (const std::string& folder : libraries_near(options.spec)) {
        const auto library = io::SpecLibrary::open(folder, io::SpecLibrary::For::reading);
        if (!library || !library->has(address)) continue;
        Place place;
        place.options.library = folder;
        place.options.wire_file = options.wire_file;
        place.shelf = library->shelf(address, references.wires);
        for (const record::KeptRevision& revision : place.shelf.revisions)
            if (revision.kept.sha256 == sha256) place.revision = &revision;
        if (place.revision != nullptr) return place;  // moving keeps what the pointer points to
        if (!other) other = std::move(place);
    }
    return other;
}

std::string next_at(const Place& place, const InspectOptions& options, const FreshRecord& record) {
    const std::string address = place.shelf.address.text();
    if (place.revision == nullptr)
        return place.options.library +
               " keeps another spec of this engine and position, of which this lot is no evidence; " +
               specs_command(place.options, "diff").name(address).option("--with", options.spec).text() +
               " shows what differs.";
    if (place.revision->state == record::State::withdrawn)
        return "the spec was withdrawn: keep the record, of which the library takes no more.";
    const bool approves =
        place.revision->state == record::State::trial && record.verdict == inspection::Verdict::accept;
    const bool is_latest = place.revision == place.shelf.latest();
    return specs_command(place.options, approves ? "approve" : "evidence")
               .name(address)
               .option("--revision", is_latest ? "" : place.revision->index())
               .option("--lot", record.path)
               .open(kWho)
               .text() +
           (approves ? " approves the spec by this lot." : " keeps the record with the spec.");
}

/// How a spec that no library keeps comes into one with the record; it may be put in order on the way, and would then
/// no longer be the one the lot was inspected by.
std::string next_without_place(const InspectOptions& options, const FreshRecord& record, const References& references) {
    const auto text = read_text_file(options.spec);
    const auto content =
        text ? content_for_library(*text, options.spec, references) : Result<std::string>(text.error());
    if (!content)
        return "a library keeps records with specs that state engine, position, number and revision, which this one "
               "does "
               "not all: inspect the lot by the spec you keep, and its record belongs there.";
    SpecsOptions usual;
    usual.wire_file = options.wire_file;
    const bool stays_the_same = sha256_hex(*content) == record.spec_sha256;
    const std::string add = specs_command(usual, "add")
                                .name(options.spec)
                                .option("--lot", stays_the_same ? record.path : "")
                                .open(kWho)
                                .text();
    if (stays_the_same) return add + " takes the spec into a library, and the record with it.";
    return add +
           " takes the spec into a library and puts it in order; inspect the lot by the file kept there, and its "
           "record belongs with it.";
}

std::string next_for_record(const InspectOptions& options, const record::Spec& spec, const FreshRecord& record,
                            const References& references) {
    const demand::Identity& identity = spec.identity;
    if (!identity.engine.empty() && !identity.position.empty())
        if (const auto place = place_of(options, record::address_of(identity), record.spec_sha256, references))
            return next_at(*place, options, record);
    return next_without_place(options, record, references);
}

}  // namespace

std::string inspect_next(const InspectOptions& options, const record::Spec& spec, const FreshRecord& record,
                         const References& references) {
    std::string of_record = next_for_record(options, spec, record, references);
    if (record.verdict != inspection::Verdict::reject) return of_record;
    return "send " + shell_word(record.report) +
           " to the maker, and agree with him in writing whether he reworks the lot, replaces it, or you keep what "
           "still serves by concession; fit none of it until then; " +
           of_record;
}

}  // namespace seatload::cli
