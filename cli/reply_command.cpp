// SPDX-License-Identifier: MIT
#include <cli/reply_command.hpp>

#include <nlohmann/json.hpp>
#include <seatload/core/append.hpp>
#include <seatload/io/reply_check.hpp>
#include <seatload/io/reply_file.hpp>

#include <cli/papers.hpp>
#include <cli/reply_view.hpp>
#include <cli/session.hpp>
#include <cli/typed_command.hpp>

namespace seatload::cli {

namespace {

/// How the offers that were read are judged.
std::string what_next(const std::vector<std::string>& sound, int width) {
    if (sound.empty()) return {};
    TypedCommand quotes("quotes");
    quotes.open("ENQUIRY");
    for (const std::string& path : sound) quotes.name(path);
    return '\n' + next_text(quotes.text() + " judges each offer and ranks them.", width);
}

}  // namespace

int run_reply(const ReplyOptions& options, std::ostream& out, std::ostream& err) {
    Diagnostics said;
    std::string texts;
    std::vector<std::string> sound;
    nlohmann::ordered_json array = nlohmann::ordered_json::array();
    for (const std::string& path : options.replies) {
        const auto reply =
            read_file(path, [](std::string_view text, const std::string& name) { return io::read_reply(text, name); });
        append(said, reply.error());
        if (!reply) continue;
        append(said, io::doubts_on_letters(*reply, path));
        const ReplyView view{path, *reply};
        if (reply->is_quoted()) sound.push_back(path);
        if (options.json)
            array.push_back(reply_json(view));
        else
            texts += (texts.empty() ? "" : "\n") + reply_text(view, options.width);
    }
    // A wrong reply hides no sound one.
    out << (options.json ? array.dump(2) + '\n' : texts + what_next(sound, options.width)) << std::flush;
    complain(said, err);
    return has_error(said) ? kBadInput : kDone;
}

}  // namespace seatload::cli
