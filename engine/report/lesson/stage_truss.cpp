#include "report/lesson/stage_truss.hpp"

#include "phrases/working/paper.hpp"
#include "report/derivation/truss_marks.hpp"
#include "report/lesson/stage_draft.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

constexpr double kBand = 7; // px, half the width of what lights a member

struct KnownForces {
    std::vector<std::optional<double>> members;
    std::vector<double> reactions; // 0: not shown
};

void learn(KnownForces& known, const Found& found) {
    if (found.symbol.kind == SymbolKind::MemberForce) {
        known.members[found.symbol.member.at()] = found.value;
    } else if (found.symbol.kind == SymbolKind::Reaction) {
        known.reactions[found.symbol.restraint.at()] = found.value;
    }
}

const Step* spokenAt(const LessonShown& lesson, const StagePlace& place) {
    const LessonStep& step = lesson.steps[place.step];
    const std::optional<std::size_t> of = step.strokes[place.stroke].of;
    return of ? &lesson.working.steps[*of] : nullptr;
}

KnownForces knownAt(const LessonShown& lesson, const StagePlace& place) {
    KnownForces known{std::vector<std::optional<double>>(lesson.truss.members.size()),
                      std::vector<double>(lesson.working.structure.restraints.size())};
    const LessonStep& step = lesson.steps[place.step];
    if (!step.step) {
        return known;
    }
    for (std::size_t i = 0; i < *step.step; ++i) { // also of steps that the lesson leaves out
        for (const Found& found : lesson.working.steps[i].found) {
            learn(known, found);
        }
    }
    for (const Found& found : step.strokes[place.stroke].told) {
        learn(known, found);
    }
    return known;
}

bool holds(const std::vector<MemberId>& members, MemberId member) {
    return std::find(members.begin(), members.end(), member) != members.end();
}

bool introduces(const Step& step) {
    return step.kind == StepKind::JointIntro || step.kind == StepKind::SectionIntro;
}

// What the step is about to find, and what the whole lesson is about.
bool isAsked(const LessonShown& lesson, const Step* spoken, MemberId member) {
    if (holds(lesson.asked, member)) {
        return true;
    }
    return spoken &&
           ((introduces(*spoken) && holds(spoken->members, member)) ||
            std::any_of(spoken->found.begin(), spoken->found.end(), [&](const Found& found) {
                return found.symbol.kind == SymbolKind::MemberForce &&
                       found.symbol.member == member;
            }));
}

bool speaksOf(const Step* spoken, MemberId member) {
    return spoken &&
           (holds(spoken->members, member) ||
            std::any_of(spoken->uses.begin(), spoken->uses.end(), [&](const Symbol& symbol) {
                return symbol.kind == SymbolKind::MemberForce && symbol.member == member;
            }));
}

// The section to which a step belongs: where it is made.
const Step* sectionOf(const LessonShown& lesson, const LessonStep& step) {
    const Step* made = step.body ? &lesson.working.steps[*step.body] : nullptr;
    return made && made->kind == StepKind::SectionIntro ? made : nullptr;
}

// A dashed line through the middles of the cut members, and beyond them.
void drawCut(Draft& draft, const std::vector<MemberId>& drawn, const Step& section) {
    constexpr double kBeyond = 16; // px
    std::vector<Vec2> middles;
    for (std::size_t i = 0; i < drawn.size(); ++i) {
        if (holds(section.members, drawn[i])) {
            middles.push_back(0.5 * (draft.sketch.lines[i].a + draft.sketch.lines[i].b));
        }
    }
    Vec2 way{0, 1};
    double longest = 0;
    for (const Vec2 a : middles) {
        for (const Vec2 b : middles) {
            if (length(b - a) > longest) {
                longest = length(b - a);
                way = (1 / longest) * (b - a);
            }
        }
    }
    if (middles.empty()) {
        return;
    }
    std::sort(middles.begin(), middles.end(),
              [&](Vec2 a, Vec2 b) { return dot(a, way) < dot(b, way); });
    middles.insert(middles.begin(), middles.front() - kBeyond * way);
    middles.push_back(middles.back() + kBeyond * way);
    for (std::size_t i = 1; i < middles.size(); ++i) {
        draft.sketch.lines.push_back({middles[i - 1], middles[i], SketchInk::Accent, 2.5, true});
    }
}

