// SPDX-License-Identifier: MIT
#include "play.hpp"

#include <algorithm>
#include <stdexcept>
#include <utility>

#include <seatload/core/text.hpp>
#include <support/scratch_folder.hpp>

#include "json_check.hpp"
#include "json_place.hpp"
#include "process.hpp"
#include "props.hpp"
#include "traces.hpp"

namespace seatload::test {
namespace {

namespace fs = std::filesystem;

constexpr std::size_t kWidth = 80;
constexpr std::size_t kPdfTail = 8;  // "%%EOF" and a line end or two

bool is_whole_pdf(const std::string& bytes) {
    const std::size_t tail = bytes.size() > kPdfTail ? bytes.size() - kPdfTail : 0;
    return bytes.starts_with("%PDF-1.") && bytes.find("%%EOF", tail) != std::string::npos;
}

/// The files that are new or changed, with a remark when a PDF is not whole, and those that are gone.
Lines changes(const std::map<std::string, Trace>& before, const fs::path& folder) {
    Lines names;
    const auto after = traces(folder);
    for (const auto& [name, trace] : after) {
        const auto known = before.find(name);
        if (known != before.end() && known->second == trace) continue;
        const bool is_broken = name.ends_with(".pdf") && !is_whole_pdf(bytes_of(folder / name));
        names.push_back(name + (is_broken ? " (not a whole PDF)" : ""));
    }
    for (const auto& [name, trace] : before)
        if (!after.contains(name)) names.push_back(name + " (gone)");
    return names;
}

/// Those of the lines that stand in the output in their order; the others with a remark.
Lines found_in(const Lines& wanted, const Lines& output) {
    Lines found;
    auto from = output.begin();
    for (const std::string& line : wanted) {
        const auto at = std::find(from, output.end(), line);
        found.push_back(at == output.end() ? line + "    (not in the output)" : line);
        if (at != output.end()) from = at + 1;
    }
    return found;
}

Lines too_wide(const Lines& output) {
    Lines wide;
    std::copy_if(output.begin(), output.end(), std::back_inserter(wide),
                 [](const std::string& line) { return length_in_code_points(line) > kWidth; });
    return wide;
}

/// The text with "(0.00 s)" for every "(0.82 s)".
std::string without_times(const std::string& text) {
    constexpr std::string_view kDigits = "0123456789.", kEnd = " s)";
    std::string out;
    for (std::size_t i = 0; i < text.size(); ++i) {
        out += text[i];
        if (text[i] != '(') continue;
        const std::size_t end = text.find_first_not_of(kDigits, i + 1);
        if (end == std::string::npos || end == i + 1 || text.compare(end, kEnd.size(), kEnd) != 0) continue;
        out += "0.00";
        i = end - 1;
    }
    return out;
}

/// Plays one script in its own folder.
class Player {
  public:
    explicit Player(const Stage& stage) : stage_(stage) {}
    Script play(const Script& script);

  private:
    void run(const Section& section);
    void expect(const Section& section);
    void close_run();
    void append(const std::string& head, const Lines& body);
    void keep(std::string head, Lines body) {
        came_.sections.push_back({std::move(head), std::move(body), section_->blank_lines});
    }
    bool is_mentioned(std::string_view word) const;

