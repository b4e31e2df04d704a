#include "support/trusses/rich_model.hpp"

#include "support/random.hpp"
#include "support/trusses/random_truss.hpp"

namespace gusset::support {

std::string everyKeyOfTheFormat() {
    return R"({
  "gusset": 1,
  "title": "Loading bay “north”, 2 × 6 m",
  "units": { "force": "kip", "length": "ft", "section": "in", "stress": "ksi",
             "displacement": "in", "angle": "deg" },
  "joints": [
    { "id": "A", "x": 0, "y": 0, "drawn": { "label": "left" } },
    { "id": "B", "x": 10.25, "y": 0 },
    { "id": "Ü2", "x": 5, "y": 0.1 },
    { "id": "D", "x": 1e-7, "y": 7.5 }
  ],
  "members": [
    { "a": "A", "b": "B", "section": "chord", "dT": 20, "misfit": 1.5, "colour": "red" },
    { "a": "A", "b": "Ü2" }, { "a": "Ü2", "b": "D", "section": "web" },
    { "a": "D", "b": "A", "K": { "in": 0.85, "out": 1, "why": "gusset" } },
    { "a": "B", "b": "Ü2", "dT": -5.5 }
  ],
  "supports": [
    { "joint": "A", "kind": "pin", "settle": { "x": 0.5, "y": -5, "z": 1 } },
    { "joint": "B", "kind": "roller", "reaction": 67.5, "settle": -0.25, "by": "survey" }
  ],
  "loads": [
    { "joint": "D", "fx": 10, "fy": -20, "case": "wind", "from": [1, 2.50, "x", null, true] },
    { "joint": "D", "size": 12, "angle": -90 },
    { "joint": "B", "fx": 0, "fy": 0 },
    { "joint": "B", "fx": 3.5, "case": "loads" },
    { "chord": ["A", "Ü2", "B"], "perLength": -4, "case": "deck" },
    { "member": ["Ü2", "A"], "at": 2.5, "fy": -3, "case": "wind", "hook": "left" },
    { "selfWeight": true, "case": "dead" }
  ],
  "materials": [
    { "id": "steel", "E": 30000, "strength": 36, "density": 7850, "alpha": 1.17e-5, "ultimate": 58,
      "grade": "A" },
    { "id": "unknown stuff" },
    { "id": "spruce", "E": 1600, "tension": 2.1, "compression": 3.05, "E05": 1070 }
  ],
  "sections": [
    { "id": "chord", "material": "steel", "A": 12.5, "r": 2.1, "page": 7 },
    { "id": "web", "material": "steel", "shape": "chs", "D": 6, "t": 0.25, "H": 1 },
    { "id": "pair", "material": "steel", "shape": "double-angle", "H": 4, "B": 3, "t": 0.375,
      "gap": 0.5, "R": 0.25, "inPlane": "strong", "lag": 0.9, "packing": 24,
      "holes": { "count": 2, "diameter": 0.875, "drilled": true } },
    { "id": "post", "shape": "i", "H": 8, "B": 8, "s": 0.285, "t": 0.435, "R": 0.394 },
    { "id": "girt", "shape": "channel", "H": 8, "B": 2.5, "s": 0.3, "t": 0.39, "R": 0.3, "tip": 0.3 },
    { "id": "tube", "shape": "rhs", "H": 8, "B": 4, "t": 0.25, "R": 0.5, "Ri": 0.25 },
    { "id": "bare" }
  ],
  "cases": [ { "id": "dead", "kind": "permanent", "by": "us" }, { "id": "rain" } ],
  "combinations": [
    { "id": "strength", "factors": { "dead": 1.35, "deck": 1.5, "loads": 0 }, "code": "ours" },
    { "id": "use", "by": "EN 1990, 6.14b", "limit": "service", "factors": { "deck": 1 } }
  ],
  "moving": [
    { "id": "cart", "path": ["A", "Ü2", "B"], "speed": 5,
      "axles": [ { "at": 0, "force": -8, "wheels": 2 }, { "at": 1.8, "force": -8 } ] },
    { "id": "crowd", "path": ["A", "Ü2"], "uniform": { "perLength": -5, "length": 4, "of": "us" } }
  ],
  "checks": { "formula": "AISC 360-16", "curve": "a0", "safety": "omega", "K": 0.9,
              "strengthFactor": 1.6, "eulerFactor": 2.5, "gammaM0": 1.05, "gammaM1": 1.1, "gammaM2": 1.3,
              "phi": 0.85, "omega": 1.75, "tensionLimit": 0, "compressionLimit": 180,
              "deflection": 300, "kMod": 0.9, "gammaTimber": 1.25, "betaC": 0.1,
              "held": ["A", "Ü2"],
              "checkedBy": "us" },
  "class": { "moments": "clockwise", "angles": "slopes", "axes": "H-V", "symbols": "S1",
             "senses": "guessed", "equations": "numbers", "ink": "blue",
             "numbers": { "form": "significant", "digits": 4, "carry": "rounded", "zeros": false } },
  "exercise": { "ask": ["forces"], "hidden": 3.0 },
  "lesson": { "shows": ["forces"], "slow": 2.0 },
  "form": { "kind": "howe-roof", "span": 24.0 },
  "made": { "by": "hand", "at": 1.50, "deep": [[[]], {}] }
})";
}

