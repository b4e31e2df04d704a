// What a person would find by eye, and the program finds by keeping what it knows: ways to cut a
// truss, the best section, the smallest set of joints. Each is compared with an exhaustive search.
#include "hand/paper/cuts.hpp"
#include "hand/paper/stages.hpp"
#include "hand/stages/section_step.hpp"
#include "support/trusses/every_cut.hpp"
#include "support/trusses/family_truss.hpp"
#include "support/trusses/random_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>
#include <cmath>
#include <tuple>

using namespace gusset;
using namespace gusset::support;

namespace {

void checkDivisions(const Sheet& sheet, const Divisions& found, const Parts& expected) {
    Parts parts;
    for (std::size_t i = 0; i < found.count(); ++i) {
        for (const int side : {0, 1}) {
            const TrussPart part = found.part(i, side);
            CHECK(part.size() == found.sizeOf(i, side));
            CHECK(parts.insert(part).second); // each once
        }
        std::vector<MemberId> cut;
        for (std::size_t k = 0; k < sheet.truss.members.size(); ++k) {
            const Member& member = sheet.truss.members[k];
            if (found.contains(i, 0, member.a) != found.contains(i, 0, member.b)) {
                cut.push_back({static_cast<int>(k)});
            }
        }
        const auto& listed = found.cut(i);
        CHECK(std::equal(cut.begin(), cut.end(), listed.begin(), listed.end()));
    }
    CHECK(parts == expected);
}

std::vector<Truss> trussesToSearch() {
    std::vector<Truss> trusses;
    for (std::uint64_t seed = 1; seed <= 35; ++seed) {
        trusses.push_back(randomDeterminateTruss(seed));
        trusses.push_back(randomDeterminateTruss(Form::Complex, seed));
    }
    for (const Family family :
         {Family::K, Family::Compound, Family::Complex, Family::Fink, Family::Grown}) {
        trusses.push_back(familyTruss(family, 36));
        trusses.push_back(familyTruss(family, 50));
    }
    return trusses;
}

// A sheet with everything written that comes before the first joint.
Sheet openSheet(const Truss& truss) {
    Sheet sheet = makeSheet(truss, {});
    writeAllReactions(sheet);
    writeIdleMembers(sheet);
    return sheet;
}

bool settlesWithout(const Body& joint, const Symbol& known) {
    std::vector<Vec2> left;
    for (const Acting& force : joint.unknowns) {
        if (!(force.symbol == known)) {
            left.push_back(force.along);
        }
    }
    return joint.unknowns.size() <= 3 &&
           (left.size() == 1 || (left.size() == 2 && !parallel(left[0], left[1])));
}

bool freesJoint(const Sheet& sheet, const Symbol& symbol) {
    for (std::size_t i = 0; i < sheet.truss.joints.size(); ++i) {
        const Body joint = bodyOf(sheet, {{static_cast<int>(i)}});
        const bool here = std::any_of(joint.unknowns.begin(), joint.unknowns.end(),
                                      [&](const Acting& force) { return force.symbol == symbol; });
        if (here && settlesWithout(joint, symbol)) {
            return true;
        }
    }
    return false;
}

// The joint, of all joints, about which the moment equation gives the force with the fewest terms.
JointId bestCentre(const Sheet& sheet, const Body& body, const Symbol& symbol) {
    JointId best;
    std::size_t fewest = 0;
    for (std::size_t i = 0; i < sheet.truss.joints.size(); ++i) {
        const JointId joint{static_cast<int>(i)};
        const Vec2 point = positionOf(sheet, joint);
        const bool alone =
            std::all_of(body.unknowns.begin(), body.unknowns.end(), [&](const Acting& force) {
                return passesThrough(sheet, force, point) != (force.symbol == symbol);
            });
        const std::size_t terms = momentsAbout(sheet, body, point, joint).terms.size();
        if (alone && (!best.valid() || terms < fewest)) {
            best = joint;
            fewest = terms;
        }
    }
    return best;
}

struct SlowSection {
    TrussPart part;
    Symbol symbol;
    Isolation isolation;
    bool frees = false;
    std::size_t unknowns = 0;

