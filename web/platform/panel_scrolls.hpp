#pragma once
// How far each page of the notebook is scrolled: kept while presenting lays them out anew, and
// brought back afterwards.

#include <utility>
#include <vector>

namespace gusset {

class PanelScrolls {
public:
    void keep();
    void bringBack(); // in the next frames, while the pages get back their heights
    // Call just after ImGui has begun a frame. True while there is more to do.
    bool beginFrame();

private:
    std::vector<std::pair<unsigned, float>> kept_{}; // by the window's id, device px
    int frames_ = 0;                                 // in which they are still brought back
};

} // namespace gusset
