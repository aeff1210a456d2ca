// SPDX-License-Identifier: MIT
#include <cli/start_command.hpp>

#include <algorithm>
#include <array>
#include <filesystem>
#include <string_view>
#include <vector>

#include <seatload/core/embedded.hpp>
#include <seatload/core/file.hpp>
#include <seatload/core/text.hpp>

#include <cli/papers.hpp>
#include <cli/session.hpp>
#include <cli/text_wrap.hpp>
#include <cli/typed_command.hpp>

namespace seatload::cli {
namespace {

namespace fs = std::filesystem;

/// A kind of file that a user writes by hand.
struct StartKind {
    std::string_view name;   ///< below templates/start/
    std::string_view about;  ///< what it holds
    std::string_view next;   ///< what is done with it, FILE standing for its name
};

constexpr std::array kKinds{
    StartKind{"requirement", "what a new spring must do, and the room for it",
              "`seatload size FILE` finds every spring that fits and writes the papers"},
    StartKind{"readings", "old springs, pressed on a scale",
              "`seatload bench FILE` tells what each spring carries, and how sure that is"},
    StartKind{"plunger", "a plunger that oil pushes off its seat",
              "`seatload budget FILE` works out what loads its spring may have"},
    StartKind{"spring", "a spring that exists, or one thought of",
              "`seatload check FILE` tells its rate, loads and stresses, and with -r REQUIREMENT whether it will do"},
    StartKind{"reply", "what a maker answered to an enquiry",
              "`seatload reply FILE` lists it; `seatload quotes ENQUIRY FILE` judges it"},
    StartKind{"samples", "what was measured of a lot that came",
              "`seatload inspect SPEC FILE` says whether the lot is good"},
    StartKind{"maker", "what a spring maker can and cannot wind",
              "`seatload size REQUIREMENT --maker-file FILE` keeps to it"},
    StartKind{"wire", "wire of your own, or what a maker holds",
              "`seatload wire --wire-file FILE` lists it; `seatload size` takes the same option"},
};

int list_kinds(const StartOptions& options, std::ostream& out) {
    out << "Files to fill in, with remarks on what to measure and how:\n";
    for (const StartKind& kind : kKinds) out << "  " << padded(std::string(kind.name), 13) << kind.about << '\n';
    out << next_text(
        "`seatload start requirement` writes requirement.toml here; -o FILE gives it another name or folder.",
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

/// What to do with the file, its name put in.
std::string next_step(const StartKind& kind, const std::string& path) {
    std::string text(kind.next);
    constexpr std::string_view kFile = "FILE";
    for (std::size_t at = text.find(" FILE"); at != std::string::npos; at = text.find(" FILE", at + 1))
        text.replace(at + 1, kFile.size(), path);
    return "put your numbers into " + path + ", then " + text + '.';
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
    out << path.string() << '\n' << next_text(next_step(*kind, shell_word(path.string())), options.width);
    return kDone;
}

}  // namespace seatload::cli
