// SPDX-License-Identifier: MIT
#include <cli/quotes_terms.hpp>

#include <algorithm>

#include <seatload/core/text.hpp>

namespace seatload::cli {
namespace {

/// The currencies of the amounts in the replies, each once.
std::vector<std::string> currencies(const std::vector<record::NamedReply>& replies) {
    std::vector<std::string> codes;
    for (const record::NamedReply& each : replies) {
        const std::string& code = each.reply.maker.currency;
        if (!code.empty() && std::find(codes.begin(), codes.end(), code) == codes.end()) codes.push_back(code);
    }
    return codes;
}

/// What the rates and the currencies leave to compare in; a complaint when it is not one alone.
Result<std::string> home_currency(const std::vector<std::string>& codes, const record::Exchange& exchange) {
    std::vector<std::string> without;
    for (const std::string& code : codes)
        if (!exchange.worth(code)) without.push_back(code);
    if (without.size() == 1) return without.front();
    if (codes.empty())
        return error("no-currency"_id, "no reply states a currency, so nothing is quoted",
                     "write under [maker] of the reply: currency = \"EUR\"");
    return error("no-exchange-rate"_id,
                 without.empty()
                     ? "every currency has a rate, and none is the one to compare in"
                     : "the offers are in " + join(without, " and ") + ", and no rate is stated between them",
                 "name the one to compare in, and what others are worth in it: --currency " + codes.front() +
                     " --rate " + (codes.size() > 1 ? codes.back() : std::string("GBP")) + "=1.1725");
}

Diagnostics without_rate(const std::vector<std::string>& codes, const record::Exchange& exchange) {
    Diagnostics wrong;
    for (const std::string& code : codes)
        if (!exchange.worth(code))
            wrong.push_back(error("no-exchange-rate"_id, "no rate is stated for " + code,
                                  "write what one is worth: --rate " + code + "=1.1725"));
    return wrong;
}

Result<record::Exchange> exchange_of(const QuotesOptions& options, const std::vector<std::string>& codes) {
    record::Exchange exchange;
    for (const std::string& text : options.rates) {
        auto rate = record::read_exchange_rate(text);
        if (!rate) return Diagnostics(rate.error());
        if (exchange.worth(rate->currency))
            return error("named-twice"_id, "--rate: two rates are given for " + rate->currency,
                         "leave one of them out");
        exchange.rates.push_back(std::move(rate).value());
    }
    if (options.currency.empty()) {
        auto home = home_currency(codes, exchange);
        if (!home) return Diagnostics(home.error());
        exchange.home = std::move(home).value();
        return exchange;
    }
    const auto code = record::currency_code(options.currency);
    if (!code)
        return error("unknown-currency"_id, "--currency: \"" + options.currency + "\" is not a currency",
                     "write its three letters by ISO 4217, for example EUR");
    if (exchange.worth(*code))
        return error("no-effect"_id, "--rate: " + *code + " is the currency compared in, and needs no rate",
                     "leave its rate out, or compare in another with --currency");
    exchange.home = *code;
    if (Diagnostics wrong = without_rate(codes, exchange); !wrong.empty()) return wrong;
    return exchange;
}

}  // namespace

Result<record::ComparisonTerms> comparison_terms(const QuotesOptions& options, const record::Enquired& asked,
                                                 const std::vector<record::NamedReply>& replies) {
    record::ComparisonTerms terms;
    if (!options.date.empty() && record::days_after(options.date, 0) != options.date)
        return error("bad-date"_id, "--date: \"" + options.date + "\" is not a day of the calendar",
                     "write year, month and day: 2026-12-15");
    terms.date = options.date;
    terms.reclaims_tax = options.reclaims_tax;
    const auto smallest = std::min_element(asked.quantities.begin(), asked.quantities.end());
    if (options.need == 0 && smallest == asked.quantities.end())
        return error("no-quantity"_id, "how many pieces are needed is not known",
                     "say it with --need PIECES: the enquiry names no quantity");
    terms.need = options.need != 0 ? options.need : *smallest;
    auto exchange = exchange_of(options, currencies(replies));
    if (!exchange) return Diagnostics(exchange.error());
    terms.exchange = std::move(exchange).value();
    return terms;
}

}  // namespace seatload::cli
