#include "report/derivation/force_method_tables.hpp"

#include "core/signs.hpp"
#include "phrases/results/tables.hpp"
#include "phrases/working/force_method.hpp"
#include "phrases/working/unit_load.hpp"
#include "report/results/added_up.hpp"
#include "report/results/results_text.hpp"
#include "report/text/formula.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace gusset {
namespace {

std::string index(std::size_t i) { return std::to_string(i); }

// "kN·m"; one unit alone where the other has no symbol.
std::string productUnit(const std::string& one, const std::string& other) {
    return one.empty() || other.empty() ? one + other : one + kDot + other;
}

// A table whose first column names the row and whose others are numbers.
struct Columns {
    const PhraseBook& book;
    TextTable table;

    Columns(const PhraseBook& language, Phrase<> caption, Phrase<> rows) : book(language) {
        table.caption = sayPlain(book, caption);
        table.head = {say(book, rows)};
        table.numeric = {false};
    }
    void add(const Formula& name, const std::string& unit = {}) {
        table.head.push_back(headed(book, runsOf(name), unit));
        table.numeric.push_back(true);
    }
};

std::string nameOf(const ForceMethodNotes& notes, const ForceMethodRow& row) {
    return memberName(notes.notation.truss, row.member);
}

Symbol reactionSymbol(const ForceMethodNotes& notes, RestraintId restraint) {
    const auto& restraints = notes.notation.working.structure.restraints;
    return {.kind = SymbolKind::Reaction,
            .restraint = restraint,
            .joint = restraints[restraint.at()].joint};
}

RichLine nameOf(const ForceMethodNotes& notes, const ForceMethodReaction& row) {
    return symbolRuns(notes.notation, reactionSymbol(notes, row.restraint));
}

std::string forceCell(const ForceMethodNotes& notes, double force) {
    return formatNumber(force, numberStyleOf(notes.notation.truss));
}

// A column of what each member adds to a sum, and the sum.
struct SharesColumn {
    std::vector<double> shares;
    int decimals = 0;
    NumberStyle style;

