// Member checks of a truss: what is required of each member, what governs, what can't be checked.
#include "design/member_checks.hpp"

#include "exchange/files/model_file.hpp"
#include "exchange/links/link.hpp"
#include "model/edit/edit.hpp"
#include "support/english.hpp"
#include "support/random.hpp"
#include "support/trusses/checked_truss.hpp"
#include "support/trusses/example_trusses.hpp"
#include "support/trusses/random_truss.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>
#include <catch2/matchers/catch_matchers_string.hpp>

#include <algorithm>
#include <cmath>

using namespace gusset;
using namespace gusset::support;
using Catch::Matchers::ContainsSubstring;
using Catch::Matchers::WithinRel;

namespace {

MemberChecks checked(const Truss& truss, const LoadChoice& choice = {}) {
    return checkMembers(truss, solve(truss, choice), choice);
}

const MemberCheck& between(const MemberChecks& checks, const Truss& truss, const char* a,
                           const char* b) {
    return checks.members[memberAt(truss, a, b)];
}

Truss dressed(std::uint64_t seed) {
    return withChecks(seed % 2 ? randomIndeterminateTruss(seed)
                               : withSections(randomDeterminateTruss(seed), seed),
                      seed);
}

void scaleLoads(Truss& truss, double factor) {
    for (Load& load : truss.loads) {
        if (auto* force = std::get_if<JointForce>(&load.what)) {
            force->fx *= factor;
            force->fy *= factor;
        } else if (auto* angled = std::get_if<AngledForce>(&load.what)) {
            angled->size *= factor;
        }
    }
}

std::string fault(const char* checks) {
    const Outcome<Reading> read =
        readModel(std::string(R"({"gusset":1,"joints":[],"members":[],"checks":)") + checks + "}");
    REQUIRE_FALSE(read.ok());
    return english(read.issues().front());
}

} // namespace

TEST_CASE("A tie is used by its force over the strength of its area") {
    const Truss truss = steelGable(); // AB: 16 kN of 1000 mm² · 235 MPa / 1.5 = 156.67 kN
    const MemberChecks checks = checked(truss);
    const MemberCheck& tie = between(checks, truss, "A", "B");
    CHECK(tie.governing == CheckKind::Tension);
    CHECK_THAT(tie.capacity, WithinRel(235e3 / 1.5, 1e-12));
    CHECK_THAT(tie.use, WithinRel(16e3 * 1.5 / 235e3, 1e-9));
    CHECK_THAT(tie.slenderness, WithinRel(8000.0 / 25, 1e-12)); // K does not apply in tension
    CHECK(tie.tooSlender);                                      // 320 > 300
}

TEST_CASE("A rafter is used by its force over Euler's load, divided by the factor chosen") {
    Truss truss = steelGable(); // AC: 20 kN over 5 m
    truss.checks.eulerFactor = 3;
    truss.checks.effectiveLength = 0.9;
    const MemberChecks checks = checked(truss);
    const MemberCheck& rafter = between(checks, truss, "A", "C");
    const double pi = 3.14159265358979323846;
    // E·I = 210 000 · 1000 · 25² N·mm², over (0.9 · 5000 mm)²
    const double euler = pi * pi * 210e3 * 1000 * 625 / (4500.0 * 4500.0);
    CHECK(rafter.governing == CheckKind::Buckling);
    CHECK_THAT(rafter.capacity, WithinRel(euler / 3, 1e-12));
    CHECK_THAT(rafter.use, WithinRel(20e3 * 3 / euler, 1e-9));
    CHECK_THAT(rafter.slenderness, WithinRel(180.0, 1e-12));
    CHECK_FALSE(rafter.tooSlender);
    CHECK(checks.worst == rafter.member); // the first of two equal members
    CHECK(checks.over == 0);
    CHECK(checks.slender == 1);
}

TEST_CASE("The formula of a standard brings the factor of its strength along") {
    Truss truss = steelGable();
    truss.checks.formula = ColumnFormula::En1993;
    truss.checks.gammaM0 = 1.1;
    CHECK_THAT(between(checked(truss), truss, "A", "B").capacity, WithinRel(235e3 / 1.1, 1e-12));
    truss.checks.formula = ColumnFormula::Aisc360;
    CHECK_THAT(between(checked(truss), truss, "A", "B").capacity, WithinRel(235e3 * 0.9, 1e-12));
    truss.checks.safety = AiscSafety::Allowable;
    CHECK_THAT(between(checked(truss), truss, "A", "B").capacity, WithinRel(235e3 / 1.67, 1e-12));
}

