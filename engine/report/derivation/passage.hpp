#pragma once
// A section of a derivation under its own title: lines, tables and drawings in reading order. The
// notebook, plain text and HTML are renderings of these.

#include "report/results/table.hpp"
#include "report/sketch/sketch.hpp"
#include "report/text/rich_text.hpp"

#include <string>
#include <variant>
#include <vector>

namespace gusset {

struct Folded;

struct Passage {
    RichLine title{};
    std::vector<std::variant<WorkingLine, TextTable, Sketch>> parts{};
    std::vector<Folded> folded{}; // after the parts
    bool goesOn = false;          // about the body drawn in the passage before it
};

// A derivation that a reader may open where its results are used. In plain text it is left out.
struct Folded {
    RichLine title{};
    std::vector<Passage> passages{};
};

void addSentence(Passage&, RichLine);
void addFormula(Passage&, LineRole, Formula);

// Plain UTF-8, without drawings.
[[nodiscard]] std::string passagesText(const std::vector<Passage>&);
// A piece of a page: a section with a heading of this level for each passage, and those about one
// body together; what is folded in <details>.
[[nodiscard]] std::string passagesHtml(const std::vector<Passage>&, int level = 3);

} // namespace gusset
