#include "test_hook.hpp"

#include "canvas/camera.hpp"
#include "exchange/json.hpp"
#include "report/number.hpp"

#include <emscripten/emmalloc.h>
#include <malloc.h> // struct mallinfo

#include <cstdio>
#include <string_view>

namespace gusset {

namespace {

std::string quoted(std::string_view text) {
    std::string json = "\"";
    for (const char c : text) {
        if (c == '"' || c == '\\') {
            json += '\\';
            json += c;
        } else if (static_cast<unsigned char>(c) < 0x20) {
            char code[8];
            std::snprintf(code, sizeof code, "\\u%04x", static_cast<unsigned>(c));
            json += code;
        } else {
            json += c;
        }
    }
    return json + '"';
}

std::string field(std::string_view name, std::string_view json) {
    return quoted(name) + ":" + std::string(json);
}

std::string box(Vec2 at, Vec2 size) {
    return field("x", shortestNumber(at.x)) + "," + field("y", shortestNumber(at.y)) + "," +
           field("width", shortestNumber(size.x)) + "," + field("height", shortestNumber(size.y));
}

std::string itemsJson(const Page& page) {
    const double ratio = page.viewport.pixelRatio;
    std::string json;
    for (const LoggedItem& item : page.items->items) {
        const Vec2 low{item.low.x / ratio, item.low.y / ratio};
        const Vec2 high{item.high.x / ratio, item.high.y / ratio};
        json += (json.empty() ? "" : ",") + ("{" + field("label", quoted(item.label))) + "," +
                field("window", quoted(item.window)) + "," + box(low, high - low) + "}";
    }
    return "[" + json + "]";
}

std::string jointsJson(const AppState& state) {
    std::string json;
    for (const Joint& joint : state.truss.joints) {
        json += (json.empty() ? "" : ",") + ("{" + field("label", quoted(joint.label))) + "," +
                box(toPixel(state.view.camera, joint.at), {0, 0}) + "}";
    }
    return "[" + json + "]";
}

std::string figuresJson(const AppState& state) {
    std::string json;
    for (const Figure& figure : state.figures) {
        json += (json.empty() ? "" : ",") + ("{" + field("key", quoted(figure.key))) + "," +
                field("text", quoted(figure.text)) + "," + box(figure.at, {0, 0}) + "}";
    }
    return "[" + json + "]";
}

std::string selectionJson(const Things& things) {
    return "{" + field("joints", std::to_string(things.joints.size())) + "," +
           field("members", std::to_string(things.members.size())) + "}";
}

// Of the working that is at work; 0 when none is.
std::string shareOfWorking(const Jobs& jobs) {
    return shortestNumber(jobs.working.made ? jobs.working.job.share() : 0);
}

} // namespace

const char* observe(Page& page) {
    if (!page.items) {
        page.items = std::make_unique<ItemLog>();
        if (page.renderer) {
            watchItems(*page.items);
        }
    }
    const AppState& state = page.state;
    page.observed = "{" + field("frames", std::to_string(page.framesDrawn)) + "," +
                    field("revision", std::to_string(state.revision)) + "," +
                    field("bytes", std::to_string(emmalloc_mallinfo().uordblks)) + "," +
                    field("solved", page.derived.solution.solved ? "true" : "false") + "," +
                    field("solvedRevision", std::to_string(page.derived.revision)) + "," +
                    field("working", isShown(state, page.derived.working) ? "true" : "false") +
                    "," + field("workingShare", shareOfWorking(page.derived.jobs)) + "," +
                    field("tool", std::to_string(static_cast<int>(state.tool))) + "," +
                    field("field", quoted(state.field.key)) + "," +
                    field("focus", quoted(focusedLabel(*page.items))) + "," +
                    field("message", quoted(state.message.text)) + "," +
                    field("origin", "{" + box(toPixel(state.view.camera, {0, 0}), {0, 0}) + "}") +
                    "," + field("scale", shortestNumber(state.view.camera.scale)) + "," +
                    field("figures", figuresJson(state)) + "," +
                    field("selected", selectionJson(state.selection)) + "," +
                    field("menu", state.menu.open ? "true" : "false") + "," +
                    field("step", std::to_string(state.notebook.step)) + "," +
                    field("loupe", page.loupeShown ? "true" : "false") + "," +
                    field("undo", quoted(state.history.undoLabel())) + "," +
                    field("items", itemsJson(page)) + "," + field("joints", jointsJson(state)) +
                    "," + field("model", writeModel(state.truss, Layout::Compact)) + "}";
    return page.observed.c_str();
}

} // namespace gusset
