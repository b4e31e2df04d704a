// Recursive descent. A unit applies to a whole product, as people mean it: 3/4 in is three quarters
// of an inch. Two quantities in a row are added: 4 ft 6 in.

#include "model/quantity/quantity_reader.hpp"

#include "model/quantity/quantity_tokens.hpp"
#include "model/truss/truss.hpp"
#include "model/validate/validate.hpp"
#include "phrases/faults/quantities.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace gusset {

std::string lowered(std::string_view word) {
    std::string out(word);
    for (char& c : out) {
        c = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    }
    return out;
}

namespace {

using Kind = QuantityToken::Kind;

struct Value {
    double number = 0;
    bool hasUnit = false; // then `number` is in the unit of the field
};

class Reader {
public:
    Reader(std::vector<QuantityToken> tokens, const QuantityField& field)
        : tokens_(std::move(tokens)), field_(field) {}

    // The value of the whole text.
    Outcome<double> readAll() {
        const Value value = sum();
        if (!issue_ && now().kind != Kind::End) {
            fail(statement(phrase::kCantReadWord, {{"word", now().text}}));
        }
        if (!issue_ && !(std::abs(value.number) <= kLargestNumber)) {
            issue_ = Issue{IssueCode::NotFinite, "input", phrase::kNotFinite};
        }
        if (issue_) {
            return std::move(*issue_);
        }
        return value.number + 0.0; // -0 is 0
    }

private:
    [[nodiscard]] const QuantityToken& now() const { return tokens_[at_]; }
    [[nodiscard]] const QuantityToken& ahead(std::size_t count) const {
        return tokens_[std::min(at_ + count, tokens_.size() - 1)];
    }
    [[nodiscard]] bool isSign(char sign) const {
        return now().kind == Kind::Sign && now().text[0] == sign;
    }
    bool takeSign(char sign) {
        const bool isHere = isSign(sign);
        at_ += isHere ? 1 : 0;
        return isHere;
    }
    Value fail(Statement says) {
        if (!issue_) {
            issue_ = Issue{IssueCode::Syntax, "input", std::move(says)};
        }
        return {};
    }

    Value sum() {
        Value total = compound();
        while (!issue_ && (isSign('+') || isSign('-'))) {
            const double sign = takeSign('+') ? 1 : (++at_, -1);
            total = added(total, compound(), sign);
        }
        return total;
    }

    Value added(Value a, Value b, double sign) {
        if (!issue_ && a.hasUnit != b.hasUnit && a.number != 0 && b.number != 0) {
            return fail(phrase::kOneHasUnit);
        }
        return {a.number + sign * b.number, a.hasUnit || b.hasUnit};
    }

    // 4 ft 6 in; 4'-6"; 4' 6 (inches).
    Value compound() {
        const bool isNegative = takeSign('-');
        if (!isNegative) {
            takeSign('+');
        }
        Value total = product();
        while (!issue_ && total.hasUnit && continuesCompound()) {
            takeSign('-');
            Value more = product();
            if (!issue_ && !more.hasUnit) {
                more = withUnit(more, "in");
            }
            total = added(total, more, 1);
        }
        return {isNegative ? -total.number : total.number, total.hasUnit};
    }

    [[nodiscard]] bool continuesCompound() const {
        if (now().kind == Kind::Number) {
            return true;
        }
        return field_.isLength && at_ > 0 && tokens_[at_ - 1].text == "'" && isSign('-') &&
               ahead(1).kind == Kind::Number;
    }

    Value product() {
        Value total = factor();
        while (!issue_) {
            if (now().kind == Kind::Word) {
                total = withUnit(total, now().text);
                ++at_;
            } else if (takeSign('*')) {
                total = multiplied(total, factor());
            } else if (takeSign('/')) {
                total = divided(total, factor());
            } else {
                break;
            }
        }
        return total;
    }

    Value withUnit(Value value, std::string_view unit) {
        const std::optional<double> converted = field_.convert(value.number, unit);
        if (!converted) {
            return fail(
                statement(phrase::kNoUnitHere, {{"unit", unit}, {"remedy", field_.remedy}}));
        }
        if (value.hasUnit) {
            return fail(statement(phrase::kTwoUnits, {{"unit", unit}}));
        }
        return {*converted, true};
    }

