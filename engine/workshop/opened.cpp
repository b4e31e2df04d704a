#include "workshop/opened.hpp"

#include "design/loading/combinations.hpp"
#include "design/sizing/stock.hpp"
#include "desk/given.hpp"
#include "exchange/json/json_text.hpp"
#include "exchange/links/link.hpp"
#include "model/catalogue/grades.hpp"
#include "model/profiles/catalogue.hpp"
#include "report/results/check_text.hpp"
#include "report/results/measures.hpp"
#include "report/results/results_text.hpp"
#include "report/sheet/sheet_choices.hpp"
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

// Of the joints, in the order of their names.
void writePlaces(JsonText& out, const Truss& truss) {
    out.key("places");
    out.beginArray();
    for (const Joint& joint : truss.joints) {
        out.beginArray();
        out.number(joint.at.x);
        out.number(joint.at.y);
        out.endArray();
    }
    out.endArray();
    out.text("placeUnit", symbolOf(truss.units.length));
}

void writeMeasures(JsonText& out, const Truss& truss) {
    const Measures& measures = measuresOf(truss);
    out.key("measures");
    out.beginObject();
    out.text("mass", measures.mass);
    out.number("perKilogram", measures.perKilogram);
    out.text("movement", measures.movement);
    out.number("movementPerMetre", measures.movementPerMetre);
    out.whole("movementDecimals", measures.movementDecimals);
    out.endObject();
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

// Each combination with its clause and factors, and whether it gives any member its greatest force:
// those that do not are dominated by others.
void writeCombinations(JsonText& out, const Truss& truss) {
    const Outcome<std::vector<bool>> governs = governing(truss);
    std::size_t i = 0;
    out.objects("combinations", truss.combinations, [&](const Combination& each) {
        out.text("name", each.id);
        out.text("by", each.by);
        out.objects("factors", each.factors, [&](const auto& factor) {
            out.text("case", factor.first);
            out.number("factor", factor.second);
        });
        if (governs) {
            out.key("governs");
            out.boolean(governs.value()[i]);
        }
        ++i;
    });
}

} // namespace

std::string linkOrNothing(const Truss& truss) {
    const Outcome<std::string> link = openableLink(truss);
    return link ? link.value() : std::string();
}

std::string openReply(const PhraseBook& book, const Truss& truss,
                      const std::vector<std::string>& notes) {
    JsonText out(Layout::Compact);
    out.beginObject();
    const LoadChoice shown = usualLoads(truss);
    writeGiven(out, {book, truss}, shown, {});
    out.text("shown", loadsName(book, shown));
    writePlaces(out, truss);
    writeMeasures(out, truss);
    writeGroups(out, book, truss);
    writeChoices(out, book);
    out.texts("caution", cautionLines(book));
    out.key("weighs");
    out.boolean(hasOwnWeight(truss));
    out.allTexts("weightCases", casesForOwnWeight(truss));
    writeCombinations(out, truss);
    out.allTexts("notes", notes);
    out.text("link", linkOrNothing(truss));
    out.key("outline");
    const bool isFormed = isFromOutline(book, truss);
    out.boolean(isFormed);
    if (isFormed) {
        writeShape(out, truss);
    }
    out.endObject();
    return out.take();
}

} // namespace gusset
