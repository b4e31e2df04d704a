// What a reader must know about the drawing: why there are no forces, the self-weight, which acts
// everywhere, and how many values had no room.
#include "app/fields/load_text.hpp"
#include "canvas/scene/lesson.hpp"
#include "canvas/scene/scene_builders.hpp"
#include "phrases/drawing.hpp"
#include "report/results/results_text.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace gusset {

namespace {

constexpr double kNoteAway = 8; // px from the edge of the free board
constexpr double kBetween = 1;  // px between the lines of a note
constexpr long kNever = 1000;   // labels that one word weighs which must not be covered

struct NoteBox {
    Vec2 middle;
    Vec2 half;
};

// Words that no note may cover.
bool staysOver(const LabelMark& label) {
    return label.kind == LabelKind::Hint || label.kind == LabelKind::Note;
}

bool covers(const Drawing& drawing, const NoteBox& box, const LabelMark& label) {
    const Vec2 reach =
        box.half + 0.5 * drawing.measure(label.text, label.kind) + Vec2{kLabelAir, kLabelAir};
    return std::abs(label.at.x - box.middle.x) < reach.x &&
           std::abs(label.at.y - box.middle.y) < reach.y;
}

// Corners and edges of the free board, in the order in which they are tried.
constexpr std::size_t kCorners = 6;
NoteBox boxIn(const Drawing& drawing, std::size_t corner, Vec2 half) {
    const Rect& free = drawing.obstacles.free();
    const Vec2 low = free.at + half + Vec2{kNoteAway, kNoteAway};
    const Vec2 high = free.at + free.size - half - Vec2{kNoteAway, kNoteAway};
    const Vec2 middle = 0.5 * (low + high);
    const std::array<double, 3> across{low.x, middle.x, high.x};
    return {{across[corner % 3], corner < 3 ? low.y : high.y}, half};
}

// The corner where nothing is drawn; if there is none, the one that covers fewest labels.
std::size_t freestCorner(const Drawing& drawing, const std::vector<LabelMark>& labels, Vec2 half) {
    std::size_t best = 0;
    long least = -1;
    for (std::size_t corner = 0; corner < kCorners; ++corner) {
        const NoteBox box = boxIn(drawing, corner, half);
        long covered = drawing.obstacles.isClear(box.middle, half) ? 0 : 1;
        const auto weigh = [&](const LabelMark& label) {
            if (covers(drawing, box, label)) {
                covered += staysOver(label) ? kNever : 2;
            }
        };
        std::for_each(labels.begin(), labels.end(), weigh);
        if (&labels != &drawing.scene.labels) {
            std::for_each(drawing.scene.labels.begin(), drawing.scene.labels.end(), weigh);
        }
        if (least < 0 || covered < least) {
            least = covered;
            best = corner;
        }
    }
    return best;
}

Vec2 sizeOf(const Drawing& drawing, const std::vector<LabelMark>& lines) {
    Vec2 size;
    for (const LabelMark& line : lines) {
        const Vec2 one = drawing.measure(line.text, line.kind);
        size = {std::max(size.x, one.x), size.y + one.y + kBetween};
    }
    return size;
}

void addSelfWeight(const Drawing& drawing, std::vector<LabelMark>& lines) {
    const Truss& truss = drawing.state.truss;
    for (const Load& load : truss.loads) {
        if (!std::holds_alternative<SelfWeight>(load.what)) {
            continue;
        }
        const bool acts = caseFactor(truss, drawing.state.choice, load) != 0;
        const std::string sum = forceText(truss, weightOf(truss), drawingStyleOf(truss));
        lines.push_back({sayPlain(*drawing.state.book, phrase::kSelfWeightIs, {{"sum", sum}}),
                         {},
                         acts ? Ink::Load : Ink::Muted,
                         LabelKind::Note});
    }
}

struct Counted {
    LabelKind kind;
    decltype("{n} {total}"_phrase) says;
};
constexpr std::array kCountedKinds{
    Counted{LabelKind::Force, phrase::kForcesOf}, Counted{LabelKind::Joint, phrase::kLettersOf},
    Counted{LabelKind::Load, phrase::kLoadsOf}, Counted{LabelKind::Reaction, phrase::kReactionsOf},
    Counted{LabelKind::Dimension, phrase::kDimensionsOf}};

long countOfKind(const std::vector<LabelMark>& labels, LabelKind kind) {
    return std::count_if(labels.begin(), labels.end(),
                         [&](const LabelMark& label) { return label.kind == kind; });
}

// "9 of 13 forces and 3 of 4 loads shown: zoom in"; empty if nothing is left out.
std::string countsText(const Drawing& drawing, const PlacedLabels& placed) {
    std::vector<RichLine> parts;
    if (drawing.on == DrawnOn::Picture) {
        return "";
    }
    for (const Counted& counted : kCountedKinds) {
        const long left = countOfKind(placed.unplaced, counted.kind);
        if (left > 0) {
            const long shown = countOfKind(placed.marks, counted.kind);
            parts.push_back(
                say(*drawing.state.book, counted.says, {{"n", shown}, {"total", shown + left}}));
        }
    }
    return parts.empty() ? ""
                         : sayPlain(*drawing.state.book, phrase::kShownZoomIn,
                                    {{"list", listOf(*drawing.state.book, parts)}});
}

// Labels under the notes give way, and are counted with those left out; returns whether any did.
bool clearUnder(Drawing& drawing, const NoteBox& box) {
    std::vector<LabelMark>& labels = drawing.scene.labels;
    const auto kept =
        std::stable_partition(labels.begin(), labels.end(), [&](const LabelMark& label) {
            return staysOver(label) || !covers(drawing, box, label);
        });
    for (auto covered = kept; covered != labels.end(); ++covered) {
        std::erase_if(drawing.scene.figures,
                      [&](const Figure& figure) { return figure.at == covered->at; });
        drawing.scene.unplaced.push_back(std::move(*covered));
    }
    const bool some = kept != labels.end();
    labels.erase(kept, labels.end());
    return some;
}

bool hasNotes(const Drawing& drawing) { return !drawing.movement && !drawing.influence; }

std::vector<LabelMark> notesFor(const Drawing& drawing, const PlacedLabels& placed) {
    std::vector<LabelMark> lines;
    addSelfWeight(drawing, lines);
    const double width = drawing.obstacles.free().size.x - 2 * kNoteAway;
    for (std::string& line : linesWithin(countsText(drawing, placed), width, drawing.measure)) {
        lines.push_back({std::move(line), {}, Ink::Muted, LabelKind::Note});
    }
    return lines;
}

} // namespace

