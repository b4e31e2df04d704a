#include "app/fields/page_controls.hpp"

#include "app/fields/cell_text.hpp"
#include "app/fields/load_cells.hpp"
#include "model/edit/load_cases.hpp"
#include "phrases/page_text.hpp"

#include <algorithm>
#include <charconv>
#include <optional>
#include <string_view>

namespace gusset {
namespace {

std::optional<int> readWhole(std::string_view text) {
    int number = -1;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), number);
    const bool whole = read.ec == std::errc{} && read.ptr == text.data() + text.size();
    return whole && number >= 0 ? std::optional(number) : std::nullopt;
}

std::vector<std::string> namesIn(const std::string& text) {
    std::vector<std::string> names;
    for (std::size_t at = 0; at <= text.size();) {
        const std::size_t end = std::min(text.find_first_of(",;", at), text.size());
        if (std::string name = trimmed(text.substr(at, end - at)); !name.empty()) {
            names.push_back(std::move(name));
        }
        at = end + 1;
    }
    return names;
}

// By the numbers of its joints, "0,3,5"; empty if one of them is gone.
std::vector<JointId> pathOf(const Truss& truss, const std::string& text) {
    std::vector<JointId> path;
    for (const std::string& name : namesIn(text)) {
        const std::optional<int> number = readWhole(name);
        if (!number || static_cast<std::size_t>(*number) >= truss.joints.size()) {
            return {};
        }
        path.push_back(JointId{*number});
    }
    return path;
}

// A kind of path and, if it is that of a moving load, the load's name: "0 vehicle 1".
void choosePath(const std::string& text, Actions& actions) {
    const std::size_t blank = std::min(text.find(' '), text.size());
    const std::optional<int> kind = readWhole(std::string_view(text).substr(0, blank));
    if (!kind || *kind > static_cast<int>(PathKind::Picked)) {
        return;
    }
    actions.push_back(Set{&InfluenceView::path, static_cast<PathKind>(*kind)});
    actions.push_back(Set{&InfluenceView::load, text.substr(std::min(blank + 1, text.size()))});
    actions.push_back(Set{&InfluenceView::at, std::optional<double>()});
}

void showPart(const AppState& state, PagePart part, Actions& actions) {
    const bool on = !isShown(state, part);
    switch (part) {
    case PagePart::Envelope:
        return actions.push_back(Set{&PageParts::envelope, on});
    case PagePart::Influence:
        return actions.push_back(Set{&PageParts::influence, on});
    case PagePart::Checks:
        return actions.push_back(Set{&PageParts::checks, on});
    case PagePart::Exact:
        return actions.push_back(Set{&PageParts::exact, on});
    case PagePart::ByHand:
        return actions.push_back(Set{&InfluenceView::byHand, on});
    case PagePart::UnderMoving:
        return actions.push_back(Set{&InfluenceView::members, on});
    }
}

void ofCase(const Truss& truss, const PageControl& control, Actions& actions) {
    const std::vector<std::string> cases = caseNames(truss);
    if (static_cast<std::size_t>(control.row) < cases.size()) {
        const std::string& name = cases[static_cast<std::size_t>(control.row)];
        actions.push_back(Commit{control.press == PagePress::CopyCase ? copyCase(truss, name)
                                                                      : removeCase(truss, name)});
    }
}

void remove(const Truss& truss, const PageControl& control, Actions& actions) {
    const auto row = static_cast<std::size_t>(control.row);
    if (control.press == PagePress::RemoveCombination) {
        if (row < truss.combinations.size()) {
            actions.push_back(Commit{removeCombination(truss, control.row)});
        }
    } else if (row >= truss.moving.size()) {
        return;
    } else if (control.press == PagePress::RemoveMoving) {
        actions.push_back(Commit{removeMovingLoad(truss, control.row)});
    } else if (static_cast<std::size_t>(control.part) < truss.moving[row].axles.size() &&
               canRemoveAxle(truss.moving[row])) {
        actions.push_back(Commit{removeAxle(truss, control.row, control.part)});
    }
}

