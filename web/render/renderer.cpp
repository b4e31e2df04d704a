#include "render/renderer.hpp"

#include "core/tolerance.hpp"
#include "render/shaders.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <span>

namespace gusset {

namespace {

constexpr std::array kLineFields{
    InstanceField{2, GL_FLOAT, offsetof(LineInstance, from)},
    InstanceField{2, GL_FLOAT, offsetof(LineInstance, to)},
    InstanceField{2, GL_FLOAT, offsetof(LineInstance, width)},
    InstanceField{4, GL_UNSIGNED_BYTE, offsetof(LineInstance, ink)},
};
constexpr std::array kTriangleFields{
    InstanceField{2, GL_FLOAT, offsetof(TriangleInstance, first)},
    InstanceField{2, GL_FLOAT, offsetof(TriangleInstance, second)},
    InstanceField{2, GL_FLOAT, offsetof(TriangleInstance, third)},
    InstanceField{1, GL_FLOAT, offsetof(TriangleInstance, outline)},
    InstanceField{4, GL_UNSIGNED_BYTE, offsetof(TriangleInstance, ink)},
    InstanceField{4, GL_UNSIGNED_BYTE, offsetof(TriangleInstance, fill)},
};
constexpr std::array kDiscFields{
    InstanceField{2, GL_FLOAT, offsetof(DiscInstance, centre)},
    InstanceField{2, GL_FLOAT, offsetof(DiscInstance, radius)},
    InstanceField{4, GL_UNSIGNED_BYTE, offsetof(DiscInstance, ink)},
    InstanceField{4, GL_UNSIGNED_BYTE, offsetof(DiscInstance, fill)},
};

constexpr float kTriangleOutline = 2; // CSS px

// Fine grid lines are invisible when they are kFaded apart or closer, and fully drawn at kPlain,
// CSS px.
constexpr double kFaded = 18;
constexpr double kPlain = 44;

struct Float2 {
    float x = 0;
    float y = 0;
};

Float2 toFloats(Vec2 v) { return {static_cast<float>(v.x), static_cast<float>(v.y)}; }

void setPoint(float (&to)[2], Vec2 v) {
    to[0] = static_cast<float>(v.x);
    to[1] = static_cast<float>(v.y);
}

void setColour(const Program& program, const char* name, Colour colour) {
    glUniform4f(program.uniform(name), static_cast<float>(colour.red) / 255,
                static_cast<float>(colour.green) / 255, static_cast<float>(colour.blue) / 255,
                static_cast<float>(colour.alpha) / 255);
}

void setLens(const Program& program, const Pane& pane) {
    glUniform3f(program.uniform("lens"), static_cast<float>(pane.lens.x),
                static_cast<float>(pane.lens.y), static_cast<float>(pane.radius));
}

void useMarkProgram(const Program& program, const Pane& pane) {
    glUseProgram(program.name);
    glUniform2f(program.uniform("boardSize"), static_cast<float>(pane.canvas.width),
                static_cast<float>(pane.canvas.height));
    glUniform1f(program.uniform("pixelRatio"),
                static_cast<float>(pane.nearer * pane.canvas.pixelRatio));
    glUniform2f(program.uniform("shift"), static_cast<float>(pane.shift.x),
                static_cast<float>(pane.shift.y));
    setLens(program, pane);
}

// The place that the finger covers appears at the centre of the lens.
Pane loupeOn(const Canvas& canvas, const Loupe& loupe) {
    const double ratio = canvas.pixelRatio;
    return {.canvas = canvas,
            .shift = ratio * (loupe.at - kLoupeNearer * loupe.of),
            .nearer = kLoupeNearer,
            .lens = {ratio * loupe.at.x, canvas.height - ratio * loupe.at.y},
            .radius = ratio * kLoupeRadius};
}

// The camera for the same grid in the loupe.
Camera cameraOf(const Scene& scene, const Pane& pane) {
    if (pane.nearer == 1) {
        return scene.camera;
    }
    const Loupe& loupe = scene.loupe;
    return panBy(zoomAbout(scene.camera, loupe.of, pane.nearer), loupe.at - loupe.of);
}

// Position of a grid line, reduced to within one spacing of the board's corner; device pixels.
Vec2 gridPhase(const Camera& camera, double step, double pixelRatio) {
    const double spacing = step * camera.scale * pixelRatio;
    const Vec2 origin = pixelRatio * toPixel(camera, {0, 0});
    return {std::fmod(origin.x, spacing), std::fmod(origin.y, spacing)};
}

// Every fifth fine line, or every second if the step is 5: major lines are at powers of ten or half
// of them.
double majorStep(double step) {
    const double mantissa = step / std::pow(10.0, std::floor(std::log10(step) + kHair));
    return mantissa > 4 ? 2 * step : 5 * step;
}

GroundPane groundOn(const Scene& scene, const Palette& palette, const Pane& pane) {
    const Camera camera = cameraOf(scene, pane);
    const double ratio = pane.canvas.pixelRatio;
    return {.origin = ratio * toPixel(camera, {0, 0}),
            .metre = ratio * camera.scale * scene.metre,
            .height = pane.canvas.height,
            .lens = pane.lens,
            .radius = pane.radius,
            .dark = palette.board.red < 128};
}

} // namespace

Renderer::Renderer(DrawGround ground)
    : ground_(ground), grid_(makeProgram(gridVert(), gridFrag())),
      line_(makeProgram(lineVert(), lineFrag())),
      triangle_(makeProgram(triangleVert(), triangleFrag())),
      disc_(makeProgram(discVert(), discFrag())),
      lineStream_(makeInstanceStream(sizeof(LineInstance), kLineFields)),
      triangleStream_(makeInstanceStream(sizeof(TriangleInstance), kTriangleFields)),
      discStream_(makeInstanceStream(sizeof(DiscInstance), kDiscFields)) {
    glGenVertexArrays(1, &empty_);
}

void Renderer::prepare(const Scene& scene, const Palette& palette, const Canvas& canvas,
                       Screen& screen) {
    prepareLines(scene, palette);
    prepareTriangles(scene, palette);
    prepareDiscs(scene, palette);
    screen.add(Vec2{1.0 * canvas.width, 1.0 * canvas.height});
    screen.add(canvas.pixelRatio);
    screen.add(toPixel(scene.camera, {0, 0})); // what the grid depends on
    screen.add(Vec2{scene.camera.scale, scene.gridStep});
    for (const Colour colour : {palette.board, palette.grid, palette.gridStrong}) {
        screen.add(std::as_bytes(std::span(&colour, 1)));
    }
    screen.add(scene.ground);
    screen.add(scene.loupe.shown ? 1 : 0);
    screen.add(scene.loupe.of);
    screen.add(scene.loupe.at);
    screen.add(std::as_bytes(std::span(lines_)));
    screen.add(std::as_bytes(std::span(triangles_)));
    screen.add(std::as_bytes(std::span(discs_)));
}

void Renderer::draw(const Scene& scene, const Palette& palette, const Canvas& canvas) {
    glViewport(0, 0, canvas.width, canvas.height);
    glDisable(GL_SCISSOR_TEST);
    glDisable(GL_DEPTH_TEST);
    glDisable(GL_CULL_FACE);
    glEnable(GL_BLEND);
    glBlendFuncSeparate(GL_SRC_ALPHA, GL_ONE_MINUS_SRC_ALPHA, GL_ONE, GL_ONE_MINUS_SRC_ALPHA);
    drawAll(scene, palette, {.canvas = canvas, .shift = {}, .lens = {}});
    if (scene.loupe.shown) {
        drawAll(scene, palette, loupeOn(canvas, scene.loupe));
    }
}

void Renderer::drawAll(const Scene& scene, const Palette& palette, const Pane& pane) {
    drawGrid(scene, palette, pane);
    if (scene.ground != 0) {
        ground_(groundOn(scene, palette, pane));
    }
    useMarkProgram(line_, pane);
    drawInstances(lineStream_, lines_.data(), lines_.size());
    useMarkProgram(triangle_, pane);
    drawInstances(triangleStream_, triangles_.data(), triangles_.size());
    useMarkProgram(disc_, pane);
    drawInstances(discStream_, discs_.data(), discs_.size());
}

void Renderer::drawGrid(const Scene& scene, const Palette& palette, const Pane& pane) const {
    const Canvas& canvas = pane.canvas;
    const Camera camera = cameraOf(scene, pane);
    const double major = majorStep(scene.gridStep);
    const double fineOnBoard = scene.gridStep * camera.scale;
    const Float2 finePhase = toFloats(gridPhase(camera, scene.gridStep, canvas.pixelRatio));
    const Float2 majorPhase = toFloats(gridPhase(camera, major, canvas.pixelRatio));
    const double strength = std::clamp((fineOnBoard - kFaded) / (kPlain - kFaded), 0.0, 1.0);
    glUseProgram(grid_.name);
    setLens(grid_, pane);
    glUniform1f(grid_.uniform("boardHeight"), static_cast<float>(canvas.height));
    glUniform2f(grid_.uniform("finePhase"), finePhase.x, finePhase.y);
    glUniform2f(grid_.uniform("majorPhase"), majorPhase.x, majorPhase.y);
    glUniform1f(grid_.uniform("fineSpacing"), static_cast<float>(fineOnBoard * canvas.pixelRatio));
    glUniform1f(grid_.uniform("majorSpacing"),
                static_cast<float>(major * camera.scale * canvas.pixelRatio));
    glUniform1f(grid_.uniform("lineWidth"),
                static_cast<float>(std::max(1.0, std::round(canvas.pixelRatio))));
    glUniform1f(grid_.uniform("fineStrength"), static_cast<float>(strength));
    setColour(grid_, "paper", palette.board);
    setColour(grid_, "fineInk", palette.grid);
    setColour(grid_, "majorInk", palette.gridStrong);
    glBindVertexArray(empty_);
    glDrawArrays(GL_TRIANGLES, 0, 3);
    glBindVertexArray(0);
}

void Renderer::prepareLines(const Scene& scene, const Palette& palette) {
    lines_.clear();
    for (const LineMark& mark : scene.lines) {
        LineInstance& line = lines_.emplace_back();
        setPoint(line.from, mark.a);
        setPoint(line.to, mark.b);
        line.width = mark.width;
        line.dash = mark.dash;
        line.ink = lineColour(palette, mark.ink);
    }
}

void Renderer::prepareTriangles(const Scene& scene, const Palette& palette) {
    triangles_.clear();
    for (const TriangleMark& mark : scene.triangles) {
        TriangleInstance& triangle = triangles_.emplace_back();
        setPoint(triangle.first, mark.a);
        setPoint(triangle.second, mark.b);
        setPoint(triangle.third, mark.c);
        triangle.ink = lineColour(palette, mark.ink);
        triangle.outline = mark.filled ? 0 : kTriangleOutline;
        triangle.fill = mark.filled ? triangle.ink : lineColour(palette, Ink::Paper);
    }
}

void Renderer::prepareDiscs(const Scene& scene, const Palette& palette) {
    discs_.clear();
    for (const DiscMark& mark : scene.discs) {
        DiscInstance& disc = discs_.emplace_back();
        setPoint(disc.centre, mark.at);
        disc.radius = mark.radius;
        disc.ring = mark.ring;
        disc.ink = lineColour(palette, mark.ink);
        disc.fill = lineColour(palette, mark.fill);
    }
}

} // namespace gusset
