#include "classroom/marking/slip_trials.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace gusset {

namespace {

// What an explanation costs: slips count first, then how well they are told.
constexpr double kSlipCost = 1;
constexpr double kUnnamedCost = 0.4;
constexpr double kSeveralFitCost = 0.1;
constexpr double kTermCost = 0.02;       // many terms could be wrong, and one of them fit by chance
constexpr double kDigitsCost = 0.03;     // any two digits
constexpr double kSymmetryCost = -0.01;  // two values, seen at once
constexpr double kRoundedOff = 1.01;     // the last bit of half a unit
constexpr double kSectionCost = 0.03;    // joints are the usual way
constexpr double kMiswrittenCost = 0.05; // the value used was not the one written
constexpr double kUnsupportedCost = 0.9;
constexpr double kGrantedCost = 0.3; // of a right value by a section that is not followed here
constexpr int kMostGranted = 2;
constexpr double kGuessCost = 0.3; // of a reaction found from no equation
constexpr double kNotUsed = std::numeric_limits<double>::max();

bool isOfValueAlone(SlipKind kind) {
    return kind == SlipKind::WrongSense || kind == SlipKind::ReactionTurned ||
           kind == SlipKind::WrongFactor || kind == SlipKind::DigitsSwapped ||
           kind == SlipKind::ZeroMisjudged;
}

WrittenHere onlyOf(const WrittenHere& here, std::size_t i) {
    return {{here.unknowns[i]}, {here.values[i]}, {here.follows[i]},
            {here.expected[i]}, {here.by[i]},     {here.isAgreed[i]}};
}

} // namespace

std::vector<double> SlipTrials::usedIn(const SheetTrial& trial) {
    std::vector<double> used = trial.own.value;
    for (std::size_t i = 0; i < used.size(); ++i) {
        used[i] = trial.own.known[i] ? used[i] : kNotUsed;
    }
    return used;
}

std::vector<SheetTrial> SlipTrials::after(const SheetTrial& trial) {
    std::vector<SheetTrial> next = slipsFrom(trial);
    if (next.empty()) {
        next.push_back(withoutEquation(trial));
    } else if (trial.granted < (givesAnyJoint(trial) ? 1 : kMostGranted)) {
        addGranted(next, trial);
    }
    addBySymmetry(next, trial);
    return next;
}

// Two upright reactions of which each is half of all loads, where they are not equal: written
// without an equation, whether or not one would give them.
void SlipTrials::addBySymmetry(std::vector<SheetTrial>& next, const SheetTrial& before) const {
    double total = 0;
    for (const ActingForce& force : basis_.parts.front().forces) {
        total += force.of == kGivenLoad ? force.along.y : 0;
    }
    std::vector<int> halves;
    std::vector<int> wrong;
    std::size_t upright = 0;
    for (std::size_t i = 0; i < basis_.structure.restraints.size(); ++i) {
        const int unknown = static_cast<int>(i);
        const double along = basis_.structure.restraints[i].along.y;
        if (std::abs(along) < 1 - kNoShare) {
            continue;
        }
        ++upright;
        const std::optional<double>& value = sheet_.written(unknown);
        if (value && !before.own.known[i] &&
            std::abs(*value + total / 2 / along) <=
                roundingError(sheet_.rounding(), *value) * kRoundedOff) {
            halves.push_back(unknown);
            if (sheet_.isWrittenWrong(unknown)) {
                wrong.push_back(unknown);
            }
        }
    }
    if (total == 0 || upright != 2 || halves.size() != 2 || wrong.empty()) {
        return;
    }
    SheetTrial& trial = next.emplace_back(before);
    addSlip(trial, std::size_t{0}, {SlipKind::BySymmetry}, wrong);
    for (const int unknown : halves) {
        if (sheet_.isWrittenRight(unknown)) {
            trial.found.accounts[placeOf(unknown)].verdict = Verdict::Right;
        }
        sheet_.takeWritten(trial, unknown);
    }
}

