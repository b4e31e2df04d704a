// The program as the page's scripts see it: start, frame, leave. Everything else comes in through
// platform/platform_web.cpp and is handled in page.cpp.

#include "app/page/ground.hpp"
#include "app/page/sheet_request.hpp"
#include "app/page/starter.hpp"
#include "app/state/session.hpp"
#include "app/state/update.hpp"
#include "board_picture.hpp"
#include "exchange/files/model_file.hpp"
#include "page.hpp"
#include "test_hook.hpp"

#include <emscripten/emscripten.h>
#include <emscripten/html5.h>
#include <imgui.h>
#include <imgui_impl_opengl3.h>

#include <algorithm>
#include <cstdlib>
#include <memory>

namespace {

bool makeContextCurrent() {
    EmscriptenWebGLContextAttributes attributes;
    emscripten_webgl_init_context_attributes(&attributes);
    attributes.majorVersion = 2;
    attributes.alpha = false; // the paper is opaque
    attributes.depth = false;
    attributes.antialias = false; // the shaders smooth their own edges
    const auto context = emscripten_webgl_create_context("#board", &attributes);
    return context > 0 &&
           emscripten_webgl_make_context_current(context) == EMSCRIPTEN_RESULT_SUCCESS;
}

void startImGui() {
    ImGui::CreateContext();
    ImGuiIO& io = ImGui::GetIO();
    io.IniFilename = nullptr; // there is no file system
    io.LogFilename = nullptr;
    io.ConfigFlags |= ImGuiConfigFlags_NavEnableKeyboard;
    io.ConfigInputTextCursorBlink = false; // nothing is redrawn while nothing changes
    io.ConfigWindowsMoveFromTitleBarOnly = true;
    ImGui_ImplOpenGL3_Init("#version 300 es");
}

} // namespace

