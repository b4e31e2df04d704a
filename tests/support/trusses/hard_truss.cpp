#include "support/trusses/hard_truss.hpp"

#include "support/trusses/small_truss.hpp"

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
    members(truss, {"AB", "BC", "CD", "DA", "AC", "BD"});
    pin(truss, "A");
    giveSections(truss);
    return truss;
}

Truss archOnStilts(double rise) {
    Truss truss;
    joint(truss, "A", -1, 1);
    joint(truss, "B", 1, 1);
    joint(truss, "C", 0, 1 + rise);
    member(truss, "A", "C");
    member(truss, "C", "B");
    pin(truss, "A");
    pin(truss, "B");
    force(truss, "C", 0, -1, "snow");
    force(truss, "C", 1, 0, "wind");
    return truss;
}

Truss bracedStrip(double length, double height) {
    Truss truss;
    for (int i = 0; i < 4; ++i) {
        joint(truss, "B" + std::to_string(i), length * i, 0);
        joint(truss, "T" + std::to_string(i), length * i, height);
    }
    const auto join = [&](char from, int i, char to, int k) {
        member(truss, from + std::to_string(i), to + std::to_string(k));
    };
    for (int i = 0; i < 3; ++i) {
        join('B', i, 'B', i + 1);
        join('T', i, 'T', i + 1);
        join('B', i, 'T', i + 1);
        join('T', i, 'B', i + 1);
    }
    for (int i = 0; i < 4; ++i) {
        join('B', i, 'T', i);
    }
    pin(truss, "B0");
    pin(truss, "B3");
    return truss;
}

Truss refusedStrip() {
    Truss truss = bracedStrip(1, 1e-6);
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        const std::string id = "s" + std::to_string(i);
        const double stiff = 1e10 * (1 + static_cast<double>(i) / 7);
        truss.materials.push_back({id, 210000 * (i % 2 == 0 ? stiff : 1), {}, {}, {}, {}});
        truss.sections.push_back({id, id, 1000, {}, {}, {}, {}});
        truss.members[i].section = id;
    }
    force(truss, "T1", 0, -13);
    force(truss, "T3", 3, 0);
    return truss;
}

} // namespace gusset::support
