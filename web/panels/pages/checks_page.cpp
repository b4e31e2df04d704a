// Member checks among the results: the verdict and the caution, the loads, the rule, a table, and
// the check of the selected member worked out.
#include "app/fields/check_field.hpp"
#include "app/fields/questions.hpp"
#include "panels/frame/panel_context.hpp"
#include "panels/frame/tabs.hpp"
#include "panels/pages/passages.hpp"
#include "phrases/results.hpp"
#include "phrases/results/checks.hpp"
#include "phrases/results/tables.hpp"

#include <array>
#include <string>
#include <vector>

namespace gusset {
namespace {

constexpr std::array kLoads{phrase::kLoadsShown, phrase::kWorstOfAll};
void loadsOfChecks(PanelContext& context) {
    const ChecksShown& shown = context.derived.checks;
    if (shown.hasChoice) {
        smallPrint(context.ui, words(context, phrase::kUnder));
        const int now = context.state.notebook.checksOfAll ? 1 : 0;
        const int chosen = wordChoice(context.ui, "checked loads", words(context, kLoads), now);
        if (chosen != now) {
            context.actions.push_back(Set{&NotebookState::checksOfAll, chosen == 1});
        }
    }
    if (!shown.loads.worst) {
        loadChoice(context);
    }
}

void useOnBoard(PanelContext& context) {
    const bool on = showsUse(context.state);
    if (toggle(context.ui, words(context, phrase::kUseOnBoard), on)) {
        const MemberFigure figure = on ? MemberFigure::Force : MemberFigure::Use;
        context.actions.push_back(Set{&View::showForces, true});
        context.actions.push_back(Set{&View::memberFigure, figure});
    }
}

void factorRow(PanelContext& context, Table& table, int row, const CheckFactor& factor) {
    const CheckField number{factor.number};
    table.row({.id = row});
    table.text(0, words(context, factor.says), {context.ui.palette->ink});
    FieldLook look;
    look.field = number;
    look.name = words(context, factor.says);
    look.text = checkText(context.state.truss, number);
    look.look = checkLook(context.state.truss, number);
    look.hint = words(context, factor.hint);
    look.align = Align::Right;
    field(context, table.cell(1), look);
}

void settingsOfChecks(PanelContext& context) {
    const Ui& ui = context.ui;
    CheckSettings settings = context.state.truss.checks;
    const std::array names = checkFormulas(*context.state.book);
    const std::array formulas{names[0].c_str(), names[1].c_str(), names[2].c_str()};
    sectionHeading(ui, words(context, phrase::kCheckedBy));
    settings.formula = static_cast<ColumnFormula>(
        wordChoice(ui, "formula", formulas, static_cast<int>(settings.formula)));
    if (settings.formula == ColumnFormula::En1993) {
        smallPrint(ui, words(context, phrase::kBucklingCurve));
        settings.curve = static_cast<BucklingCurve>(
            wordChoice(ui, "curve", kCurves, static_cast<int>(settings.curve)));
    } else if (settings.formula == ColumnFormula::Aisc360) {
        settings.safety = static_cast<AiscSafety>(
            wordChoice(ui, "safety", kSafeties, static_cast<int>(settings.safety)));
    }
    if (settings != context.state.truss.checks) {
        context.actions.push_back(Commit{SetChecks{settings}});
    }
    const std::array columns{Column{{}, 200, 1}, Column{{}, 90, 0.4, Align::Right}};
    Table table(ui, "factors", columns);
    int row = 0;
    for (const CheckFactor& factor : factorsOf(context.state.truss)) {
        factorRow(context, table, row++, factor);
    }
}

void factorOfPicked(PanelContext& context, Table& table, FactorField number, Phrase<> name) {
    const Truss& truss = context.state.truss;
    const std::vector<MemberId>& members = context.state.selection.members;
    table.row({.id = static_cast<int>(number)});
    table.text(0, words(context, name), {context.ui.palette->ink});
    FieldLook look;
    look.field = number;
    look.name = words(context, name);
    look.text = factorText(truss, members, number);
    look.look = factorLook(truss, members, number);
    look.hint = words(context, phrase::kAsInChecks);
    look.align = Align::Right;
    field(context, table.cell(1), look);
}

// K of the picked members, and whether the picked joints are held out of the plane.
void settingsOfPicked(PanelContext& context) {
    const Things& picked = context.state.selection;
    sectionHeading(context.ui, words(context, phrase::kLengthsOfPicked));
    if (picked.members.empty() && picked.joints.empty()) {
        smallPrint(context.ui, words(context, phrase::kPickForLengths));
        return;
    }
    if (!picked.members.empty()) {
        const std::array columns{Column{{}, 200, 1}, Column{{}, 90, 0.4, Align::Right}};
        Table table(context.ui, "picked", columns);
        factorOfPicked(context, table, FactorField::In, phrase::kFactorInPlane);
        factorOfPicked(context, table, FactorField::Out, phrase::kFactorOutOfPlane);
    }
    if (!picked.joints.empty()) {
        const bool held = areHeld(context.state.truss, picked.joints);
        if (toggle(context.ui, words(context, phrase::kHeldOutOfPlane), held)) {
            context.actions.push_back(Commit{holdEdit(context.state.truss, picked.joints, !held)});
        }
    }
}

void useRow(PanelContext& context, Table& table, const CheckRow& row) {
    const Palette& palette = *context.ui.palette;
    const Colour ink = row.faulty ? palette.warning : palette.ink;
    pressableRow(context, table, row.member);
    table.text(0, row.name, {palette.ink});
    table.text(1, row.use, {ink, row.over ? context.ui.fonts.strong : context.ui.fonts.body});
    table.text(2, row.check, {palette.muted, context.ui.fonts.small});
    table.text(3, row.slenderness, {palette.ink});
    table.text(4, row.remark, {ink, context.ui.fonts.small});
}

void useTable(PanelContext& context) {
    const std::string member = words(context, phrase::kCellMember);
    const std::string use = words(context, phrase::kColumnUse);
    const std::string check = words(context, phrase::kColumnCheck);
    const std::string remark = words(context, phrase::kColumnRemark);
    const std::vector<CheckRow>& rows = context.derived.checks.rows;
    const ImFont* small = context.ui.fonts.small;
    const auto column = [&](std::string_view heading, double least, double share, Align align,
                            std::string CheckRow::*text, const ImFont* font) {
        return Column{{heading}, least, share, align, -1, false, longestOf(rows, text), font};
    };
    const std::array columns{
        column(member, 64, 0.4, Align::Left, &CheckRow::name, nullptr),
        column(use, 60, 0.4, Align::Right, &CheckRow::use, context.ui.fonts.strong),
        column(check, 70, 0.5, Align::Left, &CheckRow::check, small),
        column("λ", 48, 0.4, Align::Right, &CheckRow::slenderness, nullptr),
        column(remark, 110, 1, Align::Left, &CheckRow::remark, small)};
    sectionHeading(context.ui, words(context, phrase::kCheckCaption));
    Table table(context.ui, "use", columns);
    table.header();
    drawRows(table, rows.size(), [&](std::size_t i) { useRow(context, table, rows[i]); });
}

void workedCheck(PanelContext& context) {
    const ChecksShown& shown = context.derived.checks;
    gap(context.ui, 8);
    if (shown.working.empty()) {
        smallPrint(context.ui, words(context, phrase::kCheckPickOne));
    }
    for (std::size_t i = 0; i < shown.working.size(); ++i) {
        drawPassage(context.ui, static_cast<int>(i), shown.working[i]);
    }
}

} // namespace

void checksPage(PanelContext& context) {
    const ChecksShown& shown = context.derived.checks;
    if (!isOf(shown, context.state)) {
        progressOf(context, context.derived.jobs.checks);
        return;
    }
    paragraph(context.ui, shown.caution.front(), Ink::Warning); // does not scroll with the rest
    beginScroll(context.ui, "checks");
    for (std::size_t i = 1; i < shown.caution.size(); ++i) {
        smallPrint(context.ui, shown.caution[i]);
    }
    gap(context.ui, 6);
    sentences(context, shown.lines, shown.warnings);
    loadsOfChecks(context);
    if (!shown.rows.empty()) {
        useOnBoard(context);
        settingsOfPicked(context);
        workedCheck(context);
        useTable(context);
    }
    settingsOfChecks(context);
    gap(context.ui, 16);
    endScroll();
}

} // namespace gusset
