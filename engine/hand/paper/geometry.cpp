#include "hand/paper/stages.hpp"
#include "phrases/working/remarks.hpp"

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

} // namespace gusset
