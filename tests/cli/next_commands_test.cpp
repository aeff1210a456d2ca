// SPDX-License-Identifier: MIT
// Every command that is printed behind "Next:" is read off the answer and typed as it stands, in a folder whose usual
// library keeps another spring of the same engine and position: it must reach the library that the answer was about.
#include <algorithm>

#include <cli/typed_command.hpp>
#include <seatload/io/kept_spec_file.hpp>
#include <support/check.hpp>
#include <support/scratch_folder.hpp>

#include "process.hpp"
#include "workshop.hpp"

using namespace seatload;
using test::Ended;
namespace fs = std::filesystem;

namespace {

const fs::path kSource = SEATLOAD_SOURCE_DIR;
constexpr const char* kAddress = "ottermere-m14/ahead-latch-plunger";

std::string replaced(std::string text, const std::string& what, const std::string& with) {
    for (std::size_t at = text.find(what); at != std::string::npos; at = text.find(what, at + with.size()))
        text.replace(at, what.size(), with);
    return text;
}

/// The commands an answer names behind its last "Next", broken lines joined as a reader joins them.
std::vector<std::string> next_commands(const std::string& answer) {
    std::vector<std::string> found;
    const std::size_t next = answer.find("Next");
    std::string text = next == std::string::npos ? "" : replaced(answer.substr(next), "\n", " ");
    // What is set in after a line break is no part of the words.
    bool is_quoted = false;
    std::string joined;
    for (const char c : text) {
        const bool is_shielded = !joined.empty() && joined.back() == '\\';
        if (c == '\'' && (is_quoted || !is_shielded)) is_quoted = !is_quoted;
        if (c != ' ' || is_quoted || joined.empty() || joined.back() != ' ') joined += c;
    }
    for (std::size_t open = joined.find('`'); open != std::string::npos;) {
        const std::size_t close = joined.find('`', open + 1);
        REQUIRE(close != std::string::npos);
        found.push_back(joined.substr(open + 1, close - open - 1));
        open = joined.find('`', close + 1);
    }
    return found;
}

/// A folder in which "seatload" is typed; its usual library keeps a spring of another number at the same address.
class Desk {
  public:
    explicit Desk(bool has_usual_library = true) {
        for (const char* file :
             {"tests/unit/record/ahead_latch_spec.toml", "templates/ahead_lot_good.toml",
              "templates/ahead_lot_good.csv", "templates/ahead_lot_bad.toml", "templates/ahead_latch_readings.toml"})
            fs::copy_file(kSource / file, folder_ / fs::path(file).filename().string());
        if (!has_usual_library) return;
        test::write_bytes(folder_ / "other.toml",
                          replaced(test::bytes_of(folder_ / "ahead_latch_spec.toml"), "OM14-LAT-AHD", "OTHER-1"));
        done("seatload specs add other.toml --by X --date 2026-01-01");
        done("seatload specs approve OTHER-1 --by X --date 2026-01-02 --without-inspection \"as supplied\"");
        usual_ = test::contents_of(folder_ / "specs");
    }

    Ended type(const std::string& line) const {
        const std::string bin = fs::path(SEATLOAD_PROGRAM).parent_path().string();
        return test::run_program({"/bin/sh", "-c", line}, folder_.path(),
                                 {"PATH=" + bin + ":/usr/bin:/bin", "LANG=C", "COLUMNS=80"});
    }
    /// The answer to a command that must be done.
    std::string done(const std::string& line, int code = 0) const {
        const Ended ended = type(line);
        INFO(line << '\n' << ended.out << ended.err);
        CHECK(ended.code == code);
        return ended.out;
    }
    /// Types the next steps that an answer names, filled in; the answers. The usual library must stay as it is.
    std::vector<std::string> next(const std::string& answer, const std::string& date = "2027-06-01") const {
        std::vector<std::string> answers;
        for (std::string line : next_commands(answer)) {
            line = replaced(replaced(line, "NAME", "'T. Okafor'"), "DATE", date);
            line = replaced(line, "PIECES", "50");
            line = replaced(replaced(line, "WORDS", "'for a reason'"), "SAMPLES", "ahead_lot_good.toml");
            line = replaced(line, "--lot FILE", "--lot output/om14-lat-ahd-first-delivery.toml");
            line = replaced(line, "--with FILE", "--with ahead_latch_spec.toml");
            answers.push_back(done(line));
        }
        INFO(answer);
        CHECK_FALSE(answers.empty());
        CHECK(test::contents_of(folder_ / "specs") == usual_);
        return answers;
    }
    fs::path operator/(const std::string& name) const { return folder_ / name; }

