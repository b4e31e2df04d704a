#pragma once
// Ways to divide the joints of a truss in two, each once however it was found, with the members
// that are cut by it. Private to hand/. A division is kept as one bit a joint, so that a thousand
// divisions of a thousand joints take little room.

#include "core/index_table.hpp"
#include "model/truss/truss.hpp"

#include <cstdint>
#include <span>
#include <vector>

namespace gusset {

using TrussPart =
    std::vector<JointId>; // in the order of the joints; neither empty nor the whole truss

class Divisions {
public:
    explicit Divisions(const Truss&);

    // The division that is being put together; at first no joint is inside.
    void clear();
    void put(std::size_t joint, bool inside);
    void putAll(const Divisions&, std::size_t division);     // as that division is
    void putFrom(const std::vector<int>& places, int first); // joints whose place is no earlier
    void flip(std::size_t joint);
    // Keeps it, unless it is there already or one side is empty. What stands open may have changed
    // sides then: begin the next one by clear(), putAll() or a put() for every joint.
    void keep();
    // Finds the cut members of all divisions. Once, when all are kept.
    void finish(const Truss&);

    [[nodiscard]] std::size_t count() const { return sizes_.size(); }
    // A division has two sides: 0 holds the first joint of the truss, 1 does not.
    [[nodiscard]] bool contains(std::size_t division, int side, JointId joint) const;
    [[nodiscard]] std::size_t sizeOf(std::size_t division, int side) const;
    [[nodiscard]] std::span<const MemberId> cut(std::size_t division) const; // in their order
    [[nodiscard]] TrussPart part(std::size_t division, int side) const;
    // As two parts of one size are ordered joint by joint.
    [[nodiscard]] bool before(std::size_t division, int side, const Divisions& others,
                              std::size_t other, int otherSide) const;

private:
    using Word = std::uint64_t;
    [[nodiscard]] const Word* wordsOf(std::size_t division) const {
        return words_.data() + division * perDivision_;
    }
    [[nodiscard]] Word lastWord() const; // which bits of the last word stand for joints
    // Of each joint a word: the bits of 64 divisions from this one on.
    void readByJoint(std::size_t first, std::vector<Word>& ofJoint) const;

    std::size_t joints_;
    std::size_t perDivision_;
    std::vector<Word> open_;         // the one that is being put together
    std::vector<Word> words_;        // bit set: on the side without the first joint
    std::vector<std::size_t> sizes_; // of that side
    std::vector<MemberId> cut_;
    std::vector<std::size_t> cutEnds_;
    IndexTable known_;
};

} // namespace gusset
