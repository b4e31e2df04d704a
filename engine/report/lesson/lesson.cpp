#include "report/lesson/lesson.hpp"

#include "phrases/working/lesson.hpp"
#include "report/derivation/working_text.hpp"
#include "report/lesson/spoken.hpp"
#include "report/lesson/spoken_sum.hpp"
#include "report/results/solution_text.hpp"

#include <algorithm>
#include <array>
#include <iterator>
#include <map>

namespace gusset {
namespace {

bool isFormula(const WorkingLine& line) { return !line.formula.empty(); }

bool hasEquation(const Passage& passage) {
    return std::any_of(passage.parts.begin(), passage.parts.end(), [](const auto& part) {
        const auto* line = std::get_if<WorkingLine>(&part);
        return line && line->role == LineRole::Equation;
    });
}

// The results of a step in the order in which its lines give them.
std::vector<Found> inOrder(const Step& step) {
    std::vector<Found> found;
    for (const SolvingLine& line : step.solving) {
        if (const auto* here = std::get_if<FoundHere>(&line)) {
            found.push_back(step.found[here->at]);
        }
    }
    return found.empty() ? step.found : found;
}

class StepWriter {
public:
    StepWriter(const PhraseBook& book, const Passage& passage) : book_(book) {
        made_.title = passage.title;
        showsSentences_ = !hasEquation(passage);
    }

    void add(const Passage& passage) {
        if (!passage.goesOn) { // the room looks at the new body first
            beginStroke();
            addSaid(stroke().spoken, titleSaid());
        }
        for (const auto& part : passage.parts) {
            if (const auto* sketch = std::get_if<Sketch>(&part)) {
                made_.drawings.push_back(*sketch);
            } else if (const auto* table = std::get_if<TextTable>(&part)) {
                addTable(*table);
            } else {
                addLine(std::get<WorkingLine>(part));
            }
        }
        if (made_.strokes.empty()) {
            beginStroke();
            addSaid(stroke().spoken, titleSaid());
        }
    }

    // What the truss shows with each stroke; everything with the last one.
    void tell(const Notation& notation, const Step& step) {
        const std::vector<Found> found = inOrder(step);
        std::size_t told = 0;
        std::size_t seen = 0;
        for (Stroke& each : made_.strokes) {
            for (; seen < each.lines; ++seen) {
                told += made_.lines[seen].role == LineRole::Result ? 1u : 0u;
            }
            const std::size_t count =
                &each == &made_.strokes.back() ? found.size() : std::min(told, found.size());
            each.told.assign(found.begin(), found.begin() + static_cast<std::ptrdiff_t>(count));
        }
        sayTerms(notation, step);
    }

    LessonStep take() {
        for (Stroke& each : made_.strokes) {
            endSaid(each.spoken);
        }
        return std::move(made_);
    }

private:
    Stroke& stroke() { return made_.strokes.back(); }
    std::string titleSaid() const { return withCapital(spokenLine(book_, made_.title)); }

    void beginStroke() {
        Stroke next;
        linesBefore_ = made_.lines.size();
        next.lines = linesBefore_;
        made_.strokes.push_back(std::move(next));
    }

    // As many rows at once as can be read from the last row of a room.
    void addTable(const TextTable& table) {
        constexpr std::size_t kRows = 11;
        for (std::size_t first = 0; first < table.rows.size(); first += kRows) {
            beginStroke();
            stroke().table =
                TableShown{made_.tables.size(), first, std::min(kRows, table.rows.size() - first)};
            const std::string caption = spokenCaption(book_, table.caption);
            addSaid(stroke().spoken,
                    first == 0 ? caption
                               : sayPlain(book_, phrase::kTableGoesOn, {{"caption", caption}}));
        }
        made_.tables.push_back(table);
    }

