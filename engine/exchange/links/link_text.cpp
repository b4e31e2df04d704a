#include "exchange/links/link_text.hpp"

#include "model/validate/characters.hpp"
#include "phrases/faults/links.hpp"

#include <zlib.h>

#include <algorithm>
#include <array>
#include <cstdlib>
#include <optional>
#include <utility>

namespace gusset {

namespace {

constexpr std::string_view kForm = "1";
constexpr std::size_t kCheckLength = 5;

Issue damage(Statement says) {
    return {IssueCode::Damaged, phrase::kPlaceLink, spelledOut(std::move(says))};
}

// CRC-32 in five digits of base 36: letters and digits, so that no program mistakes the end for
// punctuation.
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

// Seven bits per byte, least significant first; the eighth bit says that more follow.
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
    std::size_t length = 0; // of the mark; 0 if there is none
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

// The length of the base64url text, as told by its first characters.
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
        return damage(statement(phrase::kLinkEndsAfter, {{"n", arrived}}));
    }
    return damage(
        statement(phrase::kLinkIncomplete, {{"n", arrived}, {"all", lengthOfLink(base64)}}));
}

// What is wrong with the link as a string of characters; nothing if all of them arrived.
std::optional<Issue> faultOf(const LinkParts& parts, std::size_t arrived) {
    const auto foreign = std::find_if_not(parts.base64.begin(), parts.base64.end(), isBase64Url);
    if (foreign != parts.base64.end()) {
        return damage(statement(phrase::kLinkForeignSign, {{"n", foreign - parts.base64.begin()}}));
    }
    const std::size_t announced = announcedLength(parts.base64);
    if (parts.check.size() < kCheckLength) {
        return incomplete(arrived, announced);
    }
    if (parts.length != std::to_string(parts.base64.size())) {
        return damage(statement(phrase::kLinkMiddleIncomplete,
                                {{"n", parts.base64.size()}, {"all", parts.length.substr(0, 8)}}));
    }
    if (parts.check.substr(0, kCheckLength) != checkOf(parts.base64)) {
        return damage(phrase::kLinkChecksum);
    }
    return std::nullopt;
}

// What is wrong if the link does not begin with "m=1."; nothing if it does.
std::optional<Issue> faultOfForm(std::string_view fragment) {
    const std::size_t dot = fragment.find('.');
    const std::string version(fragment.substr(2, dot - 2));
    if (dot == std::string_view::npos || version != kForm) {
        const bool isNumber = !version.empty() && version.size() < 6 &&
                              version.find_first_not_of("0123456789") == std::string_view::npos;
        if (isNumber && std::atoi(version.c_str()) > std::atoi(kForm.data())) {
            return Issue{IssueCode::NewerVersion, phrase::kPlaceLink,
                         statement(phrase::kLinkLater, {{"form", version}})};
        }
        if (dot == std::string_view::npos) {
            return incomplete(fragment.size(), 0);
        }
        return damage(statement(phrase::kLinkForeignStart, {{"start", version.substr(0, 8)}}));
    }
    return std::nullopt;
}

} // namespace

std::string sealedLink(Bytes deflated) {
    prependSize(deflated);
    const std::string base64 = toBase64Url(deflated);
    return "m=" + std::string(kForm) + "." + base64 + "." + std::to_string(base64.size()) + "." +
           checkOf(base64);
}

Outcome<Bytes> unsealedLink(std::string_view fragment) {
    if (std::optional<Issue> fault = faultOfForm(fragment)) {
        return std::move(*fault);
    }
    const LinkParts parts = partsOf(fragment.substr(fragment.find('.') + 1));
    if (const std::optional<Issue> fault = faultOf(parts, fragment.size())) {
        return *fault;
    }
    std::optional<Bytes> bytes = fromBase64Url(parts.base64);
    if (!bytes) {
        return damage(phrase::kLinkCutInByte);
    }
    const SizeMark mark = readSize(*bytes);
    if (mark.length == 0 || mark.length + mark.bytesBehind != bytes->size()) {
        return damage(phrase::kLinkSize);
    }
    bytes->erase(bytes->begin(), bytes->begin() + static_cast<std::ptrdiff_t>(mark.length));
    return std::move(*bytes);
}

} // namespace gusset
