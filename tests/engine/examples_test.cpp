// The models of site/examples: all can be opened and solved, and the forces of some are derived
// here by hand.

#include "exchange/files/model_file.hpp"
#include "exchange/json/json_value.hpp"
#include "exchange/links/link.hpp"
#include "statics/solve/solution.hpp"
#include "support/english.hpp"
#include "support/files.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

#include <cmath>
#include <map>
#include <string>

using namespace gusset;
using Catch::Matchers::WithinAbs;

namespace {

struct Example {
    std::string file;
    std::string title;
    std::string says;
};

std::vector<Example> examples() {
    const JsonValue index = parseJson(support::repositoryFile("site/examples/index.json")).value();
    std::vector<Example> list;
    for (const JsonValue& item : index.find("examples")->items) {
        list.push_back(
            {item.find("file")->text, item.find("title")->text, item.find("says")->text});
    }
    return list;
}

Reading open(const std::string& file) {
    const Outcome<Reading> read = readModel(support::repositoryFile("site/examples/" + file));
    INFO(file << ": " << (read ? std::string() : support::english(read.issues().front())));
    REQUIRE(read.ok());
    return read.value();
}

// Member forces by name and the reactions, in the model's force unit.
struct Answers {
    std::map<std::string, double> forces;
    std::map<std::string, Vec2> reactions;
};

Answers answers(const std::string& file, const LoadChoice& choice = {}) {
    const Truss truss = open(file).truss;
    const Solution solution = solve(truss, choice);
    REQUIRE(solution.solved);
    const double unit = toNewton(truss.units.force);
    Answers found;
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        found.forces[memberName(truss, MemberId{static_cast<int>(i)})] = solution.forces[i] / unit;
    }
    for (const Support& support : truss.supports) {
        const Vec2 reaction = solution.jointReactions[support.joint.at()];
        found.reactions[truss.joints[support.joint.at()].label] = (1 / unit) * reaction;
    }
    return found;
}

void checkForces(const Answers& found, const std::map<std::string, double>& expected) {
    for (const auto& [name, force] : expected) {
        INFO(name);
        REQUIRE(found.forces.contains(name));
        CHECK_THAT(found.forces.at(name), WithinAbs(force, 1e-9 * (1 + std::abs(force))));
    }
}

} // namespace

TEST_CASE("Every example opens without a note, with the title of the index") {
    CHECK(examples().size() >= 10);
    for (const Example& example : examples()) {
        INFO(example.file);
        const Reading reading = open(example.file);
        CHECK(reading.notes.empty());
        CHECK(reading.truss.title == example.title);
        CHECK(example.says.size() > 20);
        CHECK(writeModel(reading.truss) ==
              support::repositoryFile("site/examples/" + example.file));
    }
}

TEST_CASE("Joints of the examples are called A, B, C … from left to right and upwards") {
    for (const Example& example : examples()) {
        const Truss truss = open(example.file).truss;
        for (std::size_t i = 0; i < truss.joints.size(); ++i) {
            INFO(example.file << " " << truss.joints[i].label);
            CHECK(truss.joints[i].label == defaultLabel(static_cast<int>(i)));
            if (i > 0) {
                const Vec2 before = truss.joints[i - 1].at;
                const Vec2 here = truss.joints[i].at;
                CHECK((before.x < here.x || (before.x == here.x && before.y < here.y)));
            }
        }
    }
}

TEST_CASE("Every example is what its description says: solved, a mechanism, or indeterminate") {
    for (const Example& example : examples()) {
        INFO(example.file);
        const Solution solution = solve(open(example.file).truss);
        CHECK(solution.errors.empty());
        if (example.file == "missing_diagonal.json") {
            CHECK(solution.status == Status::Mechanism);
            CHECK_FALSE(solution.solved);
            CHECK(solution.mechanisms.size() == 1);
        } else if (example.file == "braced_tower.json") {
            CHECK(solution.status == Status::Indeterminate);
            CHECK(solution.counting.redundants == 1);
        } else {
            CHECK(solution.status == Status::Determinate);
            CHECK(solution.solved);
            CHECK(solution.residual < 1e-12);
        }
    }
}

TEST_CASE("Every example fits into a link of 350 characters") {
    for (const Example& example : examples()) {
        INFO(example.file);
        const Truss truss = open(example.file).truss;
        CHECK(writeLink(truss).size() <= 350);
        CHECK(readLink(writeLink(truss)).value().truss == truss);
    }
}

