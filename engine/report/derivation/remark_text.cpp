#include "report/derivation/remark_text.hpp"

#include "phrases/influence_by_hand.hpp"
#include "phrases/lists.hpp"
#include "phrases/remarks.hpp"
#include "phrases/steps.hpp"
#include "report/results/results_text.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace gusset {
namespace {

RichLine plain(int number) { return plainLine(std::to_string(number)); }

RichLine foundSymbol(const Notation& notation, const Step& step) {
    return step.found.empty() ? RichLine{} : symbolRuns(notation, step.found.front().symbol);
}

// "2 m to the right and 3 m up": where a point off the truss lies.
RichLine placeOf(const Notation& notation, const Remark& remark) {
    const Vec2 from = remark.at - notation.truss.joints[remark.joint.at()].at;
    return say(notation.book, phrase::kPlaceOfCentre,
               {{"dx", givenLength(notation, std::fabs(from.x))},
                {"right", directionWord(notation.book, {from.x, 0})},
                {"dy", givenLength(notation, std::fabs(from.y))},
                {"up", directionWord(notation.book, {0, from.y})},
                {"joint", jointName(notation, remark.joint)}});
}

RichLine momentCentre(const Notation& notation, const Step& step, const Remark& remark) {
    const RichLine joint = jointName(notation, remark.joint);
    const RichLine left = foundSymbol(notation, step);
    if (remark.kind == RemarkKind::CentreOffTruss) {
        return say(notation.book, phrase::kCentreOffTruss,
                   {{"centre", remark.text},
                    {"through", symbolNames(notation, remark.symbols)},
                    {"place", placeOf(notation, remark)},
                    {"left", left}});
    }
    if (remark.symbols.empty()) {
        return say(notation.book, phrase::kMomentCentreOne, {{"joint", joint}, {"left", left}});
    }
    return say(
        notation.book,
        remark.symbols.size() == 1 ? phrase::kMomentCentreThroughOne : phrase::kMomentCentre,
        {{"joint", joint}, {"through", symbolNames(notation, remark.symbols)}, {"left", left}});
}

RichLine sumAcross(const Notation& notation, const Step& step, const Remark& remark) {
    const auto phrase =
        remark.symbols.size() == 1 ? phrase::kSumAcrossOne : phrase::kSumAcrossSeveral;
    return say(
        notation.book, phrase,
        {{"others", symbolNames(notation, remark.symbols)}, {"left", foundSymbol(notation, step)}});
}

RichLine otherWay(const Notation& notation, const Symbol& symbol) {
    const auto& restraints = notation.working.structure.restraints;
    const Vec2 along = restraints[static_cast<std::size_t>(symbol.restraint)].along;
    return say(notation.book, phrase::kActsOtherWay,
               {{"symbol", symbolRuns(notation, symbol)},
                {"direction", directionWord(notation.book, -along)}});
}

RichLine jointChosen(const Notation& notation, const Remark& remark) {
    const RichLine unknowns = symbolNames(notation, remark.symbols);
    return remark.symbols.size() == 1
               ? say(notation.book, phrase::kJointOneUnknown, {{"unknown", unknowns}})
               : say(notation.book, phrase::kJointTwoUnknowns, {{"unknowns", unknowns}});
}

enum class TrussSide { Left, Right, Upper, Lower, None };

// Where the part lies, if all of it lies to one side of all the rest.
TrussSide sideOf(const Notation& notation, const std::vector<JointId>& part) {
    constexpr double kFar = 1e300;
    Extent inside{{kFar, kFar}, {-kFar, -kFar}};
    Extent outside = inside;
    for (std::size_t i = 0; i < notation.truss.joints.size(); ++i) {
        const JointId joint{static_cast<int>(i)};
        const Vec2 at = notation.truss.joints[i].at;
        const bool isInside = std::find(part.begin(), part.end(), joint) != part.end();
        Extent& box = isInside ? inside : outside;
        box.low = {std::min(box.low.x, at.x), std::min(box.low.y, at.y)};
        box.high = {std::max(box.high.x, at.x), std::max(box.high.y, at.y)};
    }
    if (inside.high.x <= outside.low.x) {
        return TrussSide::Left;
    }
    if (inside.low.x >= outside.high.x) {
        return TrussSide::Right;
    }
    if (inside.low.y >= outside.high.y) {
        return TrussSide::Upper;
    }
    return inside.high.y <= outside.low.y ? TrussSide::Lower : TrussSide::None;
}

RichLine cutChosen(const Notation& notation, const Step& step) {
    constexpr decltype(phrase::kCutLeft) kCut[] = {phrase::kCutLeft, phrase::kCutRight,
                                                   phrase::kCutUpper, phrase::kCutLower,
                                                   phrase::kCutPart};
    return say(notation.book, kCut[static_cast<std::size_t>(sideOf(notation, step.body))],
               {{"members", memberNames(notation, step.members)},
                {"joints", jointNames(notation, step.body)}});
}

RichLine simultaneous(const Notation& notation, const Step& step, const Remark& remark) {
    const RichLine n = plain(static_cast<int>(remark.number));
    const RichLine unknowns = symbolNames(notation, remark.symbols);
    return step.body.size() == 1 ? say(notation.book, phrase::kSimultaneousOne,
                                       {{"joint", jointName(notation, step.body.front())},
                                        {"n", n},
                                        {"unknowns", unknowns}})
                                 : say(notation.book, phrase::kSimultaneous,
                                       {{"joints", jointNames(notation, step.body)},
                                        {"n", n},
                                        {"unknowns", unknowns}});
}

RichLine supportLine(const Notation& notation, SupportId id, int restraint) {
    const Support& support = notation.truss.supports[id.at()];
    const auto symbol = [&](int i) {
        return symbolRuns(notation,
                          {.kind = SymbolKind::Reaction, .restraint = i, .joint = support.joint});
    };
    const RichLine joint = jointName(notation, support.joint);
    if (support.kind == SupportKind::Pin) {
        return say(notation.book, phrase::kPinGives,
                   {{"joint", joint}, {"x", symbol(restraint)}, {"y", symbol(restraint + 1)}});
    }
    const Vec2 along =
        notation.working.structure.restraints[static_cast<std::size_t>(restraint)].along;
    return say(notation.book, phrase::kRollerGives,
               {{"joint", joint},
                {"r", symbol(restraint)},
                {"direction", directionWord(notation.book, along)}});
}

RichLine loadLine(const Notation& notation, JointId joint, Vec2 load) {
    const auto size = [&](double part) { return plainLine(givenForce(notation, std::fabs(part))); };
    const auto word = [&](Vec2 direction) {
        return plainLine(directionWord(notation.book, direction));
    };
    const RichLine name = jointName(notation, joint);
    if (load.x != 0 && load.y != 0) {
        return say(notation.book, phrase::kLoadTwoWays,
                   {{"joint", name},
                    {"size", size(load.x)},
                    {"direction", word({load.x, 0})},
                    {"size2", size(load.y)},
                    {"direction2", word({0, load.y})}});
    }
    return say(notation.book, phrase::kLoadOneWay,
               {{"joint", name}, {"size", size(length(load))}, {"direction", word(load)}});
}

} // namespace

