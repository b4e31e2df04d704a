#include "fuzz/soundness.hpp"

#include <cctype>
#include <vector>

namespace gusset::support {

namespace {

std::string at(std::size_t place, const std::string& what) {
    return what + " at byte " + std::to_string(place);
}

bool isDigit(char c) { return c >= '0' && c <= '9'; }
bool isHex(char c) { return std::isxdigit(static_cast<unsigned char>(c)) != 0; }

// A UTF-8 character: its length in bytes and its code point; length 0 if there is none.
struct Character {
    std::size_t length = 0;
    char32_t number = 0;
};

Character characterAt(std::string_view text, std::size_t i) {
    const auto byte = [&](std::size_t k) { return static_cast<unsigned char>(text[k]); };
    const unsigned lead = byte(i);
    const std::size_t length = lead < 0x80   ? 1
                               : lead < 0xC2 ? 0
                               : lead < 0xE0 ? 2
                               : lead < 0xF0 ? 3
                               : lead < 0xF5 ? 4
                                             : 0;
    if (length == 0 || i + length > text.size()) {
        return {};
    }
    char32_t number = length == 1 ? lead : lead & (0x7Fu >> length);
    for (std::size_t k = 1; k < length; ++k) {
        if ((byte(i + k) & 0xC0u) != 0x80u) {
            return {};
        }
        number = number << 6 | (byte(i + k) & 0x3Fu);
    }
    const bool overlong = (length == 3 && number < 0x800) || (length == 4 && number < 0x10000);
    const bool surrogate = number >= 0xD800 && number < 0xE000;
    return overlong || surrogate || number > 0x10FFFF ? Character{} : Character{length, number};
}

class JsonScanner {
public:
    explicit JsonScanner(std::string_view text) : text_(text) {}

    std::string scan() {
        skip();
        value(0);
        skip();
        if (fault_.empty() && i_ != text_.size()) {
            fail("more than one value");
        }
        return fault_;
    }

private:
    static constexpr int kDeepest = 200;

    void fail(const std::string& what) {
        if (fault_.empty()) {
            fault_ = at(i_, what);
        }
    }
    [[nodiscard]] char here() const { return i_ < text_.size() ? text_[i_] : '\0'; }
    void skip() {
        while (i_ < text_.size() &&
               std::string_view(" \t\r\n").find(text_[i_]) != std::string_view::npos) {
            ++i_;
        }
    }
    bool take(char c) {
        if (here() != c) {
            return false;
        }
        ++i_;
        return true;
    }

    void value(int depth) {
        if (depth > kDeepest) {
            return fail("nested too deep");
        }
        if (here() == '{' || here() == '[') {
            return list(depth, here() == '{');
        }
        if (here() == '"') {
            return string();
        }
        for (const std::string_view word : {"true", "false", "null"}) {
            if (text_.substr(i_, word.size()) == word) {
                i_ += word.size();
                return;
            }
        }
        number();
    }

    void list(int depth, bool object) {
        const char end = object ? '}' : ']';
        ++i_;
        skip();
        if (take(end)) {
            return;
        }
        do {
            skip();
            if (object) {
                string();
                skip();
                if (!take(':')) {
                    return fail("no colon");
                }
                skip();
            }
            value(depth + 1);
            skip();
        } while (fault_.empty() && take(','));
        if (!take(end)) {
            fail("a list that does not end");
        }
    }

    void string() {
        if (!take('"')) {
            return fail("no string");
        }
        while (i_ < text_.size() && text_[i_] != '"' && fault_.empty()) {
            if (static_cast<unsigned char>(text_[i_]) < 0x20) {
                return fail("a control character in a string");
            }
            text_[i_] == '\\' ? escape() : static_cast<void>(++i_);
        }
        if (!take('"')) {
            fail("a string that does not end");
        }
    }

    void escape() {
        ++i_;
        if (take('u')) {
            for (int k = 0; k < 4; ++k, ++i_) {
                if (!isHex(here())) {
                    return fail("a bad \\u");
                }
            }
        } else if (std::string_view("\"\\/bfnrt").find(here()) != std::string_view::npos &&
                   here() != '\0') {
            ++i_;
        } else {
            fail("a bad escape");
        }
    }

    void digits() {
        if (!isDigit(here())) {
            return fail("no number");
        }
        while (isDigit(here())) {
            ++i_;
        }
    }

    void number() {
        take('-');
        if (!take('0')) {
            digits();
        }
        if (take('.')) {
            digits();
        }
        if (take('e') || take('E')) {
            if (!take('+')) {
                take('-');
            }
            digits();
        }
    }

    std::string_view text_;
    std::size_t i_ = 0;
    std::string fault_;
};

class MarkupScanner {
public:
    explicit MarkupScanner(std::string_view text) : text_(text) {}

