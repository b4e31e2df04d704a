#include "exchange/drawings/drawing_file.hpp"
#include "exchange/drawings/dxf_reader.hpp"
#include "exchange/drawings/dxf_writer.hpp"
#include "exchange/drawings/outline.hpp"
#include "model/forms/forms.hpp"
#include "support/drawing/dxf_rules.hpp"
#include "support/drawing/written_drawing.hpp"
#include "support/english.hpp"
#include "support/trusses/random_truss.hpp"
#include "support/trusses/rich_model.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>
#include <cstdio>
#include <string>

using namespace gusset;
using namespace gusset::support;

namespace {

LinesFound readLines(const std::string& text, const std::vector<std::string>& layers = {}) {
    const Outcome<LinesFound> found = readDxf(text, layers);
    INFO((found ? std::string() : english(found.issues().front())));
    REQUIRE(found);
    return found.value();
}

std::string told(const Issues& issues) {
    std::string all;
    for (const Issue& issue : issues) {
        all += english(issue) + "\n";
    }
    return all;
}

bool tells(const Issues& issues, const std::string& words) {
    const std::string all = told(issues);
    UNSCOPED_INFO(all);
    return all.find(words) != std::string::npos;
}

std::string refusedWith(const std::string& text) {
    const Outcome<Traced> traced = readDrawing(text, {});
    REQUIRE_FALSE(traced);
    return told(traced.issues());
}

bool hasWords(const std::string& text, const std::string& words) {
    UNSCOPED_INFO(text);
    return text.find(words) != std::string::npos;
}

const std::string kInMetres = "0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n6\n0\nENDSEC\n";

} // namespace

TEST_CASE("Lines and straight segments of polylines are read, closed ones to their beginning") {
    const LinesFound found = readLines(
        dxfOf(dxfLine(0, 0, 4, 0) +
              "0\nLWPOLYLINE\n8\n0\n90\n3\n70\n1\n10\n0\n20\n0\n10\n4\n20\n0\n10\n2\n20\n3\n"
              "0\nPOLYLINE\n8\n0\n66\n1\n70\n0\n0\nVERTEX\n10\n5\n20\n5\n0\nVERTEX\n10\n6\n20\n5\n0"
              "\nSEQEND\n"));
    REQUIRE(found.lines.size() == 5);
    CHECK(found.lines[0] == DrawnLine{{0, 0}, {4, 0}});
    CHECK(found.lines[2] == DrawnLine{{4, 0}, {2, 3}});
    CHECK(found.lines[3] == DrawnLine{{2, 3}, {0, 0}});
    CHECK(found.lines[4] == DrawnLine{{5, 5}, {6, 5}});
}

TEST_CASE("CR LF, CR, a byte order mark, comments and spaces around codes make no difference") {
    const std::string plain = dxfOf(dxfLine(0, 0, 4, 0) + dxfLine(4, 0, 2, 3));
    const Outcome<Traced> expected = readDrawing(plain, {});
    REQUIRE(expected);
    for (const std::string end : {"\r\n", "\r", "\n"}) {
        std::string text = "\xEF\xBB\xBF"
                           "999" +
                           end + "drawn by hand" + end;
        for (const char c : plain) {
            text += c == '\n' ? end : c == '0' ? "0" : std::string(1, c);
        }
        const Outcome<Traced> traced = readDrawing(text, {});
        REQUIRE(traced);
        CHECK(traced.value().truss == expected.value().truss);
    }
    CHECK(readLines("  0\nSECTION\n  2\nENTITIES\n  0\nLINE\n 10\n  1.5 \n 20\n0\n 11\n2\n "
                    "21\n0\n0\nENDSEC\n0\nEOF\n")
              .lines.front() == DrawnLine{{1.5, 0}, {2, 0}});
}

