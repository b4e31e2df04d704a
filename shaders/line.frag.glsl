#version 300 es
// The coverage of a pixel by the stroke follows from the distance to its centre line; a dash is a short
// stroke in itself, with round ends.
precision highp float;

in vec2 place;
flat in float strokeLength;
flat in float halfWidth;
flat in float dash;
flat in vec4 colour;

uniform vec3 lens; // draw only inside this disc: centre and radius, device pixels; radius 0: draw everywhere

out vec4 pixel;

float nearestOnDashes(float along) {
    float period = 2.0 * dash;
    float centre = (floor((along - 0.5 * dash) / period + 0.5)) * period + 0.5 * dash;
    float reach = max(0.5 * dash - halfWidth, 0.0);
    return clamp(along, centre - reach, centre + reach);
}

void main() {
    if (lens.z > 0.0 && distance(gl_FragCoord.xy, lens.xy) > lens.z) {
        discard;
    }
    float nearest = clamp(dash > 0.0 ? nearestOnDashes(place.x) : place.x, 0.0, strokeLength);
    float outside = length(place - vec2(nearest, 0.0)) - halfWidth;
    pixel = vec4(colour.rgb, colour.a * clamp(0.5 - outside, 0.0, 1.0));
}
