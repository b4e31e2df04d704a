#include "support/reading/sentence_truth.hpp"

#include "hand/paper/working.hpp"
#include "phrases/working/remarks.hpp"

#include <algorithm>
#include <cmath>
#include <set>

namespace gusset::support {

namespace {

constexpr double kNothing = 1e-7; // of the largest force

std::string symbolName(const Symbol& symbol) {
    return symbol.kind == SymbolKind::MemberForce ? "m" + std::to_string(symbol.member.index)
                                                  : "r" + std::to_string(symbol.restraint.index);
}

// The truss with its answer, and what a reader can check in it.
struct Answer {
    const Truss& truss;
    Solution solution;
    Structure structure;
    std::vector<Vec2> loads; // N

    explicit Answer(const Truss& given)
        : truss(given), solution(solve(given)), structure(structureOf(given)),
          loads(jointLoads(given, {})) {}

    [[nodiscard]] bool isZero(double force) const {
        return std::fabs(force) <= kNothing * solution.largest;
    }
    [[nodiscard]] bool isZero(Vec2 force) const { return isZero(length(force)); }
    [[nodiscard]] double valueOf(const Symbol& symbol) const {
        return symbol.kind == SymbolKind::MemberForce ? solution.forces[symbol.member.at()]
                                                      : solution.reactions[symbol.restraint.at()];
    }
    [[nodiscard]] Vec2 reactionAt(JointId joint) const {
        Vec2 sum;
        for (std::size_t i = 0; i < structure.restraints.size(); ++i) {
            if (structure.restraints[i].joint == joint) {
                sum = sum + solution.reactions[i] * structure.restraints[i].along;
            }
        }
        return sum;
    }
    [[nodiscard]] Vec2 towards(JointId joint, MemberId member) const {
        const Vec2 along = structure.bars[member.at()].along;
        return truss.members[member.at()].a == joint ? along : -along;
    }
    [[nodiscard]] std::vector<MemberId> membersAt(JointId joint) const {
        std::vector<MemberId> members;
        for (std::size_t i = 0; i < truss.members.size(); ++i) {
            if (truss.members[i].a == joint || truss.members[i].b == joint) {
                members.push_back({static_cast<int>(i)});
            }
        }
        return members;
    }
    // The image in the vertical through the middle; none if there is none.
    [[nodiscard]] JointId mirrorOf(JointId joint) const {
        const Extent box = extent(truss);
        const Vec2 at = truss.joints[joint.at()].at;
        const Vec2 wanted{box.low.x + box.high.x - at.x, at.y};
        for (std::size_t i = 0; i < truss.joints.size(); ++i) {
            if (length(truss.joints[i].at - wanted) < 1e-6) {
                return {static_cast<int>(i)};
            }
        }
        return {};
    }
    [[nodiscard]] bool mirrors(Vec2 here, Vec2 there) const {
        return isZero(Vec2{here.x + there.x, here.y - there.y});
    }
    [[nodiscard]] MemberId imageOf(MemberId member) const {
        const JointId a = mirrorOf(truss.members[member.at()].a);
        const JointId b = mirrorOf(truss.members[member.at()].b);
        for (std::size_t i = 0; i < truss.members.size(); ++i) {
            const Member& other = truss.members[i];
            if ((other.a == a && other.b == b) || (other.a == b && other.b == a)) {
                return {static_cast<int>(i)};
            }
        }
        return {};
    }
    // Whether every member has an image, with the same force if `asForces`.
    [[nodiscard]] bool membersMirror(bool asForces) const {
        for (std::size_t i = 0; i < truss.members.size(); ++i) {
            const MemberId image = imageOf({static_cast<int>(i)});
            if (!image.valid() ||
                (asForces && !isZero(solution.forces[i] - solution.forces[image.at()]))) {
                return false;
            }
        }
        return true;
    }
};

std::string judgeSymmetry(const Answer& answer, const Remark& remark) {
    std::vector<JointId> uneven;
    for (std::size_t i = 0; i < answer.truss.joints.size(); ++i) {
        const JointId joint{static_cast<int>(i)};
        const JointId image = answer.mirrorOf(joint);
        if (!image.valid()) {
            return "the truss is not symmetric";
        }
        const Vec2 here = answer.loads[i];
        const Vec2 there = answer.loads[image.at()];
        const Vec2 held = answer.reactionAt(joint);
        const Vec2 heldThere = answer.reactionAt(image);
        if (!answer.mirrors(here + held, there + heldThere)) {
            return "load and reaction together are not symmetric";
        }
        if (!answer.mirrors(here, there) || !answer.mirrors(held, heldThere)) {
            uneven.push_back(joint);
        }
    }
    if (!answer.membersMirror(true)) {
        return "the forces are not symmetric";
    }
    if (says(remark, phrase::kSymmetric)) {
        return uneven.empty() ? "" : "loads or reactions are not symmetric";
    }
    return partOf<std::vector<JointId>>(remark, "joints") == uneven
               ? ""
               : "it names the wrong joints as uneven";
}

// Of the reactions: equal, on joints that mirror each other, under what mirrors itself.
std::string judgeMirroredReactions(const Answer& answer, const Remark& remark) {
    for (std::size_t i = 0; i < answer.truss.joints.size(); ++i) {
        const JointId image = answer.mirrorOf({static_cast<int>(i)});
        if (!image.valid() || !answer.mirrors(answer.loads[i], answer.loads[image.at()])) {
            return "the joints or their loads are not symmetric";
        }
    }
    if (!answer.membersMirror(false)) {
        return "the members are not symmetric";
    }
    if (!answer.isZero(answer.valueOf(partOf<Symbol>(remark, "level")))) {
        return "the horizontal reaction is not zero";
    }
    const auto& pair = partOf<std::vector<Symbol>>(remark, "reactions");
    if (pair.size() != 2 || answer.mirrorOf(pair[0].joint) != pair[1].joint ||
        pair[0].joint == pair[1].joint) {
        return "the supports do not mirror each other";
    }
    double load = 0;
    for (const Vec2 each : answer.loads) {
        load += each.y;
    }
    const double half = std::fabs(load) / 2;
    return answer.isZero(std::fabs(answer.valueOf(pair[0])) - half) &&
                   answer.isZero(std::fabs(answer.valueOf(pair[1])) - half)
               ? ""
               : "a reaction is not half of the load";
}

// A zero-force step: which members it names, and which of the joint it leaves out as zero.
struct ZeroClaim {
    std::vector<MemberId> named; // in the sentence
    std::vector<MemberId> idle;
    std::set<std::string> leftOut; // symbols
    bool saysNothingElse = true;   // no load and no reaction acts
    MemberId loadLine;             // else what acts from outside is in line with this
    std::pair<MemberId, MemberId> inLine;
};

ZeroClaim claimOf(const Step& step) {
    ZeroClaim claim;
    const auto name = [&](const Remark& remark, const char* part) {
        const MemberId member = partOf<std::vector<MemberId>>(remark, part).front();
        claim.named.push_back(member);
        return member;
    };
    for (const Remark& remark : step.remarks) {
        if (says(remark, phrase::kZeroAlreadyOne)) {
            claim.leftOut.insert(symbolName(partOf<Symbol>(remark, "zero")));
        } else if (says(remark, phrase::kZeroAlreadyMany)) {
            for (const Symbol& zero : partOf<std::vector<Symbol>>(remark, "zeros")) {
                claim.leftOut.insert(symbolName(zero));
            }
        } else if (says(remark, phrase::kIdleTwo) || says(remark, phrase::kIdleTwoLeft)) {
            claim.idle = {name(remark, "a"), name(remark, "b")};
        } else if (says(remark, phrase::kIdleThird) || says(remark, phrase::kIdleThirdLeft)) {
            claim.idle = {name(remark, "idle")};
            claim.inLine = {name(remark, "a"), name(remark, "b")};
        } else if (says(remark, phrase::kIdleBesideLoad) ||
                   says(remark, phrase::kIdleBesideLoadLeft)) {
            claim.idle = {name(remark, "idle")};
            claim.loadLine = name(remark, "a");
            claim.saysNothingElse = false;
        } else if (says(remark, phrase::kIdleLone)) {
            claim.idle = {name(remark, "idle")};
        }
    }
    return claim;
}

std::string judgeZero(const Answer& answer, const Step& step) {
    const ZeroClaim claim = claimOf(step);
    if (claim.idle.empty()) {
        return "a step without a rule";
    }
    std::set<std::string> seen = claim.leftOut;
    for (const MemberId member : claim.named) {
        seen.insert(symbolName({.kind = SymbolKind::MemberForce, .member = member}));
    }
    for (const MemberId member : answer.membersAt(step.joint)) {
        if (!seen.contains(symbolName({.kind = SymbolKind::MemberForce, .member = member}))) {
            return "a member that meets there is not mentioned";
        }
    }
    for (const MemberId member : claim.idle) {
        if (!answer.isZero(answer.solution.forces[member.at()])) {
            return "a member is not zero";
        }
    }
    const Vec2 load = answer.loads[step.joint.at()];
    const Vec2 held = answer.reactionAt(step.joint);
    if (claim.saysNothingElse && (!answer.isZero(load) || !answer.isZero(held))) {
        return "something else acts";
    }
    if (!claim.saysNothingElse) {
        const Vec2 line = answer.towards(step.joint, claim.loadLine);
        if (!answer.isZero(cross(line, load)) || !answer.isZero(cross(line, held))) {
            return "what acts from outside is not in line";
        }
    }
    if (claim.inLine.first.valid() &&
        std::fabs(cross(answer.towards(step.joint, claim.inLine.first),
                        answer.towards(step.joint, claim.inLine.second))) > 1e-6) {
        return "two members are not in line";
    }
    return "";
}

std::string judgeLeftOut(const Answer& answer, const Step& step) {
    for (const Remark& remark : step.remarks) {
        std::vector<Symbol> zeros;
        if (says(remark, phrase::kZeroAlreadyOne)) {
            zeros = {partOf<Symbol>(remark, "zero")};
        } else if (says(remark, phrase::kZeroAlreadyMany)) {
            zeros = partOf<std::vector<Symbol>>(remark, "zeros");
        }
        for (const Symbol& zero : zeros) {
            if (!answer.isZero(answer.valueOf(zero))) {
                return "what is said to be zero is not";
            }
        }
    }
    return "";
}

std::string judgePlace(const Answer& answer, const Step& step, const Remark& remark) {
    const auto& place = partOf<PlaceBeside>(remark, "place");
    const Vec2 said = answer.truss.joints[place.joint.at()].at + place.from;
    if (length(said - step.equations.front().point) > 1e-6) {
        return "the centre is not where it is said to be";
    }
    const auto isCrumb = [](double part) { return part != 0 && std::fabs(part) < 1e-9; };
    return isCrumb(place.from.x) || isCrumb(place.from.y) ? "a distance of nothing" : "";
}

// The load is given at this angle, and nothing else acts on its joint.
std::string judgeInclined(const Answer& answer, const Remark& remark) {
    const JointId joint = partOf<JointId>(remark, "joint");
    const AngledForce* only = nullptr;
    int loads = 0;
    for (const Load& load : answer.truss.loads) {
        if (jointOf(load) == joint) {
            ++loads;
            only = std::get_if<AngledForce>(&load.what);
        }
    }
    if (loads != 1 || !only) {
        return "the joint has not one inclined load";
    }
    if (std::fabs(partOf<GivenForce>(remark, "size").size - std::fabs(only->size)) > 1e-9) {
        return "the load has another size";
    }
    constexpr double kRadian = 3.14159265358979323846 / 180;
    const double angle = partOf<Degrees>(remark, "angle").angle * kRadian;
    const double given = only->angle * kRadian;
    const Vec2 said = partOf<Vec2>(remark, "direction");
    const Vec2 force{only->size * std::cos(given), only->size * std::sin(given)};
    if (std::fabs(std::cos(angle) - std::fabs(std::cos(given))) > 1e-9) {
        return "the load has another angle";
    }
    const bool across = partOf<Vec2>(remark, "across").x * force.x > 0;
    const bool upright = partOf<Vec2>(remark, "upright").y * force.y > 0;
    return dot(said, force) > 0 && across && upright ? "" : "the load acts elsewhere";
}

bool actsBetweenJoints(const Load& load) { return !jointOf(load).valid(); }

std::string judge(const Answer& answer, const Step& step, const Remark& remark,
                  SentenceCounts& counts) {
    if (says(remark, phrase::kSymmetric) || says(remark, phrase::kSymmetricTogether)) {
        ++(says(remark, phrase::kSymmetric) ? counts.symmetric : counts.together);
        return judgeSymmetry(answer, remark);
    }
    if (says(remark, phrase::kReactionsMirror)) {
        ++counts.halves;
        return judgeMirroredReactions(answer, remark);
    }
    if (says(remark, phrase::kCentreOffTruss)) {
        ++counts.places;
        return judgePlace(answer, step, remark);
    }
    if (says(remark, phrase::kLoadInclined)) {
        ++counts.inclined;
        return judgeInclined(answer, remark);
    }
    if (says(remark, phrase::kLoadsShared)) {
        ++counts.shared;
        const auto& loads = answer.truss.loads;
        return std::any_of(loads.begin(), loads.end(), actsBetweenJoints)
                   ? ""
                   : "no load acts between joints";
    }
    if (says(remark, phrase::kCountDeterminate)) {
        return answer.solution.status == Status::Determinate ? "" : "it is not determinate";
    }
    return "";
}

} // namespace

std::string falseSentence(const Truss& truss, SentenceCounts& counts) {
    const Answer answer(truss);
    const Working working = workOut(truss, {}, answer.solution);
    for (const Step& step : working.steps) {
        for (const Remark& remark : step.remarks) {
            if (const std::string fault = judge(answer, step, remark, counts); !fault.empty()) {
                return fault;
            }
        }
        if (step.kind == StepKind::ZeroByRule && step.joint.valid()) {
            ++counts.zeros;
            counts.leftOut += step.remarks.size() > 1 ? 1 : 0;
            const std::string fault = judgeZero(answer, step) + judgeLeftOut(answer, step);
            if (!fault.empty()) {
                return fault + " at " + truss.joints[step.joint.at()].label;
            }
        }
    }
    return "";
}

} // namespace gusset::support
