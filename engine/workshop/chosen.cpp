#include "workshop/chosen.hpp"

#include "desk/given.hpp"
#include "exchange/files/model_file.hpp"
#include "exchange/json/json_text.hpp"
#include "model/profiles/catalogue.hpp"
#include "phrases/design/workshop.hpp"
#include "report/results/check_text.hpp"
#include "report/results/sizing_text.hpp"
#include "workshop/opened.hpp"

#include <algorithm>
#include <array>
#include <string_view>

namespace gusset {

namespace {

constexpr double kLeastDeflection = 10; // x of L/x
constexpr double kMostDeflection = 10000;

// The notes are on rows of the own list that are left out.
Outcome<ProfileList> profilesUnder(const JsonValue& request) {
    ProfileList all{};
    if (const JsonValue* kinds = request.find("kinds")) {
        for (const JsonValue& key : kinds->items) {
            if (const ProfileKind* kind = findProfileKind(key.text)) {
                const ProfileList list = profilesOf(*kind);
                all.profiles.insert(all.profiles.end(), list.profiles.begin(), list.profiles.end());
            }
        }
    }
    if (const std::string own = textUnder(request, "own"); !own.empty()) {
        const Outcome<ProfileList> list = readProfileList(own);
        if (!list) {
            return list.issues();
        }
        const std::vector<Profile>& profiles = list.value().profiles;
        all.profiles.insert(all.profiles.end(), profiles.begin(), profiles.end());
        all.notes = list.value().notes;
    }
    if (all.profiles.empty() && !all.notes.empty()) {
        return all.notes;
    }
    if (all.profiles.empty()) {
        return Issue{IssueCode::Missing, "", phrase::kNoKindsChosen};
    }
    return all;
}

// "en-a0" to "en-d", "aisc-lrfd", "aisc-asd"; anything else: as the truss says.
void applyStandard(const std::string& word, CheckSettings& checks) {
    constexpr std::array<std::string_view, 5> kCurves{"en-a0", "en-a", "en-b", "en-c", "en-d"};
    const auto curve = std::find(kCurves.begin(), kCurves.end(), word);
    if (curve != kCurves.end()) {
        checks.formula = ColumnFormula::En1993;
        checks.curve = static_cast<BucklingCurve>(curve - kCurves.begin());
    } else if (word == "aisc-lrfd" || word == "aisc-asd") {
        checks.formula = ColumnFormula::Aisc360;
        checks.safety = word == "aisc-asd" ? AiscSafety::Allowable : AiscSafety::Resistance;
    }
}

// The groups of the request, or by role. Members in none keep their sections.
Outcome<std::vector<SizingGroup>> groupsUnder(const PhraseBook& book, const Truss& truss,
                                              const JsonValue& request,
                                              const std::vector<Section>& profiles) {
    const JsonValue* asked = request.find("groups");
    if (!asked) {
        return groupsByRole(book, truss, profiles);
    }
    std::vector<SizingGroup> groups;
    std::vector<bool> isIn(truss.members.size());
    for (const JsonValue& each : asked->items) {
        SizingGroup group{textUnder(each, "name"), {}, profiles};
        if (const JsonValue* members = each.find("members")) {
            for (const JsonValue& member : members->items) {
                const bool isOne = member.isWhole() && member.number >= 0 &&
                                   member.number < static_cast<double>(truss.members.size());
                const auto index = static_cast<std::size_t>(isOne ? member.number : 0);
                if (!isOne || isIn[index]) {
                    return Issue{IssueCode::OutOfRange, "", phrase::kOneGroupEach};
                }
                isIn[index] = true;
                group.members.push_back({static_cast<int>(index)});
            }
        }
        if (!group.members.empty()) {
            groups.push_back(std::move(group));
        }
    }
    return groups;
}

void writeGroup(JsonText& out, const Truss& truss, const SizingGroup& group,
                const SizedGroup& sized) {
    out.text("name", group.name);
    out.text("profile", sized.profile);
    out.key("enough");
    out.boolean(sized.isEnough);
    out.result("use", sized.use);
    out.result("mass", sized.mass);
    out.text("worst", memberName(truss, sized.worst));
}

} // namespace

Outcome<Chosen> chosenFor(const PhraseBook& book, const Truss& truss, const JsonValue& request) {
    if (truss.supports.empty() || truss.loads.empty()) {
        return Issue{IssueCode::Missing, "",
                     truss.supports.empty() ? phrase::kNoSupportsYet : phrase::kNoLoadsYet};
    }
    const Outcome<ProfileList> profiles = profilesUnder(request);
    if (!profiles) {
        return profiles.issues();
    }
    const Outcome<Stock> stock =
        stockOf(textUnder(request, "grade"), profiles.value().profiles, truss.units);
    if (!stock) {
        return stock.issues();
    }
    if (stock.value().sections.empty()) {
        return Issue{IssueCode::Missing, "",
                     statement(phrase::kNoneOfGrade, {{"grade", textUnder(request, "grade")}})};
    }
    const double x = numberUnder(request, "deflection");
    if (x != 0 && !(x >= kLeastDeflection && x <= kMostDeflection)) {
        return Issue{IssueCode::OutOfRange, "", phrase::kDeflectionRange};
    }
    Truss made = truss;
    putMaterials(made, stock.value().materials);
    if (const JsonValue* weight = request.find("weight");
        weight && !addOwnWeight(made, weight->text)) {
        return Issue{IssueCode::UnknownName, "",
                     statement(phrase::kNoCaseForWeight, {{"case", weight->text}})};
    }
    applyStandard(textUnder(request, "standard"), made.checks);
    Chosen chosen;
    chosen.leftOut = stock.value().leftOut;
    chosen.notes = profiles.value().notes;
    Outcome<std::vector<SizingGroup>> groups =
        groupsUnder(book, truss, request, stock.value().sections);
    if (!groups) {
        return groups.issues();
    }
    chosen.wish.groups = std::move(groups).value();
    if (chosen.wish.groups.empty()) {
        return Issue{IssueCode::Missing, "", phrase::kNoGroupLeft};
    }
    chosen.wish.deflection = x == 0 ? 0 : deflectionLimit(truss, x);
    Outcome<Sizing> sizing = lightest(made, chosen.wish);
    if (!sizing) {
        return sizing.issues();
    }
    chosen.sizing = std::move(sizing).value();
    dropUnused(chosen.sizing.truss, stock.value().materials);
    return chosen;
}

std::string sizeReply(const PhraseBook& book, const Truss& truss, const JsonValue& request) {
    const Outcome<Chosen> made = chosenFor(book, truss, request);
    if (!made) {
        return refusalOf(book, made.issues());
    }
    const Chosen& chosen = made.value();
    const Sizing& sizing = chosen.sizing;
    const Writer writer{book, sizing.truss};
    JsonText out(Layout::Compact);
    out.beginObject();
    out.key("enough");
    out.boolean(sizing.isEnough);
    out.allTexts("lines", sizingLines(writer, sizing, chosen.wish));
    out.allTexts("path", pathLines(writer, sizing, chosen.wish));
    out.texts("caution", cautionLines(book));
    out.key("groups");
    out.beginArray();
    for (std::size_t g = 0; g < sizing.groups.size(); ++g) {
        out.beginObject();
        writeGroup(out, sizing.truss, chosen.wish.groups[g], sizing.groups[g]);
        out.endObject();
    }
    out.endArray();
    out.result("mass", sizing.mass);
    if (sizing.deflection) {
        out.result("deflection", *sizing.deflection);
    }
    out.whole("leftOut", static_cast<long>(chosen.leftOut));
    out.allTexts("notes", faultSentences(book, chosen.notes));
    out.text("model", writeModel(sizing.truss, Layout::Compact));
    out.text("link", linkOrNothing(sizing.truss));
    out.endObject();
    return out.take();
}

} // namespace gusset
