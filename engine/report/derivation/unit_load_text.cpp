#include "report/derivation/unit_load_text.hpp"

#include "core/number.hpp"
#include "core/signs.hpp"
#include "phrases/working/unit_load.hpp"
#include "report/derivation/force_method_text.hpp"
#include "report/derivation/unit_load_tables.hpp"
#include "report/results/added_up.hpp"
#include "report/results/results_text.hpp"
#include "report/text/formula.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace gusset {
namespace {

// A sum with more parts is only given in the table.
constexpr std::size_t kMostWrittenOut = 12;

RichLine tokenRuns(const Token& token) { return runsOf({token}); }

RichLine movedJoint(const UnitLoadNotes& notes) {
    return plainLine(notes.writer.truss.joints[notes.unit.joint.at()].label);
}

Vec2 axisOf(const UnitLoadTable& unit) {
    return unit.axis == DisplacementAxis::X ? Vec2{1, 0} : Vec2{0, 1};
}

void endWithUnit(Formula& formula, const std::string& unit) {
    if (!unit.empty()) {
        formula.push_back(wordToken(unit));
    }
}

// e = N·L/EA + α·ΔT·L + ΔL, as far as these occur.
Formula growthFormula(const UnitLoadTable& unit) {
    Formula formula{growthToken(), operatorToken("=")};
    const auto add = [&](double UnitLoadRow::*part, const Formula& work) {
        if (anyOf(unit, part)) {
            if (formula.size() > 2) {
                formula.push_back(operatorToken("+"));
            }
            append(formula, work);
        }
    };
    add(&UnitLoadRow::elastic, product({forceToken(), overStiffness()}));
    add(&UnitLoadRow::thermal, thermalGrowth());
    add(&UnitLoadRow::misfit, {misfitGrowth()});
    if (formula.size() == 2) {
        formula.push_back(numberToken("0"));
    }
    return formula;
}

Formula theoremFormula(const UnitLoadTable& unit) {
    Formula formula{numberToken("1"), operatorToken(kDot), soughtToken()};
    if (!unit.settlements.empty()) {
        append(formula, {operatorToken("+"), operatorToken(kSum)});
        append(formula, product({unitReactionToken(), settledToken()}));
    }
    append(formula, {operatorToken("="), operatorToken(kSum)});
    append(formula, product({underUnitToken(), growthToken()}));
    return formula;
}

void addOpening(Passage& passage, const UnitLoadNotes& notes) {
    const UnitLoadTable& unit = notes.unit;
    const RichLine direction = plainLine(directionWord(notes.writer, axisOf(unit)));
    const RichLine n = tokenRuns(underUnitToken());
    const RichLine force = tokenRuns(forceToken());
    if (!unit.method) {
        addSentence(passage, say(notes.writer,
                                 anyOf(unit, &UnitLoadRow::force) ? phrase::kUnitLoadOpening
                                                                  : phrase::kUnitLoadUnloaded,
                                 {{"direction", direction},
                                  {"joint", movedJoint(notes)},
                                  {"n", n},
                                  {"force", force}}));
        return;
    }
    const RichLine redundants = redundantNames(notes.writer, *unit.method);
    addSentence(passage, say(notes.writer,
                             unit.method->releases.size() == 1 ? phrase::kRealByMethod
                                                               : phrase::kRealByMethodTwo,
                             {{"force", force}, {"redundants", redundants}}));
    addSentence(passage, say(notes.writer, phrase::kUnitOnReleased,
                             {{"direction", direction},
                              {"joint", movedJoint(notes)},
                              {"released", releasedNames(notes.writer, *unit.method)},
                              {"n", n}}));
    addSentence(passage, say(notes.writer, phrase::kReleasedIsEnough,
                             {{"n", n}, {"e", tokenRuns(growthToken())}}));
}

// α·ΔT·L = 0.000012 · 50 · 4000 mm = 2.4 mm
Formula warmingFormula(const UnitLoadNotes& notes, const UnitLoadRow& row) {
    const Units& units = notes.writer.truss.units;
    const double length = row.length * toMetre(units.length) / toMetre(units.displacement);
    const std::string product = formatGiven(row.thermal, notes.numbers);
    const auto given = [&](double value) { return numberToken(formatGiven(value, notes.numbers)); };
    Formula formula = thermalGrowth();
    append(formula, {operatorToken("="), given(row.alpha), operatorToken(kDot),
                     numberToken(formatGiven(row.warming, notes.numbers)), operatorToken(kDot),
                     given(length)});
    endWithUnit(formula, notes.moved);
    formula.push_back(operatorToken(isGivenInFull(row.thermal) ? "=" : kAlmost));
    formula.push_back(numberToken(product));
    endWithUnit(formula, notes.moved);
    return formula;
}

// Members that `alike` puts beside a row, in the order of the model.
template <class Alike>
RichLine membersLike(const UnitLoadNotes& notes, Alike alike) {
    std::vector<RichLine> names;
    for (const UnitLoadRow& row : notes.unit.rows) {
        if (alike(row)) {
            names.push_back(plainLine(memberName(notes.writer.truss, row.member)));
        }
    }
    return listOf(notes.writer, names);
}

// The rows with a value of this kind that no row before them has.
std::vector<const UnitLoadRow*> firstOfEach(const UnitLoadTable& unit,
                                            std::vector<double> (*valuesOf)(const UnitLoadRow&)) {
    std::vector<const UnitLoadRow*> first;
    for (const UnitLoadRow& row : unit.rows) {
        const std::vector<double> values = valuesOf(row);
        const bool known = std::any_of(first.begin(), first.end(), [&](const UnitLoadRow* other) {
            return valuesOf(*other) == values;
        });
        if (values.front() != 0 && !known) {
            first.push_back(&row);
        }
    }
    return first;
}

void addWarming(Passage& passage, const UnitLoadNotes& notes) {
    const auto valuesOf = [](const UnitLoadRow& row) {
        return std::vector<double>{row.warming, row.alpha, row.length};
    };
    for (const UnitLoadRow* first : firstOfEach(notes.unit, valuesOf)) {
        const std::string change =
            formatGiven(std::fabs(first->warming), notes.numbers) + kThinSpace + "K";
        const RichLine members = membersLike(
            notes, [&](const UnitLoadRow& row) { return valuesOf(row) == valuesOf(*first); });
        addSentence(passage,
                    say(notes.writer, first->warming > 0 ? phrase::kWarmedBy : phrase::kCooledBy,
                        {{"change", change}, {"members", members}}));
        addFormula(passage, LineRole::Equation, warmingFormula(notes, *first));
    }
}

void addMisfits(Passage& passage, const UnitLoadNotes& notes) {
    const auto valuesOf = [](const UnitLoadRow& row) { return std::vector<double>{row.misfit}; };
    for (const UnitLoadRow* first : firstOfEach(notes.unit, valuesOf)) {
        const RichLine members =
            membersLike(notes, [&](const UnitLoadRow& row) { return row.misfit == first->misfit; });
        addSentence(
            passage,
            say(notes.writer, first->misfit > 0 ? phrase::kMadeTooLong : phrase::kMadeTooShort,
                {{"size",
                  withUnit(formatGiven(std::fabs(first->misfit), notes.numbers), notes.moved)},
                 {"members", members}}));
        Formula formula{misfitGrowth(), operatorToken("="),
                        numberToken(formatGiven(first->misfit, notes.numbers))};
        endWithUnit(formula, notes.moved);
        addFormula(passage, LineRole::Equation, std::move(formula));
    }
}

void addTheorem(Passage& passage, const UnitLoadNotes& notes) {
    const RichLine d = tokenRuns(soughtToken());
    const RichLine n = tokenRuns(underUnitToken());
    const RichLine e = tokenRuns(growthToken());
    addSentence(passage,
                notes.unit.settlements.empty()
                    ? say(notes.writer, phrase::kUnitLoadTheorem, {{"d", d}, {"n", n}, {"e", e}})
                    : say(notes.writer, phrase::kUnitLoadTheoremSettling,
                          {{"d", d},
                           {"n", n},
                           {"e", e},
                           {"r", tokenRuns(unitReactionToken())},
                           {"s", tokenRuns(settledToken())}}));
    addFormula(passage, LineRole::Equation, theoremFormula(notes.unit));
}

RichLine closingLine(const UnitLoadNotes& notes) {
    const double total = notes.unit.total;
    if (total == 0) {
        return say(notes.writer, phrase::kDoesNotMove, {{"joint", movedJoint(notes)}});
    }
    const Vec2 axis = axisOf(notes.unit);
    return say(notes.writer, phrase::kMovesBy,
               {{"joint", movedJoint(notes)},
                {"size", withUnit(withDecimals(std::fabs(total), notes.answer, notes.numbers),
                                  notes.moved)},
                {"direction", directionWord(notes.writer, total < 0 ? -axis : axis)}});
}

RichLine refusalLine(const Writer& writer, const UnitLoadTable& unit) {
    if (unit.method && unit.method->end != ForceMethodEnd::Complete) {
        return forceMethodRefusal(writer, *unit.method);
    }
    if (unit.missing.empty()) {
        return say(writer, phrase::kUnitLoadNoWorking);
    }
    std::vector<RichLine> names;
    for (const MemberId member : unit.missing) {
        names.push_back(plainLine(memberName(writer.truss, member)));
    }
    return say(writer, phrase::kUnitLoadNoStiffness, {{"members", listOf(writer, names)}});
}

// δ = Σ n·e − Σ r·Δ
Formula soughtFormula(const UnitLoadTable& unit) {
    Formula formula{soughtToken(), operatorToken("="), operatorToken(kSum)};
    append(formula, product({underUnitToken(), growthToken()}));
    if (!unit.settlements.empty()) {
        append(formula, {operatorToken(kMinus), operatorToken(kSum)});
        append(formula, product({unitReactionToken(), settledToken()}));
    }
    return formula;
}

// δ = Σ n·e ≈ −1.4222 − 2.7778 = −4.2000 ≈ −4.20 mm
void addAnswer(Passage& passage, const UnitLoadNotes& notes) {
    const std::vector<double> parts = partsOf(notes.unit);
    const auto count = static_cast<std::size_t>(
        std::count_if(parts.begin(), parts.end(), [](double part) { return part != 0; }));
    const bool writtenOut = count > 0 && count <= kMostWrittenOut;
    const bool carries = notes.shares > notes.answer;
    if (carries) {
        addSentence(passage, say(notes.writer, phrase::kPartsCarryMore));
    }
    Formula formula = soughtFormula(notes.unit);
    if (writtenOut) {
        addPrintedSum(formula, parts, notes.shares, notes.numbers);
    }
    if (!writtenOut || carries) {
        const bool exact = count == 0 || areWrittenInFull({notes.unit.total}, notes.answer);
        append(formula, {operatorToken(exact ? "=" : kAlmost),
                         numberToken(shareText(notes.unit.total, notes.answer, notes.numbers))});
    }
    endWithUnit(formula, notes.moved);
    addFormula(passage, LineRole::Equation, std::move(formula));
    passage.parts.push_back(WorkingLine{LineRole::Result, closingLine(notes)});
}

} // namespace

