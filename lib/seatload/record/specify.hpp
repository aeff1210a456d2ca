// SPDX-License-Identifier: MIT
#pragma once

#include <seatload/check/evaluation.hpp>
#include <seatload/check/numbers.hpp>
#include <seatload/demand/requirement.hpp>
#include <seatload/record/spec.hpp>
#include <seatload/sizing/spread.hpp>

namespace seatload::record {

/// The spec of an alternative found by sizing. Loads are ordered cold and new: the deviation each way is the room to
/// the requirement's band (its lower bound raised to what must be given cold so that it is still there hot and after
/// load loss), at most the load tolerance of EN 15800 grade 3, rounded inwards to 0.01 N (finer below 1 N).
Spec specify(const demand::Requirement& requirement, const sizing::Space& space, const sizing::Alternative& alternative,
             std::string letter);

/// Orders anew the loads that a spec's spring gives, as specify() does; a load the mechanism does not bound gets the
/// tolerance of a grade. The wire's numbers are those of the spec's own grade and diameter.
void order_loads(Spec& spec, const check::WireNumbers& wire, int unbounded_grade);

/// Orders the end tips as an evaluation of the spec has them, so that a later rule orders no others by the same spec.
void order_tips(Spec& spec, const check::Evaluation& evaluation);

/// The spec with its end tips ordered, when it says nothing of them and can be worked out; else as it is.
Spec with_tips_ordered(Spec spec, const wire::Grade& grade, const tolerance::Tables& tables);

/// The coarsest EN 15800 grade whose load tolerance [N] lies inside both deviations; nothing when grade 1 does not.
std::optional<int> load_grade_inside(const spring::Spring& spring, Force load, Force plus, Force minus);

/// The title of a spec that the user gave none, in English: papers in other languages say it in their own words.
std::string usual_title(const demand::Identity& identity);

/// The entry of a part's first issue in its list of revisions, which begins with it once there is a second.
demand::Revision first_issue(const demand::Identity& identity, const std::string& date);

/// The requirement a spec carries within itself, for evaluating it again.
demand::Requirement requirement_of(const Spec& spec);

}  // namespace seatload::record
