// SPDX-License-Identifier: MIT
#include <seatload/record/shelf.hpp>

#include <algorithm>

#include <seatload/core/file_name.hpp>

namespace seatload::record {
namespace {

/// Indices in the order they are given out: shorter ones first, A before B, 9 before 10.
bool is_earlier(const KeptRevision& a, const KeptRevision& b) {
    if (a.index().size() != b.index().size()) return a.index().size() < b.index().size();
    return a.index() < b.index();
}

State with_later(const std::vector<KeptRevision>& revisions, std::size_t at) {
    const State own = revisions[at].kept.state();
    if (own == State::withdrawn || at + 1 == revisions.size()) return own;
    if (own != State::approved) return State::superseded;
    const bool replaced = std::any_of(revisions.begin() + static_cast<long>(at) + 1, revisions.end(),
                                      [](const KeptRevision& r) { return approval_of(r.kept.history) != nullptr; });
    return replaced ? State::superseded : own;
}

}  // namespace

Address address_of(const demand::Identity& identity) {
    return {file_stem(identity.engine), file_stem(identity.position)};
}

const KeptRevision* Shelf::in_force() const {
    const auto last = std::find_if(revisions.rbegin(), revisions.rend(),
                                   [](const KeptRevision& r) { return approval_of(r.kept.history) != nullptr; });
    return last != revisions.rend() && last->state == State::approved ? &*last : nullptr;
}

const KeptRevision* Shelf::revision(const std::string& index) const {
    const auto found =
        std::find_if(revisions.begin(), revisions.end(), [&](const KeptRevision& r) { return r.index() == index; });
    return found == revisions.end() ? nullptr : &*found;
}

void settle(Shelf& shelf) {
    std::stable_sort(shelf.revisions.begin(), shelf.revisions.end(), is_earlier);
    for (std::size_t i = 0; i < shelf.revisions.size(); ++i) shelf.revisions[i].state = with_later(shelf.revisions, i);
}

}  // namespace seatload::record
