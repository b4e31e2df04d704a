#include "model/truss/fields.hpp"

#include <algorithm>

namespace gusset {

void eachJoint(Load& load, const std::function<void(JointId&)>& take) {
    if (auto* between = std::get_if<MemberForce>(&load.what)) {
        take(between->from);
        take(between->to);
    }
    const auto look = [&](const FieldValue& field) {
        if (field.joint) {
            take(*field.joint);
        } else if (field.path) {
            std::for_each(field.path->begin(), field.path->end(), take);
        }
    };
    std::visit(
        [&](auto& what) { eachField(kFields<std::remove_cvref_t<decltype(what)>>, what, look); },
        load.what);
}

} // namespace gusset
