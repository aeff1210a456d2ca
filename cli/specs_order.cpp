// SPDX-License-Identifier: MIT
#include <seatload/core/append.hpp>
#include <seatload/core/file.hpp>
#include <seatload/core/file_name.hpp>
#include <seatload/core/line_wrap.hpp>
#include <seatload/core/sha256.hpp>
#include <seatload/core/text.hpp>
#include <seatload/io/date_form.hpp>
#include <seatload/io/lot_file.hpp>
#include <seatload/io/spec_file.hpp>
#include <seatload/record/chosen_spec.hpp>
#include <seatload/record/makers_copy.hpp>
#include <seatload/sheet/purchase.hpp>
#include <seatload/sheet/spring_sheet.hpp>

#include <cli/papers.hpp>
#include <cli/spec_extract.hpp>
#include <cli/specs_actions.hpp>
#include <cli/specs_evidence.hpp>
#include <cli/specs_shelves.hpp>

namespace seatload::cli {
namespace {

using record::State;

/// Everything an order takes with it, made before anything is written.
struct Order {
    OnShelf on;
    std::vector<Paper> papers;
    Diagnostics said;
    std::filesystem::path stays;  ///< an order of other contents that lies there and is left as it is; may be empty
};

/// The revision to order: the one asked for; else the one in force; else the one last made, to be tried.
Result<OnShelf> to_be_ordered(const io::SpecLibrary& library, const SpecsOptions& options, const References& refs) {
    auto on = find_on_shelf(library, options, refs.wires, options.specs.front(), options.revision);
    if (!on) return Diagnostics(on.error());
    OnShelf found = std::move(on).value();
    if (const record::KeptRevision* in_force = found.shelf.in_force(); options.revision.empty() && in_force != nullptr)
        found.at = static_cast<std::size_t>(in_force - found.shelf.revisions.data());
    const record::KeptRevision& revision = found.revision();
    if (revision.kept.is_altered())
        return error_in(revision.file, "changed-since-frozen"_id,
                        "this spec was changed after it was frozen, and is not ordered",
                        specs_command(options, "verify").name(found.shelf.address.text()).text() + " tells more");
    if (revision.state == State::withdrawn)
        return error_in(revision.file, "withdrawn"_id,
                        "this spec was withdrawn on " + record::last_change(revision.kept.history).date + ": " +
                            record::last_change(revision.kept.history).reason,
                        specs_command(options, "find").text() + " looks for another");
    return found;
}

/// What deserves a second look before the papers are sent.
Diagnostics doubts_on_state(const OnShelf& on, const SpecsOptions& options) {
    const record::KeptRevision& revision = on.revision();
    const std::string next = next_command(options, on.shelf, revision);
    const auto doubt = [&](DiagnosticId id, std::string message, std::string hint) {
        return placed({complaint(Severity::warning, id, std::move(message), std::move(hint))}, revision.file);
    };
    if (revision.state == State::superseded)
        return doubt("superseded"_id, "this revision was superseded", "without --revision the one in force is ordered");
    if (revision.state == State::draft)
        return doubt("not-approved"_id, "this spec is a draft, which may still be changed", next + " freezes it first");
    if (revision.state == State::trial)
        return doubt("not-approved"_id, "this spec is on trial: its papers are for springs to be tried",
                     next + " follows when a lot was inspected and is good");
    return {};
}

/// An order that is dated before there was anything to order.
Diagnostics doubts_on_date(const record::KeptRevision& revision, const SpecsOptions& options) {
    const record::Step& change = record::last_change(revision.kept.history);
    const auto date = io::Form<io::DateText>::read(io::Node{{}, options.step.date});
    if (options.step.date.empty() || !date.value || date.value->iso >= change.date) return {};
    return {complaint(Severity::warning, "date-out-of-order"_id,
                      "--date: the order is dated " + date.value->iso + ", and the spec is " +
                          (change.kind == record::Step::Kind::trial ? "on " : "") +
                          std::string(record::word(change.kind)) + " only since " + change.date,
                      "is the year right?")};
}

/// What the spec holds of the offer that is ordered; its letter alone when it was kept without a choice among offers.
record::ChosenOffer offer_of(const record::Spec& spec) {
    return record::chosen_offer(spec).value_or(record::ChosenOffer{spec.alternative, {}});
}

Result<sheet::Purchase> purchase_of(const SpecsOptions& options, const record::KeptRevision& revision) {
    const record::ChosenOffer offer = offer_of(revision.kept.spec);
    sheet::Purchase purchase{options.quantity, options.order_number, {},
                             revision.state,   offer.quotation,      offer.alternative};
    if (options.step.date.empty()) return purchase;
    const auto date = io::Form<io::DateText>::read(io::Node{{}, options.step.date});
    if (!date.value) return error(date.problem.id, "--date: " + date.problem.message, date.problem.hint);
    purchase.date = date.value->iso;
    return purchase;
}

/// The paper under its name, or under the first numbered one where no other bytes lie: what was ordered before stays.
Paper beside_earlier(const std::filesystem::path& folder, const std::string& stem, std::string bytes) {
    for (int number = 1;; ++number) {
        std::filesystem::path path = folder / (stem + (number == 1 ? "" : '-' + std::to_string(number)) + ".pdf");
        std::error_code unreadable;
        const bool is_free =
            std::filesystem::symlink_status(path, unreadable).type() == std::filesystem::file_type::not_found;
        if (is_free || unreadable) return {std::move(path), std::move(bytes)};
        const auto there = read_text_file(path, kLargestPdf);
        if (!there || *there == bytes) return {std::move(path), std::move(bytes)};
    }
}

Diagnostics add_sheets(Order& order, const SpecsOptions& options, const References& refs) {
    const record::KeptRevision& revision = order.on.revision();
    const wire::Grade& grade = grade_of(revision.kept.spec, refs.wires);
    const record::Spec spec = spec_for_papers(revision.kept, refs);
    const std::string text = io::write_spec(record::makers_copy(spec));
    const auto purchase = purchase_of(options, revision);
    if (!purchase) return purchase.error();
    auto drawn = sheet::spring_sheet_pdf({spec, grade, refs.tolerances, refs.paper, 1, 1, text});
    if (!drawn) return placed(drawn.error(), revision.file);
    auto page = sheet::purchase_order_pdf(spec, grade, refs.tolerances, refs.paper, *purchase, text);
    if (!page) return placed(page.error(), revision.file);
    order.said = placed(drawn.error(), revision.file);
    const std::filesystem::path folder = options.output;
    const std::string stem = file_stem(spec.identity.number + ' ' + spec.identity.revision);
    order.papers.push_back(beside_earlier(folder, stem + "-order", std::move(page).value()));
    order.papers.push_back(beside_earlier(folder, stem + "-sheet", std::move(drawn).value()));
    order.stays = order.papers.front().path != folder / (stem + "-order.pdf") ? folder / (stem + "-order.pdf") : "";
    return {};
}

/// Why nothing is ordered by a spec whose lots are not as they were kept. They stay in the library: the maker has no
/// use for them, and the buyer finds them there.
Diagnostics changed_lots(const Order& order, const io::SpecLibrary& library, const SpecsOptions& options) {
    for (const record::Step& step : order.on.revision().kept.history)
        for (const record::KeptFile& file : step.lots) {
            const auto bytes = library.beside(order.on.shelf.address, file.name);
            if (!bytes) return bytes.error();
            if (sha256_hex(*bytes) != file.sha256)
                return {error_in(order.on.shelf.address.text() + '/' + file.name, "changed-evidence"_id,
                                 "this evidence was changed since it was kept, and nothing is ordered by it",
                                 "put back the file that was kept; " +
                                     specs_command(options, "verify").name(order.on.shelf.address.text()).text() +
                                     " tells more")};
        }
    return {};
}

Result<Order> make_order(const SpecsOptions& options, const References& references) {
    const auto library = io::SpecLibrary::open(options.library, io::SpecLibrary::For::reading);
    if (!library) return Diagnostics(library.error());
    auto on = to_be_ordered(*library, options, references);
    if (!on) return Diagnostics(on.error());
    Order order{std::move(on).value(), {}, {}, {}};
    if (Diagnostics wrong = add_sheets(order, options, references); !wrong.empty()) return wrong;
    if (Diagnostics wrong = changed_lots(order, *library, options); !wrong.empty()) return wrong;
    append(order.said, doubts_on_state(order.on, options));
    append(order.said, foreign_line(order.on.revision(), Severity::warning));
    append(order.said, doubts_on_date(order.on.revision(), options));
    append(order.said, open_conditions(order.on, *library));
    append(order.said, doubts_on_lean(order.on.revision(), references));
    return order;
}

/// What is done with the record of the lot to come: on trial it decides whether the spec is approved.
std::string with_the_record(const SpecsOptions& options, const OnShelf& on) {
    const record::KeptRevision& revision = on.revision();
    const std::string address = on.shelf.address.text();
    const auto command = [&](const std::string& action, const std::string& open) {
        return specs_command(options, action)
            .name(address)
            .option("--revision", on.is_latest() ? "" : revision.index())
            .open(open)
            .text();
    };
    const std::string kept = command("evidence", "--lot FILE --by NAME --date DATE") + " keeps what was found";
    if (revision.state != State::trial) return kept + '.';
    return kept + "; when it is good, " + command("approve", "--by NAME --date DATE") + " puts the spec in force.";
}

std::string next_words(const SpecsOptions& options, const OnShelf& on) {
    const record::KeptRevision& revision = on.revision();
    if (revision.state == State::draft)
        return next_command(options, on.shelf, revision) +
               " freezes the spec; then order by it, or what comes is judged by another one than what was ordered.";
    return "fill in what is open on the order and send it with the sheet; when the lot has come, " +
           TypedCommand("inspect").name(revision.file).open("SAMPLES").option("--wire-file", options.wire_file).text() +
           " judges it, and " + with_the_record(options, on);
}

/// "accepted, 20 of 20 pieces inspected"; of a record that cannot be read, that.
std::string lot_verdict(const std::filesystem::path& path) {
    const auto bytes = read_text_file(path);
    const auto lot = bytes ? io::read_lot(*bytes, path.string()) : Result<record::Lot>(Diagnostics{});
    if (!lot) return "cannot be read";
    const std::string verdict = lot->verdict == inspection::Verdict::accept   ? "accepted"
                                : lot->verdict == inspection::Verdict::reject ? "REJECTED"
                                                                              : "not proven";
    return verdict + (lot->conditions.empty() ? "" : " on condition that " + join(lot->conditions, " and ")) + ", " +
           std::to_string(lot->inspected) + " of " + std::to_string(lot->pieces) + " pieces inspected";
}

/// The records of lots that came before, where they lie and what they say: the lot to come is held against them.
std::string earlier_lots(const SpecsOptions& options, const OnShelf& on) {
    std::string text;
    for (const record::Step& step : on.revision().kept.history)
        for (const record::KeptFile& lot : step.lots) {
            const auto path = std::filesystem::path(options.library) / on.shelf.address.text() / lot.name;
            text += "  " + path.string() + '\n' + wrapped("    ", lot_verdict(path), options.width, 4);
        }
    return text.empty() ? text : "Earlier lots, kept in the library:\n" + text;
}

/// That another order lay there under the usual name.
std::string earlier_order(const Order& order) {
    return order.stays.empty() ? "" : "Left as it is, another order:\n  " + order.stays.string() + '\n';
}

}  // namespace

int run_specs_order(const SpecsOptions& options, const References& references, std::ostream& out, std::ostream& err) {
    const auto order = make_order(options, references);
    if (!order) return refuse(order.error(), err);
    if (const Diagnostics wrong = write_papers(options.output, order->papers); !wrong.empty())
        return refuse(wrong, err);
    const record::KeptRevision& revision = order->on.revision();
    out << order->on.shelf.address.text() << ", revision " << revision.index() << ", " << word(revision.state) << '\n'
        << written_text(order->papers) << earlier_order(*order) << earlier_lots(options, order->on)
        << wrapped("Next: ", next_words(options, order->on), options.width, 2) << std::flush;
    complain(order->said, err);
    return kDone;
}

}  // namespace seatload::cli
