#include "app/state/places.hpp"

#include "app/state/camera.hpp"

#include <utility>

namespace gusset {

namespace {

BoardPlace placeOf(const View& view) { return {view.camera, view.fitted}; }

// The camera keeps the size and the covers of the page, which may have changed meanwhile.
void bringBack(AppState& state, const BoardPlace& place) {
    View& view = state.view;
    if (place.fitted) {
        fit(state);
        return;
    }
    view.camera.centre = place.camera.centre;
    view.camera.scale = place.camera.scale;
    view.fitted = false;
    view.gridStep = gridStepFor(view.camera);
}

} // namespace

void fit(AppState& state) {
    View& view = state.view;
    view.camera = fitTo(view.camera, boardExtent(state.truss));
    view.gridStep = gridStepFor(view.camera);
    view.fitted = true;
}

void read(AppState& state, bool on) {
    if (on == state.notebook.reading) {
        return;
    }
    state.menu = {};
    state.notebook.reading = on;
    if (on) {
        state.beforeReading = placeOf(state.view);
        fit(state);
    } else if (state.beforeReading) {
        bringBack(state, *std::exchange(state.beforeReading, std::nullopt));
    }
}

void leaveWorking(AppState& state) {
    state.notebook.open = state.notebook.beforeWorking.open;
    state.notebook.tab = state.notebook.beforeWorking.tab;
}

void forgetPlaces(AppState& state) {
    if (state.beforeReading) {
        state.beforeReading->fitted = true;
    }
}

} // namespace gusset
