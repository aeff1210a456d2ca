// SPDX-License-Identifier: MIT
#include <cli/graded_spec.hpp>

#include <seatload/io/kept_spec_file.hpp>
#include <seatload/io/spec_file.hpp>

#include <cli/session.hpp>

namespace seatload::cli {
namespace {

/// A kept spec is no longer one of several to be quoted, whatever letter it had then: its papers carry the part's
/// number alone.
Result<record::Spec> one_of_its_own(const Result<record::Spec>& read, std::string_view text) {
    if (!read || io::spec_content(text).size() == text.size()) return read;
    record::Spec spec = *read;
    spec.alternative.clear();
    return {std::move(spec), read.error()};
}

}  // namespace

Result<GradedSpec> read_graded_spec(const std::string& path, const wire::Catalogue& wires) {
    auto spec = read_file(path, [&](std::string_view text, const std::string& name) -> Result<record::Spec> {
        if (!text.starts_with("%PDF-")) return one_of_its_own(io::read_spec(text, name, wires), text);
        return error_in(name, "pdf-given"_id, "this is a PDF, and a spec is wanted",
                        "`seatload sheet --extract` takes the spec of a sheet out of it");
    });
    if (!spec) return Diagnostics(spec.error());
    const wire::Grade grade = spec->own_grade ? *spec->own_grade : *wires.find(spec->wire_grade);
    const Diagnostics said = spec.error();
    return {GradedSpec{std::move(spec).value(), grade}, said};
}

}  // namespace seatload::cli
