#include "design/sizing/sizing.hpp"

#include "design/sizing/weighed.hpp"
#include "phrases/design/sizing.hpp"
#include "statics/solve/solution.hpp"

#include <algorithm>
#include <cmath>
#include <string>

namespace gusset {
namespace {

// After so many rounds a choice may only become heavier: forces that follow the stiffness could
// otherwise make two profiles take turns.
constexpr int kFreeRounds = 8;
constexpr int kMostRounds = 60;
constexpr int kMostStiffer = 4000;
constexpr double kFarFromLimit = 1.25;
constexpr double kStride = 1.1; // in weight
constexpr double kSameWeight = 1 + 1e-9;
// Exchanges between groups: for so many groups at most, with so many heavier profiles of each,
// evenly spread up to so many times the weight, until so many lighter ones of another have failed
// in a row.
constexpr std::size_t kMostExchanging = 6;
constexpr std::size_t kExchangeTries = 9;
constexpr double kExchangeWeight = 4;
constexpr int kExchangeFailures = 6;

class Sizer {
public:
    Sizer(const Truss& truss, const SizingWish& wish, std::vector<WeighedList> lists)
        : truss_(truss), wish_(wish), lists_(std::move(lists)), chosen_(lists_.size(), 0),
          least_(lists_.size(), 0), enough_(lists_.size(), false),
          strength_(strengthChoices(truss)), service_(serviceChoices(truss)) {
        for (std::size_t g = 0; g < lists_.size(); ++g) {
            choose(g, 0);
        }
    }

    Outcome<Sizing> run() {
        for (std::size_t g = 0; g < lists_.size(); ++g) {
            path_.push_back({g, {}, idOf(g), SizingReason::Begins, {}, 0});
        }
        if (const Issues faults = settle(); !faults.empty()) {
            return faults;
        }
        if (const Issues faults = stiffen(); !faults.empty()) {
            return faults;
        }
        lighten();
        exchange();
        return result();
    }

private:
    const std::string& idOf(std::size_t g) const { return lists_[g][chosen_[g]].section.id; }

    // The section that it replaces goes, so that a trial costs the same however many there were.
    void choose(std::size_t g, std::size_t profile) {
        const std::string was = idOf(g);
        chosen_[g] = profile;
        const Section& section = lists_[g][profile].section;
        putSection(truss_, section);
        for (const MemberId member : wish_.groups[g].members) {
            truss_.members[member.at()].section = section.id;
        }
        if (was != section.id && !isUsed(was)) {
            std::erase_if(truss_.sections, [&](const Section& it) { return it.id == was; });
        }
    }

    bool isUsed(const std::string& section) const {
        return std::any_of(truss_.members.begin(), truss_.members.end(),
                           [&](const Member& it) { return it.section == section; });
    }

    // The member of a group that passes least, if one does not pass.
    const MemberCheck* failing(const MemberChecks& checks, std::size_t g) const {
        const MemberCheck* worst = nullptr;
        for (const MemberId member : wish_.groups[g].members) {
            const MemberCheck& check = checks.members[member.at()];
            if (!passes(check) && (!worst || check.use > worst->use)) {
                worst = &check;
            }
        }
        return worst;
    }

    // The first profile from `from` on that passes under these forces; the number of profiles if
    // none does. Leaves that one chosen, or the heaviest.
    std::size_t firstThatPasses(std::size_t g, std::size_t from, const Envelope& envelope) {
        for (std::size_t k = from; k < lists_[g].size(); ++k) {
            choose(g, k);
            if (!failing(checkMembers(truss_, envelope, strength_), g)) {
                return k;
            }
        }
        return lists_[g].size();
    }

