#include "report/lesson/spoken.hpp"

#include "core/signs.hpp"
#include "phrases/working/spoken.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <string_view>
#include <utility>

namespace gusset {
namespace {

struct Sign {
    std::string_view sign;
    Phrase<> said;
};
constexpr std::array kArrows{
    Sign{"\u2191", phrase::kSaidUp},
    Sign{"\u2193", phrase::kSaidDown},
    Sign{"\u2190", phrase::kSaidLeft},
    Sign{"\u2192", phrase::kSaidRight},
};
constexpr std::array kSigns{
    Sign{"=", phrase::kSaidEquals},
    Sign{kAlmost, phrase::kSaidAlmost},
    Sign{"+", phrase::kSaidPlus},
    Sign{kMinus, phrase::kSaidMinus},
    Sign{kDot, phrase::kSaidTimes},
    Sign{"\u21D2", phrase::kSaidSo},
    Sign{"(", phrase::kSaidOpen},
    Sign{")", phrase::kSaidClose},
    Sign{"sin", phrase::kSaidSine},
    Sign{"cos", phrase::kSaidCosine},
    Sign{"tan", phrase::kSaidTangent},
    kArrows[0],
    kArrows[1],
    kArrows[2],
    kArrows[3],
};

constexpr std::array kUnits{
    Sign{"N", phrase::kSaidNewtons},      Sign{"kN", phrase::kSaidKilonewtons},
    Sign{"MN", phrase::kSaidMeganewtons}, Sign{"lbf", phrase::kSaidPounds},
    Sign{"kip", phrase::kSaidKips},       Sign{"m", phrase::kSaidMetres},
    Sign{"cm", phrase::kSaidCentimetres}, Sign{"mm", phrase::kSaidMillimetres},
    Sign{"ft", phrase::kSaidFeet},        Sign{"in", phrase::kSaidInches},
};

constexpr std::array kOneOf{
    Sign{"N", phrase::kSaidNewton},      Sign{"kN", phrase::kSaidKilonewton},
    Sign{"MN", phrase::kSaidMeganewton}, Sign{"lbf", phrase::kSaidPound},
    Sign{"kip", phrase::kSaidKip},
};

// "−5" is minus 5; what is no sign stays as it is.
std::string spokenWord(const PhraseBook& book, const std::string& text) {
    const auto* found = std::find_if(kSigns.begin(), kSigns.end(),
                                     [&](const Sign& sign) { return sign.sign == text; });
    if (found != kSigns.end()) {
        return sayPlain(book, found->said);
    }
    const std::string_view minus = kMinus;
    return text.starts_with(minus)
               ? sayPlain(book, phrase::kSaidNegative, {{"number", text.substr(minus.size())}})
               : text;
}

std::string rootOf(const PhraseBook& book, const std::string& radicand) {
    return sayPlain(book, phrase::kSaidRoot, {{"what", spokenWord(book, radicand)}});
}

std::string spokenFraction(const PhraseBook& book, const Token& token) {
    std::string above = spokenWord(book, token.text);
    if (!token.rootAbove.empty()) {
        const std::string root = rootOf(book, token.rootAbove);
        above = token.text.empty() ? root
                : token.text == kMinus
                    ? sayPlain(book, phrase::kSaidNegative, {{"number", root}})
                    : sayPlain(book, phrase::kSaidFactor, {{"factor", above}, {"what", root}});
    }
    const std::string below =
        token.rootBelow ? rootOf(book, token.below) : spokenWord(book, token.below);
    return sayPlain(book, phrase::kSaidOver, {{"above", above}, {"below", below}});
}

// "ΣM" is the sum of M.
std::string spokenName(const PhraseBook& book, const std::string& name) {
    const std::string_view sum = kSum;
    const std::size_t at = name.find(sum);
    return at == name.npos || at + sum.size() == name.size()
               ? name
               : name.substr(0, at) +
                     sayPlain(book, phrase::kSaidSum,
                              {{"what", spokenName(book, name.substr(at + sum.size()))}});
}

std::string spokenToken(const PhraseBook& book, const Token& token) {
    switch (token.kind) {
    case TokenKind::Fraction:
        return spokenFraction(book, token);
    case TokenKind::Root:
        return rootOf(book, token.text);
    case TokenKind::Variable:
        return spokenName(book, token.subscript.empty() ? token.text
                                                        : token.text + " " + token.subscript);
    case TokenKind::Word:
        return spokenUnit(book, token.text);
    case TokenKind::Number:
    case TokenKind::Operator:
    case TokenKind::Function:
        break;
    }
    return spokenWord(book, token.text);
}

bool isTurn(const Token& token) { return token.text == "\u27F2" || token.text == "\u27F3"; }

bool pauses(const Token& token) {
    return token.kind == TokenKind::Operator &&
           (token.text == ":" || token.text == "," || token.text == ";");
}

void addWord(std::string& text, const std::string& word) {
    text += (text.empty() || word.empty() ? "" : " ") + word;
}

// Signs within a sentence: brackets and words stay, as they are read as they should be.
std::string spokenSigns(const PhraseBook& book, std::string text) {
    for (const Sign& sign : kSigns) {
        const bool isRead = sign.sign == "(" || sign.sign == ")" || std::isalpha(sign.sign[0]) != 0;
        for (std::size_t at = isRead ? text.npos : text.find(sign.sign); at != text.npos;
             at = text.find(sign.sign, at)) {
            const bool begins = at == 0 || text[at - 1] == ' ';
            const std::size_t end = at + sign.sign.size();
            const bool ends = end == text.size() || text[end] == ' ';
            const std::string word =
                (begins ? "" : " ") + sayPlain(book, sign.said) + (ends ? "" : " ");
            text.replace(at, sign.sign.size(), word);
            at += word.size();
        }
    }
    return text;
}

// Units stand behind a thin space.
std::string spokenUnits(const PhraseBook& book, std::string text) {
    const std::string_view space = kThinSpace;
    for (std::size_t at = text.find(space); at != text.npos; at = text.find(space, at + 1)) {
        const std::size_t begin = at + space.size();
        std::size_t end = begin;
        while (end < text.size() &&
               (std::isalpha(static_cast<unsigned char>(text[end])) != 0 || text[end] == '/')) {
            ++end;
        }
        text.replace(at, end - at, " " + spokenUnit(book, text.substr(begin, end - begin)));
    }
    return text;
}

// "cos α" within a sentence: a function stands before a letter that is none of the alphabet's.
std::string spokenFunctions(const PhraseBook& book, std::string text) {
    for (const Sign& sign : kSigns) {
        const std::string name = std::string(sign.sign) + " ";
        const bool isFunction = std::isalpha(sign.sign[0]) != 0;
        for (std::size_t at = isFunction ? text.find(name) : text.npos; at != text.npos;
             at = text.find(name, at + 1)) {
            const std::size_t end = at + name.size();
            const bool ofAngle = end < text.size() && (text[end] & 0x80) != 0;
            if (ofAngle && (at == 0 || text[at - 1] == ' ')) {
                text.replace(at, sign.sign.size(), sayPlain(book, sign.said));
            }
        }
    }
    return text;
}

bool isNumber(const Token& token) { return token.kind == TokenKind::Number; }

// "(−60.00)", as it stands behind another sign, or "(1)", an equation by its number.
bool isNumberInBrackets(const Formula& formula, std::size_t i) {
    return i + 2 < formula.size() && formula[i].text == "(" && isNumber(formula[i + 1]) &&
           formula[i + 2].text == ")";
}

// Which equations a line comes from stands before a colon: "(1) − 2 · (2): …".
bool hasColonBehind(const Formula& formula, std::size_t i) {
    return std::any_of(formula.begin() + static_cast<std::ptrdiff_t>(i), formula.end(),
                       [](const Token& token) { return token.text == ":"; });
}

std::string saidInBrackets(const PhraseBook& book, const Formula& formula, std::size_t i) {
    const std::string& number = formula[i + 1].text;
    const std::string_view minus = kMinus;
    return number.starts_with(minus)
               ? sayPlain(book, phrase::kSaidInBrackets, {{"number", number.substr(minus.size())}})
           : hasColonBehind(formula, i) ? sayPlain(book, phrase::kSaidLabel, {{"number", number}})
                                        : number;
}

// sin, cos, tan behind what they multiply, where paper needs no sign.
bool multipliesAt(const Formula& formula, std::size_t i) {
    if (i == 0 || formula[i].kind != TokenKind::Function) {
        return false;
    }
    const Token& before = formula[i - 1];
    return before.text == ")" ||
           (before.kind != TokenKind::Operator && before.kind != TokenKind::Function &&
            before.kind != TokenKind::Word);
}

struct SpokenPart {
    const PhraseBook& book;
    std::string operator()(const WorkingLine& line) const {
        return line.formula.empty() ? spokenLine(book, line.runs)
                                    : spokenSentence(book, line.formula);
    }
    std::string operator()(const TextTable& table) const {
        return spokenCaption(book, table.caption);
    }
    std::string operator()(const Sketch&) const { return {}; }
};

} // namespace

std::string spokenUnit(const PhraseBook& book, const std::string& unit) {
    const std::size_t per = std::min(unit.find('/'), unit.size());
    const auto* one = std::find_if(kOneOf.begin(), kOneOf.end(), [&](const Sign& each) {
        return per < unit.size() && each.sign == unit.substr(per + 1);
    });
    if (one != kOneOf.end()) {
        return sayPlain(
            book, phrase::kSaidPer,
            {{"unit", spokenUnit(book, unit.substr(0, per))}, {"one", sayPlain(book, one->said)}});
    }
    const auto* found = std::find_if(kUnits.begin(), kUnits.end(),
                                     [&](const Sign& each) { return each.sign == unit; });
    return found == kUnits.end() ? spokenWord(book, unit) : sayPlain(book, found->said);
}

std::string spokenLine(const PhraseBook& book, const RichLine& line) {
    std::string text;
    for (const Run& run : line) {
        text += (run.style == RunStyle::Subscript ? " " : "") + run.text;
    }
    return spokenFunctions(book, spokenUnits(book, spokenSigns(book, spokenName(book, text))));
}

std::string spokenCaption(const PhraseBook& book, std::string caption) {
    std::replace(caption.begin(), caption.end(), '_', ' '); // of a symbol: F_AB
    return spokenLine(book, {Run{std::move(caption)}});
}

std::string spokenArrow(const PhraseBook& book, const std::string& text) {
    const auto* found = std::find_if(kArrows.begin(), kArrows.end(), [&](const Sign& arrow) {
        return text.starts_with(arrow.sign);
    });
    if (found == kArrows.end()) {
        return text;
    }
    const std::string_view space = kThinSpace;
    std::string_view rest = std::string_view(text).substr(found->sign.size());
    rest.remove_prefix(rest.starts_with(space) ? space.size() : 0);
    const std::string way = sayPlain(book, found->said);
    return rest.empty() ? way : sayPlain(book, phrase::kSaidWay, {{"way", way}, {"value", rest}});
}

std::string spokenFormula(const PhraseBook& book, const Formula& formula) {
    std::string text;
    for (std::size_t i = 0; i < formula.size(); ++i) {
        const Token& token = formula[i];
        if (isNumberInBrackets(formula, i)) {
            addWord(text, saidInBrackets(book, formula, i));
            i += 2;
        } else if (pauses(token)) {
            text += token.text;
        } else if (token.text == kSum && i + 1 < formula.size()) {
            addWord(text,
                    sayPlain(book, phrase::kSaidSum, {{"what", spokenToken(book, formula[++i])}}));
        } else if (!isTurn(token)) {
            if (multipliesAt(formula, i)) {
                addWord(text, sayPlain(book, phrase::kSaidTimes));
            }
            addWord(text, spokenToken(book, token));
        }
    }
    return text;
}

std::string withCapital(std::string text) {
    if (!text.empty()) {
        text.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(text.front())));
    }
    return text;
}

// A name keeps its letters; a word begins the sentence.
std::string spokenSentence(const PhraseBook& book, const Formula& formula) {
    std::string text = spokenFormula(book, formula);
    const bool isName = !formula.empty() && formula.front().kind == TokenKind::Variable &&
                        formula.front().text.find(kSum) == std::string::npos;
    return isName ? text : withCapital(std::move(text));
}

void endSaid(std::string& text) {
    const bool ends =
        text.empty() || std::string_view(".:;,?!").find(text.back()) != std::string_view::npos;
    text += ends ? "" : ".";
}

void addSaid(std::string& text, const std::string& more) {
    if (!text.empty() && !more.empty()) {
        endSaid(text);
        text += " ";
    }
    text += more;
}

std::string spokenPassage(const PhraseBook& book, const Passage& passage) {
    std::string text = spokenLine(book, passage.title);
    for (const auto& part : passage.parts) {
        addSaid(text, std::visit(SpokenPart{book}, part));
    }
    return text;
}

} // namespace gusset
