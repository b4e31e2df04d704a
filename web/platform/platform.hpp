#pragma once
// The interface to the browser. platform_web.cpp implements it together with the scripts in site/;
// nothing else knows the browser. All lengths are in CSS pixels from the board's top left.

#include "app/fields/field.hpp"
#include "app/page/foreign_run.hpp"
#include "app/page/ground.hpp"
#include "app/state/layout.hpp"
#include "canvas/hands/tool.hpp"

#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace gusset {

struct WheelEvent {
    Vec2 pixel;
    double dx = 0; // to scroll
    double dy = 0;
    bool zooms = false; // ctrl held: a pinch on a trackpad
};
struct PinchEvent { // two fingers moved; a mouse with its middle button dragged counts as both
    Vec2 fromA, fromB, toA, toB;
    bool begins = false;
};
struct KeyEvent {
    Key key = Key::Escape;
};
enum class PanelKey { // as the scripts number them (site/input.js)
    NextPanel,
    Next,
    Previous,
    Left,
    Right,
    Up,
    Down,
    Press,
    PageUp,
    PageDown,
    First,
    Last,
    Leave
};
struct PanelKeyEvent {
    PanelKey key = PanelKey::Leave;
};
struct TypedText { // a digit or similar, typed while no field is open
    std::string text;
};
struct OpenedText { // a link in the address, a file, a paste
    std::string text;
    OpenedFrom from = OpenedFrom::File;
    std::string file; // its name
};
struct Said { // a message of the browser, to be shown: "Link copied"
    MessageKind kind = MessageKind::Info;
    std::string text;
};
using PlatformEvent = std::variant<PointerEvent, WheelEvent, PinchEvent, KeyEvent, PanelKeyEvent,
                                   TypedText, FieldTyped, FieldDone, OpenedText, Said, Viewport>;

// Events since the last call, in order.
[[nodiscard]] std::vector<PlatformEvent> takeEvents();

void showField(const FieldPlace&); // call again each time it moves
void hideField();
enum class Cursor { Arrow, Hand, Cross, Move, Text, ResizeAcross, ResizeDown };
void showCursor(Cursor);
// Makes the page around the board match it: theme is paper, dark or sun.
void setPageTheme(std::string_view theme);

void copyText(std::string_view text, std::string_view saidWhenDone);
void saveFile(std::string_view name, std::string_view text);
void savePicture(std::string_view name, std::string_view svg); // as PNG, two pixels per CSS px
[[nodiscard]] bool canShareLinks();                            // the system has a share sheet
void shareLink(std::string_view title, std::string_view link);
// The result of an OpenedText: the model that it put on the board, as JSON, or empty if it was
// refused.
void textOpened(std::string_view model);
void setAddress(std::string_view fragment); // without a new entry in the browser's history
void addressIsBehind(); // the board or the view of it has changed since the address was set
[[nodiscard]] bool storeWork(std::string_view text); // local, at once; false: refused or full

// Words in the system's typefaces, for letters that the embedded ones lack.
[[nodiscard]] RunPicture drawRun(std::string_view run, const RunLook&, const RunPaper&);

void drawGround(const GroundPane&); // the photograph under the board

// The page's own tables, and a description of the drawing for those who can't see it.
void setPageText(std::string_view html, std::string_view summary);
void showPageText();
void leaveFor(std::string_view folder, std::string_view link); // PageRequests::leaveFor
void showStart();  // the start page: new, recent and other boards, examples, help
void lessonDone(); // the first steps have been taken: they are never offered again
void announce(std::string_view text); // to screen readers
void drawAgainAfter(double seconds);  // a frame, even if nothing happens until then

} // namespace gusset