TEST_CASE("Footbridge: joint by joint with 3-4-5 triangles") {
    // Reactions: 3 · 24 / 2 = 36 each. A: AC · 3/5 = −36, AB = 60 · 4/5. B: BC = 24, BD = AB.
    // C, vertical: 36 − 24 = CD · 3/5; horizontal: CE = −48 − 20 · 4/5. E: no load, so DE = 0.
    const Answers found = answers("footbridge.json");
    checkForces(found, {{"AC", -60},
                        {"AB", 48},
                        {"BC", 24},
                        {"BD", 48},
                        {"CD", 20},
                        {"CE", -64},
                        {"DE", 0},
                        {"DG", 20},
                        {"EG", -64},
                        {"GH", -60}});
    CHECK_THAT(found.reactions.at("A").y, WithinAbs(36, 1e-12));
    CHECK_THAT(found.reactions.at("H").y, WithinAbs(36, 1e-12));
}

TEST_CASE("Garden pavilion roof: king post with struts") {
    // Reactions 9. A: AB = −9 · 5/3, AC = 15 · 4/5. B: along x BD + BC = −15, along y with its load
    // of 6: BD − BC = −5. D: the rafters push up 2 · 10 · 3/5 = 12, its load takes 6.
    checkForces(answers("pavilion_roof.json"),
                {{"AB", -15}, {"AC", 12}, {"BC", -5}, {"BD", -10}, {"CD", 6}, {"CE", -5}});
}

TEST_CASE("Garage roof: sums of cases, one case, and the combination") {
    // All cases: 5 on each of five joints, reactions 12.5; slope 1 in 2. A: AC = −12.5√5, AB = 25.
    // B has no load: BC = 0. C: CE + CD = −12.5√5 and CE − CD = −7.5√5.
    const double root5 = std::sqrt(5.0);
    const std::map<std::string, double> ofFive{
        {"AC", -12.5 * root5}, {"AB", 25}, {"BC", 0}, {"CE", -10 * root5}, {"CD", -2.5 * root5}};
    checkForces(answers("garage_roof.json"), ofFive);
    for (const auto& [choice, load] :
         {std::pair<LoadChoice, double>{OneCase{"snow"}, 3}, // of 5
          std::pair<LoadChoice, double>{OneCombination{"winter"}, 1.35 * 2 + 1.5 * 3}}) {
        std::map<std::string, double> scaled = ofFive;
        for (auto& [name, force] : scaled) {
            force *= load / 5;
        }
        checkForces(answers("garage_roof.json", choice), scaled);
    }
}

TEST_CASE("Pipe bridge: unequal hangers on a Warren truss") {
    // Moments about G: R_A = (20 · 12 + 35 · 6) / 18 = 25, so R_G = 30; slopes 4 in 3.
    // A: AB = −25 · 5/4, AC = 31.25 · 3/5. B: BC = 31.25, BD = −37.5. C, vertical:
    // 25 + 4/5 · CD = 20; horizontal: CE = 18.75 + 31.25 · 3/5 + 6.25 · 3/5.
    const Answers found = answers("pipe_bridge.json");
    checkForces(found, {{"AB", -31.25},
                        {"AC", 18.75},
                        {"BC", 31.25},
                        {"BD", -37.5},
                        {"CD", -6.25},
                        {"CE", 41.25},
                        {"FG", -37.5}});
    CHECK_THAT(found.reactions.at("A").y, WithinAbs(25, 1e-12));
    CHECK_THAT(found.reactions.at("G").y, WithinAbs(30, 1e-12));
}

TEST_CASE("Cottage roof: the tie by a section through the ridge") {
    // Reactions 12. A: AB = −12 · 5/3, AC = 20 · 4/5. Moments about D of the left half:
    // 12 · 6 − 8 · 3 = CE · 4.5.
    checkForces(answers("cottage_roof.json"), {{"AB", -20}, {"AC", 16}, {"CE", 48 / 4.5}});
}

TEST_CASE("Bridge of a railway siding: a K panel shares its shear between two diagonals") {
    // Reactions 100. A: AD · 6/√52 = −100, AB = 100 · 4/6. Shear of the second panel 100 − 40 = 60;
    // C is in balance along x, so CG = −CE, and (CE − CG) · 3/5 = 60.
    checkForces(answers("siding_bridge.json"),
                {{"AD", -100 * std::sqrt(52.0) / 6}, {"AB", 200.0 / 3}, {"CG", -50}, {"CE", 50}});
}

