#pragma once
// A compiled pair of shaders and a stream of instances drawn with it. Handles of one GL context:
// after the context was lost they mean nothing and are made anew.

#include "render/shaders.hpp"

#include <GLES3/gl3.h>

#include <cstddef>
#include <span>

namespace gusset {

// One attribute of an instance: so many numbers of `type` at `offset`; bytes arrive as 0 to 1.
struct InstanceField {
    int count = 1;
    GLenum type = GL_FLOAT;
    std::size_t offset = 0;
};

struct Program {
    GLuint name = 0;

    [[nodiscard]] GLint uniform(const char* uniformName) const {
        return glGetUniformLocation(name, uniformName);
    }
};

// The shaders are our own: that they compile is a precondition, and what the driver says otherwise
// goes to the browser's console.
[[nodiscard]] Program makeProgram(ShaderSource vertex, ShaderSource fragment);

struct InstanceStream {
    GLuint layout = 0; // vertex array object
    GLuint buffer = 0;
    std::size_t stride = 0;
};
[[nodiscard]] InstanceStream makeInstanceStream(std::size_t stride, std::span<const InstanceField>);

// A quad an instance, all in one draw call; nothing for no instances.
void drawInstances(const InstanceStream&, const void* instances, std::size_t count);

} // namespace gusset
