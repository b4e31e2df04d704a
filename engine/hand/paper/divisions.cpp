#include "hand/paper/divisions.hpp"

#include <algorithm>
#include <array>
#include <bit>

namespace gusset {
namespace {

constexpr std::size_t kBits = 64;

// FNV-1a over words (G. Fowler, L. C. Noll, K.-P. Vo; offset and prime of the 64-bit variant).
std::uint64_t hashOf(const std::uint64_t* words, std::size_t count) {
    std::uint64_t hash = 0xcbf29ce484222325u;
    for (std::size_t i = 0; i < count; ++i) {
        hash = (hash ^ words[i]) * 0x100000001b3u;
        hash ^= hash >> 29; // a multiplication alone never moves high bits down
    }
    return hash;
}

bool bitOf(const std::uint64_t* words, std::size_t joint) {
    return (words[joint / kBits] >> (joint % kBits) & 1u) != 0;
}

// Transposes a square of bits by exchanging halves, quarters and so on; e.g. H. S. Warren, Hacker's
// Delight, 2nd ed., 2012, 7-3.
void transpose(std::array<std::uint64_t, kBits>& square) {
    std::uint64_t low = 0x00000000ffffffffu;
    for (std::size_t half = kBits / 2; half != 0; half /= 2, low ^= low << half) {
        for (std::size_t row = 0; row < kBits; row = ((row | half) + 1) & ~half) {
            const std::uint64_t change = ((square[row] >> half) ^ square[row | half]) & low;
            square[row] ^= change << half;
            square[row | half] ^= change;
        }
    }
}

} // namespace

Divisions::Divisions(const Truss& truss)
    : joints_(truss.joints.size()), perDivision_((joints_ + kBits - 1) / kBits),
      open_(perDivision_, 0) {}

Divisions::Word Divisions::lastWord() const {
    const std::size_t used = joints_ % kBits;
    return used == 0 ? ~Word{0} : (Word{1} << used) - 1;
}

void Divisions::clear() { std::fill(open_.begin(), open_.end(), 0); }

void Divisions::put(std::size_t joint, bool inside) {
    const Word bit = Word{1} << (joint % kBits);
    Word& word = open_[joint / kBits];
    word = inside ? word | bit : word & ~bit;
}

void Divisions::putAll(const Divisions& other, std::size_t division) {
    std::copy_n(other.wordsOf(division), perDivision_, open_.begin());
}

void Divisions::putFrom(const std::vector<int>& places, int first) {
    for (std::size_t i = 0; i < perDivision_; ++i) {
        const std::size_t end = std::min(joints_, (i + 1) * kBits);
        Word word = 0;
        for (std::size_t joint = i * kBits; joint < end; ++joint) {
            word |= Word{places[joint] >= first ? 1u : 0u} << (joint % kBits);
        }
        open_[i] = word;
    }
}

void Divisions::flip(std::size_t joint) { open_[joint / kBits] ^= Word{1} << (joint % kBits); }

void Divisions::keep() {
    if (open_.empty()) {
        return;
    }
    if ((open_.front() & 1u) != 0) { // the same division, given by its other side
        for (Word& word : open_) {
            word = ~word;
        }
        open_.back() &= lastWord();
    }
    std::size_t size = 0;
    for (const Word word : open_) {
        size += static_cast<std::size_t>(std::popcount(word));
    }
    if (size == 0) {
        return;
    }
    const auto same = [&](int division) {
        return std::equal(open_.begin(), open_.end(), wordsOf(static_cast<std::size_t>(division)));
    };
    const int next = static_cast<int>(sizes_.size());
    if (known_.insert(hashOf(open_.data(), open_.size()), next, same) < 0) {
        words_.insert(words_.end(), open_.begin(), open_.end());
        sizes_.push_back(size);
    }
}

void Divisions::readByJoint(std::size_t first, std::vector<Word>& ofJoint) const {
    const std::size_t count = std::min(kBits, sizes_.size() - first);
    for (std::size_t column = 0; column < perDivision_; ++column) {
        std::array<Word, kBits> square{};
        for (std::size_t row = 0; row < count; ++row) {
            square[row] = wordsOf(first + row)[column];
        }
        transpose(square);
        std::copy(square.begin(), square.end(),
                  ofJoint.begin() + static_cast<std::ptrdiff_t>(column * kBits));
    }
}

// 64 divisions at a time: a member is cut where the words of its ends differ.
void Divisions::finish(const Truss& truss) {
    std::vector<Word> ofJoint(perDivision_ * kBits);
    for (std::size_t first = 0; first < sizes_.size(); first += kBits) {
        readByJoint(first, ofJoint);
        std::array<std::vector<MemberId>, kBits> cuts;
        for (std::size_t k = 0; k < truss.members.size(); ++k) {
            const Member& member = truss.members[k];
            for (Word left = ofJoint[member.a.at()] ^ ofJoint[member.b.at()]; left != 0;
                 left &= left - 1) {
                cuts[static_cast<std::size_t>(std::countr_zero(left))].push_back(
                    {static_cast<int>(k)});
            }
        }
        for (std::size_t row = 0; row < std::min(kBits, sizes_.size() - first); ++row) {
            cut_.insert(cut_.end(), cuts[row].begin(), cuts[row].end());
            cutEnds_.push_back(cut_.size());
        }
    }
}

bool Divisions::contains(std::size_t division, int side, JointId joint) const {
    return bitOf(wordsOf(division), joint.at()) == (side != 0);
}

std::size_t Divisions::sizeOf(std::size_t division, int side) const {
    return side != 0 ? sizes_[division] : joints_ - sizes_[division];
}

std::span<const MemberId> Divisions::cut(std::size_t division) const {
    const std::size_t begin = division == 0 ? 0 : cutEnds_[division - 1];
    return {cut_.data() + begin, cutEnds_[division] - begin};
}

TrussPart Divisions::part(std::size_t division, int side) const {
    TrussPart part;
    part.reserve(sizeOf(division, side));
    for (std::size_t i = 0; i < perDivision_; ++i) {
        Word left = side != 0 ? wordsOf(division)[i] : ~wordsOf(division)[i];
        left &= i + 1 == perDivision_ ? lastWord() : ~Word{0};
        for (; left != 0; left &= left - 1) {
            part.push_back({static_cast<int>(i * kBits) + std::countr_zero(left)});
        }
    }
    return part;
}

// Of two sorted lists of the same length, the one that holds the first differing joint comes first.
bool Divisions::before(std::size_t division, int side, const Divisions& others, std::size_t other,
                       int otherSide) const {
    for (std::size_t i = 0; i < perDivision_; ++i) {
        const Word mine = side != 0 ? wordsOf(division)[i] : ~wordsOf(division)[i];
        const Word theirs = otherSide != 0 ? others.wordsOf(other)[i] : ~others.wordsOf(other)[i];
        const Word differ = (mine ^ theirs) & (i + 1 == perDivision_ ? lastWord() : ~Word{0});
        if (differ != 0) {
            return (mine >> std::countr_zero(differ) & 1u) != 0;
        }
    }
    return false;
}

} // namespace gusset
