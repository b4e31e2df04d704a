#include "app/fields/typed_text.hpp"
#include "canvas/scene/figures.hpp"
#include "canvas/scene/scene_builders.hpp"

#include "core/number.hpp"
#include "core/signs.hpp"
#include "core/tolerance.hpp"
#include "model/truss/units.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

constexpr double kAwayFromDrawing = 13; // px between the outermost symbol and the first line
constexpr double kRowsApart = 26;       // between the line of the panels and the overall line
constexpr double kTick = 5;             // half of the oblique stroke at an end
constexpr double kWitness = 9;          // half of the extension line
constexpr double kTextAir = 5;
constexpr std::size_t kMostPanels = 16;

enum class Direction { Across, Upright };

// A dimension line on the board: points along it, and its own coordinate.
struct Row {
    Direction direction = Direction::Across;
    double across = 0;           // px: the line's y, or x
    std::vector<double> figures; // length units, ascending: the points measured
    std::vector<double> along;   // px of these points
    std::size_t panels = 1;      // equal parts of its only span, which its label names
};

Vec2 onRow(const Row& row, double along, double aside = 0) {
    return row.direction == Direction::Across ? Vec2{along, row.across + aside}
                                              : Vec2{row.across + aside, along};
}

std::string figureText(const Drawing& drawing, double value, bool withUnit) {
    const char sign = drawing.state.truss.classSettings.decimalSign;
    const std::string unit = symbolOf(drawing.state.truss.units.length);
    const bool named = withUnit && !unit.empty();
    return formatMeasured(value, sign) + (named ? kThinSpace + unit : "");
}

// The label of the span that ends there; of so many equal panels, "6 × 2 = 12 m".
std::string spanText(const Drawing& drawing, const Row& row, std::size_t to, bool withUnit) {
    const double span = row.figures[to] - row.figures[to - 1];
    const std::string text = figureText(drawing, span, withUnit);
    return row.panels == 1
               ? text
               : std::to_string(row.panels) + " × " +
                     figureText(drawing, span / static_cast<double>(row.panels), false) + " = " +
                     text;
}

// Px along the row that its label takes; labels are never rotated.
double roomOf(const Drawing& drawing, const Row& row, const std::string& text) {
    const Vec2 size = drawing.measure(text, LabelKind::Dimension);
    return (row.direction == Direction::Across ? size.x : size.y) + 2 * kTextAir;
}

bool fits(const Drawing& drawing, const Row& row, bool withUnit) {
    const Rect& free = drawing.obstacles.free();
    const Vec2 first = onRow(row, row.along.front());
    const Vec2 last = onRow(row, row.along.back());
    double widest = 0;
    for (std::size_t i = 1; i < row.along.size(); ++i) {
        const std::string text = spanText(drawing, row, i, withUnit);
        widest = std::max(widest, drawing.measure(text, LabelKind::Dimension).x);
    }
    const double margin = row.direction == Direction::Across ? kWitness : 0.5 * widest + 1;
    const Vec2 low{std::min(first.x, last.x), std::min(first.y, last.y)};
    const Vec2 high{std::max(first.x, last.x), std::max(first.y, last.y)};
    if (low.x < free.at.x + margin || high.x > free.at.x + free.size.x - margin ||
        low.y < free.at.y + kWitness || high.y > free.at.y + free.size.y - kWitness) {
        return false;
    }
    for (std::size_t i = 1; i < row.along.size(); ++i) {
        const std::string text = spanText(drawing, row, i, withUnit);
        const Vec2 half = 0.5 * drawing.measure(text, LabelKind::Dimension);
        const Vec2 middle = onRow(row, 0.5 * (row.along[i - 1] + row.along[i]));
        if (std::abs(row.along[i] - row.along[i - 1]) < roomOf(drawing, row, text) + 2 * kTick ||
            !drawing.obstacles.isClear(middle, half)) {
            return false;
        }
    }
    return true;
}

void addThin(Drawing& drawing, Vec2 a, Vec2 b, float width) {
    addLine(drawing, {a, b, width, Ink::Dimension, 0});
    drawing.obstacles.addSegment(a, b, 1);
}

