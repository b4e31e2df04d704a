#include "report/text/formula.hpp"

#include "core/signs.hpp"
#include "report/text/html.hpp"

#include <cctype>

namespace gusset {
namespace {

constexpr std::string_view kApply = "\u2061"; // read as "of" by screen readers
constexpr std::string_view kTimes = "\u2062"; // an unwritten multiplication sign

bool isAny(std::string_view text, std::initializer_list<std::string_view> list) {
    for (const std::string_view one : list) {
        if (text == one) {
            return true;
        }
    }
    return false;
}

bool isOperand(const Token& token) {
    return token.kind != TokenKind::Operator && token.kind != TokenKind::Function;
}

// Whether a term starts after this token, so that + and − there are signs rather than operators.
bool opens(const Token* before) {
    return !before || (before->kind == TokenKind::Operator && before->text != ")");
}

std::string_view spaceAround(const Token& token, const Token* before) {
    if (isAny(token.text, {"(", ")", ":", ",", ";", kSum, "\u27F2", "\u27F3"})) {
        return {};
    }
    if (token.text == kDot) {
        return kThinSpace;
    }
    const bool sign = isAny(token.text, {"+", kMinus}) && opens(before);
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

std::string tag(std::string_view name, const std::string& content) {
    const std::string n(name);
    return "<" + n + ">" + content + "</" + n + ">";
}

std::string mathNumber(const std::string& text) {
    if (text.rfind(kMinus, 0) == 0) {
        return tag("mrow", tag("mo", std::string(kMinus)) +
                               tag("mn", escapeHtml(text.substr(std::string_view(kMinus).size()))));
    }
    return tag("mn", escapeHtml(text));
}

std::string mathIdentifier(const std::string& text) {
    // MathML sets names of several letters upright, which suits labels such as A1 or AB.
    return tag("mi", escapeHtml(text));
}

// Part of a fraction: a number, or a name such as L or EA.
std::string mathPart(const std::string& text) {
    const bool letter = !text.empty() && std::isalpha(static_cast<unsigned char>(text.front()));
    return letter ? mathIdentifier(text) : mathNumber(text);
}

// The numerator as a single element: 3, L, 35√2, −√2.
std::string mathAbove(const Token& token) {
    if (token.rootAbove.empty()) {
        return mathPart(token.text);
    }
    const bool negativeRoot = token.text == kMinus;
    const std::string factor = token.text.empty() ? ""
                               : negativeRoot     ? tag("mo", token.text)
                                                  : mathPart(token.text);
    return tag("mrow", factor + tag("msqrt", tag("mn", escapeHtml(token.rootAbove))));
}

std::string mathToken(const Token& token) {
    switch (token.kind) {
    case TokenKind::Number:
        return mathNumber(token.text);
    case TokenKind::Variable:
        return token.subscript.empty()
                   ? mathIdentifier(token.text)
                   : tag("msub", mathIdentifier(token.text) + mathIdentifier(token.subscript));
    case TokenKind::Operator:
        return tag("mo", escapeHtml(token.text));
    case TokenKind::Function:
        return mathIdentifier(token.text);
    case TokenKind::Fraction: {
        const std::string below = mathPart(token.below);
        return tag("mfrac", mathAbove(token) + (token.rootBelow ? tag("msqrt", below) : below));
    }
    case TokenKind::Root:
        return tag("msqrt", mathNumber(token.text));
    case TokenKind::Word:
        break;
    }
    return tag("mtext", escapeHtml(token.text));
}

std::string mathJoint(const Token& before, const Token& token) {
    if (before.kind == TokenKind::Function) {
        return tag("mo", std::string(kApply));
    }
    if (token.kind == TokenKind::Function && isOperand(before)) {
        return tag("mo", std::string(kTimes));
    }
    if (token.kind == TokenKind::Word || isAny(before.text, {":", ",", ";"})) {
        return "<mspace width=\"0.3em\"></mspace>";
    }
    return {};
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

std::string mathMl(const Formula& formula) {
    std::string content;
    const Token* before = nullptr;
    for (const Token& token : formula) {
        if (before) {
            content += mathJoint(*before, token);
        }
        content += mathToken(token);
        before = &token;
    }
    return "<math display=\"block\">" + tag("mrow", content) + "</math>";
}

std::string htmlOf(const RichLine& line) {
    std::string html;
    for (const Run& run : line) {
        const std::string text = escapeHtml(run.text);
        switch (run.style) {
        case RunStyle::Plain:
        case RunStyle::Fraction: // in a sentence; formulas use MathML
        case RunStyle::Root:
            html += text;
            break;
        case RunStyle::Variable:
            html += tag("var", text);
            break;
        case RunStyle::Subscript:
            html += tag("sub", text);
            break;
        case RunStyle::Strong:
            html += tag("strong", text);
            break;
        }
    }
    return html;
}

} // namespace gusset
