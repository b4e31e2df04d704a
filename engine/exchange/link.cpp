#include "exchange/link.hpp"

#include "exchange/compact_model.hpp"
#include "exchange/deflated.hpp"
#include "exchange/link_text.hpp"
#include "exchange/model_reader.hpp"

#include <algorithm>
#include <iterator>

namespace gusset {

namespace {

// Also what a wrapping mail program left between the characters goes.
std::string withoutSpaces(std::string_view text) {
    std::string out;
    std::copy_if(text.begin(), text.end(), std::back_inserter(out),
                 [](char c) { return static_cast<unsigned char>(c) > ' '; });
    return out;
}

int hexDigit(char c) {
    if (c >= '0' && c <= '9') {
        return c - '0';
    }
    const char lower = static_cast<char>(c | 0x20);
    return lower >= 'a' && lower <= 'f' ? lower - 'a' + 10 : -1;
}

std::string percentDecoded(std::string_view text) {
    std::string out;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const int high = text[i] == '%' && i + 2 < text.size() ? hexDigit(text[i + 1]) : -1;
        const int low = high >= 0 ? hexDigit(text[i + 2]) : -1;
        if (low >= 0) {
            out += static_cast<char>(16 * high + low);
            i += 2;
        } else {
            out += text[i];
        }
    }
    return out;
}

void stripTrailing(std::string& text, std::string_view signs) {
    text.erase(text.find_last_not_of(signs) + 1);
}

// From "m=" or "j=" on; empty when there is neither.
std::string_view fragmentOf(std::string_view text) {
    for (const std::string_view mark : {"#m=", "#j=", "%23m=", "%23j="}) {
        if (const std::size_t found = text.find(mark); found != std::string_view::npos) {
            return text.substr(found + mark.size() - 2);
        }
    }
    const std::size_t start = text.find_first_not_of(" \t\r\n#<\"'(");
    text.remove_prefix(std::min(start, text.size()));
    const std::string_view first = text.substr(0, 2);
    return first == "m=" || first == "j=" ? text : std::string_view{};
}

Outcome<Reading> readContent(const Bytes& bytes) {
    const Inflated content = inflated(bytes, kLargestInflated);
    if (content.fault == InflateFault::TooLarge) {
        return Issue{IssueCode::TooLarge, "the link",
                     "unpacks to more than " + std::to_string(kLargestInflated >> 20) +
                         " MB, more than is read from a link: ask for the model as a file"};
    }
    if (content.fault) {
        return Issue{IssueCode::Damaged, "the link", "does not unpack: copy the whole link again"};
    }
    const Outcome<JsonValue> compact = parseJson(content.text);
    if (!compact) {
        const Issue& fault = compact.issues().front();
        return Issue{fault.code, "the link",
                     "opens, and was not written by Gusset: " + fault.at + " " + fault.says};
    }
    const Outcome<JsonValue> model = expandModel(compact.value());
    if (!model) {
        return model.issues();
    }
    return readModelValue(model.value());
}

} // namespace

std::string writeLink(const Truss& truss) { return sealedLink(deflated(compactModel(truss))); }

bool looksLikeLink(std::string_view text) { return !fragmentOf(text).empty(); }

Outcome<Reading> readLink(std::string_view text) {
    if (text.size() > kLargestLink) {
        return Issue{IssueCode::TooLarge, "the link",
                     "has " + std::to_string(text.size()) + " characters, and links have at most " +
                         std::to_string(kLargestLink) + ": ask for the model as a file"};
    }
    const std::string_view fragment = fragmentOf(text);
    if (fragment.empty()) {
        return Issue{IssueCode::Syntax, "the link",
                     "holds no model: a link of Gusset has #m= or #j= in it"};
    }
    std::string plain = percentDecoded(fragment);
    if (plain.starts_with("j=")) {
        plain.erase(plain.find_last_of('}') + 1); // what programs put behind it
        if (plain.empty()) {
            return Issue{IssueCode::Damaged, "the link",
                         "is incomplete: no } ends its model: copy the whole link again"};
        }
        return readModel(std::string_view(plain).substr(std::min<std::size_t>(2, plain.size())));
    }
    plain = withoutSpaces(plain);
    stripTrailing(plain, ").,>\"'*;:!?]}");
    const Outcome<Bytes> bytes = unsealedLink(plain);
    if (!bytes) {
        return bytes.issues();
    }
    return readContent(bytes.value());
}

} // namespace gusset
