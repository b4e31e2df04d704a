#pragma once
// Undo and redo, unlimited: snapshots, since models are small and a snapshot is always right.

#include "core/statement.hpp"
#include "model/truss/truss.hpp"

#include <optional>
#include <vector>

namespace gusset {

class History {
public:
    // Keeps the model as it was before a change called `name`; discards what was undone.
    void record(Statement name, Truss before);

    // The model to go back or forward to; `now` is kept for the opposite direction. None at either
    // end.
    [[nodiscard]] std::optional<Truss> undo(Truss now);
    [[nodiscard]] std::optional<Truss> redo(Truss now);

    [[nodiscard]] Statement undoName() const; // empty: nothing to undo
    [[nodiscard]] Statement redoName() const;

    struct Entry { // the name of a change and the model on the other side of it
        Statement name;
        Truss truss;
    };
    // Oldest first; the last is the next to be undone or redone. For saving.
    [[nodiscard]] const std::vector<Entry>& past() const { return past_; }
    [[nodiscard]] const std::vector<Entry>& future() const { return future_; }
    [[nodiscard]] static History restored(std::vector<Entry> past, std::vector<Entry> future);

private:
    static std::optional<Truss> step(std::vector<Entry>& from, std::vector<Entry>& to, Truss now);

    std::vector<Entry> past_;
    std::vector<Entry> future_;
};

} // namespace gusset