    // One round: each group by itself under the forces of the truss as it is.
    Outcome<bool> round(bool mayLighten) {
        const Outcome<Envelope> envelope = envelopeOf(truss_, strength_);
        if (!envelope) {
            return envelope.issues();
        }
        bool changed = false;
        const MemberChecks before = checkMembers(truss_, envelope.value(), strength_);
        for (std::size_t g = 0; g < lists_.size(); ++g) {
            const std::size_t was = chosen_[g];
            const std::size_t from = mayLighten ? least_[g] : std::max(was, least_[g]);
            const std::size_t now = firstThatPasses(g, from, envelope.value());
            enough_[g] = now < lists_[g].size();
            if (chosen_[g] != was) {
                changed = true;
                tell(g, was, before);
            }
        }
        return changed;
    }

    void tell(std::size_t g, std::size_t was, const MemberChecks& before) {
        SizingStep step{g, lists_[g][was].section.id, idOf(g), SizingReason::Lighter, {}, 0};
        if (const MemberCheck* worst = failing(before, g); worst && chosen_[g] > was) {
            step.reason = !enough_[g]         ? SizingReason::NoneEnough
                          : isOver(*worst)    ? SizingReason::Strength
                          : worst->tooSlender ? SizingReason::Slenderness
                                              : SizingReason::Uncovered;
            step.member = worst->member;
            step.use = worst->use;
        }
        path_.push_back(std::move(step));
    }

    Issues settle() {
        for (int i = 0; i < kMostRounds; ++i) {
            const Outcome<bool> changed = round(i < kFreeRounds);
            if (!changed) {
                return changed.issues();
            }
            if (!changed.value()) {
                break;
            }
        }
        return {};
    }

    bool isTooSoft() const {
        if (wish_.deflection <= 0) {
            return false;
        }
        const std::optional<double> moved = deflectionOf(truss_, service_);
        return moved && *moved > wish_.deflection;
    }

    // The next profile with more in its section: lists have profiles of one weight. Far from the
    // limit in larger steps; what is then too heavy becomes lighter again. The number of profiles
    // if there is none.
    std::size_t nextStiffer(std::size_t g, double moved) const {
        const double stride = moved > kFarFromLimit * wish_.deflection ? kStride : kSameWeight;
        const double weight = lists_[g][chosen_[g]].weight;
        std::size_t next = chosen_[g] + 1;
        while (next < lists_[g].size() && lists_[g][next].weight <= stride * weight) {
            ++next;
        }
        // The last may be less than a step away.
        const bool isPast = next == lists_[g].size() && lists_[g].back().weight > weight;
        return isPast ? next - 1 : next;
    }

    // While the truss gives too much, the group whose next profile takes away most of it for its
    // mass becomes heavier.
    Issues stiffen() {
        for (int i = 0; i < kMostStiffer && isTooSoft(); ++i) {
            const std::optional<Stiffer> best = stiffest();
            if (!best) {
                return {};
            }
            const std::string from = idOf(best->group);
            choose(best->group, best->profile);
            least_[best->group] = best->profile;
            path_.push_back(
                {best->group, from, idOf(best->group), SizingReason::Deflection, {}, 0});
            if (const Issues faults = settle(); !faults.empty()) {
                return faults;
            }
        }
        return {};
    }

    struct Stiffer {
        std::size_t group = 0;
        std::size_t profile = 0;
    };
    std::optional<Stiffer> stiffest() {
        const double before = deflectionOf(truss_, service_).value_or(0);
        std::optional<Stiffer> best;
        double most = 0;
        for (std::size_t g = 0; g < lists_.size(); ++g) {
            const std::size_t was = chosen_[g];
            const std::size_t next = nextStiffer(g, before);
            if (next == lists_[g].size()) {
                continue;
            }
            choose(g, next);
            const double gain = before - deflectionOf(truss_, service_).value_or(before);
            const double cost = lengthOf(g) * (lists_[g][next].weight - lists_[g][was].weight);
            choose(g, was);
            const double worth = gain / std::max(cost, 1e-9);
            if (gain > 0 && worth > most) {
                most = worth;
                best = Stiffer{g, next};
            }
        }
        return best;
    }