    // Sentences without an equation come a few at a time: more might not have room, and the first
    // of them would never be seen.
    void addLine(const WorkingLine& line) {
        constexpr std::size_t kSentences = 2;
        const bool isFull = showsSentences_ && !made_.strokes.empty() &&
                            made_.lines.size() - linesBefore_ >= kSentences;
        if (isFormula(line) || made_.strokes.empty() || isFull) {
            beginStroke();
        }
        if (isFormula(line) || showsSentences_) {
            made_.lines.push_back(line);
            stroke().lines = made_.lines.size();
        }
        addSaid(stroke().spoken, isFormula(line) ? spokenSentence(book_, line.formula)
                                                 : spokenLine(book_, line.runs));
    }

    // The first stroke with an equation says its terms one by one, unless that would be twice the
    // same: a sum of forces in symbols.
    void sayTerms(const Notation& notation, const Step& step) {
        if (step.equations.size() != 1 ||
            (step.equations.front().kind != EquationKind::SumMoments &&
             notation.truss.classSettings.equations == EquationLines::SymbolsFirst)) {
            return;
        }
        const std::string terms = spokenSum(notation, step.equations.front());
        const auto first = std::find_if(made_.lines.begin(), made_.lines.end(), isFormula);
        if (terms.empty() || first == made_.lines.end()) {
            return;
        }
        const std::string title = titleSaid();
        const std::string plain = spokenSentence(book_, first->formula);
        const bool isTitled = made_.strokes.front().spoken.starts_with(title);
        for (Stroke& each : made_.strokes) {
            if (const std::size_t at = each.spoken.find(plain); at != std::string::npos) {
                std::string said = isTitled ? terms : title;
                addSaid(said, isTitled ? plain : terms);
                if (!isTitled) {
                    addSaid(said, plain);
                }
                each.spoken.replace(at, plain.size(), said);
                return;
            }
        }
    }

