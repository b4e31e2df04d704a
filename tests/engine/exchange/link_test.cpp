#include "exchange/links/link.hpp"

#include "core/utf8.hpp"
#include "exchange/links/base64url.hpp"
#include "exchange/links/compact_model.hpp"
#include "exchange/links/deflated.hpp"
#include "exchange/links/link_text.hpp"
#include "support/english.hpp"
#include "support/files.hpp"
#include "support/random.hpp"
#include "support/trusses/rich_model.hpp"
#include "support/trusses/strip_truss.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_string.hpp>

#include <cctype>
#include <string>

using namespace gusset;
using Catch::Matchers::ContainsSubstring;

namespace {

Truss footbridge() {
    return readModel(support::repositoryFile("site/examples/footbridge.json")).value().truss;
}

std::string linkFault(const std::string& link) {
    const Outcome<Reading> read = readLink(link);
    REQUIRE_FALSE(read.ok());
    return support::english(read.issues().front().says);
}

IssueCode linkCode(const std::string& link) {
    const Outcome<Reading> read = readLink(link);
    REQUIRE_FALSE(read.ok());
    return read.issues().front().code;
}

bool opens(const std::string& link, const Truss& truss) {
    const Outcome<Reading> read = readLink(link);
    INFO(link << ": " << (read ? std::string() : support::english(read.issues().front().says)));
    CHECK(read.ok());
    return read.ok() && read.value().truss == truss;
}

// A link with correct length and checksum around any text: what a forger can make.
std::string forged(const std::string& content) { return sealedLink(deflated(content)); }

} // namespace

TEST_CASE("A link opens the model that it was made of") {
    const Truss bridge = footbridge();
    CHECK(opens(writeLink(bridge), bridge));
    CHECK(opens("#" + writeLink(bridge), bridge));
    CHECK(opens("https://example.org/gusset/#" + writeLink(bridge), bridge));
    CHECK(opens(writeLink(Truss{}), Truss{}));
}

// 18750000000000 is written as whole numbers; 11.25 beside it needs two decimals, for which the
// large one has no room below 10¹⁵.
TEST_CASE("A large and a small number in one column of a link both come back") {
    for (const auto& [large, small] :
         {std::pair{18750000000000.0, 11.25}, {1e14, -2e-6}, {-9e15, 0.5}}) {
        Truss truss;
        truss.joints = {{"A", {large, small}, {}}, {"B", {small, large}, {}}};
        truss.loads = {{JointForce{JointId{0}, large, small}, {}, {}},
                       {JointForce{JointId{1}, small, large}, {}, {}}};
        CHECK(opens(writeLink(truss), truss));
    }
}

TEST_CASE("An unknown key comes back from a link, also one that is empty and has a column") {
    const Truss truss =
        readModel(R"({"gusset":1,"joints":[{"id":"A","x":0,"y":0}],"members":[],"loads":[
            {"selfWeight":true,"member":[]}]})")
            .value()
            .truss;
    REQUIRE(truss.loads.front().unknown == R"({"member":[]})");
    CHECK(opens(writeLink(truss), truss));
}

TEST_CASE("What a damaged link is quoted with is text that can be shown") {
    std::string link = writeLink(footbridge());
    const std::size_t length = link.rfind('.', link.rfind('.') - 1) + 1;
    link.insert(length, "\xC3\x01");
    CHECK_THAT(linkFault(link), ContainsSubstring("characters arrived in its middle part"));
    CHECK_FALSE(gusset::faultOfUtf8(linkFault(link)).has_value());
    CHECK_FALSE(gusset::faultOfUtf8(linkFault("m=\xC3\xFF.AAAA")).has_value());
}

TEST_CASE("Links lose nothing of what a file can hold") {
    const Truss full = readModel(support::everyKeyOfTheFormat()).value().truss;
    CHECK(opens(writeLink(full), full));
    for (std::uint64_t seed = 1; seed <= 300; ++seed) {
        const Truss truss = support::randomRichTruss(seed);
        INFO("seed " << seed);
        CHECK(opens(writeLink(truss), truss));
        CHECK(writeLink(readLink(writeLink(truss)).value().truss) == writeLink(truss));
    }
}

TEST_CASE("A link ends with a letter or a digit, and needs no escape") {
    for (std::uint64_t seed = 1; seed <= 300; ++seed) {
        const std::string link = writeLink(support::randomRichTruss(seed));
        CHECK(std::isalnum(static_cast<unsigned char>(link.back())) != 0);
        CHECK(link.find_first_not_of("ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz"
                                     "0123456789-_.=") == std::string::npos);
    }
}

