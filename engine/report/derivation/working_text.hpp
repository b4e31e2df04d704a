#pragma once
// The working as sentences and formulas, from its steps, following the model's class settings.

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
// The whole working, one passage per step.
[[nodiscard]] std::vector<Passage> workingPassages(const Writer&, const Working&,
                                                   SketchPaper = SketchPaper::Page);
// The same, a step at a time (core/progress). Truss and working must outlive the task and must not
// move.
class WorkingPassagesTask {
public:
    WorkingPassagesTask(const Writer&, const Working&, SketchPaper = SketchPaper::Page);

    bool advance();
    [[nodiscard]] Progress progress() const; // steps
    [[nodiscard]] std::vector<Passage> take() { return std::move(passages_); }

private:
    Notation notation_;
    SketchPaper paper_;
    bool saidCarried_ = false;
    bool saidSolved_ = false;
    std::vector<Passage> passages_;
};
// The whole working as plain UTF-8, one line of the working per text line.
[[nodiscard]] std::string workingText(const Writer&, const Working&);
// The whole working as an HTML fragment: headings, paragraphs, <math>.
[[nodiscard]] std::string workingHtml(const Writer&, const Working&);

} // namespace gusset
