#pragma once
// Parts of panels that have their own files.

#include "panels/frame/panels.hpp"
#include "ui/widgets.hpp"

#include <string>
#include <vector>

namespace gusset {

void modelTab(PanelContext&);          // tables that can be edited
void propertyTables(PanelContext&);    // sections and materials
void casesTable(PanelContext&);        // if there are loads; in the model tab
void combinationsTable(PanelContext&); // of load cases, with factors; in the model tab
void movingTables(PanelContext&);      // all moving loads; likewise
void modelSettings(PanelContext&);     // units, at the end of the model tab
void forcesTab(PanelContext&);         // forces and other results
void classSettings(PanelContext&);     // a page of the working tab
void workingTab(PanelContext&);        // steps; its bar stays while the steps scroll
void linkCode(PanelContext&);          // the link's QR code, in the share tab
void shareTab(PanelContext&);          // link, files

// Pages of the results.
void movementPage(PanelContext&);  // displacements
void envelopePage(PanelContext&);  // which loads are worst for each member
void influencePage(PanelContext&); // the effects of a moving load
void checksPage(PanelContext&);    // the utilisation of each member
// What they share.
void loadChoice(PanelContext&);       // which loads act, if there is a choice
void mechanismButtons(PanelContext&); // animates it; does nothing if nothing can move

// The loads that move along one path, as fields, and a button to add one.
void movingLoadsOn(PanelContext&, const std::vector<JointId>& path);

// For several selected things, or while several are being selected; likewise above the tools.
[[nodiscard]] bool severalPanel(PanelContext&);
// The selected thing, above the tools. False: nothing is selected, and nothing was drawn.
[[nodiscard]] bool inspector(PanelContext&);
// Words in these strips, centred on `at.y`; returns where they end, plus a gap. Device px.
float stripWords(const Ui&, const ImFont&, ImVec2 at, std::string_view text, Colour);

// Parts of the bar of a working, and of reading mode.
void setStep(PanelContext&, int step);
void previousStep(PanelContext&, const StepPlace&);
void nextStep(PanelContext&, const StepPlace&, const ButtonLook&);
void allSteps(PanelContext&); // rather than up to the current one
[[nodiscard]] std::string stepOfMany(const PanelContext&, const StepPlace&);
void readerHeader(PanelContext&); // what the header holds in reading mode
void undoButton(PanelContext&);

void viewMenu(PanelContext&); // layers and theme: the button in the header and what it opens

} // namespace gusset
