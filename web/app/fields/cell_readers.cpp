#include "app/fields/cell_readers.hpp"

#include "app/fields/property_cells.hpp"
#include "model/quantity/quantity_input.hpp"

#include <string_view>
#include <utility>

namespace gusset {
namespace {

Issue noJoint(const std::string& label) {
    return {IssueCode::UnknownName, "", "There is no joint “" + label + "”."};
}

Outcome<JointId> readJoint(const Truss& truss, const std::string& text) {
    const std::string label = trimmed(text);
    const JointId joint = findJoint(truss, label);
    if (!joint.valid()) {
        return noJoint(label);
    }
    return joint;
}

using Pair = std::pair<JointId, JointId>;

// The first separator that leaves a known label on either side.
std::optional<Pair> splitAtSign(const Truss& truss, const std::string& text) {
    for (const std::string_view sign : {"–", "−", "-", ",", ";", " ", "\t"}) {
        for (std::size_t at = text.find(sign); at != std::string::npos;
             at = text.find(sign, at + sign.size())) {
            const JointId a = findJoint(truss, trimmed(text.substr(0, at)));
            const JointId b = findJoint(truss, trimmed(text.substr(at + sign.size())));
            if (a.valid() && b.valid()) {
                return Pair{a, b};
            }
        }
    }
    return std::nullopt;
}

std::vector<Pair> splitAnywhere(const Truss& truss, const std::string& text) {
    std::vector<Pair> pairs;
    for (std::size_t at = 1; at < text.size(); ++at) {
        const JointId a = findJoint(truss, text.substr(0, at));
        const JointId b = findJoint(truss, text.substr(at));
        if (a.valid() && b.valid()) {
            pairs.emplace_back(a, b);
        }
    }
    return pairs;
}

double sizeToBeginWith(const Truss& truss) {
    for (auto load = truss.loads.rbegin(); load != truss.loads.rend(); ++load) {
        if (const std::optional<Vec2> force = forceOf(*load); force && length(*force) > 0) {
            return length(*force);
        }
    }
    return 10;
}

Load withForce(Load load, JointId joint, const TypedVector& typed) {
    if (typed.angled) {
        load.what = AngledForce{joint, typed.first, typed.second};
    } else {
        load.what = JointForce{joint, typed.first, typed.second};
    }
    return load;
}

Load atJoint(Load load, JointId joint) {
    if (auto* force = std::get_if<JointForce>(&load.what)) {
        force->joint = joint;
    } else if (auto* angled = std::get_if<AngledForce>(&load.what)) {
        angled->joint = joint;
    }
    return load;
}

Outcome<double> readLoadNumber(const Truss& truss, const Load& load, const Cell& cell,
                               const std::string& text) {
    const bool angle =
        std::holds_alternative<AngledForce>(load.what) && cell.column == column::kLoadSecond;
    return angle ? readAngle(text) : readForce(text, truss.units.force);
}

Load withNumber(Load load, int column, double number) {
    const bool first = column == column::kLoadFirst;
    if (auto* force = std::get_if<JointForce>(&load.what)) {
        (first ? force->fx : force->fy) = number;
    } else if (auto* angled = std::get_if<AngledForce>(&load.what)) {
        (first ? angled->size : angled->angle) = number;
    } else if (auto* chord = std::get_if<ChordLoad>(&load.what)) {
        chord->perLength = number;
    }
    return load;
}

} // namespace

std::string trimmed(const std::string& text) {
    const char* blanks = " \t\r\n";
    const std::size_t from = text.find_first_not_of(blanks);
    if (from == std::string::npos) {
        return "";
    }
    return text.substr(from, text.find_last_not_of(blanks) - from + 1);
}

Outcome<Pair> readEnds(const Truss& truss, const std::string& typed) {
    const std::string text = trimmed(typed);
    if (const std::optional<Pair> pair = splitAtSign(truss, text)) {
        return *pair;
    }
    const std::vector<Pair> pairs = splitAnywhere(truss, text);
    if (pairs.size() == 1) {
        return pairs.front();
    }
    return Issue{IssueCode::UnknownName, "",
                 "“" + text + "” does not name two joints: write their labels as A–B."};
}

Outcome<Edit> readJointCell(const Truss& truss, const Cell& cell, const std::string& text) {
    const JointId joint{cell.row};
    const bool isNew = cell.row >= rowsOf(truss, CellTable::Joints);
    if (cell.column == column::kJointLabel) {
        return Edit(RenameJoint{joint, trimmed(text)});
    }
    const Outcome<double> number = readLength(text, truss.units.length);
    if (!number) {
        return number.issues();
    }
    Vec2 at = isNew ? Vec2{} : truss.joints[joint.at()].at;
    (cell.column == column::kJointX ? at.x : at.y) = number.value();
    return isNew ? Edit(AddJoint{at}) : Edit(MoveJoint{joint, at});
}

Outcome<Edit> readMemberCell(const Truss& truss, const Cell& cell, const std::string& text) {
    if (cell.column != column::kMemberEnds) {
        return readMemberProperty(truss, cell, text);
    }
    const Outcome<Pair> ends = readEnds(truss, text);
    if (!ends) {
        return ends.issues();
    }
    const auto [a, b] = ends.value();
    if (cell.row >= rowsOf(truss, CellTable::Members)) {
        return Edit(DrawMember{{a, {}}, {b, {}}});
    }
    Member member = truss.members[static_cast<std::size_t>(cell.row)];
    member.a = a;
    member.b = b;
    return Edit(SetMember{MemberId{cell.row}, member});
}

Outcome<Edit> readSupportCell(const Truss& truss, const Cell& cell, const std::string& text) {
    if (cell.column == column::kSupportSettle) {
        return readSettlement(truss, cell, text);
    }
    if (cell.column == column::kSupportDirection) {
        const Outcome<double> angle = readAngle(text);
        if (!angle) {
            return angle.issues();
        }
        Support support = truss.supports[static_cast<std::size_t>(cell.row)];
        support.reaction = angle.value();
        return Edit(ChangeSupport{SupportId{cell.row}, support});
    }
    const Outcome<JointId> joint = readJoint(truss, text);
    if (!joint) {
        return joint.issues();
    }
    if (cell.row >= rowsOf(truss, CellTable::Supports)) {
        return Edit(SetSupport{joint.value(), SupportKind::Pin, 90});
    }
    Support support = truss.supports[static_cast<std::size_t>(cell.row)];
    support.joint = joint.value();
    return Edit(ChangeSupport{SupportId{cell.row}, support});
}

Outcome<Edit> readLoadCell(const Truss& truss, const Cell& cell, const std::string& text) {
    const bool isNew = cell.row >= rowsOf(truss, CellTable::Loads);
    if (cell.column == column::kLoadJoint) {
        const Outcome<JointId> joint = readJoint(truss, text);
        if (!joint) {
            return joint.issues();
        }
        if (isNew) {
            Load load;
            load.what = JointForce{joint.value(), 0, -sizeToBeginWith(truss)};
            return Edit(AddLoad{load});
        }
        const Load& old = truss.loads[static_cast<std::size_t>(cell.row)];
        return Edit(SetLoad{LoadId{cell.row}, atJoint(old, joint.value())});
    }
    const Load& old = truss.loads[static_cast<std::size_t>(cell.row)];
    if (cell.column == column::kLoadCase) {
        Load load = old;
        const std::string name = trimmed(text);
        load.caseId = name == kDefaultCase ? "" : name;
        return Edit(SetLoad{LoadId{cell.row}, load});
    }
    const Outcome<double> number = readLoadNumber(truss, old, cell, text);
    if (number) {
        return Edit(SetLoad{LoadId{cell.row}, withNumber(old, cell.column, number.value())});
    }
    // "5 @ 30°" or "3, -4" in either cell gives the whole force.
    const Outcome<TypedVector> whole = readForceVector(text, truss.units.force);
    if (!whole || !jointOf(old).valid()) {
        return number.issues();
    }
    return Edit(SetLoad{LoadId{cell.row}, withForce(old, jointOf(old), whole.value())});
}

} // namespace gusset
