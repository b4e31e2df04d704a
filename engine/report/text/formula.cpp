#include "report/text/formula.hpp"

#include "core/signs.hpp"

#include <algorithm>
#include <initializer_list>
#include <string_view>

namespace gusset {
namespace {

bool isAny(std::string_view text, std::initializer_list<std::string_view> list) {
    for (const std::string_view one : list) {
        if (text == one) {
            return true;
        }
    }
    return false;
}

std::string_view spaceAround(const Token& token, const Token* before) {
    if (isAny(token.text, {"(", ")", ":", ",", ";", kSum, "\u27F2", "\u27F3"})) {
        return {};
    }
    if (token.text == kDot) {
        return kThinSpace;
    }
    const bool sign = isAny(token.text, {"+", kMinus}) && opensTerm(before);
    return sign ? std::string_view{} : std::string_view{" "};
}

// The space between two tokens that are not operators.
std::string_view spaceBetween(const Token& before, const Token& token) {
    if (before.kind == TokenKind::Function || token.kind == TokenKind::Function) {
        return kThinSpace;
    }
    if (token.kind == TokenKind::Word) {
        return before.kind == TokenKind::Word ? " " : kThinSpace;
    }
    // 0.8 F_AB, but 2j.
    const bool whole = before.kind == TokenKind::Number &&
                       before.text.find_first_not_of("0123456789") == std::string::npos;
    const bool number = before.kind == TokenKind::Number || before.kind == TokenKind::Fraction ||
                        before.kind == TokenKind::Root;
    if (number && token.kind == TokenKind::Variable && (!whole || !token.subscript.empty())) {
        return kThinSpace;
    }
    return {};
}

void add(RichLine& line, std::string_view text, RunStyle style = RunStyle::Plain) {
    if (text.empty()) {
        return;
    }
    if (!line.empty() && line.back().style == style && style == RunStyle::Plain) {
        line.back().text += text;
    } else {
        line.push_back({std::string(text), style});
    }
}

void addOperator(RichLine& line, const Token& token, const Token* before) {
    const std::string_view space = spaceAround(token, before);
    if (!line.empty()) {
        add(line, space);
    }
    add(line, token.text);
    add(line, space);
    if (isAny(token.text, {":", ",", ";"})) {
        add(line, token.text == ":" ? "  " : " ");
    } else if (isAny(token.text, {"\u27F2", "\u27F3"})) {
        add(line, " ");
    } else if (token.text == kSum && before && isAny(before->text, {"=", "+", kMinus})) {
        add(line, kThinSpace); // the sum of what follows, not the name of a sum
    }
}

void addOperand(RichLine& line, const Token& token) {
    switch (token.kind) {
    case TokenKind::Variable:
        add(line, token.text, RunStyle::Variable);
        add(line, token.subscript, RunStyle::Subscript);
        break;
    case TokenKind::Fraction:
        add(line,
            token.text + (token.rootAbove.empty() ? "" : "\u221A" + token.rootAbove) +
                (token.rootBelow ? "/\u221A" : "/") + token.below,
            RunStyle::Fraction);
        break;
    case TokenKind::Root:
        add(line, "\u221A" + token.text, RunStyle::Root);
        break;
    default:
        add(line, token.text);
    }
}

} // namespace

Token numberToken(std::string text) { return {TokenKind::Number, std::move(text)}; }
Token variableToken(std::string text, std::string subscript) {
    return {TokenKind::Variable, std::move(text), std::move(subscript)};
}
Token operatorToken(std::string text) { return {TokenKind::Operator, std::move(text)}; }
Token functionToken(std::string text) { return {TokenKind::Function, std::move(text)}; }
Token wordToken(std::string text) { return {TokenKind::Word, std::move(text)}; }

void append(Formula& formula, const Formula& more) {
    formula.insert(formula.end(), more.begin(), more.end());
}

RichLine runsOf(const Formula& formula) {
    RichLine line;
    const Token* before = nullptr;
    for (const Token& token : formula) {
        if (token.kind == TokenKind::Operator) {
            addOperator(line, token, before);
        } else {
            if (before && before->kind != TokenKind::Operator) {
                add(line, spaceBetween(*before, token));
            } else if (before && before->text == ")" && token.kind == TokenKind::Function) {
                add(line, kThinSpace);
            }
            addOperand(line, token);
        }
        before = &token;
    }
    return line;
}

bool opensTerm(const Token* before) {
    return !before || (before->kind == TokenKind::Operator && before->text != ")");
}

namespace {

struct OuterToken {
    const Token& token;
    bool outer = true; // not within brackets
};

bool isOperator(const OuterToken& at, std::initializer_list<std::string_view> list) {
    return at.outer && at.token.kind == TokenKind::Operator && isAny(at.token.text, list);
}

std::vector<OuterToken> withBrackets(const Formula& formula) {
    std::vector<OuterToken> all;
    int depth = 0;
    for (const Token& token : formula) {
        const bool bracket = token.kind == TokenKind::Operator;
        depth -= bracket && token.text == ")" ? 1 : 0;
        all.push_back({token, depth == 0});
        depth += bracket && token.text == "(" ? 1 : 0;
    }
    return all;
}

bool isRelation(const OuterToken& at) { return isOperator(at, {"=", kAlmost, "\u21D2"}); }

bool adds(const std::vector<OuterToken>& all, const Formula& formula, std::size_t i) {
    return isOperator(all[i], {"+", kMinus}) && i > 0 && !opensTerm(&formula[i - 1]);
}

// Whether a sum is what begins it, as in 3 + 4 x = 0, rather than a name: x = 3 + 4.
bool beginsWithSum(const std::vector<OuterToken>& all, const Formula& formula) {
    for (std::size_t i = 0; i < all.size() && !isRelation(all[i]); ++i) {
        if (isOperator(all[i], {":"})) {
            return false;
        }
        if (adds(all, formula, i)) {
            return std::none_of(all.begin(), all.end(),
                                [](const OuterToken& at) { return isOperator(at, {":"}); });
        }
    }
    return false;
}

// How many tokens the lead has.
std::size_t leadOf(const std::vector<OuterToken>& all) {
    std::size_t first = 0;
    for (std::size_t i = all.size(); i-- > 0;) {
        if (isOperator(all[i], {":"})) {
            return i + 1;
        }
        first = isRelation(all[i]) ? i : first;
    }
    const bool lists = std::any_of(all.begin(), all.end(), [](const OuterToken& at) {
        return isOperator(at, {",", ";"});
    });
    return lists ? 0 : first;
}

} // namespace

BrokenFormula brokenAtOperators(const Formula& formula) {
    const std::vector<OuterToken> all = withBrackets(formula);
    const bool isSum = beginsWithSum(all, formula);
    const std::size_t lead = isSum ? 0 : leadOf(all);
    BrokenFormula broken{{formula.begin(), formula.begin() + static_cast<std::ptrdiff_t>(lead)},
                         {{}}};
    bool related = lead > 0 || isSum; // whether this part of a list has had its first "="
    for (std::size_t i = lead; i < all.size(); ++i) {
        const bool relates = isRelation(all[i]);
        const bool listed = i > 0 && isOperator(all[i - 1], {",", ";"});
        related = related && !listed;
        if (!broken.rest.back().empty() &&
            (listed || (related && (relates || adds(all, formula, i))))) {
            broken.rest.emplace_back();
        }
        related = related || relates;
        broken.rest.back().push_back(formula[i]);
    }
    return broken;
}

} // namespace gusset