void drawEnd(Drawing& drawing, const Row& row, double along) {
    addThin(drawing, onRow(row, along, -kWitness), onRow(row, along, kWitness), 1);
    const Vec2 at = onRow(row, along);
    addThin(drawing, at + Vec2{-kTick, kTick}, at + Vec2{kTick, -kTick}, 1.8F);
}

// The line is interrupted for its label.
void drawSpan(Drawing& drawing, const Row& row, std::size_t to, bool withUnit) {
    const double from = row.along[to - 1];
    const double until = row.along[to];
    LabelMark mark;
    mark.text = spanText(drawing, row, to, withUnit);
    mark.at = onRow(row, 0.5 * (from + until));
    mark.ink = Ink::Dimension;
    mark.kind = LabelKind::Dimension;
    mark.backed = false;
    const double half = std::copysign(0.5 * roomOf(drawing, row, mark.text), until - from);
    const double middle = 0.5 * (from + until);
    addThin(drawing, onRow(row, from), onRow(row, middle - half), 1);
    addThin(drawing, onRow(row, middle + half), onRow(row, until), 1);
    const Vec2 halfText = 0.5 * drawing.measure(mark.text, mark.kind);
    drawing.obstacles.addBox(mark.at, halfText);
    const Measured measured{row.direction == Direction::Upright, row.figures[to - 1],
                            row.figures[to]};
    drawing.scene.figures.push_back({measured,
                                     typedNumber(drawing.state.truss, measured.to - measured.from),
                                     mark.at, halfText});
    drawing.scene.labels.push_back(std::move(mark));
}

bool drawRow(Drawing& drawing, const Row& row, bool withUnit) {
    if (row.along.size() < 2 || !fits(drawing, row, withUnit)) {
        return false;
    }
    for (const double along : row.along) {
        drawEnd(drawing, row, along);
    }
    for (std::size_t i = 1; i < row.along.size(); ++i) {
        drawSpan(drawing, row, i, withUnit);
    }
    return true;
}

std::vector<double> distinct(std::vector<double> values, double close) {
    std::sort(values.begin(), values.end());
    std::vector<double> kept;
    for (const double value : values) {
        if (kept.empty() || value - kept.back() > close) {
            kept.push_back(value);
        }
    }
    return kept;
}

// Panels are measured along the lower chord if it spans the whole truss, else between all joints.
std::vector<double> panelPoints(const Truss& truss, const Extent& box, double close) {
    std::vector<double> all;
    std::vector<double> chord;
    for (const Joint& joint : truss.joints) {
        all.push_back(joint.at.x);
        if (joint.at.y - box.low.y <= close) {
            chord.push_back(joint.at.x);
        }
    }
    chord = distinct(std::move(chord), close);
    const bool whole = chord.size() > 2 && chord.front() - box.low.x <= close &&
                       box.high.x - chord.back() <= close;
    return whole ? chord : distinct(std::move(all), close);
}

std::vector<double> levels(const Truss& truss, double close) {
    std::vector<double> all;
    for (const Joint& joint : truss.joints) {
        all.push_back(joint.at.y);
    }
    return distinct(std::move(all), close);
}

Row rowOf(const Camera& camera, Direction direction, std::vector<double> figures) {
    Row row;
    row.direction = direction;
    for (const double figure : figures) {
        row.along.push_back(direction == Direction::Across ? toPixel(camera, {figure, 0}).x
                                                           : toPixel(camera, {0, figure}).y);
    }
    row.figures = std::move(figures);
    return row;
}

bool areEqual(const std::vector<double>& figures) {
    const double whole = figures.back() - figures.front();
    const double each = whole / static_cast<double>(figures.size() - 1);
    for (std::size_t i = 1; i < figures.size(); ++i) {
        if (std::abs(figures[i] - figures[i - 1] - each) > kOneLine * whole) {
            return false;
        }
    }
    return true;
}

// Which of a direction's dimensions are on the board.
struct RowsShown {
    bool parts = false;
    bool whole = false;
};

