#include "report/classroom/joint_stubs.hpp"

#include "phrases/classroom/handout.hpp"
#include "statics/equilibrium/structure.hpp"

namespace gusset {

namespace {

constexpr double kStub = 46;   // px, length of a cut member
constexpr double kBeyond = 58; // where its name stands
constexpr double kMargin = 6;  // around it all

Sketch stubOf(const Writer& writer, const Structure& structure, std::size_t joint) {
    const Truss& truss = writer.truss;
    Sketch sketch;
    sketch.says =
        sayPlain(writer, phrase::kJointToComplete, {{"joint", truss.joints[joint].label}});
    const int self = static_cast<int>(joint);
    for (std::size_t i = 0; i < structure.bars.size(); ++i) {
        const Bar& bar = structure.bars[i];
        if (bar.a != self && bar.b != self) {
            continue;
        }
        const Vec2 away = bar.a == self ? bar.along : -1.0 * bar.along;
        const Vec2 down{away.x, -away.y}; // sketches have y down
        sketch.lines.push_back({{0, 0}, kStub * down, SketchInk::Muted, 1.5, true});
        sketch.words.push_back({plainLine(memberName(truss, {static_cast<int>(i)})), kBeyond * down,
                                SketchAnchor::Middle, SketchInk::Muted, 11});
    }
    sketch.discs.push_back({{0, 0}, 3, SketchInk::Plain, true});
    fitSketch(sketch, kMargin);
    return sketch;
}

} // namespace

std::vector<Sketch> jointStubs(const Writer& writer) {
    constexpr std::size_t kMostPrinted = 24;
    std::vector<Sketch> stubs;
    if (writer.truss.joints.size() > kMostPrinted) {
        return stubs;
    }
    const Structure structure = structureOf(writer.truss);
    for (std::size_t joint = 0; joint < structure.joints.size(); ++joint) {
        stubs.push_back(stubOf(writer, structure, joint));
    }
    return stubs;
}

} // namespace gusset
