// SPDX-License-Identifier: MIT
#include <seatload/core/text.hpp>

#include <cli/completion.hpp>
#include <cli/completion_entries.hpp>

namespace seatload::cli {
namespace {

// Finds what stands before the word being typed, then offers what the tables above it say. "=" is a word of its own
// in bash, so that --paper=a4 comes as three.
constexpr const char* kBashFunctions = R"bash(# The kind of what is wanted, its words, and the word as far as typed.
_seatload_offer() {
    local kind=$1 words=$2 typed=$3 ending file hidden=''
    [[ $typed ]] || hidden='.*'
    COMPREPLY=()
    case $kind in
        words)
            mapfile -t COMPREPLY < <(compgen -W "$words" -- "$typed")
            [[ ${COMPREPLY[0]} == *= ]] && compopt -o nospace 2>/dev/null
            ;;
        folder)
            compopt -o filenames 2>/dev/null
            mapfile -t COMPREPLY < <(compgen -d -X "$hidden" -- "$typed")
            ;;
        kept)
            for file in "$_seatload_library"/*/*.toml; do
                file=${file#"$_seatload_library"/}
                file=${file%.toml}
                [[ $file == "$typed"* && $file != '*'* ]] && COMPREPLY+=("$file")
            done
            ((${#COMPREPLY[@]})) || _seatload_offer file "$words" "$typed"
            ;;
        file)
            compopt -o filenames 2>/dev/null
            for ending in $words; do
                mapfile -t -O "${#COMPREPLY[@]}" COMPREPLY < <(compgen -f -X "!*$ending" -- "$typed")
            done
            mapfile -t -O "${#COMPREPLY[@]}" COMPREPLY < <(compgen -d -X "$hidden" -- "$typed")
            ((${#COMPREPLY[@]})) || mapfile -t COMPREPLY < <(compgen -f -- "$typed")
            ;;
    esac
}

_seatload() {
    local typed=${COMP_WORDS[COMP_CWORD]} command='' option='' before='' word wanted i
    local arguments=0 _seatload_library=specs
    for ((i = 1; i < COMP_CWORD; i++)); do
        word=${COMP_WORDS[i]}
        if [[ $word == '=' || $before == '=' && -z $option ]]; then
            :
        elif [[ -n $option ]]; then
            [[ $option == --library ]] && _seatload_library=$word
            option=''
        elif [[ $word == -* ]]; then
            _seatload_value "$command" "$word" >/dev/null && option=$word
        elif [[ " $(_seatload_commands "$command") " == *" $word "* ]]; then
            command=${command:+$command }$word
        else
            ((arguments++))
        fi
        before=$word
    done
    [[ $typed == '=' ]] && typed=''
    COMPREPLY=()
    if [[ -n $option ]]; then
        wanted=$(_seatload_value "$command" "$option")
        _seatload_offer "${wanted%% *}" "${wanted#* }" "$typed"
    elif [[ $before == '=' ]]; then
        :
    elif [[ $typed == -* ]]; then
        _seatload_offer words "$(_seatload_options "$command")" "$typed"
    elif [[ -n $(_seatload_commands "$command") ]]; then
        _seatload_offer words "$(_seatload_commands "$command")" "$typed"
    else
        wanted=$(_seatload_argument "$command" "$((arguments + 1))")
        _seatload_offer "${wanted%% *}" "${wanted#* }" "$typed"
    fi
}

complete -F _seatload seatload
)bash";

std::string bash_words(const std::vector<std::string>& words) { return join(words, " "); }

/// "file .toml": the kind and its words, one after the other.
std::string bash_wanted(const Choices& choices) {
    static const char* const kKinds[] = {"nothing", "file", "folder", "words", "kept"};
    const std::string kind = kKinds[static_cast<int>(choices.kind)];
    return choices.words.empty() ? kind + ' ' : kind + ' ' + bash_words(choices.words);
}

std::string bash_case(const std::string& pattern, const std::string& answer) {
    return "        " + pattern + ") echo " + shell_quoted(answer) + " ;;\n";
}

/// A function that answers by what it is asked; what is not listed it does not know.
std::string bash_function(const std::string& name, const std::string& asked, const std::string& cases) {
    return "_seatload_" + name + "() {\n    case " + asked + " in\n" + cases +
           "        *) return 1 ;;\n    esac\n}\n\n";
}

std::string bash_command_cases(const CommandWords& words) {
    std::vector<std::string> names;
    for (const CommandEntry& command : words.commands) names.push_back(command.name);
    return names.empty() ? "" : bash_case(shell_quoted(words.path), bash_words(names));
}

std::string bash_option_cases(const CommandWords& words) {
    std::vector<std::string> names;
    for (const OptionEntry& option : words.options) names.insert(names.end(), option.names.begin(), option.names.end());
    return bash_case(shell_quoted(words.path), bash_words(names));
}

std::string bash_value_cases(const CommandWords& words) {
    std::string cases;
    for (const OptionEntry& option : words.options) {
        if (option.value.empty()) continue;
        std::string pattern;
        for (const std::string& name : option.names)
            pattern += (pattern.empty() ? "" : "|") + shell_quoted(words.path + ' ' + name);
        cases += bash_case(pattern, bash_wanted(choices_of(words.path, option)));
    }
    return cases;
}

std::string bash_argument_cases(const CommandWords& words) {
    std::string cases;
    for (std::size_t i = 0; i < words.arguments.size(); ++i) {
        const ArgumentEntry& argument = words.arguments[i];
        const std::string place = argument.is_many ? "*" : std::to_string(i + 1);
        cases += bash_case(shell_quoted(words.path + ' ') + place, bash_wanted(choices_of(words.path, argument)));
    }
    return cases;
}

}  // namespace

std::string bash_completion(const CommandEntry& program) {
    std::string commands, options, values, arguments;
    for (const CommandWords& words : all_command_words(program)) {
        commands += bash_command_cases(words);
        options += bash_option_cases(words);
        values += bash_value_cases(words);
        arguments += bash_argument_cases(words);
    }
    return "# Completion of seatload's commands for bash. Made from the program's own helps.\n\n" +
           bash_function("commands", "$1", commands) + bash_function("options", "$1", options) +
           bash_function("value", "\"$1 $2\"", values) + bash_function("argument", "\"$1 $2\"", arguments) +
           kBashFunctions;
}

}  // namespace seatload::cli
