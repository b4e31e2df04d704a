#pragma once
// The page as one value, and one frame of it: events from the browser → state → solution → panels →
// drawing → requests to the browser. Without WebGL2 the same frame runs without panels and drawing,
// so that links still open and the page's own tables still work.

#include "app/derived/derived.hpp"
#include "app/fields/field.hpp"
#include "app/state/layout.hpp"
#include "app/state/state.hpp"
#include "canvas/hands/heard.hpp"
#include "platform/item_log.hpp"
#include "platform/panel_keys.hpp"
#include "platform/panel_pointer.hpp"
#include "platform/platform.hpp"
#include "render/renderer.hpp"
#include "render/screen.hpp"
#include "report/sketch/qr_code.hpp"
#include "ui/heights.hpp"
#include "ui/theme.hpp"

#include <cstdint>
#include <memory>
#include <optional>
#include <string>

namespace gusset {

// Who has the pointer, from pointer down to pointer up.
enum class PointerOwner { Nobody, Board, Panels };

struct Page {
    std::string address; // of this page, without its fragment
    PhraseBook language; // the state points to it
    AppState state;
    Derived derived;
    Viewport viewport;
    FieldHost field;
    Heights workingHeights;

    std::optional<Renderer> renderer; // none: no WebGL2, or the context is lost for good
    Screen screen;
    Ui ui;
    PanelPointer panelPointer;
    PanelKeys panelKeys;
    std::optional<QrCode> linkCode; // while the share tab is open
    std::string codedLink;          // the link that it encodes
    bool canShareLinks = false;     // the system has a share sheet
    PointerOwner owner = PointerOwner::Nobody;
    bool pinching = false; // two fingers are moving the board
    bool fieldShown = false;
    bool loupeShown = false; // in the last frame
    Cursor cursor = Cursor::Arrow;
    std::optional<PaletteName> theme; // of the page around the board, as last set

    int framesWanted = 3; // until nothing moves any more
    int framesDrawn = 0;
    double lastFrame = 0; // s

    bool workingInPageText = false;
    bool pageTextWantsWorking = false;
    std::uint64_t pageTextWorking = 0; // the serial of the working, which may come later; 0: none
    Things pageTextSelection;
    std::uint64_t frameRevision = 0;    // of the state at the end of the last frame
    std::string movingInPageText;       // envelope or influence line, as shown in the page's tables
    std::uint64_t pageTextRevision = 0; // the state that the page's tables show
    LoadChoice pageTextLoads;
    std::uint64_t storedRevision = 0; // the state that local storage holds, or need not hold
    bool boardIsStored = false;       // it holds this board, so the view of it is worth keeping too
    std::uint64_t addressRevision = 0; // the state last put into the browser's address
    LoadChoice addressLoads;
    std::uint64_t leavingSerial = 0; // the message that leaves by itself,
    double leavesAt = 0;             // and when, s
    FocusedItem focused;             // as the panels of this frame noted it
    Heard heard;
    bool savesFile = false; // asked for by a key

    std::string said; // the text that the scripts last asked for: a small picture, the address

    std::unique_ptr<ItemLog> items; // only in a test
    std::string observed;
    std::string fatal; // only in a test: a text that makes the program fail if a model contains it
};

// The board when no link asks for one: what was saved last (the newer of two copies that can be
// read), else the example that the page opens with.
void putFirstBoard(Page&, std::string_view newer, std::string_view older);

// How work resumes after the program has crashed on it.
enum class Return {
    AsStored,
    BeforeLastStep, // the last step undone, and available as a redo
    Empty,
};
// Instead of putFirstBoard, with the notebook on its simplest page.
void putBoardBack(Page&, std::string_view newer, std::string_view older, Return);

// From now on the page speaks this language (exchange/json/language_file). A table that can't be
// read is reported in a message, and the page stays as it is.
void speak(Page&, std::string_view language);

// The address for the board, without '#'; empty if the truss is too large for a link. An address
// that says the same in other words is left as it is.
[[nodiscard]] std::string addressFor(Page&, std::string_view current);

// `now` in seconds. On return, framesWanted says how many frames are still to be drawn.
void runFrame(Page&, const Canvas&, double now);

// Called at any moment when the page may be about to close.
void storeBeforeLeaving(Page&);

} // namespace gusset