TEST_CASE("What is no straight line in the plane is counted and told") {
    const LinesFound found = readLines(dxfOf(
        dxfLine(0, 0, 4, 0) + "0\nARC\n8\n0\n10\n0\n20\n0\n40\n1\n50\n0\n51\n90\n" +
        "0\nARC\n8\n0\n" + "0\nTEXT\n8\n0\n1\nLINE\n" + "0\nDIMENSION\n8\n0\n" +
        "0\nHATCH\n8\n0\n" + "0\nLINE\n8\n0\n10\n0\n20\n0\n30\n5\n11\n1\n21\n0\n31\n5\n" +
        "0\nLINE\n8\n0\n67\n1\n10\n0\n20\n0\n11\n1\n21\n0\n" +
        "0\nLWPOLYLINE\n8\n0\n70\n0\n10\n0\n20\n0\n42\n1\n10\n1\n20\n0\n10\n2\n20\n0\n" +
        "0\nPOLYLINE\n8\n0\n70\n64\n0\nVERTEX\n10\n0\n20\n0\n0\nSEQEND\n" + "0\nWIPEOUT\n8\n0\n"));
    CHECK(found.lines.size() == 2); // the line, and the second segment behind the bulge
    CHECK(tells(found.notes, "ARC: 2 passed over, as only straight lines become members"));
    CHECK(tells(found.notes, "HATCH: 1 passed over, as only straight"));
    CHECK(tells(found.notes, "TEXT: 1 passed over, as texts and dimensions"));
    CHECK(tells(found.notes, "DIMENSION: 1 passed over, as texts and dimensions"));
    CHECK(tells(found.notes, "LINE: 1 passed over for leaving the plane (z is not 0)"));
    CHECK(tells(found.notes, "LINE: 1 passed over for being on the paper"));
    CHECK(tells(found.notes, "LWPOLYLINE: 1 passed over, as only straight lines"));
    CHECK(tells(found.notes, "POLYLINE: 1 passed over for leaving the plane"));
    CHECK(tells(found.notes, "WIPEOUT: 1 passed over, as only lines and marks"));
}

TEST_CASE("Points and inserted blocks mark joints, and the insides of blocks are passed over") {
    const LinesFound found = readLines(
        dxfOf("0\nPOINT\n8\n0\n10\n1\n20\n2\n0\nINSERT\n8\n0\n2\nNODE\n66\n1\n10\n3\n20\n4\n"
              "0\nATTRIB\n8\n0\n1\nA\n0\nSEQEND\n" +
                  dxfLine(1, 2, 3, 4),
              "0\nSECTION\n2\nBLOCKS\n0\nBLOCK\n2\nNODE\n" + dxfLine(0, 0, 1, 1) +
                  "0\nENDBLK\n0\nENDSEC\n"));
    REQUIRE(found.marks.size() == 2);
    CHECK(found.marks[1] == Vec2{3, 4});
    CHECK(found.lines.size() == 1);
    CHECK(tells(found.notes, "LINE: 1 passed over within blocks"));
}

TEST_CASE("A polyline that faces backwards is mirrored, one that faces sideways leaves the plane") {
    const std::string corners = "10\n1\n20\n0\n10\n2\n20\n3\n";
    const LinesFound back =
        readLines(dxfOf("0\nLWPOLYLINE\n8\n0\n70\n0\n" + corners + "210\n0\n220\n0\n230\n-1\n"));
    CHECK(back.lines.front() == DrawnLine{{-1, 0}, {-2, 3}});
    const LinesFound side =
        readLines(dxfOf("0\nLWPOLYLINE\n8\n0\n70\n0\n" + corners + "210\n0\n220\n-1\n230\n0\n"));
    CHECK(side.lines.empty());
}

TEST_CASE("Layers are chosen by name, and those that are off are left out unless named") {
    const std::string text = dxfOf(
        dxfLine(0, 0, 4, 0, "Steel") + dxfLine(4, 0, 2, 3, "STEEL") + dxfLine(9, 9, 8, 8, "Grid"),
        "0\nSECTION\n2\nTABLES\n0\nTABLE\n2\nLAYER\n70\n1\n0\nLAYER\n2\nGrid\n70\n0\n62\n-7\n"
        "0\nENDTAB\n0\nENDSEC\n");
    const LinesFound shown = readLines(text);
    CHECK(shown.lines.size() == 2);
    CHECK(tells(shown.notes, "layer \"Grid\": is switched off, so that lines are left out: 1"));
    CHECK(tells(shown.notes, "layer \"Steel\": lines read: 2"));
    CHECK(readLines(text, {"grid"}).lines.size() == 1);
    CHECK(readLines(text, {"grid", "steel"}).lines.size() == 3);
    const Outcome<LinesFound> none = readDxf(text, {"Chords"});
    REQUIRE_FALSE(none);
    CHECK(tells(none.issues(), "has no layer \"Chords\": it has Grid, Steel"));
}

TEST_CASE("Names of layers are read in UTF-8, in ISO 8859-1 and by their numbers") {
    for (const char* name : {"St\xC3\xA4"
                             "be",
                             "St\xE4"
                             "be",
                             "St\\U+00E4be"}) {
        CHECK(readLines(dxfOf(dxfLine(0, 0, 1, 0, name)), {"St\xC3\xA4"
                                                           "be"})
                  .lines.size() == 1);
    }
}

