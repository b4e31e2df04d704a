#include "report/classroom/quiz_of_exercise.hpp"

#include "classroom/exercise/key.hpp"
#include "phrases/classroom/quiz.hpp"
#include "phrases/faults/platforms.hpp"
#include "report/classroom/question_figure.hpp"
#include "report/classroom/question_text.hpp"
#include "report/formula/notation.hpp"
#include "report/paper/page_html.hpp"
#include "report/sheet/sheet_choices.hpp"
#include "report/sketch/sketch_svg.hpp"

#include <cmath>

namespace gusset {

namespace {

// One force or reaction, in the words of its kind.
struct AskedValue {
    double value = 0;
    std::string name, text;                   // as a question of its own
    std::string sizeLabel, senseLabel;        // as two fields
    std::string plus, minus;                  // options for its direction
    std::string otherSign, wrong, wrongSense; // feedback
};

std::size_t optionOf(double value) { return value > 0 ? 0 : value < 0 ? 1 : 2; }

class QuizMaker {
public:
    QuizMaker(const Writer& writer, const Exercise& exercise, const AnswerKey& key, QuizForm form)
        : writer_(writer), exercise_(exercise), key_(key), form_(form) {
        structure_.structure = structureOf(writer.truss);
    }

    Outcome<Quiz> make() {
        for (at_ = 0; at_ < exercise_.questions.size(); ++at_) {
            std::visit([&](const auto& asked) { add(asked); }, exercise_.questions[at_].what);
        }
        if (quiz_.items.empty()) {
            return Issue{IssueCode::Missing, "exercise.ask", phrase::kNothingForPlatforms};
        }
        quiz_.title = title();
        introduce();
        draw();
        return std::move(quiz_);
    }

private:
    std::string title() const {
        const std::string title = titleOf(writer_);
        return exercise_.variant == 0 ? title
                                      : sayPlain(writer_, phrase::kTitleOfVariant,
                                                 {{"title", title}, {"number", exercise_.variant}});
    }

    void introduce() {
        if (exercise_.variant != 0) { // not every platform shows a picture or the title of a quiz
            quiz_.introduction.push_back(
                sayPlain(writer_, phrase::kThisVariant,
                         {{"title", titleOf(writer_)}, {"number", exercise_.variant}}));
        }
        if (!exercise_.text.empty()) {
            quiz_.introduction.push_back(exercise_.text);
        }
        if (!choiceName(exercise_.loads).empty()) {
            quiz_.introduction.push_back(sayPlain(
                writer_, phrase::kLoadsOfQuiz, {{"loads", loadsName(writer_, exercise_.loads)}}));
        }
        const Tolerance& tolerance = exercise_.tolerance;
        quiz_.introduction.push_back(
            tolerance.figures == 0
                ? sayPlain(writer_, phrase::kRightWithin,
                           {{"percent", significantNumber(tolerance.percent, 6)}})
                : sayPlain(writer_, phrase::kRightToFigures, {{"figures", tolerance.figures}}));
    }

    void draw() {
        const std::optional<Sketch> figure =
            questionFigure(writer_, exercise_.loads, exercise_.questions);
        if (figure) {
            quiz_.picture = {svgOf(*figure),
                             {},
                             figure->says.empty() ? sayPlain(writer_, phrase::kPictureOfTruss)
                                                  : figure->says,
                             static_cast<int>(std::lround(figure->width)),
                             static_cast<int>(std::lround(figure->height))};
        }
    }

    std::string forceUnit() const { return symbolOf(writer_.truss.units.force); }

    std::string withUnitAsked(const std::string& question, const std::string& unit) const {
        return unit.empty()
                   ? question
                   : question + " " + sayPlain(writer_, phrase::kGiveItIn, {{"unit", unit}});
    }

    double pointsEach(std::size_t parts) const {
        const double marks = exercise_.questions[at_].marks;
        return marks == 0 ? 1 : marks / static_cast<double>(parts);
    }

    double allowed(double value, double largest) const {
        return allowance(exercise_.tolerance, value, largest);
    }

    std::string right() const { return sayPlain(writer_, phrase::kAnswerRight); }

    AskedValue forceAsked(MemberId id) const {
        const std::string member = memberName(writer_.truss, id);
        return {key_.forces[id.at()],
                sayPlain(writer_, phrase::kNameForce, {{"member", member}}),
                sayPlain(writer_, phrase::kFindForce, {{"member", member}}),
                sayPlain(writer_, phrase::kFieldSize, {{"name", member}}),
                sayPlain(writer_, phrase::kFieldSense, {{"member", member}}),
                "T",
                "C",
                sayPlain(writer_, phrase::kAnswerOtherSense),
                sayPlain(writer_, phrase::kAnswerWrongForce, {{"member", member}}),
                sayPlain(writer_, phrase::kAnswerWrongSense)};
    }

    AskedValue reactionAsked(std::size_t index) const {
        const Restraint& restraint = structure_.structure.restraints[index];
        Symbol symbol;
        symbol.kind = SymbolKind::Reaction;
        symbol.restraint = {static_cast<int>(index)};
        symbol.joint = restraint.joint;
        const std::string name = plainText(symbolRuns(notationOf(writer_, structure_), symbol));
        const std::string wrong = sayPlain(writer_, phrase::kAnswerWrongReaction);
        return {
            key_.reactions[index],
            sayPlain(writer_, phrase::kNameReaction, {{"reaction", name}}),
            sayPlain(writer_, phrase::kFindReaction,
                     {{"reaction", name}, {"direction", directionWord(writer_, restraint.along)}}),
            sayPlain(writer_, phrase::kFieldReactionSize, {{"name", name}}),
            sayPlain(writer_, phrase::kFieldDirection, {{"reaction", name}}),
            directionArrow(restraint.along),
            directionArrow(-1.0 * restraint.along),
            sayPlain(writer_, phrase::kAnswerOtherDirection),
            wrong,
            wrong};
    }

