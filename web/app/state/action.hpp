#pragma once
// What a panel or a tool asks for. `update` carries out a list of them, in order, once a frame.

#include "app/state/state.hpp"
#include "core/one_of.hpp"

#include <memory>
#include <optional>
#include <string>
#include <type_traits>
#include <variant>
#include <vector>

namespace gusset {

struct Commit { // an edit that goes into the history
    Edit edit;
};
struct ShowEdit { // during a gesture: shown on top of the committed model, not recorded
    Edit edit;
};
struct EndGesture { // keep: what was last shown is committed as one entry
    bool keep = true;
};
struct SetGesture {
    Gesture gesture;
};
struct SetChain {
    Chain chain;
};
struct SetDrawn {
    Drawn drawn;
};
struct SetMenu {
    BoardMenu menu;
};
struct PickSeveral {
    bool on = false;
};
struct SetFigures { // where the drawing has them now
    std::vector<Figure> figures;
};
struct SeePen {}; // from now on fingers don't draw, unless the view says so
struct Undo {};
struct Redo {};
struct SetTool {
    Tool tool = Tool::Select;
};
struct SetSelection {
    Things things;
};
struct SetHover {
    Hit hit;
};
struct SetCamera {
    Camera camera;
};
struct ZoomToFit {};
struct Read { // reading mode; the page asks for it, by its size
    bool on = false;
};
struct LeaveWorking {}; // turns the notebook back to where it was
// One setting of the view, the notebook or its influence lines: `Set{&View::showForces, true}`.
// Other changes made in the same frame are kept.
template <class Owner, class Value>
struct Set {
    Value Owner::*setting;
    Value to;
};
template <class Owner, class Value>
Set(Value Owner::*, std::type_identity_t<Value>) -> Set<Owner, Value>;

struct SetTableView { // of one table of the notebook
    SortedTable table = SortedTable::Forces;
    TableView tableView;
};
struct SetMotion {
    Motion motion;
};
struct BeginField {
    FieldId field;
    std::string text;
    bool goesOn = false;
};
struct EndField {};
struct SetChoice {
    LoadChoice choice;
};
struct Say {
    MessageKind kind = MessageKind::Info;
    Statement text{};
};
// Numbered as in site/files.js. FirstNew: a new board of somebody who has never drawn on one.
enum class OpenedFrom { File, Link, Example, Before, New, FirstNew, Form };
struct OpenText { // a link, or the text of a file
    std::string text;
    OpenedFrom from = OpenedFrom::File;
    std::string file{}; // its name, if it has one
};

using ActionKind = std::variant<
    Commit, ShowEdit, EndGesture, SetGesture, SetChain, SetDrawn, SetMenu, PickSeveral, SetFigures,
    SeePen, Undo, Redo, SetTool, SetSelection, SetHover, SetCamera, ZoomToFit, Read, LeaveWorking,
    Set<View, bool>, Set<View, int>, Set<View, MemberFigure>, Set<View, ThemeChoice>,
    Set<NotebookState, bool>, Set<NotebookState, int>, Set<NotebookState, double>,
    Set<NotebookState, NotebookTab>, Set<NotebookState, ResultPage>,
    Set<NotebookState, ForceFilter>, Set<NotebookState, WorkingPage>, Set<InfluenceView, bool>,
    Set<InfluenceView, PathKind>, Set<InfluenceView, std::string>,
    Set<InfluenceView, std::vector<std::string>>, Set<InfluenceView, std::optional<double>>,
    Set<PageParts, bool>, SetTableView, SetMotion, BeginField, EndField, SetChoice, Say, OpenText>;

// One of these, shared since it never changes. Like Edit, its special members are in one source
// file only.
class Action {
public:
    template <class Kind>
    requires isOneOf<Kind, ActionKind> Action(Kind kind);

    [[nodiscard]] const ActionKind& kind() const { return *kind_; }
    template <class Kind>
    [[nodiscard]] const Kind* as() const {
        return std::get_if<Kind>(kind_.get());
    }

private:
    std::shared_ptr<const ActionKind> kind_;
};
using Actions = std::vector<Action>;

// Opens the notebook at a page; the working at its first step.
void turnTo(NotebookTab, Actions&);
void turnTo(WorkingPage, Actions&);

} // namespace gusset
