#include "report/derivation/truss_figures.hpp"

#include "phrases/results/lists.hpp"
#include "phrases/results/tables.hpp"
#include "phrases/working/paper.hpp"
#include "report/derivation/body_draft.hpp"
#include "report/derivation/body_sketch.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

constexpr double kSupportHeight = 15; // px from the joint to the ground, or to a roller's wheels
constexpr double kSupportHalf = 10;   // px, half the width of its triangle
constexpr double kWheel = 3;          // px, radius
constexpr PartRoom kAnswerRoom{540, 300, 1100}; // more than usual, for the force of each member
constexpr double kLargestAnswer = 3;            // times as large, until all forces have room
constexpr double kForceSize = 13;               // px, font size of the forces at the members

// A triangle on the ground, or on wheels that let it roll along the ground. Its lines belong to
// `thing`.
void drawSupport(Draft& draft, const Support& support, int thing) {
    const std::size_t joint = indexOf(draft.body, support.joint);
    const bool rolls = support.kind == SupportKind::Roller;
    const Vec2 down = rolls ? onPaper(-gusset::directionOf(support.reaction)) : Vec2{0, 1};
    const Vec2 side{-down.y, down.x};
    const Vec2 tip = draft.places[joint];
    const Vec2 foot = tip + kSupportHeight * down;
    const auto line = [&](Vec2 a, Vec2 b) {
        draft.sketch.lines.push_back({a, b, SketchInk::Plain, 1.25, false, thing});
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

void showAsked(Draft& draft, const std::vector<MemberId>& drawn,
               const std::vector<MemberId>& asked) {
    for (std::size_t i = 0; i < drawn.size(); ++i) { // the sketch has their lines in this order
        if (std::find(asked.begin(), asked.end(), drawn[i]) != asked.end()) {
            draft.sketch.lines[i].ink = SketchInk::Accent;
            draft.sketch.lines[i].width = 3;
        }
    }
}

void measureJoints(Draft& draft) {
    for (std::size_t i = 0; i < draft.places.size(); ++i) {
        const Joint& joint = draft.notation.truss.joints[draft.body.joints[i].at()];
        draft.measured.push_back({draft.places[i], joint.at, true, true, false, false});
    }
}

bool canBeRead(const Truss& truss) {
    return !truss.joints.empty() && truss.joints.size() <= kLargestBody;
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

PartRoom times(double size, const PartRoom& room) {
    return {size * room.wide, size * room.high, size * room.widest, size * room.shortest};
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

// `wordsOf(i)`: what is written beside the member with this index.
template <class WordsOf>
void writeBeside(Draft& draft, const std::vector<MemberId>& members, const FinalForces& forces,
                 WordsOf wordsOf) {
    for (std::size_t i = 0; i < members.size(); ++i) { // the sketch has their lines in this order
        SketchLine& line = draft.sketch.lines[i];
        line.ink = inkOfForce(forces.members[members[i].at()]);
        RichLine words = wordsOf(members[i].at());
        draft.waiting.push_back(
            {{.words = words, .at = 0.5 * (line.a + line.b), .ink = line.ink, .size = kForceSize},
             {0, -1},
             3,
             placesBeside(line, words)});
    }
}

void writeForces(Draft& draft, const std::vector<MemberId>& members, const FinalForces& forces) {
    writeBeside(draft, members, forces, [&](std::size_t member) {
        return forceOfMember(draft.notation, forces.members[member]);
    });
}

void drawSupports(Draft& draft) {
    int thing = static_cast<int>(draft.notation.truss.members.size());
    for (const Support& support : draft.notation.truss.supports) {
        drawSupport(draft, support, thing);
        thing += support.kind == SupportKind::Pin ? 2 : 1;
    }
}

constexpr double kAroundTruss = 150;    // px, for arrows and labels left and right of it
constexpr double kLargestOnSheet = 1.7; // times as large: 13 px come out as 6 pt

// The smallest figure in which everything has room, when drawn by `draw`, which returns whether it
// has; else the largest.
template <class Draw>
FullFigure roomiest(const Notation& notation, const FreeBody& body, const FigureSpace& space,
                    Draw draw) {
    const double wide = space.wide - kAroundTruss;
    FullFigure figure;
    figure.complete = false;
    for (double size = 1; !figure.complete && size < kLargestOnSheet; size *= 1.15) {
        const PartRoom room{wide, space.high, wide, 0};
        Draft draft{notation, body, kPartArm, times(size, room)};
        drawMembers(draft);
        figure.complete = draw(draft);
        figure.sketch = completed(draft);
    }
    return figure;
}

} // namespace

std::optional<FinalForces> finalForces(const Notation& notation) {
    if (!notation.working.complete) {
        return std::nullopt;
    }
    FinalForces forces{std::vector<double>(notation.truss.members.size()),
                       std::vector<double>(notation.working.structure.restraints.size())};
    for (const Step& step : notation.working.steps) {
        for (const Found& found : step.found) {
            (found.symbol.kind == SymbolKind::MemberForce
                 ? forces.members[found.symbol.member.at()]
                 : forces.reactions[found.symbol.restraint.at()]) = found.value;
        }
    }
    return forces;
}

std::optional<Sketch> givenFigure(const Notation& notation, const std::vector<MemberId>& asked) {
    if (!canBeRead(notation.truss)) {
        return std::nullopt;
    }
    const FreeBody body = loadedBody(notation);
    Draft draft{notation, body, kPartArm};
    drawMembers(draft);
    showAsked(draft, insideMembers(notation, body), asked);
    drawSupports(draft);
    drawForces(draft);
    nameJoints(draft);
    measureJoints(draft);
    (void)placeWords(draft);
    Sketch sketch = completed(draft);
    sketch.says = sayPlain(notation.book, phrase::kFigureGiven);
    return sketch;
}

std::optional<Sketch> answerFigure(const Notation& notation, const FinalForces& forces) {
    if (!canBeRead(notation.truss)) {
        return std::nullopt;
    }
    const FreeBody body = finalFreeBody(notation, forces.reactions);
    Sketch sketch;
    bool complete = false;
    for (double size = 1; !complete && size < kLargestAnswer; size *= 1.25) {
        Draft draft{notation, body, kPartArm, times(size, kAnswerRoom)};
        drawMembers(draft);
        writeForces(draft, insideMembers(notation, body), forces);
        drawForces(draft);
        nameJoints(draft);
        complete = placeWords(draft);
        sketch = completed(draft);
    }
    sketch.says = sayPlain(notation.book, phrase::kFigureAnswer);
    return sketch;
}

std::optional<FullFigure> loadsFigure(const Notation& notation, const FigureSpace& space) {
    if (!canBeRead(notation.truss)) {
        return std::nullopt;
    }
    FullFigure figure = roomiest(notation, loadedBody(notation), space, [](Draft& draft) {
        drawSupports(draft);
        drawForces(draft);
        nameJoints(draft);
        measureJoints(draft);
        return placeWords(draft);
    });
    figure.sketch.says = sayPlain(notation.book, phrase::kFigureGiven);
    return figure;
}

std::optional<FullFigure> forcesFigure(const Notation& notation, const FinalForces& forces,
                                       const FigureSpace& space) {
    if (!canBeRead(notation.truss)) {
        return std::nullopt;
    }
    const FreeBody body = finalFreeBody(notation, forces.reactions);
    const std::vector<MemberId> members = insideMembers(notation, body);
    const auto drawn = [&](bool numbered) {
        return roomiest(notation, body, space, [&](Draft& draft) {
            if (numbered) {
                writeBeside(draft, members, forces,
                            [](std::size_t i) { return plainLine(std::to_string(i + 1)); });
            } else {
                writeForces(draft, members, forces);
            }
            drawForces(draft);
            nameJoints(draft);
            return placeWords(draft);
        });
    };
    FullFigure figure = drawn(false);
    if (!figure.complete) {
        figure = drawn(true);
        figure.numbered = true;
    }
    figure.sketch.says = sayPlain(notation.book, phrase::kFigureAnswer);
    return figure;
}

} // namespace gusset
