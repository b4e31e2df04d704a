#include "canvas/hands/board_menu.hpp"

#include "canvas/hands/arrange.hpp"
#include "canvas/hands/strokes.hpp"
#include "canvas/scene/pick.hpp"
#include "canvas/scene/snap.hpp"
#include "model/edit/rebuild.hpp"
#include "phrases/frame.hpp"
#include "phrases/picked.hpp"

#include <algorithm>

namespace gusset {

namespace {

constexpr double kWidth = 248;
constexpr double kMenuAway = 12; // px from the place to the menu's corner

struct Line {
    Phrase<> label;
    Actions does{};
    std::string name{}; // used in place of a label
};
using Lines = std::vector<Line>;

void why(const ThingId& thing, Lines& lines) {
    const bool support = std::holds_alternative<SupportId>(thing);
    const Phrase<> label = support ? phrase::kWhyReaction : phrase::kWhyForce;
    Actions actions{SetSelection{thingsOf(thing)}};
    turnTo(WorkingPage::OneForce, actions);
    lines.push_back({label, actions});
}

// Starts a chain of members here.
void drawFrom(const AppState& state, Vec2 at, MemberId splits, Lines& lines) {
    const Phrase<> label =
        jointAt(state.truss, at).valid() ? phrase::kDrawFromIt : phrase::kDrawFromHere;
    lines.push_back({label, {SetTool{Tool::Member}, SetChain{chainFrom({{}, at, splits})}}});
}

void remove(Phrase<> label, const ThingId& thing, Lines& lines) {
    lines.push_back({label, {Commit{Remove{thingsOf(thing)}}, SetSelection{}}});
}

SupportId supportOf(const Truss& truss, JointId joint) {
    const auto found = std::find_if(truss.supports.begin(), truss.supports.end(),
                                    [&](const Support& it) { return it.joint == joint; });
    return found == truss.supports.end()
               ? SupportId{}
               : SupportId{static_cast<int>(found - truss.supports.begin())};
}

void offerSupports(const AppState& state, JointId joint, Lines& lines) {
    const SupportId support = supportOf(state.truss, joint);
    const bool pinned =
        support.valid() && state.truss.supports[support.at()].kind == SupportKind::Pin;
    if (!pinned) {
        lines.push_back({phrase::kPinThere, {Commit{SetSupport{joint, SupportKind::Pin}}}});
    }
    if (!support.valid() || pinned) {
        lines.push_back({phrase::kRollerThere, {Commit{SetSupport{joint, SupportKind::Roller}}}});
    }
    if (support.valid()) {
        lines.push_back({phrase::kTakeSupport, {Commit{RemoveSupports{joint}}}});
        why(support, lines);
    }
}

Lines ofJoint(const AppState& state, JointId joint) {
    Lines lines;
    offerSupports(state, joint, lines);
    Line load{phrase::kLoadIt, {}};
    tapLoad(state, joint, load.does);
    lines.push_back(std::move(load));
    drawFrom(state, state.truss.joints[joint.at()].at, {}, lines);
    remove(phrase::kRemoveJoint, joint, lines);
    return lines;
}

Lines sectionsFor(const AppState& state, MemberId member) {
    Lines lines;
    for (const Section& section : state.truss.sections) {
        lines.push_back({{}, {Commit{UseSection{{member}, section.id}}}, section.id});
    }
    return lines;
}

// A list to choose from, or, if there are no sections, the table where they are made.
void offerSections(const AppState& state, Lines& lines) {
    BoardMenu menu = state.menu;
    menu.page = MenuPage::Sections;
    menu.lit.reset();
    Actions actions;
    if (state.truss.sections.empty()) {
        turnTo(NotebookTab::Model, actions);
    } else {
        actions.push_back(SetMenu{menu});
    }
    lines.push_back({phrase::kSection, actions});
}

Lines ofMember(const AppState& state, MemberId member) {
    if (state.menu.page == MenuPage::Sections) {
        return sectionsFor(state, member);
    }
    const Member& ends = state.truss.members[member.at()];
    const Vec2 a = state.truss.joints[ends.a.at()].at;
    const Vec2 b = state.truss.joints[ends.b.at()].at;
    const Vec2 middle = 0.5 * (a + b);
    Lines lines;
    lines.push_back({phrase::kJointInMiddle, {Commit{SplitMember{member, middle}}}});
    offerSections(state, lines);
    Line load{phrase::kLoadInMiddle, {}};
    addMemberLoad(state, member, load.does);
    lines.push_back(std::move(load));
    why(member, lines);
    remove(phrase::kRemoveMember, member, lines);
    return lines;
}

Lines ofSupport(const AppState& state, SupportId support) {
    const Support& shown = state.truss.supports[support.at()];
    Lines lines;
    if (shown.kind == SupportKind::Roller) {
        Support turned = shown;
        turned.reaction = shown.reaction == 90 ? 0 : 90;
        lines.push_back({turned.reaction == 90 ? phrase::kRollOnFloor : phrase::kRollOnWall,
                         {Commit{ChangeSupport{support, turned}}}});
    }
    lines.push_back(
        {shown.kind == SupportKind::Pin ? phrase::kRollerThere : phrase::kPinThere,
         {Commit{SetSupport{shown.joint, shown.kind == SupportKind::Pin ? SupportKind::Roller
                                                                        : SupportKind::Pin}}}});
    why(support, lines);
    remove(phrase::kTakeSupport, support, lines);
    return lines;
}

Lines ofLoad(const AppState& state, LoadId load) {
    Lines lines;
    Line value{phrase::kTypeValue, {SetSelection{thingsOf(load)}}};
    const std::size_t before = value.does.size();
    editLoadValue(state, load, value.does);
    if (value.does.size() > before) {
        lines.push_back(std::move(value));
    }
    if (const auto turned = turnedRound(state.truss.loads[load.at()])) {
        lines.push_back({phrase::kTurnRound, {Commit{SetLoad{load, *turned}}}});
    }
    remove(phrase::kRemoveLoad, load, lines);
    return lines;
}

Lines ofPaper(const AppState& state) {
    const Vec2 at = snapToGrid(state.view, toWorld(state.view.camera, state.menu.pixel));
    Lines lines;
    lines.push_back({phrase::kJointHere, {Commit{AddJoint{at}}}});
    drawFrom(state, at, {}, lines);
    lines.push_back({phrase::kSelectSeveral, {SetTool{Tool::Select}, PickSeveral{true}}});
    if (const std::optional<Edit> copy = copySelectionTo(state, at)) {
        lines.push_back({phrase::kCopyToHere, {Commit{*copy}}});
    }
    lines.push_back({phrase::kFitDrawing, {ZoomToFit{}}});
    return lines;
}

// What can be done with each kind of thing, and what each command is called.
struct LinesOf {
    const AppState& state;
    Lines operator()(JointId joint) const { return ofJoint(state, joint); }
    Lines operator()(MemberId member) const { return ofMember(state, member); }
    Lines operator()(SupportId support) const { return ofSupport(state, support); }
    Lines operator()(LoadId load) const { return ofLoad(state, load); }
};
struct TitleOf {
    const AppState& state;
    std::string operator()(JointId joint) const {
        return sayPlain(*state.book, phrase::kTheJoint,
                        {{"joint", state.truss.joints[joint.at()].label}});
    }
    std::string operator()(MemberId member) const {
        return sayPlain(*state.book,
                        state.menu.page == MenuPage::Sections ? phrase::kSectionOf
                                                              : phrase::kThatMember,
                        {{"member", memberName(state.truss, member)}});
    }
    std::string operator()(SupportId support) const {
        const JointId joint = state.truss.supports[support.at()].joint;
        return sayPlain(*state.book, phrase::kSupportAt,
                        {{"joint", state.truss.joints[joint.at()].label}});
    }
    std::string operator()(LoadId) const { return sayPlain(*state.book, phrase::kThatLoad); }
};

Lines linesOf(const AppState& state) {
    const Hit& under = state.menu.under;
    return under ? std::visit(LinesOf{state}, *under) : ofPaper(state);
}

} // namespace

std::vector<MenuLine> boardMenuLines(const AppState& state) {
    const Hit& under = state.menu.under;
    if (!state.menu.open || (under && !isThere(state.truss, *under))) {
        return {};
    }
    std::vector<MenuLine> lines;
    for (Line& line : linesOf(state)) {
        lines.push_back({line.name.empty() ? sayPlain(*state.book, line.label) : line.name,
                         std::move(line.does)});
    }
    return lines;
}

std::string boardMenuTitle(const AppState& state) {
    return state.menu.under ? std::visit(TitleOf{state}, *state.menu.under)
                            : sayPlain(*state.book, phrase::kHere);
}

Rect boardMenuRect(const AppState& state, std::size_t lines) {
    const Vec2 page = state.view.camera.size;
    const double height = kTouchTarget * static_cast<double>(lines + 1) + 8;
    const double width = std::min(kWidth, page.x);
    const Vec2 place = state.menu.pixel;
    Vec2 at = place + Vec2{kMenuAway, kMenuAway};
    if (at.x + width > page.x) {
        at.x = place.x - kMenuAway - width;
    }
    if (at.y + height > page.y) {
        at.y = place.y - kMenuAway - height;
    }
    at.x = std::clamp(at.x, 0.0, std::max(page.x - width, 0.0));
    at.y = std::clamp(at.y, 0.0, std::max(page.y - height, 0.0));
    return {at, {width, height}};
}

void chooseMenuLine(const AppState& state, std::size_t line, Actions& actions) {
    const std::vector<MenuLine> lines = boardMenuLines(state);
    if (line >= lines.size()) {
        return;
    }
    actions.push_back(SetMenu{});
    const Actions& does = lines[line].does;
    actions.insert(actions.end(), does.begin(), does.end());
}

} // namespace gusset
