#pragma once
// A case from the literature: a model file and, beside it, what its source prints. See README.md.

#include <string>
#include <vector>

namespace gusset::support {

struct PublishedLine {           // one thing that the source prints
    std::string what;            // "force", "reaction", "displacement", "zero", "status", …
    std::vector<std::string> of; // the words between: "A-B", or "A", "x"
    double value = 0;
    double within = 0; // absolute, from the source's rounding
};

struct PublishedCase {
    std::string name;
    std::string model; // the text of the model file
    std::string kind;
    std::vector<PublishedLine> lines;
};

// All cases, by name.
[[nodiscard]] std::vector<PublishedCase> publishedCases();

} // namespace gusset::support
