#include "classroom/marking/carried.hpp"

#include "classroom/marking/solving.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace gusset {

double ofBoth(double error, double another) { return std::sqrt(error * error + another * another); }

Estimate estimate(const PartOfTruss& part, const Sum& sum, const OwnValues& own, int unknown) {
    Estimate result;
    double share = 0;
    for (const ActingForce& force : part.forces) {
        const double each = shareIn(sum, force);
        if (force.of == unknown) {
            share = each;
        } else if (force.of == kGivenLoad) {
            result.value -= each;
        } else if (own.known[static_cast<std::size_t>(force.of)]) {
            const double value = own.value[static_cast<std::size_t>(force.of)];
            result.value -= each * value;
            result.error =
                ofBoth(result.error, each * own.error[static_cast<std::size_t>(force.of)]);
        }
    }
    result.value /= share;
    result.error /= std::abs(share);
    return result;
}

PartAsWritten::PartAsWritten(const Structure& structure, const PartOfTruss& part,
                             const OwnValues& own, const Rounding& rounding,
                             const WrittenHere& here)
    : structure_(structure), part_(part), own_(own), rounding_(rounding), here_(here) {
    for (const ActingForce& force : part.forces) {
        if (force.of != kGivenLoad && !own.known[static_cast<std::size_t>(force.of)]) {
            unknowns_.push_back(force.of);
        }
    }
}

const ActingForce& PartAsWritten::forceOf(int unknown) const {
    return *std::find_if(part_.forces.begin(), part_.forces.end(),
                         [&](const ActingForce& force) { return force.of == unknown; });
}
std::optional<double> PartAsWritten::writtenFor(int unknown) const {
    const auto at = std::find(here_.unknowns.begin(), here_.unknowns.end(), unknown);
    return at == here_.unknowns.end()
               ? std::nullopt
               : here_.values[static_cast<std::size_t>(at - here_.unknowns.begin())];
}
bool PartAsWritten::isWritten(std::size_t which, const Estimate& value) const {
    return std::abs(*here_.values[which] - value.value) <=
           roundingError(rounding_, *here_.values[which]) * 1.01 + kRoundings * value.error;
}
bool PartAsWritten::balances(std::size_t which, const Sum& sum) const {
    const ActingForce& force = forceOf(here_.unknowns[which]);
    if (std::abs(shareIn(sum, force)) < kNoShare) {
        return false;
    }
    OwnValues all = own_;
    for (const int unknown : unknowns_) {
        if (unknown == force.of || std::abs(shareIn(sum, forceOf(unknown))) < kNoShare) {
            continue;
        }
        const std::optional<double> value = writtenFor(unknown);
        if (!value) {
            return false;
        }
        all.known[static_cast<std::size_t>(unknown)] = true;
        all.value[static_cast<std::size_t>(unknown)] = *value;
        all.error[static_cast<std::size_t>(unknown)] = roundingError(rounding_, *value);
    }
    return isWritten(which, estimate(part_, sum, all, force.of));
}

bool PartAsWritten::areCarried(const std::vector<std::size_t>& which) const {
    Rows rows;
    for (const Sum& sum : plainSums(structure_, part_)) {
        const auto holding = std::find_if(which.begin(), which.end(), [&](std::size_t i) {
            return std::abs(shareIn(sum, forceOf(here_.unknowns[i]))) > kNoShare;
        });
        if (holding == which.end() || !balances(*holding, sum)) {
            continue;
        }
        std::vector<double>& row = rows.emplace_back();
        for (const std::size_t i : which) {
            row.push_back(shareIn(sum, forceOf(here_.unknowns[i])));
        }
    }
    return rankOf(std::move(rows)) == which.size();
}

bool PartAsWritten::isCarried(std::size_t which) const {
    const std::vector<Sum> sums = plainSums(structure_, part_);
    return std::any_of(sums.begin(), sums.end(),
                       [&](const Sum& sum) { return balances(which, sum); });
}

std::optional<std::vector<Estimate>> PartAsWritten::solved(const SolvedTogether& together,
                                                           const Shares& shares) const {
    const std::size_t size = together.unknowns.size();
    std::vector<std::size_t> known;
    for (std::size_t f = 0; f < part_.forces.size(); ++f) {
        if (part_.forces[f].of == kGivenLoad ||
            own_.known[static_cast<std::size_t>(part_.forces[f].of)]) {
            known.push_back(f);
        }
    }
    Rows rows(size); // unknowns, then what each known force adds
    for (std::size_t r = 0; r < size; ++r) {
        for (const int unknown : together.unknowns) {
            rows[r].push_back(
                shares[r][static_cast<std::size_t>(&forceOf(unknown) - part_.forces.data())]);
        }
        for (const std::size_t f : known) {
            rows[r].push_back(-shares[r][f]);
        }
    }
    if (!eliminate(rows)) {
        return std::nullopt;
    }
    std::vector<Estimate> results(size);
    for (std::size_t i = 0; i < size; ++i) {
        for (std::size_t k = 0; k < known.size(); ++k) {
            const ActingForce& force = part_.forces[known[k]];
            const double factor = rows[i][size + k];
            if (force.of == kGivenLoad) {
                results[i].value += factor;
                continue;
            }
            const auto of = static_cast<std::size_t>(force.of);
            results[i].value += factor * own_.value[of];
            results[i].error = ofBoth(results[i].error, factor * own_.error[of]);
        }
    }
    return results;
}

} // namespace gusset