TEST_CASE("A stocky member by EN 1993-1-1 crushes rather than buckles") {
    Truss truss = steelGable();
    truss.sections[0].radius = 1000; // relative slenderness far below 0.2
    truss.checks.formula = ColumnFormula::En1993;
    truss.checks.gammaM0 = 1.1;
    const MemberCheck rafter = between(checked(truss), truss, "A", "C");
    CHECK(rafter.governing == CheckKind::Crushing);
    CHECK(rafter.reduction.chi == 1);
    CHECK_THAT(rafter.capacity, WithinRel(235e3 / 1.1, 1e-12));
}

TEST_CASE("What a member lacks for its check is told, and it has no use") {
    Truss truss = steelGable();
    truss.sections[0].radius.reset();
    MemberChecks checks = checked(truss);
    CHECK(isChecked(between(checks, truss, "A", "B"))); // a tie needs no radius
    CHECK(between(checks, truss, "A", "B").slenderness == 0);
    CHECK(between(checks, truss, "A", "C").lacks == std::vector{Lack::Radius});
    CHECK(between(checks, truss, "A", "C").use == 0);
    CHECK(checks.unchecked == 2);
    CHECK(checks.worst == between(checks, truss, "A", "B").member);

    truss.materials[0].strength.reset();
    checks = checked(truss);
    CHECK(between(checks, truss, "A", "B").lacks == std::vector{Lack::Strength});
    CHECK(checks.unchecked == 3);
    CHECK_FALSE(checks.worst.valid());

    const Truss bare = gable();
    checks = checked(bare);
    CHECK(between(checks, bare, "A", "C").lacks ==
          std::vector{Lack::Area, Lack::Strength, Lack::Modulus, Lack::Radius});
}

TEST_CASE("A member without force has no use, and is held to the limit of those pressed") {
    Truss truss = steelGable();
    std::get<JointForce>(truss.loads[0].what).fy = 0;
    const MemberChecks checks = checked(truss);
    const MemberCheck& tie = between(checks, truss, "A", "B");
    CHECK(tie.governing == CheckKind::None);
    CHECK(tie.use == 0);
    CHECK(isChecked(tie));
    CHECK(tie.limit == 200);
    CHECK_FALSE(checks.worst.valid());
}

TEST_CASE("A limit of slenderness of 0 is none") {
    Truss truss = steelGable();
    truss.checks.tensionLimit = 0;
    truss.checks.compressionLimit = 0;
    CHECK(checked(truss).slender == 0);
}

TEST_CASE("Timber is checked by Euler and its strength, whatever standard for steel is chosen") {
    Truss truss = steelGable();
    truss.checks.formula = ColumnFormula::En1993;
    truss.materials.push_back({"oak", 11e3, 18, {}, {}, {}});
    truss.sections.push_back({"post", "oak", {}, {}, "timber", {{"B", 100}, {"H", 150}}, {}});
    truss.members[memberAt(truss, "A", "C")].section = "post";
    const MemberChecks checks = checked(truss);
    CHECK(between(checks, truss, "A", "C").formula == ColumnFormula::Euler);
    CHECK(between(checks, truss, "B", "C").formula == ColumnFormula::En1993);
    CHECK_THAT(between(checks, truss, "A", "C").onArea, WithinRel(15000 * 18 / 1.5, 1e-12));

    truss.materials[0].E = 70e3; // aluminium
    CHECK(between(checked(truss), truss, "B", "C").formula == ColumnFormula::Euler);
}

TEST_CASE("A member that loads between its joints bend is told") {
    Truss truss = steelGable();
    CHECK_FALSE(between(checked(truss), truss, "A", "B").bends);
    truss.loads.push_back({MemberForce{JointId{0}, JointId{1}, 4, 0, -2}, {}, {}});
    const MemberChecks checks = checked(truss);
    CHECK(between(checks, truss, "A", "B").bends);
    CHECK_FALSE(between(checks, truss, "A", "C").bends);
}

TEST_CASE("A truss that moves has no checks") {
    Truss truss = steelGable();
    truss.supports.pop_back();
    CHECK(checked(truss).members.empty());
}

