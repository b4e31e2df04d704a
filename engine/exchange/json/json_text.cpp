#include "exchange/json/json_text.hpp"

#include "core/number.hpp"
#include "core/utf8.hpp"

#include <cassert>
#include <cmath>
#include <utility>

namespace gusset {

bool JsonText::isOnLines() const {
    return layout_ == Layout::Indented &&
           (open_.size() == 1 || (open_.size() == 2 && open_.back().isArray));
}

// What goes before a value or a key: nothing after its own key, otherwise a comma, a new line, an
// indent.
void JsonText::separate() {
    if (afterKey_) {
        afterKey_ = false;
        return;
    }
    if (open_.empty()) {
        return;
    }
    const bool isFirst = std::exchange(open_.back().isEmpty, false);
    if (!isFirst) {
        out_ += ',';
    }
    if (isOnLines()) {
        out_ += '\n';
        out_.append(2 * open_.size(), ' ');
    } else if (layout_ == Layout::Indented && (!isFirst || !open_.back().isArray)) {
        out_ += ' ';
    }
}

void JsonText::begin(char bracket) {
    separate();
    out_ += bracket;
    open_.push_back({bracket == '[', true});
}

void JsonText::end(char bracket) {
    assert(!open_.empty() && open_.back().isArray == (bracket == ']'));
    if (!open_.back().isEmpty) {
        if (isOnLines()) {
            out_ += '\n';
            out_.append(2 * (open_.size() - 1), ' ');
        } else if (layout_ == Layout::Indented && bracket == '}') {
            out_ += ' ';
        }
    }
    open_.pop_back();
    out_ += bracket;
}

void JsonText::text(std::string_view name, std::string_view value) {
    key(name);
    text(value);
}

void JsonText::whole(std::string_view name, long value) {
    key(name);
    whole(value);
}

void JsonText::number(std::string_view name, double value) {
    key(name);
    number(value);
}

void JsonText::result(double value) {
    digits(value == 0             ? "0"
           : std::isfinite(value) ? significantNumber(value, kResultDigits)
                                  : "null"); // JSON has no infinities or NaN
}

void JsonText::result(std::string_view name, double value) {
    key(name);
    result(value);
}

void JsonText::result(std::string_view name, double value, int lastPlace) {
    result(name, roundedTo(value, {.form = NumberForm::Significant,
                                   .digits = kResultDigits,
                                   .lastPlace = lastPlace}));
}

void JsonText::key(std::string_view name) {
    separate();
    quote(name);
    out_ += layout_ == Layout::Indented ? ": " : ":";
    afterKey_ = true;
}

void JsonText::text(std::string_view value) {
    separate();
    quote(value);
}

void JsonText::number(double value) {
    assert(std::isfinite(value));
    digits(value == 0 ? "0" : shortestNumber(value)); // never -0
}

void JsonText::digits(std::string_view number) {
    separate();
    out_ += number;
}

void JsonText::boolean(bool value) { digits(value ? "true" : "false"); }
void JsonText::null() { digits("null"); }
void JsonText::whole(long value) { digits(std::to_string(value)); }
void JsonText::json(std::string_view value) { digits(value); }

void JsonText::texts(std::string_view name, const std::vector<std::string>& texts) {
    if (!texts.empty()) {
        allTexts(name, texts);
    }
}

void JsonText::allTexts(std::string_view name, const std::vector<std::string>& texts) {
    key(name);
    beginArray();
    for (const std::string& each : texts) {
        text(each);
    }
    endArray();
}

void JsonText::issues(std::string_view name, const Issues& issues, const PhraseBook& book) {
    if (!issues.empty()) {
        objects(name, issues, [&](const Issue& issue) {
            text("at", said(book, issue.at));
            text("says", said(book, issue.says));
        });
    }
}

void JsonText::members(std::string_view objectText) {
    if (objectText.size() > 2) {
        separate();
        out_ += objectText.substr(1, objectText.size() - 2);
    }
}

void JsonText::quote(std::string_view value) {
    constexpr const char* kHex = "0123456789abcdef";
    if (faultOfUtf8(value)) { // an argument or file name may not be UTF-8; JSON must be
        return quote(soundUtf8(value));
    }
    out_ += '"';
    for (const char c : value) {
        const auto code = static_cast<unsigned char>(c);
        if (c == '"' || c == '\\') {
            out_ += '\\';
            out_ += c;
        } else if (code < 0x20) {
            out_ += "\\u00";
            out_ += kHex[code >> 4];
            out_ += kHex[code & 0xF];
        } else {
            out_ += c;
        }
    }
    out_ += '"';
}

std::string JsonText::take() {
    assert(open_.empty());
    return std::move(out_);
}

} // namespace gusset
