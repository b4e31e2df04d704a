#include "cli/lesson_command.hpp"

#include "cli/names.hpp"
#include "cli/verdicts.hpp"
#include "report/lesson/captions.hpp"
#include "report/lesson/shown.hpp"
#include "report/lesson/slides.hpp"
#include "report/sketch/sketch_svg.hpp"

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
    return arguments.has("--polygon")        ? Shown(ShowPolygon{})
           : arguments.has("--force-method") ? Shown(ShowForceMethod{})
                                             : Shown(ShowAll{});
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
    choices.narrow = shape == "4:3";
    return choices;
}

// Numbered, so that they sort in the order in which they are shown.
std::vector<NamedFile> picturesOf(const std::vector<Slide>& slides) {
    std::vector<NamedFile> files;
    for (std::size_t i = 0; i < slides.size(); ++i) {
        const std::string number = std::to_string(i + 1);
        files.push_back(
            {std::string(number.size() < 4 ? 4 - number.size() : 0, '0') + number + ".svg",
             svgOf(slides[i].picture)});
    }
    return files;
}

Answer written(const Writer& writer, const Arguments& arguments, const LessonShown& lesson,
               const SlideChoices& choices, Exit exit) {
    const std::vector<LessonShown> lessons{lesson};
    if (arguments.has("--vtt")) {
        return {exit, captionsVtt(captionsAtReadingPace(lessons)), {}};
    }
    if (arguments.has("--text")) {
        return {exit, transcript(captionsAtReadingPace(lessons)), {}};
    }
    const std::vector<Slide> slides = slidesOf(writer.book, lessons, choices);
    if (!arguments.has("--svg")) {
        return {exit, slidesHtml(writer, slides, choices), {}};
    }
    Answer answer{exit, std::to_string(slides.size()) + " pictures\n", {}};
    answer.folder = arguments.valueOf("--svg");
    answer.files = picturesOf(slides);
    return answer;
}

} // namespace

Answer answerLesson(const PhraseBook& book, const Arguments& arguments, const Reading& reading) {
    const Outcome<SlideChoices> choices = slideChoicesOf(arguments);
    if (!choices) {
        return {Exit::WrongUse, {}, choices.issues()};
    }
    const LoadChoice loads = choiceOf(arguments);
    const Solution solution = solved(reading, loads);
    if (exitOf(solution) == Exit::BadInput) {
        return {Exit::BadInput, {}, solution.errors};
    }
    const Outcome<Shown> shown = shownNamed(arguments, reading.truss);
    if (!shown) {
        return {Exit::BadInput, {}, shown.issues()};
    }
    const Outcome<LessonShown> lesson =
        lessonFor(book, reading.truss, loads, solution, {shown.value(), {}, {}});
    if (!lesson) {
        return {exitOf(lesson.issues()), {}, lesson.issues()};
    }
    Answer answer = written({book, reading.truss}, arguments, lesson.value(), choices.value(),
                            exitOf(solution));
    answer.faults = notesOfMechanism(solution.status, solution.solved);
    return answer;
}

} // namespace gusset::cli