RichLine jointName(const Notation& notation, JointId joint) {
    assert(joint.valid());
    return plainLine(notation.truss.joints[joint.at()].label);
}

RichLine jointNames(const Notation& notation, const std::vector<JointId>& joints) {
    std::vector<RichLine> names;
    for (const JointId joint : joints) {
        names.push_back(jointName(notation, joint));
    }
    return listOf(notation.book, names);
}

RichLine memberNames(const Notation& notation, const std::vector<MemberId>& members) {
    std::vector<RichLine> names;
    for (const MemberId member : members) {
        names.push_back(plainLine(memberName(notation.truss, member)));
    }
    return listOf(notation.book, names);
}

RichLine symbolNames(const Notation& notation, const std::vector<Symbol>& symbols) {
    std::vector<RichLine> names;
    for (const Symbol& symbol : symbols) {
        names.push_back(symbolRuns(notation, symbol));
    }
    return listOf(notation.book, names);
}

RichLine remarkLine(const Notation& notation, const Step& step, const Remark& remark) {
    switch (remark.kind) {
    case RemarkKind::NothingDrawn:
        return say(notation.book, phrase::kNothingDrawn);
    case RemarkKind::CountDeterminate:
        return say(notation.book, phrase::kCountDeterminate);
    case RemarkKind::CountIndeterminate:
        return say(notation.book, phrase::kCountIndeterminate,
                   {{"degree", plain(notation.working.counting.redundants)}});
    case RemarkKind::CountMechanism:
        return say(notation.book, phrase::kCountMechanism);
    case RemarkKind::CountBalanced:
        return say(notation.book, phrase::kCountBalanced);
    case RemarkKind::MomentCentreChosen:
    case RemarkKind::CentreOffTruss:
        return momentCentre(notation, step, remark);
    case RemarkKind::SumLeavesOne:
        return say(notation.book, phrase::kSumLeavesOne, {{"left", foundSymbol(notation, step)}});
    case RemarkKind::SumAcross:
        return sumAcross(notation, step, remark);
    case RemarkKind::ReactionsTogether:
        return say(notation.book, phrase::kReactionsTogether,
                   {{"reactions", symbolNames(notation, remark.symbols)}});
    case RemarkKind::ReactionsNotEnough:
        return say(notation.book, phrase::kMoreThanThree,
                   {{"reactions", symbolNames(notation, remark.symbols)}});
    case RemarkKind::TakenApart:
        return say(notation.book, phrase::kTakenApart,
                   {{"joint", jointName(notation, remark.joint)},
                    {"joints", jointNames(notation, step.body)}});
    case RemarkKind::PartAndWhole:
        return say(notation.book, phrase::kPartAndWhole,
                   {{"unknowns", symbolNames(notation, remark.symbols)}});
    case RemarkKind::NegativeReaction:
        return otherWay(notation, remark.symbol);
    case RemarkKind::NegativeForce:
        return say(notation.book, phrase::kNegativeForce,
                   {{"symbol", symbolRuns(notation, remark.symbol)},
                    {"member", memberNames(notation, {remark.symbol.member})}});
    case RemarkKind::AssumedGuessed:
        return say(notation.book, phrase::kAssumedGuessed);
    case RemarkKind::AssumedAway:
        return say(notation.book, phrase::kAssumedAway);
    case RemarkKind::JointChosen:
        return jointChosen(notation, remark);
    case RemarkKind::BothInclined:
        return say(notation.book, phrase::kBothInclined,
                   {{"unknowns", symbolNames(notation, remark.symbols)}});
    case RemarkKind::NoEasySection:
        return say(notation.book, phrase::kNoEasySection);
    case RemarkKind::NoEasyJoint:
        return say(notation.book, phrase::kNoEasyJoint);
    case RemarkKind::NoWorking:
        return say(notation.book, phrase::kNoWorking);
    case RemarkKind::NoSectionFor:
        return say(notation.book, phrase::kNoSectionFor,
                   {{"member", memberNames(notation, remark.members)}});
    case RemarkKind::NotTwoParts:
        return say(notation.book, phrase::kNotTwoParts,
                   {{"members", memberNames(notation, remark.members)}});
    case RemarkKind::TooManyCut:
        return say(notation.book, phrase::kTooManyCut,
                   {{"members", memberNames(notation, remark.members)},
                    {"n", plain(static_cast<int>(remark.number))}});
    case RemarkKind::TryCut:
        return say(notation.book, phrase::kTryCut,
                   {{"members", memberNames(notation, remark.members)},
                    {"symbol", symbolRuns(notation, remark.symbol)}});
    case RemarkKind::CutForAll:
        return say(notation.book, phrase::kCutForAll,
                   {{"members", memberNames(notation, step.members)}});
    case RemarkKind::CutChosen:
        return cutChosen(notation, step);
    case RemarkKind::SimultaneousChosen:
        return simultaneous(notation, step, remark);
    case RemarkKind::NoInclined:
        return say(notation.book, phrase::kNoInclined);
    case RemarkKind::Symmetric:
        return say(notation.book, phrase::kSymmetric);
    case RemarkKind::BySymmetry:
        return say(notation.book, phrase::kBySymmetry,
                   {{"symbols", symbolNames(notation, remark.symbols)}});
    case RemarkKind::NothingIdle:
        return say(notation.book, phrase::kIdleNone);
    case RemarkKind::NoLoads:
        return say(notation.book, phrase::kNothingActs);
    case RemarkKind::Closes:
        return say(notation.book, phrase::kCheckCloses);
    case RemarkKind::ClosesTo:
        return say(
            notation.book, phrase::kCheckDoesNot,
            {{"number", forceText(notation.truss, remark.number, roughStyleOf(notation.truss))}});
    case RemarkKind::NotComplete:
        return say(notation.book, phrase::kNotComplete);
    }
    return {};
}

