#pragma once
// Parts of the panels that have a file of their own.

#include "panels/panels.hpp"

namespace gusset {

void modelTab(PanelContext&);       // tables that can be typed into
void propertyTables(PanelContext&); // sections and materials
void modelSettings(PanelContext&);  // units, at the end of the model tab
void forcesTab(PanelContext&);      // results: forces, and what else loads do
void classSettings(PanelContext&);  // a page of the working tab
void workingTab(PanelContext&);     // steps; its bar stays while the steps scroll
void shareTab(PanelContext&);       // link, files, examples

// Pages of the results.
void movementPage(PanelContext&); // displacements
// What they share.
void loadChoice(PanelContext&);       // which loads act, where there is a choice
void mechanismButtons(PanelContext&); // shows it move; nothing where nothing can

void starters(PanelContext&); // trusses of the usual forms, in the share tab

void keyOverview(PanelContext&); // at the end of the share tab; nothing where fingers are used

// What is picked, over the tools. False: nothing is, and nothing was drawn.
[[nodiscard]] bool inspector(PanelContext&);

void viewMenu(PanelContext&); // layers and theme: the button in the header and what it opens

} // namespace gusset
