// Whoever is told that a value follows from earlier ones has an equation that gives it.
#include "exchange/files/model_file.hpp"
#include "report/classroom/marking_text.hpp"
#include "support/classroom/follows.hpp"
#include "support/classroom/student.hpp"
#include "support/english.hpp"
#include "support/files.hpp"
#include "support/random.hpp"
#include "support/trusses/random_truss.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <cmath>
#include <random>

using namespace gusset;
using namespace gusset::support;

namespace {

struct WrongMember {
    const char* ends;
    double value;
};

// The footbridge of the examples: 24 kN down at B, D and F, reactions of 36 kN, and no load at E.
class FootbridgeSheet {
public:
    FootbridgeSheet()
        : asked_(readModel(repositoryFile("site/examples/footbridge.json")).value().truss),
          sheet_(blankAnswers(asked_.truss, asked_.exercise)) {
        for (std::size_t i = 0; i < asked_.key.reactions.size(); ++i) {
            sheet_.reactions[i] = writtenAs(asked_.key.reactions[i]);
        }
        for (std::size_t i = 0; i < asked_.key.forces.size(); ++i) {
            sheet_.forces[i] = writtenAs(asked_.key.forces[i]);
        }
    }

    Marking markWith(const std::vector<WrongMember>& wrong) const {
        Answers sheet = sheet_;
        for (const WrongMember& each : wrong) {
            sheet.forces[at(each.ends)] = writtenAs(each.value);
        }
        return MarkingScheme(asked_.truss, asked_.exercise, asked_.key).mark(sheet);
    }
    const MarkedForce& of(const Marking& marking, const char* ends) const {
        return marking.forces[asked_.key.reactions.size() + at(ends)];
    }
    const Asked& asked() const { return asked_; }
    void react(std::size_t number, double value) { sheet_.reactions[number] = writtenAs(value); }
    void write(const char* ends, WrittenForce force) { sheet_.forces[at(ends)] = force; }

    static WrittenForce writtenAs(double value) {
        return {std::abs(value), value > 0 ? 1 : value < 0 ? -1 : 0};
    }

private:
    std::size_t at(const char* ends) const {
        return memberAt(asked_.truss, std::string(1, ends[0]), std::string(1, ends[1]));
    }

    Asked asked_;
    Answers sheet_;
};

// Right values to three figures, but for some members.
Answers sheetWithWrong(const Asked& asked, int wrong, std::uint64_t seed) {
    Random random(seed);
    Answers sheet = blankAnswers(asked.truss, asked.exercise);
    const auto rounded = [](double value) {
        return FootbridgeSheet::writtenAs(roundedToFigures(value, 3));
    };
    for (std::size_t i = 0; i < asked.key.reactions.size(); ++i) {
        sheet.reactions[i] = rounded(asked.key.reactions[i]);
    }
    for (std::size_t i = 0; i < asked.key.forces.size(); ++i) {
        sheet.forces[i] = rounded(asked.key.forces[i]);
    }
    for (int n = 0; n < wrong; ++n) {
        const int size = random.integer(1, 99);
        sheet.forces[static_cast<std::size_t>(random.integer(
            0, static_cast<int>(sheet.forces.size()) - 1))] = {size, random.integer(0, 1) * 2 - 1};
    }
    return sheet;
}

} // namespace

TEST_CASE("Of two wrong values of which neither gives the other, both are slips") {
    const FootbridgeSheet sheet;
    // Nothing but DE is upright at E, and no load is there. At A, A_y = 36 gives AC = -60; at H the
    // same. At G, FG is of the load on F alone.
    const std::vector<std::vector<WrongMember>> pairs{{{"CE", 24}, {"DE", 23}},
                                                      {{"AB", 100}, {"AC", -7}},
                                                      {{"FH", 100}, {"GH", -7}},
                                                      {{"EG", 75}, {"FG", -44}}};
    for (const std::vector<WrongMember>& wrong : pairs) {
        CAPTURE(wrong[0].ends, wrong[1].ends);
        const Marking marking = sheet.markWith(wrong);
        CHECK(sheet.of(marking, wrong[0].ends).verdict == Verdict::Slip);
        CHECK(sheet.of(marking, wrong[1].ends).verdict == Verdict::Slip);
    }
}

TEST_CASE("A value that the sum of the other one gives follows from it") {
    // At A: AC = -40 is a slip, and 4/5 of it are in AB.
    const FootbridgeSheet sheet;
    const Marking marking = sheet.markWith({{"AC", -40}, {"AB", 32}});
    CHECK(sheet.of(marking, "AC").verdict == Verdict::Slip);
    CHECK(sheet.of(marking, "AB").verdict == Verdict::Carried);
    CHECK(marking.slips.size() == 1);
}

