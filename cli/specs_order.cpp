// SPDX-License-Identifier: MIT
#include <seatload/core/file_name.hpp>
#include <seatload/core/sha256.hpp>
#include <seatload/io/date_form.hpp>
#include <seatload/io/spec_file.hpp>
#include <seatload/record/makers_copy.hpp>
#include <seatload/sheet/purchase.hpp>
#include <seatload/sheet/spring_sheet.hpp>

#include <cli/papers.hpp>
#include <cli/specs_actions.hpp>
#include <cli/specs_shelves.hpp>
#include <cli/text_wrap.hpp>

namespace seatload::cli {
namespace {

using record::State;

/// Everything an order takes with it, made before anything is written.
struct Order {
    OnShelf on;
    std::vector<Paper> papers;
    Diagnostics said;
};

/// The revision to order: the one asked for; else the one in force; else the one last made, to be tried.
Result<OnShelf> to_be_ordered(const io::SpecLibrary& library, const SpecsOptions& options, const References& refs) {
    auto on = find_on_shelf(library, refs.wires, options.specs.front(), options.revision);
    if (!on) return Diagnostics(on.error());
    OnShelf found = std::move(on).value();
    if (const record::KeptRevision* in_force = found.shelf.in_force(); options.revision.empty() && in_force != nullptr)
        found.at = static_cast<std::size_t>(in_force - found.shelf.revisions.data());
    const record::KeptRevision& revision = found.revision();
    if (revision.kept.is_altered())
        return error_in(revision.file, "changed-since-frozen"_id,
                        "this spec was changed after it was frozen, and is not ordered",
                        "`seatload specs verify " + found.shelf.address.text() + "` tells more");
    if (revision.state == State::withdrawn)
        return error_in(revision.file, "withdrawn"_id,
                        "this spec was withdrawn on " + record::last_change(revision.kept.history).date + ": " +
                            record::last_change(revision.kept.history).reason,
                        "`seatload specs find` looks for another");
    return found;
}

/// The spec as its papers show it: approved by him who approved it.
record::Spec for_papers(const record::KeptSpec& kept) {
    record::Spec spec = kept.spec;
    if (const record::Step* approval = record::approval_of(kept.history)) spec.identity.approver = approval->by;
    return spec;
}

/// What deserves a second look before the papers are sent.
Diagnostics doubts(const OnShelf& on) {
    const record::KeptRevision& revision = on.revision();
    const auto doubt = [&](DiagnosticId id, std::string message, std::string hint) {
        return placed({complaint(Severity::warning, id, std::move(message), std::move(hint))}, revision.file);
    };
    if (revision.state == State::superseded)
        return doubt("superseded"_id, "this revision was superseded", "without --revision the one in force is ordered");
    if (revision.state == State::draft)
        return doubt("not-approved"_id, "this spec is a draft, which may still be changed",
                     "`seatload specs trial` freezes it first");
    if (revision.state == State::trial)
        return doubt("not-approved"_id, "this spec is on trial: its papers are for springs to be tried",
                     "`seatload specs approve` follows when a lot was inspected");
    return {};
}

Result<sheet::Purchase> purchase_of(const SpecsOptions& options) {
    sheet::Purchase purchase{options.quantity, options.order_number, {}};
    if (options.step.date.empty()) return purchase;
    const auto date = io::Form<io::DateText>::read(io::Node{{}, options.step.date});
    if (!date.value) return error(date.problem.id, "--date: " + date.problem.message, date.problem.hint);
    purchase.date = date.value->iso;
    return purchase;
}

Diagnostics add_sheets(Order& order, const SpecsOptions& options, const References& refs) {
    const record::KeptRevision& revision = order.on.revision();
    const record::Spec spec = for_papers(revision.kept);
    const wire::Grade& grade = grade_of(spec, refs.wires);
    const std::string text = io::write_spec(record::makers_copy(spec));
    const auto purchase = purchase_of(options);
    if (!purchase) return purchase.error();
    auto drawn = sheet::spring_sheet_pdf({spec, grade, refs.tolerances, refs.paper, 1, 1, text});
    if (!drawn) return placed(drawn.error(), revision.file);
    auto page = sheet::purchase_order_pdf(spec, grade, refs.tolerances, refs.paper, *purchase, text);
    if (!page) return placed(page.error(), revision.file);
    order.said = placed(drawn.error(), revision.file);
    const std::filesystem::path folder = options.output;
    const std::string stem = file_stem(spec.identity.number + ' ' + spec.identity.revision);
    order.papers.push_back({folder / (stem + "-order.pdf"), std::move(page).value()});
    order.papers.push_back({folder / (stem + "-sheet.pdf"), std::move(drawn).value()});
    return {};
}

/// The records of lots that were inspected, to lie beside the papers for comparison with the lot to come.
Diagnostics add_lots(Order& order, const io::SpecLibrary& library, const SpecsOptions& options) {
    const record::KeptRevision& revision = order.on.revision();
    for (const record::Step& step : revision.kept.history)
        for (const record::KeptFile& file : step.lots) {
            auto bytes = library.beside(order.on.shelf.address, file.name);
            if (!bytes) return bytes.error();
            if (sha256_hex(*bytes) != file.sha256)
                return {error_in(order.on.shelf.address.text() + '/' + file.name, "changed-evidence"_id,
                                 "this evidence was changed since it was kept, and nothing is ordered by it",
                                 "put back the file that was kept; `seatload specs verify " +
                                     order.on.shelf.address.text() + "` tells more")};
            order.papers.push_back({std::filesystem::path(options.output) / file.name, std::move(bytes).value()});
        }
    return {};
}

Result<Order> make_order(const SpecsOptions& options, const References& references) {
    const auto library = io::SpecLibrary::open(options.library, io::SpecLibrary::For::reading);
    if (!library) return Diagnostics(library.error());
    auto on = to_be_ordered(*library, options, references);
    if (!on) return Diagnostics(on.error());
    Order order{std::move(on).value(), {}, {}};
    if (Diagnostics wrong = add_sheets(order, options, references); !wrong.empty()) return wrong;
    if (Diagnostics wrong = add_lots(order, *library, options); !wrong.empty()) return wrong;
    const Diagnostics doubt = doubts(order.on);
    order.said.insert(order.said.end(), doubt.begin(), doubt.end());
    return order;
}

}  // namespace

int run_specs_order(const SpecsOptions& options, const References& references, std::ostream& out, std::ostream& err) {
    const auto order = make_order(options, references);
    if (!order) return refuse(order.error(), err);
    if (const Diagnostics wrong = write_papers(options.output, order->papers); !wrong.empty())
        return refuse(wrong, err);
    const record::KeptRevision& revision = order->on.revision();
    out << order->on.shelf.address.text() << ", revision " << revision.index() << ", " << word(revision.state) << '\n'
        << written_text(order->papers)
        << wrapped("Next: ",
                   "fill in what is open on the order and send it with the sheet; when the lot has come, `seatload "
                   "inspect` judges it and `seatload specs evidence " +
                       order->on.shelf.address.text() + " --lot FILE` keeps what was found.",
                   options.width, 2)
        << std::flush;
    complain(order->said, err);
    return kDone;
}

}  // namespace seatload::cli
