#include "platform/platform.hpp"

#include "app/fields/field_key.hpp"

#include <emscripten.h>

#include <utility>

namespace gusset {

namespace {

// The browser calls plain C functions outside any frame; their events wait here for the next one.
// One page, one inbox.
std::vector<PlatformEvent>& inbox() {
    static std::vector<PlatformEvent> events;
    return events;
}

template <class Event>
void receive(Event event) {
    inbox().emplace_back(std::move(event));
}

} // namespace

std::vector<PlatformEvent> takeEvents() { return std::exchange(inbox(), {}); }

} // namespace gusset

// The linker's names for the ends of the section that has all sentences (engine/core/phrase).
extern "C" {
extern const char __start_sentences[];
extern const char __stop_sentences[];
void pageBringSentence(const char* english);

void gussetBringSentence(const char* english) {
    if (english >= __start_sentences && english < __stop_sentences) {
        pageBringSentence(english);
    }
}
}

// In: called by site/input.js, field.js, files.js and app.js.
extern "C" {

EMSCRIPTEN_KEEPALIVE void gussetPointer(int phase, int kind, double x, double y, int modifiers) {
    gusset::receive(gusset::PointerEvent{static_cast<gusset::PointerPhase>(phase),
                                         static_cast<gusset::PointerKind>(kind),
                                         {x, y},
                                         (modifiers & 1) != 0,
                                         (modifiers & 2) != 0,
                                         (modifiers & 4) != 0});
}

EMSCRIPTEN_KEEPALIVE void gussetWheel(double x, double y, double dx, double dy, int zooms) {
    gusset::receive(gusset::WheelEvent{{x, y}, dx, dy, zooms != 0});
}

EMSCRIPTEN_KEEPALIVE void gussetPinch(double fromAx, double fromAy, double fromBx, double fromBy,
                                      double toAx, double toAy, double toBx, double toBy,
                                      int begins) {
    gusset::receive(gusset::PinchEvent{
        {fromAx, fromAy}, {fromBx, fromBy}, {toAx, toAy}, {toBx, toBy}, begins != 0});
}

EMSCRIPTEN_KEEPALIVE void gussetKey(int key) {
    gusset::receive(gusset::KeyEvent{static_cast<gusset::Key>(key)});
}

EMSCRIPTEN_KEEPALIVE void gussetPanelKey(int key) {
    gusset::receive(gusset::PanelKeyEvent{static_cast<gusset::PanelKey>(key)});
}

EMSCRIPTEN_KEEPALIVE void gussetTyped(const char* text) {
    gusset::receive(gusset::TypedText{text});
}

EMSCRIPTEN_KEEPALIVE void gussetFieldTyped(const char* key, const char* text) {
    if (const auto field = gusset::fieldOf(key)) {
        gusset::receive(gusset::FieldTyped{*field, text});
    }
}

EMSCRIPTEN_KEEPALIVE void gussetFieldDone(const char* key, const char* text, int how) {
    if (const auto field = gusset::fieldOf(key)) {
        gusset::receive(gusset::FieldDone{*field, text, static_cast<gusset::FieldEnd>(how)});
    }
}

EMSCRIPTEN_KEEPALIVE void gussetOpened(const char* text, const char* file, int from) {
    gusset::receive(gusset::OpenedText{text, static_cast<gusset::OpenedFrom>(from), file});
}

EMSCRIPTEN_KEEPALIVE void gussetSaid(const char* text, int problem) {
    gusset::receive(gusset::Said{
        problem != 0 ? gusset::MessageKind::Problem : gusset::MessageKind::Info, text});
}

EMSCRIPTEN_KEEPALIVE void gussetViewport(double width, double height, double pixelRatio,
                                         double safeBottom, int preferences) {
    gusset::receive(gusset::Viewport{{width, height},
                                     pixelRatio,
                                     safeBottom,
                                     (preferences & 1) != 0,
                                     (preferences & 2) != 0,
                                     (preferences & 4) != 0,
                                     (preferences & 8) != 0});
}

} // extern "C"

