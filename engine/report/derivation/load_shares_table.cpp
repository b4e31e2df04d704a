#include "report/derivation/load_shares_table.hpp"

#include "core/signs.hpp"
#include "phrases/results/tables.hpp"
#include "phrases/working/load_shares.hpp"
#include "report/derivation/remark_text.hpp"
#include "report/results/results_text.hpp"
#include "report/text/formula.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

enum class ShareAxis { X, Y };

double partAlong(Vec2 force, ShareAxis axis) { return axis == ShareAxis::X ? force.x : force.y; }

std::string given(const Notation& notation, double value) {
    return formatGiven(value, notation.numbers);
}

// "1.5 · 2 = 3"; "≈" where one of the numbers is written rounded.
std::string equalTo(const Notation& notation, const std::string& left,
                    const std::vector<double>& written, double value) {
    const bool full =
        isGivenInFull(value) && std::all_of(written.begin(), written.end(), isGivenInFull);
    return left + (full ? " = " : std::string(" ") + kAlmost + " ") + given(notation, value);
}

std::string times(const std::string& a, const std::string& b) {
    return a + kThinSpace + kDot + kThinSpace + b;
}

// With the factor of its case before it, if that is not 1.
std::string factored(const Notation& notation, const LoadShares& shares, const std::string& size) {
    const double factor = std::fabs(shares.factor); // the sense stands in the heading
    return factor == 1 ? size : times(given(notation, factor), size);
}

// "Share ↓, kN": the sense of the numbers below it.
RichLine headOf(const Notation& notation, Phrase<> name, Vec2 direction) {
    return headed(notation.book,
                  say(notation.book, phrase::kColumnDirected,
                      {{"name", say(notation.book, name)}, {"arrow", directionArrow(direction)}}),
                  symbolOf(notation.truss.units.force));
}

// "1.8 kN/m", "1.8" without units.
std::string perLength(const Notation& notation, double size) {
    const std::string force = symbolOf(notation.truss.units.force);
    const std::string length = symbolOf(notation.truss.units.length);
    const std::string unit =
        force.empty() || length.empty() ? "" : kThinSpace + force + "/" + length;
    return given(notation, std::fabs(size)) + unit;
}

TextTable chordTable(const Notation& notation, const ChordLoad& load, const LoadShares& shares) {
    const Vec2 direction{0, load.perLength};
    TextTable table;
    table.caption = sayPlain(notation.book, phrase::kSharesOfChord,
                             {{"load", perLength(notation, load.perLength)},
                              {"direction", directionWord(notation.book, direction)},
                              {"joints", jointNames(notation, load.chord)}});
    table.head = {say(notation.book, phrase::kColumnJoint),
                  headed(notation.book, say(notation.book, phrase::kColumnLength),
                         symbolOf(notation.truss.units.length)),
                  headOf(notation, phrase::kColumnShare, shares.factor * direction)};
    table.numeric = {false, true, true};
    const std::string size = given(notation, std::fabs(load.perLength));
    for (const JointShare& share : shares.joints) {
        table.rows.push_back(
            {notation.truss.joints[share.joint.at()].label, given(notation, share.length),
             equalTo(notation,
                     times(factored(notation, shares, size), given(notation, share.length)),
                     {load.perLength, shares.factor, share.length}, std::fabs(share.force.y))});
    }
    return table;
}

// "3 kN to the right and 4 kN down".
RichLine partsOf(const Notation& notation, Vec2 force) {
    const auto one = [&](Vec2 part) {
        return say(notation.book, phrase::kForceDirected,
                   {{"size", givenForce(notation, length(part))},
                    {"direction", directionWord(notation.book, part)}});
    };
    if (force.x != 0 && force.y != 0) {
        return say(notation.book, phrase::kTwoParts,
                   {{"first", one({force.x, 0})}, {"second", one({0, force.y})}});
    }
    return one(force);
}

// "4 · 2/6 = 1.333".
std::string leverShare(const Notation& notation, const LoadShares& shares, const JointShare& share,
                       double size) {
    const double part = std::fabs(shares.factor * size) * share.length / shares.span;
    return equalTo(notation,
                   times(factored(notation, shares, given(notation, std::fabs(size))),
                         given(notation, share.length) + "/" + given(notation, shares.span)),
                   {size, shares.factor, share.length, shares.span}, part);
}

TextTable memberTable(const Notation& notation, const MemberForce& load, const LoadShares& shares) {
    const MemberId member = findMember(notation.truss, load.from, load.to);
    const Vec2 force{load.fx, load.fy};
    TextTable table;
    table.caption = sayPlain(notation.book, phrase::kSharesOfMember,
                             {{"load", partsOf(notation, force)},
                              {"member", memberName(notation.truss, member)},
                              {"at", givenLength(notation, load.at)},
                              {"joint", jointName(notation, load.from)},
                              {"span", givenLength(notation, shares.span)}});
    table.head = {say(notation.book, phrase::kColumnJoint)};
    table.numeric = {false};
    for (const Vec2 part : {Vec2{force.x, 0}, Vec2{0, force.y}}) {
        if (part != Vec2{}) {
            table.head.push_back(headOf(notation, phrase::kColumnShare, shares.factor * part));
            table.numeric.push_back(true);
        }
    }
    for (const JointShare& share : shares.joints) {
        table.rows.push_back({notation.truss.joints[share.joint.at()].label});
        for (const double size : {force.x, force.y}) {
            if (size != 0) {
                table.rows.back().push_back(leverShare(notation, shares, share, size));
            }
        }
    }
    return table;
}