  private:
    test::ScratchFolder folder_;
    test::Contents usual_;
};

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

}  // namespace

TEST_CASE("a word is quoted for the shell only where it must be, and is read back as it was") {
    CHECK(cli::shell_word("specs/m14/a-b_c.toml") == "specs/m14/a-b_c.toml");
    CHECK(cli::shell_word("my  shop") == "'my  shop'");
    CHECK(cli::shell_word("") == "''");
    const Desk desk(false);
    for (const std::string word :
         {"it's", "a;b", "$HOME", "`id`", "*", "a\\b", "ü \"x\"", "~", "a&&b", "#1", "!x", "é"})
        CHECK(desk.done("printf %s " + cli::shell_word(word)) == word);
    CHECK(cli::TypedCommand("check").name("-a.toml").text() == "`seatload check ./-a.toml`");
}

TEST_CASE("each next step of a library elsewhere reaches that library", "[slow]") {
    for (const std::string library : {"shop", "my  old shop", "it's"}) {
        CAPTURE(library);
        const Desk desk;
        const std::string in = "--library " + cli::shell_word(library);
        const fs::path kept = desk / (library + '/' + kAddress + ".toml");
        const std::string added =
            desk.done("seatload specs add ahead_latch_spec.toml " + in + " --by X --date 2026-11-25");
        const std::string listed = desk.done("seatload specs list " + in);
        CHECK(next_commands(listed) == next_commands(added));

        const std::string frozen = desk.next(added).front();
        CHECK(has(frozen, ": trial"));
        const std::string ordered = desk.next(frozen).front();
        CHECK(fs::exists(desk / "output/om14-lat-ahd-a-order.pdf"));
        // Inspecting, keeping what was found, and approving by it.
        const std::vector<std::string> after_order = desk.next(ordered);
        REQUIRE(after_order.size() == 3);
        CHECK(has(after_order[0], "ACCEPTED"));
        CHECK(has(next_commands(after_order[0]).front(), " approve "));
        CHECK(has(after_order[1], "evidence kept; still trial"));
        const std::string& approved = after_order[2];
        CHECK(has(approved, ": approved"));
        fs::remove_all(desk / "output");
        desk.next(approved);
        CHECK(fs::exists(desk / "output/om14-lat-ahd-a-order.pdf"));

        const std::string found = desk.done("seatload specs find " + in + " --bore \"9 mm\"");
        CHECK(has(desk.next(found).front(), "OM14-LAT-AHD"));
        fs::remove_all(desk / "output");
        desk.next(desk.done("seatload specs show " + in + " OM14-LAT-AHD"));
        CHECK(fs::exists(desk / "output/om14-lat-ahd-a-order.pdf"));

        // A second revision on trial is ordered by its index, as the first is in force.
        const std::string revised =
            desk.done("seatload specs revise " + in + " " + kAddress + " --reason thicker --by X --date 2027-07-01");
        CHECK(has(desk.next(revised).front(), "revision A"));
        const std::string tried = desk.next(desk.done("seatload specs list " + in), "2027-07-02").front();
        fs::remove_all(desk / "output");
        desk.next(tried);
        CHECK(fs::exists(desk / "output/om14-lat-ahd-b-order.pdf"));

        const std::string withdrawn =
            desk.done("seatload specs withdraw " + in + " " + kAddress + " --reason cracked --by X --date 2027-07-03");
        CHECK(has(desk.next(withdrawn, "2027-07-04").front(), "draft of revision C"));

        // What was changed by hand is looked into in the same library.
        std::string text = test::bytes_of(kept.parent_path() / "ahead-latch-plunger/revision-A.toml");
        test::write_bytes(kept.parent_path() / "ahead-latch-plunger/revision-A.toml",
                          replaced(text, "\"19.9 mm\"", "\"19.8 mm\""));
        const std::string shown = desk.done("seatload specs show " + in + " --revision A " + kAddress);
        for (const std::string& line : next_commands(shown)) CHECK(has(desk.done(line, 1), "FAILS"));
    }
}

