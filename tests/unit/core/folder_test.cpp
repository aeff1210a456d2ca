// SPDX-License-Identifier: MIT
// That nothing is read or written outside a folder by any name, and that a lock keeps processes apart.
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <filesystem>

#include <seatload/core/file.hpp>
#include <seatload/core/folder.hpp>
#include <seatload/core/folder_lock.hpp>
#include <support/check.hpp>
#include <support/scratch_folder.hpp>

using namespace seatload;
using test::bytes_of;
using test::ScratchFolder;
using test::write_bytes;
namespace fs = std::filesystem;

namespace {

/// What another process makes of a lock on the folder: 0 got it, 1 did not.
int lock_of_another_process(const fs::path& path, FolderLock::Kind kind) {
    const pid_t child = ::fork();
    if (child == 0) {
        const auto folder = Folder::open(path);
        ::_exit(folder && FolderLock::take(*folder, kind, 0.05) ? 0 : 1);
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

/// What a user is shown, the scratch folder left out of the paths.
std::string told(const Diagnostics& diagnostics, const ScratchFolder& scratch) {
    std::string text = render(diagnostics);
    const std::string folder = scratch.path().string() + '/';
    for (std::size_t at = text.find(folder); at != std::string::npos; at = text.find(folder))
        text.erase(at, folder.size());
    return text;
}

}  // namespace

TEST_CASE("a folder takes plain names alone, so that none leads out of it") {
    const ScratchFolder scratch;
    write_bytes(scratch / "secret", "not yours");
    fs::create_directories(scratch / "library/engine");
    const auto folder = Folder::open(scratch / "library");
    REQUIRE(folder.has_value());
    const std::vector<std::string> names{"../secret",
                                         "..",
                                         ".",
                                         "",
                                         "/etc/passwd",
                                         "engine/../../secret",
                                         "engine/x",
                                         "a\\b",
                                         "caf\xC3\xA9",
                                         "\xFF",
                                         "a\nb",
                                         "a:b",
                                         " a",
                                         "a ",
                                         ".hidden",
                                         "~root",
                                         "a*",
                                         "con\x01",
                                         std::string("a\0b", 3),
                                         std::string(300, 'a')};
    for (const std::string& name : names) {
        CAPTURE(name);
        CHECK_FALSE(folder->read(name).has_value());
        CHECK_FALSE(folder->inside(name).has_value());
        CHECK_FALSE(folder->made_inside(name).has_value());
        CHECK_FALSE(folder->has(name));
        CHECK(has_error(folder->replace(name, "mine now")));
    }
    CHECK(bytes_of(scratch / "secret") == "not yours");
    CHECK(scratch.entries() == 2);
}

TEST_CASE("links in a folder are followed neither to files nor to folders") {
    const ScratchFolder scratch;
    write_bytes(scratch / "outside/secret.toml", "not yours");
    fs::create_directories(scratch / "library");
    fs::create_symlink(scratch / "outside/secret.toml", scratch / "library/link.toml");
    fs::create_symlink(scratch / "outside", scratch / "library/engine");
    const auto folder = Folder::open(scratch / "library");
    REQUIRE(folder.has_value());
    CHECK(told(folder->read("link.toml").error(), scratch) ==
          "library/link.toml: error: this is a link, not a file [link-refused]\n"
          "    hint: links are not followed: put the file itself there\n");
    CHECK(has_error(folder->replace("link.toml", "mine now")));
    CHECK(told(folder->inside("engine").error(), scratch) ==
          "library/engine: error: not a folder of this library, but a file or a link [link-refused]\n"
          "    hint: links are not followed: put the folder itself there\n");
    CHECK_FALSE(folder->made_inside("engine").has_value());
    const auto entries = folder->entries();
    REQUIRE(entries.has_value());
    for (const Folder::Entry& entry : *entries) CHECK(entry.kind == Folder::Kind::other);
    CHECK(bytes_of(scratch / "outside/secret.toml") == "not yours");
}

TEST_CASE("a link planted where a file is written aside is not written through") {
    const ScratchFolder scratch;
    write_bytes(scratch / "victim", "not yours");
    fs::create_directories(scratch / "library");
    fs::create_symlink(scratch / "victim", scratch / "library/.aside.1");
    fs::create_symlink(scratch / "victim", scratch / "library/.lock");
    const auto folder = Folder::open(scratch / "library");
    REQUIRE(folder.has_value());
    CHECK(folder->replace("a.toml", "mine").empty());
    CHECK(bytes_of(scratch / "library/a.toml") == "mine");
    CHECK(bytes_of(scratch / "victim") == "not yours");
    CHECK(told(FolderLock::take(*folder, FolderLock::Kind::exclusive).error(), scratch) ==
          "library: error: cannot lock this library: Too many levels of symbolic links [cannot-lock]\n");
}

TEST_CASE("a library at which another program works all the time is told, with what to do") {
    const ScratchFolder scratch;
    fs::create_directories(scratch / "library");
    const auto folder = Folder::open(scratch / "library");
    REQUIRE(folder.has_value());
    const auto first = FolderLock::take(*folder, FolderLock::Kind::exclusive);
    REQUIRE(first.has_value());
    CHECK(told(FolderLock::take(*folder, FolderLock::Kind::exclusive, 0.05).error(), scratch) ==
          "library: error: another program has been at work in this library for too long [library-in-use]\n"
          "    hint: wait until it has ended, or end it; the lock goes with it\n");
}

TEST_CASE("a folder that is exchanged for a link after it was opened is not followed") {
    const ScratchFolder scratch;
    fs::create_directories(scratch / "library/engine");
    fs::create_directories(scratch / "outside");
    const auto engine = Folder::open(scratch / "library")->inside("engine");
    REQUIRE(engine.has_value());
    fs::rename(scratch / "library/engine", scratch / "library/moved");
    fs::create_symlink(scratch / "outside", scratch / "library/engine");
    CHECK(engine->replace("a.toml", "mine").empty());
    CHECK(fs::is_empty(scratch / "outside"));
    CHECK(bytes_of(scratch / "library/moved/a.toml") == "mine");
}

TEST_CASE("pipes, folders and huge files are refused as files, without waiting for anyone") {
    const ScratchFolder scratch;
    REQUIRE(::mkfifo((scratch / "pipe").c_str(), 0600) == 0);
    fs::create_directories(scratch / "folder");
    write_bytes(scratch / "huge", std::string(kLargestInput + 1, 'x'));
    const auto folder = Folder::open(scratch.path());
    REQUIRE(folder.has_value());
    for (const std::string name : {"pipe", "folder", "huge", "nothing"}) {
        CAPTURE(name);
        CHECK_FALSE(folder->read(name).has_value());
    }
    for (const std::string name : {"pipe", "folder"}) CHECK(has_error(folder->replace(name, "mine")));
    CHECK(told(folder->read("pipe").error(), scratch) == "pipe: error: not a regular file [not-a-file]\n");
}

TEST_CASE("a file is replaced as a whole, keeps its permissions, and leaves nothing aside") {
    const ScratchFolder scratch;
    const auto folder = Folder::open(scratch.path());
    REQUIRE(folder.has_value());
    CHECK(folder->replace("a.toml", "one").empty());
    fs::permissions(scratch / "a.toml", fs::perms::owner_read | fs::perms::owner_write);
    write_bytes(scratch / ".aside.1", "left by a killed writer");
    CHECK(folder->replace("a.toml", "two").empty());
    CHECK(*folder->read("a.toml") == "two");
    CHECK(fs::status(scratch / "a.toml").permissions() == (fs::perms::owner_read | fs::perms::owner_write));
    CHECK(scratch.entries() == 1);
}

TEST_CASE("one process at a time writes, several may read, and a killed one holds nothing") {
    const ScratchFolder scratch;
    const auto folder = Folder::open(scratch.path());
    REQUIRE(folder.has_value());
    {
        const auto writer = FolderLock::take(*folder, FolderLock::Kind::exclusive);
        REQUIRE(writer.has_value());
        CHECK(lock_of_another_process(scratch.path(), FolderLock::Kind::exclusive) == 1);
        CHECK(lock_of_another_process(scratch.path(), FolderLock::Kind::shared) == 1);
    }
    {
        const auto reader = FolderLock::take(*folder, FolderLock::Kind::shared);
        REQUIRE(reader.has_value());
        CHECK(lock_of_another_process(scratch.path(), FolderLock::Kind::shared) == 0);
        CHECK(lock_of_another_process(scratch.path(), FolderLock::Kind::exclusive) == 1);
    }
    const pid_t child = ::fork();
    if (child == 0) {
        const auto lock = FolderLock::take(*folder, FolderLock::Kind::exclusive);
        ::raise(SIGKILL);
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    CHECK(WIFSIGNALED(status));
    CHECK(lock_of_another_process(scratch.path(), FolderLock::Kind::exclusive) == 0);
}

TEST_CASE("a reader needs no lock file where no writer ever was") {
    const ScratchFolder scratch;
    const auto folder = Folder::open(scratch.path());
    REQUIRE(folder.has_value());
    CHECK(FolderLock::take(*folder, FolderLock::Kind::shared).has_value());
    CHECK(scratch.entries() == 0);
}
