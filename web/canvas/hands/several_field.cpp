#include "canvas/hands/several_field.hpp"

#include "app/fields/typed_text.hpp"
#include "app/state/commit.hpp"
#include "canvas/hands/arrange.hpp"
#include "core/number.hpp"
#include "model/quantity/quantity_input.hpp"
#include "phrases/picked.hpp"

#include <array>
#include <cmath>

namespace gusset {

namespace {

struct Entry {
    Phrase<> name;
    Phrase<> example;
};
// In the order of SeveralKind.
constexpr std::array kEntries{
    Entry{phrase::kMoveBy, phrase::kAsStep}, Entry{phrase::kCopyBy, phrase::kAsStep},
    Entry{phrase::kTurnBy, phrase::kAsTurn}, Entry{phrase::kRepeatBy, phrase::kAsRepeat},
    Entry{phrase::kWarmBy, phrase::kAsWarm},
};
constexpr int kMostCopies = 100;

const Entry& entryOf(SeveralKind kind) { return kEntries[static_cast<std::size_t>(kind)]; }

Issue asIssue(Phrase<> says) { return {IssueCode::Syntax, "input", says}; }

Outcome<Edit> orNothing(std::optional<Edit> edit, Phrase<> says) {
    return edit ? Outcome<Edit>(std::move(*edit)) : Outcome<Edit>(asIssue(says));
}

Outcome<Vec2> typedStep(const AppState& state, const std::string& text) {
    const Outcome<TypedVector> read = readLengthVector(text, state.truss.units.length);
    if (!read) {
        return read.issues();
    }
    const TypedVector& way = read.value();
    return way.angled ? way.first * directionOf(way.second) : Vec2{way.first, way.second};
}

// Where the count ends: at ×, x or *.
std::pair<std::size_t, std::size_t> timesSign(const std::string& text) {
    constexpr std::string_view kSign = "×";
    const std::size_t sign = text.find(kSign);
    if (sign != std::string::npos) {
        return {sign, sign + kSign.size()};
    }
    const std::size_t letter = text.find_first_of("xX*");
    return {letter, letter == std::string::npos ? letter : letter + 1};
}

Outcome<Edit> repetition(const AppState& state, const std::string& text) {
    const auto [countEnd, stepBegin] = timesSign(text);
    const Outcome<double> count = readNumber(text.substr(0, countEnd));
    if (!count) {
        return count.issues();
    }
    if (count.value() < 1 || count.value() > kMostCopies ||
        count.value() != std::floor(count.value())) {
        return asIssue(phrase::kCopiesWhole);
    }
    Vec2 step = ownStep(state);
    if (stepBegin != std::string::npos) {
        const std::string typed = text.substr(stepBegin);
        const Outcome<double> along = readLength(typed, state.truss.units.length);
        const Outcome<Vec2> read = isVector(typed) ? typedStep(state, typed)
                                   : along         ? Outcome<Vec2>(Vec2{along.value(), 0})
                                                   : Outcome<Vec2>(along.issues());
        if (!read) {
            return read.issues();
        }
        step = read.value();
    }
    return orNothing(repeatSelection(state, step, static_cast<int>(count.value())),
                     phrase::kCopiesStep);
}

Outcome<Edit> shift(const AppState& state, SeveralKind kind, const std::string& text) {
    const Outcome<Vec2> by = typedStep(state, text);
    if (!by) {
        return by.issues();
    }
    return orNothing(kind == SeveralKind::Move ? shiftSelection(state, by.value())
                                               : copySelection(state, by.value()),
                     phrase::kCopyStep);
}

Outcome<Edit> severalEdit(const AppState& state, SeveralKind kind, const std::string& text) {
    switch (kind) {
    case SeveralKind::Move:
    case SeveralKind::Copy:
        return shift(state, kind, text);
    case SeveralKind::Repeat:
        return repetition(state, text);
    case SeveralKind::Turn:
    case SeveralKind::Warm:
        break;
    }
    const bool turns = kind == SeveralKind::Turn;
    const Outcome<double> value = turns ? readAngle(text) : readNumber(text);
    if (!value) {
        return value.issues();
    }
    return turns ? orNothing(turnSelection(state, value.value()), phrase::kNothingToTurn)
                 : Outcome<Edit>(WarmMembers{state.selection.members, value.value()});
}

} // namespace

Phrase<> severalName(SeveralKind kind) { return entryOf(kind).name; }

Phrase<> severalExample(SeveralKind kind) { return entryOf(kind).example; }

std::string severalText(const AppState& state, SeveralKind kind) {
    if (kind == SeveralKind::Repeat) {
        const Vec2 step = ownStep(state);
        const std::string along =
            step.x != 0 ? shortestNumber(step.x) : "0, " + shortestNumber(step.y);
        return "1 × " + typedNumbers(state.truss, along);
    }
    if (kind == SeveralKind::Warm && !state.selection.members.empty()) {
        const MemberId first = state.selection.members.front();
        return typedNumber(state.truss, state.truss.members[first.at()].warming);
    }
    return "";
}

bool finishSeveral(const AppState& state, const FieldDone& done, Actions& actions) {
    const auto* kind = std::get_if<SeveralKind>(&done.field);
    if (!kind) {
        return false;
    }
    actions.push_back(EndField{});
    const bool enters = *kind == SeveralKind::Repeat && done.how == FieldEnd::Below;
    const bool asItWas = done.text == state.field.text && !enters; // Enter accepts the text offered
    if (done.how == FieldEnd::GivenUp || done.text.empty() || asItWas) {
        return true;
    }
    commitOrSay(severalEdit(state, *kind, withPoints(state.truss, done.text)), actions);
    return true;
}

} // namespace gusset
