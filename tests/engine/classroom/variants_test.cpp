// Variants: the same exercise with other numbers. Whether answers are friendly is decided on the
// written and re-read file, by exact arithmetic.
#include "classroom/variants/forms.hpp"
#include "classroom/variants/variants.hpp"

#include "exchange/files/model_file.hpp"
#include "support/english.hpp"
#include "support/trusses/random_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <array>
#include <cmath>
#include <initializer_list>
#include <set>
#include <string>
#include <utility>
#include <vector>

using namespace gusset;

namespace {

// Pratt truss of four panels on a pin and a roller, loads downward on bottom joints 1 to 3:
//
//        F---G---H          F above B, G above C, H above D
//      / | \ | / | \        diagonals AF, FC, CH, HE
//     A--B---C---D--E
Truss prattOfFour(double panel, double height, std::array<double, 3> down) {
    Truss truss;
    for (int i = 0; i < 5; ++i) {
        truss.joints.push_back({defaultLabel(i), {i * panel, 0}, {}});
    }
    for (int i = 1; i < 4; ++i) {
        truss.joints.push_back({defaultLabel(4 + i), {i * panel, height}, {}});
    }
    for (const auto& [a, b] : std::initializer_list<std::pair<int, int>>{{0, 1},
                                                                         {1, 2},
                                                                         {2, 3},
                                                                         {3, 4},
                                                                         {5, 6},
                                                                         {6, 7},
                                                                         {0, 5},
                                                                         {5, 2},
                                                                         {2, 7},
                                                                         {7, 4},
                                                                         {1, 5},
                                                                         {2, 6},
                                                                         {3, 7}}) {
        truss.members.push_back({JointId{a}, JointId{b}, {}, 0, 0, {}});
    }
    Support pin;
    pin.joint = JointId{0};
    Support roller;
    roller.joint = JointId{4};
    roller.kind = SupportKind::Roller;
    truss.supports = {pin, roller};
    for (int i = 0; i < 3; ++i) {
        const double size = down[static_cast<std::size_t>(i)];
        if (size != 0) {
            truss.loads.push_back({JointForce{JointId{i + 1}, 0, -size}, {}, {}});
        }
    }
    return truss;
}

// A roof of seven joints and eleven members whose webs all have rational lengths: half-span 16,
// rise 12, the inner bottom joints C and E 12.5 from the supports: AB = BD = 10 (3 : 4),
// BC = √(4.5² + 6²) = 7.5, CD = √(3.5² + 12²) = 12.5.
Truss wRoof() {
    Truss truss;
    const std::vector<Vec2> places{{0, 0},    {8, 6},  {12.5, 0}, {16, 12},
                                   {19.5, 0}, {24, 6}, {32, 0}};
    for (const Vec2& at : places) {
        truss.joints.push_back({defaultLabel(static_cast<int>(truss.joints.size())), at, {}});
    }
    for (const auto& [a, b] : std::initializer_list<std::pair<int, int>>{{0, 1},
                                                                         {1, 3},
                                                                         {3, 5},
                                                                         {5, 6},
                                                                         {0, 2},
                                                                         {2, 4},
                                                                         {4, 6},
                                                                         {1, 2},
                                                                         {2, 3},
                                                                         {3, 4},
                                                                         {4, 5}}) {
        truss.members.push_back({JointId{a}, JointId{b}, {}, 0, 0, {}});
    }
    Support pin;
    pin.joint = JointId{0};
    Support roller;
    roller.joint = JointId{6};
    roller.kind = SupportKind::Roller;
    truss.supports = {pin, roller};
    for (const int joint : {1, 3, 5}) {
        truss.loads.push_back({JointForce{JointId{joint}, 0, -16}, {}, {}});
    }
    return truss;
}

std::vector<Variant> variantsOf(const Truss& truss, const VariantWishes& wishes, int count,
                                std::uint64_t seed) {
    const Outcome<std::vector<Variant>> made = makeVariants(truss, wishes, count, seed);
    const std::string why = made ? std::string() : support::english(made.issues().front());
    INFO(why);
    REQUIRE(made.ok());
    REQUIRE(made.value().size() == static_cast<std::size_t>(count));
    return made.value();
}

// The answers of a variant as its file gives them, as text.
std::string exactAnswers(const Truss& truss, const VariantWishes& wishes) {
    const Outcome<Reading> reading = readModel(writeModel(truss));
    REQUIRE(reading.ok());
    const ExactSolution exact = solveExactly(reading.value().truss, wishes.loads);
    REQUIRE(exact.solved);
    REQUIRE(exact.counting.mechanisms == 0);
    std::string text;
    const std::set<std::string> denominators = wishes.decimals == 0
                                                   ? std::set<std::string>{"1"}
                                                   : std::set<std::string>{"1", "2", "5", "10"};
    for (const std::vector<Surd>* answers : {&exact.forces, &exact.reactions}) {
        for (const Surd& answer : *answers) {
            CHECK((answer.numerator == "0" || answer.radicand == "1"));
            CHECK(denominators.count(answer.denominator) == 1);
            text += textOf(answer) + " ";
        }
    }
    return text;
}

// Checks that all answers are friendly, and differ from one another's.
void checkVariants(const std::vector<Variant>& variants, const VariantWishes& wishes) {
    std::set<std::string> answers;
    for (const Variant& variant : variants) {
        INFO("variant " << variant.number);
        CHECK(answers.insert(exactAnswers(variant.truss, wishes)).second);
    }
}

bool isAt45(const Truss& truss, std::size_t member) {
    const Vec2 d = memberVector(truss, MemberId{static_cast<int>(member)});
    return std::fabs(std::fabs(d.x) - std::fabs(d.y)) < 1e-9;
}

} // namespace

