// SPDX-License-Identifier: MIT
#include <seatload/sheet/enquiry_tables.hpp>

#include <algorithm>
#include <array>

#include <seatload/sheet/adjustment.hpp>
#include <seatload/sheet/terms.hpp>

namespace seatload::sheet {
namespace {

constexpr std::size_t kColumns = 5;  ///< alternatives side by side on upright A4
constexpr std::array kNameWidths{42.0, 30.0, 34.0, 38.0, 46.0, 50.0, 54.0, 58.0};  ///< the usual one first

/// Whether the same coil diameter, De or Di, rules in all.
bool rule_alike(std::span<const Facts> alternatives) {
    return std::all_of(alternatives.begin(), alternatives.end(),
                       [&](const Facts& f) { return f.spec.bore_rules == alternatives.front().spec.bore_rules; });
}

/// Gathers the rows of a comparison.
class ComparedRows {
  public:
    explicit ComparedRows(std::span<const Facts> alternatives) : alternatives_(alternatives) {}

    template <class WordsOf>
    void add_words(const std::string& name, WordsOf words_of) {
        ComparedRow row{name, {}, {}, {}};
        for (const Facts& facts : alternatives_) row.values.push_back(words_of(facts));
        row.first_with_unit = row.values.front();
        rows_.push_back(std::move(row));
    }

    /// A row of amounts `amount_of(facts, least_decimals)`, all with the decimals that one of them needs, each in the
    /// words `words_of(facts, amount)`.
    template <class AmountOf, class WordsOf>
    void add_amounts(const std::string& name, Unit unit, AmountOf amount_of, WordsOf words_of) {
        int most = 0;
        for (const Facts& facts : alternatives_) most = std::max(most, decimals(amount_of(facts, 0)));
        ComparedRow row{name, alternatives_.front().figures().unit(unit), {}, {}};
        for (const Facts& facts : alternatives_) row.values.push_back(words_of(facts, shown(amount_of(facts, most))));
        row.first_with_unit = words_of(alternatives_.front(), with_unit(amount_of(alternatives_.front(), most)));
        rows_.push_back(std::move(row));
    }
    template <class AmountOf>
    void add_references(const std::string& name, Unit unit, AmountOf amount_of) {
        add_amounts(name, unit, amount_of, [](const Facts&, const std::string& words) { return reference(words); });
    }

    std::vector<ComparedRow>& rows() { return rows_; }

