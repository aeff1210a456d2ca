// SPDX-License-Identifier: MIT
#include <seatload/io/spec_library.hpp>

#include <algorithm>

#include <seatload/core/file.hpp>
#include <seatload/core/file_name.hpp>
#include <seatload/io/kept_spec_file.hpp>
#include <seatload/sizing/workers.hpp>

namespace seatload::io {
namespace {

constexpr std::string_view kEnding = ".toml";
constexpr std::string_view kEarlier = "revision-";
constexpr std::size_t kLongestBeside = 60;  // of a name, so that a number still goes behind it
constexpr std::size_t kBlock = 16;          // specs a thread takes at a time

std::string file_of(const record::Address& address) { return address.position + std::string(kEnding); }

std::string earlier_file(const std::string& index) { return std::string(kEarlier) + index + std::string(kEnding); }

bool is_earlier_file(const std::string& name) { return name.starts_with(kEarlier) && name.ends_with(kEnding); }

/// The position whose spec a file of this name is, or nothing: names are those that words make.
std::optional<std::string> position_of(const std::string& name) {
    if (!name.ends_with(kEnding)) return std::nullopt;
    std::string stem = name.substr(0, name.size() - kEnding.size());
    if (stem.empty() || file_stem(stem) != stem) return std::nullopt;
    return stem;
}

Diagnostic stranger(const std::filesystem::path& path, DiagnosticId id, const std::string& why) {
    Diagnostic d = error_in(path.string(), id, why, "move it out of the library");
    d.severity = Severity::warning;
    return d;
}

void add(Diagnostics& all, const Diagnostics& more) { all.insert(all.end(), more.begin(), more.end()); }

/// What a folder of an engine holds: specs, and folders beside them.
Diagnostics list_engine(const Folder& engine, const std::string& name, std::vector<record::Address>& found) {
    const auto entries = engine.entries();
    if (!entries) return entries.error();
    Diagnostics said;
    for (const Folder::Entry& entry : *entries) {
        const auto position = position_of(entry.name);
        if (entry.kind == Folder::Kind::file && position) {
            found.push_back({name, *position});
        } else if (entry.kind == Folder::Kind::folder) {
            if (!engine.has(entry.name + std::string(kEnding)))
                said.push_back(
                    stranger(engine.path() / entry.name, "stranger-in-library"_id, "a folder beside no spec"));
        } else {
            said.push_back(stranger(engine.path() / entry.name, "stranger-in-library"_id,
                                    entry.kind == Folder::Kind::other ? "a link or special file; links are not followed"
                                                                      : "no spec by its name"));
        }
    }
    return said;
}

/// Reads one file of a revision into a shelf.
void read_revision(const Folder& folder, const std::string& name, const wire::Catalogue& wires, record::Shelf& shelf) {
    const std::string shown = (folder.path() / name).string();
    const auto text = folder.read(name);
    if (!text) return add(shelf.wrong, text.error());
    auto kept = read_kept_spec(*text, shown, wires);
    if (!kept) return add(shelf.wrong, kept.error());
    shelf.revisions.push_back({shown, std::move(kept).value(), {}});
}

/// Reads the folder beside a spec. A revision that is also the one last made was left there by a revise that did not
/// get to its end, and says nothing new.
void read_beside(const Folder& engine, const wire::Catalogue& wires, record::Shelf& shelf) {
    const auto beside = engine.inside(shelf.address.position);
    if (!beside) return add(shelf.wrong, beside.error());
    const auto entries = beside->entries();
    if (!entries) return add(shelf.wrong, entries.error());
    const std::string latest = shelf.revisions.empty() ? "" : earlier_file(shelf.revisions.front().index());
    for (const Folder::Entry& entry : *entries) {
        if (entry.kind != Folder::Kind::file)
            shelf.wrong.push_back(
                stranger(beside->path() / entry.name, "stranger-in-library"_id, "a link, a folder or a special file"));
        else if (!is_earlier_file(entry.name))
            shelf.beside.push_back(entry.name);
        else if (entry.name != latest)
            read_revision(*beside, entry.name, wires, shelf);
    }
}

/// The name of a file that is to lie beside a spec, where it can: a table may be named in another file. What leads
/// elsewhere, has blanks or looks like a revision gets a name made of its letters.
std::string name_beside(const std::string& path, int number) {
    const std::string last = path.substr(path.find_last_of('/') + 1);
    const std::size_t point = last.rfind('.');
    const bool serves =
        is_plain_file_name(last) && last.find(' ') == std::string::npos && last.size() <= kLongestBeside;
    std::string stem = serves ? last.substr(0, point) : file_stem(last.substr(0, point)).substr(0, kLongestBeside);
    if (stem.starts_with(kEarlier)) stem = "file-" + file_stem(stem);
    if (number > 1) stem += '-' + std::to_string(number);
    if (point == std::string::npos) return stem;
    const std::string ending = last.substr(point + 1);
    return stem + '.' + (serves ? ending : file_stem(ending).substr(0, 8));
}

}  // namespace

Result<SpecLibrary> SpecLibrary::open(const std::filesystem::path& folder, For purpose) {
    const bool writes = purpose == For::writing;
    if (writes)
        if (Diagnostics wrong = make_folder(folder); !wrong.empty()) return wrong;
    auto root = Folder::open(folder);
    if (!root) {
        Diagnostics wrong = root.error();
        wrong.front().hint = "a library of specs is a folder, named with --library; `seatload specs add` begins one";
        return wrong;
    }
    auto lock = FolderLock::take(*root, writes ? FolderLock::Kind::exclusive : FolderLock::Kind::shared);
    if (!lock) return Diagnostics(lock.error());
    return SpecLibrary(std::move(root).value(), std::move(lock).value());
}

Result<std::vector<record::Address>> SpecLibrary::addresses() const {
    const auto entries = root_.entries();
    if (!entries) return Diagnostics(entries.error());
    std::vector<record::Address> found;
    Diagnostics said;
    for (const Folder::Entry& entry : *entries) {
        if (entry.kind == Folder::Kind::file) continue;  // a README, a licence: no engine's
        const auto engine = root_.inside(entry.name);
        if (entry.kind == Folder::Kind::other || !engine)
            said.push_back(stranger(root_.path() / entry.name, "stranger-in-library"_id,
                                    "a link or special file; links are not followed"));
        else
            add(said, list_engine(*engine, entry.name, found));
    }
    std::sort(found.begin(), found.end());
    return {std::move(found), std::move(said)};
}

record::Shelf SpecLibrary::shelf(const record::Address& address, const wire::Catalogue& wires, bool earlier) const {
    record::Shelf shelf;
    shelf.address = address;
    const auto engine = root_.inside(address.engine);
    if (!engine) {
        shelf.wrong = engine.error();
        return shelf;
    }
    read_revision(*engine, file_of(address), wires, shelf);
    if (earlier && engine->has(address.position)) read_beside(*engine, wires, shelf);
    record::settle(shelf);
    return shelf;
}

std::vector<record::Shelf> SpecLibrary::shelves(const std::vector<record::Address>& addresses,
                                                const wire::Catalogue& wires, bool earlier, unsigned threads) const {
    std::vector<record::Shelf> found(addresses.size());
    const std::size_t blocks = (addresses.size() + kBlock - 1) / kBlock;
    sizing::share_out(blocks, sizing::worker_count(threads, blocks), [&](std::size_t block, std::size_t) {
        const std::size_t end = std::min(addresses.size(), (block + 1) * kBlock);
        for (std::size_t i = block * kBlock; i < end; ++i) found[i] = shelf(addresses[i], wires, earlier);
    });
    return found;
}

Result<std::string> SpecLibrary::beside(const record::Address& address, const std::string& name) const {
    const auto engine = root_.inside(address.engine);
    if (!engine) return Diagnostics(engine.error());
    const auto folder = engine->inside(address.position);
    if (!folder) return Diagnostics(folder.error());
    return folder->read(name);
}

bool SpecLibrary::has(const record::Address& address) const {
    const auto engine = root_.has(address.engine) ? root_.inside(address.engine) : Result<Folder>(Diagnostics{});
    return engine && engine->has(file_of(address));
}

Diagnostics SpecLibrary::put(const record::Address& address, std::string_view text) const {
    const auto engine = root_.made_inside(address.engine);
    if (!engine) return engine.error();
    return engine->replace(file_of(address), text);
}

Diagnostics SpecLibrary::put_earlier(const record::Address& address, const std::string& index,
                                     std::string_view text) const {
    const auto engine = root_.made_inside(address.engine);
    if (!engine) return engine.error();
    const auto folder = engine->made_inside(address.position);
    if (!folder) return folder.error();
    return folder->replace(earlier_file(index), text);
}

Result<std::string> SpecLibrary::put_beside(const record::Address& address, const std::string& name,
                                            std::string_view bytes) const {
    const auto engine = root_.made_inside(address.engine);
    if (!engine) return Diagnostics(engine.error());
    const auto folder = engine->made_inside(address.position);
    if (!folder) return Diagnostics(folder.error());
    for (int number = 1;; ++number) {
        std::string own = name_beside(name, number);
        if (folder->has(own)) {
            const auto there = folder->read(own);
            if (!there || *there != bytes) continue;
            return own;
        }
        if (Diagnostics wrong = folder->replace(own, bytes); !wrong.empty()) return wrong;
        return own;
    }
}

}  // namespace seatload::io