TEST_CASE("A Pratt truss of four panels with 12 kN at its first bottom joint has whole forces") {
    // Panels of 4 m, 3 m high: A = 9, E = 3; AF = −9·5/3, AB = 9·4/3, FC = 3·5/3 …
    const ExactSolution exact = solveExactly(prattOfFour(4, 3, {12, 0, 0}));
    CHECK(areFriendly(exact, {}, 0));
    CHECK(textOf(exact.forces[6]) == "-15");
    CHECK(textOf(exact.forces[0]) == "12");
    CHECK(areFriendly(solveExactly(prattOfFour(4, 3, {6, 6, 6})), {}, 0));
    // 18 kN: A = 13.5, AF = −22.5; 10 kN: E = 2.5, HE = −2.5·5/3.
    CHECK_FALSE(areFriendly(solveExactly(prattOfFour(4, 3, {18, 0, 0})), {}, 0));
    CHECK(areFriendly(solveExactly(prattOfFour(4, 3, {18, 0, 0})), {}, 1));
    CHECK_FALSE(areFriendly(solveExactly(prattOfFour(4, 3, {10, 0, 0})), {}, 1));
    // Panels of 3 m, 3 m high: the diagonals have √2.
    CHECK_FALSE(areFriendly(solveExactly(prattOfFour(3, 3, {12, 0, 0})), {}, 1));
}

TEST_CASE("A class of thirty gets thirty different Pratt trusses with whole forces") {
    const Truss truss = prattOfFour(3, 3, {10, 15, 0});
    const VariantWishes wishes;
    const std::vector<Variant> variants = variantsOf(truss, wishes, 30, 7);
    checkVariants(variants, wishes);
    for (const Variant& variant : variants) {
        CHECK(areAlike(variant.steps, variants.front().steps));
        CHECK(variant.truss.members == truss.members);
        CHECK(variant.truss.supports == truss.supports);
        for (std::size_t i = 0; i < truss.members.size(); ++i) {
            CHECK_FALSE(isAt45(variant.truss, i));
        }
        // Equal panels stay equal, so that the symmetric truss stays symmetric.
        const auto x = [&](std::size_t joint) { return variant.truss.joints[joint].at.x; };
        CHECK(std::fabs(x(4) - 4 * x(1)) < 1e-9);
    }
}

TEST_CASE("With the lengths kept, whole forces come from the loads alone") {
    VariantWishes wishes;
    wishes.vary = {false, false, true, false, false, false};
    const Truss truss = prattOfFour(4, 3, {10, 10, 10});
    const std::vector<Variant> variants = variantsOf(truss, wishes, 8, 3);
    checkVariants(variants, wishes);
    for (const Variant& variant : variants) {
        CHECK(variant.truss.joints == truss.joints);
    }
}

TEST_CASE("A roof whose webs all have rational lengths keeps them") {
    const VariantWishes wishes;
    checkVariants(variantsOf(wRoof(), wishes, 4, 1), wishes);
}

// Bottom joints at the thirds of the span and a slope of 1 : 2: the ties lean 3 : 2, so that their
// lengths hold √13, and those of the struts too.
TEST_CASE("A roof of slopes r and 2r gets a shape in which all webs are rational") {
    Truss roof = wRoof();
    const std::vector<Vec2> places{{0, 0}, {3, 1.5}, {4, 0}, {6, 3}, {8, 0}, {9, 1.5}, {12, 0}};
    for (std::size_t i = 0; i < places.size(); ++i) {
        roof.joints[i].at = places[i];
    }
    VariantWishes wishes;
    wishes.decimals = 1;
    CHECK_FALSE(areFriendly(solveExactly(roof), {}, 1));
    checkVariants(variantsOf(roof, wishes, 6, 2), wishes);
}

