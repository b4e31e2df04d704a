#include "support/mutation.hpp"

#include <catch2/catch_test_macros.hpp>

using namespace gusset;

TEST_CASE("Twenty thousand damaged links and files open soundly or are refused with words") {
    support::Random random(20'000);
    support::FuzzTally tally;
    for (int i = 0; i < 20'000; ++i) {
        support::fuzzOnce(random, tally);
    }
    for (const std::string& broken : tally.broken) {
        FAIL_CHECK(broken);
    }
    CHECK(tally.opened + tally.refused == 20'000);
    CHECK(tally.opened > 1'000); // not all damaged texts are unreadable
    CHECK(tally.refused > 10'000);
}
