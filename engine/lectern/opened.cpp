#include "lectern/opened.hpp"

#include "exchange/lessons/lesson_file.hpp"
#include "exchange/links/link.hpp"
#include "report/lesson/shown.hpp"

#include <utility>

namespace gusset {

Outcome<Opened> openLesson(const PhraseBook& book, const std::string& model) {
    const bool isLink = looksLikeLink(model);
    Outcome<Reading> reading = isLink ? readLink(model) : readModel(model);
    if (!reading) {
        return reading.issues();
    }
    Truss truss = std::move(reading).value().truss;
    LoadChoice loads;
    if (isLink) {
        const Outcome<LoadChoice> linked = linkedLoads(model, truss);
        if (!linked) {
            return linked.issues();
        }
        loads = linked.value();
    }
    return openLesson(book, std::move(truss), loads);
}

Outcome<Opened> openLesson(const PhraseBook& book, Truss truss, const LoadChoice& loads) {
    Opened opened{std::move(truss), loads};
    const Outcome<LessonPlan> plan = readLesson(opened.truss);
    if (!plan) {
        return plan.issues();
    }
    opened.plan = plan.value();
    const Solution solution = solve(opened.truss, loads);
    if (!solution.errors.empty()) {
        return solution.errors;
    }
    Outcome<std::vector<LessonShown>> lessons =
        lessonsFor(book, opened.truss, loads, solution, opened.plan);
    if (!lessons) {
        return lessons.issues();
    }
    opened.lessons = std::move(lessons).value();
    return opened;
}

std::optional<std::size_t> indexUnder(const JsonValue& request, std::string_view key,
                                      std::size_t size) {
    const double number = numberUnder(request, key, -1);
    if (!(number >= 0 && number < static_cast<double>(size))) {
        return std::nullopt;
    }
    return static_cast<std::size_t>(number);
}

} // namespace gusset
