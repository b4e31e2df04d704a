#include "app/fields/finish_field.hpp"

#include "app/fields/cell_text.hpp"
#include "app/fields/cells.hpp"
#include "app/fields/check_field.hpp"
#include "app/fields/load_cells.hpp"
#include "app/fields/page_controls.hpp"
#include "app/fields/paste.hpp"
#include "app/state/commit.hpp"
#include "phrases/history.hpp"

namespace gusset {
namespace {

struct Finish {
    const AppState& state;
    const FieldDone& done;
    Actions& actions;

    // Ends the field, unless another has been opened since. False: typing was cancelled.
    [[nodiscard]] bool isKept() const {
        if (!state.field.id || *state.field.id == done.field) {
            actions.push_back(EndField{});
        }
        return done.how != FieldEnd::GivenUp;
    }

    // Commits the edit and returns the model after it.
    [[nodiscard]] Truss commit(const Outcome<Edit>& edit) const {
        if (!commitOrSay(edit, actions)) {
            return state.truss;
        }
        const Outcome<Truss> after = gusset::apply(state.truss, edit.value());
        return after ? after.value() : state.truss;
    }

    [[nodiscard]] Truss commitRows(const Cell& cell, const RowOrder& order) const {
        const Outcome<Truss> after = pasteRows(state.truss, cell, done.text, order);
        if (!after) {
            actions.push_back(Say{MessageKind::Problem, after.issues().front().says});
            return state.truss;
        }
        actions.push_back(Commit{ReplaceTruss{after.value(), phrase::kStepPasteRows}});
        return after.value();
    }

    [[nodiscard]] Truss commitCell(const Cell& cell, const RowOrder& order) const {
        const bool isNew = cell.row == rowsOf(state.truss, cell.table);
        const bool mayBeEmpty = !isNew && columnOf(cell).more.mayBeEmpty;
        if ((done.text.empty() && !mayBeEmpty) || done.text == cellText(state.truss, cell)) {
            return state.truss;
        }
        return looksLikeRows(done.text) ? commitRows(cell, order)
                                        : commit(cellEdit(state.truss, cell, done.text));
    }

    bool operator()(TitleField) const {
        if (isKept() && done.text != state.truss.title) {
            actions.push_back(Commit{SetTitle{done.text}});
        }
        return true;
    }

    // Commits the text along the rows as they are shown. Returns the next cell; none if the row has
    // gone meanwhile.
    [[nodiscard]] std::optional<BeginField> goOnFrom(const Cell& cell) const {
        if (!isKept() || !canType(state.truss, cell)) {
            return std::nullopt;
        }
        const RowOrder order = shownRows(state, cell.table, cell.row);
        const Truss after = commitCell(cell, order);
        const std::optional<Cell> next = cellAfter(after, cell, done.how, order);
        return next ? std::optional(BeginField{*next, cellText(after, *next)}) : std::nullopt;
    }

    bool operator()(const Cell& cell) const {
        if (const std::optional<BeginField> next = goOnFrom(cell)) {
            actions.push_back(*next);
        }
        return true;
    }

    // The inspector has only one row, so Enter ends there.
    bool operator()(const PickedCell& picked) const {
        const std::optional<BeginField> next = goOnFrom(picked.cell);
        const auto* cell = next ? std::get_if<Cell>(&next->field) : nullptr;
        if (cell && done.how != FieldEnd::Below && cell->row == picked.cell.row &&
            pickedName(state.truss, *cell)) {
            actions.push_back(BeginField{PickedCell{*cell}, next->text});
        }
        return true;
    }

    // All rows are shown, in model order; the page itself finds the next cell.
    bool operator()(const PageCell& field) const {
        if (isKept() && canType(state.truss, field.cell)) {
            (void)commitCell(field.cell, asDrawn(state.truss, field.cell.table));
        }
        return true;
    }

    bool operator()(const PageRow& of) const {
        if (of.row >= rowsOf(state.truss, of.table)) {
            return true;
        }
        if (of.press == RowPress::Remove) {
            actions.push_back(Commit{modelTable(of.table).remove(of.row)});
        } else {
            Support support = state.truss.supports[static_cast<std::size_t>(of.row)];
            support.kind = done.text == "pin" ? SupportKind::Pin : SupportKind::Roller;
            actions.push_back(Commit{ChangeSupport{SupportId{of.row}, support}});
        }
        return true;
    }

    bool operator()(const PageControl& control) const {
        press(state, control, done.text, actions);
        return true;
    }

    bool operator()(const PageAnswer& asked) const {
        answer(state, asked, done.text, actions);
        return true;
    }

    bool operator()(PageList list) const {
        const Outcome<Actions> typed = listTyped(state, list, done.text);
        if (typed) {
            actions.insert(actions.end(), typed.value().begin(), typed.value().end());
        } else {
            actions.push_back(Say{MessageKind::Problem, typed.issues().front().says});
        }
        return true;
    }

    bool operator()(const ListField& field) const {
        if (!isKept() || !canType(state.truss, field)) {
            return true;
        }
        Truss after = state.truss;
        if (done.text != listText(state.truss, field)) {
            const Outcome<Edit> edit = listEdit(state.truss, field, done.text);
            after = commit(edit);
            if (!edit) {
                return true;
            }
        }
        if (const std::optional<ListField> next = listFieldAfter(after, field, done.how)) {
            actions.push_back(BeginField{*next, listText(after, *next)});
        }
        return true;
    }

    bool operator()(const CheckField& field) const {
        if (isKept() && done.text != checkText(state.truss, field)) {
            commitOrSay(checkEdit(state.truss, field, withPoints(state.truss, done.text)), actions);
        }
        return true;
    }

    bool operator()(FactorField field) const {
        const std::vector<MemberId>& members = state.selection.members;
        if (isKept() && !members.empty() && done.text != factorText(state.truss, members, field)) {
            commitOrSay(factorEdit(members, field, withPoints(state.truss, done.text)), actions);
        }
        return true;
    }

    bool operator()(const SearchField& field) const {
        TableView tableView = tableViewOf(state.notebook, field.table);
        if (isKept() && trimmed(done.text) != tableView.words) {
            tableView.words = trimmed(done.text);
            actions.push_back(SetTableView{field.table, tableView});
        }
        return true;
    }

    template <class Other>
    bool operator()(const Other&) const {
        return false;
    }
};

} // namespace

bool finishField(const AppState& state, const FieldDone& done, Actions& actions) {
    return std::visit(Finish{state, done, actions}, done.field);
}

} // namespace gusset
