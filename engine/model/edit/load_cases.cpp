#include "model/edit/load_cases.hpp"

#include "phrases/faults/refusals.hpp"
#include "phrases/model/edits.hpp"

#include <algorithm>

namespace gusset {

namespace {

bool isOf(const Load& load, const std::string& name) { return name == caseNameOf(load.caseId); }

bool isCase(const Truss& truss, const std::string& name) {
    return std::any_of(truss.loads.begin(), truss.loads.end(),
                       [&](const Load& load) { return isOf(load, name); });
}

void put(Load& load, const std::string& name) { load.caseId = caseIdOf(name); }

ChangeLoadCases asTheyAre(const Truss& truss, Statement name) {
    return {truss.loads, truss.cases, truss.combinations, truss.form, std::move(name)};
}

std::string freeNameLike(const Truss& truss, const std::string& name) {
    for (int number = 2;; ++number) {
        std::string other = name + " " + std::to_string(number);
        if (!isCase(truss, other)) {
            return other;
        }
    }
}

const LoadCase* caseOf(const std::vector<LoadCase>& cases, const std::string& name) {
    const auto found = std::find_if(cases.begin(), cases.end(),
                                    [&](const LoadCase& each) { return each.id == name; });
    return found == cases.end() ? nullptr : &*found;
}

} // namespace

Outcome<Edit> renameCase(const Truss& truss, const std::string& name, const std::string& to,
                         const std::optional<std::string>& form) {
    if (to.empty()) {
        return Issue{IssueCode::Missing, "cases", phrase::kCaseNeedsName};
    }
    if (to != name && isCase(truss, to)) {
        return Issue{IssueCode::Duplicate, "cases", statement(phrase::kCaseTaken, {{"id", to}})};
    }
    ChangeLoadCases edit = asTheyAre(truss, statement(phrase::kEditRenameCase, {{"id", name}}));
    edit.form = form.value_or(truss.form);
    for (Load& load : edit.loads) {
        if (isOf(load, name)) {
            put(load, to);
        }
    }
    for (LoadCase& each : edit.cases) {
        each.id = each.id == name ? to : each.id;
    }
    for (Combination& combination : edit.combinations) {
        for (auto& [id, factor] : combination.factors) {
            id = id == name ? to : id;
        }
    }
    return Edit(std::move(edit));
}

Edit setCaseKind(const Truss& truss, const std::string& name, const std::string& kind,
                 const std::optional<std::string>& form) {
    ChangeLoadCases edit = asTheyAre(truss, statement(phrase::kEditCaseKind, {{"id", name}}));
    edit.form = form.value_or(truss.form);
    std::vector<LoadCase>& cases = edit.cases;
    const auto found = std::find_if(cases.begin(), cases.end(),
                                    [&](const LoadCase& each) { return each.id == name; });
    if (found == cases.end()) {
        cases.push_back({name, kind, {}});
    } else {
        found->kind = kind;
    }
    return Edit(std::move(edit));
}

Edit copyCase(const Truss& truss, const std::string& name) {
    ChangeLoadCases edit = asTheyAre(truss, statement(phrase::kEditCopyCase, {{"id", name}}));
    const std::string to = freeNameLike(truss, name);
    for (const Load& load : truss.loads) {
        if (isOf(load, name)) {
            put(edit.loads.emplace_back(load), to);
        }
    }
    if (const LoadCase* as = caseOf(truss.cases, name)) {
        edit.cases.push_back({to, as->kind, {}});
    }
    return Edit(std::move(edit));
}

Edit removeCase(const Truss& truss, const std::string& name) {
    ChangeLoadCases edit = asTheyAre(truss, statement(phrase::kEditRemoveCase, {{"id", name}}));
    std::erase_if(edit.loads, [&](const Load& load) { return isOf(load, name); });
    std::erase_if(edit.cases, [&](const LoadCase& each) { return each.id == name; });
    for (Combination& combination : edit.combinations) {
        std::erase_if(combination.factors,
                      [&](const auto& factor) { return factor.first == name; });
    }
    return Edit(std::move(edit));
}

} // namespace gusset
