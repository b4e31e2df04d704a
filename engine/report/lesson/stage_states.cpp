#include "report/lesson/stage_states.hpp"

#include "report/derivation/body_sketch.hpp"
#include "report/lesson/stage_draft.hpp"

namespace gusset {
namespace {

constexpr double kNameSize = 17; // px
constexpr double kNameHigh = 26;
constexpr double kBetween = 18;

Sketch stateIn(const PhraseBook& book, const StateShown& state, const FigureSpace& space) {
    const Notation notation = notationOf({book, *state.truss}, *state.working);
    const double above = state.name.empty() ? 0 : kNameHigh;
    Sketch sketch = trussSketchIn(notation, state.members, {space.wide, space.high - above});
    if (above > 0) {
        moveSketch(sketch, {0, above});
        sketch.height += above;
        sketch.words.push_back({.words = state.name,
                                .at = {sketch.width / 2, above / 2},
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

} // namespace

Sketch statesSketch(const PhraseBook& book, const std::vector<StateShown>& states,
                    const FigureSpace& space, bool upright) {
    const auto count = static_cast<double>(states.size());
    const double gaps = kBetween * (count - 1);
    const FigureSpace each = upright ? FigureSpace{space.wide, (space.high - gaps) / count}
                                     : FigureSpace{(space.wide - gaps) / count, space.high};
    Sketch all = stateIn(book, states.front(), each);
    for (std::size_t i = 1; i < states.size(); ++i) {
        Sketch next = stateIn(book, states[i], each);
        all = upright ? below(std::move(all), std::move(next))
                      : sideBySide(std::move(all), next, kBetween);
    }
    return all;
}

} // namespace gusset
