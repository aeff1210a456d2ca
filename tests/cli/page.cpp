// SPDX-License-Identifier: MIT
#include "page.hpp"

#include <algorithm>
#include <regex>

namespace seatload::test {

namespace fs = std::filesystem;

std::vector<Block> blocks_of(const Lines& page) {
    std::vector<Block> blocks;
    bool is_inside = false;
    std::string before;
    for (const std::string& line : page) {
        std::smatch name;
        if (line.starts_with("```")) {
            is_inside = !is_inside;
            if (!is_inside) {
                before.clear();
                continue;
            }
            blocks.emplace_back();
            if (std::regex_search(before, name, std::regex("`([^`/ ]+)`:$"))) blocks.back().file = name[1];
        } else if (is_inside) {
            blocks.back().lines.push_back(line);
        } else if (!line.empty()) {
            before = line;
        }
    }
    return blocks;
}

std::vector<Command> commands_of(const Block& block) {
    std::vector<Command> commands;
    bool goes_on = false;
    for (const std::string& line : block.lines) {
        if (line.find("cmake ") != std::string::npos) return {};
        if (goes_on)
            commands.back().words += "\n" + line;
        else if (line == "seatload" || line.starts_with("seatload ") || line.starts_with("build/bin/seatload "))
            commands.push_back({line, 0, {}});
        else {
            if (!commands.empty()) commands.back().shown.push_back(line);
            continue;
        }
        goes_on = line.ends_with("\\");
        std::smatch told;
        if (std::regex_search(line, told, std::regex("# exits ([0-3])$"))) commands.back().code = std::stoi(told[1]);
    }
    return commands;
}

std::optional<std::string> not_printed(Lines shown, const Lines& output) {
    while (!shown.empty() && shown.back().empty()) shown.pop_back();
    auto at = output.begin();
    bool is_adjoining = false;
    for (const std::string& line : shown) {
        if (line == "...") {
            is_adjoining = false;
            continue;
        }
        const auto found =
            is_adjoining ? (at != output.end() && *at == line ? at : output.end()) : std::find(at, output.end(), line);
        if (found == output.end()) return line;
        at = found + 1;
        is_adjoining = true;
    }
    return std::nullopt;
}

Lines links_of(const Lines& page) {
    static const std::regex kLink(R"(\]\(([^)]+)\))");
    Lines links;
    bool is_inside = false;
    for (const std::string& line : page) {
        if (line.starts_with("```")) is_inside = !is_inside;
        if (is_inside) continue;
        for (auto found = std::sregex_iterator(line.begin(), line.end(), kLink); found != std::sregex_iterator();
             ++found) {
            const std::string target = (*found)[1].str().substr(0, (*found)[1].str().find('#'));
            if (!target.empty() && target.find("://") == std::string::npos) links.push_back(target);
        }
    }
    return links;
}

void furnish_clone(const fs::path& folder, const fs::path& sources, const fs::path& program) {
    for (const char* name : {"templates", "specs"})
        if (const fs::path from = sources / name; fs::exists(from))
            fs::copy(from, folder / name, fs::copy_options::recursive);
    fs::create_directories(folder / "build/bin");
    fs::create_symlink(program, folder / "build/bin/seatload");
}

}  // namespace seatload::test