TEST_CASE("wires of one's own are named again in the next step") {
    const Desk desk;
    test::write_bytes(desk / "own wires.toml",
                      "format_version = 1\n\n[[holding]]\ngrade = \"EN10270-2-FDSiCr\"\ndiameters = [\"0.70 mm\"]\n");
    const std::string added = desk.done(
        "seatload specs --library shop add ahead_latch_spec.toml --wire-file 'own wires.toml' --by X --date "
        "2026-11-25");
    for (const std::string& line : next_commands(added))
        CHECK(has(line, "--library shop --wire-file 'own wires.toml' trial"));
    desk.next(added);
}

TEST_CASE("the record of a lot is sent where its spec is kept, or with it into a library") {
    const Desk desk(false);
    // In no library, and not as one keeps it: the spec comes first.
    const std::string loose = desk.done("seatload inspect ahead_latch_spec.toml ahead_lot_good.toml");
    CHECK(has(replaced(loose, "\n  ", " "), "inspect the lot by the file kept there"));
    REQUIRE(next_commands(loose).size() == 1);
    CHECK_FALSE(has(next_commands(loose).front(), "--lot"));

    // In no library, but as one keeps it: both go in together, and the lot is a ground for approval there.
    desk.done("seatload specs --library apart add ahead_latch_spec.toml --by X --date 2026-11-25");
    const std::string kept = test::bytes_of(desk / (std::string("apart/") + kAddress + ".toml"));
    test::write_bytes(desk / "mine.toml", io::spec_content(kept));
    const std::string whole = desk.done("seatload inspect mine.toml ahead_lot_good.toml");
    CHECK_FALSE(has(whole, "specs evidence"));
    const auto lines = next_commands(whole);
    REQUIRE(lines.size() == 1);
    CHECK(has(desk.done(replaced(replaced(lines[0], "NAME", "X"), "DATE", "2026-12-15")), "draft"));
    CHECK(has(desk.done("seatload specs approve OM14-LAT-AHD --by X --date 2026-12-16"), ": approved"));

    // Another file of the spec that the usual library keeps.
    const std::string same = desk.done("seatload inspect mine.toml ahead_lot_good.toml --overwrite");
    CHECK(has(replaced(same, "\n  ", " "), "`seatload specs evidence " + std::string(kAddress) + " --lot"));
    // One of another content at the same place is told to be another.
    test::write_bytes(desk / "mine.toml", replaced(test::bytes_of(desk / "mine.toml"), "19.9 mm", "19.8 mm"));
    const std::string other = desk.done("seatload inspect mine.toml ahead_lot_good.toml --overwrite");
    CHECK(has(replaced(other, "\n  ", " "), "keeps another spec of this engine and position"));
    for (const std::string& line : next_commands(other)) CHECK(has(desk.done(line), "19.8 mm"));
}