Passage unitLoadPassage(const Writer& writer, const UnitLoadTable& unit) {
    Passage passage{say(writer, phrase::kUnitLoadTitle,
                        {{"joint", writer.truss.joints[unit.joint.at()].label}})};
    if (!unit.complete) {
        addSentence(passage, refusalLine(writer, unit));
        return passage;
    }
    const UnitLoadNotes notes = unitLoadNotes(writer, unit);
    addOpening(passage, notes);
    addSentence(passage, say(writer, phrase::kElongationIs, {{"e", tokenRuns(growthToken())}}));
    addFormula(passage, LineRole::Equation, growthFormula(unit));
    addWarming(passage, notes);
    addMisfits(passage, notes);
    addTheorem(passage, notes);
    passage.parts.push_back(unitLoadMembers(notes));
    if (!unit.settlements.empty()) {
        passage.parts.push_back(unitLoadSettlements(notes));
    }
    addAnswer(passage, notes);
    return passage;
}

std::string unitLoadText(const Writer& writer, const UnitLoadTable& unit) {
    return passagesText({unitLoadPassage(writer, unit)});
}

std::string unitLoadHtml(const Writer& writer, const UnitLoadTable& unit) {
    return passagesHtml({unitLoadPassage(writer, unit)});
}

} // namespace gusset