RichLine zeroRuleLine(const Notation& notation, const Step& step) {
    if (step.rule == ZeroRule::None) {
        return {};
    }
    const RichLine joint = jointName(notation, step.joint);
    const auto name = [&](std::size_t i) { return memberNames(notation, {step.members[i]}); };
    switch (step.rule) {
    case ZeroRule::TwoMembersNoLoad:
        return say(notation.book, phrase::kIdleTwo,
                   {{"joint", joint}, {"a", name(0)}, {"b", name(1)}});
    case ZeroRule::ThreeMembersTwoInLine:
        return say(notation.book, phrase::kIdleThird,
                   {{"joint", joint}, {"idle", name(0)}, {"a", name(1)}, {"b", name(2)}});
    case ZeroRule::LoadAlongOne:
        return say(notation.book, phrase::kIdleBesideLoad,
                   {{"joint", joint}, {"idle", name(0)}, {"a", name(1)}});
    case ZeroRule::LoneMember:
        return say(notation.book, phrase::kIdleLone, {{"joint", joint}, {"idle", name(0)}});
    case ZeroRule::None:
        break;
    }
    return {};
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
    for (const int restraint : step.restraints) {
        const SupportId support =
            notation.working.structure.restraints[static_cast<std::size_t>(restraint)].support;
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
    return say(notation.book, kLook[static_cast<std::size_t>(sideOf(notation, part))],
               {{"joints", jointNames(notation, part)}});
}

} // namespace gusset
