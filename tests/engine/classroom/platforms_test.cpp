#include "classroom/exercise/key.hpp"
#include "exchange/platforms/blackboard.hpp"
#include "exchange/platforms/canvas.hpp"
#include "exchange/platforms/gift.hpp"
#include "exchange/platforms/moodle.hpp"
#include "exchange/platforms/qti_package.hpp"
#include "exchange/platforms/quiz_csv.hpp"
#include "exchange/platforms/quiz_parts.hpp"
#include "exchange/platforms/zip.hpp"
#include "report/classroom/handout.hpp"
#include "report/classroom/quiz_of_exercise.hpp"
#include "support/english.hpp"
#include "support/trusses/random_truss.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <cmath>
#include <string>

using namespace gusset;
using namespace gusset::support;

namespace {

Exercise askingAllForces(const Truss& truss) {
    AskForces forces;
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        forces.members.push_back({static_cast<int>(i)});
    }
    Exercise exercise;
    exercise.questions = {{AskReactions{}, 0}, {forces, 0}};
    return exercise;
}

Quiz quizOfAll(const Truss& truss, QuizForm form) {
    Outcome<Quiz> quiz = quizOfExercise({englishPhrases(), truss}, askingAllForces(truss), form);
    REQUIRE(quiz);
    return std::move(quiz).value();
}

Quiz oneNumber(double value, double tolerance, const std::string& text) {
    return {text,
            {text},
            {},
            {{text, text, {NumberField{text, value, tolerance, "kN", 1, text, text, text}}}}};
}

std::size_t countOf(const std::string& text, const std::string& piece) {
    std::size_t count = 0;
    for (std::size_t at = text.find(piece); at != text.npos; at = text.find(piece, at + 1)) {
        ++count;
    }
    return count;
}

} // namespace

TEST_CASE("Each question of a variant says of which, where a platform shows no picture") {
    Truss truss = randomDeterminateTruss(1);
    truss.title = "Hall roof";
    Exercise exercise = askingAllForces(truss);
    exercise.variant = 3;
    const Outcome<Quiz> quiz =
        quizOfExercise({englishPhrases(), truss}, exercise, QuizForm::OneNumber);
    REQUIRE(quiz);
    const Outcome<std::string> lines = blackboardText({quiz.value()});
    REQUIRE(lines);
    CHECK(countOf(lines.value(), "Hall roof, variant 3. ") == quiz.value().items.size());
}

TEST_CASE("A quiz asks for what the engine finds, in either form, of any truss") {
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        Truss truss = randomDeterminateTruss(seed);
        addRandomLoads(truss, seed);
        const Solution solution = solve(truss);
        if (!solution.solved) {
            continue;
        }
        const double newton = toNewton(truss.units.force);
        const Quiz signedOnes = quizOfAll(truss, QuizForm::OneNumber);
        const Quiz apart = quizOfAll(truss, QuizForm::SizeAndSense);
        const std::size_t reactions = solution.reactions.size();
        REQUIRE(signedOnes.items.size() == reactions + solution.forces.size());
        REQUIRE(apart.items.size() == 2);
        REQUIRE(apart.items[1].fields.size() == 2 * solution.forces.size());
        for (std::size_t i = 0; i < solution.forces.size(); ++i) {
            const double force =
                isZero(solution, solution.forces[i]) ? 0 : solution.forces[i] / newton;
            const auto& field = std::get<NumberField>(signedOnes.items[reactions + i].fields[0]);
            const auto& size = std::get<NumberField>(apart.items[1].fields[2 * i]);
            const auto& sense = std::get<ChoiceField>(apart.items[1].fields[2 * i + 1]);
            CHECK(field.value == force);
            CHECK(size.value == std::abs(force));
            CHECK(size.tolerance == field.tolerance);
            CHECK(sense.options[sense.answer] == (force > 0 ? "T" : force < 0 ? "C" : "0"));
            CHECK(tellsSign(field) == (std::abs(force) > field.tolerance));
        }
    }
}

