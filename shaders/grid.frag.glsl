#version 300 es
// Squared paper. Lines snap to whole device pixels, so that they are equally thin everywhere. The phase is
// reduced to one spacing: at 10 km from the origin a float could no longer resolve the position of a line.
precision highp float;

uniform float boardHeight;  // device pixels
uniform vec2 finePhase;     // position of one fine line, device pixels from the top left
uniform vec2 majorPhase;
uniform float fineSpacing;  // device pixels
uniform float majorSpacing;
uniform float lineWidth;    // whole device pixels
uniform float fineStrength; // 0 to 1: fades in while zooming in
uniform vec4 paper;
uniform vec4 fineInk;
uniform vec4 majorInk;

uniform vec3 lens; // draw only inside this disc: centre and radius, device pixels; radius 0: draw everywhere

out vec4 pixel;

float onLine(float at, float phase, float spacing) {
    float line = phase + floor((at - phase) / spacing + 0.5) * spacing;
    float snapped = floor(line) + fract(0.5 * lineWidth);
    return abs(at - snapped) < 0.5 * lineWidth ? 1.0 : 0.0;
}

float onGrid(vec2 at, vec2 phase, float spacing) {
    return max(onLine(at.x, phase.x, spacing), onLine(at.y, phase.y, spacing));
}

void main() {
    if (lens.z > 0.0 && distance(gl_FragCoord.xy, lens.xy) > lens.z) {
        discard;
    }
    vec2 at = vec2(gl_FragCoord.x, boardHeight - gl_FragCoord.y);
    vec3 colour = paper.rgb;
    colour = mix(colour, fineInk.rgb, fineInk.a * fineStrength * onGrid(at, finePhase, fineSpacing));
    colour = mix(colour, majorInk.rgb, majorInk.a * onGrid(at, majorPhase, majorSpacing));
    pixel = vec4(colour, 1.0);
}
