// SPDX-License-Identifier: MIT
// Plays a .test file against the program; format.md says what stands in one.
#include <filesystem>
#include <iostream>

#include <support/scratch_folder.hpp>

#include "line_diff.hpp"
#include "play.hpp"
#include "props.hpp"

namespace {

namespace fs = std::filesystem;
using namespace seatload::test;

constexpr int kPassed = 0, kDiffers = 1, kUsage = 2, kSkipped = 77;
constexpr const char* kDecimalComma = "de_DE.UTF-8";

struct Task {
    fs::path program;
    fs::path script;
    fs::path locales;  ///< folder with the decimal-comma locale; empty: the machine can make none
    bool accept = false;
};

bool read_task(int argc, char** argv, Task& task) {
    int place = 0;
    for (int i = 1; i < argc; ++i) {
        const std::string word = argv[i];
        if (word == "--accept")
            task.accept = true;
        else if (word == "--locales" && i + 1 < argc)
            task.locales = argv[++i];
        else if (place == 0)
            task.program = fs::absolute(word), ++place;
        else if (place == 1)
            task.script = word, ++place;
        else
            return false;
    }
    return place == 2;
}

Stage plain(const Task& task) { return {task.program, SEATLOAD_SOURCE_DIR, {"LANG=C", "LC_ALL=C"}}; }

Stage with_decimal_comma(const Task& task) {
    const std::string name = kDecimalComma;
    return {task.program, SEATLOAD_SOURCE_DIR, {"LOCPATH=" + task.locales.string(), "LANG=" + name, "LC_ALL=" + name}};
}

/// Compares a script with how it came out, and leaves the latter in the current folder when they differ.
bool is_same(const Task& task, const Script& expected, const Script& came, const std::string& under) {
    const std::string difference = line_diff(lines_of(expected), lines_of(came));
    if (difference.empty()) return true;
    const fs::path out = task.script.filename().string() + ".out";
    write_bytes(out, text_of(lines_of(came)));
    std::cout << task.script.string() << " came out otherwise under " << under << ":\n"
              << difference << "As it came out: " << fs::absolute(out).string() << '\n';
    return false;
}

int hold(const Task& task) {
    const Script script = parse_script(bytes_of(task.script));
    const Script came = play(script, plain(task));
    if (task.accept) {
        write_bytes(task.script, text_of(lines_of(came)));
        return kPassed;
    }
    if (!is_same(task, script, came, "LANG=C")) return kDiffers;
    if (task.locales.empty()) return kPassed;
    return is_same(task, script, play(script, with_decimal_comma(task)), kDecimalComma) ? kPassed : kDiffers;
}

}  // namespace

int main(int argc, char** argv) {
    Task task;
    if (!read_task(argc, argv, task)) {
        std::cerr << "usage: cli_runner SEATLOAD FILE.test [--accept] [--locales FOLDER]\n";
        return kUsage;
    }
    try {
        return hold(task);
    } catch (const NotHere& reason) {
        std::cout << "skipped: " << reason.what() << '\n';
        return kSkipped;
    } catch (const std::exception& error) {
        std::cerr << task.script.string() << ": " << error.what() << '\n';
        return kUsage;
    }
}