    const PhraseBook& book_;
    LessonStep made_{};
    bool showsSentences_ = false;
    std::size_t linesBefore_ = 0; // the last stroke
};

// Words for the parts of a subject: names that stay the same in every language and notation.
constexpr std::array<std::string_view, 16> kSubjects{
    "count", "whole",     "slopes",   "moment", "sum",     "reactions", "zero",    "symmetry",
    "joint", "joint-sum", "together", "cut",    "cut-sum", "joints",    "closing", "summary"};

std::string subjectOf(const Truss& truss, const Step& step) {
    std::string subject(kSubjects[static_cast<std::size_t>(step.kind)]);
    if (step.joint.valid()) {
        subject += " " + truss.joints[step.joint.at()].label;
    }
    if (!step.equations.empty()) {
        constexpr std::array<std::string_view, 4> kSums{" moments", " x", " y", " across"};
        subject += kSums[static_cast<std::size_t>(step.equations.front().kind)];
    }
    if (step.kind == StepKind::SectionIntro || step.kind == StepKind::ZeroByRule) {
        for (const MemberId member : step.members) {
            subject += " " + memberName(truss, member);
        }
    }
    return subject;
}

// The second of a name gets a number.
void tellApart(std::vector<LessonStep>& steps) {
    std::map<std::string, int> seen;
    for (LessonStep& step : steps) {
        if (const int times = ++seen[step.subject]; times > 1) {
            step.subject += " (" + std::to_string(times) + ")";
        }
    }
}

// A step that goes on with a derivation shows its drawings.
void carryDrawings(std::vector<LessonStep>& steps, const std::vector<Passage>& passages) {
    for (std::size_t i = 1; i < steps.size(); ++i) {
        if (steps[i].drawings.empty() && passages[i].goesOn) {
            steps[i].drawings = steps[i - 1].drawings;
        }
    }
}

bool isOfReactions(StepKind kind) {
    return kind == StepKind::WholeBody || kind == StepKind::ReactionMoment ||
           kind == StepKind::ReactionSum || kind == StepKind::ReactionPair;
}

// A body stays on the stage through all its steps, the whole truss while its reactions are found.
void carryBodies(const Working& working, const std::vector<Passage>& passages,
                 std::vector<LessonStep>& steps) {
    std::optional<std::size_t> whole;
    for (std::size_t i = 0; i < steps.size(); ++i) {
        const StepKind kind = working.steps[i].kind;
        if (!steps[i].drawings.empty()) {
            steps[i].body = i;
        } else if (isOfReactions(kind)) {
            steps[i].body = whole;
        } else if (i > 0 && passages[i].goesOn) {
            steps[i].body = steps[i - 1].body;
        }
        whole = kind == StepKind::WholeBody ? steps[i].body : whole;
        steps[i].bodyIsWhole = isOfReactions(kind) && steps[i].body.has_value();
    }
    for (LessonStep& step : steps) { // they are drawn for the stage
        step.drawings.clear();
    }
}

// All results are on the truss: no list of them beside it.
void sumUp(const Working& working, std::vector<LessonStep>& steps) {
    for (std::size_t i = 0; i < steps.size(); ++i) {
        if (working.steps[i].kind != StepKind::Summary) {
            continue;
        }
        Stroke all = steps[i].strokes.back();
        for (std::size_t k = 0; k + 1 < steps[i].strokes.size(); ++k) {
            all.spoken.insert(0, steps[i].strokes[steps[i].strokes.size() - 2 - k].spoken + " ");
        }
        all.lines = 0;
        steps[i].lines.clear();
        steps[i].strokes = {std::move(all)};
    }
}

void showMoving(const Writer& writer, LessonShown& lesson) {
    if (lesson.working.mechanisms.empty()) {
        return;
    }
    LessonStep step;
    step.title = say(writer.book, phrase::kTitleMoves);
    step.subject = "moves";
    step.moves = true;
    step.strokes.emplace_back();
    step.strokes.back().spoken = mechanismSentence(writer, lesson.working.mechanisms.front());
    lesson.steps.push_back(std::move(step));
}

} // namespace

const RichLine& titleAt(const LessonStep& step, std::size_t stroke) {
    const auto next = std::find_if(step.joined.begin(), step.joined.end(),
                                   [&](const JoinedPart& part) { return part.stroke > stroke; });
    return next == step.joined.begin() ? step.title : std::prev(next)->title;
}

std::vector<std::size_t> workingStepsOf(const LessonStep& step) {
    std::vector<std::size_t> steps;
    if (step.step) {
        steps.push_back(*step.step);
    }
    for (const JoinedPart& part : step.joined) {
        if (part.step) {
            steps.push_back(*part.step);
        }
    }
    return steps;
}

LessonShown lessonOf(const PhraseBook& book, const Truss& truss, Working working,
                     std::vector<MemberId> asked) {
    LessonShown lesson{truss, std::move(working), std::move(asked)};
    const std::vector<Passage> passages = workingPassages({book, lesson.truss}, lesson.working);
    const Notation notation = notationOf({book, lesson.truss}, lesson.working);
    for (std::size_t i = 0; i < passages.size(); ++i) {
        StepWriter writer(book, passages[i]);
        writer.add(passages[i]);
        writer.tell(notation, lesson.working.steps[i]);
        lesson.steps.push_back(writer.take());
        lesson.steps.back().step = i;
        for (Stroke& stroke : lesson.steps.back().strokes) {
            stroke.of = i;
        }
        lesson.steps.back().subject = subjectOf(lesson.truss, lesson.working.steps[i]);
    }
    carryBodies(lesson.working, passages, lesson.steps);
    sumUp(lesson.working, lesson.steps);
    showMoving({book, lesson.truss}, lesson);
    tellApart(lesson.steps);
    return lesson;
}

LessonShown lessonOf(const PhraseBook& book, const Truss& truss, Working working,
                     const std::vector<Passage>& passages) {
    LessonShown lesson{truss, std::move(working)};
    for (const Passage& passage : passages) {
        StepWriter writer(book, passage);
        writer.add(passage);
        lesson.steps.push_back(writer.take());
        lesson.steps.back().subject = plainText(passage.title);
    }
    carryDrawings(lesson.steps, passages);
    tellApart(lesson.steps);
    return lesson;
}

} // namespace gusset
