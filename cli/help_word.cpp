// SPDX-License-Identifier: MIT
#include <cli/help_word.hpp>

#include <algorithm>

#include <seatload/core/line_wrap.hpp>
#include <seatload/core/text.hpp>
#include <seatload/io/complaint_meaning.hpp>

#include <cli/usage_error.hpp>

namespace seatload::cli {
namespace {

/// The names of complaints that hold a word, such as "number"; none when they are many.
std::vector<std::string> complaints_with(const std::string& word, const std::vector<std::string>& names) {
    constexpr std::size_t kMost = 8;
    constexpr std::size_t kShortest = 3;  // "no" or "a" says nothing
    std::vector<std::string> found;
    for (const std::string& name : names)
        if (word.size() >= kShortest && name.find(word) != std::string::npos) found.push_back(name);
    return found.size() > kMost ? std::vector<std::string>{} : found;
}

}  // namespace

std::optional<std::string_view> asked_of_help(int argc, const char* const* argv) {
    if (argc != 3 || std::string_view(argv[1]) != "help") return std::nullopt;
    std::string_view name = argv[2];
    if (name.starts_with('[') && name.ends_with(']')) name = name.substr(1, name.size() - 2);
    return name;
}

std::optional<std::string> told_of_complaint(std::string_view name, int width) {
    const auto meaning = io::meaning_of_complaint(name);
    if (!meaning) return std::nullopt;
    return wrapped(std::string(name) + ": ", *meaning, width, 4);
}

std::optional<Diagnostic> unknown_help(const CLI::App& app, const std::string& name) {
    std::vector<std::string> names = command_names(app);
    if (name.starts_with('-') || std::find(names.begin(), names.end(), name) != names.end()) return std::nullopt;
    const std::string commands = join(names, ", ");
    std::vector<std::string> complaints;
    for (const io::ComplaintMeaning& each : io::complaint_meanings()) complaints.push_back(each.id);
    names.insert(names.end(), complaints.begin(), complaints.end());
    const std::vector<std::string> alike = complaints_with(name, complaints);
    const std::string otherwise =
        alike.empty() ? "commands are " + commands + "; a complaint's name stands behind it in brackets, [bare-number]"
                      : "complaints are called " + join(alike, ", ");
    return usage_error(app, "unknown-command"_id, '"' + name + "\" is neither a command nor the name of a complaint",
                       did_you_mean(name, names), otherwise);
}

std::vector<const char*> with_help(const CLI::App& app, int argc, const char* const* argv) {
    std::vector<const char*> words(argv, argv + argc);
    if (argc < 2 || std::string_view(words[1]) != "help") return words;
    words.erase(words.begin() + 1);
    const auto commands = command_names(app);
    if (argc == 2 || std::find(commands.begin(), commands.end(), words[1]) != commands.end()) words.push_back("--help");
    return words;
}

}  // namespace seatload::cli
