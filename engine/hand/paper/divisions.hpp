#pragma once
// Ways to divide the joints of a truss in two, without duplicates, with the members that each one
// cuts. Private to hand/. A division is stored as one bit per joint, so that a thousand divisions
// of a thousand joints take little memory.

#include "core/index_table.hpp"
#include "model/truss/truss.hpp"

#include <cstdint>
#include <span>
#include <vector>

namespace gusset {

using TrussPart = std::vector<JointId>; // in joint order; neither empty nor the whole truss

class Divisions {
public:
    explicit Divisions(const Truss&);

    // The division under construction; at first no joint is inside.
    void clear();
    void put(std::size_t joint, bool inside);
    void putAll(const Divisions&, std::size_t division);     // copies that division
    void putFrom(const std::vector<int>& places, int first); // joints from this place on
    void flip(std::size_t joint);
    // Keeps the division, unless it is a duplicate or one side is empty. Its sides may be swapped
    // afterwards: start the next one with clear(), putAll() or a put() for every joint.
    void keep();
    // Finds the cut members of all divisions. Call once, when all are kept.
    void finish(const Truss&);

    [[nodiscard]] std::size_t count() const { return sizes_.size(); }
    // A division has two sides: 0 holds the first joint of the truss, 1 does not.
    [[nodiscard]] bool contains(std::size_t division, int side, JointId joint) const;
    [[nodiscard]] std::size_t sizeOf(std::size_t division, int side) const;
    [[nodiscard]] std::span<const MemberId> cut(std::size_t division) const; // in member order
    [[nodiscard]] TrussPart part(std::size_t division, int side) const;
    // Orders two parts of the same size, joint by joint.
    [[nodiscard]] bool before(std::size_t division, int side, const Divisions& others,
                              std::size_t other, int otherSide) const;

private:
    using Word = std::uint64_t;
    [[nodiscard]] const Word* wordsOf(std::size_t division) const {
        return words_.data() + division * perDivision_;
    }
    [[nodiscard]] Word lastWord() const; // the bits of the last word that stand for joints
    // One word per joint: the bits of 64 divisions, starting with `first`.
    void readByJoint(std::size_t first, std::vector<Word>& ofJoint) const;

    std::size_t joints_;
    std::size_t perDivision_;
    std::vector<Word> open_;         // the one under construction
    std::vector<Word> words_;        // bit set: on the side without the first joint
    std::vector<std::size_t> sizes_; // of that side
    std::vector<MemberId> cut_;
    std::vector<std::size_t> cutEnds_;
    IndexTable known_;
};

} // namespace gusset
