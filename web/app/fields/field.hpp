#pragma once
// Text is edited in an input element of the page, laid over the field, which gives selection
// handles, input methods, paste and screen readers for free. These are the two ends of it.

#include "app/state/field_id.hpp"
#include "app/state/layout.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace gusset {

// Below is Enter: on to the cell underneath, as in any table.
enum class FieldEnd { Kept, GivenUp, NextField, PreviousField, Below };
struct FieldDone { // the page returned the text
    FieldId field;
    std::string text;
    FieldEnd how = FieldEnd::Kept;
};

struct FieldTyped { // so far, in a field that is still open
    FieldId field;
    std::string text;
};

// What a decimal keypad lacks and the field can use.
struct ExtraKeys {
    bool sign = false;  // its value may be negative
    bool angle = false; // "5 @ 30°" may be typed
};
[[nodiscard]] ExtraKeys extraKeys(const FieldId&);

struct FieldPlace { // a panel or the board says where the open field is this frame
    FieldId field;
    std::string name; // for screen readers: "x of joint C"
    std::string text;
    Rect rect;             // CSS px
    bool numeric = true;   // selects the on-screen keyboard
    ExtraKeys keys{};      // beside it
    bool goesOn = false;   // its text was begun elsewhere: typing continues after it
    bool ofMember = false; // a press on the board that ends it draws nothing
};

// Passed to the panels each frame. A panel takes `done` when it alone has that field, and sets
// `place` when it draws the open field (AppState::field).
struct FieldHost {
    std::optional<FieldDone> done;
    std::optional<FieldPlace> place;
    std::string typed{}; // while a panel has the keyboard: begins an edit of the focused field
};

// What panels request of the page itself; main passes it to the platform after the frame.
struct PageRequests {
    bool copyLink = false;
    bool saveFile = false;
    bool saveCode = false;    // the link as a QR code
    bool savePicture = false; // as SVG
    bool savePixels = false;  // as PNG
    bool saveResults = false; // as CSV
    bool shareLink = false;   // through the system's share sheet
    bool readAsPage = false;  // show the HTML tables
    // A page of its own, with the link: "course", "lesson", "workshop"; or the dialog "ground".
    std::string_view leaveFor{};
    bool showStart = false; // the start page
    std::string announce;   // to screen readers
    bool drawAgain = false; // part of a long page is not laid out yet
};

} // namespace gusset
