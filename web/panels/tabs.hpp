#pragma once
// The pages of the notebook, each within its scrolled part.

#include "panels/panels.hpp"

namespace gusset {

void modelTab(PanelContext&);      // tables that can be typed into
void modelSettings(PanelContext&); // units and class settings, at the end of the model tab
void forcesTab(PanelContext&);     // the verdict, reactions, member forces
void workingTab(PanelContext&);    // steps; its bar stays while the steps scroll
void shareTab(PanelContext&);      // link, files, examples

void viewMenu(PanelContext&); // layers and theme: the button in the header and what it opens

} // namespace gusset
