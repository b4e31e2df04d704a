#pragma once
// Scene → WebGL2, with the shaders of shaders/: the paper with its grid, strokes, triangles and
// discs, one draw call each, whatever the size of the truss, and the same again for a finger's
// loupe. Labels are text and go into Dear ImGui's background list (ui/labels), above these and
// below the panels.

#include "app/page/ground.hpp"
#include "canvas/scene/scene.hpp"
#include "render/program.hpp"
#include "render/screen.hpp"
#include "ui/palette.hpp"

#include <vector>

namespace gusset {

// The canvas in device pixels, and the number of device pixels per CSS pixel.
struct Canvas {
    int width = 1;
    int height = 1;
    double pixelRatio = 1;
};

// A drawing surface: the canvas, or the loupe over it, which shows the same marks magnified.
struct Pane {
    Canvas canvas;
    Vec2 shift;        // device pixels, after `nearer`
    double nearer = 1; // magnification
    Vec2 lens;         // centre of the disc that is drawn on, device pixels from the bottom left
    double radius = 0; // of the disc; 0: no clipping
};

// Laid out as the shaders read them.
struct LineInstance {
    float from[2];
    float to[2];
    float width;
    float dash;
    Colour ink;
};
struct TriangleInstance {
    float first[2];
    float second[2];
    float third[2];
    float outline;
    Colour ink;
    Colour fill;
};
struct DiscInstance {
    float centre[2];
    float radius;
    float ring;
    Colour ink;
    Colour fill;
};

// Owns its GL objects. After a lost context is restored, make a new one: the old handles went with
// the context, so nothing is freed here; the page has one renderer for its whole life.
class Renderer {
public:
    // Precondition: a WebGL2 context is current. `ground` draws the photograph with a program of
    // its own, over the paper and its grid, and leaves all but the program in use as it was.
    explicit Renderer(DrawGround ground);

    // Prepares the scene, and passes to the screen everything that it depends on; then it can be
    // drawn.
    void prepare(const Scene&, const Palette&, const Canvas&, Screen&);
    void draw(const Scene&, const Palette&, const Canvas&);

private:
    void prepareLines(const Scene&, const Palette&);
    void prepareTriangles(const Scene&, const Palette&);
    void prepareDiscs(const Scene&, const Palette&);
    void drawAll(const Scene&, const Palette&, const Pane&);
    void drawGrid(const Scene&, const Palette&, const Pane&) const;

    DrawGround ground_;
    Program grid_;
    Program line_;
    Program triangle_;
    Program disc_;
    GLuint empty_ = 0; // vertex array without attributes, for the grid
    InstanceStream lineStream_;
    InstanceStream triangleStream_;
    InstanceStream discStream_;
    std::vector<LineInstance> lines_; // reused between frames, so that drawing allocates nothing
    std::vector<TriangleInstance> triangles_;
    std::vector<DiscInstance> discs_;
};

} // namespace gusset
