#pragma once
// What is given out of a series of variants: the models with their question, a key for the teacher,
// and a table of links, each with the student that it is for. A student's name is in these tables
// alone, never in a link.

#include "classroom/exercise/exercise.hpp"
#include "classroom/variants/variants.hpp"

#include <cstdint>
#include <string>
#include <vector>

namespace gusset {

// What is wished for.
struct Series {
    VariantWishes wishes;
    std::vector<std::string> students; // empty without a class list
    int count = 0;
    std::uint64_t seed = 0;
};

// The link of an exercise for the student who is to answer it: with the code of a variant behind
// it, "x=1.…&code=7HQ2M", which readLink ignores. `exercise`: that of the truss.
[[nodiscard]] Outcome<std::string> studentLink(const Truss&, const Exercise&);

struct VariantPaper {
    Truss truss; // with its question: the model's own, or all reactions and forces
    std::string file;
    std::string student; // or empty
    std::string code;    // tells the sheets of a series apart
    std::string link;    // studentLink's
};
struct SeriesPapers {
    std::vector<VariantPaper> variants;
    std::string key;   // key.csv: the answers of each variant
    std::string links; // links.csv
};
// `page`: where exercises are answered, or empty for fragments alone. `truss`: that the variants
// are made of.
[[nodiscard]] Outcome<SeriesPapers> papersOf(const Truss& truss, const Series&,
                                             const std::vector<Variant>&, const std::string& page);

} // namespace gusset
