#include <emscripten/html5.h>
#include <GLES3/gl3.h>
#include <imgui.h>

// Called once by the page when its canvas is in place. Returns false when there is no WebGL2.
extern "C" EMSCRIPTEN_KEEPALIVE bool gussetStart() {
    EmscriptenWebGLContextAttributes attributes;
    emscripten_webgl_init_context_attributes(&attributes);
    attributes.majorVersion = 2;
    const auto context = emscripten_webgl_create_context("#board", &attributes);
    if (context <= 0) {
        return false;
    }
    emscripten_webgl_make_context_current(context);
    ImGui::CreateContext();
    ImGui::GetIO().IniFilename = nullptr;
    glClearColor(0.97f, 0.96f, 0.93f, 1);
    glClear(GL_COLOR_BUFFER_BIT);
    return true;
}
