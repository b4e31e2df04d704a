#include "classroom/marking/follow.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <set>
#include <utility>

namespace gusset {

namespace {

// What an explanation costs: slips count first, then how well they are told.
constexpr double kSlipCost = 1;
constexpr double kUnnamedCost = 0.4;
constexpr double kFreeValueCost = 0.9; // of each more value that an unknown slip could have given
constexpr double kSeveralFitCost = 0.1;
constexpr double kTermCost = 0.02;       // many terms could be wrong, and one of them fit by chance
constexpr double kDigitsCost = 0.03;     // any two digits
constexpr double kSectionCost = 0.03;    // joints are the usual way
constexpr double kMiswrittenCost = 0.05; // the value used was not the one written
constexpr double kUnsupportedCost = 0.9;
constexpr double kGrantedCost = 0.3; // of a right value by a section that is not followed here
constexpr int kMostGranted = 2;
constexpr double kGuessCost = 0.3; // of a reaction found from no equation
// Sheets with more slips than this can sort out are explained as they come.
constexpr int kMostTrials = 400;
constexpr std::size_t kMostOpen = 4000;
constexpr std::ptrdiff_t kMostUnknown = 6; // slips of a sheet that is worth a search
constexpr double kNotUsed = std::numeric_limits<double>::max();

bool isOfValueAlone(SlipKind kind) {
    return kind == SlipKind::WrongSense || kind == SlipKind::ReactionTurned ||
           kind == SlipKind::WrongFactor || kind == SlipKind::DigitsSwapped ||
           kind == SlipKind::ZeroMisjudged;
}

struct Trial {
    OwnValues own;
    Explanation found;
    double cost = 0;
    int granted = 0; // right values that were taken though no part gives them
};

// How far a value may be from what it follows from: by the sheet's own figures, or by the
// exercise's tolerance, within which a small slip can hide as two values that are each a little
// off.
enum class Sharpness { OfTheSheet, OfTheExercise };

class SheetReader {
public:
    SheetReader(const SheetBasis& basis, const std::vector<std::optional<double>>& written,
                Sharpness sharpness)
        : basis_(basis), written_(written), rounding_(roundingOf(written)), sharpness_(sharpness) {}

    Explanation read() {
        Trial start;
        start.own.known.resize(written_.size());
        start.own.value.resize(written_.size());
        start.own.error.resize(written_.size());
        start.found.accounts.resize(written_.size());
        search(start, 0);
        if (hasFewUnknown(best_->found)) {
            search(std::move(start), kMostTrials);
        }
        return std::move(best_->found);
    }

private:
    static std::size_t at(int unknown) { return static_cast<std::size_t>(unknown); }

    // How far a value may be from what it follows from. What rounding may do counts up to twice the
    // tolerance, and all of it for a value that is right.
    bool isNear(int unknown, double value, const Estimate& expected) const {
        const double within = allowance(basis_.tolerance, expected.value, basis_.largest);
        const bool right = isRight(basis_, unknown, value);
        const double most =
            right ? within + expected.error : std::clamp(expected.error, within, 2 * within);
        const double rounding =
            roundingError(rounding_, value) * 1.01 + kRoundings * expected.error;
        const bool isSharp = sharpness_ == Sharpness::OfTheSheet;
        return std::abs(value - expected.value) <= (isSharp ? std::min(most, rounding) : most);
    }

