#version 300 es
// A stroke with round ends: a quad around it, one instance per stroke. Positions are in CSS pixels from the
// board's top left, y down; the fragment stage gets device pixels.
precision highp float;

layout(location = 0) in vec2 from;
layout(location = 1) in vec2 to;
layout(location = 2) in vec2 widthAndDash;
layout(location = 3) in vec4 ink;

uniform vec2 boardSize; // device pixels
uniform float pixelRatio;
uniform vec2 shift; // device pixels, for the loupe

out vec2 place; // along the stroke from `from`, and across it
flat out float strokeLength;
flat out float halfWidth;
flat out float dash;
flat out vec4 colour;

void main() {
    vec2 a = from * pixelRatio + shift;
    vec2 b = to * pixelRatio + shift;
    strokeLength = distance(a, b);
    vec2 along = strokeLength > 0.0 ? (b - a) / strokeLength : vec2(1.0, 0.0);
    vec2 across = vec2(-along.y, along.x);
    halfWidth = max(0.5 * widthAndDash.x * pixelRatio, 0.5);
    dash = widthAndDash.y * pixelRatio;
    colour = ink;

    float margin = halfWidth + 1.0; // a pixel for antialiasing
    float end = float(gl_VertexID & 1);
    float side = float(gl_VertexID >> 1) * 2.0 - 1.0;
    place = vec2(mix(-margin, strokeLength + margin, end), side * margin);
    vec2 pixel = a + along * place.x + across * place.y;
    vec2 clip = pixel / boardSize * 2.0 - 1.0;
    gl_Position = vec4(clip.x, -clip.y, 0.0, 1.0);
}