  private:
    std::span<const Facts> alternatives_;
    std::vector<ComparedRow> rows_;
};

/// Where no tolerance of a wire is known the maker states his; of the others theirs is told beside.
void add_wire_tolerance(ComparedRows& rows, std::span<const Facts> alternatives) {
    if (std::all_of(alternatives.begin(), alternatives.end(),
                    [](const Facts& f) { return f.wire_tolerance.has_value(); }))
        return;
    rows.add_words(alternatives.front().say("wire.tolerance_of_wire"), [](const Facts& f) {
        if (!f.wire_tolerance) return f.say("compare.tolerance_unknown");
        return reference("± " + with_unit(f.figures().significant(Unit::mm, in_mm(f.wire_tolerance->value), 2)));
    });
}

void add_wire_and_coil(ComparedRows& rows, std::span<const Facts> alternatives) {
    const auto say = [&](std::string_view key) { return alternatives.front().paper.words.say(key); };
    const auto bracketed = [](bool adjustable, const std::string& words) {
        return adjustable ? reference(words) : words;
    };
    rows.add_words(say("compare.wire"), [](const Facts& f) { return wire_name(f); });
    rows.add_amounts(
        say("compare.wire_diameter"), Unit::mm,
        [](const Facts& f, int least) { return f.figures().wire(f.spec.spring.wire_diameter, std::max(least, 2)); },
        [&](const Facts& f, const std::string& words) { return bracketed(f.wire_is_adjustable(), words); });
    add_wire_tolerance(rows, alternatives);
    const bool alike = rule_alike(alternatives);
    rows.add_amounts(alike ? coil_name(alternatives.front()) : say("compare.coil_diameter"), Unit::mm, coil_diameter,
                     [&](const Facts& f, const std::string& words) {
                         const std::string value = bracketed(f.diameter_is_adjustable(), words);
                         return alike ? value : coil_symbol(f) + " " + value;
                     });
    rows.add_words(say("compare.coils"),
                   [](const Facts& f) { return reference(f.figures().number(f.spec.spring.total_coils, {2})); });
    rows.add_amounts(
        say("coil.free_length"), Unit::mm,
        [](const Facts& f, int least) {
            return drawn_free_length(f, {3, least});
        },
        [&](const Facts& f, const std::string& words) {
            return bracketed(f.may_adjust(record::Adjustable::free_length), words);
        });
    if (std::any_of(alternatives.begin(), alternatives.end(),
                    [](const Facts& f) { return longest_free_length(f).has_value(); }))
        rows.add_words(say("coil.longest"), [](const Facts& f) {
            const auto longest = longest_free_length(f);
            return longest ? with_unit(*longest) : std::string("–");
        });
    rows.add_words(say("compare.ends"), ends);
    rows.add_words(say("coil.hand"), hand);
    const bool are_tips_ordered = std::any_of(alternatives.begin(), alternatives.end(),
                                              [](const Facts& f) { return f.half_turn_tolerance().has_value(); });
    if (are_tips_ordered) rows.add_words(say("coil.tips_apart"), tips_apart);
}

/// A load, with its length in the row's name when that is the same in all alternatives, else beside each value.
void add_load(ComparedRows& rows, std::span<const Facts> alternatives, record::LoadAtLength record::Spec::*load,
              std::string_view index) {
    const Facts& front = alternatives.front();
    const Length length = (front.spec.*load).length;
    const bool alike = std::all_of(alternatives.begin(), alternatives.end(),
                                   [&](const Facts& f) { return (f.spec.*load).length == length; });
    const auto length_words = [&](const Facts& f) { return with_unit(f.figures().length((f.spec.*load).length)); };
    const std::string force = symbol("F", index);
    rows.add_amounts(
        alike ? front.say("compare.load_at", {{"force", force}, {"length", length_words(front)}})
              : front.say("compare.load", {{"force", force}}),
        Unit::newton, [&](const Facts& f, int least) { return f.figures().toleranced(f.spec.*load, least); },
        [&](const Facts& f, const std::string& words) {
            return alike ? words : f.say("compare.at_length", {{"value", words}, {"length", length_words(f)}});
        });
}

void add_rest(ComparedRows& rows, std::span<const Facts> alternatives) {
    const auto say = [&](std::string_view key) { return alternatives.front().paper.words.say(key); };
    rows.add_words(say("compare.load_grades"), [](const Facts& f) { return reference(load_grades(f)); });
    rows.add_references(say("load.rate"), Unit::newton_per_mm,
                        [](const Facts& f, int) { return f.figures().rate(f.values.rate); });
    rows.add_references(say("compare.solid_length"), Unit::mm, [](const Facts& f, int least) {
        return f.figures().length(f.longest_solid(), {2, least});
    });
    rows.add_references(say("compare.wire_a_piece"), Unit::mm, [](const Facts& f, int) {
        return f.figures().significant(Unit::mm, in_mm(f.values.wire_length), 3);
    });
    rows.add_words(say("process.finish"), finish);
}

/// "free length L0 [mm]"; on a paper in inches "free length L0, in [mm]".
std::string with_head(const ComparedRow& comparison) {
    if (comparison.unit.empty()) return comparison.name;
    return comparison.unit.find('[') == std::string::npos ? comparison.name + " [" + comparison.unit + "]"
                                                          : comparison.name + ", " + comparison.unit;
}

/// Tables of what differs whose rows are named in a column so wide.
std::vector<RuledTable> comparison_tables(std::span<const Facts> alternatives, const std::vector<ComparedRow>& all,
                                          double width, double name_width) {
    std::vector<RuledTable> tables;
    const std::size_t parts = (alternatives.size() + kColumns - 1) / kColumns;
    const std::size_t longest = (alternatives.size() + parts - 1) / parts;
    const double column = (width - name_width) / static_cast<double>(std::max<std::size_t>(longest, 3));
    std::size_t first = 0;
    for (std::size_t part = 0; part < parts; ++part) {
        // As many in each as can be, so that none stands alone on the last.
        const std::size_t count = (alternatives.size() - first + parts - part - 1) / (parts - part);
        RuledTable table;
        table.widths.assign(count + 1, column);
        table.widths[0] = name_width;
        table.rows.push_back({alternatives.front().say("compare.alternative")});
        for (std::size_t i = 0; i < count; ++i) table.rows[0].push_back(letter(alternatives, first + i));
        for (const ComparedRow& comparison : all) {
            if (alternatives.size() > 1 && comparison.is_common()) continue;
            table.rows.push_back({with_head(comparison)});
            for (std::size_t i = 0; i < count; ++i) table.rows.back().push_back(comparison.values[first + i]);
        }
        first += count;
        tables.push_back(std::move(table));
    }
    return tables;
}

bool have_room_for_words(const std::vector<RuledTable>& tables) {
    return std::all_of(tables.begin(), tables.end(), has_room_for_words);
}

double total_height(const std::vector<RuledTable>& tables) {
    double sum = 0.0;
    for (const RuledTable& table : tables) sum += height(table);
    return sum;
}

RuledTable form(std::span<const Facts> alternatives, double width, std::vector<std::string> heads,
                std::vector<double> widths, double row_height) {
    RuledTable table;
    double rest = width;
    for (const double w : widths) rest -= w;
    widths.push_back(rest);
    table.widths = std::move(widths);
    table.least_row_height = row_height;
    table.rows.push_back(std::move(heads));
    for (std::size_t i = 0; i < alternatives.size(); ++i) {
        table.rows.emplace_back(table.widths.size());
        table.rows.back().front() = letter(alternatives, i);
    }
    return table;
}

}  // namespace

bool ComparedRow::is_common() const {
    return std::all_of(values.begin(), values.end(), [&](const std::string& value) { return value == values.front(); });
}

std::vector<ComparedRow> comparisons(std::span<const Facts> alternatives) {
    ComparedRows rows(alternatives);
    add_wire_and_coil(rows, alternatives);
    add_load(rows, alternatives, &record::Spec::seated, "1");
    add_load(rows, alternatives, &record::Spec::full_travel, "2");
    add_rest(rows, alternatives);
    return std::move(rows.rows());
}

std::string letter(std::span<const Facts> alternatives, std::size_t index) {
    const std::string& given = alternatives[index].spec.alternative;
    return given.empty() ? std::to_string(index + 1) : given;
}

std::vector<RuledTable> comparison_tables(std::span<const Facts> alternatives, double width) {
    const std::vector<ComparedRow> all = comparisons(alternatives);
    std::vector<RuledTable> best = comparison_tables(alternatives, all, width, kNameWidths.front());
    for (const double name_width : kNameWidths) {
        std::vector<RuledTable> tables = comparison_tables(alternatives, all, width, name_width);
        const bool is_whole = have_room_for_words(tables);
        const bool best_is_whole = have_room_for_words(best);
        if (is_whole != best_is_whole ? is_whole : total_height(tables) < total_height(best)) best = std::move(tables);
    }
    return best;
}

std::string common_words(std::span<const Facts> alternatives) {
    std::string words;
    if (alternatives.size() < 2) return words;
    for (const ComparedRow& comparison : comparisons(alternatives))
        if (comparison.is_common())
            words += (words.empty() ? "" : "; ") + comparison.name + " " + comparison.first_with_unit;
    return words;
}

std::vector<RuledTable> price_tables(std::span<const Facts> alternatives, double width, double row_height) {
    constexpr std::size_t kLots = 3;  ///< side by side on upright A4
    constexpr double kLetter = 10.0;
    constexpr double kOnce = 20.5;        ///< what is paid once
    constexpr double kPriceShare = 0.36;  ///< of what a lot has
    constexpr double kSetUpShare = 0.32;
    const Facts& facts = alternatives.front();
    const std::vector<int>& lots = facts.spec.quantities;
    const std::size_t lines = std::max<std::size_t>(lots.size(), 1);
    const std::size_t parts = (lines + kLots - 1) / kLots;
    std::vector<RuledTable> tables;
    std::size_t first = 0;
    for (std::size_t part = 0; part < parts; ++part) {
        const std::size_t count = (lines - first + parts - part - 1) / (parts - part);
        std::vector<std::string> heads{facts.say("reply.letter")};
        std::vector<double> widths{kLetter};
        if (part == 0) {
            heads.push_back(facts.say("reply.tooling"));
            widths.push_back(kOnce);
        }
        const double all = (width - kLetter - (part == 0 ? kOnce : 0.0)) / static_cast<double>(count);
        for (std::size_t i = first; i < first + count; ++i) {
            heads.push_back(lots.empty() ? facts.say("reply.price")
                                         : facts.say("reply.lot_price", {{"count", std::to_string(lots[i])}}));
            heads.insert(heads.end(), {facts.say("reply.lot_charge"), facts.say("reply.lead_time")});
            widths.insert(widths.end(),
                          {kPriceShare * all, kSetUpShare * all, (1.0 - kPriceShare - kSetUpShare) * all});
        }
        widths.pop_back();  // form() gives the last column the rest
        tables.push_back(form(alternatives, width, std::move(heads), std::move(widths), row_height));
        first += count;
    }
    return tables;
}

RuledTable charges_table(const Facts& facts, double width, double row_height) {
    return {{34.0, 28.0, 22.0, width - 132.0, 24.0, 24.0},
            {{facts.say("reply.certificate"), facts.say("reply.packing"), facts.say("reply.carriage"),
              facts.say("reply.least_order"), facts.say("reply.duty"), facts.say("reply.tax")},
             {"", "", "", "", "", ""}},
            row_height};
}

RuledTable change_table(std::span<const Facts> alternatives, double width, double row_height) {
    const Wording& words = alternatives.front().paper.words;
    return form(alternatives, width,
                {words.say("reply.letter"), words.say("reply.wire_held"), words.say("reply.its_strength"),
                 words.say("reply.least_pieces"), words.say("reply.changes")},
                {14.0, 46.0, 22.0, 22.0}, row_height);
}

}  // namespace seatload::sheet