    // What a part gives, if it gives anything.
    WrittenHere look(const Trial& trial, const PartOfTruss& part) const {
        WrittenHere here;
        for (const ActingForce& force : part.forces) {
            if (force.of == kGivenLoad || trial.own.known[at(force.of)]) {
                continue;
            }
            const std::optional<Sum> sum =
                sumFor(part, trial.own.known, force.of, basis_.structure.extent);
            if (!sum) {
                continue;
            }
            const std::optional<double> value = written_[at(force.of)];
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
    bool isWrongOfRight(const Trial& trial, const PartOfTruss& part, int unknown,
                        double value) const {
        return sharpness_ == Sharpness::OfTheSheet && !isRight(basis_, unknown, value) &&
               (trial.found.slips.empty() ||
                std::all_of(part.forces.begin(), part.forces.end(), [&](const ActingForce& force) {
                    return force.of == kGivenLoad || !trial.own.known[at(force.of)] ||
                           std::abs(trial.own.value[at(force.of)] - basis_.truth[at(force.of)]) <=
                               kRoundings * trial.own.error[at(force.of)];
                }));
    }

    bool isGivenPlainly(const Trial& trial, const PartOfTruss& part, int unknown,
                        double value) const {
        const std::vector<Sum> sums =
            plainSumsFor(basis_.structure, part, trial.own.known, unknown);
        return std::any_of(sums.begin(), sums.end(), [&](const Sum& sum) {
            const Estimate expected = estimate(part, sum, trial.own, unknown);
            // With a small share in the sum, rounding alone would let anything follow.
            return expected.error <= allowance(basis_.tolerance, expected.value, basis_.largest) &&
                   isNear(unknown, value, expected);
        });
    }

    void take(Trial& trial, int unknown, double value, double error) const {
        trial.own.known[at(unknown)] = true;
        trial.own.value[at(unknown)] = value;
        trial.own.error[at(unknown)] = error;
    }
    void takeWritten(Trial& trial, int unknown) const {
        const double value = *written_[at(unknown)];
        take(trial, unknown, value, value == 0 ? 0 : roundingError(rounding_, value));
    }

    // Takes what follows. Blanks only where nothing contradicts what would stand in them.
    bool takeFrom(Trial& trial, std::size_t index, bool takesBlanks) const {
        const WrittenHere here = look(trial, basis_.parts[index]);
        bool areAllCarried = true;
        bool takesAny = false;
        for (std::size_t i = 0; i < here.unknowns.size(); ++i) {
            const int unknown = here.unknowns[i];
            if (here.follows[i]) {
                const bool right = isRight(basis_, unknown, *here.values[i]);
                trial.found.accounts[at(unknown)] = {
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
                trial.found.accounts[at(here.unknowns[i])] = {
                    Verdict::Blank, expected.value, index, {}};
                take(trial, here.unknowns[i], expected.value, expected.error);
                takesAny = true;
            }
        }
        return takesAny;
    }

    void takeAllThatFollows(Trial& trial) const {
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

    // The cheapest first, so that the first explanation that is whole is the least one. What is
    // used for the unknowns decides what is still to be explained: of several ways to the same,
    // only the cheapest goes on.
    void search(Trial start, int most) {
        std::vector<Trial> open;
        std::set<std::vector<double>> looked;
        const auto isDearer = [](const Trial& a, const Trial& b) { return a.cost > b.cost; };
        open.push_back(std::move(start));
        for (int trials = 0; !open.empty();) {
            std::pop_heap(open.begin(), open.end(), isDearer);
            Trial trial = std::move(open.back());
            open.pop_back();
            takeAllThatFollows(trial);
            if (isWhole(trial)) {
                const bool isLeast = !isSlipless(trial);
                best_ = std::move(trial);
                if (isLeast) {
                    return;
                }
                continue; // in want of another
            }
            if (!looked.insert(usedIn(trial)).second) {
                continue;
            }
            std::vector<Trial> next = following(trial);
            if (++trials > most || open.size() > kMostOpen) {
                // No small set explains the sheet: as it comes.
                open.clear();
                next = {*std::min_element(next.begin(), next.end(), isCheaper)};
            }
            for (Trial& each : next) {
                open.push_back(std::move(each));
                std::push_heap(open.begin(), open.end(), isDearer);
            }
        }
    }

    // Taken as it comes, a sheet that a few slips explain has not many more; one of random numbers
    // has a slip in every value.
    static bool hasFewUnknown(const Explanation& found) {
        return std::count_if(found.slips.begin(), found.slips.end(), [](const FoundSlip& slip) {
                   return slip.fits.size() != 1;
               }) <= kMostUnknown;
    }

    std::vector<Trial> following(const Trial& trial) const {
        std::vector<Trial> next = slipsFrom(trial);
        if (next.empty()) {
            next.push_back(withoutEquation(trial));
        } else if (trial.granted < (givesAnyJoint(trial) ? 1 : kMostGranted)) {
            addGranted(next, trial);
        }
        return next;
    }

    // Where anything is wrong there is a slip.
    bool isSlipless(const Trial& trial) const {
        return sharpness_ == Sharpness::OfTheSheet && trial.found.slips.empty() && isWhole(trial);
    }
    static bool isCheaper(const Trial& a, const Trial& b) { return a.cost < b.cost; }
    static std::vector<double> usedIn(const Trial& trial) {
        std::vector<double> used = trial.own.value;
        for (std::size_t i = 0; i < used.size(); ++i) {
            used[i] = trial.own.known[i] ? used[i] : kNotUsed;
        }
        return used;
    }
    static bool isWhole(const Trial& trial) {
        return std::find(trial.own.known.begin(), trial.own.known.end(), false) ==
               trial.own.known.end();
    }

    std::vector<Trial> slipsFrom(const Trial& trial) const {
        std::vector<Trial> next;
        for (std::size_t index = 0; index < basis_.parts.size(); ++index) {
            const WrittenHere here = look(trial, basis_.parts[index]);
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
            if (!trial.own.known[i] && written_[i] == 0.0 && !isRight(basis_, unknown, 0)) {
                next.push_back(trial);
                addSlip(next.back(), {}, {SlipKind::LeftOut}, {unknown});
                next.back().cost += kGuessCost;
                takeWritten(next.back(), unknown);
            }
        }
        return next;
    }

    // Right not only by the tolerance, but as far as it is written.
    bool isExact(int unknown) const {
        const std::optional<double>& value = written_[at(unknown)];
        return value && std::abs(*value - basis_.truth[at(unknown)]) <=
                            kRoundings * roundingError(rounding_, *value);
    }
    bool givesAnyJoint(const Trial& trial) const {
        return std::any_of(basis_.parts.begin(), basis_.parts.end(), [&](const PartOfTruss& part) {
            return part.joints.size() == 1 && !look(trial, part).unknowns.empty();
        });
    }
    // Where only a section goes on, it may have been another one than is followed here.
    void addGranted(std::vector<Trial>& next, const Trial& before) const {
        for (int unknown = 0; unknown < static_cast<int>(written_.size()); ++unknown) {
            if (!before.own.known[at(unknown)] && isExact(unknown)) {
                Trial& trial = next.emplace_back(before);
                trial.found.accounts[at(unknown)].verdict = Verdict::Right;
                trial.cost += kGrantedCost;
                ++trial.granted;
                takeWritten(trial, unknown);
            }
        }
    }

    double costOf(std::optional<std::size_t> part, const std::vector<SlipKind>& fits,
                  std::size_t values) const {
        const std::size_t joints = part ? basis_.parts[*part].joints.size() : 1;
        const bool isSection = joints > 1 && joints < basis_.structure.joints.size();
        return kSlipCost + (isSection ? kSectionCost : 0) +
               (fits.empty()                              ? unnamedCost(values)
                : fits.size() > 1                         ? kSeveralFitCost
                : fits.front() == SlipKind::DigitsSwapped ? kDigitsCost
                : isOfValueAlone(fits.front())            ? 0
                                                          : kTermCost);
    }
    static double unnamedCost(std::size_t values) {
        return kUnnamedCost + kFreeValueCost * (static_cast<double>(values) - 1);
    }

    void addSlip(Trial& trial, std::optional<std::size_t> part, std::vector<SlipKind> fits,
                 const std::vector<int>& answers) const {
        const std::size_t number = trial.found.slips.size();
        for (const int answer : answers) {
            Account& account = trial.found.accounts[at(answer)];
            account.verdict = answer == answers.front() ? Verdict::Slip : Verdict::Carried;
            account.part = part;
            account.slip = number;
        }
        trial.cost += costOf(part, fits, answers.size());
        trial.found.slips.push_back({part, std::move(fits), answers});
    }

    void addSlipsOn(std::vector<Trial>& next, const Trial& before, std::size_t index,
                    const WrittenHere& here) const {
        const PartOfTruss& part = basis_.parts[index];
        Trial trial = before;
        std::vector<std::size_t> wrong;
        for (std::size_t i = 0; i < here.unknowns.size(); ++i) {
            trial.found.accounts[at(here.unknowns[i])].expected = here.expected[i].value;
            if (here.values[i] && !isRight(basis_, here.unknowns[i], *here.values[i])) {
                wrong.push_back(i);
            }
        }
        takeRight(trial, index, here, wrong.empty());
        std::vector<SlipKind> fits;
        if (!wrong.empty()) {
            fits = fitsOn(before, index, here);
            addWrong(trial, index, here, wrong, fits);
        }
        if (wrong.size() == 1 && fits.size() == 1 && isOfValueAlone(fits.front())) {
            Trial miswritten = trial;
            const Estimate& expected = here.expected[wrong.front()];
            take(miswritten, here.unknowns[wrong.front()], expected.value, expected.error);
            miswritten.cost += kMiswrittenCost;
            next.push_back(std::move(miswritten));
        }
        next.push_back(std::move(trial));
    }

    // The same part with the same values is met again and again.
    const std::vector<SlipKind>& fitsOn(const Trial& trial, std::size_t index,
                                        const WrittenHere& here) const {
        const PartOfTruss& part = basis_.parts[index];
        std::vector<double> key{static_cast<double>(index), static_cast<double>(here.unknowns[0]),
                                static_cast<double>(here.unknowns.size())};
        for (const ActingForce& force : part.forces) {
            if (force.of != kGivenLoad) {
                key.push_back(trial.own.known[at(force.of)] ? trial.own.value[at(force.of)]
                                                            : kNotUsed);
            }
        }
        const auto [found, isNew] = fits_.try_emplace(std::move(key));
        if (isNew) {
            found->second = slipsThatFit(basis_.structure, part, trial.own, rounding_, here);
        }
        return found->second;
    }

    // An equation that holds one of several unknowns may have been worked for itself.
    void addSlipsOnEach(std::vector<Trial>& next, const Trial& before, std::size_t index,
                        const WrittenHere& here) const {
        for (std::size_t i = 0; here.unknowns.size() > 1 && i < here.unknowns.size(); ++i) {
            if (here.values[i] && !isRight(basis_, here.unknowns[i], *here.values[i]) &&
                !plainSumsFor(basis_.structure, basis_.parts[index], before.own.known,
                              here.unknowns[i])
                     .empty()) {
                addSlipsOn(
                    next, before, index,
                    {{here.unknowns[i]}, {here.values[i]}, {here.follows[i]}, {here.expected[i]}});
            }
        }
    }

    // Right values beside a slip, or that nothing supports.
    void takeRight(Trial& trial, std::size_t index, const WrittenHere& here, bool alone) const {
        const OwnValues before = trial.own;
        for (std::size_t i = 0; i < here.unknowns.size(); ++i) {
            const int unknown = here.unknowns[i];
            if (!here.values[i] || !isRight(basis_, unknown, *here.values[i])) {
                continue;
            }
            const bool isSupported = !alone && balancesOneSum(basis_.structure, basis_.parts[index],
                                                              before, rounding_, here, i);
            trial.found.accounts[at(unknown)].verdict =
                isSupported ? Verdict::Right : Verdict::Unsupported;
            trial.found.accounts[at(unknown)].part = index;
            trial.cost += isSupported ? 0 : kUnsupportedCost;
            takeWritten(trial, unknown);
        }
    }

    void addWrong(Trial& trial, std::size_t index, const WrittenHere& here,
                  const std::vector<std::size_t>& wrong, const std::vector<SlipKind>& fits) const {
        std::vector<int> together{here.unknowns[wrong.front()]};
        std::vector<int> apart;
        for (std::size_t k = 1; k < wrong.size(); ++k) {
            const bool isOne = !fits.empty() || basis_.parts[index].joints.size() == 1 ||
                               balancesOneSum(basis_.structure, basis_.parts[index], trial.own,
                                              rounding_, here, wrong[k]);
            (isOne ? together : apart).push_back(here.unknowns[wrong[k]]);
        }
        addSlip(trial, index, fits, together);
        for (const int unknown : apart) {
            addSlip(trial, index, {}, {unknown});
        }
        for (const std::size_t i : wrong) {
            takeWritten(trial, here.unknowns[i]);
        }
    }

    // Where no part gives anything: a right value is taken as found by a way that is not followed
    // here, such as a section. Only then a wrong one is a slip of which no more can be said.
    Trial withoutEquation(const Trial& before) const {
        Trial trial = before;
        std::optional<int> wrong;
        std::optional<int> blank;
        for (int unknown = 0; unknown < static_cast<int>(written_.size()); ++unknown) {
            if (trial.own.known[at(unknown)]) {
                continue;
            }
            if (!written_[at(unknown)]) {
                blank = blank.value_or(unknown);
            } else if (isRight(basis_, unknown, *written_[at(unknown)])) {
                trial.found.accounts[at(unknown)].verdict = Verdict::Right;
                takeWritten(trial, unknown);
                return trial;
            } else {
                wrong = wrong.value_or(unknown);
            }
        }
        if (wrong) {
            addSlip(trial, {}, {}, {*wrong});
            takeWritten(trial, *wrong);
        } else {
            take(trial, *blank, basis_.truth[at(*blank)], 0);
        }
        return trial;
    }

    const SheetBasis& basis_;
    const std::vector<std::optional<double>>& written_;
    Rounding rounding_;
    Sharpness sharpness_;
    std::optional<Trial> best_;
    mutable std::map<std::vector<double>, std::vector<SlipKind>> fits_{};
};

} // namespace

namespace {

// A right value that is off by no more than the exercise allows needs no remark.
Explanation withoutTrifles(const SheetBasis& basis,
                           const std::vector<std::optional<double>>& written, Explanation found) {
    for (std::size_t i = 0; i < written.size(); ++i) {
        Account& account = found.accounts[i];
        if (account.verdict == Verdict::Unsupported && account.expected &&
            std::abs(*written[i] - *account.expected) <=
                2 * allowance(basis.tolerance, *account.expected, basis.largest)) {
            account.verdict = Verdict::Right;
        }
    }
    return found;
}

} // namespace

bool isRight(const SheetBasis& basis, int unknown, double written) {
    const double truth = basis.truth[static_cast<std::size_t>(unknown)];
    // Of numbers that are decimals, such as 1 % of 16, the last bit is not the student's.
    return std::abs(written - truth) <=
           allowance(basis.tolerance, truth, basis.largest) * (1 + 1e-9);
}

Explanation explainSheet(const SheetBasis& basis,
                         const std::vector<std::optional<double>>& written) {
    const bool isAllRight = [&] {
        for (std::size_t i = 0; i < written.size(); ++i) {
            if (written[i] && !isRight(basis, static_cast<int>(i), *written[i])) {
                return false;
            }
        }
        return true;
    }();
    if (!isAllRight) {
        Explanation mild;
        Explanation sharp = SheetReader(basis, written, Sharpness::OfTheSheet).read();
        const bool isTold =
            std::all_of(sharp.slips.begin(), sharp.slips.end(),
                        [](const FoundSlip& slip) { return slip.fits.size() == 1; });
        if (!isTold) {
            mild = SheetReader(basis, written, Sharpness::OfTheExercise).read();
        }
        // Where anything is wrong there is a slip.
        const bool takesSharp = mild.slips.empty() || mild.slips.size() >= sharp.slips.size();
        return takesSharp ? withoutTrifles(basis, written, std::move(sharp)) : mild;
    }
    return SheetReader(basis, written, Sharpness::OfTheExercise).read();
}

} // namespace gusset
