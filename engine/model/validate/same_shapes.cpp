// Names that look alike in letters of several alphabets: allowed, as the user who types them can't
// see the difference, but noted.

#include "model/validate/findings.hpp"
#include "model/validate/name_look.hpp"
#include "model/validate/validate.hpp"
#include "phrases/faults/suspicions.hpp"

#include <algorithm>
#include <unordered_map>

namespace gusset {

namespace {

template <class List, class NameOf>
void addOf(const List& list, const char* key, NameOf nameOf, Issues& notes) {
    const auto isForeign = [&](const auto& item) {
        const std::string& name = nameOf(item);
        return std::any_of(name.begin(), name.end(), [](char c) { return (c & 0x80) != 0; });
    };
    if (std::none_of(list.begin(), list.end(), isForeign)) {
        return;
    }
    std::unordered_map<std::string, std::size_t> firsts;
    for (std::size_t i = 0; i < list.size() && notes.size() < kMostIssues; ++i) {
        const std::string& name = nameOf(list[i]);
        const auto [first, isNew] = firsts.emplace(shapeOf(name), i);
        if (!isNew) {
            const std::string& other = nameOf(list[first->second]);
            notes.push_back(
                {IssueCode::Suspicious, placeOf(key, i) + ".id",
                 statement(
                     phrase::kOtherAlphabet,
                     {{"name", name}, {"other", other}, {"place", placeOf(key, first->second)}})});
        }
    }
}

} // namespace

Issues sameShapes(const Truss& truss) {
    Issues notes;
    const auto idOf = [](const auto& item) -> const std::string& { return item.id; };
    addOf(
        truss.joints, "joints", [](const Joint& it) -> const std::string& { return it.label; },
        notes);
    addOf(truss.materials, "materials", idOf, notes);
    addOf(truss.sections, "sections", idOf, notes);
    addOf(truss.combinations, "combinations", idOf, notes);
    addOf(truss.moving, "moving", idOf, notes);
    return notes;
}

} // namespace gusset
