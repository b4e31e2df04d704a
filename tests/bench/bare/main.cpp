// A minimal Dear ImGui page: one window, a pointer, the default font. Our page is measured against
// it (tests/bench/run), so keep it minimal.

#include <emscripten/html5.h>
#include <GLES3/gl3.h>
#include <imgui.h>
#include <imgui_impl_opengl3.h>

// Called once, when the canvas exists. Returns false without WebGL2.
extern "C" EMSCRIPTEN_KEEPALIVE bool bareStart() {
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
    return ImGui_ImplOpenGL3_Init("#version 300 es");
}

extern "C" EMSCRIPTEN_KEEPALIVE void barePointer(float x, float y, bool pressed) {
    ImGui::GetIO().AddMousePosEvent(x, y);
    ImGui::GetIO().AddMouseButtonEvent(ImGuiMouseButton_Left, pressed);
}

extern "C" EMSCRIPTEN_KEEPALIVE void bareFrame(int width, int height) {
    ImGui::GetIO().DisplaySize = {static_cast<float>(width), static_cast<float>(height)};
    ImGui::GetIO().DeltaTime = 1.0f / 60;
    ImGui_ImplOpenGL3_NewFrame();
    ImGui::NewFrame();
    ImGui::Begin("Bare");
    ImGui::TextUnformatted("A window");
    ImGui::Button("A button");
    ImGui::End();
    ImGui::Render();
    glViewport(0, 0, width, height);
    glClearColor(1, 1, 1, 1);
    glClear(GL_COLOR_BUFFER_BIT);
    ImGui_ImplOpenGL3_RenderDrawData(ImGui::GetDrawData());
}
