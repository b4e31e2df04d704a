#pragma once
// All that the page knows, in one value. Panels and tools read it and append actions; `update`
// alone writes it. No ImGui and no GL here: the tests drive it natively.

#include "app/history.hpp"
#include "canvas/camera.hpp"
#include "model/edit.hpp"
#include "model/truss.hpp"
#include "statics/structure.hpp"

#include <cstdint>
#include <string>

namespace gusset {

enum class Tool { Select, Member, Pin, Roller, Load, Erase };
enum class ThemeChoice { System, Paper, Dark, Sun };

// What lies under the finger or is picked: one thing of the drawing, or nothing.
enum class HitKind { None, Joint, Member, Support, Load };
struct Hit {
    HitKind kind = HitKind::None;
    int index = -1;      // of the vector in Truss
    double distance = 0; // device-independent pixels

    friend bool operator==(const Hit&, const Hit&) = default;
};

// A stroke in hand: from pointer down to pointer up. Nothing of it is in the history until it ends
// well.
enum class GestureKind { None, DrawMember, MoveJoint, DragLoad, BoxSelect };
struct Gesture {
    GestureKind kind = GestureKind::None;
    MemberEnd from;     // DrawMember: its beginning
    MemberEnd to;       // where it would end now, snapped
    JointId joint;      // MoveJoint, DragLoad
    LoadId load;        // DragLoad of a load that is there
    Vec2 grab;          // world: pointer less thing at pointer down, so that nothing jumps
    Vec2 force;         // DragLoad: as drawn now, force units
    Vec2 startPixel;    // where the pointer went down
    bool moved = false; // beyond the slack of a tap
};

struct View {
    Camera camera;
    double gridStep = 1; // length units, follows the zoom
    bool snapToGrid = true;
    bool showForces = true;
    bool showReactions = true;
    bool showDimensions = true;
    bool widthByForce = false;
    ThemeChoice theme = ThemeChoice::System;
};

enum class NotebookTab { Model, Forces, Working, Share };
struct NotebookState {
    bool open = true;
    NotebookTab tab = NotebookTab::Forces;
    double width = 400;  // CSS px, wide screens
    double sheet = 0.45; // share of the height, narrow screens
    bool wholeWorking = false;
    int step = 0; // in the working, when shown step by step
};

// A table cell or a value on the board that is being typed. The text itself lives in the page's own
// input element; it comes back in one piece when done.
struct FieldEdit {
    std::string key;  // which field: "joint.3.x"; empty: none
    std::string text; // what it held when editing began
};

enum class MessageKind { Info, Problem };
struct Message {
    MessageKind kind = MessageKind::Info;
    std::string text;
    std::uint64_t serial = 0; // grows with every message, so that the same words can be said again
};

struct AppState {
    Truss truss;     // as shown: during a gesture with the gesture applied
    Truss committed; // as in the history
    History history;
    std::uint64_t revision = 1; // grows whenever `truss` changes
    Things selection;
    Hit hover;
    Tool tool = Tool::Select;
    Gesture gesture;
    View view;
    NotebookState notebook;
    FieldEdit field;
    LoadChoice choice;
    Message message;
    bool unsavedNote = false; // storage refused: say so
};

} // namespace gusset
