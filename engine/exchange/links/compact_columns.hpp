#pragma once
// The columns of the compact form, shared by writer and reader. The order is part of link form 1: a
// link with more columns than these is from a later version.

#include <array>
#include <span>
#include <string_view>

namespace gusset {

enum class ColumnCoding {
    Number,   // number of decimals, then differences
    Joint,    // difference of index from the previous row
    EndJoint, // difference of index from this row's first joint
    Path,     // list of indices
    Label,    // left out if it is the joint's default
    Plain,    // JSON as it is
};

struct CompactColumn {
    std::string_view key;
    ColumnCoding coding;
};

struct CompactList {
    std::string_view key;
    std::span<const CompactColumn> columns;
};

inline constexpr std::array<CompactColumn, 3> kJointColumns{{
    {"x", ColumnCoding::Number},
    {"y", ColumnCoding::Number},
    {"id", ColumnCoding::Label},
}};
inline constexpr std::array<CompactColumn, 5> kMemberColumns{{
    {"a", ColumnCoding::Joint},
    {"b", ColumnCoding::EndJoint},
    {"section", ColumnCoding::Plain},
    {"dT", ColumnCoding::Number},
    {"misfit", ColumnCoding::Number},
}};
inline constexpr std::array<CompactColumn, 4> kSupportColumns{{
    {"joint", ColumnCoding::Joint},
    {"kind", ColumnCoding::Plain},
    {"reaction", ColumnCoding::Number},
    {"settle", ColumnCoding::Plain},
}};
inline constexpr std::array<CompactColumn, 11> kLoadColumns{{
    {"joint", ColumnCoding::Joint},
    {"fx", ColumnCoding::Number},
    {"fy", ColumnCoding::Number},
    {"case", ColumnCoding::Plain},
    {"size", ColumnCoding::Number},
    {"angle", ColumnCoding::Number},
    {"chord", ColumnCoding::Path},
    {"perLength", ColumnCoding::Number},
    {"selfWeight", ColumnCoding::Plain},
    {"member", ColumnCoding::Path}, // loads between the joints of a member
    {"at", ColumnCoding::Number},
}};

inline constexpr std::array<CompactList, 4> kCompactLists{{
    {"joints", kJointColumns},
    {"members", kMemberColumns},
    {"supports", kSupportColumns},
    {"loads", kLoadColumns},
}};

inline constexpr int kMostDecimals = 6; // numbers with more are written as they are
inline constexpr int kNotDecimal = -1;

[[nodiscard]] constexpr double powerOfTen(int exponent) {
    double power = 1;
    for (int i = 0; i < exponent; ++i) {
        power *= 10;
    }
    return power;
}

} // namespace gusset
