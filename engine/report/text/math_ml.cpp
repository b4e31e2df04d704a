#include "report/text/math_ml.hpp"

#include "core/signs.hpp"
#include "report/text/formula.hpp"
#include "report/text/html.hpp"

#include <algorithm>
#include <cctype>
#include <string_view>

namespace gusset {
namespace {

constexpr std::string_view kApply = "\u2061"; // read as "of" by screen readers
constexpr std::string_view kTimes = "\u2062"; // an unwritten multiplication sign

bool isOperand(const Token& token) {
    return token.kind != TokenKind::Operator && token.kind != TokenKind::Function;
}

bool isSeparator(const Token& token) {
    return token.kind == TokenKind::Operator &&
           (token.text == ":" || token.text == "," || token.text == ";");
}

bool isOperator(const Token& token, std::string_view text) {
    return token.kind == TokenKind::Operator && token.text == text;
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
    case TokenKind::Function:
        return mathIdentifier(token.text);
    case TokenKind::Fraction: {
        const std::string below = mathPart(token.below);
        return tag("mfrac", mathAbove(token) + (token.rootBelow ? tag("msqrt", below) : below));
    }
    case TokenKind::Root:
        return tag("msqrt", mathNumber(token.text));
    case TokenKind::Operator: // depends on where it stands
    case TokenKind::Word:
        break;
    }
    return tag("mtext", escapeHtml(token.text));
}

constexpr const char* kThin = "<mspace width=\"0.17em\"></mspace>";
constexpr const char* kBetween = "<mspace width=\"0.3em\"></mspace>";
constexpr const char* kBehindPart = "<mspace width=\"0.6em\"></mspace>"; // which ends in a comma

std::string mathJoint(const Token& before, const Token& token) {
    if (before.kind == TokenKind::Function) {
        return tag("mo", std::string(kApply)) + kThin;
    }
    if (token.kind == TokenKind::Function && isOperand(before)) {
        return tag("mo", std::string(kTimes)) + kThin;
    }
    if (token.kind == TokenKind::Function && isOperator(before, ")")) {
        return kThin;
    }
    return token.kind == TokenKind::Word || isSeparator(before) ? kBetween : std::string{};
}

// Of the operators whose place in the row does not tell what they are: "−" in "= −x" is a sign, and
// one that begins a continued line stands between two terms.
const char* formOf(const Token& token, const Token* before, bool continues) {
    if (!before) {
        return continues ? " form=\"infix\"" : "";
    }
    const bool sign = token.text == "+" || token.text == kMinus;
    return sign && opensTerm(before) ? " form=\"prefix\"" : "";
}

// Which way moments count positive: it stands before the name of their sum.
bool isTurn(const Token& token) {
    return isOperator(token, "\u27F2") || isOperator(token, "\u27F3");
}

bool isTall(const Token& token) {
    return token.kind == TokenKind::Fraction || token.kind == TokenKind::Root;
}

// Whether a bracket holds something taller than a letter, with which it must grow; `at`: its place.
bool growsAt(const Formula& formula, std::size_t at) {
    const bool opens = formula[at].text == "(";
    for (std::size_t i = at; i < formula.size(); i += opens ? 1 : -1) {
        if (isTall(formula[i])) {
            return true;
        }
        if (isOperator(formula[i], opens ? ")" : "(")) {
            break;
        }
    }
    return false;
}

std::string mathOperator(const Formula& formula, std::size_t at, bool continues) {
    const Token& token = formula[at];
    const Token* before = at > 0 ? &formula[at - 1] : nullptr;
    std::string look = formOf(token, before, continues);
    if (token.text == kSum) { // in the name of a sum, or before what is summed
        const bool sums = before && !isTurn(*before);
        look += sums ? " rspace=\"0.17em\"" : " lspace=\"0\" rspace=\"0.05em\"";
    } else if (isTurn(token)) {
        look += " lspace=\"0\" rspace=\"0.25em\"";
    } else if ((token.text == "(" || token.text == ")") && !growsAt(formula, at)) {
        look += " stretchy=\"false\"";
    }
    return "<mo" + look + ">" + escapeHtml(token.text) + "</mo>";
}

// Brackets are a row of their own, so that they grow with what they hold and no further.
std::string mathRow(const Formula& formula, bool continues) {
    std::string content;
    for (std::size_t i = 0; i < formula.size(); ++i) {
        const Token& token = formula[i];
        content += i > 0 ? mathJoint(formula[i - 1], token) : "";
        content += isOperator(token, "(") ? "<mrow>" : "";
        content += token.kind == TokenKind::Operator ? mathOperator(formula, i, continues)
                                                     : mathToken(token);
        content += isOperator(token, ")") ? "</mrow>" : "";
    }
    const bool goesOn = !formula.empty() && isSeparator(formula.back());
    content += goesOn ? kBehindPart : "";
    return "<math displaystyle=\"true\">" + tag("mrow", content) + "</math>";
}

// Browsers break lines at a thin space, and behind "≈".
std::string keptTogether(std::string text) {
    const auto replaceAll = [&](std::string_view from, std::string_view to) {
        for (std::size_t at = text.find(from); at != text.npos; at = text.find(from, at + 1)) {
            text.replace(at, from.size(), to);
        }
    };
    replaceAll(kThinSpace, "\u202F");
    replaceAll("= ", "=\u00A0");
    replaceAll(std::string(kAlmost) + " ", std::string(kAlmost) + "\u00A0");
    return text;
}

} // namespace

std::string mathMl(const Formula& formula) {
    const BrokenFormula broken = brokenAtOperators(formula);
    if (broken.rest.size() < 2) {
        return mathRow(formula, false);
    }
    std::string rest;
    const Formula* before = broken.lead.empty() ? nullptr : &broken.lead;
    for (const Formula& piece : broken.rest) {
        const bool continues = before && !isSeparator(before->back());
        rest += mathRow(piece, continues);
        before = &piece;
    }
    return (broken.lead.empty() ? "" : mathRow(broken.lead, false)) + tag("span", rest);
}

std::string htmlOf(const RichLine& line) {
    std::string html;
    for (const Run& run : line) {
        const std::string text = escapeHtml(keptTogether(run.text));
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