// Out: methods of the object that app.js passes as `page`. Texts go as address and length,
// since a string_view need not be zero-terminated.
// clang-format off
EM_JS(void, pageShowField, (const char* key, const char* name, const char* text, double x, double y, double width, double height, int how), {
    Module['page'].showField({ key: UTF8ToString(key), name: UTF8ToString(name), text: UTF8ToString(text), numeric: !!(how & 1), goesOn: !!(how & 2), ofMember: !!(how & 4), sign: !!(how & 8), angle: !!(how & 16) }, x, y, width, height);
});
EM_JS(void, pageBringSentence, (const char* english), { Module['bringSentence'](english); });
EM_JS(void, pageHideField, (), { Module['page'].hideField(); });
EM_JS(void, pageShowCursor, (int cursor), { Module['page'].showCursor(cursor); });
EM_JS(void, pageSetTheme, (const char* theme, int length), {
    Module['page'].setTheme(UTF8ToString(theme, length));
});
EM_JS(void, pageCopyText, (const char* text, int length, const char* said, int saidLength), {
    Module['page'].copyText(UTF8ToString(text, length), UTF8ToString(said, saidLength));
});
// Byte for byte: as a JavaScript string it would lose a byte order mark.
EM_JS(void, pageSaveFile, (const char* name, int nameLength, const char* text, int length), {
    Module['page'].saveFile(UTF8ToString(name, nameLength), HEAPU8.slice(text, text + length));
});
EM_JS(void, pageSavePicture, (const char* name, int nameLength, const char* svg, int length), {
    Module['page'].savePicture(UTF8ToString(name, nameLength), UTF8ToString(svg, length));
});
EM_JS(int, pageCanShareLinks, (), { return Module['page'].canShareLinks() ? 1 : 0; });
EM_JS(void, pageShareLink, (const char* title, int titleLength, const char* link, int length), {
    Module['page'].shareLink(UTF8ToString(title, titleLength), UTF8ToString(link, length));
});
EM_JS(void, pageTextOpened, (const char* model, int length), { Module['page'].textOpened(UTF8ToString(model, length)); });
EM_JS(void, pageSetAddress, (const char* fragment, int length), { Module['page'].setAddress(UTF8ToString(fragment, length)); });
EM_JS(void, pageAddressIsBehind, (), { Module['page'].addressIsBehind(); });
EM_JS(int, pageStoreWork, (const char* text, int length), { return Module['page'].storeWork(UTF8ToString(text, length)) ? 1 : 0; });
EM_JS(void, pageSetText, (const char* html, int length, const char* summary, int summaryLength), {
    Module['page'].setPageText(UTF8ToString(html, length), UTF8ToString(summary, summaryLength));
});
EM_JS(void, pageShowText, (), { Module['page'].showPageText(); });
EM_JS(void, pageLeaveFor, (const char* folder, int folderLength, const char* link, int length), {
    Module['page'].leaveFor(UTF8ToString(folder, folderLength), UTF8ToString(link, length));
});
EM_JS(void, pageDrawGround, (double x, double y, double metre, int height, double lensX, double lensY, double radius, int dark), {
    Module['page'].drawGround(x, y, metre, height, lensX, lensY, radius, dark);
});
EM_JS(void, pageShowStart, (), { Module['page'].showStart(); });
EM_JS(void, pageLessonDone, (), { Module['page'].lessonDone(); });
EM_JS(void, pageDrawAgainAfter, (double seconds), { Module['page'].drawAgainAfter(seconds); });
EM_JS(void, pageAnnounce, (const char* text, int length), { Module['page'].announce(UTF8ToString(text, length)); });
EM_JS(int, pageRunWidth, (const char* run, int length, double size, int look), {
    return Module['page'].runWidth(UTF8ToString(run, length), { size, strong: !!(look & 1), italic: !!(look & 2) });
});
EM_JS(void, pageDrawRun, (const char* run, int length, double size, int look, int width, int height, int baseline, unsigned char* ink), {
    const into = HEAPU8.subarray(ink, ink + width * height);
    Module['page'].drawRun(UTF8ToString(run, length), { size, strong: !!(look & 1), italic: !!(look & 2) }, { width, height, baseline }, into);
});
// clang-format on

