#include "report/sheet/sheet_outline.hpp"

#include "phrases/design/loading.hpp"
#include "phrases/results/sheet.hpp"
#include "phrases/results/tables.hpp"
#include "report/sheet/sheet_model.hpp"
#include "report/sheet/sheet_table.hpp"

#include <algorithm>

namespace gusset {
namespace {

using enum LoadSpread;

bool isOnArea(const OutlineLoad& of) {
    return of.load.spread == AreaOnPlan || of.load.spread == AreaOnSlope ||
           of.load.spread == AreaNormal;
}

bool isSpread(const OutlineLoad& of) { return of.load.spread != PerJoint; }
bool isOnPlan(const OutlineLoad& of) {
    return of.load.spread == AreaOnPlan || of.load.spread == LineOnPlan;
}

template <class Which>
bool anyLoad(const Outline& outline, Which which) {
    return std::any_of(outline.loads.begin(), outline.loads.end(), which);
}

// "0.8 kN/m²", "0.3 left, −0.4 kN/m² right of the ridge".
std::string sizeOfLoad(const Writer& writer, const OutlineLoad& of) {
    const std::string unit = unitOf(of.load.spread, writer.truss.units);
    const auto number = [&](double value) {
        return withUnit(sheetNumber(writer.truss, value), unit);
    };
    return of.load.left == of.load.right
               ? number(of.load.left)
               : sayPlain(writer, phrase::kLeftAndRight,
                          {{"left", number(of.load.left)}, {"right", number(of.load.right)}});
}

RichLine chordOf(const Writer& writer, const OutlineLoad& of) {
    return say(writer, of.on == LoadedChord::Upper ? phrase::kChordUpper : phrase::kChordLower);
}

std::string standsFor(const Writer& writer, const std::string& kind) {
    const std::optional<CaseKind> action = actionNamed(kind);
    return action ? sayPlain(writer, ruleOf(*action).says) : std::string{};
}

TextTable loadsOfOutline(const Writer& writer, const Outline& outline) {
    const std::string caption =
        anyLoad(outline, isOnArea)
            ? sayPlain(writer, phrase::kLoadsAsTheyComeApart,
                       {{"length", sheetLength(writer.truss, outline.spacing)}})
            : sayPlain(writer, phrase::kLoadsAsTheyCome);
    TextTable table{caption,
                    {say(writer, phrase::kColumnCase), say(writer, phrase::kColumnStandsFor),
                     say(writer, phrase::kColumnLoad), say(writer, phrase::kColumnHowItComes),
                     say(writer, phrase::kColumnChord)},
                    {},
                    {false, false, false, false, false}};
    for (const OutlineLoad& of : outline.loads) {
        table.rows.push_back({std::string(caseNameOf(of.load.caseId)), standsFor(writer, of.kind),
                              sizeOfLoad(writer, of), say(writer, saysOf(of.load.spread)),
                              chordOf(writer, of)});
    }
    if (!outline.selfWeight.empty()) {
        table.rows.push_back({outline.selfWeight, say(writer, phrase::kActionPermanent),
                              std::string{}, say(writer, phrase::kOwnWeightOfMembers),
                              std::string{}});
    }
    return table;
}

struct SharesOfLoad {
    const OutlineLoad* of = nullptr;
    std::vector<ChordShare> shares{};
};

std::vector<SharesOfLoad> allShares(const Writer& writer, const Outline& outline) {
    std::vector<std::vector<ChordShare>> each = sharesOf(writer, outline);
    std::vector<SharesOfLoad> all;
    for (std::size_t i = 0; i < each.size(); ++i) {
        all.push_back({&outline.loads[i], std::move(each[i])});
    }
    return all;
}

// A column of a table of shares: a length that a joint carries, or a force that it gets.
struct ShareColumn {
    Phrase<> says;
    std::string unit;
    double (*value)(const ChordShare&);
};

ShareColumn planColumn(const Writer& writer) {
    return {phrase::kColumnOnPlan, symbolOf(writer.truss.units.length),
            [](const ChordShare& share) { return share.plan; }};
}

ShareColumn slopeColumn(const Writer& writer) {
    return {phrase::kColumnAlongSlope, symbolOf(writer.truss.units.length),
            [](const ChordShare& share) { return share.slope; }};
}

TextTable tableOfShares(const Writer& writer, const std::string& caption,
                        const std::vector<ChordShare>& shares,
                        const std::vector<ShareColumn>& columns) {
    TextTable table{caption, {say(writer, phrase::kColumnJoint)}, {}, {false}};
    for (const ShareColumn& column : columns) {
        table.head.push_back(headed(writer, say(writer, column.says), column.unit));
        table.numeric.push_back(true);
    }
    for (const ChordShare& share : shares) {
        std::vector<Words> row{writer.truss.joints[share.joint.at()].label};
        for (const ShareColumn& column : columns) {
            row.emplace_back(sheetNumber(writer.truss, column.value(share)));
        }
        table.rows.push_back(std::move(row));
    }
    return table;
}

TextTable lengthsOfChord(const Writer& writer, const std::vector<SharesOfLoad>& all,
                         LoadedChord on) {
    const SharesOfLoad* first = nullptr;
    bool onPlan = false;
    bool onSlope = false;
    for (const SharesOfLoad& it : all) {
        if (it.of->on == on && isSpread(*it.of)) {
            first = first ? first : &it;
            onPlan = onPlan || isOnPlan(*it.of);
            onSlope = onSlope || !isOnPlan(*it.of);
        }
    }
    std::vector<ShareColumn> columns;
    if (onPlan) {
        columns.push_back(planColumn(writer));
    }
    if (onSlope) {
        columns.push_back(slopeColumn(writer));
    }
    const bool isUpper = on == LoadedChord::Upper;
    return tableOfShares(writer,
                         sayPlain(writer, isUpper ? phrase::kUpperCarries : phrase::kLowerCarries),
                         first ? first->shares : std::vector<ChordShare>{}, columns);
}

std::vector<ShareColumn> columnsOf(const Writer& writer, const SharesOfLoad& it) {
    const std::string force = symbolOf(writer.truss.units.force);
    std::vector<ShareColumn> columns;
    if (isSpread(*it.of)) {
        columns.push_back(isOnPlan(*it.of) ? planColumn(writer) : slopeColumn(writer));
    }
    if (it.of->load.spread == AreaNormal) {
        columns.push_back(
            {phrase::kColumnRight, force, [](const ChordShare& share) { return share.force.x; }});
    }
    columns.push_back(
        {phrase::kColumnUp, force, [](const ChordShare& share) { return share.force.y; }});
    return columns;
}

std::string nameOfLoad(const Writer& writer, const OutlineLoad& of) {
    const std::string how = sayPlain(writer, saysOf(of.load.spread));
    return of.load.caseId.empty()
               ? sayPlain(writer, phrase::kShareOfLoadAlone,
                          {{"load", sizeOfLoad(writer, of)}, {"how", how}})
               : sayPlain(
                     writer, phrase::kShareOfLoad,
                     {{"case", of.load.caseId}, {"load", sizeOfLoad(writer, of)}, {"how", how}});
}

} // namespace

std::vector<TextTable> outlineTables(const Writer& writer, const Outline& outline) {
    const std::vector<SharesOfLoad> all = allShares(writer, outline);
    return {loadsOfOutline(writer, outline), lengthsOfChord(writer, all, LoadedChord::Upper),
            lengthsOfChord(writer, all, LoadedChord::Lower)};
}

std::vector<TextTable> shareTables(const Writer& writer, const Outline& outline) {
    std::vector<TextTable> tables;
    for (const SharesOfLoad& it : allShares(writer, outline)) {
        tables.push_back(
            tableOfShares(writer, nameOfLoad(writer, *it.of), it.shares, columnsOf(writer, it)));
    }
    return tables;
}

std::string sharingRule(const PhraseBook& book, const Outline& outline) {
    return anyLoad(outline, isSpread) ? sayPlain(book, phrase::kSharedByHalves) : std::string{};
}

} // namespace gusset
