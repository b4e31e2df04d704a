#pragma once
// Whether the flat parts of a section buckle locally before it yields in compression: EN
// 1993-1-1:2005, table 5.2; ANSI/AISC 360-16, table B4.1a. The widths are those between roots where
// the section has them.

#include "design/member_make.hpp"

namespace gusset {

struct LocalBuckling {
    int number = 0; // EN 1993-1-1: class 1 to 4; AISC: 4 for a slender element, else 3; 0: nothing
                    // is known to buckle
    PartKind part = PartKind::Internal; // the one that decides
    double ratio = 0;                   // its c/t, h/t, (b + h)/2t or d/t
    double limit = 0;                   // the most of class 3, or of an element that isn't slender
};

[[nodiscard]] std::vector<FlatPart> flatPartsOf(const Section&);
[[nodiscard]] LocalBuckling classByEn1993(const std::vector<FlatPart>&, double yield); // Pa
[[nodiscard]] LocalBuckling slenderByAisc360(const std::vector<FlatPart>&, double yield,
                                             double modulus);

} // namespace gusset