    SharesColumn(const ForceMethodNotes& notes, std::vector<double> column, double total)
        : shares(std::move(column)), style(notes.notation.numbers) {
        double size = std::fabs(total);
        for (const double share : shares) {
            size = total == 0 ? std::max(size, std::fabs(share)) : size;
        }
        decimals = decimalsThatAddUp(shares, total, decimalsOf(size, style, kSumFigures));
    }
    [[nodiscard]] std::string cell(std::size_t row) const {
        return shareText(shares[row], decimals, style);
    }
    [[nodiscard]] std::string total() const {
        return shareText(sumOfPrinted(shares, decimals), decimals, style);
    }
};

template <class ShareOf>
SharesColumn sharesColumn(const ForceMethodNotes& notes, double total, ShareOf shareOf) {
    std::vector<double> shares;
    for (const ForceMethodRow& row : notes.method.rows) {
        shares.push_back(shareOf(row));
    }
    return {notes, std::move(shares), total};
}

// The columns of sums: each unit state paired with the given state and with every unit state.
struct SumColumn {
    std::size_t i = 0;
    std::size_t cause = 0; // 0: the given state
};
std::vector<SumColumn> sumColumns(const ForceMethod& method) {
    std::vector<SumColumn> columns;
    const std::size_t count = method.releases.size();
    for (std::size_t i = 0; i < count && !method.givenTruss.loads.empty(); ++i) {
        columns.push_back({i, 0});
    }
    for (std::size_t i = 0; i < count; ++i) {
        for (std::size_t k = i; k < count; ++k) {
            columns.push_back({i, k + 1});
        }
    }
    return columns;
}

// N_0, X_1·n_1, X_2·n_2.
template <class Row>
std::vector<double> superposedParts(const ForceMethod& method, const Row& row) {
    std::vector<double> parts{row.given};
    for (std::size_t k = 0; k < method.releases.size(); ++k) {
        parts.push_back(method.redundants[k] * row.unit[k]);
    }
    return parts;
}

// Decimals of a row's parts beyond those of its sum: in a class that counts decimals all rows have
// the same, so that the columns line up.
struct RowDecimals {
    int own = 0;
    int parts = 0;
};
template <class Row>
RowDecimals decimalsOfRow(const ForceMethodNotes& notes, const Row& row) {
    const std::vector<double> parts = superposedParts(notes.method, row);
    double size = std::fabs(row.force);
    for (const double part : parts) {
        size = row.force == 0 ? std::max(size, std::fabs(part)) : size;
    }
    const NumberStyle& style = notes.notation.numbers;
    const int own = style.form == NumberForm::Significant ? decimalsOf(size, style) : style.digits;
    return {own, decimalsThatAddUp(parts, row.force, own)};
}

template <class Row>
std::vector<RowDecimals> decimalsOfRows(const ForceMethodNotes& notes,
                                        const std::vector<Row>& rows) {
    std::vector<RowDecimals> decimals;
    int most = 0;
    for (const Row& row : rows) {
        decimals.push_back(decimalsOfRow(notes, row));
        most = std::max(most, decimals.back().parts);
    }
    for (RowDecimals& each : decimals) {
        each.parts = notes.notation.numbers.form == NumberForm::Significant ? each.parts : most;
    }
    return decimals;
}

template <class Row>
bool carriesMore(const ForceMethodNotes& notes, const std::vector<Row>& rows) {
    const std::vector<RowDecimals> decimals = decimalsOfRows(notes, rows);
    return std::any_of(decimals.begin(), decimals.end(),
                       [](const RowDecimals& each) { return each.parts > each.own; });
}

template <class Row>
TextTable superposed(const ForceMethodNotes& notes, const std::vector<Row>& rows, Columns columns,
                     const char* letters) {
    const NumberStyle& style = notes.notation.numbers;
    const std::string force = symbolOf(notes.notation.truss.units.force);
    const std::string whole(1, letters[0]);
    const std::string unit(1, letters[1]);
    columns.add({variableToken(whole, "0")}, force);
    for (std::size_t k = 0; k < notes.method.releases.size(); ++k) {
        columns.add(product({redundantToken(k), variableToken(unit, index(k + 1))}), force);
    }
    columns.add({variableToken(whole)}, force);
    const std::vector<RowDecimals> decimals = decimalsOfRows(notes, rows);
    for (std::size_t r = 0; r < rows.size(); ++r) {
        std::vector<Words> cells{nameOf(notes, rows[r])};
        for (const double part : superposedParts(notes.method, rows[r])) {
            cells.push_back(withDecimals(part, decimals[r].parts, style));
        }
        cells.push_back(forceCell(notes, rows[r].force));
        columns.table.rows.push_back(std::move(cells));
    }
    return columns.table;
}

} // namespace

Token redundantToken(std::size_t i) { return variableToken("X", index(i + 1)); }
Token unitToken(std::size_t i) { return variableToken("n", index(i + 1)); }
Token givenToken() { return variableToken("N", "0"); }
Token displacementToken(std::size_t place, std::size_t cause) {
    return variableToken("\u03B4", index(place + 1) + index(cause));
}

Symbol redundantSymbol(const ForceMethodNotes& notes, std::size_t i) {
    const MemberOrRestraint& released = notes.method.releases[i].of;
    if (const auto* restraint = std::get_if<RestraintId>(&released)) {
        return reactionSymbol(notes, *restraint);
    }
    return {.kind = SymbolKind::MemberForce, .member = std::get<MemberId>(released)};
}

bool anyThermal(const ForceMethod& method) {
    return std::any_of(method.rows.begin(), method.rows.end(),
                       [](const ForceMethodRow& row) { return row.thermal != 0; });
}

bool anyMisfit(const ForceMethod& method) {
    return std::any_of(method.rows.begin(), method.rows.end(),
                       [](const ForceMethodRow& row) { return row.misfit != 0; });
}

