#pragma once
// Undo and redo, unlimited: snapshots, since models are small and a snapshot is always right.

#include "model/truss/truss.hpp"

#include <optional>
#include <string>
#include <vector>

namespace gusset {

class History {
public:
    // Keeps the model as it was before a change called `label`; discards what was undone.
    void record(std::string label, Truss before);

    // The model to go back or forward to; `now` is kept for the opposite direction. None at either
    // end.
    [[nodiscard]] std::optional<Truss> undo(Truss now);
    [[nodiscard]] std::optional<Truss> redo(Truss now);

    [[nodiscard]] std::string undoLabel() const; // empty: nothing to undo
    [[nodiscard]] std::string redoLabel() const;

    struct Entry { // the name of a change and the model on the other side of it
        std::string label;
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