TEST_CASE("The worst over combinations is the worst of each, with the one that gives it") {
    for (std::uint64_t seed = 0; seed < 60; ++seed) {
        INFO("seed " << seed);
        Truss truss = dressed(seed);
        for (std::size_t i = 0; i < truss.loads.size(); ++i) {
            truss.loads[i].caseId = i % 2 ? "snow" : "wind";
        }
        truss.combinations = {{"both", {{"snow", 1.35}, {"wind", 1.5}}, {}},
                              {"lifted", {{"snow", 0.9}, {"wind", -1.5}}, {}}};
        const std::vector<LoadChoice> choices = combinationChoices(truss);
        const auto envelope = envelopeOf(truss, choices);
        REQUIRE(envelope.ok());
        const MemberChecks worst = checkMembers(truss, envelope.value(), choices);
        for (std::size_t i = 0; i < truss.members.size(); ++i) {
            double largest = 0;
            bool slender = false;
            for (const LoadChoice& choice : choices) {
                const MemberCheck one = checked(truss, choice).members[i];
                largest = std::max(largest, one.use);
                slender = slender || (one.force != 0 && one.tooSlender);
            }
            CHECK(std::abs(worst.members[i].use - largest) <= 1e-9 * std::max(largest, 1e-3));
            CHECK((worst.members[i].tooSlender == slender || worst.members[i].force == 0));
            const MemberCheck& found = worst.members[i];
            if (found.force != 0) {
                CHECK_THAT(checked(truss, found.choice).members[i].force,
                           WithinRel(found.force, 1e-9));
            }
        }
    }
}

TEST_CASE("Use grows with the load in proportion") {
    for (std::uint64_t seed = 0; seed < 400; ++seed) {
        INFO("seed " << seed);
        Truss truss = dressed(seed);
        const MemberChecks once = checked(truss);
        const double factor = Random(seed).decimal(0.25, 7, 8) + 0.125;
        scaleLoads(truss, factor);
        const MemberChecks scaled = checked(truss);
        const double scale = once.worst.valid() ? once.members[once.worst.at()].use : 1;
        for (std::size_t i = 0; i < once.members.size(); ++i) {
            CHECK(std::abs(scaled.members[i].use - factor * once.members[i].use) <=
                  1e-9 * factor * scale);
            CHECK(scaled.members[i].governing == once.members[i].governing);
        }
    }
}

TEST_CASE("Checks are the same in kN, m and mm as in kip, ft and in") {
    const Units us{ForceUnit::kip,  LengthUnit::ft, LengthUnit::in,
                   StressUnit::ksi, LengthUnit::in, {}};
    for (std::uint64_t seed = 0; seed < 400; ++seed) {
        INFO("seed " << seed);
        const Truss si = dressed(seed);
        const Outcome<Truss> turned = gusset::apply(si, SetUnits{us, true});
        REQUIRE(turned.ok());
        const MemberChecks metric = checked(si);
        const MemberChecks inches = checked(turned.value());
        REQUIRE(metric.members.size() == inches.members.size());
        const double scale = metric.worst.valid() ? metric.members[metric.worst.at()].use : 1;
        for (std::size_t i = 0; i < metric.members.size(); ++i) {
            CHECK(std::abs(metric.members[i].use - inches.members[i].use) <= 1e-9 * scale);
            CHECK_THAT(inches.members[i].slenderness,
                       WithinRel(metric.members[i].slenderness, 1e-9));
            CHECK(metric.members[i].formula == inches.members[i].formula);
        }
    }
}

TEST_CASE("Use is never less for a longer buckling length, a weaker steel or a larger factor") {
    for (std::uint64_t seed = 0; seed < 200; ++seed) {
        INFO("seed " << seed);
        const Truss truss = dressed(seed);
        const MemberChecks now = checked(truss);
        Truss longer = truss;
        longer.checks.effectiveLength *= 1.3;
        Truss weaker = truss;
        weaker.materials[0].strength = *truss.materials[0].strength * 0.8;
        Truss safer = truss;
        safer.checks.strengthFactor *= 1.2;
        safer.checks.eulerFactor *= 1.2;
        safer.checks.gammaM0 *= 1.2;
        safer.checks.gammaM1 *= 1.2;
        safer.checks.omega *= 1.2;
        safer.checks.phi /= 1.2;
        for (const Truss* other : {&longer, &weaker, &safer}) {
            const MemberChecks then = checked(*other);
            for (std::size_t i = 0; i < now.members.size(); ++i) {
                CHECK(then.members[i].use >= now.members[i].use * (1 - 1e-9));
            }
        }
    }
}

TEST_CASE("Checks of the examples read from a link are those of their files") {
    for (const Truss& truss : exampleTrusses()) {
        const Outcome<Reading> back = readLink(writeLink(truss));
        REQUIRE(back.ok());
        const MemberChecks one = checked(truss);
        const MemberChecks two = checked(back.value().truss);
        REQUIRE(one.members.size() == two.members.size());
        for (std::size_t i = 0; i < one.members.size(); ++i) {
            CHECK(one.members[i].use == two.members[i].use);
        }
    }
}

