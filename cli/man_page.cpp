// SPDX-License-Identifier: MIT
#include <cli/man_page.hpp>

#include <cctype>
#include <cstdio>

#include <seatload/core/assert.hpp>

namespace seatload::cli {
namespace {

/// The code point that begins at `at`, which is moved on past it; the text is our own and valid UTF-8.
unsigned next_code_point(std::string_view text, std::size_t& at) {
    const auto lead = static_cast<unsigned char>(text[at++]);
    if (lead < 0x80) return lead;
    const int more = lead >= 0xF0 ? 3 : lead >= 0xE0 ? 2 : 1;
    unsigned code = lead & (0x3FU >> more);
    for (int i = 0; i < more; ++i) code = (code << 6) | (static_cast<unsigned char>(text[at++]) & 0x3FU);
    return code;
}

/// The text as roff prints it letter by letter: a hyphen that can be copied, no macro at the start of a line.
std::string roff(std::string_view text) {
    std::string printed;
    for (std::size_t at = 0; at < text.size();) {
        const unsigned code = next_code_point(text, at);
        if (code >= 0x80) {
            char escape[16];
            std::snprintf(escape, sizeof escape, "\\[u%04X]", code);
            printed += escape;
        } else if (code == '-') {
            printed += "\\-";
        } else if (code == '\\') {
            printed += "\\e";
        } else if (code == '\n') {
            printed += ' ';
        } else {
            if (printed.empty() && (code == '.' || code == '\'')) printed += "\\&";
            printed += static_cast<char>(code);
        }
    }
    return printed;
}

std::string bold(std::string_view text) { return "\\fB" + roff(text) + "\\fR"; }
std::string italic(std::string_view text) { return "\\fI" + roff(text) + "\\fR"; }

std::string heading(std::string_view words) { return ".SH " + std::string(words) + '\n'; }

std::string tagged(const std::string& tag, std::string_view about) { return ".TP\n" + tag + '\n' + roff(about) + '\n'; }

std::string option_item(const OptionEntry& option) {
    std::string tag;
    for (const std::string& name : option.names) tag += (tag.empty() ? "" : ", ") + bold(name);
    if (!option.value.empty()) tag += ' ' + italic(option.value);
    return tagged(tag, option.about);
}

std::string options_section(const std::vector<OptionEntry>& options) {
    std::string text;
    for (const OptionEntry& option : options) text += option_item(option);
    return text;
}

std::string argument_items(const std::vector<ArgumentEntry>& arguments) {
    std::string text;
    for (const ArgumentEntry& argument : arguments) text += tagged(italic(argument.name), argument.about);
    return text;
}

std::string synopsis_of(const std::string& command, const CommandEntry& entry, const std::string& next) {
    std::string line = ".B " + roff(command) + "\n[\\fIoptions\\fR]";
    line += next;
    for (const ArgumentEntry& argument : entry.arguments) {
        const std::string name = italic(argument.name) + (argument.is_many ? "..." : "");
        line += ' ' + (argument.is_needed ? name : '[' + name + ']');
    }
    return line + '\n';
}

/// The action with all that is its own; what its command takes may follow it too.
std::string action_section(const std::string& command, const CommandEntry& action) {
    std::string text = ".SS " + roff(command + ' ' + action.name) + '\n' + roff(action.about) + ".\n";
    text += argument_items(action.arguments);
    for (const OptionEntry& option : action.options)
        if (option.names.back() != "--help") text += option_item(option);
    return text;
}

std::string exit_section() {
    return heading("EXIT STATUS") + tagged(bold("0"), "done") +
           tagged(bold("1"), "nothing fits, or a limit is broken, or a check failed") +
           tagged(bold("2"), "wrong input or usage; nothing was written") +
           tagged(bold("3"), "a fault of the program itself");
}

std::string environment_section() {
    return heading("ENVIRONMENT") +
           tagged(bold("COLUMNS"), "how wide lines may be, from 60 on; else the terminal's width, or 80");
}

std::string files_section(const ManText& text) {
    std::string section = heading("FILES");
    for (const ManFile& file : text.files) section += tagged(italic(file.name), file.about);
    if (text.command.empty())
        section += ".PP\n" + roff("<prefix> is /usr, or /usr/local, or where it was installed.") + '\n';
    return section;
}

std::string examples_section(const ManText& text) {
    std::string section = heading("EXAMPLES") +
                          roff(
                              "The files are those of <prefix>/share/seatload: copy its templates and specs to try "
                              "them.") +
                          '\n';
    for (const ManExample& example : text.examples) {
        std::string about(example.about);
        about.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(about.front())));
        if (example.exit_code != 0) about += " (exit status " + std::to_string(example.exit_code) + ')';
        section += ".PP\n" + roff(about) + ":\n.PP\n.RS 4\n.EX\n" + roff(example.line) + "\n.EE\n.RE\n";
    }
    return section;
}