TEST_CASE("Links are short: 13 members in 150 characters, 100 in 300") {
    CHECK(footbridge().members.size() == 13);
    CHECK(writeLink(footbridge()).size() <= 150);
    const Truss strip = support::stripTruss(support::Web::Pratt, 25);
    CHECK(strip.members.size() == 101);
    CHECK(writeLink(strip).size() <= 300);
}

TEST_CASE("Coordinates that no few decimals tell come back to the last bit") {
    Truss truss = footbridge();
    truss.joints[1].at = {1.0 / 3, 2e-9};
    truss.joints[2].at = {4e6 + 0.123456789, -0.1};
    CHECK(opens(writeLink(truss), truss));
}

TEST_CASE("What programs put around a link is forgiven") {
    const Truss bridge = footbridge();
    const std::string link = "https://example.org/#" + writeLink(bridge);
    for (const char* behind :
         {")", ".", ",", ">", "\"", "'", "*", ").", "%29", "%3E", "\n", " and so on"}) {
        CHECK(opens(link + behind, bridge));
    }
    CHECK(opens("<" + link + ">", bridge));
    CHECK(opens("  " + writeLink(bridge), bridge));
    const std::string wrapped = std::string(link).insert(60, "\r\n ");
    CHECK(opens(wrapped, bridge));
}

TEST_CASE("A link with plain JSON is read, percent-encoded or not") {
    const char* const plain = R"(j={"gusset":1,"joints":[{"id":"A","x":0,"y":0}],"members":[]})";
    REQUIRE(readLink(plain).ok());
    CHECK(readLink(plain).value().truss.joints.size() == 1);
    CHECK(readLink("https://example.org/#j=%7B%22gusset%22%3A1%2C%22title%22%3A%22a%20b%22%2C"
                   "%22joints%22%3A%5B%5D%2C%22members%22%3A%5B%5D%7D).")
              .value()
              .truss.title == "a b");
    CHECK(linkCode("#j=%7B%22gusset%22%3A1") == IssueCode::Damaged);
    CHECK(linkCode("#j=") == IssueCode::Damaged);
}

TEST_CASE("A link cut short says how much of it arrived, wherever it was cut") {
    const std::string link = writeLink(footbridge());
    for (std::size_t length = 2; length < link.size(); ++length) {
        const std::string cut = link.substr(0, length);
        INFO(cut);
        CHECK(linkCode(cut) == IssueCode::Damaged);
        CHECK_THAT(linkFault(cut), ContainsSubstring("incomplete"));
        // The first four characters after "m=1." hold the size; a full stop at the end may belong
        // to the sentence around the link.
        if (length >= 8 && cut.back() != '.') {
            CHECK_THAT(linkFault(cut), ContainsSubstring(std::to_string(length) + " of " +
                                                         std::to_string(link.size())));
        }
    }
}

TEST_CASE("A link with any one character changed is refused") {
    const std::string link = writeLink(footbridge());
    for (std::size_t i = 0; i < link.size(); ++i) {
        std::string altered = link;
        altered[i] = altered[i] == 'y' ? 'z' : 'y';
        INFO(altered);
        CHECK_FALSE(readLink(altered).ok());
    }
}

TEST_CASE("The link of an exercise holds the same model, and says that it is asked") {
    Truss truss = footbridge();
    truss.exercise = R"({"ask":["forces"]})";
    const Outcome<std::string> link = exerciseLink(truss);
    REQUIRE(link);
    CHECK(link.value().starts_with("x=1."));
    const Outcome<Reading> back = readLink("https://example.org/exercise/#" + link.value());
    REQUIRE(back);
    CHECK(back.value().truss == truss);
    CHECK_FALSE(readLink(link.value().substr(0, link.value().size() - 9)).ok());
}

TEST_CASE("A link of a later version says so") {
    CHECK(linkCode("#m=2.abcdef.6.12345") == IssueCode::NewerVersion);
    CHECK(linkCode("m=12.x") == IssueCode::NewerVersion);
    CHECK_THAT(linkFault("#m=2.abcdef.6.12345"), ContainsSubstring("later version"));
    CHECK(linkCode("#m=0.abcdef.6.12345") == IssueCode::Damaged);
}

