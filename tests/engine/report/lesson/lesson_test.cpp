// What a lesson shows and says, stroke by stroke.

#include "report/lesson/captions.hpp"
#include "report/lesson/shown.hpp"
#include "report/lesson/slides.hpp"
#include "report/lesson/spoken_sum.hpp"

#include "report/derivation/working_text.hpp"
#include "support/english.hpp"
#include "support/reading/mock_language.hpp"
#include "support/trusses/example_trusses.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>
#include <cctype>
#include <set>
#include <string>

using namespace gusset;
using namespace gusset::support;

namespace {

LessonShown lessonOfAll(const Truss& truss) {
    const Outcome<LessonShown> lesson =
        lessonFor(englishPhrases(), truss, {}, solve(truss, {}), LessonItem{});
    REQUIRE(lesson);
    return lesson.value();
}

const LessonStep& stepNamed(const LessonShown& lesson, const std::string& subject) {
    const auto found =
        std::find_if(lesson.steps.begin(), lesson.steps.end(),
                     [&](const LessonStep& step) { return step.subject == subject; });
    REQUIRE(found != lesson.steps.end());
    return *found;
}

// The numbers in a text, without signs.
std::multiset<std::string> numbersIn(const std::string& text) {
    std::multiset<std::string> numbers;
    for (std::size_t at = 0; at < text.size();) {
        std::size_t end = at;
        while (end < text.size() &&
               (std::isdigit(static_cast<unsigned char>(text[end])) != 0 ||
                (end > at && text[end] == '.' && end + 1 < text.size() &&
                 std::isdigit(static_cast<unsigned char>(text[end + 1])) != 0))) {
            ++end;
        }
        if (end > at) {
            numbers.insert(text.substr(at, end - at));
        }
        at = std::max(end, at + 1);
    }
    return numbers;
}

std::string linesOf(const LessonStep& step) {
    std::string text;
    for (const WorkingLine& line : step.lines) {
        text += plainText(line.runs) + "\n";
    }
    return text;
}

std::string saidIn(const LessonStep& step) {
    std::string text;
    for (const Stroke& stroke : step.strokes) {
        text += stroke.spoken + "\n";
    }
    return text;
}

} // namespace

// A gable 8 m wide and 3 m high with 24 kN at its top: reactions 12 kN each, from moments about A
// 24 · 4 = 8 B_y.
TEST_CASE("moments are said term by term, with the arm and which way each force turns") {
    Truss truss = gable();
    truss.joints[jointAt(truss, "C")].at.x = 3; // no symmetry: moments about A
    const LessonShown lesson = lessonOfAll(truss);
    const LessonStep& step = stepNamed(lesson, "moment A moments");
    const std::string said = saidIn(step);
    INFO(said);
    CHECK(said.find("B y, 8 metres away, turns anticlockwise: plus.") != std::string::npos);
    CHECK(said.find("P C, 3 metres away, turns clockwise: minus.") != std::string::npos);
    CHECK(said.find("9.00 kilonewtons up") != std::string::npos); // 24 · 3 / 8
}

TEST_CASE(
    "an equation and its answer are strokes of their own, and the truss shows the answer with "
    "the last one") {
    for (const Truss& truss : exampleTrusses()) {
        const LessonShown lesson = lessonOfAll(truss);
        for (const LessonStep& step : lesson.steps) {
            if (!step.step || lesson.working.steps[*step.step].kind != StepKind::JointEquation) {
                continue;
            }
            INFO(truss.title << ": " << step.subject);
            REQUIRE(step.strokes.size() >= 2);
            const Stroke& last = step.strokes.back();
            CHECK(last.told.size() == lesson.working.steps[*step.step].found.size());
            CHECK(step.strokes.front().told.empty());
        }
    }
}

TEST_CASE("what is said holds every number of what is shown") {
    for (const Truss& truss : exampleTrusses()) {
        const LessonShown lesson = lessonOfAll(truss);
        for (const LessonStep& step : lesson.steps) {
            const std::multiset<std::string> shown = numbersIn(linesOf(step));
            const std::multiset<std::string> said = numbersIn(saidIn(step));
            INFO(truss.title << ": " << step.subject << "\n" << linesOf(step) << saidIn(step));
            CHECK(std::includes(said.begin(), said.end(), shown.begin(), shown.end()));
        }
    }
}

TEST_CASE("a step keeps its subject when a joint is moved") {
    Truss truss = gable();
    const LessonShown before = lessonOfAll(truss);
    truss.joints[jointAt(truss, "C")].at.y += 0.5;
    const LessonShown after = lessonOfAll(truss);
    REQUIRE(before.steps.size() == after.steps.size());
    for (std::size_t i = 0; i < before.steps.size(); ++i) {
        CHECK(before.steps[i].subject == after.steps[i].subject);
    }
}

