#include "design/loading/combinations.hpp"

#include "phrases/design/loading.hpp"
#include "statics/moving/envelope.hpp"

#include <algorithm>
#include <set>

namespace gusset {
namespace {

using Factors = std::vector<std::pair<std::string, double>>;

// The cases by what they do together: permanent ones always act, one of each group of alternatives
// acts or none.
struct Sorted {
    std::vector<std::string> permanent;
    struct Variable {
        std::string caseId;
        CaseKind action;
    };
    std::vector<std::vector<Variable>> groups;
    std::vector<std::string> leftOut;
};

void addTo(Sorted& sorted, std::vector<std::size_t>& group, const std::string& caseId,
           CaseKind action) {
    const auto kind =
        static_cast<std::size_t>(action == CaseKind::SnowHigh ? CaseKind::Snow : action);
    const bool alternatives =
        action == CaseKind::Snow || action == CaseKind::SnowHigh || action == CaseKind::Wind;
    if (!alternatives || group[kind] == 0) {
        sorted.groups.emplace_back();
        group[kind] = sorted.groups.size();
    }
    sorted.groups[group[kind] - 1].push_back({caseId, action});
}

Sorted sortedCases(const Truss& truss) {
    Sorted sorted;
    std::vector<std::size_t> group(actionRules().size(), 0); // of each action, from 1
    for (const CaseAction& of : actionsOf(truss)) {
        if (!of.action) {
            sorted.leftOut.push_back(of.caseId);
        } else if (*of.action == CaseKind::Permanent) {
            sorted.permanent.push_back(of.caseId);
        } else {
            addTo(sorted, group, of.caseId, *of.action);
        }
    }
    return sorted;
}

bool isEn(const CombinationWish& wish) {
    return wish.rule == CombinationRule::En610 || wish.rule == CombinationRule::En610ab;
}

using Chosen = std::vector<Sorted::Variable>;

// Of ASCE 7-16, 2.3.1, "L_r or S" are alternatives too, but act with wind.
bool mayActTogether(const Chosen& chosen, bool isEn) {
    const auto isOf = [&](std::initializer_list<CaseKind> actions) {
        return std::any_of(chosen.begin(), chosen.end(), [&](const Sorted::Variable& it) {
            return std::find(actions.begin(), actions.end(), it.action) != actions.end();
        });
    };
    return !isOf({CaseKind::ImposedH}) ||
           !(isOf({CaseKind::Snow, CaseKind::SnowHigh}) || (isEn && isOf({CaseKind::Wind})));
}

// Every choice of one or none of each group, in order of the number that act; empty if there are
// too many.
std::vector<Chosen> choicesOf(const Sorted& sorted, bool isEn) {
    std::vector<Chosen> all{{}};
    for (const auto& group : sorted.groups) {
        const std::size_t before = all.size();
        if (before * (group.size() + 1) > 4 * kMostCombinations) {
            return {};
        }
        for (std::size_t i = 0; i < before; ++i) {
            for (const Sorted::Variable& one : group) {
                Chosen with = all[i];
                with.push_back(one);
                all.push_back(std::move(with));
            }
        }
    }
    std::erase_if(all, [&](const Chosen& chosen) { return !mayActTogether(chosen, isEn); });
    std::stable_sort(all.begin(), all.end(),
                     [](const Chosen& a, const Chosen& b) { return a.size() < b.size(); });
    return all;
}

class Writing {
public:
    Writing(const PhraseBook& book, const Sorted& sorted, const CombinationWish& wish)
        : book_(book), sorted_(sorted), wish_(wish) {}

    CombinationsMade write(const std::vector<Chosen>& choices) {
        for (const Chosen& chosen : choices) {
            switch (wish_.rule) {
            case CombinationRule::En610:
            case CombinationRule::En610ab:
                strengthEn(chosen);
                break;
            case CombinationRule::AsceLrfd:
                strengthAsce(chosen);
                break;
            case CombinationRule::AsceAsd:
                allowableAsce(chosen);
                break;
            }
        }
        for (const Chosen& chosen : wish_.service&& isEn(wish_) ? choices : std::vector<Chosen>{}) {
            serviceEn(chosen);
        }
        made_.leftOut = sorted_.leftOut;
        return std::move(made_);
    }

private:
    const CombinationFactors& psiOf(CaseKind action) const {
        for (const NationalFactors& own : wish_.national) {
            if (own.action == action) {
                return own.psi;
            }
        }
        return ruleOf(action).psi;
    }

