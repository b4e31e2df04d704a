#version 300 es
// A disc with a ring: a square around it, one instance per disc.
precision highp float;

layout(location = 0) in vec2 centre;
layout(location = 1) in vec2 radiusAndRing;
layout(location = 2) in vec4 ink;
layout(location = 3) in vec4 fill;

uniform vec2 boardSize; // device pixels
uniform float pixelRatio;
uniform vec2 shift; // device pixels, for the loupe

out vec2 place; // from the centre, device pixels
flat out float radius;
flat out float ring;
flat out vec4 ringColour;
flat out vec4 fillColour;

void main() {
    radius = radiusAndRing.x * pixelRatio;
    ring = radiusAndRing.y * pixelRatio;
    ringColour = ink;
    fillColour = fill;
    vec2 corner = vec2(float(gl_VertexID & 1), float(gl_VertexID >> 1)) * 2.0 - 1.0;
    place = corner * (radius + 1.0);
    vec2 clip = (centre * pixelRatio + shift + place) / boardSize * 2.0 - 1.0;
    gl_Position = vec4(clip.x, -clip.y, 0.0, 1.0);
}
