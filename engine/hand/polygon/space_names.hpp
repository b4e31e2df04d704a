#pragma once
// Names for the spaces of Bow's notation that no joint has. Private to hand/.

#include "model/truss/truss.hpp"

#include <set>
#include <string>

namespace gusset {

// Around the truss P, Q, R …, or A, B, C … where no joint is called by a letter; between its
// members 1, 2, 3 …, or the letters that follow where a joint is called by a number. The points of
// the polygon have the same names in small letters, which no joint has either.
class SpaceNames {
public:
    explicit SpaceNames(const Truss&);

    [[nodiscard]] std::string nextOutside();
    [[nodiscard]] std::string nextInside();
    [[nodiscard]] bool insideByNumber() const { return byNumber_; }

private:
    [[nodiscard]] std::string nextLetter();

    std::set<std::string> taken_; // names of joints, in small letters
    bool byNumber_ = true;
    char first_ = 'A';
    int letters_ = 0; // considered so far
    int numbers_ = 0;
};

} // namespace gusset
