#include "workshop/workshop.hpp"

#include "desk/given.hpp"
#include "exchange/json/json_text.hpp"
#include "exchange/json/json_value.hpp"
#include "exchange/links/link.hpp"
#include "model/catalogue/grades.hpp"
#include "model/profiles/catalogue.hpp"
#include "phrases/design/workshop.hpp"
#include "workshop/chosen.hpp"
#include "workshop/varied.hpp"

namespace gusset {

namespace {

void writeGroups(JsonText& out, const PhraseBook& book, const Truss& truss) {
    out.objects("groups", groupsByRole(book, truss, {}), [&](const SizingGroup& group) {
        out.text("name", group.name);
        out.key("members");
        out.beginArray();
        for (const MemberId member : group.members) {
            out.whole(member.index);
        }
        out.endArray();
    });
}

void writeChoices(JsonText& out, const PhraseBook& book) {
    const std::vector<ProfileKind> kinds(profileKinds().begin(), profileKinds().end());
    out.objects("kinds", kinds, [&](const ProfileKind& kind) {
        const ProfileList list = profilesOf(kind);
        out.text("key", kind.key);
        out.text("name", sentenceIn(book, kind.says.english));
        out.whole("count", static_cast<long>(list.profiles.size()));
        out.text("source", list.source);
    });
    std::vector<std::string> grades;
    for (const SteelGrade& steel : steelGrades()) {
        grades.emplace_back(steel.name);
    }
    for (const TimberClass& timber : timberClasses()) {
        grades.emplace_back(timber.name);
    }
    out.texts("grades", grades);
}

std::string open(const PhraseBook& book, const Truss& truss) {
    JsonText out(Layout::Compact);
    out.beginObject();
    writeGiven(out, {book, truss}, {}, {});
    writeGroups(out, book, truss);
    writeChoices(out, book);
    out.key("outline");
    out.boolean(isFromOutline(book, truss));
    out.endObject();
    return out.take();
}

} // namespace

std::string workshopReply(const PhraseBook& book, std::string_view request) {
    const Outcome<JsonValue> parsed = parseJson(request);
    if (!parsed) {
        return refusalOf(book, parsed.issues());
    }
    const JsonValue& value = parsed.value();
    const std::string wants = textUnder(value, "do");
    const Outcome<Reading> reading = readModelOrLink(textUnder(value, "model"));
    if (!reading) {
        return refusalOf(book, reading.issues());
    }
    const Truss& truss = reading.value().truss;
    if (wants == "open") {
        return open(book, truss);
    }
    if (wants == "size") {
        return sizeReply(book, truss, value);
    }
    if (wants == "vary") {
        return varyReply(book, truss, value);
    }
    return refusal({sentenceIn(book, phrase::kNothingToDo.english)});
}

} // namespace gusset
