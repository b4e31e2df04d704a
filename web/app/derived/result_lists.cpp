#include "app/derived/result_lists.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

bool passes(ForceFilter filter, const ForceRow& row, const Things& picked) {
    switch (filter) {
    case ForceFilter::All:
        return true;
    case ForceFilter::Tension:
        return row.sense == Sense::Tension;
    case ForceFilter::Compression:
        return row.sense == Sense::Compression;
    case ForceFilter::Zero:
        return row.sense == Sense::Zero;
    case ForceFilter::Picked:
        return std::find(picked.members.begin(), picked.members.end(), row.member) !=
               picked.members.end();
    }
    return true;
}

SortKey keyIn(const ForceRow& row, int column) {
    // Forces are sorted by value; their letters from tension to compression.
    return column == 0 ? SortKey{{}, row.name}
                       : SortKey{column == 1 ? std::abs(row.force) : row.force, ""};
}

SortKey keyIn(const ReactionRow& row, int column) {
    return column == 0 ? SortKey{{}, row.name} : SortKey{column == 1 ? row.fx : row.fy, ""};
}

SortKey keyIn(const MovementRow& row, int column) {
    return column == 0 ? SortKey{{}, row.name}
                       : SortKey{column == 1   ? row.dx
                                 : column == 2 ? row.dy
                                               : row.size,
                                 ""};
}

SortKey keyIn(const StretchRow& row, int column) {
    return column == 0   ? SortKey{{}, row.name}
           : column == 1 ? SortKey{row.change, ""}
                         : SortKey{row.stressValue, ""};
}

SortKey keyIn(const OrdinateRow& row, int column) {
    return column == 0 ? SortKey{{}, row.name} : SortKey{column == 1 ? row.at : row.value, ""};
}

SortKey keyIn(const EnvelopeRow& row, int column) {
    switch (column) {
    case 0:
        return {{}, row.name};
    case 1:
        return {row.pull, ""};
    case 2:
        return {{}, row.tensionBy};
    case 3:
        return {row.push, ""};
    default:
        return {{}, row.compressionBy};
    }
}

template <class Row>
OrderedRows rowsIn(const std::vector<Row>& rows) {
    OrderedRows all{.count = static_cast<int>(rows.size()), .named = {0}};
    all.key = [&rows](int row, int column) {
        return keyIn(rows[static_cast<std::size_t>(row)], column);
    };
    return all;
}

template <class Row>
std::vector<int> orderedIn(const AppState& state, SortedTable table, const std::vector<Row>& rows) {
    return listed(tableViewOf(state.notebook, table), rowsIn(rows));
}

} // namespace

std::vector<int> orderedForces(const AppState& state, const Derived& derived) {
    OrderedRows rows = rowsIn(derived.forces);
    rows.wanted = [&](int row) {
        return passes(state.notebook.forceFilter, derived.forces[static_cast<std::size_t>(row)],
                      state.selection);
    };
    return listed(tableViewOf(state.notebook, SortedTable::Forces), rows);
}

std::vector<int> orderedReactions(const AppState& state, const Derived& derived) {
    return orderedIn(state, SortedTable::Reactions, derived.reactions);
}

std::vector<int> orderedMovements(const AppState& state, const Derived& derived) {
    return orderedIn(state, SortedTable::Displacements, derived.movements);
}

std::vector<int> orderedStretches(const AppState& state, const Derived& derived) {
    return orderedIn(state, SortedTable::Stretches, derived.stretches);
}

std::vector<int> orderedOrdinates(const AppState& state, const Derived& derived) {
    return orderedIn(state, SortedTable::Ordinates, derived.influence.ordinates);
}

std::vector<int> orderedExtremes(const AppState& state, SortedTable table,
                                 const std::vector<EnvelopeRow>& rows) {
    OrderedRows all = rowsIn(rows);
    all.named = {0, 2, 4}; // members, and the loads that govern them
    return listed(tableViewOf(state.notebook, table), all);
}

} // namespace gusset
