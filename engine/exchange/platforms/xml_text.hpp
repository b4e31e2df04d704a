#pragma once
// Writes XML element by element, indented. Private to exchange/platforms.

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace gusset {

using XmlAttributes = std::vector<std::pair<std::string, std::string>>;

class XmlText {
public:
    void open(const std::string& name, const XmlAttributes& = {});
    void close();
    void leaf(const std::string& name, const XmlAttributes& = {}); // <name …/>
    void element(const std::string& name, const std::string& text, const XmlAttributes& = {});
    void raw(std::string_view markup); // on a line of its own
    [[nodiscard]] std::string take();  // precondition: every element has been closed

private:
    [[nodiscard]] std::string tag(const std::string& name, const XmlAttributes&) const;

    std::string out_ = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";
    std::vector<std::string> names_;
};

} // namespace gusset
