#include "page.hpp"

#include "app/page/page_text.hpp"
#include "app/state/session.hpp"
#include "app/state/update.hpp"
#include "board_picture.hpp"
#include "canvas/hands/board_field.hpp"
#include "canvas/scene/lesson.hpp"
#include "canvas/scene/movement.hpp"
#include "exchange/links/link.hpp"
#include "page_input.hpp"
#include "page_modes.hpp"
#include "page_output.hpp"
#include "panels/frame/panels.hpp"
#include "phrases/frame.hpp"
#include "ui/labels.hpp"

#include <imgui.h>
#include <imgui_impl_opengl3.h>

#include <algorithm>
#include <array>
#include <chrono>
#include <cstdlib>
#include <utility>

namespace gusset {

namespace {

constexpr int kFramesAfterChange = 3;             // ImGui settles its layout within two
constexpr double kLongestStep = 0.1;              // s: after an idle minute nothing should jump
constexpr std::chrono::microseconds kSlice{5000}; // per frame, for long calculations

PageLayout layoutOf(const Page& page) { return layoutFor(page.viewport, page.state.notebook); }

void fitBoardToPage(Page& page, const PageLayout& layout) {
    const Camera camera = withLayout(page.state.view.camera, page.viewport, layout);
    if (camera != page.state.view.camera) {
        update(page.state, {SetCamera{camera}});
    }
}

bool tabIsOnScreen(const AppState& state, NotebookTab tab) {
    return state.notebook.open && state.notebook.tab == tab;
}

bool inGesture(const AppState& state) { return state.gesture.kind != GestureKind::None; }

// Advances any animation on the board, and asks for the next frame.
void moveOn(Page& page, double seconds) {
    const bool played = page.state.motion.plays;
    const Motion later =
        laterMotion(page.state, page.derived, seconds, page.viewport.reducedMotion);
    update(page.state, {SetMotion{later}});
    if (played) {
        page.framesWanted = std::max(page.framesWanted, 2);
    }
}

// The share of this frame that long calculations may take.
Slice sliceOf(const Page& page) {
    const bool moves = inGesture(page.state) && page.state.revision != page.frameRevision;
    const auto clock = [] {
        const auto now = std::chrono::steady_clock::now().time_since_epoch();
        return std::chrono::duration_cast<std::chrono::microseconds>(now);
    };
    return {.left = kSlice, .clock = clock, .moves = moves};
}

// Derives what the open page shows. True while there is more to do.
bool deriveResults(Page& page, Slice& slice) {
    const AppState& state = page.state;
    Derived& derived = page.derived;
    // What the page's own tables were asked for, while they are read.
    const PageParts parts = page.workingInPageText ? state.pageParts : PageParts{};
    bool more = false;
    if (showsChecks(state) || showsUse(state) || parts.checks) {
        more = deriveChecks(state, derived, slice) || more;
    }
    if (showsEnvelope(state) || parts.envelope) {
        more = deriveEnvelope(state, derived, slice) || more;
    }
    if (showsInfluence(state) || parts.influence) {
        const double width = columnWidth(layoutOf(page));
        more = deriveInfluence(state, derived.influence, width, slice) || more;
    }
    const bool wantsExact = tabIsOnScreen(state, NotebookTab::Forces) && state.notebook.exact;
    if ((wantsExact || parts.exact) && !inGesture(state)) {
        more = deriveExact(state, derived, slice) || more;
    }
    return more;
}

void refreshLinkCode(Page& page) {
    if (page.codedLink != page.derived.link) {
        page.codedLink = page.derived.link;
        page.linkCode = page.derived.link.empty()
                            ? std::nullopt
                            : qrCodeOf(page.address + "#" + page.derived.link);
    }
}

// Fails as a bug in a calculation would.
void failInTest(const Page& page) {
    if (!page.fatal.empty() &&
        writeModel(page.state.truss, Layout::Compact).find(page.fatal) != std::string::npos) {
        std::abort();
    }
}

void deriveAll(Page& page, Slice& slice) {
    failInTest(page);
    derive(page.state, page.derived);
    bool more = deriveResults(page, slice);
    if (tabIsOnScreen(page.state, NotebookTab::Share)) {
        deriveLink(page.state, page.derived);
        refreshLinkCode(page);
    }
    const bool onScreen = tabIsOnScreen(page.state, NotebookTab::Working);
    if (onScreen || page.workingInPageText) {
        more = deriveWorking(page.state, page.derived, slice) || more;
    }
    if (more) {
        page.framesWanted = std::max(page.framesWanted, 2);
    }
    if (onScreen) {
        Actions actions;
        keepStepInRange(page.state, page.derived, actions);
        update(page.state, actions);
    }
}

void refreshPageTheme(Page& page) {
    constexpr std::array kNames{"paper", "dark", "sun"}; // in the order of PaletteName
    const PaletteName theme = paletteFor(page.state.view.theme, page.viewport);
    if (page.theme != theme) {
        page.theme = theme;
        setPageTheme(kNames[static_cast<std::size_t>(theme)]);
    }
}

void beginPanels(Page& page, const Canvas& canvas, double now) {
    if (refreshUi(
            page.ui,
            {.viewport = page.viewport, .theme = page.state.view.theme, .drawRun = drawRun})) {
        ImGui_ImplOpenGL3_DestroyFontsTexture();
        ImGui_ImplOpenGL3_CreateFontsTexture();
        page.screen.forget();
    }
    ImGuiIO& io = ImGui::GetIO();
    io.DisplaySize = {static_cast<float>(canvas.width), static_cast<float>(canvas.height)};
    io.DeltaTime = static_cast<float>(std::clamp(now - page.lastFrame, 0.001, kLongestStep));
    page.lastFrame = now;
    page.focused = {};
    page.ui.focused = &page.focused;
    if (page.panelPointer.beginFrame()) {
        page.framesWanted = std::max(page.framesWanted, 2);
    }
    ImGui_ImplOpenGL3_NewFrame();
    ImGui::NewFrame();
    page.panelKeys.beginFrame();
}

PageRequests runPanels(Page& page, const PageLayout& layout) {
    Actions actions;
    PageRequests requests;
    PanelContext context{.state = page.state,
                         .derived = page.derived,
                         .layout = layout,
                         .viewport = page.viewport,
                         .ui = page.ui,
                         .field = page.field,
                         .heights = page.workingHeights,
                         .actions = actions,
                         .requests = requests,
                         .linkCode = page.linkCode,
                         .canShareLinks = page.canShareLinks};
    headerPanel(context);
    toolsPanel(context);
    readerPanel(context);
    notebookPanel(context);
    messagePanel(context);
    legendPanel(context);
    boardMenu(context);
    if (!actions.empty()) {
        page.framesWanted = std::max(page.framesWanted, kFramesAfterChange);
    }
    if (requests.drawAgain) {
        page.framesWanted = std::max(page.framesWanted, 2);
    }
    update(page.state, actions);
    return requests;
}

Scene composeBoard(Page& page) {
    const Ui& ui = page.ui;
    Scene scene = buildScene(page.state, page.derived, measuring(ui));
    drawLabels(*ImGui::GetBackgroundDrawList(), ui, scene.labels);
    page.loupeShown = scene.loupe.shown;
    drawLoupeRim(*ImGui::GetBackgroundDrawList(), ui, scene);
    if (scene.figures != page.state.figures) {
        update(page.state, {SetFigures{scene.figures}});
    }
    return scene;
}

// Draws the frame, unless the screen already shows it.
void show(Page& page, const Scene& scene, const Canvas& canvas) {
    ImGui::Render();
    page.renderer->prepare(scene, *page.ui.palette, canvas, page.screen);
    page.screen.add(*ImGui::GetDrawData());
    if (page.screen.changes()) {
        page.renderer->draw(scene, *page.ui.palette, canvas);
        ImGui_ImplOpenGL3_RenderDrawData(ImGui::GetDrawData());
    }
}

// Keeps the page's input element over the field being edited.
void placeField(Page& page) {
    const std::optional<FieldId>& open = page.state.field.id;
    const std::optional<FieldPlace> place =
        open && isBoardField(*open) ? boardFieldPlace(page.state) : page.field.place;
    if (place && place->field == open) {
        showField(*place);
        page.fieldShown = true;
    } else if (page.fieldShown) {
        hideField();
        page.fieldShown = false;
    }
}

// As soon as there is a change beyond a gesture in progress, and before the frame that shows it is
// on the screen.
void store(Page& page) {
    if (!storeWork(writeSession(page.state)) && !page.state.unsavedNote) {
        page.state.unsavedNote = true;
        update(page.state, {Say{MessageKind::Problem, phrase::kNothingKept}});
    }
    page.storedRevision = page.state.revision;
    page.boardIsStored = true;
}

// The scripts wait until the board is at rest before they ask for the link (addressFor).
void followWithAddress(Page& page) {
    if (page.addressRevision != page.state.revision || page.addressLoads != page.state.choice) {
        page.addressRevision = page.state.revision;
        page.addressLoads = page.state.choice;
        addressIsBehind();
    }
}

void refreshPageText(Page& page) {
    if (inGesture(page.state) || page.owner == PointerOwner::Panels) {
        return;
    }
    const bool isRead = page.workingInPageText;
    std::string moving =
        isRead ? partsHtml(page.state, page.derived) : movingHtml(page.state, page.derived);
    const bool hasWorking = isRead && isShown(page.state, page.derived.working);
    const std::uint64_t working = hasWorking ? page.derived.working.serial : 0;
    if (page.pageTextRevision != page.state.revision || page.pageTextWorking != working ||
        (isRead && page.pageTextSelection != page.state.selection) ||
        page.pageTextWantsWorking != page.workingInPageText ||
        page.pageTextLoads != page.state.choice || page.movingInPageText != moving) {
        page.movingInPageText = std::move(moving);
        page.pageTextRevision = page.state.revision;
        page.pageTextLoads = page.state.choice;
        page.pageTextWorking = working;
        page.pageTextSelection = page.state.selection;
        page.pageTextWantsWorking = page.workingInPageText;
        std::string html =
            pageTextHtml(page.state, page.derived, isRead ? PageCells::Typed : PageCells::Plain) +
            page.movingInPageText;
        if (isRead) {
            html += workingHtml(page.state, page.derived);
        }
        setPageText(html, boardSummary(page.state, page.derived));
    }
}

// One sentence for what a frame has changed. An item of a panel that is scrolled out of sight is
// not drawn, and stays what was heard last.
void announceNews(Page& page) {
    if (inGesture(page.state) || page.owner == PointerOwner::Panels) {
        return; // at the end of the drag, not at every pixel
    }
    const bool unseen = page.panelKeys.inPanel() && page.focused.panel.empty();
    const std::string news =
        announcement(page.heard, page.state, page.derived, unseen ? page.heard.item : page.focused);
    if (!news.empty()) {
        announce(news);
    }
}

// News leaves when there was time to read it; a problem stays until it is closed or remedied.
void letMessageLeave(Page& page, double now) {
    constexpr double kLeast = 5;   // s, to notice it
    constexpr double kEach = 0.06; // s, to read a letter
    const Message& message = page.state.message;
    if (message.kind != MessageKind::Info || message.text.empty()) {
        return;
    }
    if (page.leavingSerial != message.serial) {
        const double time = kLeast + kEach * static_cast<double>(message.text.size());
        page.leavingSerial = message.serial;
        page.leavesAt = now + time;
        drawAgainAfter(time + 0.1);
    } else if (now >= page.leavesAt) {
        update(page.state, {Say{MessageKind::Info, ""}});
        page.framesWanted = std::max(page.framesWanted, kFramesAfterChange);
    }
}

Cursor cursorOfPanels() {
    switch (ImGui::GetMouseCursor()) {
    case ImGuiMouseCursor_Hand:
        return Cursor::Hand;
    case ImGuiMouseCursor_TextInput:
        return Cursor::Text;
    case ImGuiMouseCursor_ResizeEW:
        return Cursor::ResizeAcross;
    case ImGuiMouseCursor_ResizeNS:
        return Cursor::ResizeDown;
    default:
        return Cursor::Arrow;
    }
}

Cursor cursorOfBoard(const AppState& state) {
    if (state.gesture.kind == GestureKind::Pan || state.gesture.kind == GestureKind::MoveJoint) {
        return Cursor::Move;
    }
    if (state.tool == Tool::Select) {
        return state.hover ? Cursor::Hand : Cursor::Arrow;
    }
    return Cursor::Cross;
}

void refreshCursor(Page& page) {
    const bool overPanels = ImGui::GetIO().WantCaptureMouse && page.owner != PointerOwner::Board;
    const Cursor cursor = overPanels ? cursorOfPanels() : cursorOfBoard(page.state);
    if (cursor != page.cursor) {
        page.cursor = cursor;
        showCursor(cursor);
    }
}

// Panels first, so that what they change is on the board in the same frame.
PageRequests drawFrame(Page& page, const PageLayout& layout, const Canvas& canvas, double now,
                       Slice& slice) {
    beginPanels(page, canvas, now);
    const PageRequests requests = runPanels(page, layout);
    page.field.done.reset();
    page.field.typed.clear();
    placeField(page);
    keepReading(page);
    fitBoardToPage(page, layoutOf(page));
    deriveAll(page, slice);
    moveOn(page, ImGui::GetIO().DeltaTime);
    const Scene scene = composeBoard(page);
    if (wantsFonts(page.ui)) {
        page.framesWanted = std::max(page.framesWanted, kFramesAfterChange);
    }
    show(page, scene, canvas);
    refreshCursor(page);
    return requests;
}

void endLesson(Page& page) {
    if (lessonOf(page.state, page.derived) == Lesson::Done) {
        update(page.state, {Set{&View::teaches, false}});
        lessonDone();
        page.framesWanted = std::max(page.framesWanted, 2);
    }
}

} // namespace

std::string addressFor(Page& page, std::string_view current) {
    if (isOnBoard(page.state, current)) {
        const Outcome<LoadChoice> loads = linkedLoads(current, page.state.committed);
        if (loads && loads.value() == page.state.choice) {
            return std::string(current);
        }
    }
    deriveLink(page.state, page.derived);
    return page.derived.link;
}

void runFrame(Page& page, const Canvas& canvas, double now) {
    const std::vector<PlatformEvent> events = takeEvents();
    page.framesWanted = events.empty() ? page.framesWanted - 1
                                       : std::max(page.framesWanted - 1, kFramesAfterChange);
    page.field.place.reset();
    for (const PlatformEvent& event : events) {
        takeEvent(page, event);
    }
    keepReading(page);
    const PageLayout layout = layoutOf(page);
    fitBoardToPage(page, layout);
    Slice slice = sliceOf(page);
    deriveAll(page, slice);
    if (page.renderer) {
        const PageRequests requests = drawFrame(page, layout, canvas, now, slice);
        carryOut(page, requests);
    }
    if (page.state.view.teaches) {
        endLesson(page);
    }
    if (std::exchange(page.savesFile, false)) { // with what the panels took in this frame
        saveBoard(page);
    }
    if (page.state.revision != page.storedRevision && !inGesture(page.state)) {
        store(page);
    }
    if (!inGesture(page.state)) {
        followWithAddress(page);
    }
    refreshPageTheme(page);
    refreshPageText(page);
    letMessageLeave(page, now);
    announceNews(page);
    page.frameRevision = page.state.revision;
    ++page.framesDrawn;
}

void storeBeforeLeaving(Page& page) {
    if (page.boardIsStored || page.storedRevision != page.state.revision) {
        store(page);
    }
}

} // namespace gusset
