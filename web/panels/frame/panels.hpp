#pragma once
// One function per panel, one file each. They read, draw with Dear ImGui and append actions; they
// don't solve, don't format numbers of their own and never write the state.

#include "app/derived/derived.hpp"
#include "app/fields/field.hpp"
#include "app/state/action.hpp"
#include "app/state/layout.hpp"
#include "report/sketch/qr_code.hpp"
#include "ui/heights.hpp"
#include "ui/theme.hpp"

namespace gusset {

struct PanelContext {
    const AppState& state;
    const Derived& derived;
    const PageLayout& layout;
    const Viewport& viewport;
    const Ui& ui;
    FieldHost& field;
    Heights& heights; // of the working
    Actions& actions;
    PageRequests& requests;
    const std::optional<QrCode>& linkCode; // of the whole address; none: too long for one
    bool canShareLinks = false;            // the system has a share sheet
};

void headerPanel(PanelContext&);   // start page, title, undo, redo, fit, share, notebook
void readerPanel(PanelContext&);   // reading mode: the buttons at the bottom
void toolsPanel(PanelContext&);    // the strip at the bottom
void notebookPanel(PanelContext&); // tabs: model, forces, working, share
void messagePanel(PanelContext&);  // errors and notices
void legendPanel(PanelContext&);   // how tension and compression are drawn, if there is room
void boardMenu(PanelContext&);     // what can be done at a place, on top of everything

} // namespace gusset
