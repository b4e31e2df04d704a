#include "classroom/marking/sheet_values.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

// Nothing to work out: all else in the equation is 0.
bool isTrivial(const PartOfTruss& part, const Sum& sum, const OwnValues& own, int unknown,
               double nought) {
    return std::all_of(part.forces.begin(), part.forces.end(), [&](const ActingForce& force) {
        const bool isIn = force.of != unknown && std::abs(shareIn(sum, force)) > kNoShare;
        return !isIn ||
               (force.of != kGivenLoad && std::abs(own.value[placeOf(force.of)]) <= nought);
    });
}

} // namespace

SheetValues::SheetValues(const SheetBasis& basis, const std::vector<std::optional<double>>& written,
                         Sharpness sharpness)
    : basis_(basis), written_(written), rounding_(roundingOf(written)), sharpness_(sharpness) {}

const std::optional<double>& SheetValues::written(int unknown) const {
    return written_[placeOf(unknown)];
}
bool SheetValues::isWrittenRight(int unknown) const {
    return written(unknown) && isRight(basis_, unknown, *written(unknown));
}
bool SheetValues::isWrittenWrong(int unknown) const {
    return written(unknown) && !isRight(basis_, unknown, *written(unknown));
}

SheetTrial SheetValues::start() const {
    SheetTrial trial;
    trial.own.known.resize(written_.size());
    trial.own.value.resize(written_.size());
    trial.own.error.resize(written_.size());
    trial.found.accounts.resize(written_.size());
    return trial;
}

// Right not only by the tolerance, but as far as it is written.
bool SheetValues::isExact(int unknown) const {
    const std::optional<double>& value = written_[placeOf(unknown)];
    return value && std::abs(*value - basis_.truth[placeOf(unknown)]) <=
                        kRoundings * roundingError(rounding_, *value);
}

// How far a value may be from what it follows from. What rounding may do counts up to twice the
// tolerance, and all of it for a value that is right.
bool SheetValues::isNear(int unknown, double value, const Estimate& expected) const {
    const double within = allowance(basis_.tolerance, expected.value, basis_.largest);
    const bool right = isRight(basis_, unknown, value);
    const double most =
        right ? within + expected.error : std::clamp(expected.error, within, 2 * within);
    const double rounding = roundingError(rounding_, value) * 1.01 + kRoundings * expected.error;
    return std::abs(value - expected.value) <= (isSharp() ? std::min(most, rounding) : most);
}

// What a part gives, if it gives anything.
WrittenHere SheetValues::look(const SheetTrial& trial, const PartOfTruss& part) const {
    WrittenHere here;
    for (const ActingForce& force : part.forces) {
        if (force.of == kGivenLoad || trial.own.known[placeOf(force.of)]) {
            continue;
        }
        const std::vector<Sum> sums = sumsFor(basis_.structure, part, trial.own.known, force.of);
        if (!sums.empty()) {
            lookFor(here, trial, part, force.of, sums);
        }
    }
    return here;
}

// Follows from any of these equations. With a small share in one of several, rounding alone would
// let anything follow.
void SheetValues::lookFor(WrittenHere& here, const SheetTrial& trial, const PartOfTruss& part,
                          int unknown, const std::vector<Sum>& sums) const {
    const std::optional<double>& value = written_[placeOf(unknown)];
    const bool mayFollow = value && !isWrongOfRight(trial, part, unknown, *value);
    Estimate expected = estimate(part, sums.front(), trial.own, unknown);
    Sum by = sums.front();
    bool follows = mayFollow && isNear(unknown, *value, expected);
    bool isAgreed = true;
    for (std::size_t i = 1; i < sums.size(); ++i) {
        const Estimate another = estimate(part, sums[i], trial.own, unknown);
        const double within = allowance(basis_.tolerance, another.value, basis_.largest);
        isAgreed = isAgreed && std::abs(another.value - expected.value) <=
                                   within + kRoundings * ofBoth(another.error, expected.error);
        if (mayFollow && !follows && another.error <= within && isNear(unknown, *value, another)) {
            follows = true;
            expected = another;
            by = sums[i];
        }
    }
    here.unknowns.push_back(unknown);
    here.values.push_back(value);
    here.follows.push_back(follows);
    here.expected.push_back(expected);
    here.by.push_back(by);
    here.isAgreed.push_back(isAgreed);
}

// A wrong value of right ones: even where rounding could have given it, it has a slip in it.
bool SheetValues::isWrongOfRight(const SheetTrial& trial, const PartOfTruss& part, int unknown,
                                 double value) const {
    return isSharp() && !isRight(basis_, unknown, value) &&
           (trial.found.slips.empty() ||
            std::all_of(part.forces.begin(), part.forces.end(), [&](const ActingForce& force) {
                return force.of == kGivenLoad || !trial.own.known[placeOf(force.of)] ||
                       std::abs(trial.own.value[placeOf(force.of)] -
                                basis_.truth[placeOf(force.of)]) <=
                           kRoundings * trial.own.error[placeOf(force.of)];
            }));
}

void SheetValues::take(SheetTrial& trial, int unknown, double value, double error) const {
    trial.own.known[placeOf(unknown)] = true;
    trial.own.value[placeOf(unknown)] = value;
    trial.own.error[placeOf(unknown)] = error;
}
void SheetValues::takeWritten(SheetTrial& trial, int unknown) const {
    const double value = *written_[placeOf(unknown)];
    take(trial, unknown, value, value == 0 ? 0 : roundingError(rounding_, value));
}

// Takes what follows. Blanks only where nothing contradicts what would stand in them.
bool SheetValues::takeFrom(SheetTrial& trial, std::size_t index, bool takesBlanks) const {
    const WrittenHere here = look(trial, basis_.parts[index]);
    bool areAllCarried = true;
    bool takesAny = false;
    for (std::size_t i = 0; i < here.unknowns.size(); ++i) {
        const int unknown = here.unknowns[i];
        if (here.follows[i]) {
            const bool right = isRight(basis_, unknown, *here.values[i]);
            trial.found.accounts[placeOf(unknown)] = {
                right ? Verdict::Right : Verdict::Carried,
                here.expected[i].value,
                index,
                {},
                isTrivial(basis_.parts[index], here.by[i], trial.own, unknown,
                          allowance(basis_.tolerance, 0, basis_.largest))};
            takeWritten(trial, unknown);
            takesAny = true;
        } else if (here.values[i]) {
            areAllCarried = false;
        }
    }
    for (std::size_t i = 0; takesBlanks && areAllCarried && i < here.unknowns.size(); ++i) {
        if (!here.values[i]) {
            const Estimate& expected = here.expected[i];
            trial.found.accounts[placeOf(here.unknowns[i])] = {
                Verdict::Blank, expected.value, index, {}, false};
            take(trial, here.unknowns[i], expected.value, expected.error);
            takesAny = true;
        }
    }
    return takesAny;
}

void SheetValues::takeAllThatFollows(SheetTrial& trial) const {
    bool goesOn = true;
    while (goesOn) {
        goesOn = false;
        for (std::size_t i = 0; i < basis_.parts.size(); ++i) {
            goesOn = takeFrom(trial, i, false) || goesOn;
        }
        for (std::size_t i = 0; !goesOn && i < basis_.parts.size(); ++i) {
            goesOn = takeFrom(trial, i, true);
        }
    }
}

} // namespace gusset