std::vector<SheetTrial> SlipTrials::slipsFrom(const SheetTrial& trial) {
    std::vector<SheetTrial> next;
    for (std::size_t index = 0; index < basis_.parts.size(); ++index) {
        const WrittenHere here = sheet_.look(trial, basis_.parts[index]);
        const auto isAnswered = [](const std::optional<double>& value) {
            return value.has_value();
        };
        if (std::any_of(here.values.begin(), here.values.end(), isAnswered)) {
            addSlipsOn(next, trial, index, here);
            addSlipsOnEach(next, trial, index, here);
        }
    }
    for (std::size_t i = 0; i < basis_.structure.restraints.size(); ++i) {
        const int unknown = static_cast<int>(i);
        if (!trial.own.known[i] && sheet_.written(unknown) == 0.0 &&
            sheet_.isWrittenWrong(unknown)) {
            next.push_back(trial);
            addSlip(next.back(), {}, {SlipKind::LeftOut}, {unknown});
            next.back().cost += kGuessCost;
            sheet_.takeWritten(next.back(), unknown);
        }
    }
    return next;
}

bool SlipTrials::givesAnyJoint(const SheetTrial& trial) const {
    return std::any_of(basis_.parts.begin(), basis_.parts.end(), [&](const PartOfTruss& part) {
        return part.joints.size() == 1 && !sheet_.look(trial, part).unknowns.empty();
    });
}
// Where only a section goes on, it may have been another one than is followed here.
void SlipTrials::addGranted(std::vector<SheetTrial>& next, const SheetTrial& before) const {
    for (int unknown = 0; placeOf(unknown) < basis_.truth.size(); ++unknown) {
        if (!before.own.known[placeOf(unknown)] && sheet_.isExact(unknown)) {
            SheetTrial& trial = next.emplace_back(before);
            trial.found.accounts[placeOf(unknown)].verdict = Verdict::Right;
            trial.cost += kGrantedCost;
            ++trial.granted;
            sheet_.takeWritten(trial, unknown);
        }
    }
}

double SlipTrials::costOf(std::optional<std::size_t> part,
                          const std::vector<SlipKind>& fits) const {
    const std::size_t joints = part ? basis_.parts[*part].joints.size() : 1;
    const bool isSection = joints > 1 && joints < basis_.structure.joints.size();
    return kSlipCost + (isSection ? kSectionCost : 0) +
           (fits.empty()                              ? kUnnamedCost
            : fits.size() > 1                         ? kSeveralFitCost
            : fits.front() == SlipKind::DigitsSwapped ? kDigitsCost
            : fits.front() == SlipKind::BySymmetry    ? kSymmetryCost
            : isOfValueAlone(fits.front())            ? 0
                                                      : kTermCost);
}
void SlipTrials::addSlip(SheetTrial& trial, std::optional<std::size_t> part,
                         std::vector<SlipKind> fits, const std::vector<int>& answers) const {
    const std::size_t number = trial.found.slips.size();
    for (const int answer : answers) {
        Account& account = trial.found.accounts[placeOf(answer)];
        account.verdict = answer == answers.front() ? Verdict::Slip : Verdict::Carried;
        account.part = part;
        account.slip = number;
    }
    trial.cost += costOf(part, fits);
    trial.found.slips.push_back({part, std::move(fits), answers});
}

void SlipTrials::addSlipsOn(std::vector<SheetTrial>& next, const SheetTrial& before,
                            std::size_t index, const WrittenHere& here) {
    SheetTrial trial = before;
    std::vector<std::size_t> wrong;
    for (std::size_t i = 0; i < here.unknowns.size(); ++i) {
        trial.found.accounts[placeOf(here.unknowns[i])].expected =
            here.isAgreed[i] ? std::optional(here.expected[i].value) : std::nullopt;
        if (sheet_.isWrittenWrong(here.unknowns[i])) {
            wrong.push_back(i);
        }
    }
    takeRight(trial, index, here, wrong.empty());
    if (wrong.empty()) {
        next.push_back(std::move(trial));
        return;
    }
    const std::vector<SlipKind>& fits = fitsOn(before, index, here);
    if (fits.empty()) {
        // Any of them may be the slip. Whether the others follow from it is yet to be seen.
        for (const std::size_t i : wrong) {
            SheetTrial& one = next.emplace_back(trial);
            addSlip(one, index, {}, {here.unknowns[i]});
            sheet_.takeWritten(one, here.unknowns[i]);
        }
        return;
    }
    if (wrong.size() > 1 && fits.size() == 1 && isOfValueAlone(fits.front())) {
        // Then it is of one of them, and the others are to follow from that.
        const std::size_t until = next.size();
        for (const std::size_t i : wrong) {
            if (const WrittenHere alone = onlyOf(here, i); !fitsOn(before, index, alone).empty()) {
                addSlipsOn(next, before, index, alone);
            }
        }
        if (next.size() > until) {
            return;
        }
    }
    std::vector<int> answers;
    for (const std::size_t i : wrong) {
        answers.push_back(here.unknowns[i]);
    }
    addSlip(trial, index, fits, answers);
    if (wrong.size() == 1 && fits.size() == 1 && isOfValueAlone(fits.front())) {
        SheetTrial miswritten = trial;
        const Estimate& expected = here.expected[wrong.front()];
        sheet_.take(miswritten, here.unknowns[wrong.front()], expected.value, expected.error);
        miswritten.cost += kMiswrittenCost;
        next.push_back(std::move(miswritten));
    }
    for (const int unknown : answers) {
        sheet_.takeWritten(trial, unknown);
    }
    next.push_back(std::move(trial));
}

