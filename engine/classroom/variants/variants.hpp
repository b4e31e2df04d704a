#pragma once
// The same exercise with other numbers: variants of a truss whose lengths, loads and supports
// differ, but whose answers are whole numbers or have one decimal, and which take about as many
// steps. With rational coordinates and loads every force density F/L of a determinate truss is
// rational (statics/solve/exact), so that a force is rational where its member's length is: the
// lengths are chosen so, and the loads are multiples of the common denominator. All of it is
// decided in exact arithmetic.

#include "classroom/variants/steps.hpp"
#include "core/outcome.hpp"
#include "core/progress.hpp"
#include "model/truss/truss.hpp"

#include <array>
#include <cstdint>
#include <memory>
#include <optional>
#include <string_view>
#include <vector>

namespace gusset {

struct Vary {
    bool lengths = true;     // along x
    bool rise = true;        // along y
    bool loads = true;       // their sizes
    bool directions = false; // of loads on joints: also inclined
    bool places = false;     // of loads on joints: other joints of the same height
    bool supports = false;   // the pin and the roller change places

    bool operator==(const Vary&) const = default;
};

struct VaryWord {
    std::string_view word;
    bool Vary::*what;
};
inline constexpr std::array kVaryWords{
    VaryWord{"lengths", &Vary::lengths}, VaryWord{"rise", &Vary::rise},
    VaryWord{"loads", &Vary::loads},     VaryWord{"directions", &Vary::directions},
    VaryWord{"places", &Vary::places},   VaryWord{"supports", &Vary::supports},
};

struct VariantWishes {
    Vary vary;
    int decimals = 0; // of the answers, in force units: 0 or 1
    std::vector<MemberId>
        asked{}; // whose forces must be such numbers; empty: all. Reactions always
    LoadChoice loads{};
    double lengthStep = 0;      // new coordinates are multiples of it; length units; 0: of any
    double loadStep = 0;        // new sizes of loads, likewise; force units
    std::optional<int> zeros{}; // members that carry nothing; none: about as many as now

    bool operator==(const VariantWishes&) const = default;
};

struct Variant {
    Truss truss;
    int number = 0; // from 1
    StepsOf steps;
};

inline constexpr int kMostVariants = 400;

// Distinct in their answers from one another and from the truss itself. Variant k depends on the
// seed and on the wishes, not on the count. Lengths that are equal in the truss stay equal, or all
// change by the same factor; no inclined member is at 45° where lengths may vary, and two supports
// do not share several loads equally where these may vary, so that a student's slips show.
// An issue, instead, names the wish to blame and the nearest that can be met.
// Precondition: validate found no error.
[[nodiscard]] Outcome<std::vector<Variant>> makeVariants(const Truss&, const VariantWishes&,
                                                         int count, std::uint64_t seed);

// The same, a variant at a time.
class VariantSearch {
public:
    VariantSearch(const Truss&, const VariantWishes&, int count, std::uint64_t seed);
    ~VariantSearch();

    [[nodiscard]] bool advance();
    [[nodiscard]] Progress progress() const; // in variants
    // Precondition: advance() has returned true.
    [[nodiscard]] Outcome<std::vector<Variant>> result();

private:
    struct State;
    std::unique_ptr<State> state_;
};

// Whether the reactions, and the forces of these members (empty: all), are whole numbers or have at
// most this many decimals.
[[nodiscard]] bool areFriendly(const ExactSolution&, const std::vector<MemberId>& asked,
                               int decimals);

} // namespace gusset
