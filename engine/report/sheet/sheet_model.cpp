#include "report/sheet/sheet_model.hpp"

#include "core/number.hpp"
#include "core/signs.hpp"
#include "model/catalogue/section_properties.hpp"
#include "model/catalogue/section_shapes.hpp"
#include "phrases/model/tables.hpp"
#include "phrases/results/lists.hpp"
#include "phrases/results/sheet.hpp"
#include "phrases/results/tables.hpp"
#include "phrases/working/load_shares.hpp"
#include "report/results/influence_text.hpp"
#include "report/sheet/sheet_outline.hpp"
#include "report/sheet/sheet_table.hpp"
#include "report/text/html.hpp"
#include "statics/equilibrium/structure.hpp"

#include <algorithm>
#include <optional>
#include <string_view>

namespace gusset {
namespace {

std::string labelAt(const Truss& truss, JointId joint) { return truss.joints[joint.at()].label; }

std::string knownNumber(const Truss& truss, const std::optional<double>& value) {
    return value ? sheetNumber(truss, *value) : std::string{};
}

std::string ownOrDerived(const Truss& truss, const std::optional<double>& own,
                         const std::optional<double>& derived) {
    return own || !derived ? knownNumber(truss, own) : derivedNumber(truss, *derived);
}

// "kN/m"; the numbers alone stand without a unit.
std::string perLengthUnit(const Truss& truss) {
    const std::string force = symbolOf(truss.units.force);
    const std::string length = symbolOf(truss.units.length);
    return force.empty() || length.empty() ? std::string{} : force + "/" + length;
}

TextTable jointsTable(const Writer& writer) {
    const Truss& truss = writer.truss;
    const std::string unit = symbolOf(truss.units.length);
    TextTable table{sayPlain(writer, phrase::kHeadJoints),
                    {say(writer, phrase::kColumnJoint), headed(writer, plainLine("x"), unit),
                     headed(writer, plainLine("y"), unit)},
                    {},
                    {false, true, true}};
    for (const Joint& joint : truss.joints) {
        table.rows.push_back(
            {joint.label, sheetNumber(truss, joint.at.x), sheetNumber(truss, joint.at.y)});
    }
    return table;
}

TextTable membersTable(const Writer& writer) {
    const Truss& truss = writer.truss;
    const auto any = [&](auto has) {
        return std::any_of(truss.members.begin(), truss.members.end(), has);
    };
    const bool made = any([](const Member& member) { return !member.section.empty(); });
    const bool warmed = any([](const Member& member) { return member.warming != 0; });
    const bool misfits = any([](const Member& member) { return member.misfit != 0; });
    TextTable table{
        sayPlain(writer, phrase::kHeadMembers),
        {say(writer, phrase::kColumnMember),
         headed(writer, say(writer, phrase::kColumnLength), symbolOf(truss.units.length))},
        {},
        {false, true}};
    if (made) {
        table.head.push_back(say(writer, phrase::kColumnSection));
        table.numeric.push_back(false);
    }
    if (warmed) {
        table.head.push_back(say(writer, phrase::kColumnTemperature));
    }
    if (misfits) {
        table.head.push_back(headed(writer, say(writer, phrase::kColumnLackOfFit),
                                    symbolOf(truss.units.displacement)));
    }
    table.numeric.resize(table.head.size(), true);
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        const MemberId id{static_cast<int>(i)};
        const Member& member = truss.members[i];
        std::vector<Words> row{
            memberName(truss, id),
            formatMeasured(length(memberVector(truss, id)), truss.classSettings.decimalSign)};
        if (made) {
            row.push_back(member.section);
        }
        if (warmed) {
            row.push_back(sheetNumber(truss, member.warming));
        }
        if (misfits) {
            row.push_back(sheetNumber(truss, member.misfit));
        }
        table.rows.push_back(std::move(row));
    }
    return table;
}

// "2; −5" of a pin, "−5" of a roller, empty where the support stays.
std::string settlementOf(const Truss& truss, const Support& support) {
    if (support.kind == SupportKind::Roller) {
        return support.settleAlong == 0 ? std::string{} : sheetNumber(truss, support.settleAlong);
    }
    return support.settle == Vec2{}
               ? std::string{}
               : sheetNumber(truss, support.settle.x) + "; " + sheetNumber(truss, support.settle.y);
}

TextTable supportsTable(const Writer& writer) {
    const Truss& truss = writer.truss;
    const bool settles =
        std::any_of(truss.supports.begin(), truss.supports.end(),
                    [&](const Support& support) { return !settlementOf(truss, support).empty(); });
    TextTable table{sayPlain(writer, phrase::kHeadSupports),
                    {say(writer, phrase::kColumnJoint), say(writer, phrase::kColumnSupport),
                     say(writer, phrase::kColumnReactionAt)},
                    {},
                    {false, false, true}};
    if (settles) {
        table.head.push_back(headed(writer, say(writer, phrase::kColumnSettlement),
                                    symbolOf(truss.units.displacement)));
        table.numeric.push_back(false);
    }
    for (const Support& support : truss.supports) {
        const bool pin = support.kind == SupportKind::Pin;
        std::vector<Words> row{labelAt(truss, support.joint),
                               say(writer, pin ? phrase::kKindPin : phrase::kKindRoller),
                               pin ? std::string{} : sheetNumber(truss, support.reaction)};
        if (settles) {
            row.push_back(settlementOf(truss, support));
        }
        table.rows.push_back(std::move(row));
    }
    return table;
}

// What a load acts on, and its components, or its force per length.
struct LoadWords {
    std::string on;
    std::string right;
    std::string up;
    std::string perLength;
};

LoadWords wordsOf(const Writer& writer, const Load& load) {
    const Truss& truss = writer.truss;
    if (const auto force = forceOf(load)) {
        return {labelAt(truss, jointOf(load)),
                sheetNumber(truss, force->x),
                sheetNumber(truss, force->y),
                {}};
    }
    if (const auto* chord = std::get_if<ChordLoad>(&load.what)) {
        return {sayPlain(writer, phrase::kAlongPath, {{"path", pathName(truss, chord->chord)}}),
                {},
                {},
                sheetNumber(truss, chord->perLength)};
    }
    if (const auto* on = std::get_if<MemberForce>(&load.what)) {
        const std::string member = memberName(labelAt(truss, on->from), labelAt(truss, on->to));
        return {sayPlain(writer, phrase::kOnMember,
                         {{"member", member},
                          {"length", sheetLength(truss, on->at)},
                          {"joint", labelAt(truss, on->from)}}),
                sheetNumber(truss, on->fx),
                sheetNumber(truss, on->fy),
                {}};
    }
    return {sayPlain(writer, phrase::kSelfWeight), {}, {}, {}};
}

TextTable loadsTable(const Writer& writer) {
    const std::vector<Load>& loads = writer.truss.loads;
    const std::string unit = symbolOf(writer.truss.units.force);
    const bool spread = std::any_of(loads.begin(), loads.end(), [](const Load& load) {
        return std::holds_alternative<ChordLoad>(load.what);
    });
    TextTable table{sayPlain(writer, phrase::kHeadLoads),
                    {say(writer, phrase::kColumnCase), say(writer, phrase::kColumnOn),
                     headed(writer, say(writer, phrase::kColumnRight), unit),
                     headed(writer, say(writer, phrase::kColumnUp), unit)},
                    {},
                    {false, false, true, true}};
    if (spread) {
        table.head.push_back(
            headed(writer, say(writer, phrase::kColumnUp), perLengthUnit(writer.truss)));
        table.numeric.push_back(true);
    }
    for (const Load& load : loads) {
        const LoadWords words = wordsOf(writer, load);
        std::vector<Words> row{std::string(caseNameOf(load.caseId)), words.on, words.right,
                               words.up};
        if (spread) {
            row.push_back(words.perLength);
        }
        table.rows.push_back(std::move(row));
    }
    return table;
}

// "Solid round bar, D 20".
std::string profileOf(const Writer& writer, const Section& section) {
    const SectionShape* shape = findSectionShape(section.shape);
    if (!shape) {
        return {};
    }
    RichLine words = say(writer, shape->says);
    for (const auto& [key, value] : section.dimensions) {
        words = say(writer, phrase::kListMore,
                    {{"a", words}, {"b", key + kThinSpace + sheetNumber(writer.truss, value)}});
    }
    return plainText(words);
}

TextTable sectionsTable(const Writer& writer) {
    const Truss& truss = writer.truss;
    const std::string unit = symbolOf(truss.units.section);
    TextTable table{sayPlain(writer, phrase::kHeadSections),
                    {say(writer, phrase::kColumnSection), say(writer, phrase::kColumnMaterial),
                     say(writer, phrase::kColumnProfile),
                     headed(writer, plainLine("A"), unit.empty() ? unit : unit + "²"),
                     headed(writer, plainLine("r"), unit)},
                    {},
                    {false, false, false, true, true}};
    for (const Section& section : truss.sections) {
        const SectionProperties properties = propertiesOf(section);
        table.rows.push_back({section.id, section.material, profileOf(writer, section),
                              ownOrDerived(truss, section.area, properties.area),
                              ownOrDerived(truss, section.radius, properties.radius)});
    }
    return table;
}

TextTable materialsTable(const Writer& writer) {
    const Truss& truss = writer.truss;
    const std::string stress = symbolOf(truss.units.stress);
    TextTable table{sayPlain(writer, phrase::kHeadMaterials),
                    {say(writer, phrase::kColumnMaterial), headed(writer, plainLine("E"), stress),
                     headed(writer, say(writer, phrase::kColumnStrength), stress),
                     headed(writer, say(writer, phrase::kColumnDensity),
                            sayPlain(writer, phrase::kDensityUnit)),
                     headed(writer, plainLine("α"), "1/K")},
                    {},
                    {false, true, true, true, true}};
    for (const Material& material : truss.materials) {
        table.rows.push_back(
            {material.id, knownNumber(truss, material.E), knownNumber(truss, material.strength),
             knownNumber(truss, material.density), knownNumber(truss, material.alpha)});
    }
    return table;
}

TextTable factorsTable(const Writer& writer) {
    TextTable table{sayPlain(writer, phrase::kHeadCombinations),
                    {say(writer, phrase::kColumnCombination), say(writer, phrase::kColumnFactors)},
                    {},
                    {false, false}};
    const std::vector<Combination>& all = writer.truss.combinations;
    const bool byRules = std::any_of(all.begin(), all.end(),
                                     [](const Combination& each) { return !each.by.empty(); });
    if (byRules) {
        table.head.push_back(say(writer, phrase::kColumnRule));
        table.numeric.push_back(false);
    }
    for (const Combination& combination : all) {
        std::vector<RichLine> terms;
        for (const auto& [name, factor] : combination.factors) {
            terms.push_back(say(writer, phrase::kFactorTimesCase,
                                {{"factor", sheetNumber(writer.truss, factor)}, {"name", name}}));
        }
        table.rows.push_back({combination.id, listOf(writer, terms)});
        if (byRules) {
            table.rows.back().push_back(combination.by);
        }
    }
    return table;
}

std::string axlesOf(const Writer& writer, const MovingLoad& load) {
    const Truss& truss = writer.truss;
    const std::string unit = symbolOf(truss.units.force);
    std::vector<RichLine> words;
    for (const Axle& axle : load.axles) {
        words.push_back(say(writer, phrase::kAxleAt,
                            {{"force", withUnit(sheetNumber(truss, axle.force), unit)},
                             {"length", sheetLength(truss, axle.at)}}));
    }
    if (load.uniform) {
        const std::string force =
            withUnit(sheetNumber(truss, load.uniform->perLength), perLengthUnit(truss));
        words.push_back(
            load.uniform->length
                ? say(writer, phrase::kSpreadOver,
                      {{"force", force}, {"length", sheetLength(truss, *load.uniform->length)}})
                : say(writer, phrase::kSpreadWhereWorst, {{"force", force}}));
    }
    return plainText(listOf(writer, words));
}

TextTable movingTable(const Writer& writer) {
    TextTable table{sayPlain(writer, phrase::kSheetMoving),
                    {say(writer, phrase::kColumnLoad), say(writer, phrase::kColumnPath),
                     say(writer, phrase::kColumnAxles)},
                    {},
                    {false, false, false}};
    for (const MovingLoad& load : writer.truss.moving) {
        table.rows.push_back({load.id, pathName(writer.truss, load.path), axlesOf(writer, load)});
    }
    return table;
}

std::string casesHtml(const Writer& writer) {
    const std::vector<std::string> names = caseNames(writer.truss);
    if (names.empty()) {
        return {};
    }
    std::vector<RichLine> cases;
    for (const std::string& name : names) {
        cases.push_back(plainLine(name));
    }
    return paragraphsHtml(
        {sayPlain(writer, phrase::kCasesAre, {{"cases", listOf(writer, cases)}})});
}

} // namespace

std::string sheetLength(const Truss& truss, double length) {
    return withUnit(sheetNumber(truss, length), symbolOf(truss.units.length));
}

std::vector<TextTable> modelTables(const Writer& writer) {
    return {jointsTable(writer), membersTable(writer),  supportsTable(writer),
            loadsTable(writer),  sectionsTable(writer), materialsTable(writer)};
}

std::vector<TextTable> combinationTables(const Writer& writer) {
    return {factorsTable(writer), movingTable(writer)};
}

std::string combinationsHtml(const Writer& writer, const std::optional<Outline>& outline) {
    std::string html = casesHtml(writer);
    if (outline) {
        const std::string rule = sharingRule(writer, *outline);
        html += sheetTablesHtml(writer, outlineTables(writer, *outline)) +
                (rule.empty() ? rule : paragraphsHtml({rule}));
    }
    return html + sheetTablesHtml(writer, combinationTables(writer));
}

} // namespace gusset
