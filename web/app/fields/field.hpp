#pragma once
// Text being typed lives in the page's own input element, laid over the field (selection handles,
// input methods, paste and screen readers come for free). These are its two ends.

#include "app/state/field_id.hpp"
#include "app/state/layout.hpp"

#include <optional>
#include <string>

namespace gusset {

// Below is Enter: on to the cell under this one, as in any table.
enum class FieldEnd { Kept, GivenUp, NextField, PreviousField, Below };
struct FieldDone { // the page gave the text back
    FieldId field;
    std::string text;
    FieldEnd how = FieldEnd::Kept;
};

struct FieldTyped { // so far, in a field that is still open
    FieldId field;
    std::string text;
};

struct FieldPlace { // a panel or the board says where the field being edited stands this frame
    FieldId field;
    std::string name; // for those who hear it: "x of joint C"
    std::string text;
    Rect rect;             // CSS px
    bool numeric = true;   // which on-screen keyboard
    bool goesOn = false;   // its text was begun elsewhere: typing goes on behind it
    bool ofMember = false; // a press on the board that ends it draws nothing where it falls
};

// Handed to the panels each frame; they take `done` when it is a field that only they have, and set
// `place` when they draw the field that is open (AppState::field).
struct FieldHost {
    std::optional<FieldDone> done;
    std::optional<FieldPlace> place;
};

// What panels want of the page itself; main carries it out through the platform after the frame.
struct PageRequests {
    bool copyLink = false;
    bool openFile = false;
    bool saveFile = false;
    bool saveCode = false;    // the link as a QR code
    bool savePicture = false; // as SVG
    bool savePixels = false;  // as PNG
    bool saveResults = false; // as CSV
    bool shareLink = false;   // by the system's own sheet
    bool showRecent = false;  // boards that the browser keeps
    bool readAsPage = false;  // show the HTML tables
    bool showHelp = false;
    std::optional<bool> fullScreen; // into it or out of it
    std::string openExample;        // file name in examples/, empty: none
    std::string openLink;           // pasted, empty: none
    std::string announce;           // to those who hear the page
    bool drawAgain = false;         // something of a long page is not laid out yet
};

} // namespace gusset