TEST_CASE("no two steps of a lesson have the same subject") {
    for (const Truss& truss : exampleTrusses()) {
        std::set<std::string> subjects;
        for (const LessonStep& step : lessonOfAll(truss).steps) {
            INFO(truss.title << ": " << step.subject);
            CHECK(subjects.insert(step.subject).second);
        }
    }
}

TEST_CASE("a step that is left out keeps what it found for those after it") {
    const Truss truss = gable();
    LessonItem item;
    item.without = {"count", "slopes"};
    const Outcome<LessonShown> lesson =
        lessonFor(englishPhrases(), truss, {}, solve(truss, {}), item);
    REQUIRE(lesson);
    const LessonShown whole = lessonOfAll(truss);
    CHECK(lesson.value().steps.size() == whole.steps.size() - 2);
    const std::size_t last = lesson.value().steps.size() - 1;
    const Sketch short_ = stageOf(englishPhrases(), lesson.value(), {last, 0}, {1366, 768}).sketch;
    const Sketch full =
        stageOf(englishPhrases(), whole, {whole.steps.size() - 1, 0}, {1366, 768}).sketch;
    CHECK(short_.words.size() == full.words.size());
}

TEST_CASE("values are on the truss only once they are found, and never if they are hidden") {
    const Truss truss = gable();
    const LessonShown lesson = lessonOfAll(truss);
    const auto wordsAt = [&](std::size_t step, bool hides) {
        std::string words;
        const StagePlace place{step, lesson.steps[step].strokes.size() - 1, hides};
        for (const SketchWords& each :
             stageOf(englishPhrases(), lesson, place, {1366, 768}).sketch.words) {
            words += plainText(each.words) + "|";
        }
        return words;
    };
    const std::size_t last = lesson.steps.size() - 1;
    // 24 kN over two rafters of slope 3 in 4: 20 kN each; the tie 16 kN (see small_truss.hpp).
    CHECK(wordsAt(last, false).find("20.00 C") != std::string::npos);
    CHECK(wordsAt(last, false).find("16.00 T") != std::string::npos);
    CHECK(wordsAt(last, true).find("20.00") == std::string::npos);
    CHECK(wordsAt(0, false).find("20.00") == std::string::npos);
}

TEST_CASE("a force polygon grows line by line, and ends complete") {
    const Truss truss = gable();
    LessonItem item;
    item.shown = ShowPolygon{};
    const Outcome<LessonShown> lesson =
        lessonFor(englishPhrases(), truss, {}, solve(truss, {}), item);
    REQUIRE(lesson);
    REQUIRE(lesson.value().polygon);
    const LessonStep& step = lesson.value().steps.front();
    std::size_t drawn = 0;
    for (const Stroke& stroke : step.strokes) {
        REQUIRE(stroke.drawn);
        CHECK(*stroke.drawn == drawn + 1);
        drawn = *stroke.drawn;
        CHECK(!stroke.spoken.empty());
    }
    CHECK(drawn == lesson.value().polygon->lines.size());
}

// By similar triangles the reaction at A under a load of 1 at a third of the span is 2/3.
TEST_CASE("an influence line is traced ordinate by ordinate") {
    Truss truss;
    joint(truss, "A", 0, 0);
    joint(truss, "B", 3, 0);
    joint(truss, "C", 9, 0);
    joint(truss, "D", 3, 2);
    members(truss, {"AB", "BC", "AD", "BD", "DC"});
    pin(truss, "A");
    roller(truss, "C");
    ShowInfluence shown;
    shown.effect.kind = EffectKind::Reaction;
    shown.effect.joint = {0};
    shown.path = {{0}, {1}, {2}};
    const Outcome<LessonShown> lesson =
        lessonFor(englishPhrases(), truss, {}, solve(truss, {}), {shown, {}, {}});
    REQUIRE(lesson);
    const LessonStep& traced = lesson.value().steps.back();
    REQUIRE(traced.strokes.size() == 3);
    INFO(saidIn(traced));
    CHECK(traced.strokes[1].spoken.find("With the load at B: 0.67") == 0);
    for (std::size_t i = 0; i < 3; ++i) {
        CHECK(traced.strokes[i].traced == i + 1);
    }
}

