// SPDX-License-Identifier: MIT
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

#include <atomic>
#include <chrono>
#include <csignal>
#include <thread>

#include <seatload/core/file.hpp>

#include "support/check.hpp"
#include "support/scratch_folder.hpp"

using namespace seatload;
using seatload::test::bytes_of;
using seatload::test::ScratchFolder;
using seatload::test::write_bytes;

namespace {

namespace fs = std::filesystem;

std::string only_message(const Diagnostics& diagnostics) {
    REQUIRE(diagnostics.size() == 1);
    return diagnostics.front().message;
}
std::string refusal(const fs::path& path) {
    const auto read = read_text_file(path);
    REQUIRE_FALSE(read);
    CHECK(read.error().front().place.file == path.string());
    return only_message(read.error());
}

fs::perms mode(const fs::path& path) { return fs::status(path).permissions(); }

/// Lets a process write at most so many bytes to a file, as a full disk would.
class SmallDisk {
  public:
    explicit SmallDisk(rlim_t bytes) : handler_(std::signal(SIGXFSZ, SIG_IGN)) {
        ::getrlimit(RLIMIT_FSIZE, &before_);
        const rlimit small{bytes, before_.rlim_max};
        ::setrlimit(RLIMIT_FSIZE, &small);
    }
    SmallDisk(const SmallDisk&) = delete;
    SmallDisk& operator=(const SmallDisk&) = delete;
    ~SmallDisk() {
        ::setrlimit(RLIMIT_FSIZE, &before_);
        std::signal(SIGXFSZ, handler_);
    }

  private:
    rlimit before_{};
    void (*handler_)(int);
};

}  // namespace

TEST_CASE("a text file is read to the last byte") {
    const ScratchFolder folder;
    const std::string bytes("a\r\n\0\xff z", 7);
    write_bytes(folder / "x", bytes);
    CHECK(read_text_file(folder / "x").value() == bytes);
    write_bytes(folder / "empty", "");
    CHECK(read_text_file(folder / "empty").value().empty());
}

TEST_CASE("what cannot be read is told plainly") {
    const ScratchFolder folder;
    CHECK(refusal(folder / "missing.toml") == "no such file");
    CHECK(refusal(folder.path()) == "this is a folder, not a file");
    CHECK(refusal("/dev/null") == "not a regular file");
    write_bytes(folder / "file", "x");
    CHECK_THAT(refusal(folder / "file/below"),
               ContainsSubstring("no such file") || ContainsSubstring("cannot look at the file"));
}

TEST_CASE("a file that the system lets nobody look at is refused with the system's reason") {
    const ScratchFolder folder;
    fs::create_symlink("round", folder / "round");  // stops root, too
    const std::string shown = render(read_text_file(folder / "round").error());
    CHECK(shown.substr(folder.path().string().size() + 1) ==
          "round: error: cannot look at the file: Too many levels of symbolic links [cannot-read]\n");
}

TEST_CASE("a file whose bytes are not those it had when it was opened is refused") {
    if (!fs::exists("/proc/self/status")) return;
    // The system makes these bytes only when they are read, and says beforehand that there are none (proc(5)).
    CHECK(render(read_text_file("/proc/self/status").error()) ==
          "/proc/self/status: error: the file changed while it was read [changed-while-read]\n"
          "    hint: run again when whatever writes it has ended\n");
}

TEST_CASE("a file that is written in place while it is read comes whole or not at all") {
    const ScratchFolder folder;
    const std::string one(4000, '1'), other(3000, '2');
    write_bytes(folder / "x", one);
    std::atomic<bool> is_over = false;
    std::thread writer([&] {
        for (int turn = 0; !is_over; ++turn) {
            write_bytes(folder / "x", turn % 2 == 0 ? other : one);
            std::this_thread::sleep_for(std::chrono::milliseconds(10));  // longer than a file system's clock ticks
        }
    });
    for (int turn = 0; turn < 5000; ++turn) {
        const auto read = read_text_file(folder / "x");
        if (read) CHECK((*read == one || *read == other || read->empty()));
        if (!read) CHECK(read.error().front().id == "changed-while-read"_id);
    }
    is_over = true;
    writer.join();
}

TEST_CASE("a file larger than any written by hand is refused before it is read") {
    const ScratchFolder folder;
    write_bytes(folder / "largest", std::string(kLargestInput, 'a'));
    CHECK(read_text_file(folder / "largest").value().size() == kLargestInput);
    write_bytes(folder / "larger", std::string(kLargestInput + 1, 'a'));
    const auto read = read_text_file(folder / "larger");
    CHECK(only_message(read.error()) == "the file is larger than 1 MiB, far more than a spring file needs");
    CHECK(read.error().front().hint == "is this the right file?");
}

TEST_CASE("an unreadable file is refused with the system's reason") {
    if (::geteuid() == 0) return;  // root reads everything
    const ScratchFolder folder;
    write_bytes(folder / "x", "x");
    fs::permissions(folder / "x", fs::perms::none);
    CHECK(refusal(folder / "x") == "cannot read the file: Permission denied");
}

