#pragma once
// What is written of joints, members, supports, loads and the rest, key by key, whether into a file
// or into the columns of a link. `Out` takes them: number, text, joint, path, yes (true) and nested
// (an object, which a function writes into a JsonText before its unknown keys).

#include "exchange/files/format_words.hpp"
#include "exchange/json/json_text.hpp"
#include "model/truss/fields.hpp"

namespace gusset {

template <class Out>
void putValue(Out& out, std::string_view key, bool always, double value) {
    if (always || value != 0) {
        out.number(key, value);
    }
}
template <class Out>
void putValue(Out& out, std::string_view key, bool, const std::optional<double>& value) {
    if (value) {
        out.number(key, *value);
    }
}
template <class Out>
void putValue(Out& out, std::string_view key, bool always, const std::string& value) {
    if (always || !value.empty()) {
        out.text(key, value);
    }
}
template <class Out>
void putValue(Out& out, std::string_view key, bool, JointId joint) {
    out.joint(key, joint);
}
template <class Out>
void putValue(Out& out, std::string_view key, bool, const std::vector<JointId>& path) {
    out.path(key, path);
}

template <class Out, class Table, class Thing>
void putFields(Out& out, const Table& table, const Thing& thing) {
    eachField(table, thing, [&](const auto& field, const auto& value) {
        putValue(out, field.key, field.presence != Presence::Usual, value);
    });
}

template <class Out, class Thing>
void putThing(Out& out, const Thing& thing) {
    putFields(out, kFields<Thing>, thing);
}

template <class Out>
void putThing(Out& out, const Support& support) {
    putFields(out, kFields<Support>, support);
    out.text("kind", wordOf(kSupportWords, support.kind));
    if (support.kind == SupportKind::Roller) {
        putFields(out, kRollerFields, support);
    } else if (support.settle != Vec2{} || !support.unknownSettle.empty()) {
        out.nested("settle", support.unknownSettle, [&](JsonText& text) {
            eachNumber(kPinSettleFields, support, [&](const auto& field, double value) {
                putValue(text, field.key, false, value);
            });
        });
    }
}

// One of the two components says what kind of load it is.
template <class Out, class Force>
void putForce(Out& out, const Force& force) {
    putFields(out, kFields<Force>, force);
    if (force.fx == 0 && force.fy == 0) {
        out.number("fy", 0);
    }
}
template <class Out>
void putThing(Out& out, const JointForce& force) {
    putForce(out, force);
}
template <class Out>
void putThing(Out& out, const MemberForce& force) {
    out.path("member", {force.from, force.to});
    putForce(out, force);
}
template <class Out>
void putThing(Out& out, const SelfWeight&) {
    out.yes("selfWeight");
}
template <class Out>
void putThing(Out& out, const Load& load) {
    std::visit([&](const auto& what) { putThing(out, what); }, load.what);
    putFields(out, kFields<Load>, load);
}

// All of a model but its version and the four lists that links hold in columns; units when they
// are not the default.
[[nodiscard]] std::string writeRest(const Truss&);

} // namespace gusset
