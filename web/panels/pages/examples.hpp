#pragma once
// The models of examples/ by name; the build writes the definition (site/cmake/example_list.cmake).

#include <span>

namespace gusset {

struct Example {
    const char* file = nullptr;  // in examples/
    const char* title = nullptr; // of the model
    const char* says = nullptr;  // a description, one sentence
};
[[nodiscard]] std::span<const Example> examples();

} // namespace gusset
