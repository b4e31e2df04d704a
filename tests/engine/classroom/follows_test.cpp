// Whoever is told that a value follows from earlier ones has an equation that gives it.
#include "exchange/files/model_file.hpp"
#include "support/classroom/follows.hpp"
#include "support/classroom/student.hpp"
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
