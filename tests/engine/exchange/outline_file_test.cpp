#include "core/statement.hpp"
#include "exchange/forms/outline_file.hpp"
#include "support/mutation.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>

using namespace gusset;

namespace {

Outcome<Outline> readText(const std::string& form) {
    Truss truss;
    truss.form = form;
    return readOutline(truss);
}

std::string faultsIn(const std::string& form) {
    const Outcome<Outline> outline = readText(form);
    REQUIRE_FALSE(outline.ok());
    std::string all;
    for (const Issue& issue : outline.issues()) {
        all += said(englishPhrases(), issue.at) + ": " + said(englishPhrases(), issue.says) + "\n";
    }
    return all;
}

const std::string kFull = R"({"kind":"howe-roof","span":24,"rise":5,"panels":10,"heel":0.5,)"
                          R"("overhang":0.6,"spacing":6,"loads":[{"case":"tiles",)"
                          R"("kind":"permanent","as":"area-on-slope","size":0.35},{"case":"wind",)"
                          R"("kind":"wind","as":"area-normal","left":0.4,"right":-0.3},)"
                          R"({"as":"line-on-plan","size":1,"on":"lower"}],"selfWeight":"tiles",)"
                          R"("rule":{"by":"en-6.10ab","permanent":1.2,)"
                          R"("national":{"snow":[0.7,0.5,0.2]}}})";

} // namespace

TEST_CASE("the outline of a truss is read from a model and written back the same") {
    const Outline outline = readText(kFull).value();
    CHECK(outline.form.kind == FormKind::HoweRoof);
    CHECK(outline.form.panels == 10);
    CHECK(sizeOf(outline.form, FormSize::Heel) == 0.5);
    CHECK(outline.loads[1].load.right == -0.3);
    CHECK(outline.loads[2].on == LoadedChord::Lower);
    CHECK(outline.rule->permanentUp == 1.2);
    CHECK(outline.rule->national.front().psi.frequent == 0.5);
    CHECK(outlineText(outline) == kFull);
    CHECK(readText(R"({"kind":"warren","span":9,"rise":2,"rule":"asce-asd"})").value().rule->rule ==
          CombinationRule::AsceAsd);
}

TEST_CASE("every form, way of loading and rule has a word of its own that reads back") {
    for (const FormChoice& choice : formChoices()) {
        const std::string word(wordOf(choice.kind));
        CHECK(readText(R"({"kind":")" + word + R"(","span":9,"rise":2})").value().form.kind ==
              choice.kind);
    }
    for (int i = 0; i < 6; ++i) {
        const std::string word(wordOf(LoadSpread(i)));
        const auto outline = readText(R"({"kind":"warren","span":9,"rise":2,"loads":[{"as":")" +
                                      word + R"(","size":1}]})");
        CHECK(outline.value().loads.front().load.spread == LoadSpread(i));
    }
    for (int i = 0; i < 4; ++i) {
        CHECK(ruleNamed(wordOf(CombinationRule(i))) == CombinationRule(i));
    }
}

TEST_CASE("a load case that is renamed, or stands for something else, does so in the outline too") {
    Truss truss;
    truss.form = kFull;
    const auto renamed = [&](const std::string& name, const std::string& to) {
        Truss other = truss;
        other.form = formWithCase(truss, name, to);
        return readOutline(other).value();
    };
    const Outline slates = renamed("tiles", "slates");
    CHECK(slates.loads[0].load.caseId == "slates");
    CHECK(slates.loads[1].load.caseId == "wind");
    CHECK(slates.selfWeight == "slates");
    // A load that names no case is called "loads", as on the board.
    CHECK(renamed("loads", "ceiling").loads[2].load.caseId == "ceiling");
    CHECK(renamed("wind", "loads").loads[1].load.caseId.empty());
    truss.form = formWithKind(truss, "wind", "snow");
    CHECK(readOutline(truss).value().loads[1].kind == "snow");
    truss.form = "no outline";
    CHECK(formWithCase(truss, "wind", "gale") == "no outline");
    CHECK(formWithKind(truss, "wind", "snow") == "no outline");
}

TEST_CASE("the number of panels is a whole number") {
    CHECK(faultsIn(R"({"kind":"warren","span":9,"rise":2,"panels":4.5})").find("form.panels") !=
          std::string::npos);
    CHECK(faultsIn(R"({"kind":"warren","span":9,"rise":2,"panels":1e9})").find("whole number") !=
          std::string::npos);
}

TEST_CASE("a pitch stands in place of a rise where there are rafters") {
    CHECK(readText(R"({"kind":"howe-roof","span":20,"pitch":45})").value().form.rise > 9.999);
    CHECK(faultsIn(R"({"kind":"warren","span":20,"pitch":45})").find("form.pitch") !=
          std::string::npos);
}

TEST_CASE("what is wrong with an outline is said with its place and the words there are") {
    CHECK(faultsIn("").find("not made from an outline") != std::string::npos);
    CHECK(faultsIn(R"({"kind":"dome","span":9,"rise":2})").find("\"howe-roof\"") !=
          std::string::npos);
    CHECK(faultsIn(R"({"kind":"warren","rise":2})").find("form.span") != std::string::npos);
    CHECK(faultsIn(R"({"kind":"warren","span":9,"rise":2,"loads":[{"as":"rain","size":1}]})")
              .find("form.loads[0].as") != std::string::npos);
    CHECK(faultsIn(R"({"kind":"warren","span":9,"rise":2,"loads":[{"as":"joint"}]})")
              .find("form.loads[0].size") != std::string::npos);
    CHECK(faultsIn(R"({"kind":"warren","span":9,"rise":2,"rule":{"by":"en-6.10",)"
                   R"("national":{"hail":[1,2,3]}}})")
              .find("form.rule.national.hail") != std::string::npos);
}

TEST_CASE("a damaged outline is refused or read, and never more than that") {
    support::Random random(17);
    int made = 0;
    for (int i = 0; i < 3000; ++i) {
        const Outcome<Outline> outline =
            readText(support::mutated(kFull, R"({"kind":"tower","top":2})", random));
        if (outline && trussOf(englishPhrases(), outline.value())) {
            ++made;
        }
    }
    CHECK(made > 0);
}
