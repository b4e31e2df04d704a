#include "exchange/platforms/xml_text.hpp"

#include "core/markup.hpp"

#include <cassert>

namespace gusset {

std::string XmlText::tag(const std::string& name, const XmlAttributes& attributes) const {
    std::string text(2 * names_.size(), ' ');
    text += "<" + name;
    for (const auto& attribute : attributes) {
        text += " " + attribute.first + "=\"" + escapeHtml(attribute.second) + "\"";
    }
    return text;
}

void XmlText::open(const std::string& name, const XmlAttributes& attributes) {
    out_ += tag(name, attributes) + ">\n";
    names_.push_back(name);
}

void XmlText::close() {
    assert(!names_.empty());
    const std::string name = names_.back();
    names_.pop_back();
    out_ += std::string(2 * names_.size(), ' ') + "</" + name + ">\n";
}

void XmlText::leaf(const std::string& name, const XmlAttributes& attributes) {
    out_ += tag(name, attributes) + "/>\n";
}

void XmlText::element(const std::string& name, const std::string& text,
                      const XmlAttributes& attributes) {
    out_ += tag(name, attributes) + ">" + escapeHtml(text) + "</" + name + ">\n";
}

void XmlText::raw(std::string_view markup) {
    out_ += std::string(2 * names_.size(), ' ') + std::string(markup) + "\n";
}

std::string XmlText::take() {
    assert(names_.empty());
    return std::move(out_);
}

} // namespace gusset
