#include "panels/frame/panel_context.hpp"
#include "panels/frame/tabs.hpp"
#include "panels/pages/examples.hpp"
#include "phrases/frame.hpp"
#include "phrases/history.hpp"
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
    gap(ui, 4);
    FieldLook look;
    look.field = LinkField::Open;
    look.name = look.hint = words(context, phrase::kPasteLink);
    look.numeric = false;
    look.framed = true;
    fieldLine(context, look);
}

void files(PanelContext& context) {
    const Ui& ui = context.ui;
    sectionHeading(ui, words(context, phrase::kFilesAndPages));
    ImGui::PushStyleVar(ImGuiStyleVar_ItemSpacing, {0, 0});
    if (listRow(ui, words(context, phrase::kSaveFile))) {
        context.requests.saveFile = true;
    }
    if (listRow(ui, words(context, phrase::kOpenFile))) {
        context.requests.openFile = true;
    }
    if (listRow(ui, words(context, phrase::kRecentBoards),
                words(context, phrase::kKeptInBrowser))) {
        context.requests.showRecent = true;
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
    if (listRow(ui, words(context, phrase::kHelp), words(context, phrase::kHowToUse))) {
        context.requests.showHelp = true;
    }
    if (listRow(ui, words(context, phrase::kNewBoard), words(context, phrase::kUndoBringsBack))) {
        Truss empty;
        empty.units = context.state.truss.units;
        empty.classSettings = context.state.truss.classSettings;
        context.actions.push_back(Commit{ReplaceTruss{empty, phrase::kStepNewBoard}});
        context.actions.push_back(SetTool{Tool::Member});
    }
    ImGui::PopStyleVar();
}

void exampleList(PanelContext& context) {
    sectionHeading(context.ui, words(context, phrase::kExamples));
    ImGui::PushStyleVar(ImGuiStyleVar_ItemSpacing, {0, 0});
    for (const Example& example : examples()) {
        if (listEntry(context.ui, example.title, example.says)) {
            context.requests.openExample = example.file;
        }
    }
    ImGui::PopStyleVar();
}

} // namespace

void shareTab(PanelContext& context) {
    beginScroll(context.ui, "share");
    link(context);
    files(context);
    starters(context);
    exampleList(context);
    keyOverview(context);
    gap(context.ui, 16);
    endScroll();
}

} // namespace gusset