    std::string scan() {
        constexpr std::string_view kDocument = "<!doctype html>";
        i_ += text_.substr(0, kDocument.size()) == kDocument ? kDocument.size() : 0;
        while (i_ < text_.size() && fault_.empty()) {
            if (text_[i_] == '<') {
                tag();
            } else {
                character("<>");
            }
        }
        if (fault_.empty() && !open_.empty()) {
            fail("<" + open_.back() + "> is not closed");
        }
        return fault_;
    }

private:
    void fail(const std::string& what) {
        if (fault_.empty()) {
            fault_ = at(i_, what);
        }
    }

    // One character of content; XML 1.0, production 2.
    void character(std::string_view forbidden) {
        const Character c = characterAt(text_, i_);
        const bool allowed = c.number == 9 || c.number == 10 || c.number == 13 ||
                             (c.number >= 0x20 && c.number != 0xFFFE && c.number != 0xFFFF);
        if (c.length == 0 || !allowed ||
            (c.length == 1 && forbidden.find(text_[i_]) != std::string_view::npos)) {
            return fail("a character that may not stand here");
        }
        if (text_[i_] == '&') {
            return entity();
        }
        i_ += c.length;
    }

    void entity() {
        const std::size_t end = text_.find(';', i_);
        const std::string_view name =
            end == std::string_view::npos ? "" : text_.substr(i_ + 1, end - i_ - 1);
        for (const std::string_view known : {"amp", "lt", "gt", "quot", "apos", "#39"}) {
            if (name == known) {
                i_ = end + 1;
                return;
            }
        }
        fail("an entity that is none");
    }

    std::string_view name() {
        const std::size_t start = i_;
        while (i_ < text_.size() && (std::isalnum(static_cast<unsigned char>(text_[i_])) ||
                                     text_[i_] == '-' || text_[i_] == ':')) {
            ++i_;
        }
        if (i_ == start) {
            fail("a tag without a name");
        }
        return text_.substr(start, i_ - start);
    }

    void spaces() {
        while (i_ < text_.size() && (text_[i_] == ' ' || text_[i_] == '\n')) {
            ++i_;
        }
    }

    void attributes() {
        for (spaces(); i_ < text_.size() && text_[i_] != '>' && text_[i_] != '/' && fault_.empty();
             spaces()) {
            (void)name();
            if (text_.substr(i_, 2) != "=\"") {
                return fail("an attribute without a value");
            }
            i_ += 2;
            while (i_ < text_.size() && text_[i_] != '"' && fault_.empty()) {
                character("<");
            }
            ++i_;
        }
    }

    void tag() {
        ++i_;
        const bool closes = text_.substr(i_, 1) == "/";
        i_ += closes ? 1 : 0;
        const std::string element(name());
        if (closes) {
            if (open_.empty() || open_.back() != element) {
                return fail("</" + element + "> closes what is not open");
            }
            open_.pop_back();
        } else {
            attributes();
        }
        const bool single = !closes && text_.substr(i_, 2) == "/>";
        i_ += single ? 1 : 0;
        const bool empty = single || element == "meta"; // HTML has no end tag for it
        if (text_.substr(i_, 1) != ">") {
            return fail("a tag that does not end");
        }
        ++i_;
        if (!closes && !empty) {
            open_.push_back(element);
        }
    }

    std::string_view text_;
    std::size_t i_ = 0;
    std::vector<std::string> open_;
    std::string fault_;
};

} // namespace

std::string faultOfUtf8(std::string_view text) {
    for (std::size_t i = 0; i < text.size();) {
        const Character character = characterAt(text, i);
        if (character.length == 0) {
            return at(i, "not UTF-8");
        }
        i += character.length;
    }
    return {};
}

std::string faultOfJson(std::string_view text) {
    std::string fault = faultOfUtf8(text);
    return fault.empty() ? JsonScanner(text).scan() : fault;
}

std::string faultOfMarkup(std::string_view text) { return MarkupScanner(text).scan(); }

std::string faultOfCsv(std::string_view text) {
    std::size_t width = 0;
    std::size_t cells = 1;
    bool quoted = false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text[i] == '"') {
            quoted = !quoted; // a doubled quote closes and reopens
        } else if (!quoted && text[i] == ',') {
            ++cells;
        } else if (!quoted && text[i] == '\n') {
            if (width != 0 && cells != width) {
                return at(i, "a row of another width");
            }
            width = cells;
            cells = 1;
        }
    }
    return quoted ? "a quote that is not closed" : std::string();
}

std::string faultOfNumbers(std::string_view text) {
    const auto isLetter = [&](std::size_t i) {
        return i < text.size() && (std::isalnum(static_cast<unsigned char>(text[i])) != 0 ||
                                   static_cast<unsigned char>(text[i]) >= 0x80);
    };
    for (const std::string_view word : {"nan", "inf", "NaN", "Infinity"}) {
        for (std::size_t i = text.find(word); i != std::string_view::npos;
             i = text.find(word, i + 1)) {
            const bool alone =
                (i == 0 || !isLetter(i - 1) || text[i - 1] == '\x92') && !isLetter(i + word.size());
            if (alone) {
                return at(i, "no number");
            }
        }
    }
    return {};
}

} // namespace gusset::support
