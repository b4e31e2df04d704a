#include "workshop/load_differences.hpp"

#include "core/number.hpp"
#include "design/sizing/stock.hpp"
#include "phrases/design/compared.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

namespace gusset {

namespace {

constexpr double kSameForce = 1e-9;   // of the greatest
constexpr std::size_t kLoadsTold = 3; // loads of a case that are told one by one
constexpr int kFigures = 9;           // in which loads are alike

// Case and joint, and what the joint gets.
using JointLoads = std::map<std::pair<std::string, int>, Vec2>;

std::string caseOfLoad(const Load& load) { return std::string(caseNameOf(load.caseId)); }

class LoadComparing {
public:
    LoadComparing(const Writer& writer, const Truss& second, const Matched& matched)
        : writer_(writer), first_(writer.truss), second_(second), matched_(matched) {}

    std::vector<std::string> lines() {
        compareLoads();
        return std::move(lines_);
    }

private:
    template <PartName... Names>
    void tell(Phrase<Names...> says, const PartsOf<Words, Names...>& parts) {
        lines_.push_back(sayPlain(writer_, says, parts));
    }

    std::string number(double value) const {
        return formatMeasured(value, first_.classSettings.decimalSign);
    }

    // By the joints of the first; those of the second alone are counted on from them.
    JointLoads loadsOf(const Truss& truss, bool isSecond) const {
        const std::vector<JointId>& back = matched_.back;
        JointLoads all;
        for (const Load& load : truss.loads) {
            if (const std::optional<Vec2> force = forceOf(load)) {
                const JointId joint = jointOf(load);
                const int own = joint.index + static_cast<int>(matched_.joints.size());
                const int key = !isSecond                  ? joint.index
                                : back[joint.at()].valid() ? back[joint.at()].index
                                                           : own;
                Vec2& sum = all[{caseOfLoad(load), key}];
                sum = sum + *force;
            }
        }
        return all;
    }

    std::string jointName(int key) const {
        const int own = static_cast<int>(matched_.joints.size());
        return key < own ? first_.joints[static_cast<std::size_t>(key)].label
                         : second_.joints[static_cast<std::size_t>(key - own)].label;
    }

    void compareLoads() {
        const JointLoads before = loadsOf(first_, false);
        const JointLoads after = loadsOf(second_, true);
        double greatest = 0;
        std::set<std::pair<std::string, int>> keys;
        for (const JointLoads* loads : {&before, &after}) {
            for (const auto& [key, force] : *loads) {
                keys.insert(key);
                greatest = std::max(greatest, length(force));
            }
        }
        const auto of = [](const JointLoads& loads, const std::pair<std::string, int>& key) {
            const auto it = loads.find(key);
            return it == loads.end() ? Vec2{} : it->second;
        };
        std::map<std::string, std::vector<int>> changed;
        for (const auto& key : keys) {
            if (length(of(before, key) - of(after, key)) > kSameForce * greatest) {
                changed[key.first].push_back(key.second);
            }
        }
        for (const auto& one : changed) { // clang 14: a binding can't be captured
            const std::string& name = one.first;
            tellLoads(name, one.second, [&](int joint) {
                return std::pair(of(before, {name, joint}), of(after, {name, joint}));
            });
        }
        compareOtherLoads();
    }

    template <class Forces>
    void tellLoads(const std::string& name, const std::vector<int>& joints, const Forces& forces) {
        if (joints.size() > kLoadsTold) {
            std::vector<std::string> names;
            for (const int joint : joints) {
                names.push_back(jointName(joint));
            }
            tell(phrase::kLoadsOther, {{"case", name}, {"names", listed(writer_, names)}});
            return;
        }
        for (const int joint : joints) {
            const auto [was, is] = forces(joint);
            tell(phrase::kLoadOther, {{"joint", jointName(joint)},
                                      {"case", name},
                                      {"right", number(was.x)},
                                      {"up", number(was.y)},
                                      {"otherRight", number(is.x)},
                                      {"otherUp", number(is.y)}});
        }
    }

    static std::map<std::string, std::vector<std::string>> spreadOf(const Truss& truss) {
        std::map<std::string, std::vector<std::string>> all;
        const auto label = [&](JointId joint) { return truss.joints[joint.at()].label; };
        for (const Load& load : truss.loads) {
            std::string text;
            if (const auto* chord = std::get_if<ChordLoad>(&load.what)) {
                for (const JointId joint : chord->chord) {
                    text += label(joint) + "\n";
                }
                text += significantNumber(chord->perLength, kFigures);
            } else if (const auto* on = std::get_if<MemberForce>(&load.what)) {
                text = label(on->from) + "\n" + label(on->to);
                for (const double value : {on->at, on->fx, on->fy}) {
                    text += "\n" + significantNumber(value, kFigures);
                }
            }
            if (!text.empty()) {
                all[caseOfLoad(load)].push_back(text);
            }
        }
        for (auto& [name, texts] : all) {
            std::sort(texts.begin(), texts.end());
        }
        return all;
    }

    void compareOtherLoads() {
        const auto before = spreadOf(first_);
        const auto after = spreadOf(second_);
        std::set<std::string> names;
        for (const auto* all : {&before, &after}) {
            for (const auto& [name, texts] : *all) {
                names.insert(name);
            }
        }
        for (const std::string& name : names) {
            const auto a = before.find(name);
            const auto b = after.find(name);
            if (a == before.end() || b == after.end() || a->second != b->second) {
                tell(phrase::kSpreadOther, {{"case", name}});
            }
        }
        if (hasOwnWeight(first_) != hasOwnWeight(second_)) {
            lines_.push_back(sayPlain(writer_, hasOwnWeight(first_) ? phrase::kWeightOfFirst
                                                                    : phrase::kWeightOfSecond));
        }
    }

    const Writer& writer_;
    const Truss& first_;
    const Truss& second_;
    const Matched& matched_;
    std::vector<std::string> lines_{};
};

} // namespace

std::vector<std::string> loadDifferences(const Writer& writer, const Truss& second,
                                         const Matched& matched) {
    return LoadComparing(writer, second, matched).lines();
}

} // namespace gusset