std::string see_also(const CommandEntry& program, const ManText& text) {
    std::string section = heading("SEE ALSO");
    std::vector<std::string> pages;
    if (!text.command.empty()) pages.push_back(man_name(""));
    for (const std::string_view command : text.related) pages.push_back(man_name(command));
    if (text.command.empty())
        for (const CommandEntry& command : program.commands) pages.push_back(man_name(command.name));
    for (std::size_t i = 0; i < pages.size(); ++i)
        section += ".BR \\%" + roff(pages[i]) + " (1)" + (i + 1 < pages.size() ? " ," : "") + '\n';
    return section;
}

const CommandEntry& entry_of(const CommandEntry& program, std::string_view command) {
    if (command.empty()) return program;
    for (const CommandEntry& entry : program.commands)
        if (entry.name == command) return entry;
    throw InternalError("a manual page for what is no command: " + std::string(command));
}

}  // namespace

std::string man_name(std::string_view command) {
    return command.empty() ? "seatload" : "seatload-" + std::string(command);
}

std::string man_page(const CommandEntry& program, const ManText& text, std::string_view version) {
    const CommandEntry& entry = entry_of(program, text.command);
    const bool is_program = text.command.empty();
    const std::string typed = is_program ? "seatload" : "seatload " + std::string(text.command);
    std::string page = ".\\\" Made from the program's own help.\n.TH " + roff(man_name(text.command)) +
                       " 1 \"\" \"seatload " + roff(version) + "\" \"seatload manual\"\n";
    page += ".nh\n.ad l\n";
    page += heading("NAME") + roff(man_name(text.command)) + " \\- " +
            roff(is_program ? "size compression springs and write the papers they are ordered with" : entry.about) +
            '\n';
    page += heading("SYNOPSIS");
    page += synopsis_of(typed, entry,
                        is_program               ? " \\fIcommand\\fR"
                        : entry.commands.empty() ? ""
                                                 : " \\fIaction\\fR");
    page += heading("DESCRIPTION");
    for (const std::string_view paragraph : text.paragraphs) page += roff(paragraph) + "\n.PP\n";
    page.resize(page.size() - 4);
    if (!entry.arguments.empty()) page += heading("ARGUMENTS") + argument_items(entry.arguments);
    page += heading("OPTIONS") + options_section(entry.options);
    if (is_program) {
        page += heading("COMMANDS");
        for (const CommandEntry& command : entry.commands)
            page += ".TP\n.BR " + roff(man_name(command.name)) + " (1)\n" + roff(command.about) + '\n';
    } else if (!entry.commands.empty()) {
        page += heading("ACTIONS") + roff("The options above may follow an action too.") + '\n';
        for (const CommandEntry& action : entry.commands) page += action_section(typed, action);
    }
    page += exit_section() + environment_section() + files_section(text) + examples_section(text);
    return page + see_also(program, text);
}

}  // namespace seatload::cli
