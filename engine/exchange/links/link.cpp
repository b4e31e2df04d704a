#include "exchange/links/link.hpp"

#include "exchange/files/model_reader.hpp"
#include "exchange/links/compact_model.hpp"
#include "exchange/links/deflated.hpp"
#include "exchange/links/link_loads.hpp"
#include "exchange/links/link_text.hpp"
#include "exchange/links/percent.hpp"
#include "phrases/faults/links.hpp"
#include "phrases/faults/reading.hpp"

#include <algorithm>
#include <iterator>
#include <utility>

namespace gusset {

namespace {

// Removes the line breaks and spaces that mail programs insert.
std::string withoutSpaces(std::string_view text) {
    std::string out;
    std::copy_if(text.begin(), text.end(), std::back_inserter(out),
                 [](char c) { return static_cast<unsigned char>(c) > ' '; });
    return out;
}

void stripTrailing(std::string& text, std::string_view signs) {
    text.erase(text.find_last_not_of(signs) + 1);
}

// From "m=", "j=" or "x=" on; empty if there is none of them.
std::string_view fragmentOf(std::string_view text) {
    for (const std::string_view mark : {"#m=", "#j=", "#x=", "%23m=", "%23j=", "%23x="}) {
        if (const std::size_t found = text.find(mark); found != std::string_view::npos) {
            return text.substr(found + mark.size() - 2);
        }
    }
    const std::size_t start = text.find_first_not_of(" \t\r\n#<\"'(");
    text.remove_prefix(std::min(start, text.size()));
    const std::string_view first = text.substr(0, 2);
    return first == "m=" || first == "j=" || first == "x=" ? text : std::string_view{};
}

// A value of the model file is one list deeper in the compact form.
constexpr int kDeeperInLink = 1;

// Whether lists and objects are nested more than `depth` deep; looks no deeper than that.
bool isDeeper(const JsonValue& value, int depth) {
    using Kind = JsonValue::Kind;
    if (value.kind != Kind::Array && value.kind != Kind::Object) {
        return false;
    }
    return depth == 0 ||
           std::any_of(value.items.begin(), value.items.end(),
                       [depth](const JsonValue& it) { return isDeeper(it, depth - 1); }) ||
           std::any_of(value.members.begin(), value.members.end(),
                       [depth](const auto& it) { return isDeeper(it.second, depth - 1); });
}

Outcome<Reading> readContent(const Bytes& bytes) {
    const Inflated content = inflated(bytes, kLargestInflated);
    if (content.fault == InflateFault::TooLarge) {
        return Issue{IssueCode::TooLarge, phrase::kPlaceLink,
                     statement(phrase::kLinkUnpacksTooLarge, {{"size", kLargestInflated >> 20}})};
    }
    if (content.fault) {
        return Issue{IssueCode::Damaged, phrase::kPlaceLink, phrase::kLinkDoesNotUnpack};
    }
    JsonBounds bounds;
    bounds.depth += kDeeperInLink;
    const Outcome<JsonValue> compact = parseJson(content.text, bounds);
    if (!compact) {
        const Issue& fault = compact.issues().front();
        return Issue{fault.code, phrase::kPlaceLink,
                     statement(phrase::kLinkNotJson, {{"place", fault.at}, {"fault", fault.says}})};
    }
    const Outcome<JsonValue> model = expandModel(compact.value());
    if (!model) {
        return model.issues();
    }
    if (isDeeper(model.value(), JsonBounds{}.depth)) {
        return Issue{IssueCode::TooLarge, phrase::kPlaceLink, phrase::kLinkNestedTooDeep};
    }
    return readModelValue(model.value());
}

// Tested before the model is packed, which would take seconds for so many.
bool holdsTooMany(const Truss& truss) {
    return std::max({truss.joints.size(), truss.members.size(), truss.supports.size(),
                     truss.loads.size()}) > kMostInLink;
}

// Why a link with this truss would not open again.
Issue noLink(IssueCode code, Statement says) {
    return Issue{code, phrase::kPlaceLink, std::move(says)};
}

} // namespace

std::string writeLink(const Truss& truss) { return sealedLink(deflated(compactModel(truss))); }

Outcome<std::string> openableLink(const Truss& truss, const LoadChoice& loads) {
    if (holdsTooMany(truss)) {
        return noLink(IssueCode::TooLarge, phrase::kLinkTrussTooLarge);
    }
    std::string link = writeLink(truss) + linkTailOf(loads);
    if (link.size() > kLargestLink) {
        return noLink(IssueCode::TooLarge, statement(phrase::kLinkWouldBeTooLong,
                                                     {{"n", link.size()}, {"most", kLargestLink}}));
    }
    const Outcome<Reading> back = readLink(link);
    if (!back) {
        const Issue& fault = back.issues().front();
        return noLink(fault.code, fault.code == IssueCode::TooLarge
                                      ? Statement(phrase::kLinkTrussTooLarge)
                                      : statement(phrase::kLinkWouldNotOpen,
                                                  {{"place", fault.at}, {"fault", fault.says}}));
    }
    if (back.value().truss != truss) {
        return noLink(IssueCode::Damaged, phrase::kLinkWouldLose);
    }
    return link;
}

Outcome<std::string> exerciseLink(const Truss& truss) {
    Outcome<std::string> link = openableLink(truss);
    if (!link) {
        return link;
    }
    std::string fragment = std::move(link).value();
    fragment.front() = 'x';
    return fragment;
}

bool looksLikeLink(std::string_view text) { return !fragmentOf(text).empty(); }

Outcome<Reading> readModelOrLink(std::string_view text) {
    const std::size_t start = text.find_first_not_of(" \t\r\n\xEF\xBB\xBF");
    const bool isBlank = start == std::string_view::npos;
    const bool isJson = !isBlank && (text[start] == '{' || text[start] == '[');
    if (!isJson && looksLikeLink(text)) {
        return readLink(text);
    }
    if (!isBlank && !isJson && text.find('{') == text.npos && text.find('\0') == text.npos) {
        return Issue{IssueCode::Syntax, phrase::kPlaceText,
                     statement(phrase::kNeitherLinkNorModel, {{"brace", "{"}})};
    }
    return readModel(text);
}

Outcome<Reading> readLink(std::string_view text) {
    const std::string_view whole = fragmentOf(text);
    if (const std::size_t size = whole.empty() ? text.size() : whole.size(); size > kLargestLink) {
        return Issue{IssueCode::TooLarge, phrase::kPlaceLink,
                     statement(phrase::kLinkExceeds, {{"n", size}, {"most", kLargestLink}})};
    }
    const std::string_view fragment = withoutTail(whole).model;
    if (fragment.empty()) {
        return Issue{IssueCode::Syntax, phrase::kPlaceLink, phrase::kNoModelInLink};
    }
    std::string plain = percentDecoded(fragment);
    if (plain.starts_with("j=")) {
        plain.erase(plain.find_last_of('}') + 1); // what programs append
        if (plain.empty()) {
            return Issue{IssueCode::Damaged, phrase::kPlaceLink,
                         statement(phrase::kLinkWithoutEnd, {{"brace", "}"}})};
        }
        return readModel(std::string_view(plain).substr(std::min<std::size_t>(2, plain.size())));
    }
    plain = withoutSpaces(plain);
    stripTrailing(plain, ").,>\"'*;:!?]}");
    if (plain.starts_with("x=")) {
        plain.front() = 'm';
    }
    const Outcome<Bytes> bytes = unsealedLink(plain);
    if (!bytes) {
        return bytes.issues();
    }
    return readContent(bytes.value());
}

Outcome<LoadChoice> linkedLoads(std::string_view text, const Truss& truss) {
    const std::string_view fragment = fragmentOf(text);
    const bool isEncoded = fragment.find('&') == std::string_view::npos; // as a whole, '&' too
    const std::string decoded = isEncoded ? percentDecoded(fragment) : "";
    LoadChoice loads = withoutTail(isEncoded ? std::string_view(decoded) : fragment).loads;
    if (!isThere(truss, loads)) {
        return Issue{IssueCode::UnknownName, phrase::kPlaceLink,
                     isOneCase(loads) ? phrase::kLinkAsksCase : phrase::kLinkAsksCombination};
    }
    return loads;
}

} // namespace gusset