TEST_CASE("Of random wrong values, what is told to follow has an equation that gives it") {
    const FootbridgeSheet sheet;
    int told = 0;
    for (std::uint64_t seed = 0; seed < 300; ++seed) {
        const Asked other(randomDeterminateTruss(seed));
        for (const Asked* asked : {&sheet.asked(), &other}) {
            const int wrong = 1 + static_cast<int>(seed % 3);
            const Marking marking = MarkingScheme(asked->truss, asked->exercise, asked->key)
                                        .mark(sheetWithWrong(*asked, wrong, seed));
            CAPTURE(seed, asked == &other);
            CHECK(followWithoutEquation(*asked, marking).empty());
            told += toldToFollow(marking);
        }
    }
    CHECK(told > 0);
}

TEST_CASE(
    "A carried value that comes to nothing has both marks if there was something to work out") {
    // With A_y = 48: AC = -48*5/3 = -80, CD = (48 - 24)*5/3 = 40, and DG = 24*5/3 - 40 = 0 at D.
    FootbridgeSheet sheet;
    sheet.react(1, 48);
    sheet.react(2, 24);
    const Marking marking = sheet.markWith({{"AC", -80},
                                            {"AB", 64},
                                            {"BD", 64},
                                            {"CD", 40},
                                            {"CE", -96},
                                            {"EG", -96},
                                            {"DG", 0},
                                            {"DF", 32},
                                            {"FH", 32},
                                            {"GH", -40}});
    CHECK(sheet.of(marking, "DG").verdict == Verdict::Carried);
    CHECK(sheet.of(marking, "DG").marks == 2);
}

TEST_CASE("A size with 0 chosen is neither") {
    FootbridgeSheet sheet;
    CHECK_FALSE(valueOf({12, 0}));
    CHECK(valueOf({0, 0}) == 0.0);
    sheet.write("DE", {12, 0});
    const Marking marking = sheet.markWith({});
    CHECK(sheet.of(marking, "DE").verdict == Verdict::Blank);
    CHECK(sheet.of(marking, "DE").marks == 0);
}

TEST_CASE("What only rounds to a half, a tenth or the like is not a factor") {
    // A tenth of 48 is 4.8, not 5.
    const FootbridgeSheet sheet;
    const Marking marking = sheet.markWith({{"BD", 5}});
    REQUIRE(marking.slips.size() == 1);
    CHECK(marking.slips[0].kind != SlipKind::WrongFactor);
    CHECK(sheet.markWith({{"BD", 96}}).slips[0].kind == SlipKind::WrongFactor);
}

TEST_CASE("What other values give is said only where all equations of the body give it") {
    // At D: sum F_x gives 73.75 for BD, sum F_y 20 for CD, once CD is written as 77.
    const FootbridgeSheet sheet;
    const Marking marking = sheet.markWith({{"BD", 5}, {"CD", 77}});
    for (const char* each : {"BD", "CD"}) {
        const MarkedForce& force = sheet.of(marking, each);
        REQUIRE(force.slip);
        for (const OwnEquation& own : marking.slips[*force.slip].equations) {
            CHECK(std::abs(own.gives - 54.4) > 1);
        }
        CHECK((!force.expected || std::abs(*force.expected - 54.4) > 1));
    }
}

TEST_CASE("Marks lost by zero members and the degree are said") {
    Asked asked(readModel(repositoryFile("site/examples/footbridge.json")).value().truss);
    asked.exercise.questions = {{AskZeroMembers{}, 0}, {AskDeterminacy{}, 0}};
    asked.key = keyOf(asked.truss, asked.exercise).value();
    const MarkingScheme scheme(asked.truss, asked.exercise, asked.key);
    const Writer writer{englishPhrases(), asked.truss};
    Answers sheet = blankAnswers(asked.truss, asked.exercise);
    sheet.degree = 1;
    CHECK(feedback(writer, scheme.mark(sheet), sheet) ==
          std::vector<std::string>{
              "The members that carry nothing are not named rightly: 0 of 1 marks.",
              "The degree of indeterminacy is wrong: 0 of 1 marks."});
    sheet.degree = 0;
    sheet.zeros[memberAt(asked.truss, "D", "E")] = true;
    CHECK(feedback(writer, scheme.mark(sheet), sheet).empty());
}

TEST_CASE("All member forces in newtons beside reactions in kilonewtons are one slip of a factor") {
    const FootbridgeSheet sheet;
    std::vector<WrongMember> all;
    for (const char* ends :
         {"AB", "BD", "DF", "FH", "CE", "EG", "BC", "FG", "AC", "CD", "DG", "GH"}) {
        all.push_back({ends, 1000 * sheet.of(sheet.markWith({}), ends).truth});
    }
    const Marking marking = sheet.markWith(all);
    REQUIRE(marking.slips.size() == 1);
    CHECK(marking.slips[0].kind == SlipKind::WrongFactor);
    CHECK(marking.marks == marking.outOf - 1);
}
