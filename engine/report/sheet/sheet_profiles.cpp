#include "report/sheet/sheet_profiles.hpp"

#include "design/sizing/sizing.hpp"
#include "phrases/results/sheet.hpp"
#include "phrases/results/tables.hpp"
#include "phrases/working/load_shares.hpp"
#include "report/results/measures.hpp"
#include "statics/equilibrium/structure.hpp"

#include <algorithm>

namespace gusset {
namespace {

struct ProfileSum {
    int members = 0;
    double length = 0; // m
    double mass = 0;   // kg
    bool isWeighed = true;

    void add(double lengthOfMember, double massOfMember) {
        ++members;
        length += lengthOfMember;
        mass += massOfMember;
        isWeighed = isWeighed && massOfMember > 0;
    }
};

std::vector<Words> rowOf(const Truss& truss, Words name, const ProfileSum& sum) {
    constexpr int kLengthDigits = 2;
    constexpr int kMassDigits = 1;
    const double length = sum.length * measuresOf(truss).perMetre;
    const double mass = sum.mass * measuresOf(truss).perKilogram;
    return {std::move(name), std::to_string(sum.members), decimals(truss, length, kLengthDigits),
            sum.isWeighed ? decimals(truss, mass / length, kMassDigits) : std::string(),
            sum.isWeighed ? decimals(truss, mass, kMassDigits) : std::string()};
}

} // namespace

bool hasProfiles(const Truss& truss) {
    return std::any_of(truss.members.begin(), truss.members.end(),
                       [](const Member& member) { return !member.section.empty(); });
}

TextTable profilesTable(const Writer& writer) {
    const Truss& truss = writer.truss;
    const Measures& measures = measuresOf(truss);
    TextTable table{sayPlain(writer, phrase::kProfilesCaption),
                    {say(writer, phrase::kColumnSection), say(writer, phrase::kHeadMembers),
                     headed(writer, say(writer, phrase::kColumnLength), measures.length),
                     plainLine(measures.massPerLength),
                     headed(writer, say(writer, phrase::kColumnMass), measures.mass)},
                    {},
                    {false, true, true, true, true}};
    if (!hasProfiles(truss)) {
        return table;
    }
    const std::vector<double> masses = massesOf(truss);
    const std::vector<Bar> bars = structureOf(truss).bars;
    ProfileSum all;
    for (const Section& section : truss.sections) {
        ProfileSum sum;
        for (std::size_t i = 0; i < truss.members.size(); ++i) {
            if (truss.members[i].section == section.id) {
                sum.add(bars[i].length, masses[i]);
                all.add(bars[i].length, masses[i]);
            }
        }
        if (sum.members > 0) {
            table.rows.push_back(rowOf(truss, section.id, sum));
        }
    }
    std::vector<Words> last = rowOf(truss, sayPlain(writer, phrase::kAllOfThem), all);
    last[3] = std::string(); // they are not one profile
    table.rows.push_back(std::move(last));
    return table;
}

} // namespace gusset