const std::vector<SlipKind>& SlipTrials::fitsOn(const SheetTrial& trial, std::size_t index,
                                                const WrittenHere& here) {
    const PartOfTruss& part = basis_.parts[index];
    std::vector<double> key{static_cast<double>(index), static_cast<double>(here.unknowns[0]),
                            static_cast<double>(here.unknowns.size())};
    for (const ActingForce& force : part.forces) {
        if (force.of != kGivenLoad) {
            key.push_back(trial.own.known[placeOf(force.of)] ? trial.own.value[placeOf(force.of)]
                                                             : kNotUsed);
        }
    }
    const auto [found, isNew] = fits_.try_emplace(std::move(key));
    if (isNew) {
        found->second = slipsThatFit(basis_.structure, part, trial.own, sheet_.rounding(), here);
    }
    return found->second;
}

// An equation that holds one of several unknowns may have been worked for itself.
void SlipTrials::addSlipsOnEach(std::vector<SheetTrial>& next, const SheetTrial& before,
                                std::size_t index, const WrittenHere& here) {
    for (std::size_t i = 0; here.unknowns.size() > 1 && i < here.unknowns.size(); ++i) {
        if (sheet_.isWrittenWrong(here.unknowns[i]) &&
            !plainSumsFor(basis_.structure, basis_.parts[index], before.own.known, here.unknowns[i])
                 .empty()) {
            addSlipsOn(next, before, index, onlyOf(here, i));
        }
    }
}

// Right values beside a slip, or that nothing supports.
void SlipTrials::takeRight(SheetTrial& trial, std::size_t index, const WrittenHere& here,
                           bool alone) const {
    const OwnValues before = trial.own;
    for (std::size_t i = 0; i < here.unknowns.size(); ++i) {
        const int unknown = here.unknowns[i];
        if (!sheet_.isWrittenRight(unknown)) {
            continue;
        }
        const bool isSupported = !alone && PartAsWritten(basis_.structure, basis_.parts[index],
                                                         before, sheet_.rounding(), here)
                                               .isCarried(i);
        trial.found.accounts[placeOf(unknown)].verdict =
            isSupported ? Verdict::Right : Verdict::Unsupported;
        trial.found.accounts[placeOf(unknown)].part = index;
        trial.cost += isSupported ? 0 : kUnsupportedCost;
        sheet_.takeWritten(trial, unknown);
    }
}

// Where no part gives anything: a right value is taken as found by a way that is not followed
// here, such as a section. Only then a wrong one is a slip of which no more can be said.
SheetTrial SlipTrials::withoutEquation(const SheetTrial& before) const {
    SheetTrial trial = before;
    std::optional<int> wrong;
    std::optional<int> blank;
    for (int unknown = 0; placeOf(unknown) < basis_.truth.size(); ++unknown) {
        if (trial.own.known[placeOf(unknown)]) {
            continue;
        }
        if (!sheet_.written(unknown)) {
            blank = blank.value_or(unknown);
        } else if (sheet_.isWrittenRight(unknown)) {
            trial.found.accounts[placeOf(unknown)].verdict = Verdict::Right;
            sheet_.takeWritten(trial, unknown);
            return trial;
        } else {
            wrong = wrong.value_or(unknown);
        }
    }
    if (wrong) {
        addSlip(trial, {}, {}, {*wrong});
        sheet_.takeWritten(trial, *wrong);
    } else {
        sheet_.take(trial, *blank, basis_.truth[placeOf(*blank)], 0);
    }
    return trial;
}

} // namespace gusset
