#include "exchange/exercises/class_columns.hpp"

#include "classroom/exercise/typed_answer.hpp"

#include <algorithm>

namespace gusset {

namespace {

// Without spaces, with ASCII hyphens.
std::string plainName(const std::string& text) {
    std::string plain = withPlainNumbers(text);
    std::erase(plain, ' ');
    return plain;
}

std::string inLowerCase(std::string text) {
    for (char& c : text) {
        c = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    }
    return text;
}

} // namespace

ColumnNames::ColumnNames(const Truss& truss, const Exercise& exercise, const Structure& structure) {
    nameMembers(truss);
    nameReactions(truss, structure);
    for (std::size_t i = 0; i < exercise.questions.size(); ++i) {
        const auto& what = exercise.questions[i].what;
        if (std::holds_alternative<AskDisplacement>(what) ||
            std::holds_alternative<AskInfluence>(what)) {
            names_.try_emplace("Q" + std::to_string(i + 1), ColumnPlace{ClassColumn::Value, i});
        }
    }
}

void ColumnNames::nameMembers(const Truss& truss) {
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        const std::string a = plainName(truss.joints[truss.members[i].a.at()].label);
        const std::string b = plainName(truss.joints[truss.members[i].b.at()].label);
        for (const std::string& name : {a + b, b + a, a + "-" + b, b + "-" + a}) {
            names_.try_emplace(name, ColumnPlace{ClassColumn::Force, i});
            names_.try_emplace("F_" + name, ColumnPlace{ClassColumn::Force, i});
        }
    }
}

void ColumnNames::nameReactions(const Truss& truss, const Structure& structure) {
    std::map<int, std::size_t> atJoint;
    for (const Restraint& restraint : structure.restraints) {
        ++atJoint[restraint.joint.index];
    }
    for (std::size_t i = 0; i < structure.restraints.size(); ++i) {
        const Restraint& restraint = structure.restraints[i];
        const std::string joint = plainName(truss.joints[restraint.joint.at()].label);
        const ColumnPlace place{ClassColumn::Reaction, i};
        if (atJoint[restraint.joint.index] == 1) {
            names_.try_emplace("R_" + joint, place);
            names_.try_emplace(joint, place);
        }
        const std::string axis = restraint.along.y == 0 ? "x" : restraint.along.x == 0 ? "y" : "";
        for (const char* between : {"_", ":", ""}) {
            if (!axis.empty()) {
                names_.try_emplace(joint + between + axis, place);
            }
        }
    }
}

ColumnPlace ColumnNames::placeOf(const std::string& heading) const {
    const std::string name = plainName(heading);
    if (const auto found = names_.find(name); found != names_.end()) {
        return found->second;
    }
    const std::string word = inLowerCase(name);
    return {word == "variant"                                     ? ClassColumn::Variant
            : word == "exercise"                                  ? ClassColumn::Exercise
            : word == "zero" || word == "zeromembers"             ? ClassColumn::Zeros
            : word == "degree" || word == "degreeofindeterminacy" ? ClassColumn::Degree
                                                                  : ClassColumn::Other,
            0};
}

std::optional<std::size_t> ColumnNames::memberNamed(const std::string& name) const {
    const auto found = names_.find(plainName(name));
    return found != names_.end() && found->second.kind == ClassColumn::Force
               ? std::optional(found->second.index)
               : std::nullopt;
}

bool ColumnNames::looksLikeAnswer(const std::string& heading) {
    const std::string name = plainName(heading);
    const auto isCapital = [](char c) { return c >= 'A' && c <= 'Z'; };
    const auto isDigit = [](char c) { return c >= '0' && c <= '9'; };
    return name.starts_with("F_") || name.starts_with("R_") || name.ends_with("_x") ||
           name.ends_with("_y") ||
           (name.size() > 1 && name[0] == 'Q' &&
            std::all_of(name.begin() + 1, name.end(), isDigit)) ||
           (name.size() == 2 && isCapital(name[0]) && isCapital(name[1]) && name != "ID") ||
           (name.size() == 3 && name[1] == '-' && isCapital(name[0]) && isCapital(name[2]));
}

} // namespace gusset
