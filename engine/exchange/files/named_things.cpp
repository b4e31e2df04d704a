#include "exchange/files/named_things.hpp"

#include "phrases/faults/exercises.hpp"

namespace gusset {

JointId NamedThings::joint(const std::string& label, const std::string& place) const {
    const JointId found = findJoint(truss, label);
    if (!found.valid()) {
        issues.error(IssueCode::UnknownName, place,
                     statement(phrase::kNoJointNamed, {{"joint", label}}));
    }
    return found;
}

MemberId NamedThings::member(const JsonValue& value, const std::string& place) const {
    if (value.items.size() != 2 || value.items[0].kind != JsonValue::Kind::Text ||
        value.items[1].kind != JsonValue::Kind::Text) {
        issues.error(IssueCode::WrongType, place, phrase::kMemberIsTwoJoints);
        return {};
    }
    const std::string& a = value.items[0].text;
    const std::string& b = value.items[1].text;
    const JointId start = findJoint(truss, a);
    const JointId end = findJoint(truss, b);
    const MemberId found =
        start.valid() && end.valid() ? findMember(truss, start, end) : MemberId{};
    if (!found.valid()) {
        issues.error(IssueCode::UnknownName, place,
                     statement(phrase::kNoMemberBetween, {{"a", a}, {"b", b}}));
    }
    return found;
}

JointId NamedThings::jointUnder(ObjectReader& object, std::string_view key) const {
    std::string label;
    object.read(key, true, label);
    return label.empty() ? JointId{} : joint(label, object.placeOf(key));
}

MemberId NamedThings::memberUnder(ObjectReader& object, std::string_view key) const {
    if (const JsonValue* value = object.any(key)) {
        return member(*value, object.placeOf(key));
    }
    issues.error(IssueCode::Missing, object.placeOf(key), phrase::kMemberIsTwoJoints);
    return {};
}

std::vector<JointId> NamedThings::pathUnder(ObjectReader& object, std::string_view key) const {
    std::vector<JointId> path;
    for (const JsonValue& value : object.list(key, true)) {
        path.push_back(joint(value.text, object.placeOf(key)));
    }
    if (path.size() < 2) {
        issues.error(IssueCode::Missing, object.placeOf(key), phrase::kPathTooShort);
    }
    return path;
}

} // namespace gusset
