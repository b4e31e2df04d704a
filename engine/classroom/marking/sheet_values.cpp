#include "classroom/marking/sheet_values.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

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
        const std::optional<Sum> sum =
            sumFor(part, trial.own.known, force.of, basis_.structure.extent);
        if (!sum) {
            continue;
        }
        const std::optional<double> value = written_[placeOf(force.of)];
        here.unknowns.push_back(force.of);
        here.values.push_back(value);
        here.expected.push_back(estimate(part, *sum, trial.own, force.of));
        here.follows.push_back(value && !isWrongOfRight(trial, part, force.of, *value) &&
                               (isNear(force.of, *value, here.expected.back()) ||
                                isGivenPlainly(trial, part, force.of, *value)));
    }
    return here;
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

bool SheetValues::isGivenPlainly(const SheetTrial& trial, const PartOfTruss& part, int unknown,
                                 double value) const {
    const std::vector<Sum> sums = plainSumsFor(basis_.structure, part, trial.own.known, unknown);
    return std::any_of(sums.begin(), sums.end(), [&](const Sum& sum) {
        const Estimate expected = estimate(part, sum, trial.own, unknown);
        // With a small share in the sum, rounding alone would let anything follow.
        return expected.error <= allowance(basis_.tolerance, expected.value, basis_.largest) &&
               isNear(unknown, value, expected);
    });
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
                right ? Verdict::Right : Verdict::Carried, here.expected[i].value, index, {}};
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
                Verdict::Blank, expected.value, index, {}};
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