TEST_CASE("The unit of the header is taken, and one that no truss is drawn in is told") {
    CHECK(readLines(dxfOf(dxfLine(0, 0, 1, 0), kInMetres)).unit == LengthUnit::m);
    const LinesFound miles = readLines(
        dxfOf(dxfLine(0, 0, 1, 0), "0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n3\n0\nENDSEC\n"));
    CHECK_FALSE(miles.unit);
    CHECK(tells(miles.notes, "($INSUNITS 3)"));
}

TEST_CASE("What is wrong with a DXF is told with its line, and the rest is read") {
    const LinesFound found = readLines(
        dxfOf(dxfLine(0, 0, 4, 0) + "0\nLINE\n8\n0\n10\nNaN\n20\n0\n11\n1\n21\n1\n" +
              "0\nLINE\n8\n0\n10\n1e300\n20\n0\n11\n1\n21\n1\n" + "0\nLINE\n8\n0\n10\n1\n20\n0\n"));
    CHECK(found.lines.size() == 1);
    CHECK(tells(found.notes, "line 21: this LINE is left out: \"NaN\" is no coordinate"));
    CHECK(tells(found.notes, "line 33: this LINE is left out: \"1e300\" is no coordinate"));
    CHECK(tells(found.notes, "line 41: this LINE is left out: it lacks coordinates"));

    std::string cut = dxfOf(dxfLine(0, 0, 4, 0) + dxfLine(4, 0, 2, 3));
    cut.resize(cut.find("21\n3\n"));
    const LinesFound before = readLines(cut);
    CHECK(before.lines.size() == 1);
    CHECK(tells(before.notes, "ends without its last line, EOF"));

    const Outcome<LinesFound> shifted = readDxf("0\nSECTION\n2\nENTITIES\nLINE\n0\n", {});
    REQUIRE_FALSE(shifted);
    CHECK(tells(shifted.issues(), "line 5: \"LINE\" stands where a group code belongs"));
}

TEST_CASE("Files of other kinds are refused with what to do") {
    CHECK(hasWords(refusedWith(""), "is empty"));
    CHECK(hasWords(refusedWith("Any Binary DXF\r\n\x1A"), "save it as an ASCII DXF"));
    CHECK(hasWords(refusedWith(std::string("AC1032\0\0\0", 9)), "is a DWG"));
    CHECK(hasWords(refusedWith("%PDF-1.7\n"), "neither a DXF nor an SVG nor a table"));
    CHECK(hasWords(refusedWith("{\"gusset\":1}"), "neither a DXF nor an SVG nor a table"));
    CHECK(hasWords(refusedWith(std::string("0\0\n\0S\0", 6)), "UTF-16"));
    CHECK(hasWords(refusedWith("0\nSECTION\n2\nHEADER\n0\nENDSEC\n0\nEOF\n"), "no ENTITIES"));
    CHECK(hasWords(refusedWith(std::string(kLargestDrawing + 1, 'x')), "larger than 8 MB"));
    // only an arc: why nothing is left is told as well
    const std::string arcs =
        refusedWith(dxfOf("0\nARC\n8\n0\n10\n0\n20\n0\n40\n1\n50\n0\n51\n9\n"));
    CHECK(hasWords(arcs, "no straight lines"));
    CHECK(hasWords(arcs, "ARC: 1 passed over"));
}

TEST_CASE("Written files keep the rules of release 12, and are read back as the same truss") {
    int trusses = 0;
    std::size_t entities = 0;
    for (std::uint64_t seed = 1; seed <= 100; ++seed) {
        Truss truss = randomDeterminateTruss(seed);
        if (clearanceOf(truss) < 0.05) {
            continue;
        }
        addRandomLoads(truss, seed);
        ++trusses;
        for (const LengthUnit unit : {LengthUnit::m, LengthUnit::mm}) {
            const std::string text = writeDxf(englishPhrases(), truss, unit);
            const ReadDxf read = readByTheRules(text);
            INFO("seed " << seed << (read.faults.empty() ? "" : ": " + read.faults.front()));
            CHECK(read.faults.empty());
            const auto count = [&](const char* kind) {
                return static_cast<std::size_t>(
                    std::count_if(read.entities.begin(), read.entities.end(),
                                  [&](const ReadEntity& it) { return it.kind == kind; }));
            };
            entities += read.entities.size();
            CHECK(count("LINE") == truss.members.size());
            CHECK(count("INSERT") == truss.joints.size());
            CHECK(count("TEXT") ==
                  truss.joints.size() + truss.supports.size() + truss.loads.size());
            DrawingWishes wishes;
            wishes.tolerance = unit == LengthUnit::mm ? 1 : 0.001;
            const Outcome<Traced> traced = readDrawing(text, wishes);
            REQUIRE(traced);
            CHECK(traced.value().truss.units.length == LengthUnit::m);
            CHECK(differenceOf(asDrawn(truss), traced.value().truss, {}, 0) == "");
        }
    }
    std::printf(
        "DXF R12 written, judged by another reader and read back alike: %d trusses in m and "
        "in mm, %zu entities\n",
        trusses, entities);
    CHECK(trusses > 50);
}

