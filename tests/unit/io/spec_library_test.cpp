// SPDX-License-Identifier: MIT
// The library as a folder: what is put in comes out, what is strange is named, and nothing leads out of it.
#include <algorithm>
#include <filesystem>

#include <seatload/core/file_name.hpp>
#include <seatload/core/sha256.hpp>
#include <seatload/io/spec_library.hpp>
#include <support/builtin.hpp>
#include <support/check.hpp>
#include <support/kept_specimen.hpp>

using namespace seatload;
using io::SpecLibrary;
using record::Address;
using test::bytes_of;
using test::ScratchFolder;
using test::write_bytes;
namespace fs = std::filesystem;

namespace {

const Address kAhead{"ottermere-m14", "ahead-latch-plunger"};

SpecLibrary open_for_writing(const fs::path& path) {
    auto library = SpecLibrary::open(path, SpecLibrary::For::writing);
    REQUIRE(library.has_value());
    return std::move(library).value();
}

std::string text_of(const record::KeptSpec& kept) { return io::write_kept_spec(kept.content, kept.history); }

/// The specimen as another revision.
std::string text_of_revision(const std::string& index) {
    record::KeptSpec kept = test::kept_specimen();
    kept.spec.identity.revision = index;
    kept.content = io::write_spec(kept.spec);
    kept.history.front().sha256 = sha256_hex(kept.content);
    return text_of(kept);
}

}  // namespace

TEST_CASE("what is put into a library comes out of it, with earlier revisions and the files beside") {
    const ScratchFolder scratch;
    const SpecLibrary library = open_for_writing(scratch / "specs");
    CHECK_FALSE(library.has(kAhead));
    CHECK(library.put_earlier(kAhead, "A", text_of(test::approved_specimen())).empty());
    CHECK(library.put(kAhead, text_of_revision("B")).empty());
    CHECK(library.put_beside(kAhead, "/somewhere/Lot 1.toml", "a lot").value() == "lot-1.toml");
    CHECK(library.has(kAhead));
    REQUIRE(library.addresses()->size() == 1);
    CHECK(library.addresses()->front() == kAhead);
    const record::Shelf shelf = library.shelf(kAhead, test::wires());
    INFO(render(shelf.wrong));
    CHECK(shelf.wrong.empty());
    REQUIRE(shelf.revisions.size() == 2);
    CHECK(shelf.revisions[0].index() == "A");
    CHECK(shelf.in_force() == &shelf.revisions[0]);
    CHECK(shelf.latest()->index() == "B");
    CHECK(shelf.beside == std::vector<std::string>{"lot-1.toml"});
    CHECK(library.beside(kAhead, "lot-1.toml").value() == "a lot");
    CHECK(library.shelf(kAhead, test::wires(), false).revisions.size() == 1);
}

TEST_CASE("a revise that was killed half way leaves nothing a reader would mind") {
    const ScratchFolder scratch;
    const SpecLibrary library = open_for_writing(scratch / "specs");
    const std::string text = text_of(test::approved_specimen());
    CHECK(library.put(kAhead, text).empty());
    CHECK(library.put_earlier(kAhead, "A", text).empty());  // and no further
    const record::Shelf shelf = library.shelf(kAhead, test::wires());
    CHECK(shelf.wrong.empty());
    REQUIRE(shelf.revisions.size() == 1);
    CHECK(shelf.revisions[0].state == record::State::approved);
}

TEST_CASE("files beside a spec take names of their own, alike ones once, and none that looks like a revision") {
    const ScratchFolder scratch;
    const SpecLibrary library = open_for_writing(scratch / "specs");
    const auto put = [&](const std::string& name, const std::string& bytes) {
        return library.put_beside(kAhead, name, bytes).value();
    };
    CHECK(put("lot.toml", "one") == "lot.toml");
    CHECK(put("elsewhere/lot.toml", "one") == "lot.toml");
    CHECK(put("lot.toml", "two") == "lot-2.toml");
    CHECK(put("a/ahead_lot_good.csv", "three") == "ahead_lot_good.csv");
    CHECK(put("revision-A.toml", "no") == "file-revision-a.toml");
    CHECK(put("../../../etc/passwd", "no") == "passwd");
    CHECK(put("..", "no") == "spring.spring");
    CHECK(put("\xFF\xFE/\n", "no") == "spring");
    for (const auto& entry : fs::recursive_directory_iterator(scratch.path()))
        if (entry.is_regular_file() && entry.path().filename() != ".lock")
            CHECK(entry.path().parent_path() == scratch / "specs/ottermere-m14/ahead-latch-plunger");
}