    Value multiplied(Value a, Value b) {
        if (a.hasUnit && b.hasUnit) {
            return fail(phrase::kUnitTimesUnit);
        }
        return {a.number * b.number, a.hasUnit || b.hasUnit};
    }

    Value divided(Value a, Value b) {
        if (b.hasUnit) {
            return fail(phrase::kByUnit);
        }
        if (!issue_ && b.number == 0) {
            return fail(phrase::kByZero);
        }
        return {a.number / b.number, a.hasUnit};
    }

    Value factor() {
        if (takeSign('-')) {
            const Value value = factor();
            return {-value.number, value.hasUnit};
        }
        if (takeSign('(')) {
            return inParentheses();
        }
        if (now().kind == Kind::Number) {
            return number();
        }
        if (now().kind == Kind::Word) {
            return function();
        }
        if (now().kind == Kind::End) {
            return fail(at_ == 0 ? phrase::kTypeNumber : phrase::kEndsTooSoon);
        }
        return fail(statement(phrase::kNumberMissing, {{"sign", now().text}}));
    }

    Value inParentheses() {
        constexpr int kDeepest = 20;
        if (++depth_ > kDeepest) {
            return fail(phrase::kTooManyParentheses);
        }
        const Value value = sum();
        --depth_;
        if (!issue_ && !takeSign(')')) {
            return fail(phrase::kParenthesisMissing);
        }
        return value;
    }

    // 7, 2.5 or a mixed fraction: 1 3/4.
    Value number() {
        const QuantityToken& first = tokens_[at_++];
        const bool isMixed = first.isWhole && now().isWhole && ahead(1).kind == Kind::Sign &&
                             ahead(1).text == "/" && ahead(2).isWhole && ahead(2).value != 0;
        if (isMixed) {
            const double fraction = now().value / ahead(2).value;
            at_ += 3;
            return {first.value + fraction, false};
        }
        if (now().kind == Kind::Number) {
            return fail(statement(phrase::kTwoNumbers, {{"a", first.text}, {"b", now().text}}));
        }
        return {first.value, false};
    }

    Value function() {
        const std::string name = lowered(tokens_[at_].text);
        if (name == "pi" || name == "π") {
            ++at_;
            return {std::numbers::pi, false};
        }
        double (*const apply)(double) = functionNamed(name);
        if (!apply) {
            return fail(statement(phrase::kNumberMissingBefore, {{"word", now().text}}));
        }
        ++at_;
        const bool isAngle = name == "sin" || name == "cos" || name == "tan";
        const Value argument = takeSign('(') ? inParentheses() : factor();
        if (isAngle && now().kind == Kind::Word && lowered(now().text) == "deg") {
            ++at_;
        }
        if (argument.hasUnit) {
            return fail(statement(phrase::kNeedsPlainNumber, {{"function", name}}));
        }
        const double result = issue_ ? 0 : apply(argument.number);
        return std::isfinite(result) ? Value{result, false}
                                     : fail(statement(phrase::kHasNoValue, {{"function", name}}));
    }

    static double (*functionNamed(std::string_view name))(double) {
        constexpr double kDegree = std::numbers::pi / 180;
        if (name == "sqrt") {
            return [](double x) { return std::sqrt(x); };
        }
        if (name == "sin") {
            return [](double x) { return directionOf(x).y; };
        }
        if (name == "cos") {
            return [](double x) { return directionOf(x).x; };
        }
        if (name == "tan") {
            return [](double x) { return directionOf(x).y / directionOf(x).x; };
        }
        if (name == "asin") {
            return [](double x) { return std::asin(x) / kDegree; };
        }
        if (name == "acos") {
            return [](double x) { return std::acos(x) / kDegree; };
        }
        if (name == "atan") {
            return [](double x) { return std::atan(x) / kDegree; };
        }
        return nullptr;
    }

    std::vector<QuantityToken> tokens_;
    const QuantityField& field_;
    std::size_t at_ = 0;
    int depth_ = 0;
    std::optional<Issue> issue_;
};

} // namespace

Outcome<double> readQuantity(std::string_view text, const QuantityField& field) {
    Outcome<std::vector<QuantityToken>> tokens = quantityTokens(text);
    if (!tokens) {
        return tokens.issues();
    }
    return Reader(std::move(tokens).value(), field).readAll();
}

} // namespace gusset
