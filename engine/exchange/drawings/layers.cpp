#include "exchange/drawings/layers.hpp"

#include "model/quantity/quantity_reader.hpp"
#include "model/validate/characters.hpp"
#include "phrases/faults/drawings.hpp"
#include "phrases/faults/reading.hpp"

#include <algorithm>

namespace gusset {

std::size_t Layers::numberOf(std::string_view layer) {
    const auto [found, isNew] = numbers_.try_emplace(lowered(layer), layers_.size());
    if (isNew) {
        layers_.push_back({std::string(layer), false, false, 0});
    }
    return found->second;
}

void Layers::add(std::string_view layer, DrawnLine line) {
    lines_.push_back({line, numberOf(layer)});
    ++layers_[lines_.back().layer].lines;
}

void Layers::mark(std::string_view layer, Vec2 at) { marks_.push_back({at, numberOf(layer)}); }

void Layers::hide(std::string_view layer) { layers_[numberOf(layer)].isHidden = true; }

void Layers::note(const Layer& layer, Issues& notes) const {
    const Statement place =
        statement(phrase::kPlaceLayer, {{"layer", Statement(spelled(layer.name))}});
    const bool isOnlyOne = layers_.size() == 1;
    if (layer.lines > 0 && !(isOnlyOne && layer.isChosen)) {
        const auto says = layer.isChosen   ? phrase::kLayerRead
                          : layer.isHidden ? phrase::kLayerHidden
                                           : phrase::kLayerNotChosen;
        notes.push_back({IssueCode::NotComputed, place, statement(says, {{"n", layer.lines}})});
    }
}

Issues Layers::choose(const std::vector<std::string>& names, LinesFound& found) {
    Issues faults;
    for (Layer& layer : layers_) {
        layer.isChosen = names.empty() && !layer.isHidden;
    }
    std::string all;
    for (const Layer& layer : layers_) {
        all += (all.empty() ? "" : ", ") + spelled(layer.name);
    }
    for (const std::string& name : names) {
        const auto known = numbers_.find(lowered(name));
        if (known == numbers_.end()) {
            faults.push_back({IssueCode::UnknownName, phrase::kPlaceFile,
                              statement(phrase::kNoSuchLayer,
                                        {{"layer", Statement(spelled(name))}, {"layers", all}})});
        } else {
            layers_[known->second].isChosen = true;
        }
    }
    for (const Line& each : lines_) {
        if (layers_[each.layer].isChosen) {
            found.lines.push_back(each.line);
        }
    }
    for (const Mark& each : marks_) {
        if (layers_[each.layer].isChosen) {
            found.marks.push_back(each.at);
        }
    }
    for (const Layer& layer : layers_) {
        note(layer, found.notes);
    }
    return faults;
}

} // namespace gusset
