#version 300 es
precision highp float;

in vec2 place;
flat in float radius;
flat in float ring;
flat in vec4 ringColour;
flat in vec4 fillColour;

uniform vec3 lens; // draw only inside this disc: centre and radius, device pixels; radius 0: draw everywhere

out vec4 pixel;

void main() {
    if (lens.z > 0.0 && distance(gl_FragCoord.xy, lens.xy) > lens.z) {
        discard;
    }
    float outside = length(place) - radius;
    float inRing = ring > 0.0 ? clamp(outside + ring + 0.5, 0.0, 1.0) : 0.0;
    vec4 colour = mix(fillColour, ringColour, inRing);
    pixel = vec4(colour.rgb, colour.a * clamp(0.5 - outside, 0.0, 1.0));
}
