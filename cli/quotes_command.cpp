// SPDX-License-Identifier: MIT
#include <cli/quotes_command.hpp>

#include <algorithm>
#include <filesystem>

#include <nlohmann/json.hpp>
#include <seatload/core/append.hpp>
#include <seatload/io/reply_check.hpp>
#include <seatload/io/reply_file.hpp>
#include <seatload/record/shelf.hpp>
#include <seatload/sheet/quotes_sheet.hpp>

#include <cli/papers.hpp>
#include <cli/quotes_choice.hpp>
#include <cli/quotes_enquiry.hpp>
#include <cli/quotes_terms.hpp>
#include <cli/quotes_view.hpp>
#include <cli/session.hpp>
#include <cli/typed_command.hpp>

namespace seatload::cli {
namespace {

/// The replies, each held against the enquiry; what is said of them is added to `said`.
std::vector<record::NamedReply> read_replies(const QuotesOptions& options, const record::Enquired& asked,
                                             Diagnostics& said) {
    std::vector<record::NamedReply> replies;
    for (const std::string& path : options.replies) {
        auto reply = read_file(
            path, [&](std::string_view text, const std::string& name) { return io::read_reply(text, name, &asked); });
        append(said, reply.error());
        if (!reply) continue;
        if (!asked.mark.empty()) append(said, io::doubts_on_letters(*reply, path));
        const std::string& firm = reply->maker.firm;
        replies.push_back({firm.empty() ? std::filesystem::path(path).filename().string() : firm, *reply});
    }
    return replies;
}

Result<record::Comparison> compared(const QuotesOptions& options, const References& refs, Diagnostics& said) {
    auto enquiry = read_enquiry(options.enquiry, refs.wires);
    if (!enquiry) return Diagnostics(enquiry.error());
    auto replies = read_replies(options, enquiry->asked, said);
    if (has_error(said)) return Diagnostics{};
    const auto terms = comparison_terms(options, enquiry->asked, replies);
    if (!terms) return Diagnostics(terms.error());
    auto all =
        record::compare(enquiry->asked, enquiry->springs, std::move(replies), *terms, {refs.wires, refs.tolerances});
    if (!all) return placed(all.error(), options.enquiry);
    return all;
}

/// The report, when papers are wanted, and the spec of the chosen offer; what is said of them is added to `said`.
std::vector<Paper> make_papers(const record::Comparison& all, const record::JudgedOffer* chosen,
                               const QuotesOptions& options, const References& refs, Diagnostics& said) {
    std::vector<Paper> papers;
    if (options.papers) {
        const std::string& ending = "-quotes.pdf";
        const std::string name = std::filesystem::path(options.enquiry).filename().string();
        const std::filesystem::path path =
            std::filesystem::path(options.output) / (name.substr(0, name.rfind('-')) + ending);
        auto bytes = sheet::quotes_sheet_pdf({all, refs.english, refs.paper.size});
        append(said, placed(bytes.error(), path.string()));
        if (bytes) papers.push_back({path, std::move(bytes).value()});
    }
    if (chosen != nullptr) {
        auto spec = chosen_paper(all, *chosen, options);
        append(said, spec.error());
        if (spec) papers.push_back(std::move(spec).value());
    }
    return papers;
}

bool has_one_that_fits(const record::Comparison& all) {
    return std::any_of(all.offers.begin(), all.offers.end(), [](const record::JudgedOffer& o) { return o.rank != 0; });
}

/// What may be done with the spec of the chosen offer: a changed spring follows one of its part that may be kept.
std::string next_for_chosen(const QuotesOptions& options, const record::JudgedOffer& chosen, const std::string& spec) {
    const auto command = [&](const std::string& name) {
        return TypedCommand(name).name(spec).option("--wire-file", options.wire_file);
    };
    std::string words = command("sheet").text() + " draws its sheet; " +
                        command("specs add").open("--by NAME --date DATE").text() + " keeps it";
    const demand::Identity& identity = chosen.spring.spec.identity;
    if (chosen.spring.is_altered && !identity.engine.empty() && !identity.position.empty())
        words += " or, where the part is kept already, " +
                 TypedCommand("specs revise")
                     .name(record::address_of(identity).text())
                     .option("--with", spec)
                     .option("--wire-file", options.wire_file)
                     .open("--reason WORDS --by NAME --date DATE")
                     .text() +
                 " makes it the next revision";
    return words + '.';
}

/// How the first of those that fit becomes a spec, or the chosen spec one of the library.
std::string what_next(const record::Comparison& all, const record::JudgedOffer* chosen,
                      const std::vector<Paper>& papers, const QuotesOptions& options) {
    if (chosen != nullptr && !papers.empty())
        return next_text(next_for_chosen(options, *chosen, papers.back().path.string()), options.width);
    for (const record::JudgedOffer& offer : all.offers)
        if (offer.rank == 1)
            return next_text("the same with --choose " + shell_word(offer_words(all, offer)) + " writes its spec.",
                             options.width);
    return {};
}

}  // namespace

int run_quotes(const QuotesOptions& options, std::ostream& out, std::ostream& err) {
    if (const Diagnostics wrong = named_twice(options.replies); !wrong.empty()) return refuse(wrong, err);
    const auto references = load_references(options.wire_file, options.look);
    if (!references) return refuse(references.error(), err);
    Diagnostics said;
    const auto all = compared(options, *references, said);
    append(said, all.error());
    if (!all) return refuse(said, err);
    const record::JudgedOffer* chosen = nullptr;
    if (!options.choose.empty()) {
        const auto found = find_offer(*all, options.choose);
        if (!found) return refuse(found.error(), err);
        chosen = *found;
        if (chosen->standing == record::Standing::expired)
            said.push_back(complaint(Severity::warning, "expired-offer"_id,
                                     "the chosen offer expired on " + all->reply_of(*chosen).reply.maker.valid_until,
                                     "let the maker confirm it before you order"));
    }
    const std::vector<Paper> papers = make_papers(*all, chosen, options, *references, said);
    complain(said, err);
    if (has_error(said)) return chosen != nullptr && chosen->rank == 0 ? kNothingFits : kBadInput;
    if (!papers.empty())
        if (const Diagnostics wrong = write_papers(options.output, papers); !wrong.empty()) return refuse(wrong, err);
    if (options.json) {
        out << quotes_json(*all, options.enquiry).dump(2) << '\n';
    } else {
        const std::string next = what_next(*all, chosen, papers, options);
        out << quotes_text(*all, options.width)
            << (!papers.empty() ? written_text(papers) : std::string(next.empty() ? "" : "\n")) << next;
    }
    return has_one_that_fits(*all) ? kDone : kNothingFits;
}

}  // namespace seatload::cli
