#include "report/lesson/shown.hpp"

#include "hand/stages/explain.hpp"
#include "hand/stages/sections.hpp"
#include "phrases/working/lesson.hpp"
#include "report/derivation/force_polygon_text.hpp"

#include <algorithm>
#include <optional>
#include <string>
#include <utility>

namespace gusset {
namespace {

// What of a step can stay while the next one goes on.
bool sharesStage(const LessonStep& before, const LessonStep& after) {
    const auto isAlone = [](const LessonStep& step) {
        return step.moves ||
               std::any_of(step.strokes.begin(), step.strokes.end(), [](const Stroke& stroke) {
                   return stroke.table || stroke.drawn || stroke.traced;
               });
    };
    return !isAlone(before) && !isAlone(after) && before.body == after.body &&
           before.bodyIsWhole == after.bodyIsWhole && before.states.empty() && after.states.empty();
}

void join(LessonStep& before, LessonStep after) {
    const std::vector<Found> told = before.strokes.back().told;
    before.joined.push_back(
        {std::move(after.subject), std::move(after.title), before.strokes.size(), after.step});
    for (Stroke& stroke : after.strokes) {
        stroke.lines += before.lines.size();
        stroke.told.insert(stroke.told.begin(), told.begin(), told.end());
        before.strokes.push_back(std::move(stroke));
    }
    before.lines.insert(before.lines.end(), after.lines.begin(), after.lines.end());
}

// The first step has none before it, and keeps to itself.
std::optional<Issue> joinSteps(std::vector<LessonStep>& steps,
                               const std::vector<std::string>& subjects) {
    std::vector<LessonStep> made;
    for (LessonStep& step : steps) {
        const bool joins =
            std::find(subjects.begin(), subjects.end(), step.subject) != subjects.end();
        if (!joins || made.empty()) {
            made.push_back(std::move(step));
        } else if (!sharesStage(made.back(), step)) {
            return Issue{
                IssueCode::OutOfRange, "lesson",
                statement(phrase::kStagesDiffer, {{"step", plainText(step.title)},
                                                  {"before", plainText(made.back().title)}})};
        } else {
            join(made.back(), std::move(step));
        }
    }
    steps = std::move(made);
    return std::nullopt;
}

struct LessonMaker {
    const PhraseBook& book;
    const Truss& truss;
    const LoadChoice& loads;
    const Solution& solution;
    const std::vector<JointId>& order;

    [[nodiscard]] Writer writer() const { return {book, truss}; }
    [[nodiscard]] Working whole() const {
        return workOutInOrder(truss, loads, solution, order).working;
    }
    // Why the joints can't be taken in their order, if so.
    [[nodiscard]] std::optional<Issue> refusal() const {
        if (order.empty()) {
            return std::nullopt;
        }
        const OrderedWorking made = workOutInOrder(truss, loads, solution, order);
        if (!made.refused) {
            return std::nullopt;
        }
        const Notation notation = notationOf(writer(), made.working);
        std::vector<RichLine> unknowns;
        for (const Symbol& symbol : made.refused->unknowns) {
            unknowns.push_back(symbolRuns(notation, symbol));
        }
        return Issue{
            IssueCode::OutOfRange, "lesson",
            statement(phrase::kOutOfTurn, {{"joint", truss.joints[made.refused->joint.at()].label},
                                           {"unknowns", plainText(listOf(writer(), unknowns))}})};
    }

    Outcome<LessonShown> operator()(const ShowAll&) const {
        return solution.status == Status::Indeterminate
                   ? (*this)(ShowForceMethod{})
                   : Outcome<LessonShown>(lessonOf(book, truss, whole(), std::vector<MemberId>{}));
    }
    Outcome<LessonShown> operator()(const ShowMember& shown) const {
        return lessonOf(book, truss,
                        explain(truss, loads, solution, whole(),
                                {.kind = SymbolKind::MemberForce, .member = shown.member}),
                        {shown.member});
    }
    // A cut that is refused says why, beside the truss.
    Outcome<LessonShown> operator()(const ShowCut& shown) const {
        Working cut = workCut(truss, loads, solution, shown.members);
        if (!cut.complete && cut.loads.empty()) {
            Working paper = blankPaper(truss, loads);
            cut.structure = std::move(paper.structure);
            cut.loads = std::move(paper.loads);
        }
        return lessonOf(book, truss, std::move(cut), shown.members);
    }
    Outcome<LessonShown> operator()(const ShowDisplacement& shown) const {
        const DisplacementAxis axis = shown.horizontal ? DisplacementAxis::X : DisplacementAxis::Y;
        return lessonOf(book, truss, whole(),
                        unitLoadTable(truss, loads, solution, shown.joint, axis));
    }
    Outcome<LessonShown> operator()(const ShowForceMethod&) const {
        return lessonOf(book, truss, whole(), forceMethod(truss, loads, solution));
    }
    Outcome<LessonShown> operator()(const ShowPolygon&) const {
        const ForcePolygon polygon = forcePolygon(truss, loads, solution);
        return polygon.refusal == PolygonRefusal::None
                   ? lessonOf(book, truss, whole(), polygon)
                   : lessonOf(book, truss, whole(),
                              std::vector{forcePolygonPassage(writer(), polygon)});
    }
    // The loads of the model do not act while one of 1 moves along.
    Outcome<LessonShown> operator()(const ShowInfluence& shown) const {
        Truss bare = truss;
        bare.loads.clear();
        if (const auto analysis = analysePath(bare, shown.path); !analysis) {
            return analysis.issues();
        }
        return lessonOf(book, bare, workOut(bare, {}, solve(bare)),
                        influenceByHand(bare, shown.path, shown.effect));
    }
};

} // namespace

Outcome<LessonShown> lessonFor(const PhraseBook& book, const Truss& truss, const LoadChoice& loads,
                               const Solution& solution, const LessonItem& item) {
    const LessonMaker maker{book, truss, loads, solution, item.order};
    if (const std::optional<Issue> refused = maker.refusal()) {
        return *refused;
    }
    Outcome<LessonShown> lesson = std::visit(maker, item.shown);
    if (!lesson) {
        return lesson;
    }
    LessonShown made = std::move(lesson).value();
    if (made.working.loads.size() != made.truss.joints.size()) { // of a cut that is refused
        Working given = blankPaper(made.truss, loads);
        made.working.structure = std::move(given.structure);
        made.working.loads = std::move(given.loads);
    }
    const auto isLeftOut = [&](const LessonStep& step) {
        return std::find(item.without.begin(), item.without.end(), step.subject) !=
               item.without.end();
    };
    made.steps.erase(std::remove_if(made.steps.begin(), made.steps.end(), isLeftOut),
                     made.steps.end());
    if (const std::optional<Issue> refused = joinSteps(made.steps, item.joined)) {
        return *refused;
    }
    made.pauses = item.pauses;
    return made;
}

Outcome<std::vector<LessonShown>> lessonsFor(const PhraseBook& book, const Truss& truss,
                                             const LoadChoice& loads, const Solution& solution,
                                             const LessonPlan& plan) {
    std::vector<LessonShown> lessons;
    for (const LessonItem& item : plan.items) {
        Outcome<LessonShown> lesson = lessonFor(book, truss, loads, solution, item);
        if (!lesson) {
            return lesson.issues();
        }
        lessons.push_back(std::move(lesson).value());
    }
    return lessons;
}

} // namespace gusset