Outcome<Actions> cutThrough(const Truss& truss, const std::string& text) {
    Things cut;
    for (const std::string& name : namesIn(text)) {
        const auto ends = readEnds(truss, name);
        if (!ends) {
            return ends.issues();
        }
        const auto [a, b] = ends.value();
        const MemberId member = findMember(truss, a, b);
        if (!member.valid()) {
            return unreadable(statement(phrase::kNoMemberThere, {{"a", jointLabel(truss, a)},
                                                                 {"b", jointLabel(truss, b)}}));
        }
        cut.members.push_back(member);
    }
    return Actions{SetSelection{cut}};
}

Outcome<Actions> pathThrough(const Truss& truss, const std::string& text) {
    std::vector<std::string> picked;
    for (const std::string& name : namesIn(text)) {
        const Outcome<JointId> joint = readJoint(truss, name);
        if (!joint) {
            return joint.issues();
        }
        picked.push_back(jointLabel(truss, joint.value()));
    }
    return Actions{Set{&InfluenceView::picked, picked}, Set{&InfluenceView::path, PathKind::Picked},
                   Set{&InfluenceView::at, std::optional<double>()}};
}

} // namespace

bool isShown(const AppState& state, PagePart part) {
    const PageParts& parts = state.pageParts;
    switch (part) {
    case PagePart::Envelope:
        return parts.envelope;
    case PagePart::Influence:
        return parts.influence;
    case PagePart::Checks:
        return parts.checks;
    case PagePart::Exact:
        return parts.exact;
    case PagePart::ByHand:
        return state.notebook.influence.byHand;
    case PagePart::UnderMoving:
        break;
    }
    return state.notebook.influence.members;
}

void press(const AppState& state, const PageControl& control, const std::string& text,
           Actions& actions) {
    switch (control.press) {
    case PagePress::Undo:
        return actions.push_back(Undo{});
    case PagePress::Redo:
        return actions.push_back(Redo{});
    case PagePress::ShowPart:
        if (control.row <= static_cast<int>(PagePart::UnderMoving)) {
            showPart(state, static_cast<PagePart>(control.row), actions);
        }
        return;
    case PagePress::ChoosePath:
        return choosePath(text, actions);
    case PagePress::AddMoving:
        if (const std::vector<JointId> path = pathOf(state.truss, text); path.size() > 1) {
            actions.push_back(Commit{addMovingLoad({*state.book, state.truss}, path)});
        }
        return;
    case PagePress::CopyCase:
    case PagePress::RemoveCase:
        return ofCase(state.truss, control, actions);
    case PagePress::RemoveCombination:
    case PagePress::RemoveMoving:
    case PagePress::RemoveAxle:
        return remove(state.truss, control, actions);
    }
}

void answer(const AppState& state, const PageAnswer& asked, const std::string& text,
            Actions& actions) {
    const std::optional<int> chosen = readWhole(text);
    const Choices answers = answersTo(state, static_cast<PageQuestion>(asked.row));
    if (chosen && static_cast<std::size_t>(*chosen) < answers.size()) {
        const Choice& is = answers[static_cast<std::size_t>(*chosen)];
        actions.insert(actions.end(), is.does.begin(), is.does.end());
    }
}

std::string listText(const AppState& state, PageList list) {
    std::string text;
    const auto add = [&text](const std::string& name) {
        text += (text.empty() ? "" : ", ") + name;
    };
    if (list == PageList::Cut) {
        for (const MemberId member : state.selection.members) {
            add(memberName(state.truss, member));
        }
    } else {
        for (const std::string& label : state.notebook.influence.picked) {
            add(label);
        }
    }
    return text;
}

Outcome<Actions> listTyped(const AppState& state, PageList list, const std::string& text) {
    return list == PageList::Cut ? cutThrough(state.truss, text) : pathThrough(state.truss, text);
}

} // namespace gusset