TEST_CASE("What is no link says what one has") {
    CHECK_THAT(linkFault("https://example.org/"), ContainsSubstring("#m="));
    CHECK_THAT(linkFault(""), ContainsSubstring("#m="));
    CHECK_FALSE(looksLikeLink("models/bridge.json"));
    CHECK(looksLikeLink("https://example.org/#m=1.abc"));
    CHECK(looksLikeLink("j={}"));
}

TEST_CASE("Broken base64 is told from what is missing") {
    std::string link = writeLink(footbridge());
    link[20] = '$';
    CHECK_THAT(linkFault(link), ContainsSubstring("a character that no link has"));
}

TEST_CASE("Deflated content cut at any length is refused") {
    const Bytes whole = deflated(compactModel(footbridge()));
    for (std::size_t length = 0; length < whole.size(); ++length) {
        const Bytes cut(whole.begin(), whole.begin() + static_cast<std::ptrdiff_t>(length));
        INFO(length);
        CHECK(linkCode(sealedLink(cut)) == IssueCode::Damaged);
    }
    Bytes longer = whole;
    longer.push_back(0);
    CHECK(linkCode(sealedLink(longer)) == IssueCode::Damaged);
}

TEST_CASE("A decompression bomb is refused without unpacking it") {
    const std::string bomb = forged(std::string(50'000'000, '0')); // deflates to 49 kB
    REQUIRE(bomb.size() > kLargestLink / 2);
    CHECK(linkCode(bomb) == IssueCode::TooLarge);
    CHECK(linkCode(forged(std::string(20'000'000, ' '))) == IssueCode::TooLarge);
    CHECK_THAT(linkFault(forged(std::string(20'000'000, ' '))), ContainsSubstring("1 MB"));
    CHECK(linkCode(std::string(kLargestLink + 1, 'm')) == IssueCode::TooLarge);
}