TEST_CASE("How members are checked is written only where it differs from what is usual") {
    Truss truss = steelGable();
    CHECK(writeModel(truss).find("checks") == std::string::npos);
    CHECK(writeLink(truss) == writeLink(readModel(writeModel(truss)).value().truss));
    truss.checks.formula = ColumnFormula::Aisc360;
    truss.checks.safety = AiscSafety::Allowable;
    truss.checks.curve = BucklingCurve::A0;
    truss.checks.effectiveLength = 0.85;
    truss.checks.tensionLimit = 0;
    truss.checks.unknown = R"({"checkedBy":"us"})";
    const std::string written = writeModel(truss, Layout::Compact);
    CHECK_THAT(written, ContainsSubstring(R"("checks":{"formula":"AISC 360-16","curve":"a0",)"
                                          R"("safety":"omega","K":0.85,"tensionLimit":0,)"
                                          R"("checkedBy":"us"})"));
    CHECK(readModel(written).value().truss == truss);
    CHECK(readLink(writeLink(truss)).value().truss == truss);
}

TEST_CASE("Every number and word of the checks comes back from files and links") {
    Random random(7);
    for (int i = 0; i < 300; ++i) {
        Truss truss = roof();
        truss.checks.formula = static_cast<ColumnFormula>(random.integer(0, 2));
        truss.checks.curve = static_cast<BucklingCurve>(random.integer(0, 4));
        truss.checks.safety = static_cast<AiscSafety>(random.integer(0, 1));
        for (const CheckNumber& number : kCheckNumbers) {
            if (random.oneIn(2)) {
                const int share = random.integer(0, 1000);
                truss.checks.*number.value =
                    number.least + (number.most - number.least) * share / 1000.0;
            }
        }
        CHECK(readModel(writeModel(truss)).value().truss == truss);
        CHECK(readLink(writeLink(truss)).value().truss == truss);
    }
}

TEST_CASE("Checks that make no sense are refused by name, with what may stand there") {
    CHECK(fault(R"({"formula":"Rankine"})") ==
          "checks.formula: \"Rankine\" has no meaning here: use one of \"Euler\", "
          "\"EN 1993-1-1\", \"AISC 360-16\"");
    CHECK_THAT(fault(R"({"curve":"e"})"), ContainsSubstring("checks.curve: \"e\" has no meaning"));
    CHECK(fault(R"({"K":0})") ==
          "checks.K: the factor of the buckling length must be from 0.1 to 10");
    CHECK(fault(R"({"K":"1"})") == "checks.K: must be a number, not text in quotes");
    CHECK(fault(R"({"eulerFactor":0.5})") == "checks.eulerFactor: the factor that Euler's critical "
                                             "force is divided by must be from 1 to 100");
    CHECK(fault(R"({"phi":1.2})") == "checks.phi: the resistance factor φ must be from 0.1 to 1");
    CHECK(fault(R"({"tensionLimit":-1})") ==
          "checks.tensionLimit: the largest slenderness of members in tension must be from 10 to "
          "1000, or 0 for no limit");
    CHECK(fault("[]") == "checks: must be an object in { }, not a list in [ ]");
    for (const CheckNumber& number : kCheckNumbers) {
        const std::string key(number.key);
        for (const char* value : {"1e999", "-3", "1e9", "null"}) {
            CHECK_THAT(fault(("{\"" + key + "\":" + value + "}").c_str()),
                       ContainsSubstring("checks." + key));
        }
    }
}

TEST_CASE("A change of the checks can be undone, and one that makes no sense is refused") {
    const Truss before = steelGable();
    CheckSettings settings;
    settings.formula = ColumnFormula::En1993;
    const Outcome<Truss> after = gusset::apply(before, SetChecks{settings});
    REQUIRE(after.ok());
    CHECK(after.value().checks == settings);
    CHECK(gusset::apply(after.value(), SetChecks{before.checks}).value() == before);
    CHECK(said(englishPhrases(), describe(before, SetChecks{settings})) ==
          "Change how members are checked");
    settings.effectiveLength = std::nan("");
    const Outcome<Truss> refused = gusset::apply(before, SetChecks{settings});
    REQUIRE_FALSE(refused.ok());
    CHECK_THAT(english(refused.issues().front().says), ContainsSubstring("from 0.1 to 10"));
}
