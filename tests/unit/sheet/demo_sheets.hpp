// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/record/spec.hpp>
#include <seatload/wire/grade.hpp>

namespace seatload::test {

/// A spec of the demo with its wire.
struct DemoSpec {
    std::string name;
    record::Spec spec;
    wire::Grade grade;
};

/// Every spec the demo has a sheet of, made once for a test program: the alternatives that sizing offers for each
/// requirement in templates/, and what the library in specs/ keeps.
const std::vector<DemoSpec>& demo_specs();

}  // namespace seatload::test