    const Stage& stage_;
    ScratchFolder folder_;
    Script came_;
    std::vector<Ended> runs_;
    Lines wrote_;
    Lines wrong_by_schema_;
    Lines mentioned_;       ///< first words of what is expected of the last run
    bool is_json_ = false;  ///< or known from an earlier run: then any width will do
    bool is_open_ = false;  ///< a run's sections are being read
    const Section* section_ = nullptr;
};

Script Player::play(const Script& script) {
    came_.preface = script.preface;
    for (const Section& section : script.sections) {
        section_ = &section;
        const bool begins = section.head.starts_with("run ") || set_up(section, folder_.path(), stage_.repository);
        if (begins) {
            close_run();
            came_.sections.push_back(section);
        }
        if (section.head.starts_with("run ")) run(section);
        if (!begins) expect(section);
    }
    close_run();
    return came_;
}

void Player::run(const Section& section) {
    Lines words = words_of(section.head);
    words.erase(words.begin());
    if (words.empty() || words.front() != "seatload")
        throw std::runtime_error("only seatload can be run: " + section.head);
    words.front() = stage_.program.string();
    const auto before = traces(folder_.path());
    Ended ended = run_program(words, folder_.path(), stage_.environment);
    ended.out = without_times(ended.out);
    wrote_ = changes(before, folder_.path());
    wrong_by_schema_ = schema_faults(words, ended.out, stage_.repository / "cli" / "schema");
    runs_.push_back(std::move(ended));
    mentioned_.clear();
    is_json_ = false;
    is_open_ = true;
}

void Player::expect(const Section& section) {
    if (!is_open_) throw std::runtime_error("this must follow a run: " + section.head);
    const Ended& last = runs_.back();
    const Lines words = words_of(section.head), output = lines_of(last.out);
    mentioned_.push_back(words.at(0));
    const auto keep_unless_empty = [&](const Lines& body) {
        if (!body.empty()) keep(section.head, body);
    };
    if (section.head == "stdout") return keep_unless_empty(output);
    if (section.head == "stdout has") return keep(section.head, found_in(section.body, output));
    if (section.head == "stdout is json") {
        is_json_ = true;
        return keep(section.head, with_values(section.body, last.out));
    }
    if (section.head.starts_with("stdout as in run ")) {
        is_json_ = true;
        const bool is_same = runs_.at(std::stoul(words.at(4)) - 1).out == last.out;
        return keep(section.head + (is_same ? "" : " (it is not)"), section.body);
    }
    if (section.head == "stderr") return keep_unless_empty(lines_of(last.err));
    if (words[0] == "exit") return keep("exit " + std::to_string(last.code), {});
    if (section.head == "wrote") return keep_unless_empty(wrote_);
    if (section.head == "wide") return keep_unless_empty(too_wide(output));
    if (words[0] == "contents") return keep(section.head, lines_of(bytes_of(folder_.path() / words.at(1))));
    if (words[0] == "same") {
        const bool is_same = bytes_of(folder_.path() / words.at(1)) == bytes_of(folder_.path() / words.at(2));
        return keep(section.head + (is_same ? "" : " (they are not)"), {});
    }
    throw std::runtime_error("no such section: " + section.head);
}

bool Player::is_mentioned(std::string_view word) const {
    return std::find(mentioned_.begin(), mentioned_.end(), word) != mentioned_.end();
}

/// Puts what happened and was not mentioned behind the last run's sections.
void Player::close_run() {
    if (!is_open_) return;
    is_open_ = false;
    const Ended& last = runs_.back();
    const auto add = [&](const std::string& word, const std::string& head, const Lines& body, bool happened) {
        if (happened && !is_mentioned(word)) append(head, body);
    };
    const Lines wide = is_json_ ? Lines{} : too_wide(lines_of(last.out));
    add("stdout", "stdout", lines_of(last.out), !last.out.empty());
    add("wide", "wide", wide, !wide.empty());
    add("stderr", "stderr", lines_of(last.err), !last.err.empty());
    add("exit", "exit " + std::to_string(last.code), {}, last.code != 0);
    add("wrote", "wrote", wrote_, !wrote_.empty());
    if (!wrong_by_schema_.empty()) append("not by its schema", wrong_by_schema_);
}

/// Puts a section at the end, set off as the one before it was.
void Player::append(const std::string& head, const Lines& body) {
    const std::size_t blank_lines = std::exchange(came_.sections.back().blank_lines, 0);
    came_.sections.push_back({head, body, blank_lines});
}

}  // namespace

Script play(const Script& script, const Stage& stage) {
    Player player(stage);
    return player.play(script);
}

}  // namespace seatload::test