// Delft University of Technology, FMM 1.1 (CC BY 4.0): two arms on pins at A and B, Q = 360 down at
// D and P = 180 down at H. Published: DC = CB = 600, AC = CE = EH = 300, EG = BE = 0; so, by the
// equilibrium of C, D, E and H, DC = CB = 5 Q / 3 and AC = CE = EH = 5 P / 3.
TEST_CASE(
    "A published frame of two arms is made again with other loads, and its answers are known") {
    Truss truss;
    const std::vector<std::pair<const char*, Vec2>> joints{
        {"A", {0, 0}},    {"B", {10, 0}},      {"C", {5, 3.75}}, {"D", {-10, 15}},
        {"E", {10, 7.5}}, {"G", {12.5, 3.75}}, {"H", {20, 15}}};
    for (const auto& [label, at] : joints) {
        truss.joints.push_back({label, at, {}});
    }
    enum : std::size_t { AD, DC, AC, CB, CE, BE, BG, EG, EH, GH };
    for (const auto& [a, b] : std::initializer_list<std::pair<int, int>>{
             {0, 3}, {3, 2}, {0, 2}, {2, 1}, {2, 4}, {1, 4}, {1, 5}, {4, 5}, {4, 6}, {5, 6}}) {
        truss.members.push_back({JointId{a}, JointId{b}, {}, 0, 0, {}});
    }
    truss.supports.resize(2);
    truss.supports[0].joint = JointId{0};
    truss.supports[1].joint = JointId{1};
    truss.loads = {{JointForce{JointId{3}, 0, -360}, {}, {}},
                   {JointForce{JointId{6}, 0, -180}, {}, {}}};
    CHECK(textOf(solveExactly(truss).forces[DC]) == "600");
    CHECK(textOf(solveExactly(truss).forces[EH]) == "300");
    VariantWishes wishes;
    wishes.vary = {false, false, true, false, false, false};
    for (const std::size_t member : {DC, AC, CB, CE, BE, EG, EH}) {
        wishes.asked.push_back(MemberId{static_cast<int>(member)});
    }
    const std::vector<Variant> variants = variantsOf(truss, wishes, 10, 5);
    REQUIRE(variants.size() == 10);
    for (const Variant& variant : variants) {
        const double q = -std::get<JointForce>(variant.truss.loads[0].what).fy;
        const double p = -std::get<JointForce>(variant.truss.loads[1].what).fy;
        const ExactSolution exact = solveExactly(variant.truss);
        CHECK(areFriendly(exact, wishes.asked, 0));
        for (const std::size_t member : {DC, CB}) {
            CHECK(3 * exact.forces[member].value == 5 * q);
        }
        for (const std::size_t member : {AC, CE, EH}) {
            CHECK(3 * exact.forces[member].value == 5 * p);
        }
        CHECK(exact.forces[EG].value == 0);
        CHECK(exact.forces[BE].value == 0);
    }
}

// After A. Akabaila: three panels of 8 m, 6 m high, 100 and 150 downward at joints 2 and 4, held at
// 0 and 6; the published sizes are 116.67 155.56 194.44 0 16.67 …, thirds and ninths of whole
// numbers, so that another size of the loads makes them whole.
TEST_CASE("A published truss of 8 m by 6 m panels gets whole forces by other loads") {
    Truss truss = prattOfFour(8, 6, {0, 0, 0});
    truss.joints.clear();
    truss.members.clear();
    for (int i = 0; i < 4; ++i) {
        truss.joints.push_back({defaultLabel(2 * i), {8.0 * i, 0}, {}});
        truss.joints.push_back({defaultLabel(2 * i + 1), {8.0 * i, 6}, {}});
    }
    for (const auto& [a, b] : std::initializer_list<std::pair<int, int>>{{0, 1},
                                                                         {1, 3},
                                                                         {1, 2},
                                                                         {0, 2},
                                                                         {2, 3},
                                                                         {3, 5},
                                                                         {3, 4},
                                                                         {2, 4},
                                                                         {4, 5},
                                                                         {5, 7},
                                                                         {4, 7},
                                                                         {4, 6},
                                                                         {6, 7}}) {
        truss.members.push_back({JointId{a}, JointId{b}, {}, 0, 0, {}});
    }
    truss.supports[0].joint = JointId{0};
    truss.supports[1].joint = JointId{6};
    truss.loads = {{JointForce{JointId{2}, 0, -100}, {}, {}},
                   {JointForce{JointId{4}, 0, -150}, {}, {}}};
    const ExactSolution published = solveExactly(truss);
    CHECK(textOf(published.forces[0]) == "-350/3");  // 116.67
    CHECK(textOf(published.forces[1]) == "-1400/9"); // 155.56
    CHECK(textOf(published.forces[2]) == "1750/9");  // 194.44
    CHECK(textOf(published.forces[3]) == "0");
    CHECK_FALSE(areFriendly(published, {}, 1));
    VariantWishes wishes;
    wishes.vary = {false, false, true, false, false, false};
    checkVariants(variantsOf(truss, wishes, 3, 2), wishes);
    checkVariants(variantsOf(truss, {}, 20, 2), {});
}

