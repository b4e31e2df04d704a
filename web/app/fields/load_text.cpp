#include "app/fields/load_text.hpp"

#include "app/fields/cell_text.hpp"
#include "app/fields/typed_text.hpp"
#include "core/angle.hpp"
#include "core/number.hpp"
#include "core/signs.hpp"
#include "model/quantity/quantity_input.hpp"
#include "model/truss/units.hpp"
#include "phrases/columns.hpp"
#include "report/results/influence_text.hpp"
#include "report/results/results_text.hpp"
#include "statics/equilibrium/structure.hpp"

#include <cmath>

namespace gusset {
namespace {

// Sets the force of a load on a joint or a member; others stay as they are.
void setParts(Load& load, Vec2 parts) {
    if (auto* onMember = std::get_if<MemberForce>(&load.what)) {
        onMember->fx = parts.x;
        onMember->fy = parts.y;
    } else if (const JointId joint = jointOf(load); joint.valid()) {
        load.what = JointForce{joint, parts.x, parts.y};
    }
}

// A load without a force yet points down.
Vec2 wayOf(Vec2 force) {
    const double size = length(force);
    return size > 0 ? Vec2{force.x / size, force.y / size} : Vec2{0, -1};
}

std::string sizeText(const Truss& truss, double size) {
    return formatNumber(std::abs(size), typedStyleOf(truss));
}

const char* arrowOf(bool upright, double part) {
    return upright ? (part < 0 ? "↓" : "↑") : (part < 0 ? "←" : "→");
}

double turnedIntoRange(double degrees) {
    const double turned = std::remainder(degrees, 360);
    return turned <= -180 ? turned + 360 : turned;
}

} // namespace

std::optional<Vec2> arrowForce(const Load& load) {
    if (const auto* force = std::get_if<MemberForce>(&load.what)) {
        return Vec2{force->fx, force->fy};
    }
    return forceOf(load);
}

double forceSizeOf(const Load& load) {
    const auto* angled = std::get_if<AngledForce>(&load.what);
    return angled ? std::abs(angled->size) : length(arrowForce(load).value_or(Vec2{}));
}

bool isByParts(const Load& load) {
    const std::optional<Vec2> force = arrowForce(load);
    return force && !std::holds_alternative<AngledForce>(load.what) && force->x != 0 &&
           force->y != 0;
}

std::optional<double> degreesOf(const Load& load) {
    if (const auto* chord = std::get_if<ChordLoad>(&load.what)) {
        return chord->perLength > 0 ? 90.0 : -90.0;
    }
    if (std::holds_alternative<SelfWeight>(load.what)) {
        return -90.0;
    }
    if (const auto* angled = std::get_if<AngledForce>(&load.what)) {
        return turnedIntoRange(angled->angle + (angled->size < 0 ? 180 : 0));
    }
    const Vec2 force = arrowForce(load).value_or(Vec2{});
    if (isByParts(load) || force == Vec2{}) {
        return std::nullopt;
    }
    return force.x != 0 ? (force.x > 0 ? 0.0 : 180.0) : (force.y > 0 ? 90.0 : -90.0);
}

std::string directionLook(const Truss& truss, const Load& load) {
    const std::optional<double> degrees = degreesOf(load);
    if (!degrees) {
        return "";
    }
    if (std::remainder(*degrees, 90) != 0) {
        return formatNumber(*degrees, typedStyleOf(truss)) + "°";
    }
    const Vec2 way = directionOf(*degrees);
    return arrowOf(way.x == 0, way.x + way.y);
}

std::string partLook(const Truss& truss, const Load& load, bool upright) {
    const Vec2 force = arrowForce(load).value_or(Vec2{});
    const double part = upright ? force.y : force.x;
    return arrowOf(upright, part) + std::string(kThinSpace) + sizeText(truss, part);
}

std::string perLengthText(const Truss& truss, double perLength) {
    const std::string unit = symbolOf(truss.units.length);
    return forceText(truss, std::abs(perLength), drawingStyleOf(truss)) +
           (unit.empty() ? "" : "/" + unit);
}

std::string loadFigure(const Writer& writer, const Load& load) {
    const Truss& truss = writer.truss;
    if (const auto* chord = std::get_if<ChordLoad>(&load.what)) {
        return perLengthText(truss, chord->perLength);
    }
    if (isByParts(load)) {
        return sayPlain(
            writer, phrase::kLoadParts,
            {{"across", partLook(truss, load, false)},
             {"upright", withUnit(partLook(truss, load, true), symbolOf(truss.units.force))}});
    }
    return forceText(truss, forceSizeOf(load), drawingStyleOf(truss));
}

std::string loadFigureTyped(const Truss& truss, const Load& load) {
    if (const auto* chord = std::get_if<ChordLoad>(&load.what)) {
        return typedNumber(truss, std::abs(chord->perLength));
    }
    const Vec2 force = arrowForce(load).value_or(Vec2{});
    return isByParts(load)
               ? typedNumbers(truss, shortestNumber(force.x) + ", " + shortestNumber(force.y))
               : typedNumber(truss, forceSizeOf(load));
}

bool canTypeFigure(const Load& load) { return !std::holds_alternative<SelfWeight>(load.what); }

Load withSize(const Load& load, double size) {
    Load typed = load;
    if (auto* angled = std::get_if<AngledForce>(&typed.what)) {
        angled->size = angled->size < 0 ? -size : size;
    } else if (auto* chord = std::get_if<ChordLoad>(&typed.what)) {
        chord->perLength = chord->perLength > 0 ? size : -size;
    } else if (const std::optional<Vec2> force = arrowForce(load)) {
        setParts(typed, size * wayOf(*force));
    }
    return typed;
}

Load withPart(const Load& load, bool upright, double size) {
    Load typed = load;
    Vec2 force = arrowForce(load).value_or(Vec2{});
    double& part = upright ? force.y : force.x;
    part = part < 0 ? -size : size;
    setParts(typed, force);
    return typed;
}

Load withDirection(const Load& load, double degrees) {
    Load typed = load;
    const auto* angled = std::get_if<AngledForce>(&load.what);
    const double size = forceSizeOf(load);
    const bool keepsAngle = jointOf(load).valid() && std::remainder(degrees, 90) != 0;
    if (keepsAngle || angled) {
        typed.what = AngledForce{jointOf(load), size, degrees};
    } else {
        setParts(typed, size * directionOf(degrees));
    }
    return typed;
}

Outcome<Load> withTypedForce(const Truss& truss, const Load& load, const std::string& text) {
    const ForceUnit unit = truss.units.force;
    const Outcome<double> size = readForce(text, unit);
    if (size) {
        return withSize(load, size.value());
    }
    const Outcome<TypedVector> force = readForceVector(text, unit);
    if (!force || !arrowForce(load)) {
        return force ? size.issues() : force.issues();
    }
    Load typed = load;
    const TypedVector& read = force.value();
    if (read.angled && jointOf(load).valid()) {
        typed.what = AngledForce{jointOf(load), read.first, read.second};
    } else {
        setParts(typed, read.angled ? read.first * directionOf(read.second)
                                    : Vec2{read.first, read.second});
    }
    return typed;
}

std::string placeOfLoad(const Writer& writer, const Load& load) {
    const Truss& truss = writer.truss;
    if (const auto* chord = std::get_if<ChordLoad>(&load.what)) {
        return sayPlain(writer, phrase::kAlongPath, {{"path", pathName(truss, chord->chord)}});
    }
    if (const auto* force = std::get_if<MemberForce>(&load.what)) {
        return sayPlain(writer, phrase::kLoadOnMember,
                        {{"member", pathName(truss, {force->from, force->to})},
                         {"distance", withUnit(formatNumber(force->at, typedStyleOf(truss)),
                                               symbolOf(truss.units.length))},
                         {"joint", jointLabel(truss, force->from)}});
    }
    return std::holds_alternative<SelfWeight>(load.what) ? sayPlain(writer, phrase::kSelfWeight)
                                                         : jointLabel(truss, jointOf(load));
}

double weightOf(const Truss& truss) {
    double newton = 0;
    for (const Bar& bar : structureOf(truss).bars) {
        newton += bar.weight;
    }
    return newton / toNewton(truss.units.force);
}

} // namespace gusset
