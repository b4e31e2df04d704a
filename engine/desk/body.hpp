#pragma once
// The free body of a request: its forces, what the student has of them, and its name. Private to
// desk.

#include "desk/request.hpp"
#include "report/classroom/practice_sketch.hpp"
#include "report/text/writer.hpp"

#include <string>
#include <vector>

namespace gusset {

struct DeskBody {
    Truss truss;   // the request's; equations are built with sines and cosines, whatever the class
    Working paper; // blank
    PartOfTruss part;
    OwnValues own;
    std::vector<std::string> names; // of the unknowns, by their numbers: "A_x", "AB"
};
// An issue if the cut does not part the truss in two.
[[nodiscard]] Outcome<DeskBody> deskBody(const DeskRequest&, const ChosenBody&);
[[nodiscard]] Notation notationOf(const PhraseBook&, const DeskBody&); // as long as the body lives

// "joint A", "the part with A, B and C", at the start of a sentence with a capital.
enum class Begins { Inside, Sentence };
[[nodiscard]] std::string bodyName(const Writer&, const std::vector<JointId>&, Begins);
[[nodiscard]] std::string jointLabels(const Writer&, const std::vector<JointId>&);

// What is to be said of a cut before it is a body.
struct CutSaid {
    std::string says;
    struct Part {
        std::string joint; // one of it
        std::string says;
    };
    std::vector<Part> parts; // two, or none
};
[[nodiscard]] CutSaid cutSaid(const Writer&, const DeskRequest&);

} // namespace gusset