TEST_CASE("Directions and places and supports vary too, with one decimal") {
    VariantWishes wishes;
    wishes.decimals = 1;
    wishes.vary = {true, true, true, true, true, true};
    const Truss truss = prattOfFour(4, 3, {12, 6, 0});
    const std::vector<Variant> variants = variantsOf(truss, wishes, 20, 11);
    checkVariants(variants, wishes);
    bool isInclined = false;
    bool isMoved = false;
    bool isSwapped = false;
    for (const Variant& variant : variants) {
        for (const Load& load : variant.truss.loads) {
            isInclined = isInclined || forceOf(load)->x != 0;
            isMoved = isMoved || jointOf(load) == JointId{3};
        }
        isSwapped = isSwapped || variant.truss.supports[0].joint == JointId{4};
    }
    CHECK(isInclined);
    CHECK(isMoved);
    CHECK(isSwapped);
}

TEST_CASE("Several loads are not shared equally by two supports") {
    const VariantWishes wishes;
    for (const Variant& variant : variantsOf(prattOfFour(4, 3, {6, 6, 6}), wishes, 20, 5)) {
        const ExactSolution exact = solveExactly(variant.truss);
        CHECK(textOf(exact.jointReactions[0].y) != textOf(exact.jointReactions[4].y));
    }
}

TEST_CASE("A variant depends on the seed, not on how many are made") {
    const Truss truss = prattOfFour(4, 3, {12, 6, 0});
    const std::vector<Variant> few = variantsOf(truss, {}, 3, 42);
    const std::vector<Variant> many = variantsOf(truss, {}, 12, 42);
    for (std::size_t i = 0; i < few.size(); ++i) {
        CHECK(few[i].truss == many[i].truss);
        CHECK(few[i].number == static_cast<int>(i) + 1);
    }
    CHECK_FALSE(variantsOf(truss, {}, 1, 43).front().truss == few.front().truss);
}

TEST_CASE("Only the members asked for need friendly forces") {
    // Posts and chords are level or upright: their forces are rational at 45° as well.
    VariantWishes wishes;
    wishes.vary = {false, false, true, false, false, false};
    const Truss truss = prattOfFour(3, 3, {10, 10, 0});
    const Outcome<std::vector<Variant>> all = makeVariants(truss, wishes, 5, 1);
    REQUIRE_FALSE(all.ok());
    CHECK(support::english(all.issues().front()).find("let both vary") != std::string::npos);
    wishes.asked = {MemberId{0}, MemberId{5}, MemberId{10}};
    for (const Variant& variant : variantsOf(truss, wishes, 5, 1)) {
        CHECK(areFriendly(solveExactly(variant.truss), wishes.asked, 0));
    }
}

TEST_CASE("The wish to blame is named") {
    const auto says = [](const Truss& truss, const VariantWishes& wishes, int count) {
        const Outcome<std::vector<Variant>> made = makeVariants(truss, wishes, count, 1);
        REQUIRE_FALSE(made.ok());
        return support::english(made.issues().front());
    };
    const Truss truss = prattOfFour(4, 3, {12, 0, 0});
    CHECK(says(truss, {}, 0) == "count: must be from 1 to 400");
    VariantWishes wishes;
    wishes.decimals = 2;
    CHECK(says(truss, wishes, 1) == "decimals: must be 0 or 1");
    wishes = {};
    wishes.vary = {false, false, false, false, false, false};
    CHECK(says(truss, wishes, 1).starts_with("vary: nothing may vary"));
    // A single place is free for the load beside its own two: B, C, D.
    wishes.vary.places = true;
    CHECK(says(prattOfFour(4, 3, {24, 0, 0}), wishes, 50).find("ask for") != std::string::npos);
    CHECK(says(prattOfFour(4, 3, {0, 0, 0}), {}, 1).find("put a load") != std::string::npos);
    Truss sloped = truss;
    sloped.supports[1].reaction = 45;
    CHECK(says(sloped, {}, 1).find("roller at E") != std::string::npos);
    Truss mechanism = truss;
    mechanism.members.pop_back();
    CHECK(says(mechanism, {}, 1).starts_with("truss: "));
    CHECK(says(Truss{}, {}, 1).find(": ") != std::string::npos);
}

