// Lessons that show states of the truss beside each other: the force method and the unit load.

#include "phrases/working/lesson.hpp"
#include "report/derivation/force_method_text.hpp"
#include "report/derivation/unit_load_tables.hpp"
#include "report/derivation/unit_load_text.hpp"
#include "report/derivation/virtual_work_table.hpp"
#include "report/lesson/lesson.hpp"
#include "report/results/results_text.hpp"
#include "report/text/formula.hpp"

#include <utility>

namespace gusset {
namespace {

// The truss as it is given, its forces from outside alone.
StateShown givenTrussOf(const LessonShown& lesson) {
    return {std::make_shared<Truss>(lesson.truss), std::make_shared<Working>(lesson.working)};
}

StateShown stateOf(const ReleasedState& state) {
    return {std::make_shared<Truss>(*state.truss), std::make_shared<Working>(*state.working),
            state.forces, state.members};
}

// The released truss itself: a state without its forces, and with its cut members.
StateShown releasedTrussOf(const LessonShown& lesson, const ReleasedState& state) {
    Working working;
    working.structure = state.working->structure;
    working.loads = lesson.working.loads;
    StateShown released = stateOf(state);
    released.name.clear();
    released.working = std::make_shared<Working>(std::move(working));
    for (MemberWords& member : released.members) {
        member.words.clear();
    }
    return released;
}

// A force beside each member of the rows.
template <class TextOf>
std::vector<MemberWords> besideRows(const Truss& truss, const UnitLoadTable& unit,
                                    double UnitLoadRow::*force, TextOf textOf) {
    std::vector<MemberWords> members;
    for (const UnitLoadRow& row : unit.rows) {
        const Member& member = truss.members[row.member.at()];
        const double value = row.*force;
        const SketchInk sense = value > 0 ? SketchInk::Tension : SketchInk::Compression;
        members.push_back({member.a, member.b, plainLine(textOf(value)),
                           value == 0 ? SketchInk::Zero : sense, false});
    }
    return members;
}

// A member that the unit truss is without is drawn dashed.
void markCut(std::vector<MemberWords>& members, const UnitLoadTable& unit) {
    for (std::size_t i = 0; unit.method && i < members.size(); ++i) {
        if (isReleased(unit.method->releases, unit.rows[i].member)) {
            members[i].isCut = true;
            members[i].words.clear();
        }
    }
}

} // namespace

LessonShown lessonOf(const PhraseBook& book, const Truss& truss, Working working,
                     const ForceMethod& method) {
    const Writer writer{book, truss};
    LessonShown lesson =
        lessonOf(book, truss, std::move(working), forceMethodPassages(writer, method));
    if (method.end != ForceMethodEnd::Complete) {
        return lesson;
    }
    std::vector<StateShown> states;
    for (const ReleasedState& state : releasedStates(writer, method)) {
        states.push_back(stateOf(state));
    }
    // Count, release, forces, displacements, fit, superposition: as its passages are.
    lesson.steps[1].states = {givenTrussOf(lesson),
                              releasedTrussOf(lesson, releasedStates(writer, method).front())};
    for (std::size_t i = 2; i < lesson.steps.size(); ++i) {
        lesson.steps[i].states = states;
        lesson.steps[i].drawings.clear();
    }
    return lesson;
}

LessonShown lessonOf(const PhraseBook& book, const Truss& truss, Working working,
                     const UnitLoadTable& unit) {
    const Writer writer{book, truss};
    LessonShown lesson =
        lessonOf(book, truss, std::move(working), std::vector{unitLoadPassage(writer, unit)});
    if (!unit.complete) {
        return lesson;
    }
    const NumberStyle numbers = unitLoadNotes(writer, unit).numbers;
    StateShown given = givenTrussOf(lesson);
    given.name = runsOf({forceToken()});
    given.members = besideRows(lesson.truss, unit, &UnitLoadRow::force, [&](double force) {
        return formatNumber(force, drawingStyleOf(truss));
    });
    StateShown alone{std::make_shared<Truss>(unit.unitTruss),
                     std::make_shared<Working>(unit.unitWorking), runsOf({underUnitToken()}),
                     besideRows(lesson.truss, unit, &UnitLoadRow::unit,
                                [&](double force) { return unitForce(force, numbers); })};
    markCut(alone.members, unit);
    lesson.steps.front().states = {std::move(given), std::move(alone)};
    return lesson;
}

} // namespace gusset
