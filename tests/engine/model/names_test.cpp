// What a name may be: something that a person can see, and distinguish from every other name.
#include "exchange/files/model_file.hpp"
#include "exchange/links/link.hpp"
#include "model/edit/edit.hpp"
#include "model/validate/characters.hpp"
#include "model/validate/findings.hpp"
#include "model/validate/name_look.hpp"
#include "model/validate/validate.hpp"
#include "report/results/results_text.hpp"
#include "report/text/html.hpp"
#include "support/english.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <functional>

using namespace gusset;

namespace {

std::string firstError(const Truss& truss) {
    const Issues errors = errorsOf(truss);
    REQUIRE_FALSE(errors.empty());
    return support::english(errors.front());
}

Truss gableWith(const std::string& label) {
    Truss truss = support::gable();
    truss.joints[2].label = label;
    return truss;
}

// A gable as an earlier version may have written it: C is named by `label`, in JSON's own escapes.
std::string fileWith(const std::string& label, const std::string& rest = "") {
    return R"({"gusset":1,"joints":[{"id":"A","x":0,"y":0},{"id":"B","x":8,"y":0},{"id":")" +
           label + R"(","x":4,"y":3}],"members":[{"a":"A","b":"B"},{"a":"A","b":")" + label +
           R"("},{"a":"B","b":")" + label + R"("}])" + rest + "}";
}

template <class Named>
Named named(const std::string& id) {
    Named it;
    it.id = id;
    return it;
}

} // namespace

// Each of these draws nothing in any typeface: Unicode Character Database, general categories Cc,
// Zl, Zp, property Default_Ignorable_Code_Point, and the noncharacters (Unicode Standard, 23.7).
TEST_CASE("A name has no character in it that can't be seen") {
    for (const char* hidden :
         {"\u0001",     "\u0085",     "\u00AD",    "\u034F", "\u061C", "\u115F", "\u17B4",
          "\u180E",     "\u200B",     "\u200E",    "\u200F", "\u2028", "\u2029", "\u202A",
          "\u202E",     "\u2060",     "\u2064",    "\u2066", "\u2069", "\u206F", "\u3164",
          "\uFDD0",     "\uFEFF",     "\uFFA0",    "\uFFF9", "\uFFFE", "\uFFFF", "\U000E0001",
          "\U000E0041", "\U0001FFFE", "\U0010FFFF"}) {
        for (const std::string& name : {std::string("A") + hidden, std::string(hidden)}) {
            CAPTURE(spelled(name));
            CHECK(faultOfName(name, kLongestLabel));
            CHECK_FALSE(errorsOf(gableWith(name)).empty());
        }
    }
    CHECK(faultOfName(std::string("A\0B", 3), kLongestLabel));
    CHECK(firstError(gableWith("C\u200B")) ==
          "joints[2].id: this name has a character in it that can't be seen, U+200B: type it anew");
}

TEST_CASE("A name shows something: spaces and marks alone do not") {
    for (const char* bare :
         {" ", "   ", "\u00A0", "\u2003", "\u3000", "\u2800", "\u0301", " \u0308 "}) {
        CHECK(support::english(faultOfName(bare, kLongestLabel).value_or(Statement())) ==
              "has nothing in it that can be seen: give it a letter, a figure or a sign");
    }
    for (const char* seen : {"A", "1", "'", "α", "桁", "नोड", "A 1", "é", "🌉"}) {
        CHECK_FALSE(faultOfName(seen, kLongestLabel));
    }
}

// Persian writes "I want" with U+200C between its two parts, Hindi has U+200D in a half letter, and
// the second heart is made red by U+FE0F: without these the words are others.
TEST_CASE("Joiners and variation selectors stay where they form letters and signs") {
    for (const char* name : {"می\u200Cخواهم", "क्\u200Dष", "❤\uFE0F", "👩\u200D🔧"}) {
        CHECK_FALSE(faultOfName(name, kLongestLabel));
        CHECK(withoutHidden(name) == name);
    }
    for (const char* name :
         {"A\u200D", "A\u200C\u200C", "\uFE0F", "é\uFE0F", "A\uFE01", " \u200D"}) {
        CHECK(faultOfName(name, kLongestLabel));
    }
    CHECK(withoutHidden("A\u200D\u200D\uFE0FB") == "AB");
}