TEST_CASE(
    "Members are on layers by their place in the truss, or by section where that can't be told") {
    Truss roof = struttedRoof(); // outside: two rafters of two members each, tie of two
    const std::optional<std::vector<bool>> outline = outlineOf(roof);
    REQUIRE(outline);
    CHECK(std::count(outline->begin(), outline->end(), true) == 6);
    const ReadDxf read = readByTheRules(writeDxf(englishPhrases(), roof, LengthUnit::m));
    const auto onLayer = [](const ReadDxf& dxf, const std::string& layer) {
        return std::count_if(dxf.entities.begin(), dxf.entities.end(), [&](const ReadEntity& it) {
            return it.kind == "LINE" && it.text(8) == layer;
        });
    };
    CHECK(onLayer(read, "OUTLINE") == 6);
    CHECK(onLayer(read, "WEB") == static_cast<long>(roof.members.size()) - 6);

    Truss crossed;
    joint(crossed, "A", 0, 0);
    joint(crossed, "B", 2, 0);
    joint(crossed, "C", 2, 2);
    joint(crossed, "D", 0, 2);
    members(crossed, {"AB", "BC", "CD", "DA", "AC", "BD"});
    crossed.members[4].section = "chs 60/3";
    crossed.members[5].section = "chs 60.3";
    CHECK_FALSE(outlineOf(crossed));
    const ReadDxf other = readByTheRules(writeDxf(englishPhrases(), crossed, LengthUnit::m));
    CHECK(other.faults.empty());
    CHECK(onLayer(other, "MEMBERS") == 4);
    CHECK(onLayer(other, "SECTION_CHS_60_3") == 1);
    CHECK(onLayer(other, "SECTION_CHS_60_3_2") == 1);
}

TEST_CASE("A tree of members is its own outline, walked there and back") {
    Truss tree;
    joint(tree, "A", 0, 0);
    joint(tree, "B", 1, 0);
    joint(tree, "C", 2, 1);
    joint(tree, "D", 2, -1);
    members(tree, {"AB", "BC", "BD"});
    const auto outline = outlineOf(tree);
    REQUIRE(outline);
    CHECK(std::count(outline->begin(), outline->end(), true) == 3);
}

TEST_CASE("A model without joints is written as a drawing without entities") {
    Truss empty;
    empty.loads.push_back({SelfWeight{}, {}, {}});
    const ReadDxf read = readByTheRules(writeDxf(englishPhrases(), empty, LengthUnit::m));
    CHECK(read.faults.empty());
    CHECK(read.entities.empty());
}

TEST_CASE("Loads, supports and odd labels are lettered as release 12 can") {
    for (std::uint64_t seed = 1; seed <= 100; ++seed) {
        const ReadDxf read =
            readByTheRules(writeDxf(englishPhrases(), randomRichTruss(seed), LengthUnit::mm));
        INFO("seed " << seed << (read.faults.empty() ? "" : ": " + read.faults.front()));
        CHECK(read.faults.empty());
    }
    Truss odd = gable();
    odd.joints[0].label = "\xC3\xA4%d^";
    const ReadDxf letters = readByTheRules(writeDxf(englishPhrases(), odd, LengthUnit::m));
    CHECK(letters.faults.empty());
    const auto labelled = [&](const std::string& text) {
        return std::any_of(letters.entities.begin(), letters.entities.end(),
                           [&](const ReadEntity& it) { return it.text(1) == text; });
    };
    CHECK(labelled("\\U+00E4%%%d^ "));
    CHECK(labelled("roller, reaction at 90%%d"));
    CHECK(labelled("Fx = 0 kN, Fy = -24 kN"));
}
