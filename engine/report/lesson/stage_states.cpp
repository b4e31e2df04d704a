#include "report/lesson/stage_states.hpp"

#include "report/derivation/body_sketch.hpp"
#include "report/lesson/stage_draft.hpp"

namespace gusset {
namespace {

constexpr double kNameSize = 17; // px
constexpr double kNameHigh = 26;
constexpr double kBetween = 18;

Sketch stateIn(const PhraseBook& book, const StateShown& state, const PartRoom& room,
               bool withForces) {
    const Notation notation = notationOf({book, *state.truss}, *state.working);
    std::vector<MemberWords> members = state.members;
    for (MemberWords& member : members) {
        member.words = withForces ? std::move(member.words) : RichLine{};
    }
    Sketch sketch = trussSketch(notation, members, room);
    if (!state.name.empty()) {
        moveSketch(sketch, {0, kNameHigh});
        sketch.height += kNameHigh;
        sketch.words.push_back({.words = state.name,
                                .at = {sketch.width / 2, kNameHigh / 2},
                                .ink = SketchInk::Muted,
                                .size = kNameSize});
    }
    return sketch;
}

// Under what is there, in the middle of both.
Sketch below(Sketch upper, Sketch lower) {
    const double wide = std::max(upper.width, lower.width);
    moveSketch(upper, {(wide - upper.width) / 2, 0});
    moveSketch(lower, {(wide - lower.width) / 2, upper.height + kBetween});
    upper.height += kBetween + lower.height;
    upper.width = wide;
    addSketch(upper, lower);
    return upper;
}

// All at the same size.
Sketch statesIn(const PhraseBook& book, const std::vector<StateShown>& states, const PartRoom& room,
                bool upright, bool withForces) {
    Sketch all = stateIn(book, states.front(), room, withForces);
    for (std::size_t i = 1; i < states.size(); ++i) {
        Sketch next = stateIn(book, states[i], room, withForces);
        all = upright ? below(std::move(all), std::move(next))
                      : sideBySide(std::move(all), next, kBetween);
    }
    return all;
}

struct FittedStates {
    Sketch sketch;
    double share = 0; // of the room that their trusses have
};

FittedStates fittedStates(const PhraseBook& book, const std::vector<StateShown>& states,
                          const FigureSpace& space, bool upright, bool withForces) {
    constexpr double kSmallestShare = 0.15;
    const auto count = static_cast<double>(states.size());
    const double wide = upright ? space.wide : space.wide / count;
    const double high = upright ? space.high / count : space.high;
    FittedStates fitted;
    for (fitted.share = 1; fitted.share > kSmallestShare; fitted.share *= 0.92) {
        const double share = fitted.share;
        fitted.sketch = statesIn(book, states, {share * wide, share * high, share * wide, 0},
                                 upright, withForces);
        if (fitted.sketch.width <= space.wide && fitted.sketch.height <= space.high) {
            break;
        }
    }
    return fitted;
}

} // namespace

Sketch statesSketch(const PhraseBook& book, const std::vector<StateShown>& states,
                    const FigureSpace& space, bool upright) {
    constexpr double kWorthForces = 0.6; // of the size without them
    FittedStates with = fittedStates(book, states, space, upright, true);
    FittedStates without = fittedStates(book, states, space, upright, false);
    return with.share >= kWorthForces * without.share ? std::move(with.sketch)
                                                      : std::move(without.sketch);
}

} // namespace gusset
