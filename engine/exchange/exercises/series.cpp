#include "exchange/exercises/series.hpp"

#include "core/csv.hpp"
#include "core/number.hpp"
#include "exchange/exercises/exercise_file.hpp"
#include "exchange/links/link.hpp"

#include <algorithm>
#include <utility>

namespace gusset {

namespace {

// "variant_007.json": the same name whatever the count.
std::string fileNameOf(int number) {
    const std::string digits = std::to_string(number);
    return "variant_" + std::string(3 - std::min<std::size_t>(3, digits.size()), '0') + digits +
           ".json";
}

// Five letters that can't be taken for one another. Within a series no two are the same, as the
// factor has no divisor in common with the number of codes.
std::string codeOf(std::uint64_t seed, int number) {
    constexpr std::string_view kLetters = "ACDEFGHJKLMNPQRTUVWXY34679";
    constexpr std::uint64_t kFactor = 4764359;
    constexpr std::uint64_t kCodes = 26 * 26 * 26 * 26 * 26;
    static_assert(kLetters.size() == 26 && kFactor % 2 == 1 && kFactor % 13 != 0);
    std::uint64_t left =
        (seed % kCodes * 7919 + static_cast<std::uint64_t>(number) * kFactor) % kCodes;
    std::string code;
    for (int i = 0; i < 5; ++i) {
        code += kLetters[left % kLetters.size()];
        left /= kLetters.size();
    }
    return code;
}

std::string studentOf(const Series& series, int number) {
    return series.students.empty() ? std::string()
                                   : series.students[static_cast<std::size_t>(number) - 1];
}

std::string keyHead(const Truss& truss) {
    std::string columns = "variant,student,file,steps";
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        columns += "," + csvTextCell(memberName(truss, MemberId{static_cast<int>(i)}));
    }
    for (const Support& support : truss.supports) {
        const std::string& label = truss.joints[support.joint.at()].label;
        columns += "," + csvTextCell(label + " x") + "," + csvTextCell(label + " y");
    }
    return csvHead(columns);
}

// Reactions by components in the order of the head, which names joints: supports may change places.
std::string keyLine(const Truss& truss, const Series& series, const Variant& variant) {
    const ExactSolution exact = solveExactly(variant.truss, series.wishes.loads);
    std::string line = std::to_string(variant.number) + "," +
                       csvTextCell(studentOf(series, variant.number)) + "," +
                       fileNameOf(variant.number) + "," + std::to_string(variant.steps.steps);
    for (const Surd& force : exact.forces) {
        line += "," + fileNumber(force.value);
    }
    for (const Support& support : truss.supports) {
        const ExactSolution::Reaction& reaction = exact.jointReactions[support.joint.at()];
        line += "," + fileNumber(reaction.x.value) + "," + fileNumber(reaction.y.value);
    }
    return line + "\r\n";
}

Outcome<VariantPaper> paperOf(const Series& series, const Variant& variant) {
    VariantPaper paper{variant.truss,
                       fileNameOf(variant.number),
                       studentOf(series, variant.number),
                       codeOf(series.seed, variant.number),
                       {}};
    Outcome<Exercise> asked = askedOf(paper.truss);
    if (!asked) {
        return asked.issues();
    }
    Exercise exercise = std::move(asked).value();
    if (paper.truss.exercise.empty()) {
        exercise.loads = series.wishes.loads;
    }
    exercise.variant = variant.number;
    exercise.seed = series.seed;
    paper.truss.exercise = exerciseText(paper.truss, exercise);
    const Outcome<std::string> link = exerciseLink(paper.truss);
    if (!link) {
        return link.issues();
    }
    paper.link = link.value() + "&code=" + paper.code;
    return paper;
}

} // namespace

Outcome<SeriesPapers> papersOf(const Truss& truss, const Series& series,
                               const std::vector<Variant>& variants, const std::string& page) {
    SeriesPapers papers{{}, keyHead(truss), csvHead("variant,student,code,link")};
    for (const Variant& variant : variants) {
        Outcome<VariantPaper> paper = paperOf(series, variant);
        if (!paper) {
            return paper.issues();
        }
        const VariantPaper& made = paper.value();
        papers.key += keyLine(truss, series, variant);
        papers.links += std::to_string(variant.number) + "," + csvTextCell(made.student) + "," +
                        csvTextCell(made.code) + "," + csvTextCell(page + "#" + made.link) + "\r\n";
        papers.variants.push_back(std::move(paper).value());
    }
    return papers;
}

} // namespace gusset