// The part that is kept, and where it is cut off.
void lightPart(Draft& draft, const LessonShown& lesson, const std::vector<MemberId>& drawn,
               const Step& section) {
    const auto isKept = [&](JointId joint) {
        return std::find(section.body.begin(), section.body.end(), joint) != section.body.end();
    };
    for (std::size_t i = 0; i < drawn.size(); ++i) {
        const Member& member = lesson.truss.members[drawn[i].at()];
        if (isKept(member.a) && isKept(member.b) && !holds(section.members, drawn[i])) {
            light(draft.sketch, draft.sketch.lines[i]);
        }
    }
    drawCut(draft, drawn, section);
}

void lightAll(Draft& draft, const std::vector<MemberId>& drawn, const Step& step) {
    for (std::size_t i = 0; i < drawn.size(); ++i) {
        if (holds(step.members, drawn[i])) {
            light(draft.sketch, draft.sketch.lines[i]);
        }
    }
    if (step.joint.valid()) {
        draft.sketch.discs.push_back(
            {draft.places[indexOf(draft.body, step.joint)], 9, SketchInk::Accent, false});
    }
}

enum class Values { All, Spoken, NoReactions }; // of those that are known; the last as Spoken

bool isOfJoint(const Step& step) {
    return step.kind == StepKind::JointIntro || step.kind == StepKind::JointEquation ||
           step.kind == StepKind::JointPair;
}

struct DrawnTruss {
    Sketch sketch;
    OnStage board{};
    PartRoom room{};
    std::size_t leaders = 0; // to words that have no room beside what they name
};

// What the drawing takes where it is drawn, before it is moved into its sketch.
SketchBox frameOf(const DrawnTruss& drawn) {
    const Vec2 low = -drawn.board.origin;
    return {low, low + Vec2{drawn.sketch.width, drawn.sketch.height}};
}

class TrussDrawer {
public:
    TrussDrawer(const PhraseBook& book, const LessonShown& lesson)
        : lesson_(lesson), notation_(notationOf({book, lesson.truss}, lesson.working)) {}

    // With `frame`, room for all of it.
    [[nodiscard]] DrawnTruss draw(const StagePlace& place, const PartRoom& room, Values values,
                                  const std::optional<SketchBox>& frame = {}) const {
        KnownForces known = knownAt(lesson_, place);
        const Step* spoken = spokenAt(lesson_, place);
        if (place.hidesValues || values == Values::NoReactions) {
            std::fill(known.reactions.begin(), known.reactions.end(), 0.0);
        }
        const FreeBody body = finalFreeBody(notation_, known.reactions);
        Draft draft{notation_, body, kPartArm, room};
        const double scale = drawMembers(draft);
        const std::vector<MemberId> members = insideMembers(notation_, body);
        lightSpoken(draft, members, place, spoken);
        for (std::size_t i = 0; i < members.size(); ++i) {
            mark(draft, i, members[i], known, place, spoken, values);
        }
        drawSupports(draft);
        drawForces(draft);
        nameJoints(draft);
        const std::size_t lines = draft.sketch.lines.size();
        (void)placeWords(draft);
        const std::size_t leaders = draft.sketch.lines.size() - lines;
        if (frame) {
            constexpr double kMargin = 8; // that completed() puts round a drawing
            holdRoom(draft.sketch, frame->low + Vec2{kMargin, kMargin});
            holdRoom(draft.sketch, frame->high - Vec2{kMargin, kMargin});
        }
        DrawnTruss drawn;
        drawn.sketch = completed(draft);
        drawn.board = {draft.moved, scale};
        drawn.room = room;
        drawn.leaders = leaders;
        return drawn;
    }

private:
    void lightSpoken(Draft& draft, const std::vector<MemberId>& members, const StagePlace& place,
                     const Step* spoken) const {
        if (const Step* section = sectionOf(lesson_, lesson_.steps[place.step])) {
            lightPart(draft, lesson_, members, *section);
        } else if (spoken && spoken->kind != StepKind::Summary) {
            lightAll(draft, members, *spoken);
        }
    }

    void mark(Draft& draft, std::size_t i, MemberId member, const KnownForces& known,
              const StagePlace& place, const Step* spoken, Values values) const {
        constexpr double kHeavy = 3.5;
        constexpr double kThin = 1.5;
        const std::optional<double>& force = known.members[member.at()];
        const bool asked = isAsked(lesson_, spoken, member);
        draft.sketch.lines[i].width = force || asked ? kHeavy : kThin;
        if (!force && asked) {
            writeBeside(draft, i, SketchInk::Accent, plainLine("?"));
        } else if (force && place.hidesValues) {
            writeBeside(draft, i, SketchInk::Plain, plainLine("\u2713"));
        } else if (force && (values == Values::All || asked || speaksOf(spoken, member))) {
            writeBeside(draft, i, inkOfForce(*force), forceOfMember(notation_, *force));
        } else if (force) {
            draft.sketch.lines[i].ink = inkOfForce(*force);
        }
    }

