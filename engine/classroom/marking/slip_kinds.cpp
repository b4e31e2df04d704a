#include "classroom/marking/slip_kinds.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace gusset {

namespace {

constexpr double kGravity = 9.81;      // m/s², as taught
constexpr double kToldFrom = 20;       // times its error: so much more is a value than nothing
constexpr double kFactorWithin = 0.02; // of what it would be
constexpr double kSomeArm = 0.02;      // of the right one
constexpr Sum kSumX{{1, 0}, false, {}};
constexpr Sum kSumY{{0, 1}, false, {}};

Vec2 swapped(Vec2 along) {
    return {std::copysign(std::abs(along.y), along.x), std::copysign(std::abs(along.x), along.y)};
}
bool isInclined(Vec2 along) {
    return std::abs(along.x) > kNoShare * length(along) &&
           std::abs(along.y) > kNoShare * length(along);
}

class SlipReader {
public:
    SlipReader(const Structure& structure, const PartOfTruss& part, const OwnValues& own,
               const Rounding& rounding, const WrittenHere& here)
        : structure_(structure), part_(part), own_(own), rounding_(rounding), here_(here),
          written_(structure, part, own, rounding, here) {}

    std::vector<SlipKind> fits() {
        for (const SolvedTogether& together : waysToSolve()) {
            tryChangedTerms(together);
        }
        for (std::size_t i = 0; i < here_.unknowns.size(); ++i) {
            if (here_.values[i] && !here_.follows[i] &&
                areOthersCarried([i](std::size_t other) { return other == i; })) {
                tryChangedValue(i, here_.expected[i]);
                for (const Sum& sum :
                     plainSumsFor(structure_, part_, own_.known, here_.unknowns[i])) {
                    tryChangedValue(i, estimate(part_, sum, own_, here_.unknowns[i]));
                }
            }
        }
        tryToOneBar();
        preferWhatIsSeen();
        return std::move(fits_);
    }

private:
    bool isKnown(const ActingForce& force) const {
        return own_.known[static_cast<std::size_t>(force.of)];
    }
    double valueOf(const ActingForce& force) const {
        return force.of == kGivenLoad ? 1 : own_.value[static_cast<std::size_t>(force.of)];
    }
    void add(SlipKind kind) {
        if (std::find(fits_.begin(), fits_.end(), kind) == fits_.end()) {
            fits_.push_back(kind);
        }
    }

    std::vector<SolvedTogether> waysToSolve() const {
        std::vector<SolvedTogether> ways;
        const std::vector<Sum> sums = plainSums(structure_, part_);
        for (const int unknown : here_.unknowns) {
            for (const Sum& sum : plainSumsFor(structure_, part_, own_.known, unknown)) {
                ways.push_back({{sum}, {unknown}});
            }
        }
        if (written_.unknowns().size() == 1) {
            return ways;
        }
        if (written_.unknowns().size() == 2) {
            ways.push_back({{kSumX, kSumY}, written_.unknowns()});
        }
        for (std::size_t i = 2; i < sums.size(); ++i) {
            if (written_.unknowns().size() == 2) {
                ways.push_back({{kSumX, sums[i]}, written_.unknowns()});
                ways.push_back({{kSumY, sums[i]}, written_.unknowns()});
            } else if (written_.unknowns().size() == 3) {
                ways.push_back({{kSumX, kSumY, sums[i]}, written_.unknowns()});
            }
        }
        const bool isJointOfTwo = part_.joints.size() == 1 && written_.unknowns().size() == 2;
        for (const int unknown : here_.unknowns) {
            if (!isJointOfTwo) {
                ways.push_back(
                    {{*sumFor(part_, own_.known, unknown, structure_.extent)}, {unknown}});
            }
        }
        return ways;
    }

    Shares sharesIn(const SolvedTogether& together) const {
        Shares shares;
        for (const Sum& sum : together.sums) {
            std::vector<double>& row = shares.emplace_back();
            for (const ActingForce& force : part_.forces) {
                row.push_back(shareIn(sum, force));
            }
        }
        return shares;
    }

    // Solves, and compares with what is written for these unknowns.
    void test(SlipKind kind, const SolvedTogether& together, const Shares& shares) {
        const std::optional<std::vector<Estimate>> results = written_.solved(together, shares);
        bool comparesAny = false;
        for (std::size_t i = 0; results && i < together.unknowns.size(); ++i) {
            const auto found =
                std::find(here_.unknowns.begin(), here_.unknowns.end(), together.unknowns[i]);
            const auto which = static_cast<std::size_t>(found - here_.unknowns.begin());
            if (found != here_.unknowns.end() && here_.values[which]) {
                comparesAny = comparesAny || !here_.follows[which];
                if (!written_.isWritten(which, (*results)[i])) {
                    return;
                }
            }
        }
        if (comparesAny && explainsOthers(together)) {
            add(kind);
        }
    }

