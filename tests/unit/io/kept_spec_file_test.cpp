// SPDX-License-Identifier: MIT
// Kept specs come out of their files as they went in, with people's remarks, and no edit goes unseen.
#include <algorithm>

#include <seatload/core/sha256.hpp>
#include <seatload/core/text.hpp>
#include <seatload/io/kept_spec_file.hpp>
#include <seatload/io/spec_difference.hpp>
#include <seatload/io/spec_file.hpp>
#include <seatload/io/spec_remarks.hpp>
#include <seatload/io/toml_lines.hpp>
#include <support/builtin.hpp>
#include <support/check.hpp>
#include <support/kept_specimen.hpp>

using namespace seatload;
using record::Step;

namespace {

Result<record::KeptSpec> read(const std::string& text) { return io::read_kept_spec(text, "x.toml", test::wires()); }

std::string approved_text() {
    const record::KeptSpec kept = test::approved_specimen();
    return io::write_kept_spec(kept.content, kept.history);
}

std::string with(std::string text, const std::string& old, const std::string& now) {
    const std::size_t at = text.find(old);
    REQUIRE(at != std::string::npos);
    return text.replace(at, old.size(), now);
}

}  // namespace

TEST_CASE("a kept spec reads back as it was written, its content byte for byte") {
    record::KeptSpec kept = test::approved_specimen();
    kept.history[1].lots = {{"lot-1.toml", sha256_hex("lot")}};
    kept.history[1].files = {{"readings.csv", sha256_hex("a")}, {"reply.toml", sha256_hex("b")}};
    kept.history[1].trial_hours = 40.5;
    kept.history[1].note = "quotes \" and a backslash \\ and an e with an accent, \xC3\xA9";
    const std::string text = io::write_kept_spec(kept.content, kept.history);
    const auto again = read(text);
    INFO(render(again.error()));
    REQUIRE(again.has_value());
    CHECK(again->content == kept.content);
    CHECK(again->sha256 == sha256_hex(test::specimen_text()));
    CHECK(io::write_kept_spec(again->content, again->history) == text);
    REQUIRE(again->history.size() == 2);
    CHECK(again->history[1].lots == kept.history[1].lots);
    CHECK(again->history[1].files == kept.history[1].files);
    CHECK(again->history[1].trial_hours == 40.5);
    CHECK(again->history[1].note == kept.history[1].note);
    CHECK_FALSE(again->is_altered());
    CHECK(record::moved(*kept.history[1].results, *again->history[1].results).empty());
    CHECK(io::spec_content(text) == test::specimen_text());
    CHECK(io::read_spec(text, "x.toml", test::wires()).has_value());
}

TEST_CASE("any byte changed above the states of an approved spec is seen") {
    const std::string text = approved_text();
    const std::size_t end = io::spec_content(text).size();
    std::size_t unread = 0, altered = 0;
    for (std::size_t at = 0; at < end; at += 7) {
        std::string edited = text;
        edited[at] = edited[at] == '7' ? '8' : '7';
        const auto kept = read(edited);
        if (kept) CHECK(kept->is_altered());
        (kept ? altered : unread) += 1;
    }
    CHECK(altered > 20);
    CHECK(unread > 20);
    for (const std::string& edited :
         {with(text, "free_length = \"19.9 mm\"", "free_length = \"20.0 mm\""), with(text, "# L0", "# L1"),
          "# a remark\n" + text, with(text, "right\"  ", "right\"   ")}) {
        const auto kept = read(edited);
        REQUIRE(kept.has_value());
        CHECK(kept->is_altered());
    }
}

TEST_CASE("nothing of the spec can be said below the line that its SHA-256 covers") {
    const std::string text = approved_text();
    for (const std::string more :
         {"[order]\nfinish = \"gilt\"\n", "[surprise]\nkey = 1\n", "[state.results.more]\nx = 1\n"}) {
        CAPTURE(more);
        CHECK_FALSE(read(text + more).has_value());
    }
    // Two beginnings of states: the first counts, so what stands between is none of the spec.
    const std::string states = text.substr(io::spec_content(text).size());
    CHECK_FALSE(
        read(std::string(io::spec_content(text)) + states + "[order]\nfinish = \"gilt\"\n" + states).has_value());
}

TEST_CASE("states that cannot be are refused at their place") {
    const std::string text = approved_text();
    const auto complaint = [](const std::string& wrong) {
        const auto kept = read(wrong);
        REQUIRE_FALSE(kept.has_value());
        return render(kept.error());
    };
    CHECK_THAT(complaint(with(text, "is = \"draft\"", "is = \"trial\"")),
               ContainsSubstring("the first state is always"));
    CHECK_THAT(complaint(with(text, "is = \"approved\"", "is = \"draft\"")),
               ContainsSubstring("\"draft\" cannot follow \"draft\""));
    CHECK_THAT(complaint(with(text, "date = \"2027-02-01\"", "date = \"2026-01-01\"")),
               ContainsSubstring("before the date of the state above"));
    CHECK_THAT(complaint(with(text, "date = \"2027-02-01\"", "date = \"2027-02-30\"")), ContainsSubstring("x.toml:"));
    CHECK_THAT(complaint(with(text, "is = \"approved\"", "is = \"aproved\"")), ContainsSubstring("did you mean"));
    CHECK_THAT(complaint(with(text, "sha256 = \"", "sha256 = \"zz")), ContainsSubstring("64 digits"));
    CHECK_THAT(complaint(with(text, "rate = \"", "rate = \"about ")), ContainsSubstring("N/mm"));
    CHECK_THAT(complaint(with(text, "reason = ", "lots = [[\"../lot.toml\", \"x\"]]\nreason = ")),
               ContainsSubstring("no name of a file beside the spec"));
    CHECK_THAT(complaint(std::string(io::spec_content(text))), ContainsSubstring("never taken into the library"));
    // The line told is that of the file as a whole.
    const std::string wrong = with(text, "is = \"approved\"", "is = \"aproved\"");
    const auto line = 1 + std::count(wrong.begin(), wrong.begin() + static_cast<long>(wrong.find("aproved")), '\n');
    CHECK_THAT(complaint(wrong), ContainsSubstring("x.toml:" + std::to_string(line) + ':'));
}

