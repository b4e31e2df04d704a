// JSON by nlohmann's event parser, which allocates nothing itself: the events build the value,
// count what they build and keep track of where they are in the structure.

#include "exchange/json/json_value.hpp"

#include "core/utf8.hpp"
#include "exchange/json/parser_words.hpp"
#include "model/validate/characters.hpp"
#include "phrases/faults/faults.hpp"
#include "phrases/faults/reading.hpp"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace gusset {

namespace {

using Json = nlohmann::json;

Statement placeInText(std::string_view text, std::size_t position) {
    const std::string_view before = text.substr(0, std::min(position, text.size()));
    const auto lines = std::count(before.begin(), before.end(), '\n');
    const std::size_t start = before.rfind('\n') + 1; // npos + 1 is 0
    return statement(phrase::kPlaceInText,
                     {{"line", lines + 1}, {"column", before.size() - start}});
}

class Builder {
public:
    Builder(std::string_view text, const JsonBounds& bounds) : text_(text), bounds_(bounds) {}

    Outcome<JsonValue> take() {
        if (issue_) {
            return std::move(*issue_);
        }
        return std::move(root_);
    }

    // The events, with the names that the parser requires. Returning false stops the parser.
    bool null() { return add({}) != nullptr; }
    bool boolean(bool value) {
        return add({.kind = JsonValue::Kind::Boolean, .boolean = value}) != nullptr;
    }
    bool number_integer(Json::number_integer_t value) {
        return addNumber(static_cast<double>(value), std::to_string(value));
    }
    bool number_unsigned(Json::number_unsigned_t value) {
        return addNumber(static_cast<double>(value), std::to_string(value));
    }
    bool number_float(Json::number_float_t value, const std::string& digits) {
        return addNumber(value, digits);
    }
    bool string(std::string& value) {
        return add({.kind = JsonValue::Kind::Text, .text = std::move(value)}) != nullptr;
    }
    bool binary(Json::binary_t&) { return false; } // not in JSON text

    bool start_object(std::size_t) { return open(JsonValue::Kind::Object); }
    bool start_array(std::size_t) { return open(JsonValue::Kind::Array); }
    bool end_array() {
        open_.pop_back();
        return true;
    }
    bool key(std::string& name) {
        key_ = std::move(name);
        keyIsOpen_ = true;
        return true;
    }
    bool end_object() {
        std::vector<std::string_view> keys;
        for (const auto& [name, value] : open_.back()->members) {
            keys.push_back(name);
        }
        std::sort(keys.begin(), keys.end());
        const auto twice = std::adjacent_find(keys.begin(), keys.end());
        if (twice != keys.end()) {
            key_ = *twice;
            keyIsOpen_ = true;
            return fail(IssueCode::Duplicate, phrase::kDuplicateKey);
        }
        open_.pop_back();
        return true;
    }

    bool parse_error(std::size_t position, const std::string&, const Json::exception& error) {
        constexpr int kNumberOverflow = 406;
        if (error.id == kNumberOverflow) {
            return fail(IssueCode::NotFinite, phrase::kNumberTooLarge);
        }
        const std::string_view rest = wordAround(position);
        for (const std::string_view word : {"NaN", "nan", "Infinity", "Inf", "inf"}) {
            if (rest.starts_with(word)) {
                return fail(IssueCode::NotFinite, statement(phrase::kNotANumber, {{"word", word}}));
            }
        }
        // "[json.exception…] parse error at line 1, column 2: syntax error … - what is wrong"
        std::string_view what = error.what();
        if (const std::size_t dash = what.find(" - "); dash != std::string_view::npos) {
            what.remove_prefix(dash + 3);
        }
        const std::string where = place();
        issue_ =
            Issue{IssueCode::Syntax, placeInText(text_, position),
                  spelledOut(where.empty()
                                 ? statement(phrase::kNotJson, {{"what", saidByParser(what)}})
                                 : statement(phrase::kNotJsonAt,
                                             {{"place", where}, {"what", saidByParser(what)}}))};
        return false;
    }

private:
    bool fail(IssueCode code, Statement says) {
        const std::string where = place();
        issue_ = Issue{code, where.empty() ? Statement(phrase::kPlaceText) : spelled(where),
                       std::move(says)};
        return false;
    }

