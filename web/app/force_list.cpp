#include "app/force_list.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

bool isWanted(const AppState& state, const ForceRow& row) {
    const std::vector<MemberId>& picked = state.selection.members;
    switch (state.notebook.forceFilter) {
    case ForceFilter::All:
        return true;
    case ForceFilter::Tension:
        return row.sense == Sense::Tension;
    case ForceFilter::Compression:
        return row.sense == Sense::Compression;
    case ForceFilter::Zero:
        return row.sense == Sense::Zero;
    case ForceFilter::Picked:
        return std::find(picked.begin(), picked.end(), row.member) != picked.end();
    }
    return true;
}

bool comesBefore(ForceOrder order, const ForceRow& a, const ForceRow& b) {
    switch (order) {
    case ForceOrder::AsDrawn:
        return false;
    case ForceOrder::ByName:
        return a.name < b.name;
    case ForceOrder::BySize:
        return std::fabs(a.force) > std::fabs(b.force);
    case ForceOrder::TensionFirst:
        return a.force > b.force;
    }
    return false;
}

} // namespace

std::vector<int> listedForces(const AppState& state, const Derived& derived) {
    const std::vector<ForceRow>& rows = derived.forces;
    std::vector<int> places;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        if (isWanted(state, rows[i])) {
            places.push_back(static_cast<int>(i));
        }
    }
    std::stable_sort(places.begin(), places.end(), [&](int a, int b) {
        return comesBefore(state.notebook.forceOrder, rows[static_cast<std::size_t>(a)],
                           rows[static_cast<std::size_t>(b)]);
    });
    return places;
}

} // namespace gusset
