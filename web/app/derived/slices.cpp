#include "app/derived/slices.hpp"

#include "phrases/results/jobs.hpp"

#include <algorithm>
#include <cassert>

namespace gusset {

Slice wholeSlice() {
    const auto timeStandsStill = [] { return std::chrono::microseconds{0}; };
    return {.left = std::chrono::microseconds::max(), .clock = timeStandsStill};
}

bool Job::advance() {
    if (at_ < stages_.size() && stages_[at_].advance()) {
        ++at_;
    }
    return at_ == stages_.size();
}

bool Job::advance(Slice& slice) {
    const std::chrono::microseconds start = slice.clock();
    std::chrono::microseconds spent{0};
    bool done = at_ == stages_.size();
    while (!done && spent < slice.left) {
        done = advance();
        spent = slice.clock() - start;
    }
    slice.left -= std::min(spent, slice.left);
    return done;
}

double Job::share() const {
    if (at_ == stages_.size()) {
        return 1;
    }
    const Stage& stage = stages_[at_];
    const double within = stage.progress ? shareOf(stage.progress()) : 0;
    return (static_cast<double>(at_) + within) / static_cast<double>(stages_.size());
}

std::string Job::says(const PhraseBook& book) const {
    assert(at_ < stages_.size());
    const Stage& stage = stages_[at_];
    const Progress progress = stage.progress ? stage.progress() : Progress{};
    const RichLine what = say(book, stage.says);
    if (progress.all == 0) {
        return sayPlain(book, phrase::kJobAtWork, {{"what", what}});
    }
    return sayPlain(book, phrase::kJobCounted,
                    {{"what", what}, {"done", progress.done}, {"all", progress.all}});
}

std::string waitingText(const PhraseBook& book) { return sayPlain(book, phrase::kJobWaits); }

} // namespace gusset