TEST_CASE(
    "The marks of a question are shared by its values, and a size has two thirds of its share") {
    const Truss truss = gable(); // three reactions, three members
    Exercise exercise = askingAllForces(truss);
    exercise.questions[1].marks = 6;
    const Writer writer{englishPhrases(), truss};
    const Outcome<Quiz> quiz = quizOfExercise(writer, exercise, QuizForm::SizeAndSense);
    REQUIRE(quiz);
    CHECK(std::abs(pointsOf(quiz.value().items[0]) - 3) < 1e-12); // a point each
    CHECK(std::abs(pointsOf(quiz.value().items[1]) - 6) < 1e-12);
    CHECK(std::abs(pointsOf(quiz.value().items[1].fields[0]) - 4.0 / 3) < 1e-12);
}

TEST_CASE("A sign is told apart only where the two ranges do not meet") {
    NumberField field{"", 0.5, 0.6, "", 1, "", "the other sign", ""};
    CHECK_FALSE(tellsSign(field)); // −0.1 … 1.1 and −1.1 … 0.1
    field.tolerance = 0.4;
    CHECK(tellsSign(field));
    field.sign = "";
    CHECK_FALSE(tellsSign(field));
}

TEST_CASE(
    "What ends an answer in GIFT or cloze, and what begins markup, is escaped in every text") {
    const Quiz quiz = oneNumber(-7.5, 0.05, "a~b=c#d{e}f:g\\h<i>&\n\"j\"");
    const std::string gift = giftText({quiz});
    CHECK(gift.find("::a\\~b\\=c\\#d\\{e\\}f\\:g\\\\h<i>& \"j\"::") != gift.npos);
    const std::string cloze = moodleClozeXml({quiz});
    CHECK(cloze.find("{1:NUMERICAL:=-7.5:0.05#a\\~b=c\\#d{e\\}f:g\\\\h&amp;lt;i&amp;gt;") !=
          cloze.npos);
    const Outcome<std::string> line = blackboardText({quiz});
    REQUIRE(line);
    CHECK(countOf(line.value(), "\n") == 1);
    CHECK(countOf(line.value(), "\t") == 3);
    for (const PackedFile& file : qtiPackage(QtiVersion::Three, {quiz})) {
        INFO(file.path);
        CHECK(file.bytes.find("<i>") == file.bytes.npos);
    }
}

TEST_CASE("Numbers go out with a hyphen and twelve figures") {
    CHECK(answerNumber(-7.5) == "-7.5");
    CHECK(answerNumber(-0.0) == "0");
    CHECK(answerNumber(100.0 / 3) == "33.3333333333");
}

TEST_CASE("A stored zip has the checksum, sizes and directory of the format") {
    // CRC-32 of "123456789" is cbf43926, the check value of the catalogue of CRCs.
    const std::string zip = zipOf({{"a.txt", "123456789"}});
    CHECK(zip.substr(0, 4) == "PK\x03\x04");
    CHECK(zip.substr(14, 4) == "\x26\x39\xF4\xCB");
    CHECK(zip[18] == 9); // compressed and whole
    CHECK(zip[22] == 9);
    CHECK(zip.substr(30, 14) == "a.txt123456789");
    CHECK(zip.substr(44, 4) == "PK\x01\x02");
    CHECK(zip.substr(44 + 46 + 5, 4) == "PK\x05\x06");
    CHECK(zip.size() == 30 + 14 + 46 + 5 + 22);
}

TEST_CASE("A sheet has no answers, and the key begins with them") {
    Truss truss = gable();
    const Exercise exercise = askingAllForces(truss);
    const auto sheet = [&](HandoutKind kind) {
        const Outcome<std::string> made =
            handoutSheet({englishPhrases(), truss}, exercise, {kind, SheetSize::A4, {}});
        REQUIRE(made);
        return made.value();
    };
    const std::string questions = sheet(HandoutKind::Questions);
    CHECK(questions.find("20.00") == questions.npos); // the rafters
    CHECK(questions.find("16.00") == questions.npos); // the tie
    const std::string answers = sheet(HandoutKind::Answers);
    CHECK(countOf(answers, "20.00") == 2);
    CHECK(countOf(answers, "16.00") == 1);
    CHECK(countOf(answers, "\u2612") == 6);
    CHECK(sheet(HandoutKind::Key).find(answers.substr(0, answers.rfind("</article>"))) == 0);
}
