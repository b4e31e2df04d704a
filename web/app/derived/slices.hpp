#pragma once
// Long calculations are done in slices, one a frame. What a page shows is made by a job; while one
// is in progress the page says how far it has got, and the next edit abandons it.

#include "core/progress.hpp"
#include "report/text/phrases.hpp"

#include <chrono>
#include <cstddef>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace gusset {

// The time that one frame allows for all long calculations together.
struct Slice {
    std::chrono::microseconds left{0};
    std::function<std::chrono::microseconds()> clock{}; // of the platform, from any origin
    // The truss changes in every frame, as during a drag: slow work waits until it stops.
    bool moves = false;
};
// Unlimited: for what is wanted at once, such as printing, and for tests.
[[nodiscard]] Slice wholeSlice();

// Stages run one after another.
struct Stage {
    Phrase<> says{};                      // what it is doing
    std::function<bool()> advance{};      // does one unit; true when the stage is done
    std::function<Progress()> progress{}; // none if there is nothing to count
};
class Job {
public:
    void add(Stage stage) { stages_.push_back(std::move(stage)); }

    bool advance(); // does one unit; true when all is done
    // Does units until all is done (true) or the slice has run out.
    bool advance(Slice&);

    [[nodiscard]] double share() const; // fraction done; never decreases
    [[nodiscard]] std::string says(const PhraseBook&) const;

private:
    std::vector<Stage> stages_;
    std::size_t at_ = 0; // the current stage
};

// A stage that runs a task (core/progress). `begin` makes the task when its turn comes; `end`
// receives it when it is done.
template <class Begin, class End>
[[nodiscard]] Stage stageOf(Phrase<> says, Begin begin, End end) {
    using Task = decltype(begin());
    auto task = std::make_shared<std::optional<Task>>();
    const auto advance = [task, begin, end] {
        if (!*task) {
            task->emplace(begin());
            return false;
        }
        if (!(*task)->advance()) {
            return false;
        }
        end(**task);
        return true;
    };
    const auto progress = [task] { return *task ? (*task)->progress() : Progress{}; };
    return {says, advance, progress};
}
// A stage of one unit.
template <class Work>
[[nodiscard]] Stage stageOf(Phrase<> says, Work work) {
    return {says,
            [work] {
                work();
                return true;
            },
            {}};
}

// A page's content in the making, with the keys that it is made for.
template <class Shown>
struct Making {
    std::shared_ptr<Shown> made{}; // none: nothing is in progress
    Job job{};
    bool isLong = false; // the last one did not finish in its first slice
};

// Brings what is shown up to date. `isOf`: whether a value is what the state asks for;
// `begin(shown)`: returns a job that makes it, and sets its keys at once. True while there is more
// to do.
template <class Shown, class IsOf, class Begin>
bool bringUpToDate(Slice& slice, Making<Shown>& making, Shown& shown, IsOf isOf, Begin begin) {
    if (isOf(shown)) {
        making.made.reset();
        return false;
    }
    if (making.made && !isOf(*making.made)) {
        making.made.reset();
    }
    if (!making.made) {
        if (slice.moves && making.isLong) {
            return true;
        }
        making.made = std::make_shared<Shown>();
        making.job = begin(making.made);
        making.isLong = false;
    }
    if (!making.job.advance(slice)) {
        making.isLong = true;
        return true;
    }
    shown = std::move(*making.made);
    making.made.reset();
    making.job = {};
    return false;
}

[[nodiscard]] std::string waitingText(const PhraseBook&);
// How far it has got, in words, or that it is waiting.
template <class Shown>
[[nodiscard]] std::string saysOf(const PhraseBook& book, const Making<Shown>& making) {
    return making.made ? making.job.says(book) : waitingText(book);
}

} // namespace gusset
