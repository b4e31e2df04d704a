#include "report/derivation/force_method_tables.hpp"

#include "core/signs.hpp"
#include "phrases/results/tables.hpp"
#include "phrases/working/force_method.hpp"
#include "phrases/working/unit_load.hpp"
#include "report/results/results_text.hpp"
#include "report/text/formula.hpp"

#include <algorithm>

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

std::string nameOf(const ForceMethodNotes& notes, const ForceMethodReaction& row) {
    return plainText(symbolRuns(notes.notation, reactionSymbol(notes, row.restraint)));
}

std::string forceCell(const ForceMethodNotes& notes, double force) {
    return formatNumber(force, numberStyleOf(notes.notation.truss));
}

std::string sumCell(const ForceMethodNotes& notes, double value) {
    return contribution(value, notes.notation.numbers);
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

template <class Row>
TextTable superposed(const ForceMethodNotes& notes, const std::vector<Row>& rows, Columns columns,
                     const char* letters) {
    const std::string force = symbolOf(notes.notation.truss.units.force);
    const std::string whole(1, letters[0]);
    const std::string unit(1, letters[1]);
    columns.add({variableToken(whole, "0")}, force);
    for (std::size_t k = 0; k < notes.method.releases.size(); ++k) {
        columns.add(product({redundantToken(k), variableToken(unit, index(k + 1))}), force);
    }
    columns.add({variableToken(whole)}, force);
    for (const Row& row : rows) {
        std::vector<std::string> cells{nameOf(notes, row), forceCell(notes, row.given)};
        for (std::size_t k = 0; k < notes.method.releases.size(); ++k) {
            cells.push_back(forceCell(notes, notes.method.redundants[k] * row.unit[k]));
        }
        cells.push_back(forceCell(notes, row.force));
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
    return product(
        {unitToken(i), variableToken("\u03B1"), variableToken("\u0394T"), variableToken("L")});
}

Formula misfitProduct(std::size_t i) { return product({unitToken(i), variableToken("\u0394L")}); }

Formula settlementProduct(std::size_t i) {
    return product({variableToken("r", index(i + 1)), variableToken("\u0394")});
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
        std::vector<std::string> cells{nameOf(notes, row), forceCell(notes, row.given)};
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
    const std::vector<SumColumn> sums = sumColumns(method);
    Columns columns(notes.notation.book, phrase::kSumsCaption, phrase::kColumnMember);
    std::vector<std::string> totals{sayPlain(notes.notation.book, phrase::kTotal)};
    for (const SumColumn& sum : sums) {
        const bool given = sum.cause == 0;
        columns.add(elasticProduct(notes, unitToken(sum.i),
                                   given ? givenToken() : unitToken(sum.cause - 1)),
                    given ? givenUnit(notes) : perRedundantUnit(notes));
        totals.push_back(sumCell(notes, given ? method.given[sum.i].elastic
                                              : method.unit[sum.i][sum.cause - 1]));
    }
    for (const ForceMethodRow& row : method.rows) {
        std::vector<std::string> cells{nameOf(notes, row)};
        for (const SumColumn& sum : sums) {
            const double other = sum.cause == 0 ? row.given : row.unit[sum.cause - 1];
            cells.push_back(sumCell(notes, row.unit[sum.i] * other * row.weight));
        }
        columns.table.rows.push_back(std::move(cells));
    }
    columns.table.rows.push_back(std::move(totals));
    return columns.table;
}

TextTable strainsTable(const ForceMethodNotes& notes) {
    const ForceMethod& method = notes.method;
    const std::string moved = symbolOf(notes.notation.truss.units.displacement);
    Columns columns(notes.notation.book, phrase::kStrainsCaption, phrase::kColumnMember);
    std::vector<std::string> totals{sayPlain(notes.notation.book, phrase::kTotal)};
    std::vector<std::vector<std::string>> cells(method.rows.size());
    const auto addColumn = [&](const Formula& name, auto valueOf, auto written) {
        columns.add(name, moved);
        for (std::size_t r = 0; r < cells.size(); ++r) {
            cells[r].push_back(written(valueOf(method.rows[r]), notes.notation.numbers));
        }
    };
    const auto addKind = [&](const Formula& growth, double ForceMethodRow::*part,
                             double GivenDisplacement::*total, Formula (*work)(std::size_t)) {
        addColumn(
            growth, [&](const ForceMethodRow& row) { return row.*part; }, formatGiven);
        totals.emplace_back();
        for (std::size_t i = 0; i < method.releases.size(); ++i) {
            addColumn(
                work(i), [&](const ForceMethodRow& row) { return row.unit[i] * row.*part; },
                contribution);
            totals.push_back(sumCell(notes, method.given[i].*total));
        }
    };
    if (anyThermal(method)) {
        addKind(product({variableToken("\u03B1"), variableToken("\u0394T"), variableToken("L")}),
                &ForceMethodRow::thermal, &GivenDisplacement::thermal, thermalProduct);
    }
    if (anyMisfit(method)) {
        addKind({variableToken("\u0394L")}, &ForceMethodRow::misfit, &GivenDisplacement::misfit,
                misfitProduct);
    }
    for (std::size_t r = 0; r < cells.size(); ++r) {
        const ForceMethodRow& row = method.rows[r];
        if (row.thermal != 0 || row.misfit != 0) {
            cells[r].insert(cells[r].begin(), nameOf(notes, row));
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
    return settlementTable(notes.notation, rows, variableToken("r", index(i + 1)),
                           variableToken("\u0394"));
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
