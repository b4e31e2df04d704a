#version 300 es
// One triangle over the whole board.
void main() {
    vec2 corner = vec2(float(gl_VertexID & 1), float(gl_VertexID >> 1)) * 4.0 - 1.0;
    gl_Position = vec4(corner, 0.0, 1.0);
}
