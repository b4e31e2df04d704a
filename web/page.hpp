#pragma once
// The page as one value, and one frame of it: what the browser brought → state → solution → panels
// → drawing → what the panels want of the browser. Without WebGL2 the same frame runs without
// panels and drawing, so that links still open and the page's own tables still answer.

#include "app/derived/derived.hpp"
#include "app/fields/field.hpp"
#include "app/page/qr_code.hpp"
#include "app/state/layout.hpp"
#include "app/state/state.hpp"
#include "platform/item_log.hpp"
#include "platform/panel_keys.hpp"
#include "platform/panel_pointer.hpp"
#include "platform/platform.hpp"
#include "render/renderer.hpp"
#include "render/screen.hpp"
#include "ui/heights.hpp"
#include "ui/theme.hpp"

#include <cstdint>
#include <memory>
#include <optional>
#include <string>

namespace gusset {

// Who has the pointer, from its going down to its coming up.
enum class PointerOwner { Nobody, Board, Panels };

struct PageLook {
    PaletteName theme = PaletteName::Paper;
    bool presenting = false;

    friend bool operator==(const PageLook&, const PageLook&) = default;
};

struct Page {
    std::string address; // of this page, without a fragment
    AppState state;
    Derived derived;
    Viewport viewport;
    FieldHost field;
    Heights workingHeights;

    std::optional<Renderer> renderer; // none: no WebGL2, or lost for good
    Screen screen;
    Ui ui;
    PanelPointer panelPointer;
    PanelKeys panelKeys;
    std::optional<QrCode> linkCode; // while the share tab is open
    std::string codedLink;          // that it was made of
    bool canShareLinks = false;     // the system has a sheet for it
    PointerOwner owner = PointerOwner::Nobody;
    bool pinching = false; // of the board
    bool fieldShown = false;
    bool loupeShown = false; // in the last frame
    Cursor cursor = Cursor::Arrow;
    std::optional<PageLook> pageLook; // that the page around the board has

    int framesWanted = 3; // until nothing moves any more
    int framesDrawn = 0;
    double lastFrame = 0; // s

    bool workingInTwin = false;
    bool workingAtOnce = false; // in the next frame, whole: it is about to be printed
    bool twinWantsWorking = false;
    bool twinHasWorking = false;     // which may come later
    std::uint64_t frameRevision = 0; // of the state at the end of the last frame
    std::string movingInTwin;        // envelope or influence line, as the page's tables have it
    std::string saidReading;         // of the influence line
    std::uint64_t twinRevision = 0;  // what the page's tables show
    LoadChoice twinLoads;
    std::uint64_t storedRevision = 0;  // what local storage holds, or need not hold
    bool boardIsStored = false;        // and is this board: the view of it is worth keeping too
    std::uint64_t addressRevision = 0; // that the browser's address was last told of
    LoadChoice addressLoads;
    std::uint64_t saidSerial = 0; // of the last message announced
    std::string saidVerdict;

    std::string said; // what the scripts asked for last: a small picture, the address

    std::unique_ptr<ItemLog> items; // only in a test
    std::string observed;
    std::string fatal; // only in a test: no model may hold it
};

// A board that nobody asked for by a link: what was saved last (the newer of two copies that can be
// read), else the example that the page opens with.
void putFirstBoard(Page&, std::string_view newer, std::string_view older);

// How the work is taken up again after the program has failed on it.
enum class Return {
    AsStored,
    BeforeLastStep, // undone by one, as a redo brings it back
    Empty,
};
// Instead of putFirstBoard, and with the notebook on its plainest page.
void putBoardBack(Page&, std::string_view newer, std::string_view older, Return);

// What the address should say of the board, without '#'; empty where the truss is too large for a
// link. An address that says the same in other words stays as it is.
[[nodiscard]] std::string addressFor(Page&, std::string_view current);

// `now` in seconds. Ends with framesWanted saying how many frames are still to be drawn.
void runFrame(Page&, const Canvas&, double now);

// In the middle of anything, when the page may be closed next.
void storeBeforeLeaving(Page&);

} // namespace gusset
