#include "report/derivation/unit_load_tables.hpp"

#include "phrases/results/tables.hpp"
#include "phrases/working/unit_load.hpp"
#include "report/results/added_up.hpp"
#include "report/results/results_text.hpp"
#include "report/text/formula.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace gusset {

Token forceToken() { return variableToken("N"); }
Token growthToken() { return variableToken("e"); }
Token underUnitToken() { return variableToken("n"); }
Token soughtToken() { return variableToken("\u03B4"); }
Token unitReactionToken() { return variableToken("r"); }

bool anyOf(const UnitLoadTable& unit, double UnitLoadRow::*part) {
    return std::any_of(unit.rows.begin(), unit.rows.end(),
                       [&](const UnitLoadRow& row) { return row.*part != 0; });
}

namespace {

std::vector<double> sharesOf(const UnitLoadTable& unit) {
    std::vector<double> shares;
    for (const UnitLoadRow& row : unit.rows) {
        shares.push_back(row.work);
    }
    return shares;
}

} // namespace

// All that adds to the displacement.
std::vector<double> partsOf(const UnitLoadTable& unit) {
    std::vector<double> parts = sharesOf(unit);
    for (const SettlementRow& row : unit.settlements) {
        parts.push_back(row.contribution);
    }
    return parts;
}

UnitLoadNotes unitLoadNotes(const Writer& writer, const UnitLoadTable& unit) {
    UnitLoadNotes notes{writer, unit, numberStyleOf(writer.truss),
                        symbolOf(writer.truss.units.displacement)};
    const std::vector<double> parts = partsOf(unit);
    double largest = 0;
    for (const double part : parts) {
        largest = std::max(largest, std::fabs(part));
    }
    notes.answer = decimalsOf(unit.total != 0 ? unit.total : largest, notes.numbers);
    notes.shares = decimalsThatAddUp(parts, unit.total, notes.answer);
    return notes;
}

namespace {

// The table, column by column: those that are zero for all members are left out.
class MemberTable {
public:
    explicit MemberTable(const UnitLoadNotes& notes) : notes_(notes) {
        table_.caption = sayPlain(notes.writer, phrase::kUnitLoadCaption);
        table_.head = {say(notes.writer, phrase::kColumnMember)};
        table_.numeric = {false};
        for (const UnitLoadRow& row : notes.unit.rows) {
            table_.rows.push_back({memberName(notes.writer.truss, row.member)});
        }
    }
    template <class CellOf>
    void add(const Formula& head, const std::string& unit, CellOf cellOf) {
        table_.head.push_back(headed(notes_.writer, runsOf(head), unit));
        table_.numeric.push_back(true);
        for (std::size_t i = 0; i < table_.rows.size(); ++i) {
            table_.rows[i].push_back(cellOf(notes_.unit.rows[i]));
        }
    }
    void addGrowth(const Formula& head, double UnitLoadRow::*part) {
        add(head, notes_.moved, [&](const UnitLoadRow& row) {
            return shareText(row.*part, notes_.shares, notes_.numbers);
        });
    }
    TextTable finished() {
        std::vector<Words> total(table_.head.size(), Words(""));
        total.front() = sayPlain(notes_.writer, phrase::kTotal);
        total.back() = shareText(sumOfPrinted(sharesOf(notes_.unit), notes_.shares), notes_.shares,
                                 notes_.numbers);
        table_.rows.push_back(std::move(total));
        return std::move(table_);
    }

private:
    const UnitLoadNotes& notes_;
    TextTable table_{};
};

} // namespace

TextTable unitLoadMembers(const UnitLoadNotes& notes) {
    const UnitLoadTable& unit = notes.unit;
    const Units& units = notes.writer.truss.units;
    const NumberStyle& numbers = notes.numbers;
    const bool forces = anyOf(unit, &UnitLoadRow::force);
    const bool warm = anyOf(unit, &UnitLoadRow::thermal);
    const bool misfit = anyOf(unit, &UnitLoadRow::misfit);
    MemberTable table(notes);
    if (forces) {
        table.add({forceToken()}, symbolOf(units.force),
                  [&](const UnitLoadRow& row) { return formatNumber(row.force, numbers); });
        table.add({variableToken("L")}, symbolOf(units.length),
                  [&](const UnitLoadRow& row) { return formatGiven(row.length, numbers); });
        table.add({variableToken("EA")}, symbolOf(units.force), [&](const UnitLoadRow& row) {
            return row.stiffness > 0 ? stiffnessText(row.stiffness, numbers) : "";
        });
    }
    if (forces && (warm || misfit)) {
        table.addGrowth(product({forceToken(), overStiffness()}), &UnitLoadRow::elastic);
    }
    if (warm && (forces || misfit)) {
        table.addGrowth(thermalGrowth(), &UnitLoadRow::thermal);
    }
    if (misfit && (forces || warm)) {
        table.addGrowth({misfitGrowth()}, &UnitLoadRow::misfit);
    }
    table.addGrowth({growthToken()}, &UnitLoadRow::growth);
    table.add({underUnitToken()}, {},
              [&](const UnitLoadRow& row) { return unitForce(row.unit, numbers); });
    table.addGrowth(product({underUnitToken(), growthToken()}), &UnitLoadRow::work);
    return table.finished();
}

// Reactions are named as in the whole truss.
TextTable unitLoadSettlements(const UnitLoadNotes& notes) {
    Working whole;
    whole.structure = structureOf(notes.writer.truss);
    return settlementTable(notationOf(notes.writer, whole), notes.unit.settlements,
                           unitReactionToken(), notes.shares);
}

} // namespace gusset
