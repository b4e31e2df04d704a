#include "app/state/layout.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

constexpr double kHeaderHeight = 52;
constexpr double kStripHeight = 60;     // a row of touch targets with its margins
constexpr double kStripWidth = 440;     // of the tools, if there is room
constexpr double kStripMargin = 8;      // between the strip and the edge
constexpr double kLeastColumn = 260;    // a narrower notebook can't hold a table
constexpr double kLargestColumn = 0.45; // fraction of the page's width
constexpr double kLeastSheet = 0.18;    // fraction of the page's height
constexpr double kLargestSheet = 0.85;
constexpr double kLowPage = 340; // lower than this, the sheet, header and tools leave no board
constexpr double kLeastLyingPhone = 560; // a phone in landscape has room beside, not below

constexpr double kUprightBelow = 1000; // an upright page has room below, not beside
constexpr double kLowBelow = 500;      // a phone in landscape
constexpr double kPicture = 0.26;      // of the page's height, for the truss above its working
constexpr double kLeastPicture = 120;
constexpr double kLargestPicture = 300;
constexpr double kReaderHeight = 56;
constexpr double kReadingColumn = 0.56; // of the width, beside the picture

bool isNarrow(Vec2 page) {
    const bool lying = page.x > page.y && page.x >= kLeastLyingPhone;
    const bool upright = page.y > page.x && page.x < kUprightBelow;
    return (page.x < kNarrowBelow && !lying) || upright;
}

Rect notebookColumn(Vec2 page, double wanted) {
    const double widest = kLargestColumn * page.x;
    const double width = std::clamp(wanted, std::min(kLeastColumn, widest), widest);
    return {{page.x - width, kHeaderHeight}, {width, std::max(page.y - kHeaderHeight, 0.0)}};
}

Rect notebookDrawer(const Viewport& viewport, double share) {
    const double below = std::max(viewport.size.y - kHeaderHeight, 0.0);
    const double height = std::min(std::clamp(share, kLeastSheet, kLargestSheet) * viewport.size.y +
                                       viewport.safeBottom,
                                   below);
    return {{0, viewport.size.y - height}, {viewport.size.x, height}};
}

// The working below the picture, or beside it; its buttons below it, within reach of the thumb.
PageLayout readingLayout(const Viewport& viewport) {
    const Vec2 page = viewport.size;
    const double foot = page.y - kReaderHeight - viewport.safeBottom;
    PageLayout layout;
    layout.reading = true;
    layout.narrow = isNarrow(page);
    const double left = layout.narrow ? 0 : std::round((1 - kReadingColumn) * page.x);
    const double top = layout.narrow ? kHeaderHeight + std::clamp(kPicture * page.y, kLeastPicture,
                                                                  kLargestPicture)
                                     : 0;
    layout.header = {{0, 0}, {layout.narrow ? page.x : left, kHeaderHeight}};
    layout.notebook = {{left, top}, {page.x - left, std::max(foot - top, 0.0)}};
    layout.reader = {{left, foot}, {page.x - left, page.y - foot}};
    layout.tools = {{0, layout.narrow ? top : page.y - viewport.safeBottom}, {0, 0}};
    return layout;
}

} // namespace

bool readsApart(const Viewport& viewport) {
    return isNarrow(viewport.size) || viewport.size.y < kLowBelow;
}

bool hasRoomForOneOnly(const Viewport& viewport) {
    return isNarrow(viewport.size) && viewport.size.y < kLowPage;
}

double notebookMargin(const PageLayout& layout) { return layout.narrow ? 12 : 20; }

double columnWidth(const PageLayout& layout) {
    return layout.notebook.size.x - 2 * notebookMargin(layout);
}

PageLayout layoutFor(const Viewport& viewport, const NotebookState& notebook) {
    if (notebook.reading && !hasRoomForOneOnly(viewport)) {
        return readingLayout(viewport);
    }
    PageLayout layout;
    const Vec2 page = viewport.size;
    layout.narrow = isNarrow(page);
    layout.reading = notebook.reading;
    layout.header = {{0, 0}, {page.x, kHeaderHeight}};
    double boardWidth = page.x;
    double boardBottom = page.y - viewport.safeBottom;
    const bool alone = notebook.open && hasRoomForOneOnly(viewport);
    if (alone) {
        layout.notebook = {{0, kHeaderHeight}, {page.x, std::max(page.y - kHeaderHeight, 0.0)}};
    } else if (notebook.open && layout.narrow) {
        layout.notebook = notebookDrawer(viewport, notebook.sheet);
        boardBottom = layout.notebook.at.y;
    } else if (notebook.open) {
        layout.notebook = notebookColumn(page, notebook.width);
        boardWidth = layout.notebook.at.x;
    }
    const double width = std::min(boardWidth - 2 * kStripMargin, kStripWidth);
    const double top = std::max(boardBottom - kStripHeight - kStripMargin, kHeaderHeight);
    layout.tools = {{0.5 * (boardWidth - width), top}, {alone ? 0 : width, kStripHeight}};
    return layout;
}

Camera withLayout(const Camera& camera, const Viewport& viewport, const PageLayout& layout) {
    Camera covered = camera;
    covered.size = viewport.size;
    covered.coverTop = layout.header.size.y;
    covered.coverRight = layout.narrow ? 0 : layout.notebook.size.x;
    covered.coverBottom = viewport.size.y - layout.tools.at.y +
                          (hasRoomForOneOnly(viewport) || layout.reading ? 0 : kHintHeight);
    return covered;
}

} // namespace gusset