    // Written values that these equations do not give must follow anyway.
    bool explainsOthers(const SolvedTogether& together) const {
        return areOthersCarried([&](std::size_t i) {
            return std::find(together.unknowns.begin(), together.unknowns.end(),
                             here_.unknowns[i]) != together.unknowns.end();
        });
    }
    template <class IsExplained>
    bool areOthersCarried(const IsExplained& isExplained) const {
        std::vector<std::size_t> others;
        for (std::size_t i = 0; i < here_.unknowns.size(); ++i) {
            if (!isExplained(i) && here_.values[i] && !here_.follows[i]) {
                others.push_back(i);
            }
        }
        return others.empty() || written_.areCarried(others);
    }

    void tryChangedTerms(const SolvedTogether& together) {
        const Shares shares = sharesIn(together);
        for (std::size_t f = 0; f < part_.forces.size(); ++f) {
            const ActingForce& force = part_.forces[f];
            const bool isGiven = force.of == kGivenLoad || isKnown(force);
            const bool isSolvedFor =
                !isGiven && std::find(together.unknowns.begin(), together.unknowns.end(),
                                      force.of) != together.unknowns.end();
            if ((isGiven && valueOf(force) != 0) || isSolvedFor) {
                tryChangedForce(together, shares, f, isGiven);
            }
        }
    }

    void tryChangedForce(const SolvedTogether& together, const Shares& shares, std::size_t f,
                         bool isGiven) {
        const ActingForce& force = part_.forces[f];
        std::size_t holding = 0;
        for (const std::vector<double>& row : shares) {
            holding += std::abs(row[f]) > kNoShare ? 1 : 0;
        }
        for (std::size_t r = 0; r < shares.size(); ++r) {
            if (std::abs(shares[r][f]) > kNoShare) {
                if (isGiven || holding > 1) {
                    tryShare(SlipKind::LeftOut, together, shares, r, f, 0);
                    tryShare(SlipKind::WrongSign, together, shares, r, f, -shares[r][f]);
                }
                tryDirections(together, shares, r, f);
                tryArms(together, shares, r, f);
            }
        }
        if (isGiven && holding > 1) {
            const bool isEarlier = force.of != kGivenLoad;
            tryAll(SlipKind::LeftOut, together, shares, f, [](double, std::size_t) { return 0.0; });
            tryAll(isEarlier ? SlipKind::EarlierSign : SlipKind::WrongSign, together, shares, f,
                   [](double share, std::size_t) { return -share; });
        }
        if (isInclined(force.along)) {
            tryAll(SlipKind::SineForCosine, together, shares, f, [&](double, std::size_t r) {
                return shareIn(together.sums[r], swapped(force.along), force.at);
            });
        }
    }

    void tryShare(SlipKind kind, const SolvedTogether& together, const Shares& shares,
                  std::size_t row, std::size_t f, double share) {
        Shares changed = shares;
        changed[row][f] = share;
        test(kind, together, changed);
    }
    template <class Change>
    void tryAll(SlipKind kind, const SolvedTogether& together, const Shares& shares, std::size_t f,
                const Change& change) {
        Shares changed = shares;
        for (std::size_t r = 0; r < shares.size(); ++r) {
            changed[r][f] = change(shares[r][f], r);
        }
        test(kind, together, changed);
    }

    void tryDirections(const SolvedTogether& together, const Shares& shares, std::size_t r,
                       std::size_t f) {
        const ActingForce& force = part_.forces[f];
        if (!isInclined(force.along)) {
            return;
        }
        const Sum& sum = together.sums[r];
        tryShare(SlipKind::SineForCosine, together, shares, r, f,
                 shareIn(sum, swapped(force.along), force.at));
        if (!sum.takesMoments) {
            tryShare(SlipKind::NotResolved, together, shares, r, f,
                     std::copysign(length(force.along), shares[r][f]));
        }
    }

