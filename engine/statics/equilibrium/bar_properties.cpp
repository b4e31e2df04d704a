#include "statics/equilibrium/bar_properties.hpp"

#include "model/catalogue/section_properties.hpp"
#include "model/validate/validate.hpp"
#include "phrases/results/unsolved.hpp"

#include <algorithm>

namespace gusset {

namespace {

struct Grade { // the area and the material of a section
    std::optional<double> area;
    const Material* material = nullptr;
};

Grade gradeOf(const Truss& truss, const Section& section) {
    Grade grade;
    grade.area = propertiesOf(section).area;
    for (const Material& material : truss.materials) {
        if (!section.material.empty() && material.id == section.material) {
            grade.material = &material;
        }
    }
    return grade;
}

std::vector<Grade> gradesOf(const Truss& truss) {
    std::vector<Grade> grades;
    for (const Section& section : truss.sections) {
        grades.push_back(gradeOf(truss, section));
    }
    return grades;
}

const Grade* gradeOf(const Truss& truss, const std::vector<Grade>& grades, const Member& member) {
    if (member.section.empty()) {
        return nullptr;
    }
    for (std::size_t i = 0; i < grades.size(); ++i) {
        if (truss.sections[i].id == member.section) {
            return &grades[i];
        }
    }
    return nullptr;
}

void addGrade(const Truss& truss, const Grade& grade, Bar& bar) {
    const double metre = toMetre(truss.units.section);
    const double pascal = toPascal(truss.units.stress);
    if (!grade.area) {
        return;
    }
    bar.area = *grade.area * metre * metre;
    if (!grade.material) {
        return;
    }
    if (grade.material->E) {
        bar.stiffness = *grade.material->E * pascal * bar.area;
    }
    if (grade.material->density) {
        bar.weight = *grade.material->density * kGravity * bar.area * bar.length;
    }
}

std::string placeOf(std::size_t member, const char* key) {
    return "members[" + std::to_string(member) + "]" + key;
}

} // namespace

void addBarProperties(const Truss& truss, Structure& structure) {
    const std::vector<Grade> grades = gradesOf(truss);
    for (std::size_t i = 0; i < structure.bars.size(); ++i) {
        const Member& member = truss.members[i];
        Bar& bar = structure.bars[i];
        bar.strain = member.misfit * toMetre(truss.units.displacement);
        const Grade* grade = gradeOf(truss, grades, member);
        if (!grade) {
            continue;
        }
        addGrade(truss, *grade, bar);
        if (grade->material && grade->material->alpha) {
            bar.strain += *grade->material->alpha * member.warming * bar.length;
        }
    }
}

Issues missingProperties(const Truss& truss, const LoadChoice& choice) {
    const std::vector<Grade> grades = gradesOf(truss);
    const bool weighed = std::any_of(truss.loads.begin(), truss.loads.end(), [&](const Load& load) {
        return std::holds_alternative<SelfWeight>(load.what) &&
               caseFactor(truss, choice, load) != 0;
    });
    Issues issues;
    for (std::size_t i = 0; i < truss.members.size() && issues.size() < kMostIssues; ++i) {
        const bool warmed = truss.members[i].warming != 0 && !isOneCase(choice);
        if (!warmed && !weighed) {
            continue;
        }
        const Grade* grade = gradeOf(truss, grades, truss.members[i]);
        const Material* material = grade ? grade->material : nullptr;
        const MemberId member{static_cast<int>(i)};
        if (warmed && (!material || !material->alpha)) {
            issues.push_back(
                {IssueCode::Missing, placeOf(i, ".dT"),
                 statement(phrase::kNoAlpha, {{"member", memberName(truss, member)}})});
        }
        if (weighed && (!material || !material->density || !grade->area)) {
            issues.push_back(
                {IssueCode::Missing, placeOf(i, ".section"),
                 statement(phrase::kNoWeight, {{"member", memberName(truss, member)}})});
        }
    }
    return issues;
}

} // namespace gusset
