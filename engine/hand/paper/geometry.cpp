#include "hand/paper/stages.hpp"
#include "phrases/working/remarks.hpp"

#include <utility>

namespace gusset {

void writeGeometry(Sheet& sheet) {
    Step step;
    step.kind = StepKind::Geometry;
    for (const AngleLine& line : sheet.angles) {
        if (line.member.valid()) {
            step.angles.push_back(line);
            step.members.insert(step.members.end(), line.members.begin(), line.members.end());
        }
    }
    if (step.angles.empty()) {
        step.remarks.push_back(remarkThat(phrase::kNoInclined));
    }
    sheet.steps.push_back(step);
}

Working blankPaper(const Truss& truss, const LoadChoice& loads) {
    Sheet sheet = makeSheet(truss, loads);
    Working paper;
    Step geometry;
    geometry.kind = StepKind::Geometry;
    geometry.angles = std::move(sheet.angles);
    paper.steps.push_back(std::move(geometry));
    paper.structure = std::move(sheet.structure);
    paper.loads = std::move(sheet.loads);
    return paper;
}

} // namespace gusset
