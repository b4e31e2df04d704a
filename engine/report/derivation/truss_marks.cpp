#include "report/derivation/truss_marks.hpp"

#include "phrases/results/lists.hpp"
#include "phrases/results/tables.hpp"
#include "report/derivation/support_symbol.hpp"

#include <cmath>
#include <iterator>
#include <utility>

namespace gusset {
namespace {

constexpr double kForceSize = 13; // px, font size of the forces at the members

// Beside a member, as near to its middle as possible, above it or to its left first.
std::vector<Vec2> placesBeside(const SketchLine& member, const RichLine& words) {
    constexpr double kGap = 3; // px between the words and the member
    const Vec2 way = member.b - member.a;
    const double size = length(way);
    if (!(size > 0)) {
        return {};
    }
    Vec2 across = (1 / size) * Vec2{way.y, -way.x};
    across = across.y > 0 || (across.y == 0 && across.x > 0) ? -across : across;
    const SketchBox box = boxOf({.words = words, .size = kForceSize});
    const Vec2 half = 0.5 * (box.high - box.low);
    const double off = kGap + half.x * std::fabs(across.x) + half.y * std::fabs(across.y);
    std::vector<Vec2> places;
    for (const double share : {0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74}) {
        for (const double side : {1.0, -1.0}) {
            places.push_back(member.a + share * way + side * off * across);
        }
    }
    return places;
}

// The letter of a space goes in its middle, or elsewhere in it.
void waitInSpace(Draft& draft, const PolygonSpace& space, double scale) {
    Waiting waiting{{.words = {{space.name, RunStyle::Variable}},
                     .at = scale * onPaper(space.seat),
                     .ink = SketchInk::Muted,
                     .size = 17},
                    {0, -1},
                    0};
    waiting.places.push_back(waiting.words.at);
    for (const Vec2 seat : space.otherSeats) {
        waiting.places.push_back(scale * onPaper(seat));
    }
    draft.waiting.push_back(std::move(waiting));
}

} // namespace

void drawSupports(Draft& draft) {
    int thing = static_cast<int>(draft.notation.truss.members.size());
    for (const Support& support : draft.notation.truss.supports) {
        const std::size_t joint = indexOf(draft.body, support.joint);
        const SupportReach reach = drawSupport(draft.sketch, draft.places[joint], support, thing);
        draft.rays[joint].push_back({reach.way, reach.depth});
        thing += support.kind == SupportKind::Pin ? 2 : 1;
    }
}

void letterSpaces(Draft& draft, const ForcePolygon& polygon, double scale) {
    std::vector<Waiting> others = std::exchange(draft.waiting, {});
    for (const PolygonSpace& space : polygon.spaces) {
        waitInSpace(draft, space, scale);
    }
    std::move(others.begin(), others.end(), std::back_inserter(draft.waiting));
}

SketchInk inkOfForce(double force) {
    return force > 0 ? SketchInk::Tension : force < 0 ? SketchInk::Compression : SketchInk::Zero;
}

RichLine forceOfMember(const Notation& notation, double force) {
    if (force == 0) {
        return plainLine("0");
    }
    const Phrase<> letter = force > 0 ? phrase::kLetterTension : phrase::kLetterCompression;
    return say(notation.book, phrase::kForceWithLetter,
               {{"value", formatNumber(std::fabs(force), notation.numbers)},
                {"letter", sayPlain(notation.book, letter)}});
}

void writeBeside(Draft& draft, std::size_t at, SketchInk ink, RichLine words) {
    SketchLine& line = draft.sketch.lines[at];
    line.ink = ink;
    draft.waiting.push_back(
        {{.words = words, .at = 0.5 * (line.a + line.b), .ink = ink, .size = kForceSize},
         {0, -1},
         3,
         placesBeside(line, words)});
}

} // namespace gusset
