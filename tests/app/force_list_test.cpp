#include "app/force_list.hpp"
#include "app/update.hpp"
#include "statics/largest.hpp"
#include "support/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <string>

namespace gusset {
namespace {

// The roof of small_truss: AB 3.75 kN in tension, BC and CA 6.25 kN in compression (tests/browser/
// drawing.test.mjs derives them).
struct Listed {
    AppState state = startWith(support::roof());
    Derived derived;

    std::string names() {
        derive(state, derived);
        std::string all;
        for (const int place : listedForces(state, derived)) {
            all += derived.forces[static_cast<std::size_t>(place)].name + " ";
        }
        return all;
    }
};

TEST_CASE("Member forces are listed as drawn, by name, by size and from tension to compression") {
    Listed listed;
    CHECK(listed.names() == "AB BC CA ");
    listed.state.notebook.forceOrder = ForceOrder::BySize;
    CHECK(listed.names() == "BC CA AB ");
    listed.state.notebook.forceOrder = ForceOrder::TensionFirst;
    CHECK(listed.names().starts_with("AB "));
    listed.state.truss.joints[0].label = "Z";
    listed.state.notebook.forceOrder = ForceOrder::ByName;
    ++listed.state.revision;
    CHECK(listed.names() == "BC CZ ZB ");
}

TEST_CASE(
    "Only those in tension, in compression, without force, or picked on the board are listed") {
    Listed listed;
    listed.state.notebook.forceFilter = ForceFilter::Tension;
    CHECK(listed.names() == "AB ");
    listed.state.notebook.forceFilter = ForceFilter::Compression;
    CHECK(listed.names() == "BC CA ");
    listed.state.notebook.forceFilter = ForceFilter::Zero;
    CHECK(listed.names().empty());
    listed.state.notebook.forceFilter = ForceFilter::Picked;
    CHECK(listed.names().empty());
    listed.state.selection.members = {MemberId{2}};
    CHECK(listed.names() == "CA ");
}

TEST_CASE("The largest tension and compression are of the first of equal members; unloaded there "
          "is none") {
    Listed listed;
    (void)listed.names();
    const LargestForces largest = largestForces(listed.derived.solution);
    CHECK(largest.tension == MemberId{0});
    CHECK(largest.compression == MemberId{1}); // BC before CA, which carries as much
    Truss bare = support::roof();
    bare.loads.clear();
    Listed unloaded{startWith(bare), {}};
    (void)unloaded.names();
    CHECK_FALSE(largestForces(unloaded.derived.solution).tension.valid());
    CHECK_FALSE(largestForces(unloaded.derived.solution).compression.valid());
}

} // namespace
} // namespace gusset
