#pragma once
// A package of QTI 2.1 or 3.0: a manifest, a test for each quiz, its questions and its picture.

#include "exchange/platforms/qti_item.hpp"
#include "exchange/platforms/zip.hpp"

#include <vector>

namespace gusset {

[[nodiscard]] std::vector<PackedFile> qtiPackage(QtiVersion, const std::vector<Quiz>&);

} // namespace gusset
