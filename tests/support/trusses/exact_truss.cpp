#include "support/trusses/exact_truss.hpp"

#include "statics/equilibrium/structure.hpp"

#include <boost/multiprecision/cpp_int.hpp>

#include <array>
#include <cmath>
#include <exception>

namespace gusset::support {

namespace {

using Fraction = boost::multiprecision::number<
    boost::multiprecision::rational_adaptor<boost::multiprecision::cpp_int_backend<>>,
    boost::multiprecision::et_off>;
using Rows = std::vector<std::vector<Fraction>>;

struct Arrow {
    Fraction x;
    Fraction y;
};
Arrow arrowOf(Vec2 v) { return {Fraction(v.x), Fraction(v.y)}; }
Fraction dot(const Arrow& a, const Arrow& b) { return a.x * b.x + a.y * b.y; }
double narrowed(const Fraction& value) { return value.convert_to<double>(); }

// How the supports of a joint hold it: its prescribed position, and the directions in which it is
// free.
struct Place {
    Arrow settled;
    std::vector<Arrow> free{{1, 0}, {0, 1}};
    std::vector<int> unknowns; // the indices of these in the system
};

// Adds one more restraint: its direction `d` and the movement along it. False if it contradicts the
// others.
bool hold(Place& place, const Arrow& d, const Fraction& along) {
    if (place.free.size() == 2) { // the first restraint
        const Fraction size = dot(d, d);
        place.settled = {along * d.x / size, along * d.y / size};
        place.free = {{-d.y, d.x}};
        return true;
    }
    const Fraction lacks = along - dot(place.settled, d);
    if (place.free.empty() || dot(place.free.front(), d) == 0) {
        return lacks == 0;
    }
    const Arrow way = place.free.front();
    const Fraction far = lacks / dot(way, d);
    place.settled = {place.settled.x + far * way.x, place.settled.y + far * way.y};
    place.free.clear();
    return true;
}

struct Line {
    std::array<std::size_t, 2> ends{};
    Arrow run; // from the first to the second
    double length = 0;
    Fraction density;    // EA/L³
    Fraction elongation; // free elongation, m, times the length
};

Line lineOf(const Truss& truss, const Member& member) {
    Line line;
    line.ends = {member.a.at(), member.b.at()};
    const Arrow a = arrowOf(truss.joints[line.ends[0]].at);
    const Arrow b = arrowOf(truss.joints[line.ends[1]].at);
    line.run = {b.x - a.x, b.y - a.y};
    line.length = std::hypot(narrowed(line.run.x), narrowed(line.run.y));
    double stiffness = 1;
    double perDegree = 0;
    for (const Section& section : truss.sections) {
        if (section.id == member.section) { // MPa · mm²
            stiffness = *truss.materials.front().E * *section.area;
            perDegree = truss.materials.front().alpha.value_or(0);
        }
    }
    line.density = Fraction(stiffness / line.length / line.length / line.length);
    const double free = perDegree * member.warming * line.length + member.misfit / 1000;
    line.elongation = Fraction(free) * Fraction(line.length);
    return line;
}

// Solves the square system `rows`, whose last column is the right-hand side; none if singular.
std::optional<std::vector<Fraction>> solved(Rows rows) {
    const std::size_t count = rows.size();
    for (std::size_t k = 0; k < count; ++k) {
        std::size_t pivot = k;
        while (pivot < count && rows[pivot][k] == 0) {
            ++pivot;
        }
        if (pivot == count) {
            return std::nullopt;
        }
        std::swap(rows[k], rows[pivot]);
        for (std::size_t i = k + 1; i < count; ++i) {
            if (rows[i][k] == 0) {
                continue;
            }
            const Fraction factor = rows[i][k] / rows[k][k];
            for (std::size_t j = k; j <= count; ++j) {
                if (rows[k][j] != 0) {
                    rows[i][j] -= factor * rows[k][j];
                }
            }
        }
    }
    std::vector<Fraction> x(count);
    for (std::size_t k = count; k-- > 0;) {
        Fraction sum = rows[k][count];
        for (std::size_t j = k + 1; j < count; ++j) {
            if (rows[k][j] != 0) {
                sum -= rows[k][j] * x[j];
            }
        }
        x[k] = sum / rows[k][k];
    }
    return x;
}

// The joints as the supports hold them, with the unknown displacements numbered; none if the
// supports contradict each other.
std::optional<std::vector<Place>> placesOf(const Truss& truss, const Structure& structure,
                                           std::size_t& unknowns) {
    std::vector<Place> places(truss.joints.size());
    for (const Restraint& restraint : structure.restraints) {
        if (!hold(places[restraint.joint.at()], arrowOf(restraint.along),
                  Fraction(restraint.settle))) {
            return std::nullopt;
        }
    }
    for (Place& place : places) {
        for (std::size_t i = 0; i < place.free.size(); ++i) {
            place.unknowns.push_back(static_cast<int>(unknowns++));
        }
    }
    return places;
}

std::vector<Arrow> loadsOf(const Truss& truss) { // N
    std::vector<Arrow> loads(truss.joints.size());
    for (const Load& load : truss.loads) {
        const auto& force = std::get<JointForce>(load.what);
        loads[force.joint.at()].x += Fraction(force.fx) * 1000;
        loads[force.joint.at()].y += Fraction(force.fy) * 1000;
    }
    return loads;
}

// Adds a member's stiffness to the system, and the forces it exerts with all free displacements
// zero.
void addLine(const Line& line, const std::vector<Place>& places, Rows& rows) {
    const std::size_t right = rows.size();
    const Place& from = places[line.ends[0]];
    const Place& to = places[line.ends[1]];
    const Fraction still =
        line.density * (dot(to.settled, line.run) - dot(from.settled, line.run) - line.elongation);
    struct Term {
        std::size_t at;
        Fraction share; // coefficient of this unknown in the elongation
    };
    std::vector<Term> terms;
    for (const Place* place : {&from, &to}) {
        for (std::size_t i = 0; i < place->free.size(); ++i) {
            const Fraction share = dot(place->free[i], line.run);
            terms.push_back({static_cast<std::size_t>(place->unknowns[i]),
                             place == &from ? Fraction(-share) : share});
        }
    }
    for (const Term& one : terms) {
        rows[one.at][right] -= one.share * still;
        for (const Term& other : terms) {
            rows[one.at][other.at] += line.density * one.share * other.share;
        }
    }
}

// The part of the forces `needed` at each joint that each restraint provides.
std::vector<double> reactionsOf(const Structure& structure, const std::vector<Place>& places,
                                const std::vector<Arrow>& needed) {
    std::vector<std::array<Fraction, 3>> grams(needed.size()); // Σ xx, xy, yy of directions
    for (const Restraint& restraint : structure.restraints) {
        const Arrow d = arrowOf(restraint.along);
        std::array<Fraction, 3>& gram = grams[restraint.joint.at()];
        gram = {gram[0] + d.x * d.x, gram[1] + d.x * d.y, gram[2] + d.y * d.y};
    }
    std::vector<double> reactions;
    for (const Restraint& restraint : structure.restraints) {
        const Arrow d = arrowOf(restraint.along);
        const Arrow& force = needed[restraint.joint.at()];
        const auto& [xx, xy, yy] = grams[restraint.joint.at()];
        const bool isHeld = places[restraint.joint.at()].free.empty();
        const Fraction size = xx + yy;
        const Fraction determinant = xx * yy - xy * xy;
        const Arrow share =
            isHeld ? Arrow{(yy * d.x - xy * d.y) / determinant, (xx * d.y - xy * d.x) / determinant}
                   : Arrow{d.x / size, d.y / size};
        reactions.push_back(narrowed(dot(share, force)));
    }
    return reactions;
}

// The equations for the unknown displacements; the last column is the right-hand side.
Rows systemOf(const std::vector<Place>& places, std::size_t unknowns,
              const std::vector<Arrow>& loads, const std::vector<Line>& lines) {
    Rows rows(unknowns, std::vector<Fraction>(unknowns + 1));
    for (std::size_t j = 0; j < places.size(); ++j) {
        const Place& place = places[j];
        for (std::size_t i = 0; i < place.free.size(); ++i) {
            rows[static_cast<std::size_t>(place.unknowns[i])][unknowns] =
                dot(place.free[i], loads[j]);
        }
    }
    for (const Line& line : lines) {
        addLine(line, places, rows);
    }
    return rows;
}

std::vector<Arrow> movesOf(const std::vector<Place>& places, const std::vector<Fraction>& found) {
    std::vector<Arrow> moves;
    for (const Place& place : places) {
        Arrow move = place.settled;
        for (std::size_t i = 0; i < place.free.size(); ++i) {
            const Fraction& far = found[static_cast<std::size_t>(place.unknowns[i])];
            move = {move.x + far * place.free[i].x, move.y + far * place.free[i].y};
        }
        moves.push_back(move);
    }
    return moves;
}

} // namespace

std::optional<ExactResponse> exactResponse(const Truss& truss) {
    const Structure structure = structureOf(truss);
    std::size_t unknowns = 0;
    const std::optional<std::vector<Place>> places = placesOf(truss, structure, unknowns);
    if (!places) {
        return std::nullopt;
    }
    const std::vector<Arrow> loads = loadsOf(truss);
    std::vector<Line> lines;
    for (const Member& member : truss.members) {
        lines.push_back(lineOf(truss, member));
    }
    const auto found = solved(systemOf(*places, unknowns, loads, lines));
    if (!found) {
        return std::nullopt;
    }
    const std::vector<Arrow> moves = movesOf(*places, *found);
    ExactResponse response;
    std::vector<Arrow> needed;
    for (std::size_t j = 0; j < moves.size(); ++j) {
        needed.push_back({-loads[j].x, -loads[j].y});
        response.moves.push_back({narrowed(moves[j].x), narrowed(moves[j].y)});
    }
    for (const Line& line : lines) {
        const auto [a, b] = line.ends;
        const Fraction density =
            line.density * (dot(moves[b], line.run) - dot(moves[a], line.run) - line.elongation);
        response.forces.push_back(narrowed(density) * line.length);
        needed[a] = {needed[a].x - density * line.run.x, needed[a].y - density * line.run.y};
        needed[b] = {needed[b].x + density * line.run.x, needed[b].y + density * line.run.y};
    }
    response.reactions = reactionsOf(structure, *places, needed);
    return response;
}

} // namespace gusset::support