bool anySettlement(const ForceMethod& method) {
    return std::any_of(method.reactions.begin(), method.reactions.end(),
                       [&](const ForceMethodReaction& row) {
                           return row.settle != 0 && !isReleased(method.releases, row.restraint);
                       });
}

Formula elasticProduct(const ForceMethodNotes& notes, const Token& one, const Token& other) {
    return product(
        {one, other, notes.method.timesStiffness ? variableToken("L") : overStiffness()});
}

Formula thermalProduct(std::size_t i) {
    Formula formula{unitToken(i), operatorToken(kDot)};
    append(formula, thermalGrowth());
    return formula;
}

Formula misfitProduct(std::size_t i) { return product({unitToken(i), misfitGrowth()}); }

Formula settlementProduct(std::size_t i) {
    return product({variableToken("r", index(i + 1)), settledToken()});
}

std::string givenUnit(const ForceMethodNotes& notes) {
    const Units& units = notes.notation.truss.units;
    return notes.method.timesStiffness ? productUnit(symbolOf(units.force), symbolOf(units.length))
                                       : symbolOf(units.displacement);
}

std::string perRedundantUnit(const ForceMethodNotes& notes) {
    const Units& units = notes.notation.truss.units;
    if (notes.method.timesStiffness) {
        return symbolOf(units.length);
    }
    const std::string moved = symbolOf(units.displacement);
    const std::string force = symbolOf(units.force);
    return moved.empty() || force.empty() ? moved : moved + "/" + force;
}

TextTable releasedForcesTable(const ForceMethodNotes& notes) {
    const Units& units = notes.notation.truss.units;
    const bool stiffness = !notes.method.timesStiffness;
    Columns columns(notes.notation.book, phrase::kReleasedForcesCaption, phrase::kColumnMember);
    columns.add({givenToken()}, symbolOf(units.force));
    for (std::size_t k = 0; k < notes.method.releases.size(); ++k) {
        columns.add({unitToken(k)});
    }
    columns.add({variableToken("L")}, symbolOf(units.length));
    if (stiffness) {
        columns.add({variableToken("EA")}, symbolOf(units.force));
        columns.add({overStiffness()}, perRedundantUnit(notes));
    }
    for (const ForceMethodRow& row : notes.method.rows) {
        std::vector<Words> cells{nameOf(notes, row), forceCell(notes, row.given)};
        for (std::size_t k = 0; k < notes.method.releases.size(); ++k) {
            cells.push_back(unitForce(row.unit[k], notes.notation.numbers));
        }
        cells.push_back(formatGiven(row.length, notes.notation.numbers));
        if (stiffness) {
            cells.push_back(stiffnessText(row.stiffness, notes.notation.numbers));
            cells.push_back(formatGiven(row.weight, notes.notation.numbers));
        }
        columns.table.rows.push_back(std::move(cells));
    }
    return columns.table;
}

TextTable sumsTable(const ForceMethodNotes& notes) {
    const ForceMethod& method = notes.method;
    Columns columns(notes.notation.book, phrase::kSumsCaption, phrase::kColumnMember);
    std::vector<Words> totals{sayPlain(notes.notation.book, phrase::kTotal)};
    for (const ForceMethodRow& row : method.rows) {
        columns.table.rows.push_back({nameOf(notes, row)});
    }
    for (const SumColumn& sum : sumColumns(method)) {
        const bool given = sum.cause == 0;
        columns.add(elasticProduct(notes, unitToken(sum.i),
                                   given ? givenToken() : unitToken(sum.cause - 1)),
                    given ? givenUnit(notes) : perRedundantUnit(notes));
        const SharesColumn column = sharesColumn(
            notes, given ? method.given[sum.i].elastic : method.unit[sum.i][sum.cause - 1],
            [&](const ForceMethodRow& row) {
                return row.unit[sum.i] * (given ? row.given : row.unit[sum.cause - 1]) * row.weight;
            });
        for (std::size_t r = 0; r < method.rows.size(); ++r) {
            columns.table.rows[r].push_back(column.cell(r));
        }
        totals.push_back(column.total());
    }
    columns.table.rows.push_back(std::move(totals));
    return columns.table;
}