    // The whole distance for the one across the force, or an arm to the next joint.
    void tryArms(const SolvedTogether& together, const Shares& shares, std::size_t r,
                 std::size_t f) {
        const Sum& sum = together.sums[r];
        if (!sum.takesMoments) {
            return;
        }
        const ActingForce& force = part_.forces[f];
        tryShare(SlipKind::WrongArm, together, shares, r, f,
                 std::copysign(length(force.along) * length(force.at - sum.centre), shares[r][f]));
        for (const Bar& bar : structure_.bars) {
            const Vec2 a = structure_.joints[static_cast<std::size_t>(bar.a)];
            const Vec2 b = structure_.joints[static_cast<std::size_t>(bar.b)];
            if (a == force.at || b == force.at) {
                const double share = shareIn(sum, force.along, a == force.at ? b : a);
                // None at all is a force left out.
                if (share * shares[r][f] > 0 &&
                    std::abs(share) > kSomeArm * std::abs(shares[r][f]) &&
                    std::abs(share - shares[r][f]) > kNoShare * std::abs(share)) {
                    tryShare(SlipKind::WrongArm, together, shares, r, f, share);
                }
            }
        }
    }

    void tryChangedValue(std::size_t i, const Estimate& expected) {
        const bool isReaction = here_.unknowns[i] < static_cast<int>(structure_.restraints.size());
        const auto isTimes = [&](double factor) {
            return written_.isWritten(i,
                                      {factor * expected.value, std::abs(factor) * expected.error});
        };
        // A value of one figure is near many others.
        const auto isClosely = [&](double factor) {
            return std::abs(*here_.values[i] - factor * expected.value) <=
                   kFactorWithin * std::abs(factor * expected.value);
        };
        if (*here_.values[i] == 0) {
            if (!isReaction) {
                add(SlipKind::ZeroMisjudged);
            }
            return;
        }
        if (isTimes(-1)) {
            add(isReaction ? SlipKind::ReactionTurned : SlipKind::WrongSense);
        }
        // A nought has no factor, nor what may be one within rounding.
        const bool isTold = std::abs(expected.value) > kToldFrom * expected.error;
        for (const double factor : {2.0, 10.0, 1000.0, kGravity}) {
            if (isTold && ((isTimes(factor) && isClosely(factor)) ||
                           (isTimes(1 / factor) && isClosely(1 / factor)))) {
                add(SlipKind::WrongFactor);
            }
        }
        if (isDigitSwap(rounding_, *here_.values[i], expected.value,
                        roundingError(rounding_, expected.value) * 1.01 +
                            kRoundings * expected.error)) {
            add(SlipKind::DigitsSwapped);
        }
    }

    // Each of two bars from one sum as if the other were not there.
    void tryToOneBar() {
        if (part_.joints.size() > 1 || written_.unknowns().size() != 2 ||
            here_.unknowns.size() != 2) {
            return;
        }
        for (std::size_t i = 0; i < 2; ++i) {
            bool isAlone = false;
            for (const Sum& sum : {kSumX, kSumY}) {
                const ActingForce& force = written_.forceOf(here_.unknowns[i]);
                isAlone = isAlone || (here_.values[i] && !here_.follows[i] &&
                                      std::abs(shareIn(sum, force)) > kNoShare &&
                                      written_.isWritten(i, estimate(part_, sum, own_, force.of)));
            }
            if (!isAlone) {
                return;
            }
        }
        add(SlipKind::ToOneBar);
    }

    void drop(SlipKind kind) {
        fits_.erase(std::remove(fits_.begin(), fits_.end(), kind), fits_.end());
    }
    bool has(SlipKind kind) const {
        return std::find(fits_.begin(), fits_.end(), kind) != fits_.end();
    }
    // The right size with the wrong sense and a nought are what is seen, whichever sign or term it
    // came from; and two bars each taken alone leave out two terms.
    void preferWhatIsSeen() {
        if (has(SlipKind::WrongSense) || has(SlipKind::ReactionTurned)) {
            drop(SlipKind::WrongSign);
            drop(SlipKind::EarlierSign);
        }
        // Any joint's arm, any two digits: one of them will do by chance.
        for (const SlipKind kind : {SlipKind::WrongArm, SlipKind::DigitsSwapped}) {
            if (fits_.size() > 1) {
                drop(kind);
            }
        }
        if (has(SlipKind::ZeroMisjudged)) {
            fits_ = {SlipKind::ZeroMisjudged};
        }
    }

    const Structure& structure_;
    const PartOfTruss& part_;
    const OwnValues& own_;
    const Rounding& rounding_;
    const WrittenHere& here_;
    PartAsWritten written_;
    std::vector<SlipKind> fits_;
};

} // namespace

std::vector<SlipKind> slipsThatFit(const Structure& structure, const PartOfTruss& part,
                                   const OwnValues& own, const Rounding& rounding,
                                   const WrittenHere& here) {
    return SlipReader(structure, part, own, rounding, here).fits();
}

} // namespace gusset
