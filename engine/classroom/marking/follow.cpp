#include "classroom/marking/follow.hpp"

#include "classroom/marking/slip_trials.hpp"

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

namespace gusset {

namespace {

// Sheets with more slips than this can sort out are explained as they come.
constexpr int kMostTrials = 400;
constexpr std::size_t kMostOpen = 4000;
constexpr std::ptrdiff_t kMostUnknown = 6; // slips of a sheet that is worth a search

class SheetReader {
public:
    SheetReader(const SheetBasis& basis, const std::vector<std::optional<double>>& written,
                Sharpness sharpness)
        : sheet_(basis, written, sharpness), next_(sheet_) {}

    Explanation read() {
        search(0);
        const bool isWorthIt = hasFewUnknown(best_->found);
        if (isWorthIt) {
            search(kMostTrials);
        }
        best_->found.isOfFewSlips = isWorthIt;
        return std::move(best_->found);
    }

private:
    // The cheapest first, so that the first explanation that is whole is the least one. What is
    // used for the unknowns decides what is still to be explained: of several ways to the same,
    // only the cheapest goes on.
    void search(int most) {
        std::vector<SheetTrial> open;
        std::set<std::vector<double>> looked;
        const auto isDearer = [](const SheetTrial& a, const SheetTrial& b) {
            return a.cost != b.cost ? a.cost > b.cost : a.order > b.order;
        };
        int thought = 0;
        open.push_back(sheet_.start());
        for (int trials = 0; !open.empty();) {
            std::pop_heap(open.begin(), open.end(), isDearer);
            SheetTrial trial = std::move(open.back());
            open.pop_back();
            sheet_.takeAllThatFollows(trial);
            if (isWhole(trial)) {
                const bool isLeast = !isSlipless(trial);
                best_ = std::move(trial);
                if (isLeast) {
                    return;
                }
                continue; // in want of another
            }
            if (!looked.insert(SlipTrials::usedIn(trial)).second) {
                continue;
            }
            std::vector<SheetTrial> next = next_.after(trial);
            if (++trials > most || open.size() > kMostOpen) {
                // No small set explains the sheet: as it comes.
                open.clear();
                next = {*std::min_element(next.begin(), next.end(), isCheaper)};
            }
            for (SheetTrial& each : next) {
                each.order = ++thought;
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

    // Where anything is wrong there is a slip.
    bool isSlipless(const SheetTrial& trial) const {
        return sheet_.isSharp() && trial.found.slips.empty() && isWhole(trial);
    }
    static bool isCheaper(const SheetTrial& a, const SheetTrial& b) { return a.cost < b.cost; }
    static bool isWhole(const SheetTrial& trial) {
        return std::find(trial.own.known.begin(), trial.own.known.end(), false) ==
               trial.own.known.end();
    }

    SheetValues sheet_;
    SlipTrials next_;
    std::optional<SheetTrial> best_;
};

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

// Forces in newtons where the loads are in kilonewtons, or the reverse: all members that are wrong,
// by one factor. Their own equations, in which only the loads are odd, would tell of anything else.
constexpr double kUnitFactor = 1000;
constexpr std::size_t kSomeMembers = 3;

std::optional<Explanation> inOtherUnit(const SheetBasis& basis,
                                       const std::vector<std::optional<double>>& written,
                                       double factor) {
    Explanation found;
    found.accounts.resize(written.size());
    FoundSlip slip{{}, {SlipKind::WrongFactor}, {}};
    for (std::size_t i = 0; i < written.size(); ++i) {
        const int unknown = static_cast<int>(i);
        if (!written[i]) {
            continue;
        }
        found.accounts[i].verdict = Verdict::Right;
        if (isRight(basis, unknown, *written[i])) {
            continue;
        }
        if (i < basis.structure.restraints.size() ||
            !isRight(basis, unknown, *written[i] / factor)) {
            return std::nullopt;
        }
        found.accounts[i].verdict = slip.answers.empty() ? Verdict::Slip : Verdict::Carried;
        found.accounts[i].slip = 0;
        slip.answers.push_back(unknown);
    }
    const std::size_t members = static_cast<std::size_t>(std::count_if(
        basis.truth.begin() + static_cast<std::ptrdiff_t>(basis.structure.restraints.size()),
        basis.truth.end(), [](double force) { return force != 0; }));
    if (slip.answers.size() < kSomeMembers || slip.answers.size() != members) {
        return std::nullopt;
    }
    found.slips.push_back(std::move(slip));
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
        for (const double factor : {kUnitFactor, 1 / kUnitFactor}) {
            if (std::optional<Explanation> found = inOtherUnit(basis, written, factor)) {
                return std::move(*found);
            }
        }
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
