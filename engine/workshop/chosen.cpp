#include "workshop/chosen.hpp"

#include "desk/given.hpp"
#include "exchange/files/model_file.hpp"
#include "exchange/json/json_text.hpp"
#include "exchange/links/link.hpp"
#include "model/profiles/catalogue.hpp"
#include "phrases/design/workshop.hpp"
#include "report/results/check_text.hpp"
#include "report/results/sizing_text.hpp"

namespace gusset {

namespace {

constexpr double kLeastDeflection = 10; // x of L/x
constexpr double kMostDeflection = 10000;

Outcome<std::vector<Profile>> profilesUnder(const JsonValue& request) {
    std::vector<Profile> all;
    if (const JsonValue* kinds = request.find("kinds")) {
        for (const JsonValue& key : kinds->items) {
            if (const ProfileKind* kind = findProfileKind(key.text)) {
                const ProfileList list = profilesOf(*kind);
                all.insert(all.end(), list.profiles.begin(), list.profiles.end());
            }
        }
    }
    if (const std::string own = textUnder(request, "own"); !own.empty()) {
        const Outcome<ProfileList> list = readProfileList(own);
        if (!list) {
            return list.issues();
        }
        const std::vector<Profile>& profiles = list.value().profiles;
        all.insert(all.end(), profiles.begin(), profiles.end());
    }
    if (all.empty()) {
        return Issue{IssueCode::Missing, "", phrase::kNoKindsChosen};
    }
    return all;
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
    const Outcome<std::vector<Profile>> profiles = profilesUnder(request);
    if (!profiles) {
        return profiles.issues();
    }
    const Outcome<Stock> stock =
        stockOf(textUnder(request, "grade"), profiles.value(), truss.units);
    if (!stock) {
        return stock.issues();
    }
    const double x = numberUnder(request, "deflection");
    if (x != 0 && !(x >= kLeastDeflection && x <= kMostDeflection)) {
        return Issue{IssueCode::OutOfRange, "", phrase::kDeflectionRange};
    }
    Truss made = truss;
    putMaterial(made, stock.value().material);
    Chosen chosen;
    chosen.leftOut = stock.value().leftOut;
    chosen.wish.groups = groupsByRole(book, truss, stock.value().sections);
    chosen.wish.deflection = x == 0 ? 0 : deflectionLimit(truss, x);
    Outcome<Sizing> sizing = lightest(made, chosen.wish);
    if (!sizing) {
        return sizing.issues();
    }
    chosen.sizing = std::move(sizing).value();
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
    out.texts("lines", sizingLines(writer, sizing, chosen.wish));
    out.texts("path", pathLines(writer, sizing, chosen.wish));
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
    out.result("deflection", sizing.deflection);
    out.whole("leftOut", static_cast<long>(chosen.leftOut));
    out.text("model", writeModel(sizing.truss, Layout::Compact));
    const Outcome<std::string> link = openableLink(sizing.truss);
    out.text("link", link ? link.value() : std::string());
    out.endObject();
    return out.take();
}

} // namespace gusset