namespace gusset {

namespace {

int sizeOf(std::string_view text) { return static_cast<int>(text.size()); }

} // namespace

void showField(const FieldPlace& field) {
    const std::string key = keyOf(field.field);
    pageShowField(key.c_str(), field.name.c_str(), field.text.c_str(), field.rect.at.x,
                  field.rect.at.y, field.rect.size.x, field.rect.size.y,
                  (field.numeric ? 1 : 0) | (field.goesOn ? 2 : 0) | (field.ofMember ? 4 : 0) |
                      (field.keys.sign ? 8 : 0) | (field.keys.angle ? 16 : 0));
}

void hideField() { pageHideField(); }
void showCursor(Cursor cursor) { pageShowCursor(static_cast<int>(cursor)); }

void setPageTheme(std::string_view theme) { pageSetTheme(theme.data(), sizeOf(theme)); }

void copyText(std::string_view text, std::string_view saidWhenDone) {
    pageCopyText(text.data(), sizeOf(text), saidWhenDone.data(), sizeOf(saidWhenDone));
}

void saveFile(std::string_view name, std::string_view text) {
    pageSaveFile(name.data(), sizeOf(name), text.data(), sizeOf(text));
}

void savePicture(std::string_view name, std::string_view svg) {
    pageSavePicture(name.data(), sizeOf(name), svg.data(), sizeOf(svg));
}

bool canShareLinks() { return pageCanShareLinks() != 0; }

void shareLink(std::string_view title, std::string_view link) {
    pageShareLink(title.data(), sizeOf(title), link.data(), sizeOf(link));
}

void textOpened(std::string_view model) { pageTextOpened(model.data(), sizeOf(model)); }
void setAddress(std::string_view fragment) { pageSetAddress(fragment.data(), sizeOf(fragment)); }
void addressIsBehind() { pageAddressIsBehind(); }

bool storeWork(std::string_view text) { return pageStoreWork(text.data(), sizeOf(text)) != 0; }

RunPicture drawRun(std::string_view run, const RunLook& look, const RunPaper& paper) {
    const int face = (look.strong ? 1 : 0) | (look.italic ? 2 : 0);
    RunPicture picture;
    picture.width = pageRunWidth(run.data(), sizeOf(run), look.size, face);
    picture.height = paper.height;
    picture.ink.resize(static_cast<std::size_t>(picture.width) *
                       static_cast<std::size_t>(picture.height));
    pageDrawRun(run.data(), sizeOf(run), look.size, face, picture.width, picture.height,
                paper.baseline, picture.ink.data());
    return picture;
}

void drawGround(const GroundPane& pane) {
    pageDrawGround(pane.origin.x, pane.origin.y, pane.metre, pane.height, pane.lens.x, pane.lens.y,
                   pane.radius, pane.dark ? 1 : 0);
}

void setPageText(std::string_view html, std::string_view summary) {
    pageSetText(html.data(), sizeOf(html), summary.data(), sizeOf(summary));
}

void showPageText() { pageShowText(); }
void leaveFor(std::string_view folder, std::string_view link) {
    pageLeaveFor(folder.data(), sizeOf(folder), link.data(), sizeOf(link));
}
void showStart() { pageShowStart(); }
void lessonDone() { pageLessonDone(); }
void drawAgainAfter(double seconds) { pageDrawAgainAfter(seconds); }
void announce(std::string_view text) { pageAnnounce(text.data(), sizeOf(text)); }

} // namespace gusset
