#pragma once
// What is written for joints, members, supports, loads and the rest, key by key, into a file or
// into the columns of a link. `Out` takes them: number, text, joint, path, yes (true) and nested
// (an object, which a function writes into a JsonText before its unknown keys).

#include "exchange/files/format_words.hpp"
#include "exchange/json/json_text.hpp"
#include "model/truss/fields.hpp"

namespace gusset {

template <class Out>
void putField(Out& out, const FieldValue& field) {
    const bool always = field.presence != Presence::Usual;
    if (field.number && (always || field.optional || *field.number != 0)) {
        out.number(field.key, *field.number);
    } else if (field.text && (always || !field.text->empty())) {
        out.text(field.key, *field.text);
    } else if (field.joint) {
        out.joint(field.key, *field.joint);
    } else if (field.path) {
        out.path(field.key, *field.path);
    }
}

template <class Out, class Table, class Thing>
void putFields(Out& out, const Table& table, const Thing& thing) {
    eachField(table, thing, [&](const FieldValue& field) { putField(out, field); });
}

template <class Out, class Thing>
void putThing(Out& out, const Thing& thing) {
    putFields(out, kFields<Thing>, thing);
}

// An object within a thing, with a table of its own.
template <class Out, class Inner>
void putInner(Out& out, std::string_view key, const Inner& inner) {
    out.nested(key, inner.unknown, [&](JsonText& text) {
        eachField(kFields<Inner>, inner, [&](const FieldValue& field) {
            if (field.number) {
                text.number(field.key, *field.number);
            }
        });
    });
}

template <class Out>
void putThing(Out& out, const Member& member) {
    putFields(out, kFields<Member>, member);
    if (member.factors != LengthFactors{}) {
        putInner(out, "K", member.factors);
    }
}

template <class Out>
void putThing(Out& out, const Support& support) {
    putFields(out, kFields<Support>, support);
    out.text("kind", wordOf(kSupportWords, support.kind));
    if (support.kind == SupportKind::Roller) {
        putFields(out, kRollerFields, support);
    } else if (support.settle != Vec2{} || !support.unknownSettle.empty()) {
        out.nested("settle", support.unknownSettle, [&](JsonText& text) {
            eachField(kPinSettleFields, support, [&](const FieldValue& field) {
                if (*field.number != 0) {
                    text.number(field.key, *field.number);
                }
            });
        });
    }
}

// One component has to be written even if both are zero: its key tells the kind of load.
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

// All of a model except its version and the four lists that links hold in columns; units only if
// they are not the default.
[[nodiscard]] std::string writeRest(const Truss&);

} // namespace gusset
