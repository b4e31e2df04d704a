#pragma once
// What can have been done next on a sheet that does not simply follow: slips, each with its price.
// Private to classroom/marking.

#include "classroom/marking/sheet_values.hpp"

#include <map>

namespace gusset {

class SlipTrials {
public:
    explicit SlipTrials(const SheetValues& sheet) : sheet_(sheet), basis_(sheet.basis()) {}

    // Never empty. Precondition: nothing more follows, and something is still unknown.
    [[nodiscard]] std::vector<SheetTrial> after(const SheetTrial&);
    // What is used for the unknowns: it decides what is still to be explained.
    [[nodiscard]] static std::vector<double> usedIn(const SheetTrial&);

private:
    [[nodiscard]] std::vector<SheetTrial> slipsFrom(const SheetTrial&);
    [[nodiscard]] bool givesAnyJoint(const SheetTrial&) const;
    void addBySymmetry(std::vector<SheetTrial>& next, const SheetTrial&) const;
    void addGranted(std::vector<SheetTrial>& next, const SheetTrial&) const;
    [[nodiscard]] double costOf(std::optional<std::size_t> part,
                                const std::vector<SlipKind>& fits) const;
    void addSlip(SheetTrial&, std::optional<std::size_t> part, std::vector<SlipKind> fits,
                 const std::vector<int>& answers) const;
    void addSlipsOn(std::vector<SheetTrial>& next, const SheetTrial&, std::size_t part,
                    const WrittenHere&);
    void addSlipsOnEach(std::vector<SheetTrial>& next, const SheetTrial&, std::size_t part,
                        const WrittenHere&);
    [[nodiscard]] const std::vector<SlipKind>& fitsOn(const SheetTrial&, std::size_t part,
                                                      const WrittenHere&);
    void takeRight(SheetTrial&, std::size_t part, const WrittenHere&, bool alone) const;
    [[nodiscard]] SheetTrial withoutEquation(const SheetTrial&) const;

    const SheetValues& sheet_;
    const SheetBasis& basis_;
    // The same part with the same values is met again and again.
    std::map<std::vector<double>, std::vector<SlipKind>> fits_;
};

} // namespace gusset