    const LessonShown& lesson_;
    Notation notation_;
};

// One stroke for each number of results that a step has told.
std::vector<std::size_t> differentStrokes(const LessonStep& step) {
    std::vector<std::size_t> strokes;
    for (std::size_t i = 0; i < step.strokes.size(); ++i) {
        const bool same = i > 0 && step.strokes[i].told.size() == step.strokes[i - 1].told.size() &&
                          step.strokes[i].of == step.strokes[i - 1].of;
        if (!same) {
            strokes.push_back(i);
        }
    }
    return strokes;
}

bool fitsIn(const FigureSpace& space, const SketchBox& frame) {
    return frame.high.x - frame.low.x <= space.wide && frame.high.y - frame.low.y <= space.high;
}

// Of all strokes of a step.
SketchBox frameOfAll(const TrussDrawer& drawer, const LessonShown& lesson, const StagePlace& full,
                     const PartRoom& room, Values values) {
    SketchBox frame = frameOf(drawer.draw(full, room, values));
    for (const std::size_t stroke : differentStrokes(lesson.steps[full.step])) {
        StagePlace other = full;
        other.stroke = stroke;
        frame = boxAround(frame, frameOf(drawer.draw(other, room, values)));
    }
    return frame;
}

// The room a little smaller, until all strokes fit or it is no use.
SketchBox shrunk(const TrussDrawer& drawer, const LessonShown& lesson, const StagePlace& full,
                 const FigureSpace& space, Values values, PartRoom& room) {
    constexpr int kMostTimes = 8;
    constexpr double kSmaller = 0.95;
    SketchBox frame = frameOfAll(drawer, lesson, full, room, values);
    for (int smaller = 0; smaller < kMostTimes && !fitsIn(space, frame); ++smaller) {
        room = {kSmaller * room.wide, kSmaller * room.high, kSmaller * room.widest, 0};
        frame = frameOfAll(drawer, lesson, full, room, values);
    }
    return frame;
}

} // namespace

void light(Sketch& sketch, const SketchLine& member) {
    const Vec2 way = member.b - member.a;
    const double size = length(way);
    if (!(size > 0)) {
        return;
    }
    const Vec2 side = (kBand / size) * Vec2{-way.y, way.x};
    sketch.areas.push_back(
        {{member.a + side, member.b + side, member.b - side, member.a - side}, SketchInk::Accent});
}

TrussPicture stageTruss(const PhraseBook& book, const LessonShown& lesson, const StagePlace& place,
                        const FigureSpace& space) {
    constexpr std::size_t kMostValues = 40; // beyond which nobody could read all of them
    constexpr double kWorthAll = 0.75;      // of the size that the truss has with fewer values
    const TrussDrawer drawer(book, lesson);
    StagePlace full = place;
    full.stroke = lesson.steps[place.step].strokes.size() - 1;
    const auto largest = [&](Values values) {
        return largestIn(space,
                         [&](const PartRoom& room) { return drawer.draw(full, room, values); });
    };
    const Step* spoken = spokenAt(lesson, full);
    Values values = Values::All;
    PartRoom room;
    if (!spoken || spoken->kind == StepKind::Summary) {
        room = largest(values).room;
    } else {
        const DrawnTruss few = largest(Values::Spoken);
        values = Values::Spoken;
        room = few.room;
        if (lesson.truss.members.size() <= kMostValues) {
            const DrawnTruss all = largest(Values::All);
            const bool isCrowded =
                all.leaders > few.leaders || all.board.scale < kWorthAll * few.board.scale;
            values = isCrowded ? Values::Spoken : Values::All;
            room = isCrowded ? few.room : all.room;
        }
    }
    SketchBox frame = shrunk(drawer, lesson, full, space, values, room);
    if (!fitsIn(space, frame) && spoken && isOfJoint(*spoken)) {
        values = Values::NoReactions;
        room = largest(values).room;
        frame = shrunk(drawer, lesson, full, space, values, room);
    }
    DrawnTruss drawn = drawer.draw(place, room, values, frame);
    drawn.sketch.says = sayPlain(book, phrase::kFigureGiven);
    return {std::move(drawn.sketch), drawn.board};
}

} // namespace gusset
