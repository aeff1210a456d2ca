// SPDX-License-Identifier: MIT
#include <cli/reply_command.hpp>

#include <nlohmann/json.hpp>
#include <seatload/io/reply_file.hpp>

#include <cli/reply_view.hpp>
#include <cli/session.hpp>

namespace seatload::cli {

int run_reply(const ReplyOptions& options, std::ostream& out, std::ostream& err) {
    std::vector<record::Reply> replies;
    Diagnostics said;
    for (const std::string& path : options.replies) {
        auto reply = read_file(path, io::read_reply);
        said.insert(said.end(), reply.error().begin(), reply.error().end());
        if (reply) replies.push_back(std::move(reply).value());
    }
    err << render(sorted(said));
    if (has_error(said)) return kBadInput;
    nlohmann::ordered_json array = nlohmann::ordered_json::array();
    for (std::size_t i = 0; i < replies.size(); ++i) {
        const ReplyView view{options.replies[i], replies[i]};
        if (options.json)
            array.push_back(reply_json(view));
        else
            out << (i == 0 ? "" : "\n") << reply_text(view, options.width);
    }
    if (options.json) out << array.dump(2) << '\n';
    return kDone;
}

}  // namespace seatload::cli
