#include "report/derivation/truss_marks.hpp"

#include "phrases/results/lists.hpp"
#include "phrases/results/tables.hpp"

#include <cmath>

namespace gusset {
namespace {

constexpr double kSupportHeight = 15; // px from the joint to the ground, or to a roller's wheels
constexpr double kSupportHalf = 10;   // px, half the width of its triangle
constexpr double kWheel = 3;          // px, radius
constexpr double kForceSize = 13;     // px, font size of the forces at the members

// A triangle on the ground, or on wheels that let it roll along the ground.
void drawSupport(Draft& draft, const Support& support) {
    const std::size_t joint = indexOf(draft.body, support.joint);
    const bool rolls = support.kind == SupportKind::Roller;
    const Vec2 down = rolls ? onPaper(-gusset::directionOf(support.reaction)) : Vec2{0, 1};
    const Vec2 side{-down.y, down.x};
    const Vec2 tip = draft.places[joint];
    const Vec2 foot = tip + kSupportHeight * down;
    const auto line = [&](Vec2 a, Vec2 b) {
        draft.sketch.lines.push_back({a, b, SketchInk::Plain, 1.25, false});
    };
    line(tip, foot + kSupportHalf * side);
    line(foot + kSupportHalf * side, foot - kSupportHalf * side);
    line(foot - kSupportHalf * side, tip);
    double depth = kSupportHeight;
    if (rolls) {
        for (const double at : {-0.6, 0.6}) {
            draft.sketch.discs.push_back(
                {foot + kWheel * down + at * kSupportHalf * side, kWheel, SketchInk::Plain, false});
        }
        depth += 2 * kWheel + 1;
    }
    const Vec2 ground = tip + depth * down;
    line(ground - 1.6 * kSupportHalf * side, ground + 1.6 * kSupportHalf * side);
    draft.rays[joint].push_back({down, depth});
}

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

} // namespace

void drawSupports(Draft& draft) {
    for (const Support& support : draft.notation.truss.supports) {
        drawSupport(draft, support);
    }
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