extern "C" {

// `newer` and `older`: the two copies of the work in local storage, or empty. `failures`: how often
// in a row the program has failed on this work before this start. The scripts pass the page back
// with every call, and it lives as long as they do.
EMSCRIPTEN_KEEPALIVE gusset::Page* gussetStart(const char* address, const char* newer,
                                               const char* older, int failures) {
    auto page = std::make_unique<gusset::Page>();
    page->address = address;
    page->canShareLinks = gusset::canShareLinks();
    if (failures == 0) {
        gusset::putFirstBoard(*page, newer, older);
    } else {
        constexpr int kWays = static_cast<int>(gusset::Return::Empty) + 1;
        const auto how = static_cast<gusset::Return>(std::min(failures, kWays) - 1);
        gusset::putBoardBack(*page, newer, older, how);
    }
    if (makeContextCurrent()) {
        startImGui();
        page->renderer.emplace(gusset::drawGround);
    }
    return page.release();
}

// Before the first frame, if the page is to be in another language than English.
EMSCRIPTEN_KEEPALIVE void gussetSpeak(gusset::Page* page, const char* language) {
    gusset::speak(*page, language);
}

// A page that only examines what is stored: it draws nothing, and a failure in it harms no other
// page.
EMSCRIPTEN_KEEPALIVE gusset::Page* gussetReader() {
    return std::make_unique<gusset::Page>().release();
}

EMSCRIPTEN_KEEPALIVE int gussetDraws(const gusset::Page* page) { return page->renderer ? 1 : 0; }

// How many more frames the page wants.
EMSCRIPTEN_KEEPALIVE int gussetFrame(gusset::Page* page, int width, int height) {
    gusset::runFrame(*page, {width, height, page->viewport.pixelRatio},
                     emscripten_get_now() / 1000);
    return page->framesWanted;
}

// As if for good: frames go on without drawing, for the page's own tables.
EMSCRIPTEN_KEEPALIVE void gussetContextLost(gusset::Page* page) { page->renderer.reset(); }

EMSCRIPTEN_KEEPALIVE void gussetContextRestored(gusset::Page* page) {
    if (ImGui::GetCurrentContext()) {
        page->renderer.emplace(gusset::drawGround);
        ImGui_ImplOpenGL3_DestroyDeviceObjects();
        ImGui_ImplOpenGL3_CreateDeviceObjects();
        page->screen.forget();
    }
}

// What the dialog of the photograph needs (app/page/ground). Valid until the next call.
EMSCRIPTEN_KEEPALIVE const char* gussetGroundPlace(gusset::Page* page, const char* typed) {
    page->said = gusset::groundPlace(page->state, typed);
    return page->said.c_str();
}

// Two corners of the box that is to be seen, metres; all zero: the board stays where it is.
EMSCRIPTEN_KEEPALIVE void gussetGround(gusset::Page* page, int ground, double lowX, double lowY,
                                       double highX, double highY) {
    gusset::showGround(page->state, ground, {{lowX, lowY}, {highX, highY}});
}

EMSCRIPTEN_KEEPALIVE void gussetWorkingInPageText(gusset::Page* page, int wanted) {
    page->workingInPageText = wanted != 0;
}

EMSCRIPTEN_KEEPALIVE void gussetLeave(gusset::Page* page) { gusset::storeBeforeLeaving(*page); }

EMSCRIPTEN_KEEPALIVE int gussetTakeAddress(gusset::Page* page, const char* link) {
    return gusset::takeLinkOfBoard(page->state, link) ? 1 : 0;
}

// Valid until the next call.
EMSCRIPTEN_KEEPALIVE const char* gussetAddress(gusset::Page* page, const char* current) {
    page->said = gusset::addressFor(*page, current);
    return page->said.c_str();
}

// The board's truss as a document for paper, its tables as CSV, and the loads that it may be under
// (app/page/sheet_request). Valid until the next call.
EMSCRIPTEN_KEEPALIVE const char* gussetSheet(gusset::Page* page, const char* wish, int withLink,
                                             const char* style, const char* typeface) {
    page->said = gusset::sheetOf(page->state, wish, withLink != 0 ? page->address : std::string{},
                                 {style, typeface});
    return page->said.c_str();
}

EMSCRIPTEN_KEEPALIVE const char* gussetSheetTables(gusset::Page* page, const char* wish) {
    page->said = gusset::sheetTablesOf(page->state, wish);
    return page->said.c_str();
}

EMSCRIPTEN_KEEPALIVE const char* gussetSheetLoads(gusset::Page* page) {
    page->said = gusset::sheetLoadsOf(page->state);
    return page->said.c_str();
}

EMSCRIPTEN_KEEPALIVE int gussetKeysInPanel(const gusset::Page* page) {
    return page->panelKeys.inPanel() ? 1 : 0;
}

// Whether this copy of the work is intact.
EMSCRIPTEN_KEEPALIVE int gussetReads(const char* saved) {
    return gusset::readSession(saved) ? 1 : 0;
}

// What the start page shows and asks for (app/page/starter); each text is valid until the next
// call.
EMSCRIPTEN_KEEPALIVE const char* gussetStarterForms(gusset::Page* page) {
    page->said = gusset::starterForms(page->state);
    return page->said.c_str();
}

// The model as JSON, or the sentence that says why there is none.
EMSCRIPTEN_KEEPALIVE const char* gussetStarter(gusset::Page* page, const char* typed) {
    const gusset::Outcome<gusset::Truss> truss = gusset::starterOf(page->state, typed);
    page->said = truss ? gusset::writeModel(truss.value(), gusset::Layout::Compact)
                       : gusset::said(*page->state.book, truss.issues().front().says);
    return page->said.c_str();
}

EMSCRIPTEN_KEEPALIVE const char* gussetStarterShares(gusset::Page* page, const char* typed) {
    page->said = gusset::starterShares(page->state, typed);
    return page->said.c_str();
}

EMSCRIPTEN_KEEPALIVE const char* gussetOutline(gusset::Page* page) {
    page->said = gusset::outlineOf(page->state);
    return page->said.c_str();
}

EMSCRIPTEN_KEEPALIVE const char* gussetEmptyBoard(gusset::Page* page) {
    page->said = gusset::writeModel(gusset::emptyBoard(page->state), gusset::Layout::Compact);
    return page->said.c_str();
}

EMSCRIPTEN_KEEPALIVE const char* gussetBoard(gusset::Page* page) {
    page->said = gusset::writeModel(page->state.committed, gusset::Layout::Compact);
    return page->said.c_str();
}

// Saved work under another title, or empty.
EMSCRIPTEN_KEEPALIVE const char* gussetRetitled(gusset::Page* page, const char* saved,
                                                const char* title) {
    page->said = gusset::retitled(saved, title);
    return page->said.c_str();
}

// Saved work or a model as a small SVG in the colours of this palette, or empty; valid until the
// next call.
EMSCRIPTEN_KEEPALIVE const char* gussetSmallPicture(gusset::Page* page, const char* text,
                                                    int palette) {
    constexpr int kLast = static_cast<int>(gusset::kPaletteNames.size()) - 1;
    const auto name =
        gusset::kPaletteNames[static_cast<std::size_t>(std::clamp(palette, 0, kLast))];
    page->said = gusset::smallPicture(name, text);
    return page->said.c_str();
}

// Called when the scripts have no memory left to pass their texts.
EMSCRIPTEN_KEEPALIVE void gussetAbort() { std::abort(); }

// For tests of what the page does when the program crashes: it aborts in the frame that first
// derives from a model with this text in its JSON.
EMSCRIPTEN_KEEPALIVE void gussetFailOn(gusset::Page* page, const char* text) { page->fatal = text; }

// What a test may know, as JSON; valid until the next call. Item logging starts with the first
// call.
EMSCRIPTEN_KEEPALIVE const char* gussetObserve(gusset::Page* page) {
    return gusset::observe(*page);
}

} // extern "C"
