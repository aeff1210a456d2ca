// SPDX-License-Identifier: MIT
#include <cli/reply_command.hpp>

#include <nlohmann/json.hpp>
#include <seatload/io/reply_file.hpp>

#include <cli/reply_view.hpp>
#include <cli/session.hpp>

namespace seatload::cli {

int run_reply(const ReplyOptions& options, std::ostream& out, std::ostream& err) {
    Diagnostics said;
    std::string texts;
    nlohmann::ordered_json array = nlohmann::ordered_json::array();
    for (const std::string& path : options.replies) {
        const auto reply =
            read_file(path, [](std::string_view text, const std::string& name) { return io::read_reply(text, name); });
        said.insert(said.end(), reply.error().begin(), reply.error().end());
        if (!reply) continue;
        const ReplyView view{path, *reply};
        if (options.json)
            array.push_back(reply_json(view));
        else
            texts += (texts.empty() ? "" : "\n") + reply_text(view, options.width);
    }
    // A wrong reply hides no sound one.
    out << (options.json ? array.dump(2) + '\n' : texts) << std::flush;
    complain(said, err);
    return has_error(said) ? kBadInput : kDone;
}

}  // namespace seatload::cli
