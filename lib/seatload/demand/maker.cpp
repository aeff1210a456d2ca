// SPDX-License-Identifier: MIT
#include <seatload/demand/maker.hpp>

#include <algorithm>

#include <seatload/core/text.hpp>

namespace seatload::demand {
namespace {

/// Sets limits, and says in which key of the maker they stand.
class Setter {
  public:
    Setter(Limits& limits, const Maker& maker) : limits_(limits), maker_(maker) {}

    template <class T, class Limit, class IsTighter>
    void set(const std::string& key, const std::optional<T>& stated, Limit& limit, const IsTighter& is_tighter) {
        if (!stated || is_tighter(limit, *stated)) return;
        limit = *stated;
        const auto source = maker_.sources.find(key);
        limits_.origins[key] =
            "limit of the maker \"" + maker_.name + '"' + (source == maker_.sources.end() ? "" : ": " + source->second);
    }
    template <class T, class Limit>
    void set(const std::string& key, const std::optional<T>& stated, Limit& limit) {
        set(key, stated, limit, [](const auto&, const auto&) { return false; });
    }

  private:
    Limits& limits_;
    const Maker& maker_;
};

}  // namespace

const Maker* Makers::find(const std::string& name) const {
    const auto at = std::find_if(all.begin(), all.end(), [&](const Maker& m) { return lower(m.name) == lower(name); });
    return at == all.end() ? nullptr : &*at;
}

void lay_on(Limits& limits, const Maker& maker) {
    Setter setter(limits, maker);
    setter.set("smallest_index", maker.smallest_index, limits.smallest_index, std::greater<>());
    setter.set("largest_index", maker.largest_index, limits.largest_index, std::less<>());
    setter.set("smallest_ground_wire", maker.smallest_ground_wire, limits.smallest_ground_wire);
    setter.set("largest_ground_index", maker.largest_ground_index, limits.largest_ground_index);
    setter.set("coil_step", maker.coil_step, limits.coil_step);
    setter.set("longest_free_length", maker.longest_free_length, limits.longest_free_length);
}

}  // namespace seatload::demand