    bool allPass() {
        if (isTooSoft()) {
            return false;
        }
        const Outcome<Envelope> envelope = envelopeOf(truss_, strength_);
        if (!envelope) {
            return false;
        }
        const MemberChecks checks = checkMembers(truss_, envelope.value(), strength_);
        for (std::size_t g = 0; g < lists_.size(); ++g) {
            if (failing(checks, g)) {
                return false;
            }
        }
        return true;
    }

    // Until no group alone can take a lighter profile.
    void lighten() {
        if (!allPass()) {
            return;
        }
        for (bool changed = true; changed;) {
            changed = false;
            for (std::size_t g = 0; g < lists_.size(); ++g) {
                changed = lightenOne(g) || changed;
            }
        }
    }
    // The lightest profile of a group that is stiff enough, given that the chosen one is. In a
    // determinate truss each movement is linear in 1/A of a group, so that what is stiff enough is
    // all from a profile on; in others nearly so.
    std::size_t lightestStiff(std::size_t g) {
        std::size_t low = 0;
        std::size_t high = chosen_[g];
        while (wish_.deflection > 0 && low < high) {
            const std::size_t middle = (low + high) / 2;
            choose(g, middle);
            if (isTooSoft()) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
    bool lightenOne(std::size_t g) {
        const std::size_t was = chosen_[g];
        for (std::size_t k = lightestStiff(g); k < was; ++k) {
            choose(g, k);
            if (allPass()) {
                path_.push_back(
                    {g, lists_[g][was].section.id, idOf(g), SizingReason::Lighter, {}, 0});
                return true;
            }
        }
        choose(g, was);
        return false;
    }

    double mass() const {
        double sum = 0;
        for (std::size_t g = 0; g < lists_.size(); ++g) {
            sum += lengthOf(g) * lists_[g][chosen_[g]].weight;
        }
        return sum;
    }

    // Where one group's stiffness serves the others, by the deflection or in an indeterminate
    // truss: a heavier profile of one group that lets others become lighter by more.
    void exchange() {
        const bool isShared = wish_.deflection > 0 || solve(truss_).status == Status::Indeterminate;
        if (!isShared || lists_.size() > kMostExchanging || !allPass()) {
            return;
        }
        for (bool changed = true; changed;) {
            changed = false;
            for (std::size_t g = 0; g < lists_.size(); ++g) {
                changed = exchangeFor(g) || changed;
            }
        }
        lighten();
    }
    bool exchangeFor(std::size_t g) {
        const std::vector<std::size_t> before = chosen_;
        const std::size_t pathBefore = path_.size();
        const double massBefore = mass();
        for (const std::size_t k : heavierThan(g)) {
            choose(g, k);
            path_.push_back(
                {g, lists_[g][before[g]].section.id, idOf(g), SizingReason::Serves, {}, 0});
            for (std::size_t other = 0; other < lists_.size(); ++other) {
                if (other != g) {
                    lightenDown(other);
                }
            }
            if (allPass() && mass() < massBefore * (1 - 1e-12)) {
                return true;
            }
            path_.resize(pathBefore);
            for (std::size_t each = 0; each < lists_.size(); ++each) {
                choose(each, before[each]);
            }
        }
        return false;
    }

    std::vector<std::size_t> heavierThan(std::size_t g) const {
        const double most = kExchangeWeight * lists_[g][chosen_[g]].weight;
        std::size_t end = chosen_[g] + 1;
        while (end < lists_[g].size() && lists_[g][end].weight <= most) {
            ++end;
        }
        const std::size_t count = end - chosen_[g] - 1;
        const std::size_t step = std::max<std::size_t>(1, count / kExchangeTries);
        std::vector<std::size_t> tries;
        for (std::size_t k = chosen_[g] + 1; k < end; k += step) {
            tries.push_back(k);
        }
        return tries;
    }
    void lightenDown(std::size_t g) {
        const std::size_t was = chosen_[g];
        std::size_t best = was;
        int failures = 0;
        for (std::size_t k = was; k-- > 0 && failures < kExchangeFailures;) {
            choose(g, k);
            const bool holds = allPass();
            failures = holds ? 0 : failures + 1;
            best = holds ? k : best;
        }
        choose(g, best);
        if (best != was) {
            path_.push_back({g, lists_[g][was].section.id, idOf(g), SizingReason::Lighter, {}, 0});
        }
    }

    double lengthOf(std::size_t g) const {
        double sum = 0;
        for (const MemberId member : wish_.groups[g].members) {
            const Vec2 way = memberVector(truss_, member);
            sum += std::hypot(way.x, way.y) * toMetre(truss_.units.length);
        }
        return sum;
    }

    Outcome<Sizing> result() {
        const Outcome<Envelope> envelope = envelopeOf(truss_, strength_);
        if (!envelope) {
            return envelope.issues();
        }
        Sizing sizing;
        sizing.checks = checkMembers(truss_, envelope.value(), strength_);
        sizing.deflection = deflectionOf(truss_, service_);
        sizing.isEnough = wish_.deflection <= 0 || (sizing.deflection && !isTooSoft());
        for (std::size_t g = 0; g < lists_.size(); ++g) {
            sizing.groups.push_back(sizedGroup(g, sizing.checks));
            sizing.isEnough = sizing.isEnough && sizing.groups.back().isEnough;
        }
        for (const double mass : massesOf(truss_)) {
            sizing.mass += mass;
        }
        dropUnused();
        sizing.path = std::move(path_);
        sizing.truss = std::move(truss_);
        return sizing;
    }

    // Profiles that were tried and not chosen.
    void dropUnused() {
        std::erase_if(truss_.sections, [&](const Section& section) {
            const auto isIt = [&](const auto& it) { return it.section == section.id; };
            const bool isTried =
                std::any_of(lists_.begin(), lists_.end(), [&](const WeighedList& list) {
                    return std::any_of(list.begin(), list.end(), [&](const Weighed& it) {
                        return it.section.id == section.id;
                    });
                });
            return isTried && std::none_of(truss_.members.begin(), truss_.members.end(), isIt);
        });
    }

    SizedGroup sizedGroup(std::size_t g, const MemberChecks& checks) const {
        SizedGroup sized;
        sized.profile = idOf(g);
        sized.isEnough = failing(checks, g) == nullptr;
        sized.length = lengthOf(g);
        sized.mass = sized.length * lists_[g][chosen_[g]].weight;
        sized.nextLighter = chosen_[g] > 0 ? lists_[g][chosen_[g] - 1].section.id : "";
        for (const MemberId member : wish_.groups[g].members) {
            const MemberCheck& check = checks.members[member.at()];
            if (!sized.worst.valid() || check.use > sized.use) {
                sized.worst = member;
                sized.use = check.use;
            }
        }
        return sized;
    }

    Truss truss_;
    const SizingWish& wish_;
    std::vector<WeighedList> lists_;
    std::vector<std::size_t> chosen_; // of each list
    std::vector<std::size_t> least_;  // that the deflection allows
    std::vector<bool> enough_;
    std::vector<LoadChoice> strength_;
    std::vector<LoadChoice> service_;
    std::vector<SizingStep> path_{};
};

} // namespace

Outcome<Sizing> lightest(const Truss& truss, const SizingWish& wish) {
    if (solve(truss).status == Status::Mechanism) {
        return Issue{IssueCode::NotComputed, "", phrase::kSizeUnstable};
    }
    Outcome<std::vector<WeighedList>> lists = listsOf(truss, wish);
    if (!lists) {
        return lists.issues();
    }
    return Sizer(truss, wish, std::move(lists).value()).run();
}

} // namespace gusset