void drawNews(Drawing& drawing) {
    constexpr double kMostWide = 520; // px
    const AppState& state = drawing.state;
    if (state.truss.joints.empty() || drawing.derived.solution.solved ||
        drawing.derived.verdict.empty() || !state.message.text.empty() ||
        drawing.on == DrawnOn::Picture || offersStep(state, drawing.derived)) {
        return;
    }
    const Rect& free = drawing.obstacles.free();
    const double width = std::min(free.size.x - 2 * kNoteAway, kMostWide);
    double top = free.at.y + kNoteAway;
    for (std::string& line : linesWithin(newsOf(drawing.derived), width, drawing.measure)) {
        const Vec2 half = 0.5 * drawing.measure(line, LabelKind::Note);
        const Vec2 at{free.at.x + 0.5 * free.size.x, top + half.y};
        top += 2 * half.y + kBetween;
        drawing.obstacles.addBox(at, half);
        drawing.scene.labels.push_back({std::move(line), at, Ink::Warning, LabelKind::Note});
    }
}

bool reserveNotes(Drawing& drawing, const PlacedLabels& placed) {
    const std::vector<LabelMark> lines =
        hasNotes(drawing) ? notesFor(drawing, placed) : std::vector<LabelMark>{};
    if (lines.empty()) {
        return false;
    }
    const Vec2 half = 0.5 * sizeOf(drawing, lines);
    drawing.noteCorner = freestCorner(drawing, placed.marks, half);
    const NoteBox box = boxIn(drawing, *drawing.noteCorner, half);
    drawing.obstacles.addBox(box.middle, box.half);
    return true;
}

void drawNotes(Drawing& drawing) {
    std::vector<LabelMark> lines;
    NoteBox box{};
    do {
        const PlacedLabels placed{drawing.scene.labels, drawing.scene.unplaced};
        lines = hasNotes(drawing) ? notesFor(drawing, placed) : std::vector<LabelMark>{};
        if (lines.empty()) {
            return;
        }
        const Vec2 half = 0.5 * sizeOf(drawing, lines);
        box = boxIn(drawing,
                    drawing.noteCorner ? *drawing.noteCorner
                                       : freestCorner(drawing, drawing.scene.labels, half),
                    half);
    } while (clearUnder(drawing, box));
    const double left = box.middle.x - box.half.x;
    double top = box.middle.y - box.half.y;
    for (LabelMark& line : lines) {
        const Vec2 half = 0.5 * drawing.measure(line.text, line.kind);
        line.at = {left + half.x, top + half.y};
        top += 2 * half.y + kBetween;
        drawing.scene.labels.push_back(std::move(line));
    }
}

} // namespace gusset