TEST_CASE("a kept spec that is drawn, checked or reckoned is followed in its own library by what its state allows") {
    const Desk desk;
    for (const std::string library : {"shop", "my  old shop"}) {
        CAPTURE(library);
        const std::string in = "--library " + cli::shell_word(library);
        const std::string file = cli::shell_word(library + '/' + kAddress + ".toml");
        desk.done("seatload specs add ahead_latch_spec.toml " + in + " --by X --date 2026-11-25");
        CHECK(has(desk.next(desk.done("seatload sheet " + file)).front(), ": trial"));
        const auto on_trial = next_commands(desk.done("seatload report " + file));
        REQUIRE(on_trial.size() == 2);
        CHECK(has(desk.done(replaced(on_trial[0], "PIECES", "10")), "revision A, trial"));
        CHECK(has(on_trial[1], " approve "));
        desk.done("seatload specs approve " + in + " " + kAddress + " --by X --date 2027-06-02 --without-inspection y");
        CHECK(has(desk.next(desk.done("seatload check " + file)).front(), "revision A, approved"));
        desk.done("seatload specs revise " + in + " " + kAddress + " --reason z --by X --date 2027-06-03");
        desk.done("seatload specs approve " + in + " " + kAddress + " --by X --date 2027-06-04 --without-inspection y");
        const std::string earlier = cli::shell_word(library + '/' + kAddress + "/revision-A.toml");
        for (const char* command : {"seatload sheet ", "seatload check ", "seatload report "}) {
            const Ended old = desk.type(command + earlier);
            CHECK(old.code == 0);
            CHECK(has(old.out, "superseded"));
            CHECK(has(replaced(old.err, "\n    ", " "), "this revision was superseded [superseded]"));
        }
        desk.done("seatload specs withdraw " + in + " " + kAddress + " --reason cracked --by X --date 2027-06-05");
        for (const char* command : {"seatload sheet ", "seatload check ", "seatload check --json ", "seatload report "})
            CHECK(has(replaced(desk.type(command + file).err, "\n    ", " "), "withdrawn on 2027-06-05: cracked"));
        const auto after = next_commands(desk.done("seatload sheet " + file));
        REQUIRE(after.size() == 2);
        CHECK(has(after[0], " find"));
        CHECK(has(after[1], " revise "));
    }
    // A file of the same name in no library is none of its specs.
    fs::copy_file(desk / (std::string("shop/") + kAddress + ".toml"), desk / "loose.toml");
    CHECK(has(replaced(desk.done("seatload sheet loose.toml"), "\n  ", " "), "seatload specs add loose.toml"));
}

TEST_CASE("names of files with blanks, quotes and dashes are typed as the next step shows them") {
    const Desk desk(false);
    const test::Workshop shop;
    fs::copy_file(shop / "latch.toml", desk / "latch.toml");
    fs::copy_file(kSource / "tests/cli/replies/maker_a.toml", desk / "maker_a.toml");
    fs::create_directory(desk / "my files");
    for (const std::string kind : {"requirement", "readings", "plunger", "spring", "reply", "samples", "maker", "wire"})
        for (const std::string file : {"my files/it's.toml", "-x.toml"}) {
            const std::string typed = file.starts_with('-') ? "=" + file : ' ' + cli::shell_word(file);
            const std::string begun = desk.done("seatload start " + kind + " --overwrite --output" + typed);
            for (std::string line : next_commands(begun)) {
                // What stands in the line is read as one name: with help asked for, no other word is left over.
                CHECK(desk.type(line + " --help").code == 0);
                const std::string shown = file.starts_with('-') ? "-x.toml" : "'my files/it'\\''s.toml'";
                CHECK(has(line, shown) == (line != "seatload size"));
            }
        }

    // Whoever sizes into such a folder is led on to the enquiry there, and by an offer that is chosen to its spec.
    const std::string sized = desk.done("seatload size latch.toml -n 1 --output 'my papers'");
    REQUIRE(next_commands(sized).size() == 1);
    const std::string quotes = replaced(next_commands(sized).front(), "REPLY...", "maker_a.toml");
    const std::string spec = "'my papers/ottermere-m14-ahead-latch-plunger-a.toml'";
    desk.done(quotes);
    const std::string chosen =
        desk.done(quotes + " --choose maker-a/a --date 2026-12-15 --no-papers --output 'my choice'");
    auto after = next_commands(chosen);
    REQUIRE(after.size() == 3);
    for (std::string& line : after)
        line = replaced(replaced(replaced(line, "NAME", "X"), "DATE", "2026-12-16"), "WORDS", "'other wire'");
    CHECK(has(desk.done(after[0]), ".pdf"));
    CHECK(has(desk.done(after[1] + " --library other"), ": draft"));
    desk.done("seatload specs add " + spec + " --by X --date 2026-12-01");
    desk.done("seatload specs approve OM14-LAT-AHD --by X --date 2026-12-02 --without-inspection tried");
    CHECK(has(desk.done(after[2]), ": draft of revision B"));
}