TEST_CASE("what the program writes is arranged already") {
    const std::string text = test::specimen_text();
    CHECK(io::arranged_spec(text, "x.toml", test::wires()).value() == text);
    const std::string sealed = text + "# as written by seatload size, SHA-256: 0\n";
    CHECK(io::arranged_spec(sealed, "x.toml", test::wires()).value() == sealed);
}

TEST_CASE("a spec written by hand in the usual order stays as it is") {
    std::string text = with(test::specimen_text(), "free_length = \"19.9 mm\"", "free_length = \"19.90 mm\"");
    text = with(text, "[duty]\npeened = false  # shot-peened\n\n", "# moves seldom\n");
    CHECK(io::arranged_spec(text, "x.toml", test::wires()).value() == text);
}

TEST_CASE("a spec written by hand is put in order with its remarks") {
    std::string text = test::specimen_text();
    text = with(text, "[spring]\n", "# why this spring\n\n# two lines of it\n[spring]   # the coil\n");
    text = with(text, "wire_diameter = \"0.7 mm\"   # d", "# measured twice\nwire_diameter = \"0.70 mm\"  # by Ida");
    text = with(text, "wire = \"ASTM-A313-631-CH900\"\n", "");
    text = with(text, "hand = \"right\"", "wire = \"ASTM-A313-631-CH900\"\nhand = \"right\"");
    text = with(text, "[duty]\n", "");
    text = with(text, "peened = false  # shot-peened\n\n", "");
    text = with(text, "format = \"seatload spec 1\"\n", "") + "# the end\n";
    text = "# first of all\nformat = \"seatload spec 1\"\n" + text;
    text = with(text, "quantities = [20, 50, 100]", "quantities = [20,\n  50, # usual\n  100]");
    const std::string arranged = io::arranged_spec(text, "x.toml", test::wires()).value();
    CHECK(arranged.starts_with("# first of all\nformat = \"seatload spec 1\"\n"));
    CHECK_THAT(arranged, ContainsSubstring("\n# why this spring\n# two lines of it\n[spring]  # the coil\n"));
    CHECK_THAT(arranged, ContainsSubstring("\n# measured twice\nwire_diameter = \"0.7 mm\"   # by Ida\n"));
    CHECK_THAT(arranged, ContainsSubstring("\n# usual\nquantities = [20, 50, 100]\n"));
    CHECK_THAT(arranged, ContainsSubstring("\n[duty]\npeened = false  # shot-peened\n"));
    CHECK(arranged.ends_with("\n# the end\n"));
    CHECK(io::arranged_spec(arranged, "x.toml", test::wires()).value() == arranged);
    const auto before = io::read_spec(text, "x", test::wires()), after = io::read_spec(arranged, "x", test::wires());
    CHECK(io::spec_differences(*before, *after).empty());
}

TEST_CASE("hashes, brackets and quotes inside texts part no line") {
    const std::string text =
        "a = \"# [not] a remark\"  # one\nb = '# \" ]'\nc = [\"]\", # inside\n  \"#\"]\n"
        "d = \"\"\"x # \" \"\" \\\"\"\" y\n\"\"\"\ne = {f = \"}\"} # two\n[[t]]\nx = 1\n[[t]]\nx = 2\n# last\n";
    const auto pieces = io::toml_pieces(text);
    REQUIRE(pieces.size() == 10);
    CHECK(pieces[0].id == ".a");
    CHECK(pieces[0].text == "a = \"# [not] a remark\"");
    CHECK(pieces[0].behind == "# one");
    CHECK(pieces[1].text == "b = '# \" ]'");
    CHECK(pieces[2].above == std::vector<std::string>{"# inside"});
    CHECK(pieces[3].id == ".d");
    CHECK(pieces[3].text.ends_with("y\n\"\"\""));
    CHECK(pieces[4].behind == "# two");
    CHECK(pieces[5].id == "[t#1]");
    CHECK(pieces[6].id == "t#1.x");
    CHECK(pieces[8].id == "t#2.x");
    CHECK(pieces[9].above == std::vector<std::string>{"# last"});
}

TEST_CASE("what two specs state otherwise is told by key") {
    const record::Spec before = test::kept_specimen().spec;
    record::Spec after = before;
    after.spring.free_length = 20.5 * mm;
    after.finish.clear();
    after.duty.cycles = 2e6;
    const auto found = io::spec_differences(before, after);
    REQUIRE(found.size() == 3);
    CHECK(found[0].key == "spring.free_length");
    CHECK(found[0].before == "\"19.9 mm\"");
    CHECK(found[0].after == "\"20.5 mm\"");
    CHECK(found[1].key == "order.finish");
    CHECK(found[1].after.empty());
    CHECK(found[2].key == "duty.cycles");
    CHECK(found[2].before.empty());
}
