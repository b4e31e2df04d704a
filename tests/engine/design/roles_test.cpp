#include "core/statement.hpp"
#include "design/loading/outline.hpp"
#include "design/sizing/roles.hpp"

#include <catch2/catch_test_macros.hpp>

#include <map>
#include <vector>

using namespace gusset;

TEST_CASE("the members of a Howe roof are rafters, tie, posts and diagonals by where they lie") {
    FormSpec form{.kind = FormKind::HoweRoof, .panels = 6, .load = 0};
    const Truss truss = makeForm(englishPhrases(), form).value();
    std::map<MemberRole, int> counts;
    for (const MemberRole role : rolesOf(truss)) {
        ++counts[role];
    }
    CHECK(counts[MemberRole::UpperChord] == 6);
    CHECK(counts[MemberRole::LowerChord] == 6);
    CHECK(counts[MemberRole::Post] == 5);
    CHECK(counts[MemberRole::Diagonal] == 4);
}

TEST_CASE(
    "the tie under a ridge is a lower chord, though nothing but the ridge is above its middle") {
    Truss triangle;
    triangle.joints = {{"A", {0, 0}, {}}, {"B", {8, 0}, {}}, {"C", {4, 3}, {}}};
    triangle.members = {
        {JointId{0}, JointId{1}, ""}, {JointId{0}, JointId{2}, ""}, {JointId{2}, JointId{1}, ""}};
    CHECK(rolesOf(triangle) == std::vector<MemberRole>{MemberRole::LowerChord,
                                                       MemberRole::UpperChord,
                                                       MemberRole::UpperChord});
}