namespace {

// Columns of growth from one cause, and of the work that n does on it.
struct StrainKind {
    Formula growth;
    double ForceMethodRow::*part;
    double GivenDisplacement::*total;
    Formula (*work)(std::size_t);
};

std::vector<StrainKind> strainKinds(const ForceMethod& method) {
    std::vector<StrainKind> kinds;
    if (anyThermal(method)) {
        kinds.push_back({thermalGrowth(), &ForceMethodRow::thermal, &GivenDisplacement::thermal,
                         thermalProduct});
    }
    if (anyMisfit(method)) {
        kinds.push_back(
            {{misfitGrowth()}, &ForceMethodRow::misfit, &GivenDisplacement::misfit, misfitProduct});
    }
    return kinds;
}

} // namespace

TextTable strainsTable(const ForceMethodNotes& notes) {
    const ForceMethod& method = notes.method;
    const std::string moved = symbolOf(notes.notation.truss.units.displacement);
    Columns columns(notes.notation.book, phrase::kStrainsCaption, phrase::kColumnMember);
    std::vector<Words> totals{sayPlain(notes.notation.book, phrase::kTotal)};
    std::vector<std::vector<Words>> cells;
    for (const ForceMethodRow& row : method.rows) {
        cells.push_back({nameOf(notes, row)});
    }
    for (const StrainKind& kind : strainKinds(method)) {
        columns.add(kind.growth, moved);
        totals.emplace_back("");
        for (std::size_t r = 0; r < cells.size(); ++r) {
            cells[r].push_back(formatGiven(method.rows[r].*kind.part, notes.notation.numbers));
        }
        for (std::size_t i = 0; i < method.releases.size(); ++i) {
            columns.add(kind.work(i), moved);
            const SharesColumn column =
                sharesColumn(notes, method.given[i].*kind.total, [&](const ForceMethodRow& row) {
                    return row.unit[i] * row.*kind.part;
                });
            for (std::size_t r = 0; r < cells.size(); ++r) {
                cells[r].push_back(column.cell(r));
            }
            totals.push_back(column.total());
        }
    }
    for (std::size_t r = 0; r < cells.size(); ++r) {
        if (method.rows[r].thermal != 0 || method.rows[r].misfit != 0) {
            columns.table.rows.push_back(std::move(cells[r]));
        }
    }
    columns.table.rows.push_back(std::move(totals));
    return columns.table;
}

TextTable settlementsTable(const ForceMethodNotes& notes, std::size_t i) {
    std::vector<SettlementRow> rows;
    for (const ForceMethodReaction& row : notes.method.reactions) {
        if (row.settle != 0 && !isReleased(notes.method.releases, row.restraint)) {
            rows.push_back({row.restraint, row.unit[i], row.settle, -row.unit[i] * row.settle});
        }
    }
    std::vector<double> shares;
    for (const SettlementRow& row : rows) {
        shares.push_back(row.contribution);
    }
    const SharesColumn column(notes, std::move(shares), notes.method.given[i].settlement);
    return settlementTable(notes.notation, rows, variableToken("r", index(i + 1)), column.decimals);
}

bool superpositionCarriesMore(const ForceMethodNotes& notes) {
    return carriesMore(notes, notes.method.rows) || carriesMore(notes, notes.method.reactions);
}

TextTable superposedForcesTable(const ForceMethodNotes& notes) {
    return superposed(notes, notes.method.rows,
                      Columns(notes.notation.book, phrase::kMemberForces, phrase::kColumnMember),
                      "Nn");
}

TextTable superposedReactionsTable(const ForceMethodNotes& notes) {
    return superposed(notes, notes.method.reactions,
                      Columns(notes.notation.book, phrase::kReactions, phrase::kColumnReaction),
                      "Rr");
}

} // namespace gusset
