#include "support/trusses/loaded_truss.hpp"

#include "support/english.hpp"

#include "model/forms/forms.hpp"

namespace gusset::support {

void addLoadsOfEveryKind(Truss& truss, Random& random) {
    const auto anyJoint = [&] {
        return JointId{random.integer(0, static_cast<int>(truss.joints.size()) - 1)};
    };
    const auto add = [&](const auto& what) { truss.loads.push_back({what, {}, {}}); };
    for (int i = random.integer(0, 2); i > 0; --i) {
        add(JointForce{anyJoint(), 0, -random.decimal(1, 20, 2)});
    }
    if (random.oneIn(3)) { // unequal loads where the supports are
        for (const Support& support : truss.supports) {
            add(JointForce{support.joint, 0, -random.decimal(1, 20, 2)});
        }
    }
    if (random.oneIn(3)) {
        const Member& member = random.pick(truss.members);
        const double size = length(truss.joints[member.b.at()].at - truss.joints[member.a.at()].at);
        add(MemberForce{member.a, member.b, size / random.integer(2, 4),
                        random.oneIn(2) ? 3.0 : 0.0, -6});
    }
    if (random.oneIn(3)) {
        const Member& member = random.pick(truss.members);
        add(ChordLoad{{member.a, member.b}, -2});
    }
}

Truss usualForm(std::uint64_t seed) {
    Random random(seed);
    const auto choices = formChoices();
    const auto& choice =
        choices[static_cast<std::size_t>(random.integer(0, static_cast<int>(choices.size()) - 1))];
    FormSpec spec;
    spec.kind = choice.kind;
    spec.span = random.integer(4, 24);
    spec.rise = random.integer(1, 5);
    spec.panels = random.integer(choice.fewestPanels, choice.mostPanels);
    spec.panels -= choice.evenPanels ? spec.panels % 2 : 0;
    spec.loaded = random.oneIn(2) ? LoadedChord::Upper : LoadedChord::Lower;
    spec.load = random.oneIn(3) ? 0 : random.integer(1, 20);
    if (spec.kind == FormKind::CompoundFink) { // which needs a pitch below 45°
        spec.rise = std::min(spec.rise, spec.span / 3);
    }
    Truss truss = makeForm(englishPhrases(), spec).value();
    addLoadsOfEveryKind(truss, random);
    return truss;
}

} // namespace gusset::support
