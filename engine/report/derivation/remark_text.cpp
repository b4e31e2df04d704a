#include "report/derivation/remark_text.hpp"

#include "core/signs.hpp"
#include "hand/paper/truss_side.hpp"
#include "phrases/results/lists.hpp"
#include "phrases/working/influence_by_hand.hpp"
#include "phrases/working/remarks.hpp"
#include "phrases/working/steps.hpp"
#include "report/formula/computed_notation.hpp"
#include "report/formula/slope_notation.hpp"
#include "report/results/results_text.hpp"
#include "report/text/formula.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace gusset {
namespace {

// "2 m to the right of B and 3 m above it".
RichLine placeOf(const Notation& notation, const PlaceBeside& place) {
    const auto [x, y] = place.from;
    const RichLine joint = jointName(notation, place.joint);
    const std::string dx = givenLength(notation, std::fabs(x));
    const std::string dy = givenLength(notation, std::fabs(y));
    if (y == 0) {
        return say(notation.book, x < 0 ? phrase::kPlaceLeft : phrase::kPlaceRight,
                   {{"dx", dx}, {"joint", joint}});
    }
    if (x == 0) {
        return say(notation.book, y < 0 ? phrase::kPlaceBelow : phrase::kPlaceAbove,
                   {{"dy", dy}, {"joint", joint}});
    }
    const auto& phrase = x < 0 ? (y < 0 ? phrase::kPlaceLeftBelow : phrase::kPlaceLeftAbove)
                               : (y < 0 ? phrase::kPlaceRightBelow : phrase::kPlaceRightAbove);
    return say(notation.book, phrase, {{"dx", dx}, {"joint", joint}, {"dy", dy}});
}

// "A, B and C", each named by name(item).
template <class Item, class Name>
RichLine listOfEach(const Notation& notation, const std::vector<Item>& items, const Name& name) {
    std::vector<RichLine> names;
    for (const Item& item : items) {
        names.push_back(name(item));
    }
    return listOf(notation.book, names);
}

// Writes the values in a remark's sentence in the class's notation.
struct ValueWriter {
    const Notation& notation;

    Words operator()(int count) const { return count; }
    Words operator()(const std::string& name) const { return name; }
    Words operator()(double rounding) const {
        return forceText(notation.truss, rounding, roughStyleOf(notation.truss));
    }
    Words operator()(Vec2 direction) const { return directionWord(notation.book, direction); }
    Words operator()(JointId joint) const { return jointName(notation, joint); }
    Words operator()(const std::vector<JointId>& joints) const {
        return jointNames(notation, joints);
    }
    Words operator()(const std::vector<MemberId>& members) const {
        return memberNames(notation, members);
    }
    Words operator()(const Symbol& symbol) const { return symbolRuns(notation, symbol); }
    Words operator()(const std::vector<Symbol>& symbols) const {
        return symbolNames(notation, symbols);
    }
    Words operator()(const PlaceBeside& place) const { return placeOf(notation, place); }
    Words operator()(GivenForce force) const { return givenForce(notation, force.size); }
    Words operator()(Degrees degrees) const { return degreesToken(notation, degrees.angle).text; }
    Words operator()(const TurnedAngle& angle) const {
        return runsOf(turnedFormula(notation, angle));
    }
    Words operator()(const Factor& factor) const { return runsOf(factorFormula(notation, factor)); }
    Words operator()(const std::vector<FactoredCase>& cases) const {
        return listOfEach(notation, cases, [this](const FactoredCase& one) {
            return say(notation.book, phrase::kFactoredCase,
                       {{"factor", formatGiven(one.factor, notation.numbers)}, {"name", one.name}});
        });
    }
    Words operator()(const std::vector<std::string>& names) const {
        return listOfEach(notation, names, plainLine);
    }
};

RichLine supportLine(const Notation& notation, SupportId id, RestraintId restraint) {
    const Support& support = notation.truss.supports[id.at()];
    const auto symbol = [&](RestraintId i) {
        return symbolRuns(notation,
                          {.kind = SymbolKind::Reaction, .restraint = i, .joint = support.joint});
    };
    const RichLine joint = jointName(notation, support.joint);
    if (support.kind == SupportKind::Pin) {
        return say(
            notation.book, phrase::kPinGives,
            {{"joint", joint}, {"x", symbol(restraint)}, {"y", symbol({restraint.index + 1})}});
    }
    const Vec2 along = notation.working.structure.restraints[restraint.at()].along;
    return say(notation.book, phrase::kRollerGives,
               {{"joint", joint},
                {"r", symbol(restraint)},
                {"direction", directionWord(notation.book, along)}});
}

// "P_A = 6 kN", the name that the equations call it by; "6 kN" where they hold numbers only.
RichLine loadRuns(const Notation& notation, JointId joint, int axis, double part) {
    const double size = std::fabs(part);
    if (notation.truss.classSettings.equations == EquationLines::NumbersOnly) {
        return plainLine(givenForce(notation, size));
    }
    Formula formula{
        symbolToken(notation, {.kind = SymbolKind::Load, .joint = joint, .index = axis}),
        operatorToken(isGivenInFull(size) ? "=" : kAlmost),
        numberToken(formatGiven(size, notation.numbers))};
    if (const std::string unit = symbolOf(notation.truss.units.force); !unit.empty()) {
        formula.push_back(wordToken(unit));
    }
    return runsOf(formula);
}

RichLine loadLine(const Notation& notation, JointId joint, Vec2 load) {
    const auto size = [&](int axis, double part) { return loadRuns(notation, joint, axis, part); };
    const auto word = [&](Vec2 direction) {
        return plainLine(directionWord(notation.book, direction));
    };
    const RichLine name = jointName(notation, joint);
    if (load.x != 0 && load.y != 0) {
        return say(notation.book, phrase::kLoadTwoWays,
                   {{"joint", name},
                    {"size", size(0, load.x)},
                    {"direction", word({load.x, 0})},
                    {"size2", size(1, load.y)},
                    {"direction2", word({0, load.y})}});
    }
    return say(notation.book, phrase::kLoadOneWay,
               {{"joint", name},
                {"size", load.x != 0 ? size(0, load.x) : size(1, load.y)},
                {"direction", word(load)}});
}

} // namespace

