#pragma once
// A working as a whole document, for a screen and for paper: complete by itself, without a network.

#include "report/derivation/passage.hpp"
#include "report/text/writer.hpp"

#include <optional>
#include <string>
#include <vector>

namespace gusset {

// In the order in which it is read, unless the results come first.
struct WorkingDocument {
    std::vector<std::string> warnings{};
    std::optional<Sketch> given{};
    RichLine sought{}; // "Find the force in AB."
    std::vector<Passage> working{};
    std::vector<Passage> results{};
    std::optional<Sketch> answer{}; // all forces, after the results
    bool resultsFirst = false;
};
[[nodiscard]] std::string documentHtml(const Writer&, const WorkingDocument&);
// A piece of a page under the truss's title.
[[nodiscard]] std::string documentAround(const Writer&, const std::string& html);

} // namespace gusset
