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
constexpr double kPresenting = 1.45; // as the type grows (web/page.cpp)
constexpr double kMenuAway = 12;     // px from the place to the menu's corner

struct Line {
    Phrase<> label;
    Actions does{};
    std::string name{}; // in place of a label
};
using Lines = std::vector<Line>;

void why(HitKind kind, int index, Lines& lines) {
    const Phrase<> label = kind == HitKind::Support ? phrase::kWhyReaction : phrase::kWhyForce;
    Actions actions{SetSelection{thingsOf({kind, index, 0})}};
    turnTo(WorkingPage::OneForce, actions);
    lines.push_back({label, actions});
}

// A chain of members that begins here.
void drawFrom(const AppState& state, Vec2 at, MemberId splits, Lines& lines) {
    const Phrase<> label =
        jointAt(state.truss, at).valid() ? phrase::kDrawFromIt : phrase::kDrawFromHere;
    lines.push_back({label, {SetTool{Tool::Member}, SetChain{chainFrom({{}, at, splits})}}});
}

void remove(Phrase<> label, const Hit& hit, Lines& lines) {
    lines.push_back({label, {Commit{Remove{thingsOf(hit)}}, SetSelection{}}});
}

int supportOf(const Truss& truss, JointId joint) {
    for (std::size_t i = 0; i < truss.supports.size(); ++i) {
        if (truss.supports[i].joint == joint) {
            return static_cast<int>(i);
        }
    }
    return -1;
}

void offerSupports(const AppState& state, JointId joint, Lines& lines) {
    const int support = supportOf(state.truss, joint);
    const bool pinned =
        support >= 0 &&
        state.truss.supports[static_cast<std::size_t>(support)].kind == SupportKind::Pin;
    if (!pinned) {
        lines.push_back({phrase::kHoldByPin, {Commit{SetSupport{joint, SupportKind::Pin}}}});
    }
    if (support < 0 || pinned) {
        lines.push_back({phrase::kLetRoll, {Commit{SetSupport{joint, SupportKind::Roller}}}});
    }
    if (support >= 0) {
        lines.push_back({phrase::kTakeSupport, {Commit{RemoveSupports{joint}}}});
        why(HitKind::Support, support, lines);
    }
}

Lines ofJoint(const AppState& state, JointId joint) {
    Lines lines;
    offerSupports(state, joint, lines);
    Line load{phrase::kLoadIt, {}};
    tapLoad(state, {HitKind::Joint, joint.index, 0}, load.does);
    lines.push_back(std::move(load));
    drawFrom(state, state.truss.joints[joint.at()].at, {}, lines);
    remove(phrase::kRemoveJoint, {HitKind::Joint, joint.index, 0}, lines);
    return lines;
}

Lines sectionsFor(const AppState& state, MemberId member) {
    Lines lines;
    for (const Section& section : state.truss.sections) {
        lines.push_back({{}, {Commit{UseSection{{member}, section.id}}}, section.id});
    }
    return lines;
}

// A list to choose from, or, while there is none, the table where sections are made.
void offerSections(const AppState& state, Lines& lines) {
    BoardMenu menu = state.menu;
    menu.page = MenuPage::Sections;
    menu.lit = -1;
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
    why(HitKind::Member, member.index, lines);
    remove(phrase::kRemoveMember, {HitKind::Member, member.index, 0}, lines);
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
        {shown.kind == SupportKind::Pin ? phrase::kLetRoll : phrase::kHoldByPin,
         {Commit{SetSupport{shown.joint, shown.kind == SupportKind::Pin ? SupportKind::Roller
                                                                        : SupportKind::Pin}}}});
    why(HitKind::Support, support.index, lines);
    remove(phrase::kTakeSupport, {HitKind::Support, support.index, 0}, lines);
    return lines;
}

Lines ofLoad(const AppState& state, LoadId load) {
    Lines lines;
    Line value{phrase::kTypeValue, {SetSelection{thingsOf({HitKind::Load, load.index, 0})}}};
    const std::size_t before = value.does.size();
    editLoadValue(state, load, value.does);
    if (value.does.size() > before) {
        lines.push_back(std::move(value));
    }
    if (const auto turned = turnedRound(state.truss.loads[load.at()])) {
        lines.push_back({phrase::kTurnRound, {Commit{SetLoad{load, *turned}}}});
    }
    remove(phrase::kRemoveLoad, {HitKind::Load, load.index, 0}, lines);
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

bool isThere(const AppState& state) {
    const Truss& truss = state.truss;
    const auto at = static_cast<std::size_t>(state.menu.under.index);
    switch (state.menu.under.kind) {
    case HitKind::Joint:
        return at < truss.joints.size();
    case HitKind::Member:
        return at < truss.members.size();
    case HitKind::Support:
        return at < truss.supports.size();
    case HitKind::Load:
        return at < truss.loads.size();
    case HitKind::None:
        break;
    }
    return true;
}

Lines linesOf(const AppState& state) {
    const int index = state.menu.under.index;
    switch (state.menu.under.kind) {
    case HitKind::Joint:
        return ofJoint(state, JointId{index});
    case HitKind::Member:
        return ofMember(state, MemberId{index});
    case HitKind::Support:
        return ofSupport(state, SupportId{index});
    case HitKind::Load:
        return ofLoad(state, LoadId{index});
    case HitKind::None:
        break;
    }
    return ofPaper(state);
}

} // namespace

std::vector<MenuLine> boardMenuLines(const AppState& state) {
    if (!state.menu.open || !isThere(state)) {
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
    const PhraseBook& book = *state.book;
    const Truss& truss = state.truss;
    const Hit& under = state.menu.under;
    const auto at = static_cast<std::size_t>(under.index);
    switch (under.kind) {
    case HitKind::Joint:
        return sayPlain(book, phrase::kTheJoint, {{"joint", truss.joints[at].label}});
    case HitKind::Member:
        return sayPlain(
            book, state.menu.page == MenuPage::Sections ? phrase::kSectionOf : phrase::kThatMember,
            {{"member", memberName(truss, MemberId{under.index})}});
    case HitKind::Support:
        return sayPlain(book, phrase::kSupportAt,
                        {{"joint", truss.joints[truss.supports[at].joint.at()].label}});
    case HitKind::Load:
        return sayPlain(book, phrase::kThatLoad);
    case HitKind::None:
        break;
    }
    return sayPlain(book, phrase::kHere);
}

double boardMenuLineHeight(const AppState& state) {
    return state.view.presenting ? kPresenting * kTouchTarget : kTouchTarget;
}

Rect boardMenuRect(const AppState& state, std::size_t lines) {
    const Vec2 page = state.view.camera.size;
    const double height = boardMenuLineHeight(state) * static_cast<double>(lines + 1) + 8;
    const double width = std::min(kWidth * (state.view.presenting ? kPresenting : 1), page.x);
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

void chooseMenuLine(const AppState& state, int line, Actions& actions) {
    const std::vector<MenuLine> lines = boardMenuLines(state);
    if (line < 0 || static_cast<std::size_t>(line) >= lines.size()) {
        return;
    }
    actions.push_back(SetMenu{});
    const Actions& does = lines[static_cast<std::size_t>(line)].does;
    actions.insert(actions.end(), does.begin(), does.end());
}

} // namespace gusset
