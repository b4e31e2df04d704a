// Everything in a model but its geometry; see grown_model.hpp.
#include "fuzz/grown_model.hpp"

#include "model/catalogue/section_shapes.hpp"
#include "model/validate/validate.hpp"

#include <algorithm>

namespace gusset::support {

namespace {

using Words = std::vector<std::string>;

const Words& oddEndings() {
    static const Words kOdd{
        "'",      "-",          ":y",     ",",      "<b>",     "&amp;",  "\"",  "\\",      "é",
        "梁",     "\U0001F309", "\u202E", "\u200B", "e\u0301", "\uFFFE", "\t",  " ",       "]]>",
        "0",      "\u05D0",     "=1+2",   "%22",    "_x",      "^2",     "/",   "{joint}", "\u00A0",
        "\uFEFF", "--json",     "#m=1.",  "1e5",    "\u2212",  "=",      "A-B", ";",       "\x7F"};
    return kOdd;
}

std::string oddName(const std::string& plain, Random& random) {
    std::string name = random.oneIn(8) ? "" : plain;
    for (int i = random.oneIn(6) ? 12 : random.integer(1, 2); i > 0; --i) {
        name += random.pick(oddEndings());
    }
    return name;
}

JointId anyJoint(const Truss& truss, Random& random) {
    return {random.integer(0, static_cast<int>(truss.joints.size()) - 1)};
}

void dressNames(Truss& truss, Random& random) {
    if (random.oneIn(3)) {
        truss.title = random.oneIn(3) ? oddName("Truss", random) : "A truss that was grown";
    }
    for (Joint& joint : truss.joints) {
        joint.label = random.oneIn(40)  ? oddName(joint.label, random)
                      : random.oneIn(9) ? joint.label + "'"
                                        : joint.label;
        joint.unknown = random.oneIn(40) ? R"({"mark":[1.50,null,"<"]})" : joint.unknown;
    }
}

template <class Enumeration>
Enumeration anyOf(Enumeration last, Random& random) {
    return static_cast<Enumeration>(random.integer(0, static_cast<int>(last)));
}

void dressSettings(Truss& truss, Random& random) {
    if (random.oneIn(3)) {
        truss.units.force = anyOf(ForceUnit::kip, random);
        truss.units.length = anyOf(LengthUnit::ft, random);
        truss.units.section = anyOf(LengthUnit::ft, random);
        truss.units.stress = anyOf(StressUnit::Pa, random);
        truss.units.displacement = anyOf(LengthUnit::ft, random);
    }
    if (random.oneIn(2)) {
        ClassSettings& settings = truss.classSettings;
        settings.moments = anyOf(MomentSense::Anticlockwise, random);
        settings.angles = anyOf(AngleStyle::Slopes, random);
        settings.axes = anyOf(AxisNames::XY, random);
        settings.symbols = anyOf(SymbolStyle::S1, random);
        settings.senses = anyOf(AssumedSense::Guessed, random);
        settings.equations = anyOf(EquationLines::NumbersOnly, random);
        settings.form = anyOf(NumberForm::Significant, random);
        settings.digits = random.integer(0, random.oneIn(4) ? kMostDigits : 4);
        settings.decimalSign = random.oneIn(2) ? ',' : '.';
        settings.carry = anyOf(CarriedValues::Rounded, random);
    }
    if (random.oneIn(3)) {
        CheckSettings& checks = truss.checks;
        checks.formula = anyOf(ColumnFormula::Aisc360, random);
        checks.curve = anyOf(BucklingCurve::D, random);
        checks.safety = anyOf(AiscSafety::Allowable, random);
        const CheckNumber& number =
            kCheckNumbers[static_cast<std::size_t>(random.integer(0, kCheckNumbers.size() - 1))];
        checks.*number.value = random.oneIn(6) ? 0 : random.oneIn(2) ? number.least : number.most;
    }
}

// Near the usual size; now and then many powers of ten away, or zero.
double anySize(double usual, Random& random) {
    const int exponent = random.oneIn(20) ? random.integer(-12, 12) : 0;
    double size = usual * random.decimal(0.5, 2, 8);
    for (int i = 0; i < std::abs(exponent); ++i) {
        size = exponent < 0 ? size / 10 : size * 10;
    }
    return random.oneIn(200) ? 0 : size;
}

std::optional<double> perhaps(double usual, Random& random) {
    return random.oneIn(4) ? std::nullopt : std::optional(anySize(usual, random));
}

void dressProperties(Truss& truss, Random& random) {
    if (!truss.sections.empty() || random.oneIn(3)) {
        return;
    }
    truss.materials.push_back({"steel",
                               perhaps(210e3, random),
                               perhaps(235, random),
                               perhaps(7850, random),
                               perhaps(1.2e-5, random),
                               {}});
    truss.sections.push_back(
        {"bar", "steel", perhaps(900, random), perhaps(20, random), {}, {}, {}});
    for (const SectionShape& shape : sectionShapes()) {
        Section section{std::string(shape.name), "steel", {}, {}, std::string(shape.name), {}, {}};
        for (const std::string_view key : shape.dimensions) {
            const double usual = key == "t" || key == "s" ? 4
                                 : key == "gap"           ? 10
                                 : key == "B"             ? 60
                                                          : 100;
            section.dimensions.emplace_back(key, anySize(usual, random));
        }
        if (random.oneIn(3)) {
            truss.sections.push_back(section);
        }
    }
    const bool all = random.oneIn(2);
    for (Member& member : truss.members) {
        member.section = all || random.oneIn(2) ? random.pick(truss.sections).id : std::string();
    }
}

// What checks both ways are made with.
void dressChecks(Truss& truss, Random& random) {
    if (truss.sections.empty() || random.oneIn(2)) {
        return;
    }
    for (Material& material : truss.materials) {
        material.ultimate = perhaps(360, random);
        material.compression = perhaps(21, random);
        material.E05 = perhaps(7400, random);
    }
    for (Section& section : truss.sections) {
        section.inPlane = random.pick(std::vector<std::string>{"", "strong", "weak"});
        section.packing = perhaps(500, random);
        if (random.oneIn(2)) {
            section.holes = Holes{double(random.integer(1, 4)), anySize(18, random), {}};
        }
        const SectionShape* shape = findSectionShape(section.shape);
        if (shape && !shape->further.empty() && random.oneIn(3)) {
            section.dimensions.emplace_back("R", anySize(5, random));
        }
    }
    for (Member& member : truss.members) {
        member.factors.out = random.oneIn(3) ? std::optional(1.2) : std::nullopt;
    }
    if (random.oneIn(2) && !truss.joints.empty()) {
        truss.checks.held = {{JointId{0}}};
    }
}

void dressStrains(Truss& truss, Random& random) {
    const bool expands = !truss.sections.empty() || random.oneIn(9);
    for (Member& member : truss.members) {
        member.warming = expands && random.oneIn(3) ? random.integer(-30, 40) : 0;
        member.misfit = random.oneIn(4) ? random.decimal(-3, 3, 2) : 0;
    }
    for (Support& support : truss.supports) {
        if (support.kind == SupportKind::Pin) {
            support.settle = {random.decimal(-3, 3, 1), random.decimal(-9, 0, 1)};
        } else {
            support.settleAlong = random.decimal(-9, 3, 1);
        }
    }
}

// A walk along members, for chords and for paths of moving loads.
std::vector<JointId> anyWalk(const Truss& truss, Random& random) {
    std::vector<JointId> walk{anyJoint(truss, random)};
    for (int i = random.integer(1, 4); i > 0; --i) {
        std::vector<JointId> next;
        for (const Member& member : truss.members) {
            const JointId other = member.a == walk.back() ? member.b : member.a;
            const bool ends = member.a == walk.back() || member.b == walk.back();
            if (ends && std::find(walk.begin(), walk.end(), other) == walk.end()) {
                next.push_back(other);
            }
        }
        const bool leads = walk.size() > 1 || !next.empty();
        if (random.oneIn(60) || !leads) {
            walk.push_back(anyJoint(truss, random)); // perhaps one already on the walk
        } else if (!next.empty()) {
            walk.push_back(random.pick(next));
        }
    }
    return walk;
}

const Words& cases() {
    static const Words kCases{"", "", "dead", "wind", "loads", "snow & ice"};
    return kCases;
}

void dressLoads(Truss& truss, Random& random) {
    for (Load& load : truss.loads) {
        load.caseId = random.oneIn(2) ? "" : random.pick(cases());
        if (auto* force = std::get_if<JointForce>(&load.what); force && random.oneIn(9)) {
            force->fx = anySize(10, random);
            force->fy = random.oneIn(4) ? 0 : -anySize(10, random);
        }
    }
    if (random.oneIn(4)) {
        truss.loads.push_back({ChordLoad{anyWalk(truss, random), random.decimal(-9, 9, 3)},
                               random.pick(cases()),
                               {}});
    }
    if (random.oneIn(truss.sections.empty() ? 40 : 4)) {
        truss.loads.push_back({SelfWeight{}, random.pick(cases()), {}});
    }
    if (!truss.members.empty() && random.oneIn(4)) {
        const Member& member = random.pick(truss.members);
        const double span = length(truss.joints[member.b.at()].at - truss.joints[member.a.at()].at);
        const double at = random.oneIn(20) ? 3 : random.integer(0, 8) * (span / 8);
        truss.loads.push_back({MemberForce{member.b, member.a, at, random.decimal(-4, 4, 2),
                                           random.decimal(-9, 9, 2)},
                               random.pick(cases()),
                               {}});
    }
    if (random.oneIn(20)) {
        truss.loads.push_back(
            {AngledForce{anyJoint(truss, random), anySize(7, random), random.decimal(-400, 400, 3)},
             random.oneIn(8) ? oddName("case", random) : "",
             {}});
    }
}

void dressCombinations(Truss& truss, Random& random) {
    for (int i = random.oneIn(2) ? 0 : random.integer(1, 3); i > 0; --i) {
        Combination combination{
            random.oneIn(20) ? oddName("C", random) : "C" + std::to_string(i), {}, {}};
        for (const char* name : {"dead", "wind", "loads"}) {
            if (!random.oneIn(3)) {
                combination.factors.emplace_back(name, random.decimal(-2, 2, 20));
            }
        }
        truss.combinations.push_back(combination);
    }
}

void dressMoving(Truss& truss, Random& random) {
    for (int i = random.oneIn(3) ? random.integer(1, 2) : 0; i > 0; --i) {
        MovingLoad load{"cart " + std::to_string(i), anyWalk(truss, random), {}, {}, {}};
        double at = 0;
        for (int axle = random.integer(0, 3); axle > 0; --axle) {
            load.axles.push_back({at, random.decimal(-9, 1, 2), {}});
            at += random.decimal(0.5, 4, 2);
        }
        if (load.axles.empty() || random.oneIn(4)) {
            load.uniform = MovingUniform{
                random.decimal(-5, 1, 2), random.oneIn(2) ? std::nullopt : std::optional(2.5), {}};
        }
        truss.moving.push_back(load);
    }
}

} // namespace

void dress(Truss& truss, Random& random) {
    dressNames(truss, random);
    dressSettings(truss, random);
    if (truss.joints.empty()) {
        return;
    }
    dressProperties(truss, random);
    if (random.oneIn(4)) {
        dressStrains(truss, random);
    }
    dressLoads(truss, random);
    dressCombinations(truss, random);
    dressMoving(truss, random);
    dressChecks(truss, random);
    if (random.oneIn(12)) {
        truss.exercise = R"({"ask":["forces"]})";
        truss.unknown = R"({"made":{"by":"a test","deep":[[[]],{}]}})";
    }
}

} // namespace gusset::support