// The parts next to the drawing if there is room for each, then the total beyond them; equal parts
// without room are named in the total.
RowsShown drawRows(Drawing& drawing, Row parts, double nearest, double outward) {
    const std::size_t count = parts.figures.size() - 1;
    parts.across = nearest;
    RowsShown drawn;
    drawn.parts = count == 1 || (count <= kMostPanels && drawRow(drawing, parts, false));
    const bool rowDrawn = count > 1 && drawn.parts;
    Row whole;
    whole.direction = parts.direction;
    whole.across = nearest + (rowDrawn ? outward : 0);
    whole.figures = {parts.figures.front(), parts.figures.back()};
    whole.along = {parts.along.front(), parts.along.back()};
    const double across = whole.across;
    const auto width = [&] {
        return drawing.measure(spanText(drawing, whole, 1, true), LabelKind::Dimension).x;
    };
    if (!drawn.parts && areEqual(parts.figures)) {
        const double alone = width();
        whole.panels = count;
        const bool upright = whole.direction == Direction::Upright;
        whole.across += upright ? std::copysign(0.5 * (width() - alone), outward) : 0;
    }
    drawn.whole = drawRow(drawing, whole, true);
    drawn.parts = drawn.parts || (drawn.whole && whole.panels > 1);
    if (!drawn.whole && whole.panels > 1) {
        whole.panels = 1;
        whole.across = across;
        drawn.whole = drawRow(drawing, whole, true);
    }
    return drawn;
}

// Counts what is missing of a row that is on the board from end to end.
void leaveOutRows(Drawing& drawing, const Row& row, RowsShown drawn) {
    const Rect& free = drawing.obstacles.free();
    const Vec2 middle = free.at + 0.5 * free.size;
    const bool across = row.direction == Direction::Across;
    for (const double end : {row.along.front(), row.along.back()}) {
        const Vec2 at = across ? Vec2{end, middle.y} : Vec2{middle.x, end};
        if (!drawing.obstacles.isWithin(at, {})) {
            return;
        }
    }
    const auto leave = [&](double size, bool withUnit) {
        leaveOut(drawing, {figureText(drawing, size, withUnit), middle, Ink::Dimension,
                           LabelKind::Dimension});
    };
    for (std::size_t i = 1; !drawn.parts && i < row.figures.size(); ++i) {
        leave(row.figures[i] - row.figures[i - 1], false);
    }
    if (!drawn.whole) {
        leave(row.figures.back() - row.figures.front(), true);
    }
}

// On either side of the drawing, whichever has room for more; the first, if both have.
void drawOnASide(Drawing& drawing, const Row& row, double first, double other, double apart) {
    const bool single = row.figures.size() == 2;
    RowsShown drawn = drawRows(drawing, row, first, apart);
    if (!drawn.whole && (single || !drawn.parts)) {
        drawn = drawRows(drawing, row, other, -apart);
    }
    leaveOutRows(drawing, row, drawn);
}

} // namespace

void drawDimensions(Drawing& drawing) {
    const AppState& state = drawing.state;
    if (!state.view.showDimensions || state.truss.joints.size() < 2) {
        return;
    }
    const Extent box = extent(state.truss);
    const Vec2 size = box.high - box.low;
    const double close = kOneLine * std::max(size.x, size.y);
    const Camera& camera = state.view.camera;
    const Vec2 low = drawing.low; // before the first row is drawn
    const Vec2 high = drawing.high;
    // Half of them would be worse than none on the small picture beside a working.
    const double lowest = high.y + kAwayFromDrawing + kRowsApart;
    const bool fits = !state.notebook.reading || lowest < camera.size.y - camera.coverBottom;
    if (size.x > close && fits) {
        const Row row = rowOf(camera, Direction::Across, panelPoints(state.truss, box, close));
        drawOnASide(drawing, row, high.y + kAwayFromDrawing, low.y - kAwayFromDrawing, kRowsApart);
    }
    if (size.y > close) {
        const Row row = rowOf(camera, Direction::Upright, levels(state.truss, close));
        const double widest =
            drawing.measure(figureText(drawing, size.y, true), LabelKind::Dimension).x;
        const double away = kAwayFromDrawing + 0.5 * widest;
        drawOnASide(drawing, row, low.x - away, high.x + away, -(widest + kTextAir));
    }
}

} // namespace gusset
