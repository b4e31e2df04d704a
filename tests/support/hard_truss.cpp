#include "support/hard_truss.hpp"

#include "support/small_truss.hpp"

#include <string>

namespace gusset::support {

void giveSections(Truss& truss) {
    truss.materials.push_back({"steel", 210e3, {}, {}, {}, {}});
    truss.sections.push_back({"bar", "steel", 1000, {}, "", {}, {}});
    for (Member& each : truss.members) {
        each.section = "bar";
    }
}

Truss flatArch(double rise) {
    Truss truss;
    joint(truss, "A", -1, 0);
    joint(truss, "B", 1, 0);
    joint(truss, "C", 0, rise);
    member(truss, "A", "C");
    member(truss, "B", "C");
    pin(truss, "A");
    pin(truss, "B");
    return truss;
}

Truss thriceHeldArch(double rise) {
    Truss truss = flatArch(rise);
    joint(truss, "G", -3, 0);
    member(truss, "G", "C");
    pin(truss, "G");
    return truss;
}

Truss crossedSquare() {
    Truss truss;
    joint(truss, "A", 0, 0);
    joint(truss, "B", 4, 0);
    joint(truss, "C", 4, 3);
    joint(truss, "D", 0, 3);
    for (const char* ends : {"AB", "BC", "CD", "DA", "AC", "BD"}) {
        member(truss, std::string(1, ends[0]), std::string(1, ends[1]));
    }
    pin(truss, "A");
    giveSections(truss);
    return truss;
}

} // namespace gusset::support