TEST_CASE("A hundred thousand members in a link are refused in one line") {
    const Truss strip = support::stripTruss(support::Web::Pratt, 25'000);
    REQUIRE(strip.members.size() > 100'000);
    CHECK(linkCode(writeLink(strip)) == IssueCode::TooLarge);

    std::string many = "[[[0,0],[0,0]],[[0";
    for (int i = 1; i < 100'000; ++i) {
        many += ",0";
    }
    CHECK(linkCode(forged(many + "],[1]]]")) == IssueCode::TooLarge);
    CHECK_THAT(linkFault(forged(many + "],[1]]]")), ContainsSubstring("holds 100000 members"));
}

TEST_CASE("What can be written as a link can be read, at the limit of both") {
    // Titles, labels and random digits compress badly: each joint takes about as many characters as
    // it has random ones.
    Truss large;
    support::Random random(7);
    const auto grow = [&] {
        large.joints.emplace_back();
        large.joints.back().at = {random.decimal(-1e3, 1e3, 1000000),
                                  random.decimal(-1e3, 1e3, 1000000)};
        large.joints.back().label = "J" + std::to_string(large.joints.size());
    };
    while (writeLink(large).size() <= kLargestLink) {
        for (int i = 0; i < 50; ++i) {
            grow();
        }
    }
    const Outcome<std::string> none = openableLink(large);
    REQUIRE_FALSE(none.ok());
    CHECK(none.issues().front().code == IssueCode::TooLarge);
    CHECK_THAT(support::english(none.issues().front().says), ContainsSubstring("65536"));
    CHECK_THAT(support::english(none.issues().front().says), ContainsSubstring("file"));
    while (!openableLink(large)) {
        large.joints.pop_back();
    }
    const std::string longest = openableLink(large).value();
    CHECK(longest.size() > kLargestLink - 100);
    CHECK(opens(longest, large));
    CHECK(opens("https://example.org/a/long/place/of/the/page/#" + longest, large));
}

TEST_CASE("No link is made of a truss with more joints than links hold") {
    const Truss strip = support::stripTruss(support::Web::Pratt, 6'000); // 12,002 joints
    const Outcome<std::string> link = openableLink(strip);
    REQUIRE_FALSE(link.ok());
    CHECK(link.issues().front().code == IssueCode::TooLarge);
}

TEST_CASE("Unknown keys as deep as a file may have them stand in a link too, wherever they are") {
    const auto nested = [](int depth) {
        return std::string(static_cast<std::size_t>(depth), '[') +
               std::string(static_cast<std::size_t>(depth), ']');
    };
    const std::string before = R"({"gusset":1,"joints":[{"id":"A","x":0,"y":0,"mine":)";
    const std::string behind = R"(}],"members":[]})";
    // The file's object, the list of joints and the joint are three of the 24 (JsonBounds).
    const Outcome<Reading> deepest = readModel(before + nested(21) + behind);
    REQUIRE(deepest.ok());
    CHECK_FALSE(readModel(before + nested(22) + behind).ok());
    const Outcome<std::string> link = openableLink(deepest.value().truss);
    REQUIRE(link.ok());
    CHECK(opens(link.value(), deepest.value().truss));

    const Outcome<Reading> atTop =
        readModel(R"({"gusset":1,"joints":[],"members":[],"mine":)" + nested(23) + "}");
    REQUIRE(atTop.ok());
    CHECK(opens(openableLink(atTop.value().truss).value(), atTop.value().truss));

    const std::string deeper = R"([[[0,0],[0,0]],[],[],[],{},[[{"mine":)" + nested(22) + "}]]]";
    CHECK(linkCode(forged(deeper)) == IssueCode::TooLarge); // would make a file that does not open
    CHECK(readLink(forged(R"([[[0,0],[0,0]],[],[],[],{},[[{"mine":)" + nested(21) + "}]]]")).ok());
}

namespace {

Truss withLoads(const std::string& name, const std::string& combination) {
    Truss truss = footbridge();
    truss.loads.front().caseId = name;
    truss.combinations.push_back({combination, {{name, 1.35}}, {}});
    return truss;
}

LoadChoice looksAt(const std::string& link, const Truss& truss) {
    const Outcome<LoadChoice> loads = linkedLoads(link, truss);
    INFO(link);
    REQUIRE(loads.ok());
    return loads.value();
}

} // namespace

TEST_CASE("A link carries the case or the combination that is looked at, whatever its name") {
    for (const std::string& name :
         {std::string("wind"), std::string("a&case=b"), std::string("50 % snow}"),
          std::string("\"q\""), std::string("Schnee über 1.000 m."), std::string("#m=1.2"),
          std::string("%41"), std::string("\u96ea)")}) {
        const Truss truss = withLoads(name, "1.35 " + name);
        const std::string byCase = openableLink(truss, OneCase{name}).value();
        const std::string byCombination =
            openableLink(truss, OneCombination{"1.35 " + name}).value();
        INFO(byCase);
        CHECK(byCase.starts_with(writeLink(truss) + "&case="));
        CHECK(std::isalnum(static_cast<unsigned char>(byCase.back())) != 0);
        CHECK(opens("https://example.org/#" + byCase, truss));
        for (const char* behind : {"", ").", ">", "\"", " and so on", "\n"}) {
            CHECK(opens(byCase + behind, truss));
            CHECK(looksAt("<https://example.org/#" + byCase + behind, truss) ==
                  LoadChoice{OneCase{name}});
            CHECK(looksAt("#" + byCombination + behind, truss) ==
                  LoadChoice{OneCombination{"1.35 " + name}});
        }
    }
}

TEST_CASE("What a link asks to look at behind plain JSON is told from the JSON") {
    const std::string json = R"({"gusset":1,"joints":[{"id":"A","x":0,"y":0}],"members":[],)"
                             R"("loads":[{"joint":"A","fy":-1,"case":"wind"}],)"
                             R"("title":"x}&case=y"})";
    const Truss truss = readModel(json).value().truss;
    REQUIRE(truss.title == "x}&case=y");
    CHECK(opens("#j=" + json, truss));
    CHECK(looksAt("#j=" + json, truss) == LoadChoice{});
    CHECK(opens("#j=" + json + "&case=wind", truss));
    CHECK(looksAt("#j=" + json + "&case=wind", truss) == LoadChoice{OneCase{"wind"}});
    // As ECMAScript's encodeURI leaves it: & and = stay.
    CHECK(opens(
        "#j=%7B%22gusset%22:1,%22joints%22:%5B%5D,%22members%22:%5B%5D,%22title%22:%22x%7D&"
        "case=y%22%7D",
        readModel(R"({"gusset":1,"joints":[],"members":[],"title":"x}&case=y"})").value().truss));
}

TEST_CASE("A link that asks for loads that its truss has not opens, and says so") {
    const Truss bridge = footbridge();
    const std::string link = writeLink(bridge);
    for (const std::string& tail :
         {std::string("&case=nothing"), std::string("&combination=nothing"),
          "&case=" + std::string(60'000, 'x'), std::string("&case=%00%FF%FE")}) {
        CHECK(opens(link + tail, bridge));
        const Outcome<LoadChoice> loads = linkedLoads(link + tail, bridge);
        REQUIRE_FALSE(loads.ok());
        CHECK(loads.issues().front().code == IssueCode::UnknownName);
        CHECK(support::english(loads.issues().front().says).size() < 100); // no text from the link
    }
    CHECK(looksAt(link, bridge) == LoadChoice{});
    CHECK(looksAt(link + "&case=", bridge) == LoadChoice{});
    CHECK(looksAt(link + "&other=1", bridge) == LoadChoice{});
}

TEST_CASE("Content that no Gusset wrote makes a message, whatever its shape") {
    for (const char* content : {"",
                                "{}",
                                "7",
                                "[1]",
                                "[[1]]",
                                "[[[]]]",
                                "[[[0,0],[0,0],[1]]]",
                                "[[[7,1]]]",
                                "[[[0,0.5]]]",
                                "[[[0,\"a\"]]]",
                                "[[],[[0],[1]]]",
                                "[[[0,0],[0,0]],[[0],[9]]]",
                                "[[[0,0],[0,0]],[[-1],[0]]]",
                                "[[[0,0],[0,0]],[0,[1]]]",
                                "[[[0,0],[0,0]],[],[],[],7]",
                                "[[[0,0],[0,0]],[],[],[],{\"gusset\":2}]",
                                "[[[0,0],[0,0]],[],[],[],{},[[{\"x\":1}]]]",
                                "[[[0,0],[0,0]],[],[],[],{},[[{},{}]]]",
                                "[[],[],[],[],[],[],[]]",
                                "[[[0,1e300,1e300]]]",
                                "[[[0,0],[0,0]],[],[[0],[\"pin\"],0,0,0]]",
                                "[[[0,0],[0,0]],[],[],[0,0,0,0,0,0,[[5]]]]",
                                "[[[0,0],[0,0]],[],[],[0,0,0,0,0,0,[[[]]]]]"}) {
        INFO(content);
        CHECK_FALSE(readLink(forged(content)).ok());
    }
}

TEST_CASE("A text that is neither a link nor a model is called that, not damaged JSON") {
    for (const char* text : {"no truss", "https://example.org/", " x "}) {
        const Outcome<Reading> read = readModelOrLink(text);
        REQUIRE_FALSE(read.ok());
        CHECK(said(englishPhrases(), read.issues().front().says) ==
              "is neither a link of a truss nor a model: a link has #m= or #j= in it, a model "
              "begins with {");
    }
    CHECK(readModelOrLink(R"({"gusset":1,"joints":[],"members":[]})").ok());
}

TEST_CASE("Links of every earlier version open for ever") {
    // Each line: the name of a model file in the same folder, and a link that was once made from
    // it.
    const std::string corpus = support::repositoryFile("tests/data/formats/links/links.txt");
    int count = 0;
    for (std::size_t start = 0; start < corpus.size();) {
        const std::size_t end = corpus.find('\n', start);
        const std::string line = corpus.substr(start, end - start);
        const std::size_t space = line.find(' ');
        const std::string file = "tests/data/formats/links/" + line.substr(0, space) + ".json";
        const Truss truss = readModel(support::repositoryFile(file)).value().truss;
        CHECK(opens(line.substr(space + 1), truss));
        start = end + 1;
        ++count;
    }
    CHECK(count >= 5);
}

TEST_CASE("The compact form is what its header describes") {
    // Two joints 1.25 apart, a member, a pin and a level roller, 5 down: see compact_model.hpp.
    const Truss truss = readModel(R"({"gusset":1,"joints":[{"id":"A","x":0,"y":0},
        {"id":"B","x":1.25,"y":0}],"members":[{"a":"A","b":"B"}],
        "supports":[{"joint":"A","kind":"pin"},{"joint":"B","kind":"roller","reaction":90}],
        "loads":[{"joint":"B","fy":-5}]})")
                            .value()
                            .truss;
    CHECK(compactModel(truss) == R"([[[2,0,125],[0,0,0]],[[0],[1]],)"
                                 R"([[0,1],["pin","roller"],[0,null,90]],[[1],0,[0,-5]]])");
}
