#include "report/classroom/handout.hpp"

#include "classroom/exercise/key.hpp"
#include "classroom/exercise/variant_code.hpp"
#include "phrases/classroom/handout.hpp"
#include "phrases/classroom/practice.hpp"
#include "phrases/classroom/quiz.hpp"
#include "report/classroom/blanks.hpp"
#include "report/classroom/joint_stubs.hpp"
#include "report/classroom/question_figure.hpp"
#include "report/classroom/question_text.hpp"
#include "report/derivation/forces_passages.hpp"
#include "report/derivation/influence_by_hand_text.hpp"
#include "report/derivation/unit_load_text.hpp"
#include "report/paper/page_html.hpp"
#include "report/results/trust_text.hpp"
#include "report/sheet/sheet.hpp"
#include "report/sheet/sheet_head.hpp"
#include "report/sketch/sketch_svg.hpp"
#include "report/text/html.hpp"

#include <algorithm>

namespace gusset {

std::span<const unsigned char> handoutStyle(); // handout.css, compiled in: site/cmake/embed.cmake

namespace {

SheetChoices sheetChoices(const HandoutChoices& choices) {
    SheetChoices sheet;
    sheet.parts = {};
    sheet.parts[static_cast<std::size_t>(SheetPart::Working)] = choices.kind == HandoutKind::Key;
    sheet.size = choices.size;
    sheet.link = choices.link;
    sheet.asks = true;
    return sheet;
}

std::string headOf(const Writer& writer, const Exercise& exercise, const HandoutChoices& choices) {
    std::string html = sheetHead(writer, sheetChoices(choices));
    if (exercise.variant != 0) {
        html += paragraphsHtml(
            {sayPlain(writer, phrase::kHandoutVariant, {{"number", exercise.variant}})});
    }
    if (choices.kind == HandoutKind::Questions) {
        html += "<p>" + escapeHtml(sayPlain(writer, phrase::kHandoutCode)) +
                " <span class=\"blank\">" + escapeHtml(variantCode(exercise)) + "</span></p>\n";
    } else {
        html += "<p class=\"key\">" + escapeHtml(sayPlain(writer, phrase::kHandoutKey)) + "</p>\n";
    }
    return html + "</header>\n";
}

std::string givenOf(const Writer& writer, const Exercise& exercise) {
    std::vector<std::string> says;
    if (!exercise.text.empty()) {
        says.push_back(exercise.text);
    }
    if (!choiceName(exercise.loads).empty()) {
        says.push_back(
            sayPlain(writer, phrase::kLoadsOfQuiz, {{"loads", loadsName(writer, exercise.loads)}}));
    }
    const std::optional<Sketch> figure = questionFigure(writer, exercise.loads, exercise.questions);
    if (!figure) {
        says.push_back(sayPlain(writer, phrase::kNoFigure));
    }
    return paragraphsHtml(says) + (figure ? figureHtml(*figure) : std::string());
}

std::string questionHeading(const Writer& writer, const Exercise& exercise, std::size_t index) {
    const double marks = exercise.questions[index].marks;
    const std::size_t number = index + 1;
    if (marks == 0) {
        return sayPlain(writer, phrase::kQuestionNumber, {{"number", number}});
    }
    return marks == 1 ? sayPlain(writer, phrase::kQuestionForOneMark, {{"number", number}})
                      : sayPlain(writer, phrase::kQuestionForMarks,
                                 {{"number", number}, {"marks", significantNumber(marks, 6)}});
}

std::string questionsOf(const BlanksOf& blanks) {
    std::string html;
    for (std::size_t i = 0; i < blanks.exercise.questions.size(); ++i) {
        html += "<section>\n<h2>" + escapeHtml(questionHeading(blanks.writer, blanks.exercise, i)) +
                "</h2>\n" +
                paragraphsHtml({questionText(blanks.writer, blanks.exercise.questions[i])}) +
                blanksHtml(blanks, i) + "</section>\n";
    }
    return html;
}

bool needsBodies(const Exercise& exercise) {
    return std::any_of(exercise.questions.begin(), exercise.questions.end(),
                       [](const Question& question) {
                           return std::holds_alternative<AskForces>(question.what) ||
                                  std::holds_alternative<AskSteps>(question.what);
                       });
}

std::string roomForWorking(const Writer& writer, const Exercise& exercise) {
    std::string html =
        "<section>\n<h2>" + escapeHtml(sayPlain(writer, phrase::kRoomForWorking)) + "</h2>\n";
    const std::vector<Sketch> stubs =
        needsBodies(exercise) ? jointStubs(writer, exercise.loads) : std::vector<Sketch>{};
    if (!stubs.empty()) {
        html += paragraphsHtml({sayPlain(writer, phrase::kCompleteBodies)});
        html += "<div class=\"stubs\">\n";
        for (std::size_t i = 0; i < stubs.size(); ++i) {
            html += "<div class=\"stub\">" +
                    paragraphsHtml({sayPlain(writer, phrase::kTheJointFirst,
                                             {{"joint", writer.truss.joints[i].label}})}) +
                    svgOf(stubs[i]) + "</div>\n";
        }
        html += "</div>\n";
    }
    return html + "<div class=\"room\"></div>\n</section>\n";
}

// How the answers are found: the forces, then what rests on them.
struct WorkingOfAnswers {
    const Writer& writer;
    const Exercise& exercise;
    const Solution& solution;
    std::vector<Passage> passages{};