namespace {

void richNames(Truss& truss, Random& random) {
    const std::vector<std::string> endings{"", "'", "0", " east", "\"", "\\", "é", "梁"};
    for (std::size_t i = 0; i < truss.joints.size(); ++i) {
        if (random.oneIn(4)) {
            truss.joints[i].label = "j" + std::to_string(i) + random.pick(endings);
        }
        if (random.oneIn(6)) {
            truss.joints[i].unknown = R"({"mark":)" + std::to_string(random.integer(0, 9)) + "}";
        }
    }
}

void richProperties(Truss& truss, Random& random) {
    truss.materials.push_back({"steel", 210000, 235, 7850, 1.2e-5, {}});
    truss.sections.push_back({"chord", "steel", 1234.5, {}, {}, {}, {}});
    truss.sections.push_back({"web", "steel", {}, {}, "chs", {{"D", 60.3}, {"t", 3.2}}, {}});
    for (Member& member : truss.members) {
        member.section = random.pick(std::vector<std::string>{"", "chord", "web"});
        member.warming = random.oneIn(5) ? random.decimal(-30, 30, 2) : 0;
        member.misfit = random.oneIn(5) ? random.decimal(-3, 3, 1000) : 0;
    }
    for (Support& support : truss.supports) {
        if (support.kind == SupportKind::Pin) {
            support.settle = {0, random.decimal(-5, 0, 1)};
        } else {
            support.settleAlong = random.decimal(-5, 0, 4);
        }
    }
}

void richLoads(Truss& truss, Random& random) {
    for (Load& load : truss.loads) {
        load.caseId = random.pick(std::vector<std::string>{"", "dead", "wind", "loads"});
    }
    const JointId first{0};
    const JointId last{static_cast<int>(truss.joints.size()) - 1};
    truss.loads.push_back({ChordLoad{{first, last}, random.decimal(-9, 9, 3)}, "deck", {}});
    truss.loads.push_back({SelfWeight{}, {}, {}});
    const Member& member = truss.members.front();
    truss.loads.push_back({MemberForce{member.b, member.a, 0.01, 0, -3}, "wind", {}});
    truss.combinations.push_back({"all",
                                  {{"dead", 1.35}, {"wind", 1.0 / 3}},
                                  {},
                                  random.oneIn(2) ? "our rule" : "",
                                  "service"});
    truss.moving.push_back({"cart", {first, last}, {{0, -8, {}}, {1.8, -4, {}}}, {}, {}});
    truss.moving.push_back({"crowd", {last, first}, {}, MovingUniform{-4, {}, {}}, {}});
}

} // namespace

Truss randomRichTruss(std::uint64_t seed) {
    Random random(seed);
    Truss truss = randomDeterminateTruss(seed);
    truss.title = random.oneIn(2) ? "" : "Truss no. " + std::to_string(seed);
    richNames(truss, random);
    richProperties(truss, random);
    richLoads(truss, random);
    if (random.oneIn(2)) { // coordinates that need many decimals
        for (Joint& joint : truss.joints) {
            joint.at = {joint.at.x / 3, joint.at.y / 7};
        }
    }
    truss.units.force = random.oneIn(2) ? ForceUnit::kN : ForceUnit::kip;
    truss.classSettings.digits = random.integer(0, 6);
    truss.classSettings.decimalSign = random.integer(0, 1) == 1 ? ',' : '.';
    if (random.oneIn(2)) {
        truss.checks.formula = ColumnFormula::En1993;
        truss.checks.curve = static_cast<BucklingCurve>(random.integer(0, 4));
        truss.checks.effectiveLength = random.decimal(0.5, 2, 20);
    }
    truss.exercise = random.oneIn(2) ? "" : R"({"ask":["forces"]})";
    truss.cases.push_back({"dead", random.oneIn(2) ? "permanent" : "", {}});
    truss.form = random.oneIn(2) ? "" : R"({"kind":"warren","span":9})";
    truss.lesson = random.oneIn(2) ? "" : R"({"shows":["polygon"]})";
    truss.unknown = random.oneIn(2) ? "" : R"({"made":{"by":"a test"}})";
    return truss;
}

} // namespace gusset::support