TEST_CASE("what words make of an engine and a position leads nowhere out of the library") {
    for (const std::string words : {"../../etc", "/etc/passwd", "..", "a/b", "", "\xFF", "C:\\x", ".lock", "CON:"}) {
        demand::Identity identity;
        identity.engine = identity.position = words;
        const Address address = record::address_of(identity);
        CAPTURE(words, address.text());
        CHECK(is_plain_file_name(address.engine));
        CHECK(address.engine.find_first_of("./\\:") == std::string::npos);
    }
}

TEST_CASE("addresses made by hand that lead out are refused for reading and writing") {
    const ScratchFolder scratch;
    write_bytes(scratch / "outside/x.toml", "not yours");
    const SpecLibrary library = open_for_writing(scratch / "specs");
    for (const Address& address : {Address{"..", "outside"}, Address{"../outside", "x"}, Address{"", "x"},
                                   Address{"a", "../../outside/x"}, Address{"/tmp", "x"}, Address{"a", ""}}) {
        CAPTURE(address.text());
        CHECK(has_error(library.put(address, "mine")));
        CHECK(has_error(library.put_earlier(address, "../A", "mine")));
        CHECK(library.shelf(address, test::wires()).revisions.empty());
        CHECK(has_error(library.shelf(address, test::wires()).wrong));
    }
    CHECK(bytes_of(scratch / "outside/x.toml") == "not yours");
}

TEST_CASE("strangers in a library are named, links not followed, and the rest is read") {
    const ScratchFolder scratch;
    const SpecLibrary library = open_for_writing(scratch / "specs");
    CHECK(library.put(kAhead, text_of(test::kept_specimen())).empty());
    const fs::path engine = scratch / "specs/ottermere-m14";
    write_bytes(scratch / "outside/a.toml", text_of(test::kept_specimen()));
    fs::create_symlink(scratch / "outside", scratch / "specs/linked-engine");
    fs::create_symlink(scratch / "outside/a.toml", engine / "linked.toml");
    fs::create_directories(engine / "beside-nothing");
    write_bytes(engine / "Odd Name.toml", "");
    write_bytes(engine / "notes.txt", "");
    write_bytes(scratch / "specs/README.md", "");
    const auto addresses = library.addresses();
    REQUIRE(addresses.has_value());
    CHECK(addresses->size() == 1);
    CHECK(addresses->front() == kAhead);
    std::string said = render(addresses.error(), 20);
    for (const char* name : {"linked-engine", "linked.toml", "beside-nothing", "Odd Name.toml", "notes.txt"})
        CHECK_THAT(said, ContainsSubstring(name));
    CHECK(addresses.error().size() == 5);
    const auto odd = std::find_if(addresses.error().begin(), addresses.error().end(),
                                  [](const Diagnostic& d) { return d.place.file.ends_with("Odd Name.toml"); });
    REQUIRE(odd != addresses.error().end());
    CHECK(render({*odd}).substr(engine.string().size() + 1) ==
          "Odd Name.toml: warning: no spec by its name [stranger-in-library]\n"
          "    hint: move it out of the library\n");
    CHECK_FALSE(has_error(addresses.error()));
}

TEST_CASE("a torn or foreign file hides no other spec") {
    const ScratchFolder scratch;
    const SpecLibrary library = open_for_writing(scratch / "specs");
    const std::string text = text_of(test::approved_specimen());
    CHECK(library.put(kAhead, text).empty());
    const Address torn{"ottermere-m14", "torn"};
    for (const std::size_t length : {std::size_t{0}, text.size() / 4, text.size() / 2, text.size() - 40}) {
        CHECK(library.put(torn, text.substr(0, length)).empty());
        const auto shelves = library.shelves({kAhead, torn}, test::wires(), true, 2);
        CHECK(shelves[0].revisions.size() == 1);
        CHECK(shelves[1].revisions.empty());
        CHECK(has_error(shelves[1].wrong));
    }
}

TEST_CASE("a library is read alike by any number of threads") {
    const ScratchFolder scratch;
    const SpecLibrary library = open_for_writing(scratch / "specs");
    std::vector<Address> addresses;
    for (int i = 0; i < 50; ++i) {
        addresses.push_back({"engine-" + std::to_string(i % 7), "position-" + std::to_string(i)});
        const std::string text = text_of_revision(std::string(1, static_cast<char>('A' + i % 8)));
        write_bytes(scratch.path() / "specs" / (addresses.back().text() + ".toml"), text);
    }
    const auto one = library.shelves(addresses, test::wires(), true, 1);
    for (const unsigned threads : {2u, 5u}) {
        const auto many = library.shelves(addresses, test::wires(), true, threads);
        REQUIRE(many.size() == one.size());
        for (std::size_t i = 0; i < one.size(); ++i) {
            CHECK(many[i].address == addresses[i]);
            REQUIRE(many[i].revisions.size() == 1);
            CHECK(many[i].revisions[0].kept.content == one[i].revisions[0].kept.content);
        }
    }
}