// Pairs after UAX #15 (Unicode Normalization Forms), figures 3 and 4, and the decompositions of
// UnicodeData.txt.
TEST_CASE("Names that look the same have one look, others have their own") {
    CHECK(lookOf("\u00C5") == lookOf("A\u030A"));       // Å
    CHECK(lookOf("\u212B") == lookOf("\u00C5"));        // the ångström sign
    CHECK(lookOf("\u2126") == lookOf("\u03A9"));        // the ohm sign
    CHECK(lookOf("\u1E69") == lookOf("s\u0323\u0307")); // ṩ, marks in both orders
    CHECK(lookOf("\u1E69") == lookOf("s\u0307\u0323"));
    CHECK(lookOf("\u1E0B\u0323") == lookOf("\u1E0D\u0307"));
    CHECK(lookOf("\u1EC7") == lookOf("e\u0302\u0323"));      // ệ
    CHECK(lookOf("\uAC01") == lookOf("\u1100\u1161\u11A8")); // 각
    CHECK(lookOf("\u304C") == lookOf("\u304B\u3099"));       // が
    CHECK(lookOf("\u0439") == lookOf("\u0438\u0306"));       // й
    CHECK(lookOf("A\u200B") == lookOf("A"));
    CHECK(lookOf(" A\u00A0 1 ") == lookOf("A 1"));
    CHECK(lookOf("A1") != lookOf("A 1"));
    CHECK(lookOf("e\u0301") != lookOf("e"));
    CHECK(lookOf("e\u0301\u0300") != lookOf("e\u0300\u0301")); // one above the other: not the same
    CHECK(lookOf("\u0410") != lookOf("A"));
    CHECK(shapeOf("\u0410") == shapeOf("A")); // Cyrillic
    CHECK(shapeOf("\u0391") == shapeOf("A")); // Greek
    CHECK(shapeOf("\uFF21") == shapeOf("A")); // as wide as an ideograph
    CHECK(shapeOf("\u0414") != shapeOf("D"));
}

TEST_CASE("Names that look the same are refused in words, in every list") {
    Truss truss = gableWith("\u00C9");
    truss.joints[1].label = "E\u0301";
    CHECK(firstError(truss) ==
          "joints[2].id: \"\u00C9\" looks the same as \"E\u0301\", which is written "
          "in other characters: give each its own name");
    const auto refused = [](const std::function<void(Truss&)>& change) {
        Truss sections = support::gable();
        change(sections);
        return firstError(sections).find("looks the same as") != std::string::npos;
    };
    const std::string one = "\u00E9";
    const std::string two = "e\u0301";
    CHECK(refused([&](Truss& it) { it.materials = {named<Material>(one), named<Material>(two)}; }));
    CHECK(refused([&](Truss& it) { it.sections = {named<Section>(one), named<Section>(two)}; }));
    CHECK(refused([&](Truss& it) {
        it.combinations = {named<Combination>(one), named<Combination>(two)};
    }));
    CHECK(refused([&](Truss& it) {
        it.loads.push_back(it.loads.front());
        it.loads[0].caseId = one;
        it.loads[1].caseId = two;
    }));
    CHECK(refused([&](Truss& it) {
        it.loads[0].caseId = one;
        it.combinations = {named<Combination>("k")};
        it.combinations[0].factors = {{two, 1.0}};
    }));
}

TEST_CASE("One case may be named by many loads") {
    Truss truss = support::gable();
    truss.loads.push_back(truss.loads.front());
    truss.loads[0].caseId = truss.loads[1].caseId = "\u00E9";
    truss.combinations = {named<Combination>("k")};
    truss.combinations[0].factors = {{"\u00E9", 1.0}};
    CHECK(errorsOf(truss).empty());
}

TEST_CASE("Names in letters of several alphabets that look alike are noted, not refused") {
    Truss truss = gableWith("\u0410");
    CHECK(errorsOf(truss).empty());
    const Issues notes = validate(truss).notes;
    REQUIRE(notes.size() == 1);
    CHECK(notes[0].at == "joints[2].id");
    CHECK(support::english(notes[0].says) ==
          "\"\u0410\" looks like \"A\" of joints[0] and is written in another "
          "alphabet: rename one of the two");
    CHECK(validate(gableWith("\u0414")).notes.empty());
}

TEST_CASE("An edit that gives a name nobody can see, or tell from another, is refused") {
    const Truss truss = support::gable();
    for (const char* label : {"", " ", "\u200B", "B\u200B", "B\u00AD", "\u202EB", "B\uFFFF"}) {
        CHECK_FALSE(apply(truss, RenameJoint{JointId{2}, label}));
    }
    CHECK_FALSE(apply(truss, SetTitle{"roof\u202Efoor"}));
    CHECK(apply(truss, SetTitle{""}));
    CHECK(apply(truss, RenameJoint{JointId{2}, "Ü"}));
}

