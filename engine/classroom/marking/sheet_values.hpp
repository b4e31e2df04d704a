#pragma once
// What the values of a sheet follow from, as one part of the truss after the other is looked at.
// Private to classroom/marking.

#include "classroom/marking/follow.hpp"

namespace gusset {

// One way to explain a sheet, as far as it has got.
struct SheetTrial {
    OwnValues own;
    Explanation found;
    double cost = 0;
    int order = 0;   // in which it was thought of: of equal cost, the first goes first
    int granted = 0; // right values that were taken though no part gives them
};

// How far a value may be from what it follows from: by the sheet's own figures, or by the
// exercise's tolerance, within which a small slip can hide as two values that are each a little
// off.
enum class Sharpness { OfTheSheet, OfTheExercise };

[[nodiscard]] constexpr std::size_t placeOf(int unknown) {
    return static_cast<std::size_t>(unknown);
}

class SheetValues {
public:
    SheetValues(const SheetBasis&, const std::vector<std::optional<double>>& written, Sharpness);

    [[nodiscard]] const SheetBasis& basis() const { return basis_; }
    [[nodiscard]] const Rounding& rounding() const { return rounding_; }
    [[nodiscard]] const std::optional<double>& written(int unknown) const;
    [[nodiscard]] bool isWrittenRight(int unknown) const; // by the exercise's tolerance
    [[nodiscard]] bool isWrittenWrong(int unknown) const;
    [[nodiscard]] bool isExact(int unknown) const; // right as far as it is written
    [[nodiscard]] bool isSharp() const { return sharpness_ == Sharpness::OfTheSheet; }

    [[nodiscard]] SheetTrial start() const;
    // What a part gives, if it gives anything.
    [[nodiscard]] WrittenHere look(const SheetTrial&, const PartOfTruss&) const;
    void take(SheetTrial&, int unknown, double value, double error) const;
    void takeWritten(SheetTrial&, int unknown) const;
    void takeAllThatFollows(SheetTrial&) const;

private:
    [[nodiscard]] bool isNear(int unknown, double value, const Estimate& expected) const;
    [[nodiscard]] bool isWrongOfRight(const SheetTrial&, const PartOfTruss&, int unknown,
                                      double value) const;
    void lookFor(WrittenHere&, const SheetTrial&, const PartOfTruss&, int unknown,
                 const std::vector<Sum>&) const;
    bool takeFrom(SheetTrial&, std::size_t part, bool takesBlanks) const;

    const SheetBasis& basis_;
    const std::vector<std::optional<double>>& written_;
    Rounding rounding_;
    Sharpness sharpness_;
};

} // namespace gusset