TEST_CASE("a truss that moves is shown moving, to one side and to the other") {
    Truss truss;
    joint(truss, "A", 0, 0);
    joint(truss, "B", 4, 0);
    joint(truss, "C", 4, 3);
    joint(truss, "D", 0, 3);
    members(truss, {"AB", "BC", "CD", "DA"});
    pin(truss, "A");
    pin(truss, "B");
    force(truss, "D", 10, 0);
    const LessonShown lesson = lessonOfAll(truss);
    const LessonStep& step = lesson.steps.back();
    REQUIRE(step.moves);
    CHECK(!step.strokes.front().spoken.empty());
    const auto widthAt = [&](double phase) {
        const StagePlace place{lesson.steps.size() - 1, 0, false, phase};
        double left = 1e9;
        for (const SketchLine& line :
             stageOf(englishPhrases(), lesson, place, {1366, 768}).sketch.lines) {
            left = line.ink == SketchInk::Accent ? std::min({left, line.a.x, line.b.x}) : left;
        }
        return left;
    };
    CHECK(widthAt(0.25) != widthAt(0.75));
}

// Times by hand: "one two three" is 1.5 s to look and 3 words at 2.5 a second, 2.7 s.
TEST_CASE("captions and chapters follow WebVTT, at the times at which they were shown") {
    CHECK(secondsFor("one two three") == 1.5 + 3 / 2.5);
    const std::vector<Caption> captions{{0, 2.7, "one two three", "Joint <A>"},
                                        {2.7, 3661.25, "four --> five & six", ""}};
    CHECK(captionsVtt(captions) == "WEBVTT\n"
                                   "\n00:00:00.000 --> 00:00:02.700\none two three\n"
                                   "\n00:00:02.700 --> 01:01:01.250\nfour --&gt; five &amp; six\n");
    CHECK(chaptersVtt(captions) == "WEBVTT\n\n00:00:00.000 --> 01:01:01.250\nJoint &lt;A&gt;\n");
    CHECK(chapterList(captions) == "0:00 Joint <A>\n");
    CHECK(transcript(captions) == "Joint <A>\n\none two three four --> five & six\n");
}

TEST_CASE("a long caption is divided into pieces of two lines, which take its time together") {
    std::string says;
    for (int i = 0; i < 60; ++i) {
        says += (i > 0 ? " " : "") + std::string("word");
    }
    const std::string vtt = captionsVtt({{10, 40, says, ""}});
    std::size_t cues = 0;
    for (std::size_t at = vtt.find("-->"); at != std::string::npos; at = vtt.find("-->", at + 1)) {
        ++cues;
    }
    CHECK(cues == 4); // 299 characters in pieces of at most 84
    CHECK(vtt.find("\n00:00:10.000 --> ") != std::string::npos);
    CHECK(vtt.find("--> 00:00:40.000\n") != std::string::npos);
}

TEST_CASE("a cut that can't be used is refused beside the truss, on every slide") {
    const Truss truss = gable();
    LessonItem item;
    item.shown = ShowCut{{MemberId{0}}}; // the tie alone: the truss stays in one piece
    const Outcome<LessonShown> lesson =
        lessonFor(englishPhrases(), truss, {}, solve(truss, {}), item);
    REQUIRE(lesson);
    const std::vector<Slide> slides = slidesOf(englishPhrases(), {lesson.value()}, {});
    REQUIRE(slides.size() == 1);
    CHECK(slides.front().says.find("two parts") != std::string::npos);
    CHECK(slides.front().picture.lines.size() >= truss.members.size());
}

TEST_CASE("slides: one for each stroke, or one for each step as it ends") {
    const Truss truss = gable();
    const std::vector<LessonShown> lessons{lessonOfAll(truss)};
    std::size_t strokes = 0;
    for (const LessonStep& step : lessons.front().steps) {
        strokes += step.strokes.size();
    }
    CHECK(slidesOf(englishPhrases(), lessons, {}).size() == strokes);
    SlideChoices byStep;
    byStep.byStep = true;
    byStep.narrow = true;
    const std::vector<Slide> slides = slidesOf(englishPhrases(), lessons, byStep);
    CHECK(slides.size() == lessons.front().steps.size());
    CHECK(slides.front().picture.width == 1200);
    CHECK(slides.front().picture.height == 900);
}

TEST_CASE("in a language made up for it, a lesson says no English word") {
    for (const Truss& truss : {gable(), struttedRoof()}) {
        const Outcome<LessonShown> lesson =
            lessonFor(mockPhrases(), truss, {}, solve(truss, {}), LessonItem{});
        REQUIRE(lesson);
        for (const LessonStep& step : lesson.value().steps) {
            INFO(step.subject << ": " << saidIn(step));
            CHECK(foreignWords(saidIn(step), truss) == std::vector<std::string>{});
        }
    }
}
