#pragma once
// A compiled pair of shaders and a stream of instances drawn with it. These are handles of one GL
// context: after the context is lost they are invalid and must be made again.

#include "render/shaders.hpp"

#include <GLES3/gl3.h>

#include <cstddef>
#include <span>

namespace gusset {

// One attribute of an instance: a number of components of `type` at `offset`; bytes are normalised
// to 0 to 1.
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

// The shaders are part of this project, so that they compile is a precondition; driver errors go to
// the browser's console.
[[nodiscard]] Program makeProgram(ShaderSource vertex, ShaderSource fragment);

struct InstanceStream {
    GLuint layout = 0; // vertex array object
    GLuint buffer = 0;
    std::size_t stride = 0;
};
[[nodiscard]] InstanceStream makeInstanceStream(std::size_t stride, std::span<const InstanceField>);

// One quad per instance, all in one draw call; does nothing without instances.
void drawInstances(const InstanceStream&, const void* instances, std::size_t count);

} // namespace gusset