TEST_CASE("a replaced file has the new bytes, and nothing else is left in the folder") {
    const ScratchFolder folder;
    CHECK(replace_file(folder / "spec.toml", "first").empty());
    CHECK(bytes_of(folder / "spec.toml") == "first");
    CHECK(replace_file(folder / "spec.toml", "second, longer").empty());
    CHECK(bytes_of(folder / "spec.toml") == "second, longer");
    CHECK(replace_file(folder / "spec.toml", "").empty());
    CHECK(bytes_of(folder / "spec.toml").empty());
    CHECK(folder.entries() == 1);
}

TEST_CASE("a file of a name alone is replaced in the working folder") {
    const ScratchFolder folder;
    const fs::path before = fs::current_path();
    fs::current_path(folder.path());
    const Diagnostics problems = replace_file("plain.toml", "x");
    fs::current_path(before);
    CHECK(problems.empty());
    CHECK(bytes_of(folder / "plain.toml") == "x");
}

TEST_CASE("a replaced file keeps its permissions, a new one gets the usual ones") {
    const ScratchFolder folder;
    write_bytes(folder / "kept", "x");
    fs::permissions(folder / "kept", fs::perms(0640));
    CHECK(replace_file(folder / "kept", "y").empty());
    CHECK(mode(folder / "kept") == fs::perms(0640));
    const mode_t mask = ::umask(0027);
    CHECK(replace_file(folder / "new", "y").empty());
    ::umask(mask);
    CHECK(mode(folder / "new") == fs::perms(0640));
}

TEST_CASE("a link is followed and stays a link") {
    const ScratchFolder folder;
    fs::create_directory(folder / "elsewhere");
    write_bytes(folder / "elsewhere/real", "x");
    fs::create_symlink("elsewhere/real", folder / "link");
    CHECK(replace_file(folder / "link", "y").empty());
    CHECK(fs::is_symlink(folder / "link"));
    CHECK(bytes_of(folder / "elsewhere/real") == "y");
}

TEST_CASE("a link to nowhere is refused") {
    const ScratchFolder folder;
    fs::create_symlink("nowhere", folder / "link");
    CHECK_THAT(only_message(replace_file(folder / "link", "y")), ContainsSubstring("cannot follow the link"));
    CHECK(folder.entries() == 1);
}

TEST_CASE("devices and folders are not replaced") {
    const ScratchFolder folder;
    CHECK(only_message(replace_file("/dev/full", "y")) == "not a regular file; nothing written");
    CHECK(only_message(replace_file(folder.path(), "y")) == "not a regular file; nothing written");
    CHECK(fs::is_directory(folder.path()));
}

TEST_CASE("a missing folder is told with its name") {
    const ScratchFolder folder;
    const std::string message = only_message(replace_file(folder / "missing/spec.toml", "y"));
    CHECK(message == "cannot write in the folder " + (folder / "missing").string() + ": No such file or directory");
    CHECK(folder.entries() == 0);
}

TEST_CASE("a full disk leaves the old bytes and no litter") {
    const ScratchFolder folder;
    write_bytes(folder / "spec.toml", "old");
    Diagnostics problems;
    {
        const SmallDisk disk(1000);
        problems = replace_file(folder / "spec.toml", std::string(5000, 'x'));
    }
    CHECK(only_message(problems) == "cannot write the file: File too large");
    CHECK(problems.front().place.file == (folder / "spec.toml").string());
    CHECK(bytes_of(folder / "spec.toml") == "old");
    CHECK(folder.entries() == 1);
}

TEST_CASE("a reader never sees half of a replaced file") {
    const ScratchFolder folder;
    const fs::path path = folder / "spec.toml";
    const std::string first(300000, 'a');
    const std::string second(200000, 'b');
    REQUIRE(replace_file(path, first).empty());
    std::atomic<bool> done = false;
    std::thread writer([&] {
        for (int i = 0; i < 40; ++i) (void)replace_file(path, i % 2 == 0 ? second : first);
        done = true;
    });
    int torn = 0;
    int reads = 0;
    while (!done) {
        const std::string seen = bytes_of(path);
        ++reads;
        torn += seen != first && seen != second;
    }
    writer.join();
    CHECK(reads > 0);
    CHECK(torn == 0);
    CHECK(folder.entries() == 1);
}

TEST_CASE("a folder is made with its parents, and made again without complaint") {
    const ScratchFolder folder;
    CHECK(make_folder(folder / "a/b/c").empty());
    CHECK(make_folder(folder / "a/b/c").empty());
    CHECK(fs::is_directory(folder / "a/b/c"));
}

TEST_CASE("a file in the way of a folder is told") {
    const ScratchFolder folder;
    write_bytes(folder / "a", "x");
    CHECK_THAT(only_message(make_folder(folder / "a")), ContainsSubstring("folder"));
    CHECK_THAT(only_message(make_folder(folder / "a/b")), ContainsSubstring("cannot make the folder"));
    CHECK(bytes_of(folder / "a") == "x");
}