    [[nodiscard]] auto score() const {
        return std::tuple(!frees, difficulty(isolation.way), unknowns > 3,
                          isolation.equation.terms.size(), unknowns, part.size(), part);
    }
};

void look(const Sheet& sheet, const Parts& parts, std::optional<SlowSection>& best) {
    for (const TrussPart& part : parts) {
        const Body body = bodyOf(sheet, part);
        if (part.size() < 2 || body.unknowns.empty() || body.unknowns.size() > 6) {
            continue;
        }
        for (const Acting& force : body.unknowns) {
            const auto isolation = isolate(sheet, body, force.symbol);
            if (isolation && isolation->way == WayKind::MomentCentre) {
                CHECK(isolation->equation.about == bestCentre(sheet, body, force.symbol));
            }
            if (!isolation) {
                continue;
            }
            CHECK(wayTo(sheet, body, force.symbol)->terms == isolation->equation.terms.size());
            SlowSection section{part, force.symbol, *isolation, freesJoint(sheet, force.symbol),
                                body.unknowns.size()};
            if (!best || section.score() < best->score()) {
                best = section;
            }
        }
    }
}

// Grows as an engineer would: always by the joint that adds the fewest unknowns.
struct SlowGroup {
    std::vector<JointId> joints;
    std::vector<Symbol> unknowns;
    std::size_t equations = 0;
};

std::vector<Symbol> newAt(const Sheet& sheet, const SlowGroup& group, JointId joint) {
    std::vector<Symbol> fresh;
    for (const Acting& force : bodyOf(sheet, {joint}).unknowns) {
        if (std::find(group.unknowns.begin(), group.unknowns.end(), force.symbol) ==
            group.unknowns.end()) {
            fresh.push_back(force.symbol);
        }
    }
    return fresh;
}

std::size_t equationsAt(const Sheet& sheet, JointId joint) {
    return bodyOf(sheet, {joint}).unknowns.empty() ? 0 : unusedAxes(sheet, joint).size();
}

void join(const Sheet& sheet, SlowGroup& group, JointId joint) {
    const auto fresh = newAt(sheet, group, joint);
    group.unknowns.insert(group.unknowns.end(), fresh.begin(), fresh.end());
    group.joints.push_back(joint);
    group.equations += equationsAt(sheet, joint);
}

std::optional<JointId> nextFor(const Sheet& sheet, const SlowGroup& group) {
    std::optional<JointId> best;
    std::tuple<bool, int> least;
    for (std::size_t i = 0; i < sheet.truss.joints.size(); ++i) {
        const JointId joint{static_cast<int>(i)};
        const bool inside =
            std::find(group.joints.begin(), group.joints.end(), joint) != group.joints.end();
        const std::size_t equations = equationsAt(sheet, joint);
        if (inside || equations == 0) {
            continue;
        }
        const std::size_t fresh = newAt(sheet, group, joint).size();
        const bool apart = fresh == bodyOf(sheet, {joint}).unknowns.size();
        const std::tuple score{apart, static_cast<int>(fresh) - static_cast<int>(equations)};
        if (!best || score < least) {
            best = joint;
            least = score;
        }
    }
    return best;
}

// The sizes at which a group grown from a joint has as many equations as unknowns; the joints in
// their order.
std::vector<JointId> slowOrder(const Sheet& sheet, JointId start, std::vector<std::size_t>& even) {
    SlowGroup group;
    join(sheet, group, start);
    for (;;) {
        if (group.equations >= group.unknowns.size()) {
            even.push_back(group.joints.size());
        }
        const auto next = nextFor(sheet, group);
        if (!next) {
            return group.joints;
        }
        join(sheet, group, *next);
    }
}

} // namespace

TEST_CASE("the ways to cut a truss are those that a search through all lines and groups finds") {
    for (const Truss& truss : trussesToSearch()) {
        const Sheet sheet = makeSheet(truss, {});
        checkDivisions(sheet, straightCuts(sheet), everyStraightPart(sheet));
        checkDivisions(sheet, bentCuts(sheet), everyBentPart(sheet));
    }
}

TEST_CASE("a large truss is cut upright and level only, and around its stiff groups") {
    for (const Family family : {Family::K, Family::Compound, Family::Fink}) {
        const Truss truss = familyTruss(family, 150);
        REQUIRE(truss.joints.size() > 70);
        const Sheet sheet = makeSheet(truss, {});
        checkDivisions(sheet, straightCuts(sheet), everyStraightPart(sheet));
        CHECK(bentCuts(sheet).count() == 0);
    }
}

TEST_CASE("parts of one size are ordered as their lists of joints are") {
    const Truss truss = familyTruss(Family::Fink, 150);
    const Sheet sheet = makeSheet(truss, {});
    const Divisions& cuts = straightCuts(sheet);
    int compared = 0;
    for (std::size_t i = 0; i < cuts.count(); ++i) {
        for (std::size_t k = 0; k < cuts.count(); ++k) {
            for (const int side : {0, 1}) {
                if (cuts.sizeOf(i, 0) == cuts.sizeOf(k, side)) {
                    ++compared;
                    const bool before = cuts.part(i, 0) < cuts.part(k, side);
                    CHECK(cuts.before(i, 0, cuts, k, side) == before);
                }
            }
        }
    }
    CHECK(compared > 100);
}

TEST_CASE("of all sections the best is taken, also when forces became known since the last one") {
    int sections = 0;
    for (const Truss& truss : trussesToSearch()) {
        Sheet sheet = openSheet(truss);
        for (bool more = true; more;) {
            if (writeNextJoint(sheet)) {
                continue;
            }
            std::optional<SlowSection> best;
            look(sheet, everyStraightPart(sheet), best);
            if (!best || !best->frees) {
                look(sheet, everyBentPart(sheet), best);
            }
            more = writeSection(sheet);
            REQUIRE(more == best.has_value());
            if (more) {
                ++sections;
                CHECK(sheet.lastCut == best->part);
                CHECK(sheet.steps.back().found.front().symbol == best->symbol);
                CHECK(sheet.steps.back().equations.front().terms.size() ==
                      best->isolation.equation.terms.size());
            }
            more = more || writeSimultaneous(sheet);
        }
    }
    CHECK(sections > 20);
}

TEST_CASE("joints that are solved together grow from one of them by the fewest new unknowns") {
    int groups = 0;
    for (const Truss& truss : trussesToSearch()) {
        Sheet sheet = openSheet(truss);
        for (bool more = true; more;) {
            if (writeNextJoint(sheet) || writeSection(sheet)) {
                continue;
            }
            const Sheet before = sheet;
            more = writeSimultaneous(sheet);
            if (!more) {
                continue;
            }
            ++groups;
            const std::vector<JointId>& chosen = sheet.steps.back().body;
            std::vector<std::size_t> even;
            std::vector<JointId> grown = slowOrder(before, chosen.front(), even);
            REQUIRE(grown.size() >= chosen.size());
            grown.resize(chosen.size());
            CHECK(grown == chosen);
            CHECK(std::find(even.begin(), even.end(), chosen.size()) != even.end());
        }
    }
    CHECK(groups > 5);
}
