#pragma once
// Words in letters that the embedded typefaces lack, as the browser draws them: plain data between
// the page's text and the interface to the browser.

#include <string_view>
#include <vector>

namespace gusset {

struct RunLook {
    double size = 16; // device px per em
    bool strong = false;
    bool italic = false;
};
// Coverage, 0 to 255, row by row; empty if nothing can be drawn.
struct RunPicture {
    int width = 0;  // device px
    int height = 0; // as passed to drawRun
    std::vector<unsigned char> ink{};
};
struct RunPaper {
    int height = 0;
    int baseline = 0; // from the top
};
using DrawRun = RunPicture (*)(std::string_view run, const RunLook&, const RunPaper&);

} // namespace gusset
