#pragma once
// The seam to the browser. platform_web.cpp implements it with site/app.js; nothing else knows the
// browser.

#include "app/field.hpp"
#include "app/layout.hpp"
#include "canvas/tool.hpp"

#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace gusset {

struct WheelEvent {
    Vec2 pixel;
    double dx = 0; // CSS px to scroll
    double dy = 0;
    bool zooms = false; // ctrl held: a pinch on a trackpad
};
struct PinchEvent { // two fingers moved
    Vec2 fromA, fromB, toA, toB;
    bool begins = false;
};
struct KeyEvent {
    Key key = Key::Escape;
};
struct OpenedText { // a link in the address, a file, a paste
    std::string text;
    std::string label;
};
using PlatformEvent =
    std::variant<PointerEvent, WheelEvent, PinchEvent, KeyEvent, FieldDone, OpenedText, Viewport>;

// Events since the last frame, in order.
[[nodiscard]] std::vector<PlatformEvent> takeEvents();

void requestFrames(int count);     // keep drawing so many frames more
void showField(const FieldPlace&); // again each time it moves
void hideField();
void copyText(std::string_view text, std::string_view saidWhenDone);
void saveFile(std::string_view name, std::string_view text);
void openFile();
void storeWork(std::string_view text); // local, at once; tells of failure by an event
void setTwin(std::string_view html, std::string_view announcement); // the page's own tables
void setAddress(std::string_view fragment); // without a new entry in the browser's history

} // namespace gusset
