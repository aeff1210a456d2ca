// SPDX-License-Identifier: MIT
#include <cli/specs_command.hpp>

#include <array>
#include <string_view>

#include <seatload/core/assert.hpp>

#include <cli/session.hpp>
#include <cli/specs_actions.hpp>

namespace seatload::cli {
namespace {

struct Action {
    std::string_view name;
    int (*run)(const SpecsOptions&, const References&, std::ostream&, std::ostream&);
};

constexpr std::array kActions{
    Action{"list", run_specs_list},     Action{"show", run_specs_show},     Action{"diff", run_specs_diff},
    Action{"find", run_specs_find},     Action{"verify", run_specs_verify}, Action{"order", run_specs_order},
    Action{"add", run_specs_add},       Action{"trial", run_specs_step},    Action{"approve", run_specs_step},
    Action{"withdraw", run_specs_step}, Action{"evidence", run_specs_step}, Action{"revise", run_specs_revise},
};

}  // namespace

int run_specs(const SpecsOptions& options, std::ostream& out, std::ostream& err) {
    const auto references = load_references(options.wire_file, options.look);
    if (!references) return refuse(references.error(), err);
    for (const Action& action : kActions)
        if (action.name == options.action) return action.run(options, *references, out, err);
    throw InternalError("an action of specs without a function");
}

}  // namespace seatload::cli
