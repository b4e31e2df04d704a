#include "app/state/history.hpp"

#include <utility>

namespace gusset {

void History::record(Statement name, Truss before) {
    past_.push_back({std::move(name), std::move(before)});
    future_.clear();
}

std::optional<Truss> History::step(std::vector<Entry>& from, std::vector<Entry>& to, Truss now) {
    if (from.empty()) {
        return std::nullopt;
    }
    Entry entry = std::move(from.back());
    from.pop_back();
    to.push_back({std::move(entry.name), std::move(now)});
    return std::move(entry.truss);
}

std::optional<Truss> History::undo(Truss now) { return step(past_, future_, std::move(now)); }

std::optional<Truss> History::redo(Truss now) { return step(future_, past_, std::move(now)); }

Statement History::undoName() const { return past_.empty() ? Statement{} : past_.back().name; }

Statement History::redoName() const { return future_.empty() ? Statement{} : future_.back().name; }

History History::restored(std::vector<Entry> past, std::vector<Entry> future) {
    History history;
    history.past_ = std::move(past);
    history.future_ = std::move(future);
    return history;
}

} // namespace gusset
