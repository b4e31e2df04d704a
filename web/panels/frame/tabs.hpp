#pragma once
// Parts of the panels that have a file of their own.

#include "panels/frame/panels.hpp"

#include <vector>

namespace gusset {

void modelTab(PanelContext&);          // tables that can be typed into
void propertyTables(PanelContext&);    // sections and materials
void combinationsTable(PanelContext&); // of load cases, with factors; in the model tab
void movingTables(PanelContext&);      // all loads that move; likewise
void modelSettings(PanelContext&);     // units, at the end of the model tab
void forcesTab(PanelContext&);         // results: forces, and what else loads do
void classSettings(PanelContext&);     // a page of the working tab
void workingTab(PanelContext&);        // steps; its bar stays while the steps scroll
void linkCode(PanelContext&);          // the link's QR code, in the share tab
void shareTab(PanelContext&);          // link, files, examples

// Pages of the results.
void movementPage(PanelContext&);  // displacements
void envelopePage(PanelContext&);  // which loads are worst for each member
void influencePage(PanelContext&); // what a load does that moves
void checksPage(PanelContext&);    // how far each member is used
// What they share.
void loadChoice(PanelContext&);       // which loads act, where there is a choice
void mechanismButtons(PanelContext&); // shows it move; nothing where nothing can

// Loads that move along one path, to be typed into, and a button for one more.
void movingLoadsOn(PanelContext&, const std::vector<JointId>& path);

void starters(PanelContext&); // trusses of the usual forms, in the share tab

void keyOverview(PanelContext&); // at the end of the share tab; nothing where fingers are used

// Several things, or while several are being picked; likewise over the tools.
[[nodiscard]] bool severalPanel(PanelContext&);
// What is picked, over the tools. False: nothing is, and nothing was drawn.
[[nodiscard]] bool inspector(PanelContext&);
// Words in these strips, their middle at `at.y`; gives back where they end, and some air. Device
// px.
float stripWords(const Ui&, const ImFont&, ImVec2 at, std::string_view text, Colour);

void viewMenu(PanelContext&); // layers and theme: the button in the header and what it opens

} // namespace gusset