    // All variable actions with a factor and ψ0, but for the one that leads (chosen.size(): none).
    Factors variablesEn(const Chosen& chosen, std::size_t leads, double factor) const {
        Factors factors;
        for (std::size_t i = 0; i < chosen.size(); ++i) {
            const double psi = i == leads ? 1 : psiOf(chosen[i].action).combination;
            factors.emplace_back(chosen[i].caseId, factor * psi);
        }
        return factors;
    }

    void strengthEn(const Chosen& chosen) {
        const double q = wish_.variable;
        for (std::size_t leads = 0; leads < std::max<std::size_t>(1, chosen.size()); ++leads) {
            const Factors with = variablesEn(chosen, leads, q);
            if (wish_.rule == CombinationRule::En610) {
                add(wish_.permanentUp, with, "EN 1990:2002, 6.10", "");
            } else {
                add(wish_.permanentUp, variablesEn(chosen, chosen.size(), q), "EN 1990:2002, 6.10a",
                    "");
                add(wish_.xi * wish_.permanentUp, with, "EN 1990:2002, 6.10b", "");
            }
            if (!chosen.empty()) {
                add(wish_.permanentDown, with,
                    wish_.rule == CombinationRule::En610 ? "EN 1990:2002, 6.10"
                                                         : "EN 1990:2002, 6.10b",
                    "");
            }
        }
    }

    void serviceEn(const Chosen& chosen) {
        for (std::size_t leads = 0; leads < std::max<std::size_t>(1, chosen.size()); ++leads) {
            add(1, variablesEn(chosen, leads, 1), "EN 1990:2002, 6.14b", "service");
            Factors frequent;
            for (std::size_t i = 0; i < chosen.size(); ++i) {
                const CombinationFactors& psi = psiOf(chosen[i].action);
                frequent.emplace_back(chosen[i].caseId,
                                      i == leads ? psi.frequent : psi.quasiPermanent);
            }
            add(1, frequent, "EN 1990:2002, 6.15b", "service");
        }
        Factors lasting;
        for (const Sorted::Variable& one : chosen) {
            lasting.emplace_back(one.caseId, psiOf(one.action).quasiPermanent);
        }
        add(1, lasting, "EN 1990:2002, 6.16b", "service");
    }

    // What of ASCE's symbols acts: L, roof (Lr or S), W.
    struct Acting {
        bool floor = false;
        bool roof = false;
        bool wind = false;
    };
    static Acting actingIn(const Chosen& chosen) {
        Acting acting;
        for (const Sorted::Variable& one : chosen) {
            const AsceLoad symbol = ruleOf(one.action).asce;
            acting.floor = acting.floor || symbol == AsceLoad::L;
            acting.roof = acting.roof || symbol == AsceLoad::Lr || symbol == AsceLoad::S;
            acting.wind = acting.wind || symbol == AsceLoad::W;
        }
        return acting;
    }
    static Factors factorsAsce(const Chosen& chosen, double floor, double roof, double wind) {
        Factors factors;
        for (const Sorted::Variable& one : chosen) {
            const AsceLoad symbol = ruleOf(one.action).asce;
            factors.emplace_back(one.caseId, symbol == AsceLoad::L   ? floor
                                             : symbol == AsceLoad::W ? wind
                                                                     : roof);
        }
        return factors;
    }

    void strengthAsce(const Chosen& chosen) {
        const Acting acts = actingIn(chosen);
        const auto put = [&](double dead, double floor, double roof, double wind,
                             const char* number) {
            add(dead, factorsAsce(chosen, floor, roof, wind),
                std::string("ASCE 7-16, 2.3.1 (") + number + ")", "");
        };
        if (chosen.empty()) {
            return put(1.4, 0, 0, 0, "1");
        }
        if (!acts.wind) {
            put(1.2, 1.6, 0.5, 0, "2");
        }
        if (acts.roof && !(acts.floor && acts.wind)) {
            put(1.2, 1.0, 1.6, 0.5, "3");
        }
        if (acts.wind) {
            put(1.2, 1.0, 0.5, 1.0, "4");
        }
        if (acts.wind && !acts.floor && !acts.roof) {
            put(0.9, 0, 0, 1.0, "5");
        }
    }

