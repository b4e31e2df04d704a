#include "report/results/solution_text.hpp"

#include "core/tolerance.hpp"
#include "phrases/faults/faults.hpp"
#include "phrases/results/lists.hpp"
#include "phrases/results/mechanisms.hpp"
#include "phrases/results/trust.hpp"
#include "statics/stability/mechanism.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

namespace gusset {
namespace {

constexpr std::size_t kMostJoints = 5; // joints in one sentence

struct Scene {
    const PhraseBook& book;
    const Truss& truss;
    Structure structure;
    const Mechanism& mechanism;
};

// "C and D", "C, D, E, F, G and 4 more"
RichLine named(const Scene& scene, const std::vector<JointId>& joints) {
    std::vector<RichLine> names;
    for (const JointId joint : joints) {
        names.push_back(labelOf(scene.truss, joint));
    }
    if (names.size() <= kMostJoints + 1) {
        return listOf(scene.book, names);
    }
    RichLine list = names.front();
    for (std::size_t i = 1; i < kMostJoints; ++i) {
        list = say(scene.book, phrase::kListMore, {{"a", list}, {"b", names[i]}});
    }
    const std::string left = std::to_string(names.size() - kMostJoints);
    return say(scene.book, phrase::kListAndMore, {{"list", list}, {"n", left}});
}

RichLine wayOf(const PhraseBook& book, Vec2 velocity) {
    const double size = length(velocity);
    if (std::abs(velocity.y) <= kRigid * size) {
        return say(book, phrase::kWayHorizontal);
    }
    return say(book,
               std::abs(velocity.x) <= kRigid * size ? phrase::kWayVertical : phrase::kWaySloping);
}

// The only joint there; none if two are so close that either could be meant.
JointId jointAt(const Structure& structure, Vec2 place) {
    JointId found;
    for (std::size_t i = 0; i < structure.joints.size(); ++i) {
        if (length(structure.joints[i] - place) <= kRigid * structure.extent) {
            if (found.valid()) {
                return {};
            }
            found = JointId{static_cast<int>(i)};
        }
    }
    return found;
}

// "turn about joint A", "slide horizontally"
RichLine motionWords(const Scene& scene, const RigidMotion& motion) {
    if (!motion.turns) {
        return say(scene.book, phrase::kMotionSlide, {{"way", wayOf(scene.book, motion.velocity)}});
    }
    const JointId centre = jointAt(scene.structure, motion.centre);
    if (centre.valid()) {
        return say(scene.book, phrase::kMotionTurnJoint, {{"joint", labelOf(scene.truss, centre)}});
    }
    // The lines of action of all restraints on a rotating body meet at its centre.
    return say(scene.book, scene.structure.restraints.size() >= 2 ? phrase::kMotionTurnLines
                                                                  : phrase::kMotionTurn);
}

RichLine oneJointWords(const Scene& scene) {
    const JointId joint = scene.mechanism.moving.front();
    const RichLine name = labelOf(scene.truss, joint);
    const auto& bars = scene.structure.bars;
    const auto count = std::count_if(bars.begin(), bars.end(), [&](const Bar& bar) {
        return bar.a == joint.index || bar.b == joint.index;
    });
    if (count == 0) {
        return say(
            scene.book, phrase::kLooseJointMoves,
            {{"joint", name}, {"way", wayOf(scene.book, scene.mechanism.velocities[joint.at()])}});
    }
    return say(scene.book, count == 1 ? phrase::kHangingJoint : phrase::kJointInLine,
               {{"joint", name}});
}

RichLine partWords(const Scene& scene) {
    const RichLine joints = named(scene, scene.mechanism.moving);
    const std::optional<RigidMotion> motion =
        rigidMotionOf(scene.structure, scene.mechanism, scene.mechanism.moving);
    if (motion && motion->turns) {
        const JointId centre = jointAt(scene.structure, motion->centre);
        if (centre.valid()) {
            return say(scene.book, phrase::kPartTurns,
                       {{"joints", joints}, {"joint", labelOf(scene.truss, centre)}});
        }
    }
    if (motion && !motion->turns) {
        return say(scene.book, phrase::kPartSlides,
                   {{"joints", joints}, {"way", wayOf(scene.book, motion->velocity)}});
    }
    return say(scene.book, phrase::kPartMoves, {{"joints", joints}});
}

RichLine whatMoves(const Scene& scene) {
    std::vector<JointId> all;
    for (std::size_t i = 0; i < scene.structure.joints.size(); ++i) {
        all.push_back(JointId{static_cast<int>(i)});
    }
    const std::optional<RigidMotion> whole =
        all.size() > 1 ? rigidMotionOf(scene.structure, scene.mechanism, all) : std::nullopt;
    if (whole) {
        return say(scene.book,
                   scene.structure.restraints.empty() ? phrase::kUnsupportedMoves
                                                      : phrase::kWholeMoves,
                   {{"motion", motionWords(scene, *whole)}});
    }
    return scene.mechanism.moving.size() == 1 ? oneJointWords(scene) : partWords(scene);
}

RichLine supportWords(const Scene& scene, const Cure& cure) {
    const auto phrase = cure.pin              ? phrase::kCurePin
                        : cure.reaction == 90 ? phrase::kCureVertical
                                              : phrase::kCureHorizontal;
    return say(scene.book, phrase, {{"joint", labelOf(scene.truss, cure.support)}});
}

} // namespace

RichLine labelOf(const Truss& truss, JointId joint) {
    return plainLine(truss.joints[joint.at()].label);
}

std::string mechanismSentence(const Writer& writer, const Mechanism& mechanism) {
    const Scene scene{writer.book, writer.truss, structureOf(writer.truss), mechanism};
    const RichLine what = whatMoves(scene);
    const Cures& cures = mechanism.cures;
    if (!cures.member && !cures.support) {
        return sayPlain(writer, phrase::kMechanismAlone, {{"what", what}});
    }
    if (!cures.member) {
        return sayPlain(writer, phrase::kMechanismSupport,
                        {{"what", what}, {"support", supportWords(scene, *cures.support)}});
    }
    const RichLine a = labelOf(writer.truss, cures.member->a);
    const RichLine b = labelOf(writer.truss, cures.member->b);
    if (!cures.support) {
        return sayPlain(writer, phrase::kMechanismMember, {{"what", what}, {"a", a}, {"b", b}});
    }
    return sayPlain(
        writer, phrase::kMechanismEither,
        {{"what", what}, {"a", a}, {"b", b}, {"support", supportWords(scene, *cures.support)}});
}

std::vector<std::string> assumptionSentences(const PhraseBook& book,
                                             const std::vector<Assumption>& assumed) {
    std::vector<std::string> sentences;
    for (const Assumption assumption : assumed) {
        switch (assumption) {
        case Assumption::EqualStiffness:
            sentences.push_back(sayPlain(book, phrase::kAssumedEqual));
            break;
        }
    }
    return sentences;
}

std::string faultSentence(const PhraseBook& book, const Issue& fault) {
    std::string text = said(book, fault.says);
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') {
        text[0] = static_cast<char>(text[0] - 'a' + 'A');
    }
    return text.ends_with('?') || text.ends_with('.') ? text : text + ".";
}

std::string faultLine(const PhraseBook& book, const Issue& fault) {
    return fault.at.empty() ? said(book, fault.says)
                            : said(book, statement(phrase::kFaultAt,
                                                   {{"place", fault.at}, {"fault", fault.says}}));
}

std::string inexactSentence(const Writer& writer, const WhyInexact& why) {
    switch (why.reason) {
    case InexactReason::None:
        break;
    case InexactReason::Coordinates:
        return sayPlain(writer, phrase::kInexactCoordinates,
                        {{"joint", labelOf(writer.truss, why.joint)}});
    case InexactReason::Slope:
        return sayPlain(writer, phrase::kInexactSlope,
                        {{"joint", labelOf(writer.truss, why.joint)}});
    case InexactReason::Components:
        return sayPlain(writer, phrase::kInexactComponents, {{"n", why.load.at() + 1}});
    case InexactReason::TooLarge:
        return sayPlain(writer, phrase::kInexactTooLarge, {{"n", kLargestExact}});
    case InexactReason::Redundant:
        return sayPlain(writer, phrase::kInexactRedundant);
    case InexactReason::SetInMotion:
        return sayPlain(writer, phrase::kInexactMoves);
    }
    return {};
}

} // namespace gusset
