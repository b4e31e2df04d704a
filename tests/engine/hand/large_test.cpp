// Large trusses by hand: the fast searches for the next joint, the hinges and the unknown reactions
// give the same as an exhaustive search.
#include "hand/paper/cuts.hpp"
#include "hand/paper/nearest_joints.hpp"
#include "hand/stages/work_out.hpp"
#include "support/random.hpp"
#include "support/trusses/family_truss.hpp"
#include "support/trusses/random_truss.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

#include <algorithm>
#include <set>

using namespace gusset;
using namespace gusset::support;

namespace {

JointId plainNearest(const std::vector<Vec2>& at, const NearestJoints& joints, Vec2 from,
                     int kind) {
    JointId best;
    for (std::size_t i = 0; i < at.size(); ++i) {
        const JointId joint{static_cast<int>(i)};
        const bool nearer = !best.valid() || length(at[i] - from) < length(at[best.at()] - from);
        if (joints.kindOf(joint) == kind && nearer) {
            best = joint;
        }
    }
    return best;
}

// The part connected to `from` when the hinge is removed.
std::set<JointId> plainPart(const Truss& truss, JointId from, JointId hinge) {
    std::set<JointId> part{from};
    for (bool grown = true; grown;) {
        grown = false;
        for (const Member& member : truss.members) {
            if (member.a == hinge || member.b == hinge ||
                part.contains(member.a) == part.contains(member.b)) {
                continue;
            }
            part.insert({member.a, member.b});
            grown = true;
        }
    }
    return part;
}

void checkHinges(const Truss& truss) {
    const Sheet sheet = makeSheet(truss, {});
    std::vector<std::pair<JointId, std::set<JointId>>> expected;
    for (std::size_t i = 0; i < truss.joints.size(); ++i) {
        const JointId hinge{static_cast<int>(i)};
        std::set<JointId> seen;
        for (const MemberId member : membersAt(sheet, hinge)) {
            const JointId next = otherEnd(sheet, hinge, member);
            if (seen.contains(next)) {
                continue;
            }
            const auto part = plainPart(truss, next, hinge);
            seen.insert(part.begin(), part.end());
            if (part.size() > 1 && part.size() + 2 < truss.joints.size()) {
                expected.push_back({hinge, part});
            }
        }
    }
    const auto& found = hingedParts(sheet);
    REQUIRE(found.size() == expected.size());
    for (std::size_t i = 0; i < found.size(); ++i) {
        CHECK(found[i].hinge == expected[i].first);
        CHECK(std::equal(found[i].part.begin(), found[i].part.end(), expected[i].second.begin(),
                         expected[i].second.end()));
    }
}

JointId addJoint(Truss& truss, const std::string& name, Vec2 at) {
    truss.joints.push_back({name, at, {}});
    return {static_cast<int>(truss.joints.size()) - 1};
}

// Two bars from pins at (0, 0) and (1, 0) to a joint at (½, 1) that is loaded by (1, −4), repeated
// many times beside and above each other.
Truss manyTripods(int count) {
    Truss truss;
    for (int i = 0; i < count; ++i) {
        const Vec2 from{3.0 * (i % 7), 3.0 * (i / 7)};
        const std::string name = std::to_string(i);
        const JointId left = addJoint(truss, "L" + name, from);
        const JointId right = addJoint(truss, "R" + name, from + Vec2{1, 0});
        const JointId top = addJoint(truss, "T" + name, from + Vec2{0.5, 1});
        for (const JointId pin : {left, right}) {
            Support support;
            support.joint = pin;
            truss.supports.push_back(support);
            Member member;
            member.a = pin;
            member.b = top;
            truss.members.push_back(member);
        }
        Load load;
        load.what = JointForce{top, 1, -4};
        truss.loads.push_back(load);
    }
    return truss;
}

} // namespace

TEST_CASE("the nearest joint of a kind is the one that a look at all joints finds") {
    Random random(71);
    std::vector<Vec2> at;
    for (int i = 0; i < 300; ++i) { // many of them at equal distances
        at.push_back({random.decimal(0, 6, 2), random.decimal(0, 4, 2)});
    }
    NearestJoints joints(at);
    for (int i = 0; i < 4000; ++i) {
        joints.put({random.integer(0, 299)},
                   random.integer(NearestJoints::kNone, NearestJoints::kKinds - 1));
        const int kind = random.integer(0, NearestJoints::kKinds - 1);
        const Vec2 from = at[static_cast<std::size_t>(random.integer(0, 299))];
        const JointId expected = plainNearest(at, joints, from, kind);
        REQUIRE(joints.has(kind) == expected.valid());
        REQUIRE(joints.nearest(from, kind) == expected);
    }
}

TEST_CASE("without joints, none is the nearest") {
    const NearestJoints joints({});
    CHECK_FALSE(joints.has(0));
    CHECK_FALSE(joints.nearest({0, 0}, 0).valid());
}

TEST_CASE("hinges are where a walk through the rest of the truss does not reach all of it") {
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        checkHinges(randomDeterminateTruss(Form::ThreeHinged, seed));
        checkHinges(randomDeterminateTruss(Form::Compound, seed));
        checkHinges(randomMechanism(seed, 3));
    }
    checkHinges(familyTruss(Family::Compound, 60));
    checkHinges(familyTruss(Family::Warren, 60));
    checkHinges(manyTripods(5)); // connected nowhere
}

// ΣX and ΣY of the top joint, by bars of slope 2 and length L = √1.25: −½(S₁ − S₂)/L + 1 = 0 and
// −(S₁ + S₂)/L − 4 = 0 give S₁ = −L, S₂ = −3L; so the left pin pushes by (½, 1), the right one by
// (−1½, 3), together (−1, 4).
TEST_CASE("a truss on many pins is worked out pin by pin") {
    const int count = 60;
    const Truss truss = manyTripods(count);
    const Working working = workOut(truss, {}, solve(truss));
    REQUIRE(working.complete);
    const double expected[] = {0.5, 1, -1.5, 3};
    int reactions = 0;
    for (const Found& found : working.steps.back().found) {
        if (found.symbol.kind == SymbolKind::Reaction) {
            ++reactions;
            CHECK_THAT(found.value, Catch::Matchers::WithinAbs(
                                        expected[found.symbol.restraint.at() % 4], 1e-12));
        }
    }
    CHECK(reactions == 4 * count);
}