TextTable weightTable(const Notation& notation, const LoadShares& shares) {
    TextTable table;
    table.caption = sayPlain(notation.book, phrase::kSharesOfWeight);
    table.head = {say(notation.book, phrase::kColumnJoint),
                  say(notation.book, phrase::kColumnMembers),
                  headOf(notation, phrase::kColumnShare, {0, -shares.factor})};
    table.numeric = {false, false, true};
    for (const JointShare& share : shares.joints) {
        table.rows.push_back({notation.truss.joints[share.joint.at()].label,
                              plainText(memberNames(notation, share.members)),
                              given(notation, std::fabs(share.force.y))});
    }
    return table;
}

// All that comes to each joint: what is placed on it first.
std::vector<std::vector<Vec2>> partsAtJoints(const Notation& notation,
                                             const std::vector<LoadShares>& all) {
    std::vector<Vec2> placed = notation.working.loads;
    std::vector<std::vector<Vec2>> parts(placed.size(), {Vec2{}});
    for (const LoadShares& shares : all) {
        for (const JointShare& share : shares.joints) {
            parts[share.joint.at()].push_back(share.force);
            placed[share.joint.at()] = placed[share.joint.at()] - share.force;
        }
    }
    for (std::size_t i = 0; i < placed.size(); ++i) {
        parts[i].front() = placed[i];
    }
    return parts;
}

// Those along an axis that are not zero, and not only the rounding of a sum of shares.
std::vector<double> partsAlong(const std::vector<Vec2>& all, double whole, ShareAxis axis) {
    constexpr double kRounding = 1e-9;
    std::vector<double> parts;
    for (const Vec2& force : all) {
        const double part = partAlong(force, axis);
        const bool isPlaced = &force == &all.front();
        if (isPlaced ? std::fabs(part) > kRounding * std::fabs(whole) : part != 0) {
            parts.push_back(part);
        }
    }
    return parts;
}

// "12 + 0.6325 ≈ 12.63", positive along the direction in the heading.
std::string sumText(const Notation& notation, const std::vector<double>& parts, double sense) {
    std::string text;
    double sum = 0;
    for (const double part : parts) {
        const double shown = sense * part;
        const std::string size = given(notation, std::fabs(shown));
        if (text.empty()) {
            text = (shown < 0 ? kMinus : "") + size;
        } else {
            text += std::string(" ") + (shown < 0 ? kMinus : "+") + " " + size;
        }
        sum += shown;
    }
    return equalTo(notation, text, parts, sum);
}

TextTable sumTable(const Notation& notation, const std::vector<LoadShares>& all) {
    TextTable table;
    table.caption = sayPlain(notation.book, phrase::kSharesAdded);
    table.head = {say(notation.book, phrase::kColumnJoint),
                  headOf(notation, phrase::kColumnSum, {1, 0}),
                  headOf(notation, phrase::kColumnSum, {0, -1})};
    table.numeric = {false, true, true};
    const std::vector<std::vector<Vec2>> parts = partsAtJoints(notation, all);
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const Vec2 load = notation.working.loads[i];
        const auto across = partsAlong(parts[i], load.x, ShareAxis::X);
        const auto upright = partsAlong(parts[i], load.y, ShareAxis::Y);
        if (across.size() > 1 || upright.size() > 1) {
            table.rows.push_back({notation.truss.joints[i].label,
                                  across.empty() ? "" : sumText(notation, across, 1),
                                  upright.empty() ? "" : sumText(notation, upright, -1)});
        }
    }
    return table;
}

void dropEmptyColumns(TextTable& table) {
    for (std::size_t column = table.head.size(); column-- > 1;) {
        const bool empty = std::all_of(table.rows.begin(), table.rows.end(), [&](const auto& row) {
            return plainText(row[column].line).empty();
        });
        if (empty) {
            const auto at = static_cast<std::ptrdiff_t>(column);
            table.head.erase(table.head.begin() + at);
            table.numeric.erase(table.numeric.begin() + at);
            for (auto& row : table.rows) {
                row.erase(row.begin() + at);
            }
        }
    }
}

} // namespace

std::vector<TextTable> loadSharesTables(const Notation& notation,
                                        const std::vector<LoadShares>& all) {
    std::vector<TextTable> tables;
    if (all.empty()) {
        return tables;
    }
    for (const LoadShares& shares : all) {
        const Load& load = notation.truss.loads[shares.load.at()];
        if (const auto* chord = std::get_if<ChordLoad>(&load.what)) {
            tables.push_back(chordTable(notation, *chord, shares));
        } else if (const auto* member = std::get_if<MemberForce>(&load.what)) {
            tables.push_back(memberTable(notation, *member, shares));
        } else {
            tables.push_back(weightTable(notation, shares));
        }
    }
    TextTable sums = sumTable(notation, all);
    dropEmptyColumns(sums);
    if (!sums.rows.empty()) {
        tables.push_back(std::move(sums));
    }
    return tables;
}

} // namespace gusset
