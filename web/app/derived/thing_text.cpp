#include "app/derived/thing_text.hpp"

#include "app/fields/cell_text.hpp"
#include "app/fields/cells.hpp"
#include "core/number.hpp"
#include "phrases/columns.hpp"
#include "phrases/heard.hpp"
#include "phrases/picked.hpp"
#include "phrases/results/lists.hpp"
#include "phrases/results/tables.hpp"
#include "report/lesson/spoken.hpp"
#include "report/results/results_text.hpp"

#include <algorithm>

namespace gusset {
namespace {

struct ThingTitle {
    const PhraseBook& book;
    const Truss& truss;
    std::string operator()(JointId joint) const {
        return sayPlain(book, phrase::kTheJoint, {{"joint", truss.joints[joint.at()].label}});
    }
    std::string operator()(MemberId member) const {
        return sayPlain(book, phrase::kThatMember, {{"member", memberName(truss, member)}});
    }
    std::string operator()(SupportId support) const {
        const Support& it = truss.supports[support.at()];
        return sayPlain(book, it.kind == SupportKind::Pin ? phrase::kPinAt : phrase::kRollerAt,
                        {{"joint", jointLabel(truss, it.joint)}});
    }
    std::string operator()(LoadId load) const {
        const JointId joint = jointOf(truss.loads[load.at()]);
        return joint.valid()
                   ? sayPlain(book, phrase::kThatLoadAt, {{"joint", jointLabel(truss, joint)}})
                   : sayPlain(book, phrase::kThatLoad);
    }
};

void addTo(const PhraseBook& book, std::string& text, const std::string& more) {
    if (!more.empty()) {
        text = sayPlain(book, phrase::kHeardMore, {{"what", text}, {"more", more}});
    }
}

// What the strip shows as fields: "x 4", "size 10", "direction down".
void addValues(const AppState& state, const ThingId& thing, std::string& text) {
    const Truss& truss = state.truss;
    const Writer writer{*state.book, truss};
    const auto table = static_cast<CellTable>(thing.index()); // in the same order
    for (int column = 0; column < columnsOf(table); ++column) {
        const Cell cell{table, rowOf(thing), column};
        if (pickedName(truss, cell) && canType(truss, cell)) {
            const std::string value = cellLook(truss, cell);
            addTo(writer.book, text,
                  value.empty() ? value
                                : sayPlain(writer, phrase::kHeardValue,
                                           {{"name", columnName(writer, cell)},
                                            {"value", spokenArrow(writer.book, value)}}));
        }
    }
}

std::string supportsAt(const AppState& state, JointId joint) {
    std::string text;
    for (const Support& support : state.truss.supports) {
        if (support.joint == joint) {
            const bool pin = support.kind == SupportKind::Pin;
            text = sayPlain(*state.book, pin ? phrase::kKindPin : phrase::kKindRoller);
        }
    }
    return text;
}

std::string loadsAt(const AppState& state, JointId joint) {
    const std::vector<Load>& loads = state.truss.loads;
    const auto count = std::count_if(loads.begin(), loads.end(),
                                     [&](const Load& load) { return jointOf(load) == joint; });
    return count == 0 ? std::string()
                      : plainText(countedWords(*state.book, static_cast<int>(count),
                                               phrase::kOneLoad, phrase::kManyLoads));
}

} // namespace

std::string thingTitle(const AppState& state, const ThingId& thing) {
    return std::visit(ThingTitle{*state.book, state.truss}, thing);
}

std::string memberLength(const Truss& truss, MemberId member) {
    return withUnit(formatNumber(length(memberVector(truss, member)), numberStyleOf(truss)),
                    symbolOf(truss.units.length));
}

std::string memberForce(const AppState& state, const Derived& derived, MemberId member) {
    for (const ForceRow& row : derived.forces) {
        if (row.member == member && row.sense == Sense::Zero) {
            return sayPlain(*state.book, phrase::kFactNoForce);
        }
        if (row.member == member) {
            const bool pulled = row.sense == Sense::Tension;
            return sayPlain(*state.book, pulled ? phrase::kFactTension : phrase::kFactCompression,
                            {{"value", withUnit(row.size, symbolOf(state.truss.units.force))}});
        }
    }
    return {};
}

std::string thingHeard(const AppState& state, const Derived& derived, const ThingId& thing) {
    const PhraseBook& book = *state.book;
    std::string text = thingTitle(state, thing);
    if (const MemberId member = hitOf<MemberId>(thing); member.valid()) {
        addTo(book, text, memberLength(state.truss, member));
        addTo(book, text, memberForce(state, derived, member));
        return text;
    }
    addValues(state, thing, text);
    if (const JointId joint = hitOf<JointId>(thing); joint.valid()) {
        addTo(book, text, supportsAt(state, joint));
        addTo(book, text, loadsAt(state, joint));
    }
    return text;
}

} // namespace gusset
