#include "report/classroom/blanks.hpp"

#include "phrases/classroom/handout.hpp"
#include "report/formula/notation.hpp"
#include "report/results/trust_text.hpp"
#include "report/text/html.hpp"
#include "report/text/math_ml.hpp"

#include <array>
#include <cmath>

namespace gusset {

namespace {

std::string entryHtml(const std::string& label, const std::string& rest) {
    return "<li><span class=\"of\">" + label + "</span> " + rest + "</li>\n";
}

std::string blankHtml(const std::string& value, const std::string& unit) {
    return "<span class=\"blank\">" + escapeHtml(value) + "</span> " + escapeHtml(unit);
}

std::string boxHtml(bool ticked, const std::string& label) {
    return " <span class=\"box\">" + std::string(ticked ? "☒" : "☐") + "</span>\u00A0" +
           escapeHtml(label);
}

class BlankWriter {
public:
    BlankWriter(const BlanksOf& blanks, std::size_t question) : it_(blanks), question_(question) {}

    std::string operator()(const AskReactions&) const {
        Working nothing;
        nothing.structure = structureOf(it_.writer.truss);
        const Notation notation = notationOf(it_.writer, nothing);
        std::string html;
        for (std::size_t i = 0; i < nothing.structure.restraints.size(); ++i) {
            const Restraint& restraint = nothing.structure.restraints[i];
            Symbol symbol;
            symbol.kind = SymbolKind::Reaction;
            symbol.restraint = {static_cast<int>(i)};
            symbol.joint = restraint.joint;
            html += entryHtml(htmlOf(symbolRuns(notation, symbol)),
                              forceBlank(it_.filledBy ? &it_.filledBy->reactions[i] : nullptr,
                                         {directionArrow(restraint.along),
                                          directionArrow(-1.0 * restraint.along), "0"}));
        }
        return html;
    }
    std::string operator()(const AskForces& asked) const {
        std::string html;
        for (const MemberId id : asked.members) {
            html += entryHtml(escapeHtml(memberName(it_.writer.truss, id)),
                              forceBlank(it_.filledBy ? &it_.filledBy->forces[id.at()] : nullptr,
                                         {"T", "C", "0"}));
        }
        return html;
    }
    std::string operator()(const AskZeroMembers&) const {
        std::string html;
        for (std::size_t i = 0; i < it_.writer.truss.members.size(); ++i) {
            html += "<li>" +
                    boxHtml(it_.filledBy && it_.filledBy->forces[i] == 0,
                            memberName(it_.writer.truss, {static_cast<int>(i)})) +
                    "</li>\n";
        }
        return html;
    }
    std::string operator()(const AskDeterminacy&) const {
        return oneBlank(it_.filledBy ? std::to_string(it_.filledBy->degree) : "", "");
    }
    std::string operator()(const AskDisplacement&) const {
        return oneBlank(valueText(), symbolOf(it_.writer.truss.units.displacement));
    }
    std::string operator()(const AskInfluence&) const { return oneBlank(valueText(), ""); }
    std::string operator()(const AskSteps&) const { return {}; }

private:
    // Size and direction; `value` is null for a blank.
    std::string forceBlank(const double* value, const std::array<std::string, 3>& senses) const {
        const std::string size = value ? formatNumber(std::abs(*value), it_.forces) : "";
        const std::size_t right = !value ? senses.size() : *value > 0 ? 0 : *value < 0 ? 1 : 2;
        std::string html = blankHtml(size, symbolOf(it_.writer.truss.units.force));
        for (std::size_t i = 0; i < senses.size(); ++i) {
            html += boxHtml(i == right, senses[i]);
        }
        return html;
    }

    std::string oneBlank(const std::string& value, const std::string& unit) const {
        return entryHtml(escapeHtml(sayPlain(it_.writer, phrase::kBlankAnswer)),
                         blankHtml(value, unit));
    }

    std::string valueText() const {
        return it_.filledBy ? formatNumber(*it_.filledBy->values[question_],
                                           movementStyleOf(it_.writer.truss, 0))
                            : "";
    }

    const BlanksOf& it_;
    std::size_t question_;
};

} // namespace

std::string blanksHtml(const BlanksOf& blanks, std::size_t question) {
    const std::string entries =
        std::visit(BlankWriter(blanks, question), blanks.exercise.questions[question].what);
    return entries.empty() ? entries : "<ul class=\"blanks\">\n" + entries + "</ul>\n";
}

} // namespace gusset
