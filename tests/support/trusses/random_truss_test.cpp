#include "support/trusses/random_truss.hpp"

#include "support/dense.hpp"
#include "support/trusses/strip_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>

using namespace gusset;
using namespace gusset::support;

TEST_CASE("a random truss is the same for the same seed") {
    CHECK(randomDeterminateTruss(Form::Complex, 7) == randomDeterminateTruss(Form::Complex, 7));
    CHECK_FALSE(randomDeterminateTruss(Form::Complex, 7) ==
                randomDeterminateTruss(Form::Complex, 8));
}

TEST_CASE("random trusses of every form are determinate, loaded, and not all alike") {
    for (int form = 0; form < 7; ++form) {
        std::size_t most = 0;
        std::size_t fewest = 1000;
        for (std::uint64_t seed = 0; seed < 50; ++seed) {
            const Truss truss = randomDeterminateTruss(static_cast<Form>(form), seed);
            CHECK(denseInverse(denseEquilibrium(truss)).has_value());
            CHECK_FALSE(truss.loads.empty());
            most = std::max(most, truss.members.size());
            fewest = std::min(fewest, truss.members.size());
        }
        CHECK(most > fewest);
    }
}

TEST_CASE("a random mechanism has lost as many members and supports as asked for") {
    const auto unknowns = [](const Truss& truss) { return denseEquilibrium(truss)[0].size(); };
    for (std::uint64_t seed = 0; seed < 50; ++seed) {
        CHECK(unknowns(randomMechanism(seed, 2)) + 2 == unknowns(randomDeterminateTruss(seed)));
    }
}

TEST_CASE("strips have the members that their webs call for") {
    CHECK(stripTruss(Web::Pratt, 6).members.size() == 25);
    CHECK(stripTruss(Web::Warren, 6).members.size() == 23);
    CHECK(stripTruss(Web::Double, 6).members.size() == 31);
    CHECK(stripTruss(Web::Pratt, panelsFor(Web::Pratt, 200)).members.size() >= 200);
    CHECK(denseInverse(denseEquilibrium(stripTruss(Web::Warren, 9))).has_value());
    CHECK(denseInverse(denseEquilibrium(stripTruss(Web::Pratt, 9))).has_value());
}
