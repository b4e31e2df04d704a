#include "core/tolerance.hpp"
#include "hand/polygon/polygon_drawing.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
#include <queue>

namespace gusset {
namespace {

// The counts of known points beside each space are updated as the drawing grows and kept in a heap
// (J. W. J. Williams, Algorithm 232, Comm. ACM 7 (1964)): n log n in total.
class MemberDrawing {
public:
    MemberDrawing(PolygonInHand& drawing, const std::vector<double>& forces)
        : drawing_(drawing), forces_(forces), drawn_(forces.size()),
          edgesTo_(drawing.placed.size()), fixedBy_(drawing.placed.size()) {
        for (std::size_t e = 0; e < drawing.faces.edges.size(); ++e) {
            edgesTo_[drawing.rightOf(e)].push_back(e);
        }
        for (std::size_t space = 0; space < drawing.placed.size(); ++space) {
            if (drawing.placed[space]) {
                countPlaced(space);
            }
        }
    }

    void drawAll() {
        for (std::size_t member = 0; member < forces_.size(); ++member) {
            joinIfPlaced(member);
        }
        while (!next_.empty()) {
            const Candidate candidate = next_.top();
            next_.pop();
            const std::size_t space = candidate.space;
            if (!drawing_.placed[space] && candidate.known == fixedBy_[space]) {
                drawSpace(space);
            }
        }
    }

private:
    struct Known { // members from a space to placed ones
        int count = 0;
        bool twoWays = false; // not all of them parallel, so that they determine it
        Vec2 first{};         // direction

        friend bool operator==(const Known&, const Known&) = default;
    };
    struct Candidate {
        Known known;
        std::size_t space;
        bool operator<(const Candidate& other) const { // the next one on top
            if (known.twoWays != other.known.twoWays) {
                return other.known.twoWays;
            }
            return known.count != other.known.count ? known.count < other.known.count
                                                    : space > other.space;
        }
    };

    [[nodiscard]] Vec2 directionOf(std::size_t edge) const {
        const Vec2 run = drawing_.runOf(edge);
        return (1 / length(run)) * run;
    }
    static bool areParallel(Vec2 a, Vec2 b) { return std::fabs(cross(a, b)) <= kParallel; }

    void countPlaced(std::size_t space) {
        for (const std::size_t e : edgesTo_[space]) {
            const std::size_t across = drawing_.leftOf(e);
            if (across == space) {
                continue;
            }
            Known& known = fixedBy_[across];
            const Vec2 way = directionOf(e);
            known.twoWays = known.twoWays || (known.count > 0 && !areParallel(known.first, way));
            known.first = known.count++ > 0 ? known.first : way;
            next_.push({known, across});
        }
    }

    // From the placed space on its left; sets the point on its right if that is new.
    void draw(std::size_t edge) {
        const double force = forces_[edge / 2];
        const std::size_t left = drawing_.leftOf(edge);
        const std::size_t right = drawing_.rightOf(edge);
        std::vector<PolygonSpace>& spaces = drawing_.polygon.spaces;
        if (!drawing_.placed[right]) {
            spaces[right].point = spaces[left].point + force * directionOf(edge);
            drawing_.placed[right] = true;
        }
        drawing_.polygon.lines.push_back({drawing_.faces.edges[edge].member,
                                          {},
                                          false,
                                          static_cast<int>(left),
                                          static_cast<int>(right),
                                          force});
        drawn_[edge / 2] = true;
    }

    void begin(PolygonMove move) {
        drawing_.polygon.steps.push_back({move, drawing_.polygon.lines.size(), 0});
    }
    void end() {
        PolygonStep& step = drawing_.polygon.steps.back();
        step.count = drawing_.polygon.lines.size() - step.first;
    }

    void joinIfPlaced(std::size_t member) {
        if (!drawn_[member] && drawing_.placed[drawing_.leftOf(2 * member)] &&
            drawing_.placed[drawing_.rightOf(2 * member)]) {
            begin(PolygonMove::Joins);
            draw(2 * member);
            end();
        }
    }

    // Half-edges from placed spaces; first two that are not parallel, if there are any.
    [[nodiscard]] std::vector<std::size_t> edgesFromPlaced(std::size_t space) const {
        std::vector<std::size_t> edges;
        for (const std::size_t e : edgesTo_[space]) {
            if (drawing_.leftOf(e) != space && drawing_.placed[drawing_.leftOf(e)]) {
                edges.push_back(e);
            }
        }
        const auto other = std::find_if(edges.begin(), edges.end(), [&](std::size_t e) {
            return !areParallel(directionOf(e), directionOf(edges.front()));
        });
        if (other != edges.end()) {
            std::rotate(edges.begin() + 1, other, other + 1);
        }
        return edges;
    }

    void drawSpace(std::size_t space) {
        begin(fixedBy_[space].twoWays ? PolygonMove::Meets : PolygonMove::Measured);
        for (const std::size_t e : edgesFromPlaced(space)) {
            draw(e);
        }
        end();
        for (const std::size_t e : edgesTo_[space]) { // members with this space on both sides
            joinIfPlaced(e / 2);
        }
        countPlaced(space);
    }

    PolygonInHand& drawing_;
    const std::vector<double>& forces_;
    std::vector<bool> drawn_;                       // by member
    std::vector<std::vector<std::size_t>> edgesTo_; // half-edges with the space on their right
    std::vector<Known> fixedBy_;                    // by space, for those not placed
    std::priority_queue<Candidate> next_;
};

} // namespace

void drawMembers(PolygonInHand& drawing, const std::vector<double>& forces) {
    MemberDrawing(drawing, forces).drawAll();
}

} // namespace gusset
