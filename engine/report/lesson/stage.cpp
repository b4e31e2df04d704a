#include "report/lesson/stage.hpp"

#include "report/derivation/body_sketch.hpp"
#include "report/lesson/stage_influence.hpp"
#include "report/lesson/stage_lines.hpp"
#include "report/lesson/stage_moving.hpp"
#include "report/lesson/stage_polygon.hpp"
#include "report/lesson/stage_states.hpp"
#include "report/lesson/stage_truss.hpp"

#include <algorithm>
#include <array>

namespace gusset {
namespace {

constexpr double kReading = 14;     // px, the font size of labels in sketches
constexpr double kOfLabels = 1.45;  // labels over the smallest letters, which are subscripts
constexpr double kAtArmsLength = 6; // px, subscripts
constexpr double kUsualAtArmsLength = 9;
constexpr double kLargestBodyScale = 1.6; // over the truss's
constexpr double kTitleOver = 1.5;        // the title over the smallest lines
constexpr double kLinesAtArmsLength = 16;

bool isUpright(const StageSize& size) { return size.height > size.width; }

// Where things stand.
struct Places {
    SketchBox title;
    SketchBox truss;
    SketchBox body;
    SketchBox lines;
};

double wide(const SketchBox& box) { return box.high.x - box.low.x; }
double high(const SketchBox& box) { return box.high.y - box.low.y; }

// Drawings of a derivation's own, or the whole truss as a body, stand for the truss.
bool hasOwnDrawing(const LessonStep& step) {
    return !step.drawings.empty() || !step.states.empty() || step.unitLoad.valid();
}

bool hasBody(const LessonStep& step) { return step.body || hasOwnDrawing(step); }

bool showsTruss(const LessonStep& step) { return !hasOwnDrawing(step) && !step.bodyIsWhole; }

bool showsOneJoint(const LessonShown& lesson, const LessonStep& step) {
    return step.body && lesson.working.steps[*step.body].body.size() == 1;
}

struct Division {
    double upper = 0.56; // of what is under the title, for drawings
    double share = 0;    // of the truss, beside its free body or above it; 0: the body stands alone
};

Places placesOn(const StageSize& size, const LessonStep& step, const Division& division) {
    const double share = division.share;
    const double margin = 0.025 * std::min(size.width, size.height);
    const double top = margin + 2.2 * smallestLines(size);
    const double left = margin;
    const double right = size.width - margin;
    const double bottom = size.height - margin;
    if (step.lines.empty() && !hasBody(step)) {
        return {{{left, margin}, {right, top}},
                {{left, top}, {right, bottom}},
                {},
                {{}, {right, bottom}}};
    }
    const double middle = top + division.upper * (bottom - top);
    Places places;
    places.title = {{left, margin}, {right, top}};
    places.lines = {{left, middle + margin}, {right, bottom}};
    if (!hasBody(step) || !showsTruss(step) || share == 0) {
        places.truss = places.body = {{left, top}, {right, middle}};
    } else if (isUpright(size)) {
        const double between = top + share * (middle - top);
        places.truss = {{left, top}, {right, between}};
        places.body = {{left, between}, {right, middle}};
    } else {
        const double between = left + share * (right - left);
        places.truss = {{left, top}, {between - margin, middle}};
        places.body = {{between, top}, {right, middle}};
    }
    return places;
}

Vec2 scaled(Vec2 at, double by, Vec2 to) { return by * at + to; }

// Everything of a sketch, larger and elsewhere.
void addScaled(Sketch& sketch, Sketch part, double by, Vec2 to) {
    for (SketchArea& area : part.areas) {
        for (Vec2& corner : area.corners) {
            corner = scaled(corner, by, to);
        }
        sketch.areas.push_back(area);
    }
    for (SketchLine& line : part.lines) {
        line.a = scaled(line.a, by, to);
        line.b = scaled(line.b, by, to);
        line.width *= by;
        sketch.lines.push_back(line);
    }
    for (SketchArrow& arrow : part.arrows) {
        arrow.tail = scaled(arrow.tail, by, to);
        arrow.tip = scaled(arrow.tip, by, to);
        arrow.width *= by;
        sketch.arrows.push_back(arrow);
    }
    for (SketchArc& arc : part.arcs) {
        arc.centre = scaled(arc.centre, by, to);
        arc.radius *= by;
        sketch.arcs.push_back(arc);
    }
    for (SketchDisc& disc : part.discs) {
        disc.at = scaled(disc.at, by, to);
        disc.radius *= by;
        sketch.discs.push_back(disc);
    }
    for (SketchWords& words : part.words) {
        words.at = scaled(words.at, by, to);
        words.size *= by;
        words.length *= by;
        sketch.words.push_back(words);
    }
}

// In the middle of its place, no larger than `largest` times.
OnStage addFitted(Sketch& sketch, Sketch part, const SketchBox& place, double largest) {
    const double by = std::min({largest, wide(place) / part.width, high(place) / part.height});
    const Vec2 to =
        place.low + 0.5 * Vec2{wide(place) - by * part.width, high(place) - by * part.height};
    addScaled(sketch, std::move(part), by, to);
    return {to, by};
}

double labelScale(const StageSize& size) {
    const double subscripts = isUpright(size) ? kUsualAtArmsLength : smallestLetters(size);
    return kOfLabels * subscripts / kReading;
}

// The free bodies of a step, or its own drawings, side by side; nothing if they have more joints
// than anybody could read.
std::optional<Sketch> bodiesIn(const PhraseBook& book, const LessonShown& lesson,
                               const LessonStep& step, const FigureSpace& space, bool upright) {
    if (!step.states.empty()) {
        return statesSketch(book, step.states, space, upright);
    }
    if (step.unitLoad.valid()) {
        return trussUnderUnitLoad(book, lesson, step.unitLoad, space);
    }
    const std::vector<Sketch> sketches =
        step.body
            ? bodySketchesIn(notationOf({book, lesson.truss}, lesson.working), *step.body, space)
            : step.drawings;
    if (sketches.empty()) {
        return std::nullopt;
    }
    Sketch all = sketches.front();
    for (std::size_t i = 1; i < sketches.size(); ++i) {
        all = sideBySide(std::move(all), sketches[i], kReading);
    }
    return all;
}

FigureSpace spaceIn(const SketchBox& place, double by) {
    return {wide(place) / by, high(place) / by};
}

bool fitIn(const SketchBox& place, const std::vector<WorkingLine>& lines, double letters) {
    return heightOf(lines, wide(place), letters) <= high(place) &&
           widestRow(lines, wide(place), letters) <= wide(place);
}

struct LaidOut {
    Places places;
    std::optional<Sketch> bodies{}; // as they are drawn in their place
    bool hasTruss = true;           // if the step shows it at all
};

constexpr double kSmallestLetters = 1.1; // of lines, over the smallest that a room can read

// Without a free body: less for the drawings, or nothing, where the words need the room.
LaidOut layoutOfWords(const PhraseBook& book, const StageSize& size, const LessonStep& step,
                      const LessonShown& lesson) {
    LaidOut layout;
    for (const double upper : {0.56, 0.46, 0.36, 0.0}) {
        layout.hasTruss = upper > 0;
        layout.places = placesOn(size, step, {upper, 0});
        if (step.step ||
            fitIn(layout.places.lines, step.lines, kSmallestLetters * smallestLines(size))) {
            break;
        }
    }
    if (layout.hasTruss) {
        layout.bodies = bodiesIn(book, lesson, step, spaceIn(layout.places.body, labelScale(size)),
                                 isUpright(size));
    }
    return layout;
}

// As much for the truss as its free body leaves, and nothing if it leaves none. A body gives the
// same place in all its steps.
LaidOut layoutFor(const PhraseBook& book, const StageSize& size, const LessonShown& lesson,
                  const LessonStep& step) {
    if (!step.body) {
        return layoutOfWords(book, size, step, lesson);
    }
    constexpr std::array kShares{0.58, 0.5, 0.42, 0.34, 0.26, 0.0};
    const std::size_t first = isUpright(size) ? 2 : showsOneJoint(lesson, step) ? 0 : 1;
    LaidOut layout;
    for (std::size_t i = first; i < kShares.size(); ++i) {
        layout.hasTruss = kShares[i] > 0;
        const double upper = step.bodyIsWhole || !layout.hasTruss ? 0.64 : 0.56;
        layout.places = placesOn(size, step, {upper, kShares[i]});
        const FigureSpace space = spaceIn(layout.places.body, labelScale(size));
        layout.bodies = bodiesIn(book, lesson, step, space, isUpright(size));
        const bool shares = showsTruss(step) && layout.bodies;
        if (!shares ||
            (layout.bodies->width <= space.wide && layout.bodies->height <= space.high)) {
            break;
        }
    }
    return layout;
}

OnStage addTruss(const PhraseBook& book, const LessonShown& lesson, const StagePlace& at,
                 const StageSize& size, const SketchBox& place, Sketch& stage) {
    const double by = labelScale(size);
    TrussPicture picture = stageTruss(book, lesson, at, spaceIn(place, by));
    const OnStage fitted = addFitted(stage, std::move(picture.sketch), place, by);
    return {scaled(picture.board.origin, fitted.scale, fitted.origin),
            fitted.scale * picture.board.scale};
}

void addTitle(const RichLine& title, const StageSize& size, const SketchBox& place, Sketch& stage) {
    const double usual = kTitleOver * smallestLines(size);
    const double letters =
        std::clamp(usual * wide(place) / widthOf(title, usual), smallestLetters(size), usual);
    stage.words.push_back({title,
                           {place.low.x, place.low.y + 0.4 * high(place)},
                           SketchAnchor::Start,
                           SketchInk::Muted,
                           letters});
}

// The largest size at which all lines of the step have room, so that none moves when the next one
// comes; where there is none, only the last that have.
void addLines(const LessonStep& step, std::size_t shown, const StageSize& size,
              const SketchBox& place, Sketch& stage) {
    double letters = 2.2 * smallestLines(size);
    while (letters > kSmallestLetters * smallestLines(size) && !fitIn(place, step.lines, letters)) {
        letters = std::max(0.94 * letters, kSmallestLetters * smallestLines(size));
    }
    std::vector<WorkingLine> lines(step.lines.begin(),
                                   step.lines.begin() + static_cast<std::ptrdiff_t>(shown));
    while (lines.size() > 1 && heightOf(lines, wide(place), letters) > high(place)) {
        lines.erase(lines.begin());
    }
    placeLines(stage, lines, place.low, wide(place), letters);
}

} // namespace

double smallestLetters(const StageSize& size) {
    return isUpright(size) ? kAtArmsLength : std::max(kUsualAtArmsLength, size.height / 60);
}

double smallestLines(const StageSize& size) {
    return isUpright(size) ? kLinesAtArmsLength : std::max(kLinesAtArmsLength, size.height / 40);
}

namespace {

void addTable(const TextTable& table, const TableShown& shown, const StageSize& size,
              const SketchBox& place, Sketch& stage) {
    const double letters = smallestLines(size);
    (void)addFitted(stage, tableSketch(table, letters, shown.first, shown.rows), place, 2);
}

// Two drawings side by side, or one below the other.
std::array<SketchBox, 2> halvesOf(const SketchBox& all, const StageSize& size) {
    const Vec2 middle = 0.5 * (all.low + all.high);
    return isUpright(size) ? std::array<SketchBox, 2>{{{all.low, {all.high.x, middle.y}},
                                                       {{all.low.x, middle.y}, all.high}}}
                           : std::array<SketchBox, 2>{{{all.low, {middle.x, all.high.y}},
                                                       {{middle.x, all.low.y}, all.high}}};
}

void addPolygon(const PhraseBook& book, const LessonShown& lesson, std::size_t drawn,
                const StageSize& size, const SketchBox& place, Sketch& stage) {
    const auto [truss, lines] = halvesOf(place, size);
    const double by = labelScale(size);
    (void)addFitted(stage, polygonTruss(book, lesson, drawn, spaceIn(truss, by)), truss, by);
    (void)addFitted(stage, polygonLines(book, lesson, drawn, spaceIn(lines, by)), lines, by);
}

// What has the whole stage to itself; whether there is such a thing.
bool addAlone(const PhraseBook& book, const LessonShown& lesson, const StagePlace& at,
              const StageSize& size, const SketchBox& place, Sketch& stage) {
    const LessonStep& step = lesson.steps[at.step];
    const Stroke& stroke = step.strokes[at.stroke];
    const double by = labelScale(size);
    if (stroke.table) {
        addTable(step.tables[stroke.table->table], *stroke.table, size, place, stage);
    } else if (stroke.drawn) {
        addPolygon(book, lesson, *stroke.drawn, size, place, stage);
    } else if (stroke.traced) {
        (void)addFitted(stage,
                        tracedLine(book, lesson, *stroke.traced, at.along, spaceIn(place, by)),
                        place, by);
    } else if (step.moves) {
        (void)addFitted(stage, movingTruss(book, lesson, at.phase, spaceIn(place, by)), place, by);
    } else {
        return false;
    }
    return true;
}

} // namespace

StagePicture stageOf(const PhraseBook& book, const LessonShown& lesson, const StagePlace& at,
                     const StageSize& size) {
    const LessonStep& step = lesson.steps[at.step];
    LaidOut layout = layoutFor(book, size, lesson, step);
    const Places& places = layout.places;
    StagePicture stage;
    Sketch& sketch = stage.sketch;
    sketch.width = size.width;
    sketch.height = size.height;
    const RichLine& title = titleAt(step, at.stroke);
    sketch.says = plainText(title);
    addTitle(title, size, places.title, sketch);
    if (addAlone(book, lesson, at, size, {places.truss.low, places.lines.high}, sketch)) {
        return stage;
    }
    if (showsTruss(step) && layout.hasTruss && !lesson.truss.joints.empty()) {
        stage.board = addTruss(book, lesson, at, size, places.truss, sketch);
    }
    if (layout.bodies) {
        stage.body = addFitted(sketch, std::move(*layout.bodies), places.body,
                               kLargestBodyScale * labelScale(size));
    }
    addLines(step, step.strokes[at.stroke].lines, size, places.lines, sketch);
    return stage;
}

} // namespace gusset
