// SPDX-License-Identifier: MIT
#include <cli/graded_spec.hpp>

#include <seatload/io/spec_file.hpp>

#include <cli/session.hpp>

namespace seatload::cli {

Result<GradedSpec> read_graded_spec(const std::string& path, const wire::Catalogue& wires) {
    auto spec = read_file(path, [&](std::string_view text, const std::string& name) -> Result<record::Spec> {
        if (!text.starts_with("%PDF-")) return io::read_spec(text, name, wires);
        return error_in(name, "pdf-given"_id, "this is a PDF, and a spec is wanted",
                        "`seatload sheet --extract` takes the spec of a sheet out of it");
    });
    if (!spec) return Diagnostics(spec.error());
    const wire::Grade grade = spec->own_grade ? *spec->own_grade : *wires.find(spec->wire_grade);
    const Diagnostics said = spec.error();
    return {GradedSpec{std::move(spec).value(), grade}, said};
}

}  // namespace seatload::cli
