// SPDX-License-Identifier: MIT
#include <cli/start_command.hpp>

#include <algorithm>
#include <array>
#include <filesystem>
#include <string_view>
#include <vector>

#include <seatload/core/embedded.hpp>
#include <seatload/core/text.hpp>

#include <cli/papers.hpp>
#include <cli/session.hpp>
#include <cli/text_wrap.hpp>
#include <cli/typed_command.hpp>

namespace seatload::cli {
namespace {

namespace fs = std::filesystem;

using Next = std::string (*)(const std::string& file);

/// A kind of file that a user writes by hand.
struct StartKind {
    std::string_view name;   ///< below templates/start/
    std::string_view about;  ///< what it holds
    Next next;               ///< what is done with it
};

TypedCommand with_file(const std::string& command, const std::string& file) { return TypedCommand(command).name(file); }

std::string after_requirement(const std::string& file) {
    return with_file("size", file).text() + " finds every spring that fits and writes the papers";
}

std::string after_readings(const std::string& file) {
    return with_file("bench", file).text() + " tells what each spring carries, and how sure that is";
}

std::string after_plunger(const std::string& file) {
    return with_file("budget", file).text() + " works out what loads its spring may have";
}

std::string after_spring(const std::string& file) {
    return with_file("check", file).text() +
           " tells its rate, loads and stresses, and with -r REQUIREMENT whether it will do";
}

std::string after_reply(const std::string& file) {
    return with_file("reply", file).text() + " lists it; " + TypedCommand("quotes").open("ENQUIRY").name(file).text() +
           " judges it";
}

std::string after_samples(const std::string& file) {
    return TypedCommand("inspect").open("SPEC").name(file).text() + " says whether the lot is good";
}

std::string after_maker(const std::string& file) {
    return TypedCommand("size").open("REQUIREMENT").option("--maker-file", file).text() + " keeps to it";
}

std::string after_wire(const std::string& file) {
    return TypedCommand("wire").option("--wire-file", file).text() + " lists it; `seatload size` takes the same option";
}

constexpr std::array kKinds{
    StartKind{"requirement", "what a new spring must do, and the room for it", after_requirement},
    StartKind{"readings", "old springs, pressed on a scale", after_readings},
    StartKind{"plunger", "a plunger that oil pushes off its seat", after_plunger},
    StartKind{"spring", "a spring that exists, or one thought of", after_spring},
    StartKind{"reply", "what a maker answered to an enquiry", after_reply},
    StartKind{"samples", "what was measured of a lot that came", after_samples},
    StartKind{"maker", "what a spring maker can and cannot wind", after_maker},
    StartKind{"wire", "wire of your own, or what a maker holds", after_wire},
};

int list_kinds(const StartOptions& options, std::ostream& out) {
    out << "Files to fill in, with remarks on what to measure and how:\n";
    for (const StartKind& kind : kKinds) out << "  " << padded(std::string(kind.name), 13) << kind.about << '\n';
    out << next_text(TypedCommand("start requirement").text() +
                         " writes requirement.toml here; -o FILE gives it another name or folder.",
                     options.width);
    return kDone;
}

Diagnostic unknown_kind(const std::string& name) {
    std::vector<std::string> names;
    for (const StartKind& kind : kKinds) names.emplace_back(kind.name);
    const std::string meant = did_you_mean(name, names);
    return error("not-a-choice"_id, "there is no file \"" + name + "\" to start from",
                 meant.empty() ? "there are " + join(names, ", ") : meant);
}

/// Where the file goes: the name given, below it when that is a folder, else its own name in the current folder.
fs::path place_of(const StartOptions& options, const StartKind& kind) {
    const std::string own = std::string(kind.name) + ".toml";
    if (options.file.empty()) return own;
    std::error_code unreadable;
    const fs::path path = options.file;
    return fs::is_directory(path, unreadable) || !path.has_filename() ? path / own : path;
}

}  // namespace

int run_start(const StartOptions& options, std::ostream& out, std::ostream& err) {
    if (options.name.empty()) return list_kinds(options, out);
    const auto kind =
        std::find_if(kKinds.begin(), kKinds.end(), [&](const StartKind& k) { return k.name == options.name; });
    if (kind == kKinds.end()) return refuse({unknown_kind(options.name)}, err);
    const fs::path path = place_of(options, *kind);
    std::error_code unreadable;
    if (!options.overwrite && fs::exists(fs::symlink_status(path, unreadable)))
        return refuse({error_in(path.string(), "file-in-the-way"_id, "this file is there already, and is kept",
                                "-o FILE writes to another place, --overwrite over this one")},
                      err);
    const std::string_view text = embedded("templates/start/" + std::string(kind->name) + ".toml");
    if (const Diagnostics wrong =
            write_papers(path.parent_path().empty() ? "." : path.parent_path(), {{path, std::string(text)}});
        !wrong.empty())
        return refuse(wrong, err);
    const std::string file = path.string();
    out << file << '\n'
        << next_text("put your numbers into " + shell_word(file) + ", then " + kind->next(file) + '.', options.width);
    return kDone;
}

}  // namespace seatload::cli
