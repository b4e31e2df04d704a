// What a lesson says holds the numbers that it shows, whatever the class writes: parsed back from
// both.

#include "report/derivation/force_method_text.hpp"
#include "report/derivation/influence_by_hand_text.hpp"
#include "report/derivation/unit_load_text.hpp"
#include "report/derivation/working_text.hpp"
#include "report/lesson/shown.hpp"
#include "report/lesson/stage.hpp"
#include "support/english.hpp"
#include "support/trusses/example_trusses.hpp"
#include "support/trusses/worked_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>
#include <cctype>
#include <cmath>
#include <set>
#include <string>
#include <vector>

using namespace gusset;
using namespace gusset::support;

namespace {

using Numbers = std::multiset<std::string>;

bool isDigitAt(const std::string& text, std::size_t at) {
    return at < text.size() && std::isdigit(static_cast<unsigned char>(text[at])) != 0;
}

// Whether "minus" stands before this place, as a sign or as a word.
bool isNegative(const std::string& text, std::size_t at) {
    for (const std::string before :
         {"\u2212", "\u2212 ", "minus ", "Minus ", "negative ", "Negative "}) {
        if (at >= before.size() && text.compare(at - before.size(), before.size(), before) == 0) {
            return true;
        }
    }
    return false;
}

// "-3/4" is −3 and 4, "F12" no number at all: digits within a name are not read.
Numbers signedNumbers(const std::string& text, char decimalSign) {
    Numbers numbers;
    for (std::size_t at = 0; at < text.size();) {
        std::size_t end = at;
        while (isDigitAt(text, end) ||
               (end > at && text[end] == decimalSign && isDigitAt(text, end + 1))) {
            ++end;
        }
        const bool isInName = at > 0 && std::isalpha(static_cast<unsigned char>(text[at - 1])) != 0;
        if (end > at && !isInName) {
            numbers.insert((isNegative(text, at) ? "-" : "") + text.substr(at, end - at));
        }
        at = std::max(end, at + 1);
    }
    return numbers;
}

std::string saidBy(const LessonStep& step) {
    std::string text;
    for (const Stroke& stroke : step.strokes) {
        text += stroke.spoken + "\n";
    }
    return text;
}

std::string shownBy(const LessonStep& step) {
    std::string text;
    for (const WorkingLine& line : step.lines) {
        text += plainText(line.runs) + "\n";
    }
    return text;
}

std::string firstMissing(const Numbers& from, const Numbers& in) {
    for (const std::string& number : from) {
        if (in.count(number) < from.count(number)) {
            return number;
        }
    }
    return {};
}

std::string firstStrange(const Numbers& said, const Numbers& printed) {
    for (const std::string& number : said) {
        if (printed.count(number) == 0) {
            return number;
        }
    }
    return {};
}

std::vector<Passage> passagesOf(const Truss& truss, const Solution& solution,
                                const LessonItem& item, const LessonShown& lesson) {
    const Writer writer{englishPhrases(), truss};
    if (const auto* shown = std::get_if<ShowDisplacement>(&item.shown)) {
        return {unitLoadPassage(
            writer, unitLoadTable(truss, {}, solution, shown->joint,
                                  shown->horizontal ? DisplacementAxis::X : DisplacementAxis::Y))};
    }
    if (lesson.traced) {
        return influencePassages({englishPhrases(), lesson.truss}, *lesson.traced);
    }
    return lesson.steps.front().step
               ? workingPassages(writer, lesson.working)
               : forceMethodPassages(writer, forceMethod(truss, {}, solution));
}

// What is written in the drawings of a step.
std::string drawnBy(const LessonShown& lesson, std::size_t step) {
    std::string text;
    for (std::size_t k = 0; k < lesson.steps[step].strokes.size(); ++k) {
        const Sketch sketch = stageOf(englishPhrases(), lesson, {step, k}, {1600, 900}).sketch;
        for (const SketchWords& words : sketch.words) {
            text += plainText(words.words) + "\n";
        }
    }
    return text;
}

// That each step says every number that it shows, and no number that is not printed. Those that are
// printed but stand in tables are shown, not read out.
void examineNumbers(const Truss& truss, const LessonItem& item) {
    const Solution solution = solve(truss, {});
    const Outcome<LessonShown> made = lessonFor(englishPhrases(), truss, {}, solution, item);
    REQUIRE(made);
    const LessonShown& lesson = made.value();
    const std::vector<Passage> passages = passagesOf(truss, solution, item, lesson);
    const char sign = truss.classSettings.decimalSign;
    for (std::size_t i = 0; i < lesson.steps.size(); ++i) {
        const LessonStep& step = lesson.steps[i];
        const std::string printed = step.step ? passagesText({passages[*step.step]})
                                              : passagesText(passages) + drawnBy(lesson, i);
        const Numbers said = signedNumbers(saidBy(step), sign);
        INFO(truss.title << ": " << step.subject << "\n" << printed << "\n" << saidBy(step));
        CHECK(firstMissing(signedNumbers(shownBy(step), sign), said) == "");
        CHECK(firstStrange(said, signedNumbers(printed, sign)) == "");
    }
}

struct Manner {
    ClassSettings settings;
    ForceUnit force = ForceUnit::kN;
    LengthUnit length = LengthUnit::m;
};

// All values of every setting occur.
std::vector<Manner> manners() {
    std::vector<Manner> all(6);
    all[1].settings.decimalSign = ',';
    all[1].settings.moments = MomentSense::Clockwise;
    all[1].settings.angles = AngleStyle::Cosines;
    all[1].force = ForceUnit::N;
    all[1].length = LengthUnit::mm;
    all[2].settings.angles = AngleStyle::Slopes;
    all[2].settings.symbols = SymbolStyle::AB;
    all[2].settings.form = NumberForm::Significant;
    all[2].settings.digits = 4;
    all[2].force = ForceUnit::kip;
    all[2].length = LengthUnit::ft;
    all[3].settings.form = NumberForm::Exact;
    all[3].settings.axes = AxisNames::HV;
    all[3].force = ForceUnit::Plain;
    all[3].length = LengthUnit::Plain;
    all[4].settings.symbols = SymbolStyle::S1;
    all[4].settings.senses = AssumedSense::Guessed;
    all[4].settings.carry = CarriedValues::Rounded;
    all[4].settings.decimalSign = ',';
    all[4].force = ForceUnit::lbf;
    all[4].length = LengthUnit::in;
    all[5].settings.equations = EquationLines::NumbersOnly;
    all[5].settings.digits = 0;
    all[5].force = ForceUnit::MN;
    all[5].length = LengthUnit::cm;
    return all;
}

Truss written(Truss truss, const Manner& manner) {
    truss.classSettings = manner.settings;
    truss.units.force = manner.force;
    truss.units.length = manner.length;
    return truss;
}

std::vector<MemberId> membersAt(const Truss& truss, JointId joint) {
    std::vector<MemberId> members;
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        if (truss.members[i].a == joint || truss.members[i].b == joint) {
            members.push_back(MemberId{static_cast<int>(i)});
        }
    }
    return members;
}

} // namespace

