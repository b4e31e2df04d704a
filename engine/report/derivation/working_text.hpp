#pragma once
// The working in words and signs, from its steps, in the class settings of the model.

#include "core/progress.hpp"
#include "report/derivation/passage.hpp"
#include "report/formula/notation.hpp"

#include <string>
#include <utility>
#include <vector>

namespace gusset {

[[nodiscard]] std::vector<WorkingLine> renderStep(const Notation&, const Step&);
// For the list of steps.
[[nodiscard]] RichLine stepTitleLine(const Notation&, const Step&);
[[nodiscard]] std::string stepTitle(const Notation&, const Step&);
// The whole, a step each.
[[nodiscard]] std::vector<Passage> workingPassages(const Writer&, const Working&,
                                                   SketchPaper = SketchPaper::Page);
// The same, a step at a time (core/progress). Truss and working stay where they are while it lives.
class WorkingPassagesTask {
public:
    WorkingPassagesTask(const Writer&, const Working&, SketchPaper = SketchPaper::Page);

    bool advance();
    [[nodiscard]] Progress progress() const; // steps
    [[nodiscard]] std::vector<Passage> take() { return std::move(passages_); }

private:
    Notation notation_;
    SketchPaper paper_;
    std::vector<Passage> passages_;
};
// The whole, plain UTF-8, one line each.
[[nodiscard]] std::string workingText(const Writer&, const Working&);
// The whole as a fragment: headings, paragraphs, <math>.
[[nodiscard]] std::string workingHtml(const Writer&, const Working&);

} // namespace gusset
