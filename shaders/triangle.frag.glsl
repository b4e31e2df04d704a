#version 300 es
precision highp float;

in vec2 place;
flat in vec2 corners[3];
flat in float halfOutline;
flat in vec4 outlineColour;
flat in vec4 fillColour;

uniform vec3 lens; // draw only inside this disc: centre and radius, device pixels; radius 0: draw everywhere

out vec4 pixel;

float distanceToEdge(vec2 from, vec2 to) {
    vec2 edge = to - from;
    vec2 offset = place - from;
    float along = clamp(dot(offset, edge) / max(dot(edge, edge), 1e-6), 0.0, 1.0);
    return length(offset - along * edge);
}

float sideOf(vec2 from, vec2 to) {
    vec2 edge = to - from;
    vec2 offset = place - from;
    return edge.x * offset.y - edge.y * offset.x;
}

void main() {
    if (lens.z > 0.0 && distance(gl_FragCoord.xy, lens.xy) > lens.z) {
        discard;
    }
    float edge = min(min(distanceToEdge(corners[0], corners[1]), distanceToEdge(corners[1], corners[2])),
                     distanceToEdge(corners[2], corners[0]));
    float s0 = sideOf(corners[0], corners[1]);
    float s1 = sideOf(corners[1], corners[2]);
    float s2 = sideOf(corners[2], corners[0]);
    bool inside = (s0 >= 0.0 && s1 >= 0.0 && s2 >= 0.0) || (s0 <= 0.0 && s1 <= 0.0 && s2 <= 0.0);
    float outside = inside ? -edge : edge;
    float onOutline = halfOutline > 0.0 ? clamp(outside + halfOutline + 0.5, 0.0, 1.0) : 0.0;
    vec4 colour = mix(fillColour, outlineColour, onOutline);
    pixel = vec4(colour.rgb, colour.a * clamp(0.5 - (outside - halfOutline), 0.0, 1.0));
}
