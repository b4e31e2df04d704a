#include "exchange/drawings/xml_tags.hpp"

#include "core/utf8.hpp"
#include "model/validate/characters.hpp"
#include "phrases/faults/drawings.hpp"

#include <algorithm>
#include <array>
#include <charconv>

namespace gusset {

namespace {

constexpr std::string_view kXmlSpaces = " \t\r\n";
constexpr std::size_t kQuotedName = 40;

std::string withoutPrefix(std::string_view name) {
    const std::size_t colon = name.find(':');
    return std::string(colon == name.npos ? name : name.substr(colon + 1));
}

bool endsName(char c) {
    return kXmlSpaces.find(c) != kXmlSpaces.npos || c == '/' || c == '>' || c == '=' || c == '<' ||
           c == '"' || c == '\'';
}

std::optional<char32_t> characterReference(std::string_view digits) { // "65", "x41"
    const bool isHex = digits.starts_with('x');
    digits.remove_prefix(isHex ? 1 : 0);
    unsigned code = 0;
    const char* end = digits.data() + digits.size();
    const auto [stop, error] = std::from_chars(digits.data(), end, code, isHex ? 16 : 10);
    const bool isCode = error == std::errc() && stop == end && !digits.empty() && code > 0 &&
                        code <= 0x10FFFF && (code < 0xD800 || code > 0xDFFF);
    return isCode ? std::optional(static_cast<char32_t>(code)) : std::nullopt;
}

struct XmlEntity {
    std::string_view name;
    char letter;
};
constexpr std::array<XmlEntity, 5> kXmlEntities{
    {{"amp", '&'}, {"lt", '<'}, {"gt", '>'}, {"quot", '"'}, {"apos", '\''}}};

constexpr std::size_t kLongestEntity = 12; // "&#x0010FFFF;"

// Other entities stay as they are written.
std::string attributeValue(std::string_view written) {
    std::string value;
    while (!written.empty()) {
        const bool isEntity = written[0] == '&';
        const std::size_t end = isEntity ? written.substr(0, kLongestEntity).find(';') : 0;
        const std::string_view name =
            isEntity && end != written.npos ? written.substr(1, end - 1) : std::string_view();
        const auto known =
            std::find_if(kXmlEntities.begin(), kXmlEntities.end(),
                         [&](const XmlEntity& entity) { return entity.name == name; });
        const std::optional<char32_t> code =
            name.starts_with('#') ? characterReference(name.substr(1)) : std::nullopt;
        if (known != kXmlEntities.end() || code) {
            if (code) {
                appendCharacter(value, *code);
            } else {
                value += known->letter;
            }
            written.remove_prefix(end + 1);
        } else {
            value += written[0];
            written.remove_prefix(1);
        }
    }
    return value;
}

} // namespace

const std::string* XmlTag::find(std::string_view attribute) const {
    for (const auto& each : attributes) {
        if (each.first == attribute) {
            return &each.second;
        }
    }
    return nullptr;
}

std::nullopt_t XmlTags::fail(IssueCode code, Statement says) {
    fault_ = Issue{code, statement(phrase::kPlaceLineOfFile, {{"line", line_}}), std::move(says)};
    return std::nullopt;
}

void XmlTags::moveTo(std::size_t to) {
    const std::size_t end = std::min(to, text_.size());
    const std::string_view passed = text_.substr(at_, end - at_);
    line_ += static_cast<std::size_t>(std::count(passed.begin(), passed.end(), '\n'));
    at_ = end;
}

void XmlTags::skipSpaces() { moveTo(text_.find_first_not_of(kXmlSpaces, at_)); }

std::string_view XmlTags::name() {
    const std::size_t start = at_;
    while (at_ < text_.size() && !endsName(text_[at_])) {
        ++at_;
    }
    return text_.substr(start, at_ - start);
}

std::optional<XmlTag> XmlTags::next() {
    while (!fault_) {
        moveTo(text_.find('<', at_));
        if (at_ == text_.size()) {
            if (!open_.empty()) {
                fail(IssueCode::Damaged,
                     statement(phrase::kXmlEnds,
                               {{"name", spelled(open_.back().substr(0, kQuotedName))}}));
            }
            return std::nullopt;
        }
        if (!skipMarkup()) {
            return tag();
        }
    }
    return std::nullopt;
}

// Comments, CDATA, instructions and declarations, which say nothing here.
bool XmlTags::skipMarkup() {
    struct Markup {
        std::string_view start;
        std::string_view end;
    };
    constexpr std::array<Markup, 3> kMarkups{{{"<!--", "-->"}, {"<![CDATA[", "]]>"}, {"<?", "?>"}}};
    const std::string_view rest = text_.substr(at_);
    for (const Markup& markup : kMarkups) {
        if (rest.starts_with(markup.start)) {
            const std::size_t end = text_.find(markup.end, at_ + markup.start.size());
            moveTo(end == text_.npos ? end : end + markup.end.size());
            if (end == text_.npos) {
                fail(IssueCode::Damaged, phrase::kXmlEndsInTag);
            }
            return true;
        }
    }
    if (rest.starts_with("<!")) {
        skipDeclaration();
        return true;
    }
    return false;
}

// To the ">" that is neither in quotes nor in brackets.
void XmlTags::skipDeclaration() {
    char quote = 0;
    int depth = 0;
    for (std::size_t i = at_; i < text_.size(); ++i) {
        const char c = text_[i];
        if (quote != 0) {
            quote = c == quote ? '\0' : quote;
        } else if (c == '"' || c == '\'') {
            quote = c;
        } else if (c == '[' || c == ']') {
            depth += c == '[' ? 1 : -1;
        } else if (c == '>' && depth <= 0) {
            moveTo(i + 1);
            return;
        }
    }
    moveTo(text_.npos);
    fail(IssueCode::Damaged, phrase::kXmlEndsInTag);
}

std::optional<XmlTag> XmlTags::tag() {
    ++at_; // behind "<"
    XmlTag read;
    read.line = line_;
    const bool isClose = at_ < text_.size() && text_[at_] == '/';
    at_ += isClose ? 1 : 0;
    read.name = withoutPrefix(name());
    if (read.name.empty()) {
        return fail(IssueCode::Syntax, phrase::kXmlBadTag);
    }
    if (!readAttributes(read)) {
        return std::nullopt;
    }
    const bool isEmpty = text_[at_] == '/';
    at_ += isEmpty ? 1 : 0;
    if (at_ == text_.size()) {
        return fail(IssueCode::Damaged, phrase::kXmlEndsInTag);
    }
    if (text_[at_] != '>' || (isClose && (isEmpty || !read.attributes.empty()))) {
        return fail(IssueCode::Syntax, phrase::kXmlBadTag);
    }
    ++at_;
    read.kind = isClose ? XmlTag::Kind::Close : isEmpty ? XmlTag::Kind::Empty : XmlTag::Kind::Open;
    return nested(std::move(read));
}

std::optional<XmlTag> XmlTags::nested(XmlTag tag) {
    if (tag.kind == XmlTag::Kind::Open) {
        open_.push_back(tag.name);
        if (open_.size() > kDeepestXml) {
            return fail(IssueCode::TooLarge, statement(phrase::kXmlTooDeep, {{"n", kDeepestXml}}));
        }
    } else if (tag.kind == XmlTag::Kind::Close) {
        if (open_.empty() || open_.back() != tag.name) {
            return fail(IssueCode::Syntax,
                        statement(phrase::kXmlWrongEnd,
                                  {{"name", spelled(tag.name.substr(0, kQuotedName))}}));
        }
        open_.pop_back();
    }
    return tag;
}

// Up to the ">" or "/" behind them.
bool XmlTags::readAttributes(XmlTag& tag) {
    while (true) {
        skipSpaces();
        if (at_ == text_.size()) {
            fail(IssueCode::Damaged, phrase::kXmlEndsInTag);
            return false;
        }
        if (text_[at_] == '>' || text_[at_] == '/') {
            return true;
        }
        const std::string_view attribute = name();
        skipSpaces();
        const bool isSet = at_ < text_.size() && text_[at_] == '=';
        at_ += isSet ? 1 : 0;
        skipSpaces();
        const char quote = at_ < text_.size() ? text_[at_] : '\0';
        if (attribute.empty() ||
            (at_ < text_.size() && (!isSet || (quote != '"' && quote != '\'')))) {
            fail(IssueCode::Syntax, phrase::kXmlBadTag);
            return false;
        }
        const std::size_t end = text_.find(quote, at_ + 1);
        if (quote == '\0' || end == text_.npos) {
            fail(IssueCode::Damaged, phrase::kXmlEndsInTag);
            return false;
        }
        tag.attributes.emplace_back(withoutPrefix(attribute),
                                    attributeValue(text_.substr(at_ + 1, end - at_ - 1)));
        moveTo(end + 1);
    }
}

} // namespace gusset