TEST_CASE("in every example and every manner of writing, what is said holds the numbers shown and "
          "no other") {
    for (const Manner& manner : manners()) {
        for (const Truss& example : exampleTrusses()) {
            const Truss truss = written(example, manner);
            const MemberId middle{static_cast<int>(truss.members.size() / 2)};
            examineNumbers(truss, {});
            examineNumbers(truss, {ShowMember{middle}, {}, {}});
            examineNumbers(truss, {ShowCut{membersAt(truss, JointId{2})}, {}, {}});
        }
    }
}

TEST_CASE("so do the force method, unit loads and influence lines") {
    for (const Manner& manner : manners()) {
        for (const WorkedTruss& redundant : redundantTrusses()) {
            const Truss truss = written(redundant.truss, manner);
            examineNumbers(truss, {ShowForceMethod{}, {}, {}});
            examineNumbers(truss, {ShowDisplacement{JointId{1}, false}, {}, {}});
        }
        for (const InfluenceTruss& line : influenceTrusses()) {
            examineNumbers(written(line.truss, manner),
                           {ShowInfluence{line.effect, line.path}, {}, {}});
        }
    }
}

namespace {

// How the loads at a joint turn about a point: positive anticlockwise. `axis`: 0 horizontal.
double turnOf(const Truss& truss, JointId joint, int axis, Vec2 about) {
    Vec2 force{};
    for (const Load& load : truss.loads) {
        const auto* at = std::get_if<JointForce>(&load.what);
        force = at && at->joint == joint ? force + Vec2{at->fx, at->fy} : force;
    }
    const Vec2 part = axis == 0 ? Vec2{force.x, 0} : Vec2{0, force.y};
    return cross(truss.joints[joint.at()].at - about, part);
}

// For each load in a sum of moments with a whole number as its arm, the words for how it turns.
long examineTurns(const LessonShown& lesson, const LessonStep& step) {
    long examined = 0;
    for (const Equation& equation : lesson.working.steps[*step.step].equations) {
        for (const Term& term : equation.terms) {
            const bool isLoad =
                equation.kind == EquationKind::SumMoments && term.factors.size() == 2 &&
                term.factors[0].kind == FactorKind::Load && term.factors[1].kind == FactorKind::Arm;
            const double arm = isLoad ? term.factors[1].value : 0.5;
            if (arm != std::floor(arm)) {
                continue;
            }
            const Symbol& symbol = term.factors[0].symbol;
            const double turn = turnOf(lesson.truss, symbol.joint, symbol.index, equation.point);
            const std::string words = std::to_string(static_cast<int>(arm)) +
                                      (turn > 0 ? " metres away, turns anticlockwise: "
                                                : " metres away, turns clockwise: ") +
                                      (term.sign > 0 ? "plus." : "minus.");
            INFO(lesson.truss.title << ": " << step.subject << ": " << words << "\n"
                                    << saidBy(step));
            CHECK(saidBy(step).find(words) != std::string::npos);
            ++examined;
        }
    }
    return examined;
}

} // namespace

TEST_CASE("which way a load is said to turn is the way it turns, by the model alone") {
    long examined = 0;
    for (const MomentSense sense : {MomentSense::Anticlockwise, MomentSense::Clockwise}) {
        for (Truss truss : exampleTrusses()) {
            truss.classSettings.moments = sense;
            truss.units.length = LengthUnit::m;
            const bool onJoints =
                std::all_of(truss.loads.begin(), truss.loads.end(), [](const Load& load) {
                    return std::holds_alternative<JointForce>(load.what);
                });
            const Outcome<LessonShown> lesson =
                lessonFor(englishPhrases(), truss, {}, solve(truss, {}), {});
            REQUIRE(lesson);
            for (const LessonStep& step : lesson.value().steps) {
                examined += onJoints && step.step && step.strokes.size() > 1
                                ? examineTurns(lesson.value(), step)
                                : 0;
            }
        }
    }
    CHECK(examined >= 20);
}
