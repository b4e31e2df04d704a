#include "panels/frame/panel_context.hpp"
#include "panels/frame/tabs.hpp"
#include "phrases/frame.hpp"
#include "phrases/share.hpp"

#include <string>

namespace gusset {
namespace {

// Length of a fragment in characters that chat and mail programs are known to transmit in full.
constexpr std::size_t kGoodLength = 2000;
constexpr std::size_t kLongLength = 8000;

std::string aboutLength(const PhraseBook& book, std::size_t length) {
    return sayPlain(book,
                    length <= kGoodLength   ? phrase::kLinkFits
                    : length <= kLongLength ? phrase::kLinkLong
                                            : phrase::kLinkTooLong,
                    {{"n", length}});
}

void noLink(PanelContext& context) {
    smallPrint(context.ui, context.derived.linkFault);
    if (button(context.ui, wordsAs(context, phrase::kSaveFile, "##instead").c_str(),
               {.primary = true, .full = true})) {
        context.requests.saveFile = true;
    }
}

void sendingLink(PanelContext& context) {
    const Ui& ui = context.ui;
    if (button(ui, wordsAs(context, phrase::kCopyLink, "##share").c_str(),
               {.icon = Icon::Share, .primary = true, .full = true})) {
        context.requests.copyLink = true;
    }
    if (context.canShareLinks && button(ui, wordsAs(context, phrase::kShareBy, "##system").c_str(),
                                        {.icon = Icon::Share, .full = true})) {
        context.requests.shareLink = true;
    }
    smallPrint(ui, aboutLength(*context.state.book, context.derived.link.size()));
    linkCode(context);
}

void link(PanelContext& context) {
    const Ui& ui = context.ui;
    sectionHeading(ui, words(context, phrase::kAsLink));
    if (context.derived.link.empty()) {
        noLink(context);
    } else {
        sendingLink(context);
    }
}

void files(PanelContext& context) {
    const Ui& ui = context.ui;
    sectionHeading(ui, words(context, phrase::kFilesAndPages));
    ImGui::PushStyleVar(ImGuiStyleVar_ItemSpacing, {0, 0});
    if (listRow(ui, words(context, phrase::kSaveFile))) {
        context.requests.saveFile = true;
    }
    const bool white = context.state.view.whitePictures;
    if (toggle(ui, words(context, phrase::kOnWhite), white)) {
        context.actions.push_back(Set{&View::whitePictures, !white});
    }
    if (listRow(ui, words(context, phrase::kSaveSvg), words(context, phrase::kADrawing))) {
        context.requests.savePicture = true;
    }
    if (listRow(ui, words(context, phrase::kSavePng), words(context, phrase::kAPicture))) {
        context.requests.savePixels = true;
    }
    if (listRow(ui, words(context, phrase::kSaveCsv), words(context, phrase::kForSpreadsheet))) {
        context.requests.saveResults = true;
    }
    if (listRow(ui, words(context, phrase::kReadAsPage),
                words(context, phrase::kTablesAndWorking))) {
        context.requests.readAsPage = true;
    }
    if (!context.derived.link.empty() &&
        listRow(ui, words(context, phrase::kShowLesson), words(context, phrase::kToARoom))) {
        context.requests.leaveFor = "lesson";
    }
    if (!context.derived.link.empty() &&
        listRow(ui, words(context, phrase::kSetExercise), words(context, phrase::kForStudents))) {
        context.requests.leaveFor = "course";
    }
    if (!context.derived.link.empty() && listRow(ui, words(context, phrase::kChooseProfiles),
                                                 words(context, phrase::kLightestThatPass))) {
        context.requests.leaveFor = "workshop";
    }
    if (listRow(ui, words(context, phrase::kPhotograph), words(context, phrase::kUnderBoard))) {
        context.requests.leaveFor = "ground";
    }
    ImGui::PopStyleVar();
}

} // namespace

void shareTab(PanelContext& context) {
    beginScroll(context.ui, "share");
    link(context);
    files(context);
    gap(context.ui, 16);
    endScroll();
}

} // namespace gusset