    // The text from the start of the word at which the parser stopped.
    [[nodiscard]] std::string_view wordAround(std::size_t position) const {
        std::size_t start = std::min(position, text_.size());
        const auto isLetter = [](char c) { return (c | 0x20) >= 'a' && (c | 0x20) <= 'z'; };
        while (start > 0 && isLetter(text_[start - 1])) {
            --start;
        }
        return text_.substr(start);
    }

    // The place of the value being read: "members[3].b".
    [[nodiscard]] std::string place() const {
        std::string path;
        for (std::size_t i = 0; i < open_.size(); ++i) {
            const JsonValue& it = *open_[i];
            const bool isInnermost = i + 1 == open_.size();
            if (it.kind == JsonValue::Kind::Array) {
                path += "[" + std::to_string(it.items.size() - (isInnermost ? 0 : 1)) + "]";
            } else if (isInnermost ? keyIsOpen_ : !it.members.empty()) {
                path += (path.empty() ? "" : ".") + (isInnermost ? key_ : it.members.back().first);
            }
        }
        return path;
    }

    bool addNumber(double value, std::string digits) {
        return add({.kind = JsonValue::Kind::Number, .number = value, .text = std::move(digits)}) !=
               nullptr;
    }

    bool open(JsonValue::Kind kind) {
        if (static_cast<int>(open_.size()) >= bounds_.depth) {
            return fail(IssueCode::TooLarge,
                        statement(phrase::kNestedTooDeep, {{"n", bounds_.depth}}));
        }
        JsonValue* added = add({.kind = kind});
        if (added) {
            open_.push_back(added); // stays valid: only the innermost grows
        }
        return added != nullptr;
    }

    JsonValue* add(JsonValue value) {
        if (++count_ > bounds_.values) {
            fail(IssueCode::TooLarge, statement(phrase::kTooManyValues, {{"n", bounds_.values}}));
            return nullptr;
        }
        if (open_.empty()) {
            root_ = std::move(value);
            return &root_;
        }
        JsonValue& parent = *open_.back();
        if (parent.kind == JsonValue::Kind::Array) {
            return &parent.items.emplace_back(std::move(value));
        }
        keyIsOpen_ = false;
        return &parent.members.emplace_back(std::move(key_), std::move(value)).second;
    }

    std::string_view text_;
    JsonBounds bounds_;
    JsonValue root_;
    std::vector<JsonValue*> open_;
    std::string key_;
    bool keyIsOpen_ = false;
    std::size_t count_ = 0;
    std::optional<Issue> issue_;
};

} // namespace

namespace {

// What is wrong with the bytes, before any parsing.
std::optional<Issue> faultOfEncoding(std::string_view text) {
    const auto begins = [&](std::string_view mark) { return text.starts_with(mark); };
    if (begins("\xFF\xFE") || begins("\xFE\xFF")) {
        return Issue{IssueCode::Syntax, phrase::kPlaceText, phrase::kIsUtf16};
    }
    if (const std::optional<std::size_t> fault = faultOfUtf8(text)) {
        return Issue{IssueCode::Syntax, placeInText(text, *fault + 1), phrase::kNotUtf8};
    }
    if (const std::size_t zero = text.find('\0'); zero != text.npos) {
        return Issue{IssueCode::Syntax, placeInText(text, zero + 1), phrase::kHoldsZero};
    }
    if (text.find_first_not_of(" \t\r\n") == text.npos) {
        return Issue{
            IssueCode::Syntax, phrase::kPlaceText,
            statement(text.empty() ? phrase::kTextEmpty : phrase::kTextBlank, {{"brace", "{"}})};
    }
    return std::nullopt;
}

} // namespace

Outcome<JsonValue> parseJson(std::string_view text, const JsonBounds& bounds) {
    if (std::optional<Issue> fault = faultOfEncoding(text)) {
        return std::move(*fault);
    }
    Builder builder(text, bounds);
    (void)Json::sax_parse(text.begin(), text.end(), &builder); // the builder holds the outcome
    return builder.take();
}

} // namespace gusset
