#include "render/program.hpp"

#include <array>
#include <cstdio>

namespace gusset {

namespace {

GLuint compile(GLenum stage, ShaderSource source) {
    const GLuint shader = glCreateShader(stage);
    const auto* text = reinterpret_cast<const GLchar*>(source.data());
    const auto size = static_cast<GLint>(source.size());
    glShaderSource(shader, 1, &text, &size);
    glCompileShader(shader);
    return shader;
}

void reportFailure(GLuint program, std::span<const GLuint> shaders) {
    std::array<char, 1024> log{};
    for (const GLuint shader : shaders) {
        glGetShaderInfoLog(shader, log.size(), nullptr, log.data());
        std::fprintf(stderr, "%s\n", log.data());
    }
    glGetProgramInfoLog(program, log.size(), nullptr, log.data());
    std::fprintf(stderr, "%s\n", log.data());
}

} // namespace

Program makeProgram(ShaderSource vertex, ShaderSource fragment) {
    const std::array<GLuint, 2> shaders{compile(GL_VERTEX_SHADER, vertex),
                                        compile(GL_FRAGMENT_SHADER, fragment)};
    const Program program{glCreateProgram()};
    for (const GLuint shader : shaders) {
        glAttachShader(program.name, shader);
    }
    glLinkProgram(program.name);
    GLint linked = GL_FALSE;
    glGetProgramiv(program.name, GL_LINK_STATUS, &linked);
    if (linked != GL_TRUE) {
        reportFailure(program.name, shaders);
    }
    for (const GLuint shader : shaders) {
        glDeleteShader(shader);
    }
    return program;
}

InstanceStream makeInstanceStream(std::size_t stride, std::span<const InstanceField> fields) {
    InstanceStream stream;
    stream.stride = stride;
    glGenVertexArrays(1, &stream.layout);
    glGenBuffers(1, &stream.buffer);
    glBindVertexArray(stream.layout);
    glBindBuffer(GL_ARRAY_BUFFER, stream.buffer);
    for (GLuint index = 0; index < fields.size(); ++index) {
        const InstanceField& field = fields[index];
        glEnableVertexAttribArray(index);
        glVertexAttribPointer(index, field.count, field.type, field.type == GL_UNSIGNED_BYTE,
                              static_cast<GLsizei>(stride),
                              reinterpret_cast<const void*>(field.offset));
        glVertexAttribDivisor(index, 1);
    }
    glBindVertexArray(0);
    return stream;
}

void drawInstances(const InstanceStream& stream, const void* instances, std::size_t count) {
    if (count == 0) {
        return;
    }
    glBindVertexArray(stream.layout);
    glBindBuffer(GL_ARRAY_BUFFER, stream.buffer);
    glBufferData(GL_ARRAY_BUFFER, static_cast<GLsizeiptr>(stream.stride * count), instances,
                 GL_STREAM_DRAW);
    glDrawArraysInstanced(GL_TRIANGLE_STRIP, 0, 4, static_cast<GLsizei>(count));
    glBindVertexArray(0);
}

} // namespace gusset