TEST_CASE("Chapel porch: scissors") {
    // Reactions 7.5. A, with AB along (1, 1) and AC along (3, 1): AB/√2 = −3 AC/√10 and
    // 7.5 = 2 AC/√10. B: 5 + 4 BC/√10 = 0, BD/√2 = −11.25 + 3.75. D: 2 · 7.5 − 5 = CD.
    const double root10 = std::sqrt(10.0);
    const double root2 = std::sqrt(2.0);
    checkForces(answers("chapel_roof.json"), {{"AC", 3.75 * root10},
                                              {"AB", -11.25 * root2},
                                              {"BC", -1.25 * root10},
                                              {"BD", -7.5 * root2},
                                              {"CD", 10}});
}

TEST_CASE("Sign gantry: from the free end inwards, on two kinds of bearing") {
    // H: FH = 0, GH = −3. G: FG · 3/5 = 3, EG = −4. F: EF = −6, DF = 4. E: DE · 3/5 = 6,
    // CE = −4 − 8. Moments about B: 3 · (2 + 4 + 6) = 1.5 · A_x.
    const Answers found = answers("sign_gantry.json");
    checkForces(found, {{"FH", 0},
                        {"GH", -3},
                        {"FG", 5},
                        {"EG", -4},
                        {"EF", -6},
                        {"DF", 4},
                        {"DE", 10},
                        {"CE", -12}});
    CHECK_THAT(found.reactions.at("A").x, WithinAbs(24, 1e-12));
    CHECK_THAT(found.reactions.at("B").x, WithinAbs(-24, 1e-12));
    CHECK_THAT(found.reactions.at("B").y, WithinAbs(9, 1e-12));
}

TEST_CASE("Hoist frame: the anchor is held down") {
    // D: BD · 4/5 = −12; CD = −6 + 15 · 3/5. C: AC · 3/5 = 3, BC = −5 · 4/5. A: A_y = −5 · 4/5,
    // AB = −5 · 3/5.
    const Answers found = answers("hoist_frame.json");
    checkForces(found, {{"BD", -15}, {"CD", 3}, {"AC", 5}, {"BC", -4}, {"AB", -3}});
    CHECK_THAT(found.reactions.at("A").y, WithinAbs(-4, 1e-12));
    CHECK_THAT(found.reactions.at("B").x, WithinAbs(6, 1e-12));
    CHECK_THAT(found.reactions.at("B").y, WithinAbs(16, 1e-12));
}

TEST_CASE("Conveyor gallery: in kips and feet") {
    // Reactions 12. A: AC = −12 · 5/3, AB = 16. C: BC = 12, CE = −16. B, vertical:
    // 12 + BE · 3/5 = 8; horizontal: BD = 16 + 20/3 · 4/5. D: DE = 8.
    checkForces(answers("conveyor_gallery.json"), {{"AC", -20},
                                                   {"AB", 16},
                                                   {"BC", 12},
                                                   {"CE", -16},
                                                   {"BE", -20.0 / 3},
                                                   {"BD", 64.0 / 3},
                                                   {"DE", 8}});
}

TEST_CASE("Porch roof: a queen post in pounds") {
    // Moments about F: A_y = (600 · 16 + 300 · 16 + 600 · 8) / 24 = 800. A: AC = −800 · 5/3,
    // AB = 800 · 4/3. B: BC = 300. C, vertical: 800 − 600 − 300 = CD · 3/5.
    const Answers found = answers("porch_roof.json");
    checkForces(found, {{"AC", -4000.0 / 3}, {"AB", 3200.0 / 3}, {"BC", 300}, {"CD", -500.0 / 3}});
    CHECK_THAT(found.reactions.at("A").y, WithinAbs(800, 1e-9));
}

TEST_CASE("Shed on a hillside: a reaction that leans at 45 degrees") {
    // Moments about A: 8 · D_y = 4 · (16 + 12), D_x = −D_y. A: A_x = A_y = 14, AC · 3/5 = −14,
    // AB = −14 + 70/3 · 4/5. B: BC = 12.
    const Answers found = answers("hillside_shed.json");
    checkForces(found, {{"AC", -70.0 / 3}, {"AB", 14.0 / 3}, {"BC", 12}});
    CHECK_THAT(found.reactions.at("D").x, WithinAbs(-14, 1e-12));
    CHECK_THAT(found.reactions.at("D").y, WithinAbs(14, 1e-12));
}

TEST_CASE("Farm bridge: a deck carried to the joints by its tributary lengths") {
    // 4 kN/m · 18 m = 72: half on each support, A's own joint takes 4 · 1.5 of it. In case deck:
    // A: AC · 2.5/√(3² + 2.5²) = −(36 − 6).
    const Answers found = answers("farm_bridge.json", OneCase{"deck"});
    checkForces(found, {{"AC", -30 * std::sqrt(15.25) / 2.5}, {"AB", 36}});
    CHECK_THAT(found.reactions.at("A").y, WithinAbs(36, 1e-12));
}
