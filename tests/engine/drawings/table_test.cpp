#include "exchange/drawings/drawing_file.hpp"
#include "exchange/drawings/truss_table.hpp"
#include "support/english.hpp"
#include "support/trusses/random_truss.hpp"
#include "support/trusses/rich_model.hpp"

#include <catch2/catch_test_macros.hpp>

#include <string>

using namespace gusset;
using namespace gusset::support;

namespace {

Traced readTable(const std::string& text, const DrawingWishes& wishes = {}) {
    const Outcome<Traced> traced = readDrawing(text, wishes);
    INFO((traced ? std::string() : english(traced.issues().front())));
    REQUIRE(traced);
    return traced.value();
}

bool tableTells(const Issues& issues, const std::string& words) {
    std::string all;
    for (const Issue& issue : issues) {
        all += english(issue) + "\n";
    }
    UNSCOPED_INFO(all);
    return all.find(words) != std::string::npos;
}

//      C        4 m wide, 1.5 m high
//     / \ .
//    A---B
void checkGable(const Truss& truss) {
    REQUIRE(truss.joints.size() == 3);
    CHECK(truss.joints[0] == Joint{"A", {0, 0}, {}});
    CHECK(truss.joints[1] == Joint{"B", {4, 0}, {}});
    CHECK(truss.joints[2] == Joint{"C", {2, 1.5}, {}});
    CHECK(truss.members.size() == 3);
    CHECK(truss.members[2].a == JointId{0});
    CHECK(truss.members[2].b == JointId{2});
}

} // namespace

TEST_CASE("Tables of joints and members are read as people write them") {
    checkGable(readTable("joint,x,y\nA,0,0\nB,4,0\nC,2,1.5\n\na,b\nA,B\nB,C\nA,C\n").truss);
    checkGable(readTable("\xEF\xBB\xBFlabel;x (m);y (m)\r\nA;0;0\r\nB;4;0\r\nC;2;1,5\r\n\r\n"
                         "from;to\r\nA;B\r\nB;C\r\nA;C\r\n")
                   .truss);
    checkGable(readTable("A\t0\t0\nB\t4\t0\nC\t2\t1.5\nA\tB\nB\tC\nA\tC\n").truss);
    checkGable(readTable("y [mm],x [mm],id\n0,0,A\n0,4000,B\n1500,2000,C\n"
                         "member,section\nAB,s\nB-C,s\nA\xE2\x80\x93"
                         "C,s\n")
                   .truss);
    checkGable(readTable("x,y\n0,0\n4,0\n2,1.5\na,b\nA,B\nB,C\nA,C\n").truss);
    checkGable(readTable("joint,x,y\nA,0,0\nB,400 cm,0\nC,2,1.5\na,b\nA,B\nB,C\nA,C\n").truss);
}

TEST_CASE("Labels of an old code page keep their letters apart") {
    const Truss truss = readTable("K\xE4;0;0\nK\xF6;1;0\nK\xE4;K\xF6\n").truss;
    REQUIRE(truss.joints.size() == 2);
    CHECK(truss.joints[0].label == "K\xC3\xA4");
    CHECK(truss.members.size() == 1);
}

TEST_CASE("A decimal comma with three places is one where no number has a point") {
    const Truss truss = readTable("A;0;0\nB;1,250;0\nA;B\n").truss;
    CHECK(truss.joints[1].at.x == 1.25);
}

TEST_CASE("What is wrong in a table is told with its row, and the rest is kept") {
    const Traced traced = readTable("joint,x,y\n"
                                    "A,0,0\n"
                                    "B,4,0\n"
                                    "C,2,1.5\n"
                                    "A,9,9\n"
                                    "D,two,0\n"
                                    "E,NaN,0\n"
                                    ",1,1\n"
                                    "F,4,0\n"
                                    "a,b\n"
                                    "A,B\n"
                                    "B,A\n"
                                    "B,C\n"
                                    "A,C\n"
                                    "A,K\n"
                                    "A,A\n"
                                    "B,F\n"
                                    "A,F\n");
    CHECK(traced.truss.joints.size() == 4);
    CHECK(traced.truss.members.size() == 4);
    CHECK(tableTells(traced.notes, "row 5: joint \"A\" is in row 2 already"));
    CHECK(tableTells(traced.notes, "row 6: joint \"D\" is left out: \"two\" is no coordinate"));
    CHECK(tableTells(traced.notes, "row 7: joint \"E\" is left out: \"NaN\" is no coordinate"));
    CHECK(tableTells(traced.notes, "row 8: joint \"\" is left out: its label"));
    CHECK(tableTells(traced.notes, "row 12: member \"B\" to \"A\" is in row 11 already"));
    CHECK(tableTells(traced.notes,
                     "row 15: member \"A\" to \"K\" is left out: there is no joint \"K\""));
    CHECK(tableTells(traced.notes, "row 16: member \"A\" to \"A\" is left out: it needs two"));
    CHECK(tableTells(traced.notes,
                     "row 17: member \"B\" to \"F\" is left out: its two joints lie on one spot"));
}

TEST_CASE("Units of headings are taken, contradictions and unknown ones told") {
    const Traced feet = readTable("joint,x (ft),y (ft)\nA,0,0\nB,12,0\na,b\nA,B\n");
    CHECK(feet.truss.units.length == LengthUnit::ft);
    const Traced both = readTable("joint,x (m),y (mm)\nA,0,0\nB,12,0\na,b\nA,B\n");
    CHECK(tableTells(both.notes, "x is headed in m and y in mm"));
    const Traced miles = readTable("joint,x (mi),y (mi)\nA,0,0\nB,12,0\na,b\nA,B\n");
    CHECK(tableTells(miles.notes, "the unit \"mi\" of a heading is not known"));
    CHECK(tableTells(miles.notes, "does not say its unit: m is taken"));
    const Traced large = readTable("joint,x,y\nA,0,0\nB,24000,0\na,b\nA,B\n");
    CHECK(tableTells(large.notes, "the truss would be 24000 m across"));
}

TEST_CASE("Tables without joints or members, and wishes for drawings, are refused with words") {
    const auto refused = [](const std::string& text, const std::string& words,
                            const DrawingWishes& wishes = {}) {
        const Outcome<Traced> traced = readDrawing(text, wishes);
        REQUIRE_FALSE(traced);
        CHECK(tableTells(traced.issues(), words));
    };
    refused("joint,x,y\nA,0,0\nB,1,0\n", "holds no members");
    refused("a,b\nA,B\n", "holds no joints");
    refused("Dear engineer\nplease find enclosed\n", "neither a DXF nor an SVG nor a table");
    refused("nothing of the kind", "neither a DXF nor an SVG nor a table");
    refused("A,0,0\nB,1,0\nA,B\n", "leave out tolerance, width and layers", {{}, 0.1, {}, {}});
}

TEST_CASE("A table that was written is read back as the same joints and members") {
    for (std::uint64_t seed = 1; seed <= 50; ++seed) {
        const Truss truss = randomDeterminateTruss(seed);
        const Truss back = readTable(trussTable(truss)).truss;
        CHECK(back.joints == truss.joints);
        CHECK(back.members == truss.members);
        CHECK(back.units.length == truss.units.length);
    }
    for (std::uint64_t seed = 1; seed <= 50; ++seed) { // with odd labels
        const Truss rich = randomRichTruss(seed);
        INFO("seed " << seed << "\n" << trussTable(rich));
        const Truss back = readTable(trussTable(rich), {rich.units.length, {}, {}, {}}).truss;
        CHECK(back.joints.size() == rich.joints.size());
        CHECK(back.members.size() == rich.members.size());
    }
}
