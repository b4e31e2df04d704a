// Draws the photograph over the paper of the board, in the program's own WebGL2 context: on light paper it darkens what
// is there, on dark paper it brightens it, so that the grid stays. The program calls this after its paper and before
// all else, and sets its own program before it draws again (web/render/renderer).
import { textureMap } from './ground_place.js';

const vertex = `#version 300 es
void main() {
    vec2 corner = vec2(float(gl_VertexID & 1), float(gl_VertexID >> 1)) * 4.0 - 1.0;
    gl_Position = vec4(corner, 0.0, 1.0);
}`;
const fragment = `#version 300 es
precision highp float;
uniform vec2 right;
uniform vec2 up;
uniform vec2 corner;
uniform vec3 lens; // as in grid.frag.glsl
uniform float strength;
uniform bool dark;
uniform sampler2D photograph;
out vec4 pixel;
void main() {
    vec2 at = right * gl_FragCoord.x + up * gl_FragCoord.y + corner;
    vec3 colour = texture(photograph, at).rgb;
    if (lens.z > 0.0 && distance(gl_FragCoord.xy, lens.xy) > lens.z || at != clamp(at, 0.0, 1.0)) {
        discard;
    }
    pixel = vec4(dark ? strength * colour : mix(vec3(1.0), colour, strength), 1.0);
}`;

// Light paper, dark paper, where a bright photograph takes more from the lines over it.
const strengths = { faint: [0.25, 0.15], pale: [0.36, 0.25], clear: [0.6, 0.4] };
export const paleness = Object.keys(strengths);

function programOf(gl) {
    const program = gl.createProgram();
    [[gl.VERTEX_SHADER, vertex], [gl.FRAGMENT_SHADER, fragment]].forEach(([stage, source]) => {
        const shader = gl.createShader(stage);
        gl.shaderSource(shader, source);
        gl.compileShader(shader);
        gl.attachShader(program, shader);
    });
    gl.linkProgram(program);
    const names = ['right', 'up', 'corner', 'lens', 'strength', 'dark'];
    return { program, at: Object.fromEntries(names.map((name) => [name, gl.getUniformLocation(program, name)])) };
}

function textureOf(gl, picture) {
    const texture = gl.createTexture();
    gl.bindTexture(gl.TEXTURE_2D, texture);
    // What the program has set for its own textures would change this one.
    const stores = [gl.UNPACK_ROW_LENGTH, gl.UNPACK_SKIP_ROWS, gl.UNPACK_SKIP_PIXELS];
    stores.forEach((name) => gl.pixelStorei(name, 0));
    gl.texImage2D(gl.TEXTURE_2D, 0, gl.RGBA, gl.RGBA, gl.UNSIGNED_BYTE, picture);
    gl.generateMipmap(gl.TEXTURE_2D);
    gl.texParameteri(gl.TEXTURE_2D, gl.TEXTURE_MIN_FILTER, gl.LINEAR_MIPMAP_LINEAR);
    gl.texParameteri(gl.TEXTURE_2D, gl.TEXTURE_WRAP_S, gl.CLAMP_TO_EDGE);
    gl.texParameteri(gl.TEXTURE_2D, gl.TEXTURE_WRAP_T, gl.CLAMP_TO_EDGE);
    return texture;
}

export function createDrawing(canvas) {
    let made = null; // of this context
    let texture = null;
    let shown = null; // the picture in the texture
    canvas.addEventListener('webglcontextlost', () => { made = texture = shown = null; });

    function take(gl, picture) {
        made ??= programOf(gl);
        if (shown !== picture) {
            gl.deleteTexture(texture);
            texture = textureOf(gl, picture);
            shown = picture;
        }
    }

    return {
        draw({ picture, place, pale }, view) {
            const gl = canvas.getContext('webgl2'); // the one that the program has made
            gl.activeTexture(gl.TEXTURE0);
            take(gl, picture);
            const { right, up, corner } = textureMap(place, picture, view);
            gl.useProgram(made.program);
            gl.uniform2fv(made.at.right, right);
            gl.uniform2fv(made.at.up, up);
            gl.uniform2fv(made.at.corner, corner);
            gl.uniform3f(made.at.lens, view.lensX, view.lensY, view.radius);
            gl.uniform1f(made.at.strength, (strengths[pale] ?? strengths.pale)[view.dark]);
            gl.uniform1i(made.at.dark, view.dark);
            gl.bindTexture(gl.TEXTURE_2D, texture);
            gl.bindVertexArray(null);
            if (view.dark) {
                gl.blendFunc(gl.ONE, gl.ONE_MINUS_SRC_COLOR);
            } else {
                gl.blendFunc(gl.DST_COLOR, gl.ZERO);
            }
            gl.drawArrays(gl.TRIANGLES, 0, 3);
            gl.blendFuncSeparate(gl.SRC_ALPHA, gl.ONE_MINUS_SRC_ALPHA, gl.ONE, gl.ONE_MINUS_SRC_ALPHA);
            gl.bindTexture(gl.TEXTURE_2D, null);
        },
        // Nothing is to be drawn any more.
        forget() {
            if (texture !== null) {
                canvas.getContext('webgl2').deleteTexture(texture);
                texture = shown = null;
            }
        },
    };
}