TEST_CASE("A file with hidden characters in its names opens without them, and says so") {
    const Outcome<Reading> reading = readModel(fileWith("C\\u200b"));
    REQUIRE(reading);
    CHECK(reading.value().truss.joints[2].label == "C");
    CHECK(reading.value().truss.members.size() == 3);
    REQUIRE(reading.value().notes.size() == 1);
    CHECK(reading.value().notes[0].at == "joints[2].id");
    CHECK(support::english(reading.value().notes[0].says) ==
          "the name \"C[U+200B]\" has characters in it that can't be seen: it is read as \"C\"");
}

TEST_CASE("A name that shows nothing becomes the next one that is free") {
    for (const char* bare : {" ", "\\u200b", "\\u3164", "\\uffff"}) {
        const Outcome<Reading> reading = readModel(fileWith(bare));
        REQUIRE(reading);
        CHECK(reading.value().truss.joints[2].label == "C");
        CHECK(reading.value().notes.size() == 1);
    }
}

TEST_CASE("What refers to a cleaned name still does") {
    const Outcome<Reading> reading = readModel(fileWith(
        "C",
        R"(,"title":"roof\u200b","materials":[{"id":"steel\u00ad","E":210000}],)"
        R"("sections":[{"id":"\u2060","material":"steel\u00ad","A":1000}],)"
        R"("supports":[{"joint":"A","kind":"pin"},{"joint":"B","kind":"pin"}],)"
        R"("loads":[{"joint":"C","fy":-1,"case":"snow\ufeff"},{"joint":"C","fy":-2,"case":" "}],)"
        R"("combinations":[{"id":"k\u200d","factors":{"snow\ufeff":1.5," ":2}}],)"
        R"("moving":[{"id":"\u200e","path":["A","B"],"axles":[{"at":0,"force":-1}]}])"));
    REQUIRE(reading);
    const Truss& truss = reading.value().truss;
    CHECK(truss.title == "roof");
    CHECK(truss.materials[0].id == "steel");
    CHECK(truss.sections[0].id == "section 1");
    CHECK(truss.sections[0].material == "steel");
    CHECK(truss.loads[0].caseId == "snow");
    CHECK(truss.loads[1].caseId == "case 1");
    CHECK(truss.combinations[0].id == "k");
    CHECK(truss.combinations[0].factors[0].first == "snow");
    CHECK(truss.combinations[0].factors[1].first == "case 1");
    CHECK(truss.moving[0].id == "moving load 1");
    CHECK(reading.value().notes.size() == 7);
    CHECK(errorsOf(truss).empty());
}

TEST_CASE("Where a cleaned name would look like another, the file is refused with both") {
    const Outcome<Reading> joints = readModel(fileWith("A\\u200b"));
    REQUIRE_FALSE(joints);
    CHECK(joints.issues()[0].at == "joints[2].id");
    CHECK(support::english(joints.issues()[0].says) ==
          "\"A[U+200B]\" looks the same as \"A\": give each its own name");
    CHECK_FALSE(readModel(fileWith("C", R"(,"sections":[{"id":"t"},{"id":"t\u00ad"}])")));
    CHECK_FALSE(readModel(fileWith(
        "C",
        R"(,"loads":[{"joint":"C","fy":-1,"case":"w"},{"joint":"C","fy":-2,"case":"w\u200b"}])")));
}

TEST_CASE("A link that holds such names opens as a file does") {
    Truss truss = support::gable();
    truss.joints[2].label = "C\u200B\uFFFE"; // as an earlier version let it be
    const Outcome<Reading> reading = readLink(writeLink(truss));
    REQUIRE(reading);
    CHECK(reading.value().truss.joints[2].label == "C");
    CHECK(reading.value().notes.size() == 1);
}

TEST_CASE("What is read is sound, and is read the same when it was written again") {
    for (const char* label : {"C\\u200b", " ", "\\ufffe", "C\\ufe0f\\u200d", "C "}) {
        const Outcome<Reading> reading = readModel(fileWith(label));
        REQUIRE(reading);
        const Outcome<Reading> again = readModel(writeModel(reading.value().truss));
        REQUIRE(again);
        CHECK(again.value().notes.empty());
        CHECK(again.value().truss == reading.value().truss);
    }
}

// XML 1.0, production 2, leaves out controls, surrogates, U+FFFE and U+FFFF.
TEST_CASE("Nothing that XML forbids gets through the escaper") {
    CHECK(escapeHtml("a\uFFFE\uFFFFb") == "a\uFFFD\uFFFDb");
    CHECK(escapeHtml("a\x01\x7F\u0085 \t\n") == "a\uFFFD\uFFFD\uFFFD \t\n");
    CHECK(escapeHtml("\xED\xA0\x80\xFF") == "\uFFFD\uFFFD\uFFFD\uFFFD");
    CHECK(escapeHtml("<é桁🌉&'\">") == "&lt;é桁🌉&amp;&#39;&quot;&gt;");
}