    void operator()(const AskDisplacement& asked) {
        const DisplacementAxis axis =
            asked.axis == Axis::X ? DisplacementAxis::X : DisplacementAxis::Y;
        passages.push_back(unitLoadPassage(
            writer, unitLoadTable(writer.truss, exercise.loads, solution, asked.joint, axis)));
    }
    void operator()(const AskInfluence& asked) {
        const Effect effect{EffectKind::MemberForce, asked.of, {}, false};
        for (Passage& passage :
             influencePassages(writer, influenceByHand(writer.truss, asked.path, effect))) {
            passages.push_back(std::move(passage));
        }
    }
    template <class Other>
    void operator()(const Other&) {}
};

std::string workingOf(const Writer& writer, const Exercise& exercise, const Solution& solution) {
    if (!solution.solved) {
        return {};
    }
    WorkingOfAnswers working{writer, exercise, solution,
                             passagesOfForces(writer, exercise.loads, solution)};
    for (const Question& question : exercise.questions) {
        std::visit(working, question.what);
    }
    return "<h2>" + escapeHtml(sayPlain(writer, phrase::kHandoutWorking)) + "</h2>\n" +
           paragraphsHtml(workingSentences(writer, solution)) + passagesHtml(working.passages);
}

} // namespace

Outcome<std::string> handoutSheet(const Writer& writer, const Exercise& exercise,
                                  const HandoutChoices& choices) {
    const Outcome<AnswerKey> key = keyOf(writer.truss, exercise);
    if (!key) {
        return key.issues();
    }
    std::string html = "<article class=\"handout\">\n" + headOf(writer, exercise, choices) +
                       givenOf(writer, exercise);
    if (choices.kind == HandoutKind::Questions) {
        html += questionsOf({writer, exercise, nullptr, {}}) + roomForWorking(writer, exercise);
    } else {
        const Solution solution = solve(writer.truss, exercise.loads);
        html += questionsOf({writer, exercise, &key.value(), forceStyleOf(writer.truss, solution)});
        html += choices.kind == HandoutKind::Key ? workingOf(writer, exercise, solution) : "";
    }
    return html + "</article>\n";
}

std::string handoutHtml(const Writer& writer, const std::string& sheets,
                        const HandoutChoices& choices) {
    const SheetChoices sheet = sheetChoices(choices);
    const SheetStyles styles = embeddedStyles(sheet);
    return pageHtml(writer, {styles.typeface, styles.sheet + textOf(handoutStyle()),
                             pageRule(writer, sheet), sheets});
}

} // namespace gusset
