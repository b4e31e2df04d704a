#include "report/lesson/shown.hpp"

#include "hand/stages/explain.hpp"
#include "hand/stages/sections.hpp"
#include "report/derivation/force_method_text.hpp"
#include "report/derivation/force_polygon_text.hpp"
#include "report/derivation/unit_load_text.hpp"

#include <algorithm>
#include <utility>

namespace gusset {
namespace {

struct LessonMaker {
    const PhraseBook& book;
    const Truss& truss;
    const LoadChoice& loads;
    const Solution& solution;

    [[nodiscard]] Writer writer() const { return {book, truss}; }
    [[nodiscard]] Working whole() const { return workOut(truss, loads, solution); }

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
                        std::vector{unitLoadPassage(
                            writer(), unitLoadTable(truss, loads, solution, shown.joint, axis))});
    }
    Outcome<LessonShown> operator()(const ShowForceMethod&) const {
        return lessonOf(book, truss, whole(),
                        forceMethodPassages(writer(), forceMethod(truss, loads, solution)));
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
    Outcome<LessonShown> lesson = std::visit(LessonMaker{book, truss, loads, solution}, item.shown);
    if (!lesson) {
        return lesson;
    }
    LessonShown made = std::move(lesson).value();
    const auto isLeftOut = [&](const LessonStep& step) {
        return std::find(item.without.begin(), item.without.end(), step.subject) !=
               item.without.end();
    };
    made.steps.erase(std::remove_if(made.steps.begin(), made.steps.end(), isLeftOut),
                     made.steps.end());
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
