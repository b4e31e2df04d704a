#include "course/varying.hpp"

#include "classroom/variants/forms.hpp"
#include "desk/given.hpp"
#include "exchange/exercises/exercise_file.hpp"
#include "exchange/exercises/series.hpp"
#include "exchange/exercises/student_list.hpp"
#include "exchange/links/link.hpp"
#include "phrases/faults/variants.hpp"
#include "report/classroom/question_figure.hpp"
#include "report/sketch/sketch_svg.hpp"

#include <charconv>
#include <utility>

namespace gusset {

namespace {

Vary varyUnder(const JsonValue& request) {
    Vary vary{false, false, false, false, false, false};
    for (const JsonValue& item : itemsUnder(request, "vary")) {
        for (const VaryWord& word : kVaryWords) {
            vary.*word.what = vary.*word.what || item.text == word.word;
        }
    }
    return vary;
}

// −1 for what is no whole number of usual size, which no wish allows.
int wholeUnder(const JsonValue& request, std::string_view key) {
    constexpr double kLargest = 1e6;
    const JsonValue* value = request.find(key);
    return value && value->isWhole() && value->number >= 0 && value->number <= kLargest
               ? static_cast<int>(value->number)
               : -1;
}

Outcome<std::uint64_t> seedUnder(const JsonValue& request) {
    const std::string text = textUnder(request, "seed");
    std::uint64_t seed = 0;
    const char* end = text.data() + text.size();
    const auto [stop, error] = std::from_chars(text.data(), end, seed);
    if (error != std::errc() || stop != end) {
        return Issue{IssueCode::OutOfRange, phrase::kPlaceSeed, phrase::kSeedIsWhole};
    }
    return seed;
}

// Friendly answers are needed for the members that the exercise asks for: of all, if of none.
std::vector<MemberId> membersAsked(const Exercise& exercise) {
    for (const Question& question : exercise.questions) {
        if (const auto* forces = std::get_if<AskForces>(&question.what)) {
            return forces->members;
        }
    }
    return {};
}

Outcome<Series> seriesOf(const JsonValue& request, const Exercise& exercise) {
    const Outcome<std::uint64_t> seed = seedUnder(request);
    if (!seed) {
        return seed.issues();
    }
    Series series{{varyUnder(request), wholeUnder(request, "decimals"), membersAsked(exercise),
                   exercise.loads, numberUnder(request, "lengthStep"),
                   numberUnder(request, "loadStep")},
                  studentsOf(textUnder(request, "students")),
                  wholeUnder(request, "count"),
                  seed.value()};
    if (!series.students.empty()) {
        series.count = static_cast<int>(series.students.size());
    }
    return series;
}

Outcome<std::vector<Variant>> search(const CourseWish& wish, const Truss& truss,
                                     const Series& series) {
    VariantSearch search(truss, series.wishes, series.count, series.seed);
    while (!search.advance()) {
        if (wish.told) {
            wish.told(search.progress());
        }
    }
    return search.result();
}

std::string pictureOf(const Writer& writer) {
    const Outcome<Exercise> exercise = readExercise(writer.truss);
    const std::optional<Sketch> figure =
        exercise ? questionFigure(writer, exercise.value().loads, exercise.value().questions)
                 : std::nullopt;
    return figure ? svgOf(*figure) : std::string();
}

} // namespace

Issues makeFormFromNothing(const CourseWish& wish, JsonText& out) {
    const Outcome<std::uint64_t> seed = seedUnder(wish.request);
    if (!seed) {
        return seed.issues();
    }
    FormWishes wishes{wholeUnder(wish.request, "joints"), std::nullopt,
                      textUnder(wish.request, "held") == "wall" ? Held::AtWall : Held::AtEnds};
    if (wish.request.find("zeros")) {
        wishes.zeros = wholeUnder(wish.request, "zeros");
    }
    const Outcome<Truss> form = makeForm(wishes, seed.value());
    if (!form) {
        return form.issues();
    }
    out.text("model", writeModel(form.value(), Layout::Compact));
    return {};
}

Issues makeSeries(const CourseWish& wish, JsonText& out) {
    const Outcome<AskedTruss> asked = readAsked(textUnder(wish.request, "model"));
    if (!asked) {
        return asked.issues();
    }
    const Truss& truss = asked.value().truss;
    const Outcome<Series> series = seriesOf(wish.request, asked.value().exercise);
    if (!series) {
        return series.issues();
    }
    const Outcome<std::vector<Variant>> variants = search(wish, truss, series.value());
    if (!variants) {
        return variants.issues();
    }
    const Outcome<SeriesPapers> papers =
        papersOf(truss, series.value(), variants.value(), textUnder(wish.request, "address"));
    if (!papers) {
        return papers.issues();
    }
    std::size_t at = 0;
    out.objects("variants", papers.value().variants, [&](const VariantPaper& paper) {
        const Variant& variant = variants.value()[at++];
        out.whole("number", variant.number);
        out.whole("steps", variant.steps.steps);
        out.text("student", paper.student);
        out.text("code", paper.code);
        out.text("link", paper.link);
        out.text("mark", exerciseMark(paper.truss));
        out.text("figure", pictureOf({wish.book, paper.truss}));
    });
    out.text("key", papers.value().key);
    out.text("links", papers.value().links);
    return {};
}

} // namespace gusset
