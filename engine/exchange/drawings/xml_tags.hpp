#pragma once
// The tags of an XML document, one after the other, without its text. Strict about nesting and
// quotes; of entities only the five of XML and numbers are replaced, so that a document can neither
// fetch anything nor grow. None of the project's libraries reads XML. Private to
// exchange/drawings.
// Source: W3C, Extensible Markup Language (XML) 1.0, fifth edition, 2.4 to 3.1 and 4.1.

#include "core/outcome.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace gusset {

struct XmlTag {
    enum class Kind { Open, Close, Empty };
    Kind kind = Kind::Open;
    std::string name; // without its prefix
    std::size_t line = 0;
    std::vector<std::pair<std::string, std::string>> attributes; // names without their prefix

    [[nodiscard]] const std::string* find(std::string_view attribute) const; // or null
};

inline constexpr std::size_t kDeepestXml = 256;

class XmlTags {
public:
    explicit XmlTags(std::string_view document) : text_(document) {}

    // Nothing at the end of the document, or at a fault.
    [[nodiscard]] std::optional<XmlTag> next();
    [[nodiscard]] const std::optional<Issue>& fault() const { return fault_; }

private:
    [[nodiscard]] std::optional<XmlTag> tag();
    [[nodiscard]] bool skipMarkup();
    void skipDeclaration();
    [[nodiscard]] bool readAttributes(XmlTag&);
    [[nodiscard]] std::optional<XmlTag> nested(XmlTag);
    [[nodiscard]] std::string_view name();
    void skipSpaces();
    void moveTo(std::size_t);
    std::nullopt_t fail(IssueCode, Statement);

    std::string_view text_;
    std::size_t at_ = 0;
    std::size_t line_ = 1;
    std::vector<std::string> open_;
    std::optional<Issue> fault_;
};

} // namespace gusset
