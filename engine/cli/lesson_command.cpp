#include "cli/lesson_command.hpp"

#include "cli/names.hpp"
#include "cli/verdicts.hpp"
#include "exchange/lessons/lesson_file.hpp"
#include "report/lesson/captions.hpp"
#include "report/lesson/shown.hpp"
#include "report/lesson/slides.hpp"
#include "report/sketch/sketch_svg.hpp"

#include <algorithm>
#include <array>

namespace gusset::cli {

namespace {

Outcome<Shown> influenceNamed(const Arguments& arguments, const Truss& truss) {
    if (!arguments.has("--path")) {
        return Issue{IssueCode::Missing, "--influence", "needs the path of the load: --path A,B,C"};
    }
    const Outcome<std::vector<JointId>> path = pathNamed(truss, arguments.valueOf("--path"));
    if (!path) {
        return path.issues();
    }
    const Outcome<Effect> effect = effectNamed(truss, arguments.valueOf("--influence"));
    if (!effect) {
        return effect.issues();
    }
    return Shown(ShowInfluence{effect.value(), path.value()});
}

Outcome<Shown> shownNamed(const Arguments& arguments, const Truss& truss) {
    if (arguments.has("--member")) {
        const Outcome<MemberId> member = memberNamed(truss, arguments.valueOf("--member"));
        return member ? Outcome<Shown>(ShowMember{member.value()}) : member.issues();
    }
    if (arguments.has("--section")) {
        const auto cut = membersNamed(truss, arguments.valueOf("--section"));
        return cut ? Outcome<Shown>(ShowCut{cut.value()}) : cut.issues();
    }
    if (arguments.has("--displacement")) {
        const auto asked = jointAxisNamed(truss, arguments.valueOf("--displacement"));
        return asked ? Outcome<Shown>(ShowDisplacement{asked.value().joint,
                                                       asked.value().axis == DisplacementAxis::X})
                     : asked.issues();
    }
    if (arguments.has("--influence")) {
        return influenceNamed(arguments, truss);
    }
    return arguments.has("--polygon") ? Shown(ShowPolygon{}) : Shown(ShowForceMethod{});
}

// What is named, or else the model's own plan.
Outcome<LessonPlan> planOf(const Arguments& arguments, const Truss& truss) {
    constexpr std::array kNames{"--member",    "--section", "--displacement",
                                "--influence", "--polygon", "--force-method"};
    if (std::none_of(kNames.begin(), kNames.end(),
                     [&](const char* name) { return arguments.has(name); })) {
        return readLesson(truss);
    }
    Outcome<Shown> shown = shownNamed(arguments, truss);
    if (!shown) {
        return shown.issues();
    }
    return LessonPlan{{{std::move(shown).value(), {}, {}}}};
}

Outcome<SlideChoices> slideChoicesOf(const Arguments& arguments) {
    SlideChoices choices;
    choices.byStep = arguments.has("--by-step");
    choices.withWords = arguments.has("--with-words");
    choices.hidesValues = arguments.has("--hide-values");
    const std::string shape = arguments.valueOf("--shape");
    if (!shape.empty() && shape != "16:9" && shape != "4:3") {
        return Issue{IssueCode::UnknownName, "--shape", "is 16:9 or 4:3"};
    }
    if (arguments.has("--loop") && !arguments.has("--animate")) {
        return Issue{IssueCode::Missing, "--loop", "goes with --animate"};
    }
    choices.narrow = shape == "4:3";
    return choices;
}

std::vector<NamedFile> picturesOf(const std::vector<Slide>& slides) {
    std::vector<NamedFile> files;
    for (std::size_t i = 0; i < slides.size(); ++i) {
        files.push_back({pictureNumber(i) + ".svg", svgOf(slides[i].picture)});
    }
    return files;
}

struct StepNamed {
    const LessonShown* lesson = nullptr;
    std::size_t step = 0;
};

// By its number in the whole lesson, from 1, or by its subject.
Outcome<StepNamed> stepNamed(const std::vector<LessonShown>& lessons, const std::string& name) {
    std::size_t count = 0;
    for (const LessonShown& lesson : lessons) {
        for (std::size_t i = 0; i < lesson.steps.size(); ++i) {
            if (name == std::to_string(++count) || name == lesson.steps[i].subject) {
                return StepNamed{&lesson, i};
            }
        }
    }
    return Issue{IssueCode::UnknownName, "--animate",
                 "there is no such step: give a number from 1 to " + std::to_string(count)};
}

Answer animated(const Writer& writer, const Arguments& arguments,
                const std::vector<LessonShown>& lessons, const SlideChoices& choices) {
    const Outcome<StepNamed> named = stepNamed(lessons, arguments.valueOf("--animate"));
    if (!named) {
        return {Exit::BadInput, {}, named.issues()};
    }
    const AnimationEnd end = arguments.has("--loop") ? AnimationEnd::Repeats : AnimationEnd::Stays;
    const auto& [lesson, step] = named.value();
    return {Exit::Answered, animatedStep(writer.book, *lesson, step, choices, end), {}};
}

Answer written(const Writer& writer, const Arguments& arguments,
               const std::vector<LessonShown>& lessons, const SlideChoices& choices) {
    if (arguments.has("--vtt")) {
        return {Exit::Answered, captionsVtt(captionsAtReadingPace(lessons)), {}};
    }
    if (arguments.has("--text")) {
        return {Exit::Answered, transcript(captionsAtReadingPace(lessons)), {}};
    }
    if (arguments.has("--animate")) {
        return animated(writer, arguments, lessons, choices);
    }
    const std::vector<Slide> slides = slidesOf(writer.book, lessons, choices);
    if (!arguments.has("--svg")) {
        return {Exit::Answered, slidesHtml(writer, slides, choices), {}};
    }
    Answer answer{Exit::Answered, std::to_string(slides.size()) + " pictures\n", {}};
    answer.folder = arguments.valueOf("--svg");
    answer.files = picturesOf(slides);
    return answer;
}

} // namespace

Answer answerLesson(const PhraseBook& book, const Arguments& arguments, const Reading& reading) {
    const Outcome<SlideChoices> asked = slideChoicesOf(arguments);
    if (!asked) {
        return {Exit::WrongUse, {}, asked.issues()};
    }
    const LoadChoice loads = choiceOf(arguments);
    const Solution solution = solved(reading, loads);
    if (exitOf(solution) == Exit::BadInput) {
        return {Exit::BadInput, {}, solution.errors};
    }
    const Outcome<LessonPlan> plan = planOf(arguments, reading.truss);
    if (!plan) {
        return {Exit::BadInput, {}, plan.issues()};
    }
    const Outcome<std::vector<LessonShown>> lessons =
        lessonsFor(book, reading.truss, loads, solution, plan.value());
    if (!lessons) {
        return {exitOf(lessons.issues()), {}, lessons.issues()};
    }
    SlideChoices choices = asked.value();
    choices.hidesValues = choices.hidesValues || plan.value().hidesValues;
    Answer answer = written({book, reading.truss}, arguments, lessons.value(), choices);
    if (answer.exit == Exit::Answered) {
        answer.exit = exitOf(solution);
        answer.faults = notesOfMechanism(solution.status, solution.solved);
    }
    return answer;
}

} // namespace gusset::cli
