#version 300 es
// A triangle, filled or outlined: the box around it, one instance per triangle, so that its edges are
// antialiased like those of the strokes.
precision highp float;

layout(location = 0) in vec2 first;
layout(location = 1) in vec2 second;
layout(location = 2) in vec2 third;
layout(location = 3) in float outline; // width of the outline, CSS pixels; 0: none
layout(location = 4) in vec4 ink;
layout(location = 5) in vec4 fill;

uniform vec2 boardSize; // device pixels
uniform float pixelRatio;
uniform vec2 shift; // device pixels, for the loupe

out vec2 place;
flat out vec2 corners[3];
flat out float halfOutline;
flat out vec4 outlineColour;
flat out vec4 fillColour;

void main() {
    corners[0] = first * pixelRatio + shift;
    corners[1] = second * pixelRatio + shift;
    corners[2] = third * pixelRatio + shift;
    halfOutline = 0.5 * outline * pixelRatio;
    outlineColour = ink;
    fillColour = fill;
    vec2 low = min(min(corners[0], corners[1]), corners[2]) - (halfOutline + 1.0);
    vec2 high = max(max(corners[0], corners[1]), corners[2]) + (halfOutline + 1.0);
    place = mix(low, high, vec2(float(gl_VertexID & 1), float(gl_VertexID >> 1)));
    vec2 clip = place / boardSize * 2.0 - 1.0;
    gl_Position = vec4(clip.x, -clip.y, 0.0, 1.0);
}
