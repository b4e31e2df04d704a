#pragma once
// What a panel or a tool asks for. `update` carries a list of them out, in order, once a frame.

#include "app/state.hpp"

#include <string>
#include <variant>
#include <vector>

namespace gusset {

struct Commit { // an edit that goes into the history
    // In update.cpp, once: an edit may hold a whole truss.
    Commit(Edit);
    Commit(const Commit&);
    Commit(Commit&&) noexcept;
    Commit& operator=(const Commit&);
    Commit& operator=(Commit&&) noexcept;
    ~Commit();

    Edit edit;
};
struct ShowEdit { // during a gesture: committed + edit is shown, nothing recorded
    ShowEdit(Edit);
    ShowEdit(const ShowEdit&);
    ShowEdit(ShowEdit&&) noexcept;
    ShowEdit& operator=(const ShowEdit&);
    ShowEdit& operator=(ShowEdit&&) noexcept;
    ~ShowEdit();

    Edit edit;
};
struct EndGesture { // keep: what was shown last is committed as one entry
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
struct SetView { // layers, grid, theme; keeps the camera
    View view;
};
struct SetNotebook {
    NotebookState notebook;
};
struct SetListing { // of one table of the notebook
    ListedTable table = ListedTable::Forces;
    Listing listing;
};
struct SetMotion {
    Motion motion;
};
struct BeginField {
    std::string key;
    std::string text;
    Measured measured{};
    bool goesOn = false;
};
struct EndField {};
struct SetChoice {
    LoadChoice choice;
};
struct Say {
    MessageKind kind = MessageKind::Info;
    std::string text;
};
struct OpenText { // a link, or the text of a file
    std::string text;
    std::string label;
};

using Action = std::variant<Commit, ShowEdit, EndGesture, SetGesture, SetChain, SetDrawn, SetMenu,
                            PickSeveral, SetFigures, SeePen, Undo, Redo, SetTool, SetSelection,
                            SetHover, SetCamera, ZoomToFit, SetView, SetNotebook, SetListing,
                            SetMotion, BeginField, EndField, SetChoice, Say, OpenText>;
using Actions = std::vector<Action>;

} // namespace gusset
