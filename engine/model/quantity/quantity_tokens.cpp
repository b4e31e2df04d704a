#include "model/quantity/quantity_tokens.hpp"

#include "phrases/faults/quantities.hpp"

#include <array>
#include <cctype>
#include <cmath>
#include <cstdlib>
#include <optional>
#include <utility>

namespace gusset {

namespace {

using Kind = QuantityToken::Kind;

constexpr std::array<std::pair<std::string_view, std::string_view>, 17> kPlainSigns{{
    {"\u2212", "-"},
    {"\u2013", "-"},
    {"\u00D7", "*"},
    {"\u00B7", "*"},
    {"\u22C5", "*"},
    {"\u00F7", "/"},
    {"\u2044", "/"},
    {"\u2032", "'"},
    {"\u2019", "'"},
    {"\u2033", "\""},
    {"\u201D", "\""},
    {"\u00A0", " "},
    {"\u2009", " "},
    {"\u202F", " "},
    {"\u221A", "sqrt"},
    {"\u2220", "@"},
    {"\u00B0", " deg "},
}};

bool isDigit(char c) { return c >= '0' && c <= '9'; }
// Letters of any alphabet: bytes beyond ASCII are parts of words.
bool isWordByte(char c) {
    return std::isalpha(static_cast<unsigned char>(c)) != 0 || static_cast<unsigned char>(c) > 127;
}

class Cutter {
public:
    explicit Cutter(std::string_view text) : text_(withPlainSigns(text)) {}

    Outcome<std::vector<QuantityToken>> cut() {
        while (at_ < text_.size() && !issue_) {
            const char c = text_[at_];
            if (std::isspace(static_cast<unsigned char>(c)) != 0) {
                ++at_;
            } else if (isDigit(c) || (c == '.' && isDigit(next(1)))) {
                cutNumber();
            } else if (isWordByte(c)) {
                cutWord();
            } else if (c == '\'' || c == '"') {
                add(Kind::Word, 1);
            } else if (std::string_view("+-*/(),;@").find(c) != std::string_view::npos) {
                add(Kind::Sign, 1);
            } else {
                fail(statement(phrase::kCantReadSign, {{"sign", std::string(1, c)}}));
            }
        }
        if (issue_) {
            return std::move(*issue_);
        }
        tokens_.push_back({});
        return std::move(tokens_);
    }

private:
    [[nodiscard]] char next(std::size_t ahead) const {
        return at_ + ahead < text_.size() ? text_[at_ + ahead] : '\0';
    }
    void fail(Statement says) { issue_ = Issue{IssueCode::Syntax, "input", std::move(says)}; }

    void add(Kind kind, std::size_t length) {
        QuantityToken token;
        token.kind = kind;
        token.text = text_.substr(at_, length);
        tokens_.push_back(std::move(token));
        at_ += length;
    }

    void cutWord() {
        std::size_t length = 0;
        while (isWordByte(next(length))) {
            ++length;
        }
        add(Kind::Word, length);
    }

    std::size_t digitsFrom(std::size_t ahead) const {
        std::size_t count = 0;
        while (isDigit(next(ahead + count))) {
            ++count;
        }
        return count;
    }

    void cutNumber() {
        std::size_t length = digitsFrom(0);
        const bool isComma = next(length) == ',' && isDigit(next(length + 1));
        const bool hasFraction = isComma || (next(length) == '.' && next(length + 1) != '.');
        const std::size_t whole = length;
        const std::size_t decimals = hasFraction ? digitsFrom(length + 1) : 0;
        length += hasFraction ? 1 + decimals : 0;
        if (isComma && (next(length) == ',' || next(length) == '.') && isDigit(next(length + 1))) {
            return fail(
                statement(phrase::kThousandsCommas, {{"number", text_.substr(at_, length + 2)}}));
        }
        if (isComma && decimals == 3 && whole <= 3 && next(0) != '0') {
            const std::string digits = text_.substr(at_, length);
            const std::string before = digits.substr(0, whole);
            const std::string behind = digits.substr(whole + 1);
            return fail(statement(phrase::kReadTwoWays, {{"number", digits},
                                                         {"decimal", before + "." + behind},
                                                         {"whole", before + behind}}));
        }
        length += exponentLength(length);
        addNumber(length, hasFraction);
    }

    std::size_t exponentLength(std::size_t ahead) const {
        if (next(ahead) != 'e' && next(ahead) != 'E') {
            return 0;
        }
        const bool isSigned = next(ahead + 1) == '-' || next(ahead + 1) == '+';
        const std::size_t digits = digitsFrom(ahead + (isSigned ? 2 : 1));
        return digits == 0 ? 0 : digits + (isSigned ? 2 : 1);
    }

    void addNumber(std::size_t length, bool hasFraction) {
        std::string digits = text_.substr(at_, length);
        for (char& c : digits) {
            c = c == ',' ? '.' : c;
        }
        const bool isWhole = !hasFraction && digits.find_first_of("eE") == std::string::npos;
        add(Kind::Number, length);
        tokens_.back().value = std::strtod(digits.c_str(), nullptr);
        tokens_.back().isWhole = isWhole;
        if (!std::isfinite(tokens_.back().value)) {
            issue_ = Issue{IssueCode::NotFinite, "input",
                           statement(phrase::kTypedTooLarge, {{"number", digits}})};
        }
    }

    std::string text_;
    std::size_t at_ = 0;
    std::vector<QuantityToken> tokens_;
    std::optional<Issue> issue_;
};

} // namespace

std::string withPlainSigns(std::string_view text) {
    std::string out;
    for (std::size_t i = 0; i < text.size();) {
        std::size_t taken = 0;
        for (const auto& [sign, plain] : kPlainSigns) {
            if (taken == 0 && text.substr(i).starts_with(sign)) {
                out += plain;
                taken = sign.size();
            }
        }
        if (taken == 0) {
            out += text[i];
            taken = 1;
        }
        i += taken;
    }
    return out;
}

Outcome<std::vector<QuantityToken>> quantityTokens(std::string_view text) {
    if (text.size() > kLongestInput) {
        return Issue{IssueCode::TooLarge, "input", phrase::kTooLongToRead};
    }
    return Cutter(text).cut();
}

} // namespace gusset
