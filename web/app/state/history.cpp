#include "app/state/history.hpp"

#include <utility>

namespace gusset {

void History::record(std::string label, Truss before) {
    past_.push_back({std::move(label), std::move(before)});
    future_.clear();
}

std::optional<Truss> History::step(std::vector<Entry>& from, std::vector<Entry>& to, Truss now) {
    if (from.empty()) {
        return std::nullopt;
    }
    Entry entry = std::move(from.back());
    from.pop_back();
    to.push_back({std::move(entry.label), std::move(now)});
    return std::move(entry.truss);
}

std::optional<Truss> History::undo(Truss now) { return step(past_, future_, std::move(now)); }

std::optional<Truss> History::redo(Truss now) { return step(future_, past_, std::move(now)); }

std::string History::undoLabel() const { return past_.empty() ? "" : past_.back().label; }

std::string History::redoLabel() const { return future_.empty() ? "" : future_.back().label; }

History History::restored(std::vector<Entry> past, std::vector<Entry> future) {
    History history;
    history.past_ = std::move(past);
    history.future_ = std::move(future);
    return history;
}

} // namespace gusset
