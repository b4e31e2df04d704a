#include "report/classroom/practice_sketch.hpp"

#include "core/tolerance.hpp"
#include "report/derivation/body_sketch.hpp"

#include <cmath>

namespace gusset {

namespace {

SketchInk inkOf(const BodyForce& force, const std::optional<double>& value) {
    if (!isCutMember(force)) {
        return SketchInk::Reaction;
    }
    if (!value) {
        return SketchInk::Accent;
    }
    return *value == 0 ? SketchInk::Zero : *value > 0 ? SketchInk::Tension : SketchInk::Compression;
}

// "F_AB", or "F_AB = −48 kN" as far as the student has it.
RichLine nameWithValue(const Notation& notation, const Symbol& symbol,
                       const std::optional<double>& value) {
    RichLine label = symbolRuns(notation, symbol);
    if (value) {
        label.push_back({" = " + givenForce(notation, *value), RunStyle::Plain});
    }
    return label;
}

BodyForce bodyForce(const Notation& notation, const ActingForce& acting, const OwnValues& own) {
    const Structure& structure = notation.working.structure;
    const double size = length(acting.along);
    BodyForce force{.at = acting.joint, .along = (1 / size) * acting.along};
    if (acting.of == kGivenLoad) {
        force.ink = SketchInk::Load;
        force.label = plainLine(givenForce(notation, size / toNewton(notation.truss.units.force)));
        return force;
    }
    const std::optional<double>& value = own[static_cast<std::size_t>(acting.of)];
    force.of = unknownNumbered(structure, acting.of);
    force.out = isCutMember(force) ? force.along : Vec2{};
    force.ink = inkOf(force, value);
    force.label = nameWithValue(notation, symbolOf(structure, acting), value);
    return force;
}

} // namespace

Symbol symbolOf(const Structure& structure, const ActingForce& force) {
    if (force.of == kGivenLoad) {
        const int axis = std::fabs(force.along.x) > std::fabs(force.along.y) ? 0 : 1;
        return {.kind = SymbolKind::Load, .joint = force.joint, .index = axis};
    }
    const MemberOrRestraint of = unknownNumbered(structure, force.of);
    if (const auto* member = std::get_if<MemberId>(&of)) {
        return {.kind = SymbolKind::MemberForce, .member = *member};
    }
    return {
        .kind = SymbolKind::Reaction, .restraint = std::get<RestraintId>(of), .joint = force.joint};
}

std::optional<Sketch> practiceSketch(const Notation& notation, const PartOfTruss& part,
                                     const OwnValues& own, SketchPaper paper) {
    if (part.joints.size() > kLargestBody) {
        return std::nullopt;
    }
    FreeBody body{part.joints, {}};
    for (const ActingForce& force : part.forces) {
        body.forces.push_back(bodyForce(notation, force, own));
        body.forces.back().thing = static_cast<int>(body.forces.size()) - 1;
    }
    Sketch sketch = bodySketch(notation, body, paper);
    for (SketchLine& line : sketch.lines) {
        line.thing = kNoThing; // of members that are not cut: their numbers mean no force
    }
    return sketch;
}

} // namespace gusset
