// SPDX-License-Identifier: MIT
// Writes the manual pages and the completions of the shells into a folder, where the build installs them from.
#include <exception>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <stdexcept>
#include <string>

#include <cli/completion.hpp>
#include <cli/man_page.hpp>

namespace {

using namespace seatload;
namespace fs = std::filesystem;

void write(const fs::path& path, const std::string& text) {
    fs::create_directories(path.parent_path());
    std::ofstream stream(path, std::ios::binary);
    if (!(stream << text).flush()) throw std::runtime_error("cannot write " + path.string());
}

void write_all(const fs::path& folder) {
    const cli::CommandEntry program = cli::command_table();
    for (const cli::ManText& text : cli::man_texts())
        write(folder / "man" / "man1" / (cli::man_name(text.command) + ".1"),
              cli::man_page(program, text, SEATLOAD_VERSION));
    write(folder / "bash-completion" / "completions" / "seatload", cli::bash_completion(program));
    write(folder / "zsh" / "site-functions" / "_seatload", cli::zsh_completion(program));
    write(folder / "fish" / "vendor_completions.d" / "seatload.fish", cli::fish_completion(program));
}

}  // namespace

int main(int argc, char** argv) {
    if (argc != 2) {
        std::cerr << "usage: seatload_pages FOLDER\n";
        return 2;
    }
    try {
        write_all(argv[1]);
    } catch (const std::exception& wrong) {
        std::cerr << "seatload_pages: " << wrong.what() << '\n';
        return 1;
    }
    return 0;
}
