#include "panels/frame/parts.hpp"
#include "panels/frame/tabs.hpp"
#include "panels/pages/examples.hpp"

#include <string>

namespace gusset {
namespace {

// Characters of the fragment: what chats and mail programs are known to carry whole.
constexpr std::size_t kGoodLength = 2000;
constexpr std::size_t kLongLength = 8000;

std::string aboutLength(std::size_t length) {
    const std::string size = "The link is " + std::to_string(length) + " characters long";
    if (length <= kGoodLength) {
        return size +
               ": it fits in any message. The whole truss is in it; nothing is kept on a server.";
    }
    if (length <= kLongLength) {
        return size + ". Some messengers cut links as long as this: a file is safer.";
    }
    return size + ", too long for most messengers: send a file.";
}

void noLink(PanelContext& context) {
    smallPrint(context.ui, context.derived.linkFault);
    if (button(context.ui, "Save as a file##instead", {.primary = true, .full = true})) {
        context.requests.saveFile = true;
    }
}

void sendingLink(PanelContext& context) {
    const Ui& ui = context.ui;
    if (button(ui, "Copy link##share", {.icon = Icon::Share, .primary = true, .full = true})) {
        context.requests.copyLink = true;
    }
    if (context.canShareLinks &&
        button(ui, "Share by …##system", {.icon = Icon::Share, .full = true})) {
        context.requests.shareLink = true;
    }
    smallPrint(ui, aboutLength(context.derived.link.size()));
    linkCode(context);
}

void link(PanelContext& context) {
    const Ui& ui = context.ui;
    sectionHeading(ui, "This truss as a link");
    if (context.derived.link.empty()) {
        noLink(context);
    } else {
        sendingLink(context);
    }
    gap(ui, 4);
    FieldLook look;
    look.field = LinkField::Open;
    look.name = look.hint = "Paste a link here to open it";
    look.numeric = false;
    look.framed = true;
    fieldLine(context, look);
}

void files(PanelContext& context) {
    const Ui& ui = context.ui;
    sectionHeading(ui, "Files and pages");
    ImGui::PushStyleVar(ImGuiStyleVar_ItemSpacing, {0, 0});
    if (listRow(ui, "Save as a file")) {
        context.requests.saveFile = true;
    }
    if (listRow(ui, "Open a file")) {
        context.requests.openFile = true;
    }
    if (listRow(ui, "Recent boards", "kept in this browser")) {
        context.requests.showRecent = true;
    }
    if (listRow(ui, "Save the board as SVG", "a drawing")) {
        context.requests.savePicture = true;
    }
    if (listRow(ui, "Save the board as PNG", "a picture")) {
        context.requests.savePixels = true;
    }
    if (listRow(ui, "Save the results as CSV", "for a spreadsheet")) {
        context.requests.saveResults = true;
    }
    if (listRow(ui, "Read as a page", "tables and working")) {
        context.requests.readAsPage = true;
    }
    if (listRow(ui, "Help", "how to use Gusset")) {
        context.requests.showHelp = true;
    }
    if (listRow(ui, "New empty board", "undo brings this one back")) {
        Truss empty;
        empty.units = context.state.truss.units;
        empty.classSettings = context.state.truss.classSettings;
        context.actions.push_back(Commit{ReplaceTruss{empty, "New board"}});
        context.actions.push_back(SetTool{Tool::Member});
    }
    ImGui::PopStyleVar();
}

void exampleList(PanelContext& context) {
    sectionHeading(context.ui, "Examples");
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
