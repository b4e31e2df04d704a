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

PagePlace placeOf(const View& view, const NotebookState& now) {
    return {placeOf(view), {now.open, now.tab}, now.width,        now.sheet,
            now.results,   now.working,         now.wholeWorking, now.step};
}

// A step reached while presenting is kept, unless another page was being read before.
void bringBack(NotebookState& now, const PagePlace& before) {
    now.open = before.leaf.open;
    now.tab = before.leaf.tab;
    now.width = before.width;
    now.sheet = before.sheet;
    now.results = before.results;
    now.wholeWorking = before.wholeWorking;
    if (now.working != before.working) {
        now.working = before.working;
        now.step = before.step;
    }
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

void present(AppState& state, bool on) {
    if (on == state.view.presenting) {
        return;
    }
    read(state, false);
    state.view.presenting = on;
    if (on) {
        state.beforePresenting = placeOf(state.view, state.notebook);
    } else if (state.beforePresenting) {
        const PagePlace place = *std::exchange(state.beforePresenting, std::nullopt);
        bringBack(state, place.board);
        bringBack(state.notebook, place);
    }
}

void forgetPlaces(AppState& state) {
    if (state.beforeReading) {
        state.beforeReading->fitted = true;
    }
    if (state.beforePresenting) {
        state.beforePresenting->board.fitted = true;
    }
}

} // namespace gusset
