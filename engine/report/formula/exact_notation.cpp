#include "report/formula/exact_notation.hpp"

#include "core/signs.hpp"
#include "core/tolerance.hpp"
#include "report/text/formula.hpp"

#include <cmath>
#include <cstdlib>

namespace gusset {
namespace {

// Longer fractions help nobody.
constexpr std::size_t kLongestFraction = 12; // digits above, below and under the root together

bool isNegative(const Surd& surd) { return surd.numerator[0] == '-'; }

std::string digitsOf(const Surd& surd) { return surd.numerator.substr(isNegative(surd) ? 1 : 0); }

bool isOne(const std::string& digits) { return digits == "1"; }

Surd negated(Surd surd) {
    surd.numerator = isNegative(surd) ? digitsOf(surd) : "-" + surd.numerator;
    surd.value = -surd.value;
    return surd;
}

const Surd* surdOf(const Notation& notation, const Symbol& symbol) {
    const ExactValues& exact = notation.working.exact;
    const bool reaction = symbol.kind == SymbolKind::Reaction;
    const std::vector<Surd>& list = reaction ? exact.reactions : exact.forces;
    const auto at = reaction ? symbol.restraint.at() : symbol.member.at();
    return at < list.size() ? &list[at] : nullptr;
}

} // namespace

bool isShort(const Surd& surd) {
    return digitsOf(surd).size() + surd.radicand.size() + surd.denominator.size() <=
           kLongestFraction;
}

bool isPlainNumber(const Surd& surd) {
    // Up to three decimals are more usual by hand than a fraction.
    constexpr int kParts = 1000;
    const bool fewDigits = surd.denominator.size() <= 4;
    return isOne(surd.radicand) && fewDigits && kParts % std::atoi(surd.denominator.c_str()) == 0;
}

Formula surdTokens(const Notation& notation, const Surd& surd) {
    if (isPlainNumber(surd)) {
        return {numberToken(formatGiven(surd.value, notation.numbers))};
    }
    const std::string sign = isNegative(surd) ? kMinus : "";
    const bool root = !isOne(surd.radicand);
    const std::string above = root && isOne(digitsOf(surd)) ? "" : digitsOf(surd);
    if (!isOne(surd.denominator)) {
        return {{.kind = TokenKind::Fraction,
                 .text = sign + above,
                 .below = surd.denominator,
                 .rootAbove = root ? surd.radicand : ""}};
    }
    Formula formula;
    if (!above.empty()) {
        formula.push_back(numberToken(sign + above));
    } else if (!sign.empty()) {
        formula.push_back(operatorToken(sign));
    }
    formula.push_back({.kind = TokenKind::Root, .text = surd.radicand});
    return formula;
}

std::optional<Formula> exactTokens(const Notation& notation, const Symbol& symbol, double value) {
    const Surd* found = surdOf(notation, symbol);
    if (!found || std::fabs(std::fabs(found->value) - std::fabs(value)) >
                      kSameExact * std::fabs(found->value)) {
        return std::nullopt;
    }
    const bool turned = (found->value < 0) != (value < 0);
    const Surd surd = turned ? negated(*found) : *found;
    return isShort(surd) ? std::optional(surdTokens(notation, surd)) : std::nullopt;
}

} // namespace gusset
