// SPDX-License-Identifier: MIT
#pragma once

#include <ostream>

#include <cli/session.hpp>
#include <cli/specs_options.hpp>

// What `seatload specs` can do, one function an action; they return the exit code.

namespace seatload::cli {

int run_specs_list(const SpecsOptions& options, const References& references, std::ostream& out, std::ostream& err);
int run_specs_show(const SpecsOptions& options, const References& references, std::ostream& out, std::ostream& err);
int run_specs_diff(const SpecsOptions& options, const References& references, std::ostream& out, std::ostream& err);
int run_specs_find(const SpecsOptions& options, const References& references, std::ostream& out, std::ostream& err);
int run_specs_verify(const SpecsOptions& options, const References& references, std::ostream& out, std::ostream& err);
int run_specs_order(const SpecsOptions& options, const References& references, std::ostream& out, std::ostream& err);
int run_specs_add(const SpecsOptions& options, const References& references, std::ostream& out, std::ostream& err);
/// trial, approve, withdraw and evidence.
int run_specs_step(const SpecsOptions& options, const References& references, std::ostream& out, std::ostream& err);
int run_specs_revise(const SpecsOptions& options, const References& references, std::ostream& out, std::ostream& err);

}  // namespace seatload::cli
