#include "app/fields/case_cells.hpp"

#include "design/loading/actions.hpp"
#include "exchange/forms/outline_file.hpp"
#include "model/edit/load_cases.hpp"
#include "phrases/model.hpp"
#include "report/text/phrases.hpp"
#include "statics/equilibrium/structure.hpp"

namespace gusset {
namespace {

std::string caseIn(const Truss& truss, const ListField& field) {
    return caseNames(truss)[static_cast<std::size_t>(field.row)];
}

std::string kindOf(const Truss& truss, const std::string& name) {
    for (const LoadCase& each : truss.cases) {
        if (each.id == name) {
            return each.kind;
        }
    }
    return {};
}

// "permanent, snow, wind …": what a case may stand for.
std::string kindWords() {
    std::string words;
    for (const ActionRule& rule : actionRules()) {
        words += (words.empty() ? "" : ", ") + std::string(rule.word);
    }
    return words;
}

} // namespace

bool ofCases(const ListField& field) {
    return field.kind == ListFieldKind::CaseName || field.kind == ListFieldKind::CaseKind;
}

std::string caseText(const Truss& truss, const ListField& field) {
    const std::string name = caseIn(truss, field);
    return field.kind == ListFieldKind::CaseName ? name : kindOf(truss, name);
}

Outcome<Edit> editCase(const Truss& truss, const ListField& field, const std::string& text) {
    const std::string name = caseIn(truss, field);
    if (field.kind == ListFieldKind::CaseName) {
        return renameCase(truss, name, text, formWithCase(truss, name, text));
    }
    if (!text.empty() && !actionNamed(text)) {
        return Issue{IssueCode::UnknownName, "cases",
                     statement(phrase::kCaseStandsFor, {{"words", kindWords()}})};
    }
    return setCaseKind(truss, name, text, formWithKind(truss, name, text));
}

std::string caseFieldName(const Writer& writer, const ListField& field) {
    const std::string name = caseIn(writer.truss, field);
    return field.kind == ListFieldKind::CaseName
               ? sayPlain(writer, phrase::kNameOfCase, {{"case", name}})
               : sayPlain(writer, phrase::kKindOfCase, {{"case", name}});
}

} // namespace gusset
