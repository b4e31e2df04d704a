// Marks with carried errors: slips that a student makes on the way are found and named, what
// follows from them is not marked again, and no right answer is marked wrong.
#include "classroom/marking/marking.hpp"

#include "support/classroom/worked_sheet.hpp"
#include "support/trusses/random_truss.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>

using namespace gusset;
using namespace gusset::support;

namespace {

#ifdef __SANITIZE_ADDRESS__
constexpr int kTrusses = 500; // each takes ten times as long under the sanitizers
#else
constexpr int kTrusses = 5000;
#endif
// Of 300 slips a share of 96 % has a standard error of more than 1 %: only all 5,000 trusses tell
// whether it is reached.
constexpr bool kTellsShares = kTrusses >= 5000;

constexpr std::array<const char*, kSlipKinds> kKindNames{
    "left out",        "wrong sign",  "sine for cosine", "not resolved", "to one bar",
    "reaction turned", "by symmetry", "wrong arm",       "earlier sign", "wrong sense",
    "zero misjudged",  "factor",      "digits swapped"};

// Of the right kind, and at the right step: on its body, or for one of its unknowns, which another
// body can give as well.
bool isAt(const Slip& slip, const Made& made) {
    return slip.body == made.body || std::find(made.unknowns.begin(), made.unknowns.end(),
                                               slip.answers.front()) != made.unknowns.end();
}
bool finds(const Marking& marking, const Made& made) {
    return std::any_of(marking.slips.begin(), marking.slips.end(),
                       [&](const Slip& slip) { return slip.kind == made.kind; });
}

int rightMarkedWrong(const Asked& asked, const Worked& worked, const Marking& marking) {
    int count = 0;
    for (const MarkedForce& force : marking.forces) {
        const bool right = force.written &&
                           std::abs(*force.written - force.truth) <=
                               allowance(asked.exercise.tolerance, force.truth, asked.key.largest);
        count += right && (force.marks < force.outOf || force.verdict == Verdict::Slip) ? 1 : 0;
    }
    return count + (worked.made.empty() && !marking.slips.empty() ? 1 : 0);
}

struct Tally {
    int made = 0;
    int told = 0;   // that can be told apart
    int named = 0;  // of these
    int there = 0;  // of these, at the step where it was made
    int placed = 0; // of those that can't be told: a slip at that step, unnamed or of another kind
};

void print(const char* name, const Tally& tally) {
    std::printf("%-16s %6d made, %6d can be told apart, %6.2f %% of them named, %6.2f %% "
                "where they were made; of the others, %d found at their joint\n",
                name, tally.made, tally.told, 100.0 * tally.named / std::max(tally.told, 1),
                100.0 * tally.there / std::max(tally.told, 1), tally.placed);
}

} // namespace

// TU Delft, T. van Woudenberg, "Frequently made mistakes" (CC BY 4.0): 360 kN on D and 180 kN on H,
// pins at A and B. A student forgets the horizontal reactions and loses the sign of AD in ΣF_x of
// joint A: 0.6 AC + 0.83 AD = −540 and 0.8 AC + 0.55 AD = 0 give AC = 900, AD = −1298.
TEST_CASE("A published sheet: a reaction forgotten and a sign lost are not carried to the rest") {
    Truss truss;
    joint(truss, "A", 0, 0);
    joint(truss, "B", 10, 0);
    joint(truss, "C", 5, 3.75);
    joint(truss, "D", -10, 15);
    joint(truss, "E", 10, 7.5);
    joint(truss, "G", 12.5, 3.75);
    joint(truss, "H", 20, 15);
    members(truss, {"AD", "DC", "AC", "CB", "CE", "BE", "BG", "EG", "EH", "GH"});
    pin(truss, "A");
    pin(truss, "B");
    force(truss, "D", 0, -360);
    force(truss, "H", 0, -180);
    const Asked asked(truss);
    CHECK(std::abs(asked.key.forces[memberAt(truss, "A", "D")] + 865.33) < 0.01);
    Answers sheet = blankAnswers(asked.truss, asked.exercise);
    sheet.reactions = {{0, 0}, {540, 1}, {}, {0, 0}};
    sheet.forces[memberAt(truss, "A", "D")] = {1298, -1};
    sheet.forces[memberAt(truss, "A", "C")] = {900, 1};
    sheet.forces[memberAt(truss, "D", "C")] = {600, 1};
    const Marking marking = MarkingScheme(asked.truss, asked.exercise, asked.key).mark(sheet);
    const auto verdictOf = [&](std::size_t number) { return marking.forces[number].verdict; };
    CHECK(verdictOf(0) == Verdict::Slip); // A_x
    CHECK(verdictOf(1) == Verdict::Right);
    CHECK(marking.forces[4 + memberAt(truss, "D", "C")].marks == 2); // right is never wrong
    CHECK(marking.slips.size() >= 2);
}