    // As one question, or as a question each.
    void addValues(const std::vector<AskedValue>& values, Phrase<> name) {
        QuizItem whole{
            sayPlain(writer_, name), questionText(writer_, exercise_.questions[at_]), {}};
        for (const AskedValue& asked : values) {
            const double points = pointsEach(values.size());
            const double tolerance = allowed(asked.value, key_.largest);
            if (form_ == QuizForm::OneNumber) {
                quiz_.items.push_back(
                    {asked.name,
                     withUnitAsked(asked.text, forceUnit()),
                     {NumberField{answerLabel(), asked.value, tolerance, forceUnit(), points,
                                  right(), asked.otherSign, asked.wrong}}});
                continue;
            }
            whole.fields.push_back(NumberField{asked.sizeLabel, std::abs(asked.value), tolerance,
                                               forceUnit(), points * 2 / 3, right(), "",
                                               asked.wrong});
            whole.fields.push_back(ChoiceField{asked.senseLabel,
                                               {asked.plus, asked.minus, "0"},
                                               optionOf(asked.value),
                                               points / 3,
                                               right(),
                                               asked.wrongSense});
        }
        if (form_ == QuizForm::SizeAndSense) {
            quiz_.items.push_back(std::move(whole));
        }
    }

    void add(const AskReactions&) {
        std::vector<AskedValue> values;
        for (std::size_t i = 0; i < key_.reactions.size(); ++i) {
            values.push_back(reactionAsked(i));
        }
        addValues(values, phrase::kNameReactions);
    }

    void add(const AskForces& asked) {
        std::vector<AskedValue> values;
        for (const MemberId member : asked.members) {
            values.push_back(forceAsked(member));
        }
        addValues(values, phrase::kNameForces);
    }

    void add(const AskZeroMembers&) {
        QuizItem whole{sayPlain(writer_, phrase::kNameZeroMembers),
                       questionText(writer_, exercise_.questions[at_]),
                       {}};
        for (std::size_t i = 0; i < key_.forces.size(); ++i) {
            const std::string member = memberName(writer_.truss, {static_cast<int>(i)});
            const ChoiceField field{
                sayPlain(writer_, phrase::kFieldMember, {{"member", member}}),
                {sayPlain(writer_, phrase::kOptionCarries), sayPlain(writer_, phrase::kOptionZero)},
                key_.forces[i] == 0 ? 1U : 0U,
                pointsEach(key_.forces.size()),
                right(),
                sayPlain(writer_, phrase::kAnswerWrong)};
            if (form_ == QuizForm::SizeAndSense) {
                whole.fields.push_back(field);
            } else {
                quiz_.items.push_back(
                    {sayPlain(writer_, phrase::kNameZero, {{"member", member}}),
                     sayPlain(writer_, phrase::kCarriesForce, {{"member", member}}),
                     {field}});
            }
        }
        if (form_ == QuizForm::SizeAndSense) {
            quiz_.items.push_back(std::move(whole));
        }
    }

    std::string answerLabel() const { return sayPlain(writer_, phrase::kFieldAnswer); }

    // A question that is one number anyway.
    void addNumber(const std::string& name, const std::string& unit, double value,
                   double tolerance) {
        quiz_.items.push_back({name,
                               withUnitAsked(questionText(writer_, exercise_.questions[at_]), unit),
                               {NumberField{answerLabel(), value, tolerance, unit, pointsEach(1),
                                            right(), sayPlain(writer_, phrase::kAnswerOtherSign),
                                            sayPlain(writer_, phrase::kAnswerWrong)}}});
    }

    void add(const AskDeterminacy&) {
        addNumber(sayPlain(writer_, phrase::kNameDegree), "", key_.degree, 0);
    }
    void add(const AskDisplacement& asked) {
        const double value = *key_.values[at_];
        addNumber(sayPlain(writer_, phrase::kNameDisplacement,
                           {{"joint", writer_.truss.joints[asked.joint.at()].label}}),
                  symbolOf(writer_.truss.units.displacement), value,
                  allowed(value, std::abs(value)));
    }
    void add(const AskInfluence& asked) {
        const double value = *key_.values[at_];
        addNumber(sayPlain(writer_, phrase::kNameOrdinate,
                           {{"member", memberName(writer_.truss, asked.of)}}),
                  "", value, allowed(value, std::abs(value)));
    }
    void add(const AskSteps&) {}

    const Writer& writer_;
    const Exercise& exercise_;
    const AnswerKey& key_;
    QuizForm form_;
    Working structure_; // nothing but the structure, for the names of reactions
    Quiz quiz_;
    std::size_t at_ = 0; // the question
};

} // namespace

Outcome<Quiz> quizOfExercise(const Writer& writer, const Exercise& exercise, QuizForm form) {
    const Outcome<AnswerKey> key = keyOf(writer.truss, exercise);
    if (!key) {
        return key.issues();
    }
    return QuizMaker(writer, exercise, key.value(), form).make();
}

} // namespace gusset
