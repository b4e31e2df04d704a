#pragma once
// QTI 1.2 as Canvas imports it: a numerical or multiple-choice question for each field, the picture
// as web content. Forms: the fixtures of Canvas's own importer (github.com/instructure/qti) and
// IMS QTI 1.2.1. It takes no part of the points for an answer of the wrong sign.

#include "classroom/exercise/quiz.hpp"
#include "exchange/platforms/zip.hpp"

#include <vector>

namespace gusset {

[[nodiscard]] std::vector<PackedFile> canvasPackage(const std::vector<Quiz>&);

} // namespace gusset
