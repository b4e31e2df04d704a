#include "report/derivation/unit_load_text.hpp"

#include "core/signs.hpp"
#include "phrases/tables.hpp"
#include "phrases/unit_load.hpp"
#include "report/derivation/virtual_work_table.hpp"
#include "report/results/results_text.hpp"
#include "report/text/formula.hpp"

namespace gusset {
namespace {

bool anyThermal(const UnitLoadTable& table) {
    for (const UnitLoadRow& row : table.rows) {
        if (row.thermal != 0 || row.misfit != 0) {
            return true;
        }
    }
    return false;
}

std::vector<RichLine> headOf(const PhraseBook& book, const Truss& truss, bool thermal) {
    const std::string force = symbolOf(truss.units.force);
    const std::string moved = symbolOf(truss.units.displacement);
    const Token n = variableToken("n");
    const Token length = variableToken("L");
    const auto column = [&](const Formula& name, const std::string& unit) {
        return headed(book, runsOf(name), unit);
    };
    std::vector<RichLine> head{say(book, phrase::kColumnMember),
                               column({variableToken("N")}, force),
                               column({n}, {}),
                               column({length}, symbolOf(truss.units.length)),
                               column({variableToken("EA")}, force),
                               column(product({n, variableToken("N"), overStiffness()}), moved)};
    if (thermal) {
        head.push_back(
            column(product({n, variableToken("\u03B1"), variableToken("\u0394T"), length}), moved));
        head.push_back(column(product({n, variableToken("\u0394L")}), moved));
    }
    return head;
}

TextTable memberTable(const PhraseBook& book, const Truss& truss, const UnitLoadTable& unit) {
    const bool thermal = anyThermal(unit);
    const NumberStyle numbers = numberStyleOf(truss);
    const auto contribution = [&](double value) { return gusset::contribution(value, numbers); };
    TextTable table;
    table.caption = sayPlain(book, phrase::kUnitLoadCaption);
    table.head = headOf(book, truss, thermal);
    table.numeric.assign(table.head.size(), true);
    table.numeric[0] = false;
    for (const UnitLoadRow& row : unit.rows) {
        table.rows.push_back({memberName(truss, row.member), formatNumber(row.force, numbers),
                              unitForce(row.unit, numbers), formatGiven(row.length, numbers),
                              row.stiffness > 0 ? stiffnessText(row.stiffness, numbers) : "",
                              contribution(row.elastic)});
        if (thermal) {
            table.rows.back().push_back(contribution(row.thermal));
            table.rows.back().push_back(contribution(row.misfit));
        }
    }
    table.rows.push_back(
        {sayPlain(book, phrase::kTotal), "", "", "", "", contribution(unit.elastic)});
    if (thermal) {
        table.rows.back().push_back(contribution(unit.thermal));
        table.rows.back().push_back(contribution(unit.misfit));
    }
    return table;
}

TextTable settlements(const PhraseBook& book, const UnitLoadTable& unit) {
    return settlementTable(notationOf(book, unit.unitTruss, unit.unitWorking), unit.settlements,
                           variableToken("r"), variableToken("\u03B4"));
}

Vec2 directionOfAxis(DisplacementAxis axis) {
    return axis == DisplacementAxis::X ? Vec2{1, 0} : Vec2{0, 1};
}

std::vector<std::string> openingLines(const PhraseBook& book, const Truss& truss,
                                      const UnitLoadTable& unit) {
    const RichLine joint = plainLine(truss.joints[unit.joint.at()].label);
    const RichLine direction = plainLine(directionWord(book, directionOfAxis(unit.axis)));
    return {sayPlain(book, phrase::kUnitLoadOpening, {{"joint", joint}, {"direction", direction}}),
            sayPlain(book, phrase::kUnitLoadTheorem)};
}

std::string closingLine(const PhraseBook& book, const Truss& truss, const UnitLoadTable& unit) {
    const RichLine joint = plainLine(truss.joints[unit.joint.at()].label);
    const Vec2 axis = directionOfAxis(unit.axis);
    const std::string moved = symbolOf(truss.units.displacement);
    const std::string size =
        contribution(unit.total < 0 ? -unit.total : unit.total, numberStyleOf(truss));
    if (unit.total == 0) {
        return sayPlain(book, phrase::kDoesNotMove, {{"joint", joint}});
    }
    return sayPlain(book, phrase::kMovesBy,
                    {{"joint", joint},
                     {"size", moved.empty() ? size : size + kThinSpace + moved},
                     {"direction", directionWord(book, unit.total < 0 ? -axis : axis)}});
}

std::string refusalLine(const PhraseBook& book, const Truss& truss, const UnitLoadTable& unit) {
    if (unit.missing.empty()) {
        return sayPlain(book, phrase::kUnitLoadNoWorking);
    }
    std::vector<RichLine> names;
    for (const MemberId member : unit.missing) {
        names.push_back(plainLine(memberName(truss, member)));
    }
    return sayPlain(book, phrase::kUnitLoadNoStiffness, {{"members", listOf(book, names)}});
}

} // namespace

Passage unitLoadPassage(const PhraseBook& book, const Truss& truss, const UnitLoadTable& unit) {
    Passage passage{
        say(book, phrase::kUnitLoadTitle, {{"joint", truss.joints[unit.joint.at()].label}})};
    if (!unit.complete) {
        addSentence(passage, plainLine(refusalLine(book, truss, unit)));
        return passage;
    }
    for (const std::string& line : openingLines(book, truss, unit)) {
        addSentence(passage, plainLine(line));
    }
    passage.parts.push_back(memberTable(book, truss, unit));
    if (!unit.settlements.empty()) {
        passage.parts.push_back(settlements(book, unit));
    }
    passage.parts.push_back(
        WorkingLine{LineRole::Result, plainLine(closingLine(book, truss, unit))});
    return passage;
}

std::string unitLoadText(const PhraseBook& book, const Truss& truss, const UnitLoadTable& unit) {
    return passagesText({unitLoadPassage(book, truss, unit)});
}

std::string unitLoadHtml(const PhraseBook& book, const Truss& truss, const UnitLoadTable& unit) {
    return passagesHtml({unitLoadPassage(book, truss, unit)});
}

} // namespace gusset