    void allowableAsce(const Chosen& chosen) {
        const Acting acts = actingIn(chosen);
        const auto put = [&](double dead, double floor, double roof, double wind,
                             const char* number) {
            add(dead, factorsAsce(chosen, floor, roof, wind),
                std::string("ASCE 7-16, 2.4.1 (") + number + ")", "");
        };
        const int kinds = int{acts.floor} + int{acts.roof} + int{acts.wind};
        if (kinds == 0) {
            return put(1, 0, 0, 0, "1");
        }
        if (kinds == 1) {
            put(1, 1, 1, 0.6, acts.floor ? "2" : acts.roof ? "3" : "5");
        }
        if (kinds > 1) {
            put(1, 0.75, 0.75, 0.75 * 0.6, acts.wind ? "6" : "4");
        }
        if (acts.wind && kinds == 1) {
            put(0.6, 0, 0, 0.6, "7");
        }
    }

    void add(double permanent, const Factors& variable, std::string by, const char* limit) {
        Factors factors;
        for (const std::string& caseId : sorted_.permanent) {
            factors.emplace_back(caseId, permanent);
        }
        std::copy_if(variable.begin(), variable.end(), std::back_inserter(factors),
                     [](const auto& it) { return it.second != 0; });
        if (factors.empty() || !seen_.insert({limit, factors}).second) {
            made_.repeats += factors.empty() ? 0 : 1;
            return;
        }
        const bool isService = *limit != '\0';
        const std::string number = std::to_string(++(isService ? services_ : strengths_));
        Combination one{said(book_, isService
                                        ? statement(phrase::kServiceNumber, {{"number", number}})
                                        : statement(phrase::kStrengthNumber, {{"number", number}})),
                        std::move(factors),
                        {}};
        one.by = std::move(by);
        one.limit = limit;
        made_.combinations.push_back(std::move(one));
    }

    const PhraseBook& book_;
    const Sorted& sorted_;
    const CombinationWish& wish_;
    CombinationsMade made_{};
    std::set<std::pair<std::string, Factors>> seen_{};
    int strengths_ = 0;
    int services_ = 0;
};

bool areFactors(const CombinationWish& wish) {
    std::vector<double> all{wish.permanentUp, wish.permanentDown, wish.variable, wish.xi};
    for (const NationalFactors& own : wish.national) {
        all.insert(all.end(), {own.psi.combination, own.psi.frequent, own.psi.quasiPermanent});
    }
    return std::all_of(all.begin(), all.end(), [](double it) { return it >= 0 && it <= 10; });
}

// The combinations of one limit state, by number, and their choices.
struct OfLimit {
    std::vector<std::size_t> numbers;
    std::vector<LoadChoice> choices;
};
OfLimit ofLimit(const Truss& truss, bool service) {
    OfLimit of;
    for (std::size_t i = 0; i < truss.combinations.size(); ++i) {
        if ((truss.combinations[i].limit == "service") == service) {
            of.numbers.push_back(i);
            of.choices.emplace_back(OneCombination{truss.combinations[i].id});
        }
    }
    return of;
}

} // namespace

Outcome<CombinationsMade> combinationsOf(const PhraseBook& book, const Truss& truss,
                                         const CombinationWish& wish) {
    if (!areFactors(wish)) {
        return Issue{IssueCode::OutOfRange, "", phrase::kFactorsMustBePositive};
    }
    const Sorted sorted = sortedCases(truss);
    if (sorted.permanent.empty() && sorted.groups.empty()) {
        return Issue{IssueCode::Missing, "cases", phrase::kNoKindsToCombine};
    }
    const Issue tooMany{
        IssueCode::TooLarge, "cases",
        statement(phrase::kTooManyCombinations, {{"most", std::to_string(kMostCombinations)}})};
    const std::vector<Chosen> choices = choicesOf(sorted, isEn(wish));
    if (choices.empty()) {
        return tooMany;
    }
    CombinationsMade made = Writing(book, sorted, wish).write(choices);
    if (made.combinations.size() > kMostCombinations) {
        return tooMany;
    }
    return made;
}

Outcome<std::vector<bool>> governing(const Truss& truss) {
    std::vector<bool> governs(truss.combinations.size(), false);
    for (const bool service : {false, true}) {
        const OfLimit of = ofLimit(truss, service);
        if (of.choices.empty()) {
            continue;
        }
        const Outcome<Envelope> envelope = envelopeOf(truss, of.choices);
        if (!envelope) {
            return envelope.issues();
        }
        const auto mark = [&](const ForceExtreme& extreme) {
            const auto found = std::find(of.choices.begin(), of.choices.end(), extreme.choice);
            if (extreme.force != 0 && found != of.choices.end()) {
                governs[of.numbers[std::size_t(found - of.choices.begin())]] = true;
            }
        };
        for (const MemberEnvelope& member : envelope.value().members) {
            mark(member.tension);
            mark(member.compression);
        }
    }
    return governs;
}

} // namespace gusset
