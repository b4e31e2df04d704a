#include "page_input.hpp"

#include "app/fields/finish_field.hpp"
#include "app/state/camera.hpp"
#include "app/state/update.hpp"
#include "canvas/hands/board_field.hpp"
#include "canvas/hands/board_menu.hpp"
#include "canvas/hands/several_field.hpp"
#include "exchange/files/model_file.hpp"

#include <cmath>

namespace gusset {

namespace {

// Zoom per CSS pixel of wheel: one notch of a mouse (about 100) zooms in by a sixth; a pinch on a
// trackpad sends small steps.
constexpr double kZoomPerWheelPixel = 0.0015;
constexpr double kZoomPerPinchPixel = 0.01;

bool panelsCover(const Page& page, Vec2 pixel) {
    return page.renderer && PanelPointer::covers(pixel, page.viewport.pixelRatio);
}

void toBoard(Page& page, const PointerEvent& event) {
    Actions actions;
    stepTool(page.state, event, actions);
    update(page.state, actions);
}

void hoverNothing(Page& page) {
    if (page.state.hover) {
        update(page.state, {SetHover{}});
    }
}

void toPanels(Page& page, const PointerEvent& event) {
    if (page.renderer) {
        page.panelPointer.take(event, page.viewport.pixelRatio);
    }
}

// A pointer without a button held: a moving mouse.
void hover(Page& page, const PointerEvent& event) {
    if (panelsCover(page, event.pixel)) {
        hoverNothing(page);
        toPanels(page, event);
    } else {
        page.panelPointer.leave();
        toBoard(page, event);
    }
}

// A press outside the menu closes it and does nothing else.
bool onlyClosesMenu(Page& page, const PointerEvent& event) {
    if (!page.state.menu.open || event.phase != PointerPhase::Down) {
        return false;
    }
    const Rect menu = boardMenuRect(page.state, boardMenuLines(page.state).size());
    const Vec2 in = event.pixel - menu.at;
    if (in.x >= 0 && in.y >= 0 && in.x <= menu.size.x && in.y <= menu.size.y) {
        return false;
    }
    update(page.state, {SetMenu{}});
    page.owner = PointerOwner::Nobody;
    return true;
}

// A long press on the board, or the right button, during which no one owns the pointer.
void hold(Page& page, const PointerEvent& event) {
    const bool onBoard = page.owner == PointerOwner::Board ||
                         (page.owner == PointerOwner::Nobody && !panelsCover(page, event.pixel));
    if (onBoard && page.renderer) {
        toBoard(page, event);
    }
}

void take(Page& page, const PointerEvent& event) {
    if (event.phase == PointerPhase::LongPress) {
        hold(page, event);
        return;
    }
    if (onlyClosesMenu(page, event)) {
        return;
    }
    if (event.phase == PointerPhase::Down) {
        page.panelKeys.pointerCame();
        page.owner = panelsCover(page, event.pixel) ? PointerOwner::Panels : PointerOwner::Board;
        if (page.owner == PointerOwner::Board && page.renderer) {
            page.panelPointer.leave();
        }
    }
    if (page.owner == PointerOwner::Panels) {
        toPanels(page, event);
    } else if (page.owner == PointerOwner::Board) {
        toBoard(page, event);
    } else if (event.phase == PointerPhase::Move && page.renderer) {
        hover(page, event);
    }
    if (event.phase == PointerPhase::Up || event.phase == PointerPhase::Cancel) {
        page.owner = PointerOwner::Nobody;
    }
}

void take(Page& page, const WheelEvent& event) {
    if (panelsCover(page, event.pixel)) {
        PanelPointer::scroll(event, page.viewport.pixelRatio);
        return;
    }
    const double perPixel = event.zooms ? kZoomPerPinchPixel : kZoomPerWheelPixel;
    update(page.state, {SetCamera{zoomAbout(page.state.view.camera, event.pixel,
                                            std::exp(-perPixel * event.dy))}});
}

void take(Page& page, const PinchEvent& event) {
    if (event.begins) {
        page.pinching = page.owner != PointerOwner::Panels && !panelsCover(page, event.fromA);
        if (page.owner == PointerOwner::Panels) {
            page.panelPointer.release();
        }
        if (page.owner == PointerOwner::Board) {
            Actions actions;
            abandonGesture(page.state, actions);
            update(page.state, actions);
        }
        page.owner = PointerOwner::Nobody;
    }
    if (page.pinching) {
        update(page.state, {SetCamera{pinch(page.state.view.camera, event.fromA, event.fromB,
                                            event.toA, event.toB)}});
    }
}

void take(Page& page, const KeyEvent& event) {
    if (event.key == Key::Escape && page.renderer && PanelKeys::closeMenu()) {
        return;
    }
    if (event.key == Key::Save) {
        page.savesFile = true;
        return;
    }
    Actions actions;
    pressKey(page.state, event.key, actions);
    update(page.state, actions);
}

void take(Page& page, const PanelKeyEvent& event) {
    if (page.renderer) {
        page.panelKeys.take(event.key);
    }
}

void take(Page& page, const TypedText& event) {
    if (page.panelKeys.inPanel()) {
        page.field.typed += event.text;
        return;
    }
    Actions actions;
    beginTyping(page.state, event.text, actions);
    update(page.state, actions);
}

void take(Page& page, const FieldTyped& event) {
    Actions actions;
    followTyping(page.state, event, actions);
    update(page.state, actions);
}

// Fields of the page's own tables, which have their own inputs.
bool isOfPage(const FieldId& field) {
    return std::holds_alternative<PageCell>(field) || std::holds_alternative<PageRow>(field) ||
           std::holds_alternative<PageControl>(field) ||
           std::holds_alternative<PageAnswer>(field) || std::holds_alternative<PageList>(field) ||
           field == FieldId(TitleField::Page);
}

void take(Page& page, const FieldDone& event) {
    page.fieldShown = page.fieldShown && isOfPage(event.field);
    Actions actions;
    if (isBoardField(event.field)) {
        finishBoardField(page.state, event, actions);
    } else if (!finishField(page.state, event, actions) &&
               !finishSeveral(page.state, event, actions)) {
        page.field.done = event; // one that a panel handles
    }
    update(page.state, actions);
}

// A board from a link or a file does not overwrite the saved work until it is changed here: looking
// at a colleague's link must not lose one's own work. A gesture in progress is not yet a change.
void take(Page& page, const OpenedText& event) {
    const bool changes = page.storedRevision != page.state.revision;
    if (changes && (page.boardIsStored || page.state.gesture.kind == GestureKind::None)) {
        storeBeforeLeaving(page);
    }
    const std::uint64_t before = page.state.revision;
    update(page.state, {OpenText{event.text, event.from, event.file}});
    if (page.state.revision == before) {
        textOpened(""); // refused: the existing board is still the one to keep
        return;
    }
    textOpened(writeModel(page.state.committed, Layout::Compact));
    page.storedRevision = page.state.revision;
    page.boardIsStored = false;
}

void take(Page& page, const Said& event) { update(page.state, {Say{event.kind, event.text}}); }

// If there is room for only one, the board comes first; the header's button opens the notebook. But
// an on-screen keyboard doesn't take away the page that is typed on or read.
void take(Page& page, const Viewport& event) {
    const bool shrunk = hasRoomForOneOnly(event) && !hasRoomForOneOnly(page.viewport);
    const bool isUsed = page.state.notebook.reading || page.state.field.id;
    page.viewport = event;
    if (shrunk && page.state.notebook.open && !isUsed) {
        update(page.state, {Set{&NotebookState::open, false}});
    }
}

} // namespace

void takeEvent(Page& page, const PlatformEvent& event) {
    std::visit([&page](const auto& which) { take(page, which); }, event);
}

} // namespace gusset