RichLine jointName(const Notation& notation, JointId joint) {
    assert(joint.valid());
    return plainLine(notation.truss.joints[joint.at()].label);
}

RichLine jointNames(const Notation& notation, const std::vector<JointId>& joints) {
    return listOfEach(notation, joints, [&](JointId joint) { return jointName(notation, joint); });
}

RichLine memberNames(const Notation& notation, const std::vector<MemberId>& members) {
    return listOfEach(notation, members, [&](MemberId member) {
        return plainLine(memberName(notation.truss, member));
    });
}

RichLine symbolNames(const Notation& notation, const std::vector<Symbol>& symbols) {
    return listOfEach(notation, symbols,
                      [&](const Symbol& symbol) { return symbolRuns(notation, symbol); });
}

RichLine remarkLine(const Notation& notation, const Remark& remark) {
    std::vector<std::string_view> names;
    std::vector<Words> values;
    for (const RemarkPart& part : remark.parts) {
        names.push_back(part.name);
        values.push_back(std::visit(ValueWriter{notation}, part.value));
    }
    std::vector<const Words*> words;
    for (const Words& value : values) {
        words.push_back(&value);
    }
    return putTogether(sentenceIn(notation.book, remark.english), names, words);
}

RichLine countLine(const Notation& notation) {
    const Counting& count = notation.working.counting;
    return say(notation.book, phrase::kCountThings,
               {{"members", countedWords(notation.book, count.members, phrase::kOneMember,
                                         phrase::kManyMembers)},
                {"reactions", countedWords(notation.book, count.reactions, phrase::kOneReaction,
                                           phrase::kManyReactions)},
                {"joints", countedWords(notation.book, count.joints, phrase::kOneJoint,
                                        phrase::kManyJoints)}});
}

std::vector<RichLine> wholeBodyLines(const Notation& notation, const Step& step) {
    if (step.restraints.empty()) {
        return {};
    }
    std::vector<RichLine> lines{say(notation.book, phrase::kTakeOffSupports)};
    SupportId last;
    for (const RestraintId restraint : step.restraints) {
        const SupportId support = notation.working.structure.restraints[restraint.at()].support;
        if (support != last) {
            lines.push_back(supportLine(notation, support, restraint));
        }
        last = support;
    }
    for (std::size_t i = 0; i < notation.working.loads.size(); ++i) {
        const Vec2 load = notation.working.loads[i];
        if (load != Vec2{}) {
            lines.push_back(loadLine(notation, {static_cast<int>(i)}, load));
        }
    }
    const bool clockwise = notation.truss.classSettings.moments == MomentSense::Clockwise;
    lines.push_back(
        say(notation.book, clockwise ? phrase::kMomentsClockwise : phrase::kMomentsAnticlockwise));
    return lines;
}

RichLine lookAtLine(const Notation& notation, const std::vector<JointId>& part) {
    constexpr decltype(phrase::kLookLeft) kLook[] = {phrase::kLookLeft, phrase::kLookRight,
                                                     phrase::kLookUpper, phrase::kLookLower,
                                                     phrase::kLookPart};
    return say(notation.book, kLook[static_cast<std::size_t>(sideOf(notation.truss, part))],
               {{"joints", jointNames(notation, part)}});
}

std::string centreName(const Step& step) {
    for (const Remark& remark : step.remarks) {
        if (says(remark, phrase::kCentreOffTruss)) {
            return partOf<std::string>(remark, "centre");
        }
    }
    return {};
}

} // namespace gusset
