// SPDX-License-Identifier: MIT
#include <cli/quotes_choice.hpp>

#include <algorithm>

#include <seatload/core/file_name.hpp>
#include <seatload/core/text.hpp>
#include <seatload/io/spec_file.hpp>
#include <seatload/record/chosen_spec.hpp>

#include <cli/spec_seal.hpp>

namespace seatload::cli {
namespace {

constexpr const char* kQuotes = "quotes";

std::string written(const record::Comparison& all, const record::JudgedOffer& offer) {
    return all.reply_of(offer).name + '/' + offer.offer.alternative;
}

bool is_named(const record::Comparison& all, const record::JudgedOffer& offer, const std::string& words) {
    const std::size_t slash = words.rfind('/');
    const std::string maker = words.substr(0, slash);
    const std::string& name = all.reply_of(offer).name;
    const bool is_maker = lower(maker) == lower(name) || lower(maker) == file_stem(name);
    return is_maker && lower(words.substr(slash + 1)) == lower(offer.offer.alternative);
}

}  // namespace

Result<const record::JudgedOffer*> find_offer(const record::Comparison& all, const std::string& words) {
    std::vector<std::string> names;
    for (const record::JudgedOffer& offer : all.offers) names.push_back(written(all, offer));
    const std::string list = "there are: " + join(names, ", ");
    if (words.find('/') == std::string::npos)
        return error("unknown-offer"_id, "--choose: \"" + words + "\" names no alternative",
                     "write MAKER/ALTERNATIVE; " + list);
    std::vector<const record::JudgedOffer*> found;
    for (const record::JudgedOffer& offer : all.offers)
        if (is_named(all, offer, words)) found.push_back(&offer);
    if (found.size() == 1) return found.front();
    if (found.size() > 1)
        return error("ambiguous-name"_id, "--choose: two replies hold an offer \"" + words + '"',
                     "leave out the reply that does not count");
    const std::string meant = did_you_mean(words, names);
    return error("unknown-offer"_id, "--choose: there is no offer \"" + words + '"', meant.empty() ? list : meant);
}

std::string offer_words(const record::Comparison& all, const record::JudgedOffer& offer) {
    return file_stem(all.reply_of(offer).name) + '/' + lower(offer.offer.alternative);
}

Result<Paper> chosen_paper(const record::Comparison& all, const record::JudgedOffer& offer,
                           const QuotesOptions& options) {
    auto spec = record::chosen_spec(all, offer);
    if (!spec) return Diagnostics(spec.error());
    const demand::Identity& identity = spec->identity;
    const std::filesystem::path path =
        std::filesystem::path(options.output) / (file_stem(identity.engine + ' ' + identity.position + ' ' +
                                                           offer.offer.alternative + ' ' + all.reply_of(offer).name) +
                                                 ".toml");
    if (!options.overwrite)
        if (Diagnostics wrong = edits_in_the_way(path, "spec", kQuotes); !wrong.empty()) return wrong;
    return Paper{path, sealed(io::write_spec(*spec), kQuotes)};
}

}  // namespace seatload::cli