TEST_CASE("A sheet without a slip has full marks, in whichever order it was worked") {
    for (std::uint64_t seed = 0; seed < 300; ++seed) {
        const Asked asked(randomDeterminateTruss(seed));
        const MarkingScheme scheme(asked.truss, asked.exercise, asked.key);
        const Marking marking = scheme.mark(workWith(asked, {}, seed).sheet);
        CAPTURE(seed);
        CHECK(marking.slips.empty());
        CHECK(marking.marks == marking.outOf);
    }
}

TEST_CASE("One slip, carried through, is found and named") {
    std::array<Tally, kSlipKinds> tallies{};
    Tally all;
    int wronged = 0;
    for (int n = 0; n < kTrusses; ++n) {
        const auto seed = static_cast<std::uint64_t>(n);
        const Asked asked(randomDeterminateTruss(seed));
        const auto kind = static_cast<SlipKind>(n % kSlipKinds);
        const Worked worked = workWith(asked, {kind}, seed);
        const Marking marking =
            MarkingScheme(asked.truss, asked.exercise, asked.key).mark(worked.sheet);
        wronged += rightMarkedWrong(asked, worked, marking);
        if (worked.made.empty()) {
            continue;
        }
        const Made& made = worked.made.front();
        const bool named = marking.slips.size() == 1 && finds(marking, made);
        for (Tally* tally : {&all, &tallies[static_cast<std::size_t>(kind)]}) {
            ++tally->made;
            tally->told += made.canBeTold ? 1 : 0;
            tally->named += made.canBeTold && named ? 1 : 0;
            tally->there += made.canBeTold && named && isAt(marking.slips[0], made) ? 1 : 0;
            tally->placed +=
                !made.canBeTold && marking.slips.size() == 1 && isAt(marking.slips[0], made) ? 1
                                                                                             : 0;
        }
    }
    for (std::size_t kind = 0; kind < kSlipKinds; ++kind) {
        print(kKindNames[kind], tallies[kind]);
    }
    print("all", all);
    CHECK(wronged == 0);
    // What is reached; the aim is 99 %.
    CHECK((!kTellsShares || all.named >= 0.96 * all.told));
}

TEST_CASE("Two slips, carried through, are found and named") {
    Tally all;
    int wronged = 0;
    for (int n = 0; n < kTrusses; ++n) {
        const std::uint64_t seed = 100000 + static_cast<std::uint64_t>(n);
        const Asked asked(randomDeterminateTruss(seed));
        const auto first = static_cast<SlipKind>(n % kSlipKinds);
        const auto second = static_cast<SlipKind>(n / kSlipKinds % kSlipKinds);
        const Worked worked = workWith(asked, {first, second}, seed);
        const Marking marking =
            MarkingScheme(asked.truss, asked.exercise, asked.key).mark(worked.sheet);
        wronged += rightMarkedWrong(asked, worked, marking);
        if (worked.made.size() < 2) {
            continue;
        }
        const bool told = worked.made[0].canBeTold && worked.made[1].canBeTold;
        ++all.made;
        all.told += told ? 1 : 0;
        all.there += told && marking.slips.size() == 2 && isAt(marking.slips[0], worked.made[0]) &&
                             isAt(marking.slips[1], worked.made[1])
                         ? 1
                         : 0;
        all.named += told && marking.slips.size() == 2 && finds(marking, worked.made[0]) &&
                             finds(marking, worked.made[1])
                         ? 1
                         : 0;
    }
    print("two", all);
    CHECK(wronged == 0);
    // What is reached; the aim is 95 %.
    CHECK((!kTellsShares || all.named >= 0.91 * all.told));
}
