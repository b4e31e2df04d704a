// Member labels other than force: stress, or utilisation with its marks and caution.
#include "canvas/scene/scene_builders.hpp"
#include "phrases/results/checks.hpp"
#include "phrases/results/lists.hpp"

#include "report/results/trust_text.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

constexpr float kBandWidth = 14; // px around a member that fails, or is used most
constexpr float kEdge = 1.5F;
constexpr double kCautionAway = 12; // px from the corner of the free board

const MemberCheck& checkOfMember(const Drawing& drawing, std::size_t member) {
    return drawing.checks->checks.members[member];
}

// A band with an edge, as around the largest forces; dashed if the member fails.
void addBand(Drawing& drawing, MemberId member, Ink ink, float width, float dash) {
    const Member& marked = drawing.state.truss.members[member.at()];
    const Vec2 a = drawing.at[marked.a.at()];
    const Vec2 b = drawing.at[marked.b.at()];
    addLine(drawing, {a, b, width, ink, dash});
    addLine(drawing, {a, b, width - 2 * kEdge, Ink::Paper, 0});
    keepFrame(drawing, member, 0.5 * width);
}

// Joints that are held out of the plane of the truss, where not all are.
void crossHeld(Drawing& drawing) {
    constexpr double kReach = 10; // px
    for (const JointId joint : drawing.state.truss.checks.held.value_or(std::vector<JointId>{})) {
        const Vec2 at = drawing.at[joint.at()];
        for (const Vec2 arm : {Vec2{kReach, kReach}, Vec2{kReach, -kReach}}) {
            addLine(drawing, {at - arm, at + arm, 2, Ink::Muted, 0});
        }
    }
}

// Top or bottom of the board, whichever strip of this height covers fewer joints.
Vec2 cautionCorner(const Drawing& drawing, double height) {
    const Rect& free = drawing.obstacles.free();
    const double top = free.at.y + kCautionAway;
    const double bottom = free.at.y + free.size.y - kCautionAway - height;
    const auto covered = [&](double from) {
        return std::count_if(drawing.at.begin(), drawing.at.end(), [&](Vec2 at) {
            return at.y > from - kJointRadius && at.y < from + height + kJointRadius;
        });
    };
    return {free.at.x + kCautionAway, covered(bottom) < covered(top) ? bottom : top};
}

} // namespace

std::vector<std::string> linesWithin(std::string_view text, double width,
                                     const MeasureText& measure) {
    std::vector<std::string> lines;
    while (!text.empty()) {
        const std::size_t space = std::min(text.find(' '), text.size());
        const std::string word(text.substr(0, space));
        const std::string longer = lines.empty() ? word : lines.back() + " " + word;
        if (!lines.empty() && measure(longer, LabelKind::Hint).x <= width) {
            lines.back() = longer;
        } else {
            lines.push_back(word);
        }
        text.remove_prefix(std::min(space + 1, text.size()));
    }
    return lines;
}

void drawUseBands(Drawing& drawing) {
    if (!drawing.checks) {
        return;
    }
    const MemberChecks& checks = drawing.checks->checks;
    crossHeld(drawing);
    if (checks.worst.valid()) {
        addBand(drawing, checks.worst, Ink::Muted, kBandWidth + 4, 0);
    }
    for (const MemberCheck& check : checks.members) {
        if (isOver(check) || check.tooSlender) {
            addBand(drawing, check.member, Ink::Warning, kBandWidth, 7);
        }
    }
}

std::string memberFigure(const Drawing& drawing, std::size_t member) {
    const Truss& truss = drawing.state.truss;
    if (drawing.checks) {
        return useLabel({*drawing.state.book, truss}, checkOfMember(drawing, member));
    }
    const ForceRow& row = drawing.derived.forces[member];
    std::string value =
        formatNumber(std::abs(row.force), drawingStyleOf(truss, drawing.derived.solution));
    if (drawing.state.view.memberFigure == MemberFigure::Stress) {
        value = stressOf(truss, drawing.derived.solution, row.member);
        if (value.empty()) {
            return sayPlain(*drawing.state.book, phrase::kBoardUnknown);
        }
    }
    return row.sense == Sense::Zero ? row.letter
                                    : sayPlain(*drawing.state.book, phrase::kForceWithLetter,
                                               {{"value", value}, {"letter", row.letter}});
}

bool failsCheck(const Drawing& drawing, std::size_t member) {
    if (!drawing.checks) {
        return false;
    }
    const MemberCheck& check = checkOfMember(drawing, member);
    return isOver(check) || check.tooSlender || !isChecked(check);
}

void drawCheckCaution(Drawing& drawing) {
    if (!drawing.checks) {
        return;
    }
    const std::vector<std::string>& caution = drawing.checks->caution;
    const double width = drawing.obstacles.free().size.x - 2 * kCautionAway;
    std::vector<std::string> lines = linesWithin(caution.front(), width, drawing.measure);
    for (std::string& line : linesWithin(caution.back(), width, drawing.measure)) {
        lines.push_back(std::move(line));
    }
    const double height = drawing.measure(lines.front(), LabelKind::Hint).y;
    Vec2 corner = cautionCorner(drawing, height * static_cast<double>(lines.size()));
    for (std::string& line : lines) {
        LabelMark mark{std::move(line), {}, Ink::Warning, LabelKind::Hint};
        const Vec2 half = 0.5 * drawing.measure(mark.text, mark.kind);
        mark.at = corner + half;
        corner.y += height;
        drawing.obstacles.addBox(mark.at, half);
        drawing.scene.labels.push_back(std::move(mark));
    }
}

} // namespace gusset
