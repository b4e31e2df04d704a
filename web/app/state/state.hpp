#pragma once
// The whole state of the page, in one value. Panels and tools read it and append actions; only
// `update` writes it. No ImGui and no GL here: the tests run it natively.

#include "app/state/camera.hpp"
#include "app/state/field_id.hpp"
#include "app/state/history.hpp"
#include "app/state/table_view.hpp"
#include "app/state/thing.hpp"
#include "model/edit/edit.hpp"
#include "model/truss/truss.hpp"
#include "report/text/phrases.hpp"
#include "statics/equilibrium/structure.hpp"

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace gusset {

enum class Tool { Select, Member, Pin, Roller, Load, Erase };
enum class ThemeChoice { System, Paper, Dark, Sun };

// What a place on the board was snapped to, and the guide lines that show it.
enum class SnapKind { Free, Grid, Joint, Member, Aligned, Angle, EqualLength };
struct Snap {
    SnapKind kind = SnapKind::Free;
    std::vector<std::pair<Vec2, Vec2>> guides{}; // length units
    MemberId like{};                             // EqualLength: the member whose length it has
};

// A stroke in progress, from pointer down to pointer up. Nothing of it is in the history until it
// ends properly. Held: a long press on empty paper, with its menu open; drawing on from there makes
// it Enclose, a line around what is to be selected.
// line around what is to be selected.
enum class GestureKind {
    None,
    Tap,
    Pan,
    DrawMember,
    MoveJoint,
    DragLoad,
    Held,
    Enclose,
    Cut,
    Erase
};
struct Gesture {
    GestureKind kind = GestureKind::None;
    Hit under;           // what lay under the pointer when it went down
    MemberEnd from;      // DrawMember: its beginning
    MemberEnd to;        // where it would end now, snapped
    JointId joint;       // MoveJoint, DragLoad
    LoadId load;         // DragLoad of an existing load
    Vec2 grab;           // world: pointer minus thing at pointer down, so that nothing jumps
    Vec2 force;          // DragLoad: as drawn now, force units
    double perPixel = 0; // DragLoad: force units per px of the arrow
    bool byTail = false; // DragLoad: the pointer holds the arrow's tail, not its head
    Things things;       // MoveJoint: what moves; Erase: what is erased; ids of the committed model
    Snap snap;           // DrawMember, MoveJoint
    Vec2 startPixel;     // where the pointer went down
    Vec2 lastPixel;      // where it was last
    bool moved = false;  // beyond the slack of a tap
    bool byFinger = false;
    std::vector<Vec2> line{}; // Enclose: CSS px, as drawn so far
};

// Members drawn by taps: each tap continues from where the last one ended. Positions rather than
// joints, so that the chain stays meaningful after an undo.
struct Chain {
    bool active = false;
    Vec2 first; // length units: a tap there closes the chain
    Vec2 last;
    MemberId splits; // the member that `last` lies on, while nothing is drawn yet
    Vec2 to;         // where a mouse would draw to
    Snap snap;
    bool showsTo = false; // fingers don't hover
    bool byFinger = false;
};

// The member that a finger drew last, until anything else is done: its length stays open to be
// typed.
struct Drawn {
    bool shown = false;
    Vec2 from; // length units
    Vec2 to;
};

// Values on the drawing that are edited when tapped, and where they are this frame.
struct Figure {
    FieldId opens;
    std::string text; // what typing begins with
    Vec2 at;          // CSS px, its middle
    Vec2 half;

    friend bool operator==(const Figure&, const Figure&) = default;
};

// What can be done at a place on the board; the menu opens over it.
enum class MenuPage { Things, Sections };
struct BoardMenu {
    bool open = false;
    MenuPage page = MenuPage::Things;
    Hit under;                        // what is at the place
    Vec2 pixel;                       // the place, CSS px
    std::optional<std::size_t> lit{}; // the line that has the keyboard focus

    friend bool operator==(const BoardMenu&, const BoardMenu&) = default;
};

enum class MemberFigure { Force, Stress, Use }; // what members are labelled by

struct View {
    Camera camera;
    bool fitted = true;  // nobody has panned or zoomed since: fit again when the page changes shape
    double gridStep = 1; // length units, follows the zoom
    bool snapToGrid = true;
    bool showForces = true;
    MemberFigure memberFigure = MemberFigure::Force; // when forces are shown
    bool showReactions = true;
    bool showDimensions = true;
    bool widthByForce = false;
    bool showLargest = false;  // highlights the largest tension and compression
    bool whitePictures = true; // saved pictures are on white, not on the theme's paper
    bool fingerDraws = true;   // false: fingers only pan and zoom, a pen draws
    bool teaches = false;      // the first steps are offered, one after another
    bool showMovement = false; // the deflected shape, even when the notebook shows another page
    int ground = 0;            // names the photograph under the board as it is shown now; 0: none
    int enlarge = 0; // steps of 1, 2, 5 by which it is drawn larger or smaller than the default
    ThemeChoice theme = ThemeChoice::System;
};

enum class NotebookTab { Model, Forces, Working, Share };
enum class ResultPage { Forces, Movement, Envelope, Influence, Checks };
enum class WorkingPage { Truss, OneForce, Displacement, Polygon, Settings };

enum class ForceFilter { All, Tension, Compression, Zero, Picked }; // selected on the board

// The path of the load on the page of influence lines. One that can't be found any more gives way
// to the first path there is.
enum class PathKind { Moving, Bottom, Top, Picked };
struct InfluenceView {
    PathKind path = PathKind::Moving;
    std::string load;                // Moving: its id
    std::vector<std::string> picked; // Picked: labels, since ids change with edits
    bool picking = false;            // taps on joints are added to `picked`
    bool horizontal = false;         // of a reaction or a displacement
    std::optional<double> at;        // m from the start: read there; none: at the largest ordinate
    bool members = false;            // also all members under the moving loads
    bool byHand = false;             // also how the line is found by hand

    friend bool operator==(const InfluenceView&, const InfluenceView&) = default;
};
// Whether the notebook is open, and where.
struct Leaf {
    bool open = true;
    NotebookTab tab = NotebookTab::Forces;
};
struct NotebookState {
    // Special members in state.cpp: as inline code they would be most of each object file.
    NotebookState();
    NotebookState(const NotebookState&);
    NotebookState(NotebookState&&) noexcept;
    NotebookState& operator=(const NotebookState&);
    NotebookState& operator=(NotebookState&&) noexcept;
    ~NotebookState();

    bool open = true;
    NotebookTab tab = NotebookTab::Forces;
    bool reading = false; // reading mode: see PageLayout. The page sets it, by its size
    Leaf beforeWorking;   // where the notebook was when it was turned to the working
    double width = 400;   // CSS px, wide screens
    double sheet = 0.45;  // fraction of the height, narrow screens
    ResultPage results = ResultPage::Forces;
    ForceFilter forceFilter = ForceFilter::All;
    std::array<TableView, kSortedTables> tableViews{}; // in the order of SortedTable
    bool exact = false;                                // exact forces beside the decimals
    int mechanism = 0;                                 // which of several is shown
    bool envelopeOfCases = false;                      // rather than of the combinations
    InfluenceView influence;
    bool checksOfAll = false; // the worst over all loads rather than under those shown
    WorkingPage working = WorkingPage::Truss;
    bool bySection = false; // OneForce: by a section rather than by the shortest sequence of joints
    bool horizontal = false; // Displacement: along x
    int releasedState = 0; // Truss, by the force method: the method; 1: how N0 was found; 2: n1 …
    bool wholeWorking = false;
    int step = 0; // of the working, when shown step by step
};

[[nodiscard]] inline const TableView& tableViewOf(const NotebookState& notebook,
                                                  SortedTable table) {
    return notebook.tableViews[static_cast<std::size_t>(table)];
}
[[nodiscard]] inline TableView& tableViewOf(NotebookState& notebook, SortedTable table) {
    return notebook.tableViews[static_cast<std::size_t>(table)];
}

// Parts of the page's own tables that are made only when they are asked for. The last two are also
// asked for in the notebook.
enum class PagePart { Envelope, Influence, Checks, Exact, ByHand, UnderMoving };
struct PageParts {
    bool envelope = false;
    bool influence = false;
    bool checks = false;
    bool exact = false;
};

// A table cell or a value on the board that is being edited. The text itself is in the page's input
// element; it is returned whole when editing ends.
struct FieldEdit {
    std::optional<FieldId> id{}; // none: nothing is being edited
    std::string text{};          // what it held when editing began
    bool goesOn = false;         // opened by typing its first characters, which stay
};

// The deflected shape or a mechanism swings out and back on the board, then stops.
struct Motion {
    bool plays = false;
    double elapsed = 0; // s
};

// What reading mode puts aside, and brings back when it is left.
struct BoardPlace {
    Camera camera;
    bool fitted = true;
};
// How the model last changed: what is said of it to those who can't see the board.
enum class HistoryMove { Done, Undone, Redone };
struct LastStep {
    HistoryMove kind = HistoryMove::Done;
    Statement name{};
    std::uint64_t serial = 0; // grows with every step
};

enum class MessageKind { Info, Problem };
struct Message {
    MessageKind kind = MessageKind::Info;
    std::string text;
    std::uint64_t serial = 0; // grows with every message, so that one can be repeated
};

struct AppState {
    // Special members in state.cpp: as inline code they would be most of each object file.
    AppState();
    AppState(const AppState&);
    AppState(AppState&&) noexcept;
    AppState& operator=(const AppState&);
    AppState& operator=(AppState&&) noexcept;
    ~AppState();

    // The language of the working and the results: chosen here for the page, and nowhere else.
    const PhraseBook* book = &englishPhrases();
    Truss truss;                 // as shown: during a gesture with the gesture's edit applied
    Truss committed;             // as in the history
    std::optional<Edit> pending; // the gesture's edit: `truss` is `committed` with this applied
    Statement pendingFault;      // why the gesture's last edit is not shown; empty: it is shown
    History history;
    LastStep lastStep;
    std::uint64_t revision = 1; // incremented whenever `truss` changes
    Things selection;
    Hit hover;
    Tool tool = Tool::Select;
    Gesture gesture;
    Chain chain;
    Drawn drawn;
    BoardMenu menu;
    bool picksSeveral = false; // taps add to the selection, drags enclose
    std::vector<Figure> figures;
    bool penSeen = false;
    View view;
    NotebookState notebook;
    std::optional<BoardPlace> beforeReading{}; // while reading
    PageParts pageParts;
    Motion motion;
    FieldEdit field;
    LoadChoice choice;
    Message message;
    bool unsavedNote = false; // storage refused the work: say so
};

// The field being edited, if it is of that kind.
template <class Kind>
[[nodiscard]] const Kind* openField(const AppState& state) {
    return state.field.id ? std::get_if<Kind>(&*state.field.id) : nullptr;
}

[[nodiscard]] bool isAtWorking(const AppState&); // the notebook is open there
// Whether that page of the results is on the screen.
[[nodiscard]] bool showsInfluence(const AppState&);
[[nodiscard]] bool showsEnvelope(const AppState&);

} // namespace gusset
