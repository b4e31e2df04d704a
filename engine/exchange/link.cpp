#include "exchange/link.hpp"

#include "exchange/compact_model.hpp"
#include "exchange/deflated.hpp"
#include "exchange/model_reader.hpp"

#include <zlib.h>

#include <algorithm>
#include <array>
#include <cstdlib>

namespace gusset {

namespace {

constexpr std::string_view kForm = "1";
constexpr std::size_t kCheckLength = 5;

Issue damage(std::string says) {
    return {IssueCode::Damaged, "the link", std::move(says) + ": copy the whole link again"};
}

// CRC-32 in five digits of base 36: letters and digits, so that no program takes the end for a full
// stop.
std::string checkOf(std::string_view base64) {
    constexpr std::string_view kDigits = "0123456789abcdefghijklmnopqrstuvwxyz";
    auto rest =
        crc32(0, reinterpret_cast<const Bytef*>(base64.data()), static_cast<uInt>(base64.size()));
    std::string check(kCheckLength, '0');
    for (char& digit : check) {
        digit = kDigits[rest % kDigits.size()];
        rest /= kDigits.size();
    }
    return check;
}

// Seven bits a byte, the least first, the eighth says that more follow.
void prependSize(Bytes& bytes) {
    Bytes size;
    std::size_t rest = bytes.size();
    while (rest >= 128) {
        size.push_back(static_cast<std::uint8_t>(128 | (rest & 127)));
        rest >>= 7;
    }
    size.push_back(static_cast<std::uint8_t>(rest));
    bytes.insert(bytes.begin(), size.begin(), size.end());
}

struct SizeMark {
    std::size_t bytesBehind = 0;
    std::size_t length = 0; // of the mark; 0: there is none
};

SizeMark readSize(const Bytes& bytes) {
    constexpr std::size_t kLongest = 3;
    SizeMark mark;
    for (std::size_t i = 0; i < std::min(bytes.size(), kLongest); ++i) {
        mark.bytesBehind |= static_cast<std::size_t>(bytes[i] & 127) << (7 * i);
        if (bytes[i] < 128) {
            mark.length = i + 1;
            return mark;
        }
    }
    return {};
}

// The characters of the base64url text that begins like this, told from its first ones.
std::size_t announcedLength(std::string_view base64) {
    const std::string_view whole = base64.substr(0, base64.size() / 4 * 4);
    const SizeMark mark = readSize(fromBase64Url(whole.substr(0, 4)).value_or(Bytes{}));
    return mark.length == 0 ? 0 : base64UrlLength(mark.length + mark.bytesBehind);
}

struct LinkParts {
    std::string base64;
    std::string length;
    std::string check;
};

LinkParts partsOf(std::string_view text) {
    LinkParts parts;
    std::array<std::string*, 3> into{&parts.base64, &parts.length, &parts.check};
    for (std::string* part : into) {
        const std::size_t dot = text.find('.');
        *part = text.substr(0, dot);
        if (dot == std::string_view::npos) {
            break;
        }
        text.remove_prefix(dot + 1);
    }
    return parts;
}

// "m=1." + the text + "." + its length + "." + the check.
std::size_t lengthOfLink(std::size_t base64) {
    return 4 + base64 + 1 + std::to_string(base64).size() + 1 + kCheckLength;
}

Issue incomplete(std::size_t arrived, std::size_t base64) {
    if (base64 == 0 || arrived >= lengthOfLink(base64)) {
        return damage("is incomplete: it ends after " + std::to_string(arrived) + " characters");
    }
    return damage("is incomplete: " + std::to_string(arrived) + " of " +
                  std::to_string(lengthOfLink(base64)) + " characters arrived");
}

// What is wrong with the link as a string of characters; nothing when every one of them arrived.
std::optional<Issue> faultOf(const LinkParts& parts, std::size_t arrived) {
    const auto foreign = std::find_if_not(parts.base64.begin(), parts.base64.end(), isBase64Url);
    if (foreign != parts.base64.end()) {
        return damage("was altered: it has a character that no link has after " +
                      std::to_string(foreign - parts.base64.begin()) + " of its own");
    }
    const std::size_t announced = announcedLength(parts.base64);
    if (parts.check.size() < kCheckLength) {
        return incomplete(arrived, announced);
    }
    if (parts.length != std::to_string(parts.base64.size())) {
        return damage("was altered on its way: " + std::to_string(parts.base64.size()) + " of " +
                      parts.length.substr(0, 8) + " characters arrived in its middle part");
    }
    if (parts.check.substr(0, kCheckLength) != checkOf(parts.base64)) {
        return damage("was altered on its way: its checksum does not fit");
    }
    return std::nullopt;
}

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

Outcome<Reading> readPayload(const Bytes& bytes) {
    const SizeMark mark = readSize(bytes);
    if (mark.length == 0 || mark.length + mark.bytesBehind != bytes.size()) {
        return damage("was altered on its way: its size does not fit");
    }
    const auto begin = bytes.begin() + static_cast<std::ptrdiff_t>(mark.length);
    const Inflated content = inflated(Bytes(begin, bytes.end()), kLargestInflated);
    if (content.fault == InflateFault::TooLarge) {
        return Issue{IssueCode::TooLarge, "the link",
                     "unpacks to more than " + std::to_string(kLargestInflated >> 20) +
                         " MB, more than is read from a link: ask for the model as a file"};
    }
    if (content.fault) {
        return damage("does not unpack");
    }
    const Outcome<JsonValue> compact = parseJson(content.text);
    if (!compact) {
        return compact.issues();
    }
    const Outcome<JsonValue> model = expandModel(compact.value());
    if (!model) {
        return model.issues();
    }
    return readModelValue(model.value());
}

Outcome<Reading> readPacked(std::string fragment) {
    const std::size_t dot = fragment.find('.');
    const std::string version = fragment.substr(2, dot == std::string::npos ? dot : dot - 2);
    if (dot == std::string::npos || version != kForm) {
        const bool isNumber = !version.empty() && version.size() < 6 &&
                              version.find_first_not_of("0123456789") == std::string::npos;
        if (isNumber && std::atoi(version.c_str()) > std::atoi(kForm.data())) {
            return Issue{IssueCode::NewerVersion, "the link",
                         "was written by a later version of Gusset (form " + version +
                             ", and this one reads form 1): open it with that version"};
        }
        if (dot == std::string::npos) {
            return incomplete(fragment.size(), 0);
        }
        return damage("was altered: it begins with m=" + version.substr(0, 8) + " and not m=1");
    }
    const LinkParts parts = partsOf(std::string_view(fragment).substr(dot + 1));
    if (const std::optional<Issue> fault = faultOf(parts, fragment.size())) {
        return *fault;
    }
    const std::optional<Bytes> bytes = fromBase64Url(parts.base64);
    if (!bytes) {
        return damage("was altered on its way: it is cut within a byte");
    }
    return readPayload(*bytes);
}

} // namespace

std::string writeLink(const Truss& truss) {
    Bytes bytes = deflated(compactModel(truss));
    prependSize(bytes);
    const std::string base64 = toBase64Url(bytes);
    return "m=" + std::string(kForm) + "." + base64 + "." + std::to_string(base64.size()) + "." +
           checkOf(base64);
}

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
        return readModel(std::string_view(plain).substr(std::min<std::size_t>(2, plain.size())));
    }
    plain = withoutSpaces(plain);
    stripTrailing(plain, ").,>\"'*;:!?]}");
    return readPacked(std::move(plain));
}

} // namespace gusset
