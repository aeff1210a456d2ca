// SPDX-License-Identifier: MIT
#include <cli/quotes_enquiry.hpp>

#include <algorithm>

#include <seatload/core/append.hpp>
#include <seatload/core/sha256.hpp>
#include <seatload/core/text.hpp>
#include <seatload/io/reply_file.hpp>
#include <seatload/io/spec_file.hpp>
#include <seatload/record/makers_copy.hpp>
#include <seatload/sheet/attached_specs.hpp>

#include <cli/graded_spec.hpp>
#include <cli/session.hpp>
#include <cli/spec_extract.hpp>

namespace seatload::cli {
namespace {

constexpr std::string_view kPdfEnding = "-enquiry.pdf";
constexpr std::string_view kFormEnding = "-reply.toml";
constexpr std::string_view kFormBegins = "format = \"seatload reply ";

/// What a file tells of an enquiry.
struct Told {
    record::Enquired asked;
    std::vector<std::string> spec_texts;  ///< as the makers got them; none in a form
};

std::string stem_of(const std::string& path) {
    for (const std::string_view ending : {kPdfEnding, kFormEnding})
        if (path.ends_with(ending)) return path.substr(0, path.size() - ending.size());
    return {};
}

Result<record::Enquired> asked_in(const std::string& form, const std::string& name) {
    const auto reply = io::read_reply(form, name);
    if (!reply) return Diagnostics(reply.error());
    if (reply->enquiry.alternatives.empty())
        return error_in(name, "no-spec-attached"_id, "this form does not say which alternatives were enquired for",
                        "give the enquiry as `seatload size` wrote it");
    return reply->enquiry;
}

/// The attached specs in the order of the alternatives, as their marks were taken together.
std::vector<std::string> in_order(std::vector<sheet::Attachment> specs) {
    std::vector<std::string> texts;
    for (sheet::Attachment& spec : specs) texts.push_back(std::move(spec.bytes));
    return texts;
}

Result<Told> told_by_pdf(const std::string& bytes, const std::string& path) {
    const auto carried = sheet::pdf_attachments(bytes);
    if (!carried) return placed(carried.error(), path);
    const auto form = std::find_if(carried->files.begin(), carried->files.end(), [](const sheet::Attachment& file) {
        return file.bytes.find(kFormBegins) != std::string::npos;
    });
    if (form == carried->files.end())
        return error_in(path, "no-spec-attached"_id, "no form for a reply is attached to this PDF",
                        "give an enquiry as `seatload size` wrote it");
    sheet::AttachedSpecs specs = sheet::attached_specs(*carried);
    if (!specs.tampered.empty()) return placed(specs.tampered, path);
    auto asked = asked_in(form->bytes, path + '/' + form->name);
    if (!asked) return Diagnostics(asked.error());
    return Told{std::move(asked).value(), in_order(std::move(specs.specs))};
}

Result<Told> told_by(const std::string& path) {
    const auto text = read_text_file(path, kLargestPdf);
    if (!text) return Diagnostics(text.error());
    if (text->starts_with("%PDF-")) return told_by_pdf(*text, path);
    auto asked = asked_in(*text, path);
    if (!asked) return Diagnostics(asked.error());
    return Told{std::move(asked).value(), {}};
}

std::string makers_text(const record::Spec& spec) { return io::write_spec(record::makers_copy(spec)); }

/// Whether a spec is one of those sent; whatever wrote them, they are written anew to be compared.
bool was_sent(const record::Spec& spec, const Told& told, const wire::Catalogue& wires) {
    return std::any_of(told.spec_texts.begin(), told.spec_texts.end(), [&](const std::string& text) {
        const auto sent = io::read_spec(text, "", wires);
        return sent && io::write_spec(*sent) == makers_text(spec);
    });
}

constexpr const char* kSendAnew = "makers quoted for the old one: restore it, or enquire anew";

/// Whether the specs are those enquired for; complaints name the file.
Diagnostics not_as_sent(const SentEnquiry& enquiry, const Told& told, const std::vector<std::string>& files,
                        const wire::Catalogue& wires) {
    Diagnostics wrong;
    std::string together;
    for (std::size_t i = 0; i < files.size(); ++i) {
        const record::Spec& spec = enquiry.springs[i].spec;
        together += makers_text(spec);
        if (!told.spec_texts.empty() && !was_sent(spec, told, wires))
            wrong.push_back(
                error_in(files[i], "not-the-enquirys"_id, "this spec is not the one that was enquired for", kSendAnew));
    }
    if (told.spec_texts.empty() && !told.asked.mark.empty() && sha256_hex(together) != told.asked.mark)
        wrong.push_back(error_in(files.front(), "not-the-enquirys"_id,
                                 "these specs are not the ones that the form was written for",
                                 "give the enquiry's PDF to see which; or enquire anew"));
    return wrong;
}

}  // namespace

Result<SentEnquiry> read_enquiry(const std::string& path, const wire::Catalogue& wires) {
    SentEnquiry enquiry;
    enquiry.stem = stem_of(path);
    auto told = told_by(path);
    if (!told) return Diagnostics(told.error());
    if (enquiry.stem.empty())
        return error_in(path, "enquiry-renamed"_id,
                        "an enquiry is named ...-enquiry.pdf or ...-reply.toml, and its specs lie beside it",
                        "leave the names as `seatload size` gave them");
    enquiry.asked = told->asked;
    std::vector<std::string> files;
    Diagnostics wrong;
    for (const std::string& letter : enquiry.asked.alternatives) {
        files.push_back(enquiry.stem + '-' + lower(letter) + ".toml");
        auto graded = read_graded_spec(files.back(), wires);
        if (graded)
            enquiry.springs.push_back({graded->spec, graded->grade});
        else
            append(wrong, graded.error());
    }
    if (has_error(wrong)) {
        wrong.back().hint += (wrong.back().hint.empty() ? "" : "; ") +
                             std::string("the specs of an enquiry are kept beside it, as they hold the loads needed");
        return wrong;
    }
    if (wrong = not_as_sent(enquiry, *told, files, wires); has_error(wrong)) return wrong;
    return enquiry;
}

}  // namespace seatload::cli
