#include "test_hook.hpp"

#include "app/fields/field_key.hpp"
#include "app/state/camera.hpp"
#include "canvas/scene/lesson.hpp"
#include "exchange/files/model_file.hpp"
#include "exchange/json/json_text.hpp"

#include <emscripten/emmalloc.h>
#include <malloc.h> // struct mallinfo

#include <array>
#include <string_view>

namespace gusset {

namespace {

void number(JsonText& json, std::string_view key, double value) {
    json.key(key);
    json.number(value);
}

void truth(JsonText& json, std::string_view key, bool value) {
    json.key(key);
    json.boolean(value);
}

void place(JsonText& json, Vec2 at, Vec2 size = {}) {
    number(json, "x", at.x);
    number(json, "y", at.y);
    number(json, "width", size.x);
    number(json, "height", size.y);
}

template <class Things, class Write>
void list(JsonText& json, std::string_view key, const Things& things, Write write) {
    json.key(key);
    json.beginArray();
    for (const auto& thing : things) {
        json.beginObject();
        write(thing);
        json.endObject();
    }
    json.endArray();
}

void items(JsonText& json, const Page& page) {
    const double ratio = page.viewport.pixelRatio;
    list(json, "items", page.items->items, [&](const LoggedItem& item) {
        const Vec2 low{item.low.x / ratio, item.low.y / ratio};
        const Vec2 high{item.high.x / ratio, item.high.y / ratio};
        json.text("label", item.label);
        json.text("window", item.window);
        place(json, low, high - low);
    });
}

void drawn(JsonText& json, const AppState& state) {
    const Camera& camera = state.view.camera;
    json.key("origin");
    json.beginObject();
    place(json, toPixel(camera, {0, 0}));
    json.endObject();
    number(json, "scale", camera.scale);
    list(json, "figures", state.figures, [&](const Figure& figure) {
        json.text("key", keyOf(figure.opens));
        json.text("text", figure.text);
        place(json, figure.at);
    });
    list(json, "joints", state.truss.joints, [&](const Joint& joint) {
        json.text("label", joint.label);
        place(json, toPixel(camera, joint.at));
    });
}

void counts(JsonText& json, const Page& page) {
    const Jobs& jobs = page.derived.jobs;
    json.whole("frames", static_cast<long>(page.framesDrawn));
    json.whole("revision", static_cast<long>(page.state.revision));
    json.whole("bytes", static_cast<long>(emmalloc_mallinfo().uordblks));
    truth(json, "solved", page.derived.solution.solved);
    json.whole("solvedRevision", static_cast<long>(page.derived.revision));
    truth(json, "working", isShown(page.state, page.derived.working));
    // Progress of the working being made; 0 if there is none.
    number(json, "workingShare", jobs.working.made ? jobs.working.job.share() : 0);
}

std::string_view lessonName(const Page& page) {
    constexpr std::array<std::string_view, 8> kNames{"member", "triangle", "pin",    "roller",
                                                     "load",   "waits",    "forces", ""};
    const Lesson lesson =
        page.state.view.teaches ? lessonOf(page.state, page.derived) : Lesson::Done;
    return kNames[static_cast<std::size_t>(lesson)];
}

void inHand(JsonText& json, const Page& page) {
    const AppState& state = page.state;
    json.whole("tool", static_cast<long>(state.tool));
    json.text("field", state.field.id ? keyOf(*state.field.id) : "");
    json.text("focus", focusedLabel(*page.items));
    json.text("message", state.message.text);
    json.key("selected");
    json.beginObject();
    json.whole("joints", static_cast<long>(state.selection.joints.size()));
    json.whole("members", static_cast<long>(state.selection.members.size()));
    json.endObject();
    truth(json, "menu", state.menu.open);
    truth(json, "ground", state.view.ground != 0);
    json.text("lesson", lessonName(page));
    json.whole("step", state.notebook.step);
    truth(json, "loupe", page.loupeShown);
    json.text("undo", said(*state.book, state.history.undoName()));
}

} // namespace

const char* observe(Page& page) {
    if (!page.items) {
        page.items = std::make_unique<ItemLog>();
        if (page.renderer) {
            watchItems(*page.items);
        }
    }
    JsonText json(Layout::Compact);
    json.beginObject();
    counts(json, page);
    inHand(json, page);
    drawn(json, page.state);
    items(json, page);
    json.key("model");
    json.json(writeModel(page.state.truss, Layout::Compact));
    json.endObject();
    page.observed = json.take();
    return page.observed.c_str();
}

} // namespace gusset
