#include "exchange/exercises/series.hpp"

#include "classroom/exercise/variant_code.hpp"
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
    VariantPaper paper{
        variant.truss, fileNameOf(variant.number), studentOf(series, variant.number), {}, {}};
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
    const Outcome<std::string> link = studentLink(paper.truss, exercise);
    if (!link) {
        return link.issues();
    }
    paper.code = variantCode(exercise);
    paper.link = link.value();
    return paper;
}

} // namespace

Outcome<std::string> studentLink(const Truss& truss, const Exercise& exercise) {
    const Outcome<std::string> link = exerciseLink(truss);
    if (!link || exercise.variant == 0) {
        return link;
    }
    return link.value() + "&code=" + variantCode(exercise);
}

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