TEST_CASE("Any truss gives variants with friendly numbers, or a sentence that says why not") {
    int made = 0;
    for (std::uint64_t seed = 1; seed <= 500; ++seed) {
        INFO("seed " << seed);
        const Truss truss = seed % 10 == 0   ? support::randomMechanism(seed)
                            : seed % 10 == 5 ? support::randomIndeterminateTruss(seed)
                                             : support::randomDeterminateTruss(seed);
        VariantWishes wishes;
        wishes.decimals = static_cast<int>(seed % 2);
        wishes.vary = {true, true, true, seed % 3 == 0, seed % 4 == 0, seed % 5 == 0};
        const Outcome<std::vector<Variant>> variants = makeVariants(truss, wishes, 2, seed);
        if (!variants) {
            CHECK(support::english(variants.issues().front()).size() > 20);
            continue;
        }
        ++made;
        checkVariants(variants.value(), wishes);
    }
    CHECK(made >= 1); // irregular shapes have roots in most of their lengths
}

TEST_CASE("Seven joints, friendly, two zero members") {
    for (std::uint64_t seed = 1; seed <= 5; ++seed) {
        const Outcome<Truss> form = makeForm({7, 2, Held::AtEnds}, seed);
        REQUIRE(form.ok());
        CHECK(form.value().joints.size() == 7);
        VariantWishes wishes;
        wishes.zeros = 2;
        const std::vector<Variant> variants = variantsOf(form.value(), wishes, 5, seed);
        checkVariants(variants, wishes);
        for (const Variant& variant : variants) {
            CHECK(variant.steps.zeros == 2);
        }
    }
}

TEST_CASE("A form of any wished number of joints is determinate") {
    for (int joints = kFewestJoints; joints <= kMostJoints; ++joints) {
        for (const Held held : {Held::AtEnds, Held::AtWall}) {
            INFO(joints << " joints");
            const Outcome<Truss> form = makeForm({joints, std::nullopt, held}, 3);
            if (held == Held::AtWall && joints % 2 == 1) {
                REQUIRE_FALSE(form.ok());
                CHECK(support::english(form.issues().front()).find("even number") !=
                      std::string::npos);
                continue;
            }
            REQUIRE(form.ok());
            CHECK(form.value().joints.size() == static_cast<std::size_t>(joints));
            const ExactSolution exact = solveExactly(form.value());
            CHECK(exact.solved);
            CHECK(exact.counting.mechanisms == 0);
        }
    }
    const Outcome<Truss> none = makeForm({7, 11, Held::AtEnds}, 1);
    REQUIRE_FALSE(none.ok());
    CHECK(support::english(none.issues().front()).find("the nearest that was is") !=
          std::string::npos);
    CHECK_FALSE(makeForm({3, std::nullopt, Held::AtEnds}, 1).ok());
}

TEST_CASE("Lengths and loads come in the steps that are wished for, or these are blamed") {
    VariantWishes wishes;
    wishes.lengthStep = 0.5;
    wishes.loadStep = 5;
    const Truss truss = prattOfFour(4, 3, {0, 20, 0});
    const std::vector<Variant> variants = variantsOf(truss, wishes, 6, 4);
    checkVariants(variants, wishes);
    for (const Variant& variant : variants) {
        for (const Joint& joint : variant.truss.joints) {
            CHECK(2 * joint.at.x == std::round(2 * joint.at.x));
            CHECK(2 * joint.at.y == std::round(2 * joint.at.y));
        }
        const double load = std::get<JointForce>(variant.truss.loads[0].what).fy;
        CHECK(load / 5 == std::round(load / 5));
    }
    wishes.loadStep = 3.14159; // of which no whole number in reach is a multiple
    const Outcome<std::vector<Variant>> none = makeVariants(truss, wishes, 1, 4);
    REQUIRE_FALSE(none.ok());
    CHECK(support::english(none.issues().front()).find("allow smaller ones") != std::string::npos);
}
