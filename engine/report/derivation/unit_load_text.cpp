#include "report/derivation/unit_load_text.hpp"

#include "core/signs.hpp"
#include "phrases/results/tables.hpp"
#include "phrases/working/unit_load.hpp"
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

std::vector<RichLine> headOf(const Writer& writer, bool thermal) {
    const std::string force = symbolOf(writer.truss.units.force);
    const std::string moved = symbolOf(writer.truss.units.displacement);
    const Token n = variableToken("n");
    const Token length = variableToken("L");
    const auto column = [&](const Formula& name, const std::string& unit) {
        return headed(writer, runsOf(name), unit);
    };
    std::vector<RichLine> head{say(writer, phrase::kColumnMember),
                               column({variableToken("N")}, force),
                               column({n}, {}),
                               column({length}, symbolOf(writer.truss.units.length)),
                               column({variableToken("EA")}, force),
                               column(product({n, variableToken("N"), overStiffness()}), moved)};
    if (thermal) {
        head.push_back(
            column(product({n, variableToken("\u03B1"), variableToken("\u0394T"), length}), moved));
        head.push_back(column(product({n, variableToken("\u0394L")}), moved));
    }
    return head;
}

TextTable memberTable(const Writer& writer, const UnitLoadTable& unit) {
    const bool thermal = anyThermal(unit);
    const NumberStyle numbers = numberStyleOf(writer.truss);
    const auto contribution = [&](double value) { return gusset::contribution(value, numbers); };
    TextTable table;
    table.caption = sayPlain(writer, phrase::kUnitLoadCaption);
    table.head = headOf(writer, thermal);
    table.numeric.assign(table.head.size(), true);
    table.numeric[0] = false;
    for (const UnitLoadRow& row : unit.rows) {
        table.rows.push_back({memberName(writer.truss, row.member),
                              formatNumber(row.force, numbers), unitForce(row.unit, numbers),
                              formatGiven(row.length, numbers),
                              row.stiffness > 0 ? stiffnessText(row.stiffness, numbers) : "",
                              contribution(row.elastic)});
        if (thermal) {
            table.rows.back().push_back(contribution(row.thermal));
            table.rows.back().push_back(contribution(row.misfit));
        }
    }
    table.rows.push_back(
        {sayPlain(writer, phrase::kTotal), "", "", "", "", contribution(unit.elastic)});
    if (thermal) {
        table.rows.back().push_back(contribution(unit.thermal));
        table.rows.back().push_back(contribution(unit.misfit));
    }
    return table;
}

TextTable settlements(const PhraseBook& book, const UnitLoadTable& unit) {
    return settlementTable(notationOf({book, unit.unitTruss}, unit.unitWorking), unit.settlements,
                           variableToken("r"), variableToken("\u03B4"));
}

Vec2 directionOfAxis(DisplacementAxis axis) {
    return axis == DisplacementAxis::X ? Vec2{1, 0} : Vec2{0, 1};
}

std::vector<std::string> openingLines(const Writer& writer, const UnitLoadTable& unit) {
    const RichLine joint = plainLine(writer.truss.joints[unit.joint.at()].label);
    const RichLine direction = plainLine(directionWord(writer, directionOfAxis(unit.axis)));
    return {
        sayPlain(writer, phrase::kUnitLoadOpening, {{"joint", joint}, {"direction", direction}}),
        sayPlain(writer, phrase::kUnitLoadTheorem)};
}

std::string closingLine(const Writer& writer, const UnitLoadTable& unit) {
    const RichLine joint = plainLine(writer.truss.joints[unit.joint.at()].label);
    const Vec2 axis = directionOfAxis(unit.axis);
    const std::string moved = symbolOf(writer.truss.units.displacement);
    const std::string size =
        contribution(unit.total < 0 ? -unit.total : unit.total, numberStyleOf(writer.truss));
    if (unit.total == 0) {
        return sayPlain(writer, phrase::kDoesNotMove, {{"joint", joint}});
    }
    return sayPlain(writer, phrase::kMovesBy,
                    {{"joint", joint},
                     {"size", moved.empty() ? size : size + kThinSpace + moved},
                     {"direction", directionWord(writer, unit.total < 0 ? -axis : axis)}});
}

std::string refusalLine(const Writer& writer, const UnitLoadTable& unit) {
    if (unit.missing.empty()) {
        return sayPlain(writer, phrase::kUnitLoadNoWorking);
    }
    std::vector<RichLine> names;
    for (const MemberId member : unit.missing) {
        names.push_back(plainLine(memberName(writer.truss, member)));
    }
    return sayPlain(writer, phrase::kUnitLoadNoStiffness, {{"members", listOf(writer, names)}});
}

} // namespace

Passage unitLoadPassage(const Writer& writer, const UnitLoadTable& unit) {
    Passage passage{say(writer, phrase::kUnitLoadTitle,
                        {{"joint", writer.truss.joints[unit.joint.at()].label}})};
    if (!unit.complete) {
        addSentence(passage, plainLine(refusalLine(writer, unit)));
        return passage;
    }
    for (const std::string& line : openingLines(writer, unit)) {
        addSentence(passage, plainLine(line));
    }
    passage.parts.push_back(memberTable(writer, unit));
    if (!unit.settlements.empty()) {
        passage.parts.push_back(settlements(writer, unit));
    }
    passage.parts.push_back(WorkingLine{LineRole::Result, plainLine(closingLine(writer, unit))});
    return passage;
}

std::string unitLoadText(const Writer& writer, const UnitLoadTable& unit) {
    return passagesText({unitLoadPassage(writer, unit)});
}

std::string unitLoadHtml(const Writer& writer, const UnitLoadTable& unit) {
    return passagesHtml({unitLoadPassage(writer, unit)});
}

} // namespace gusset
