#include "exchange/drawings/svg_reader.hpp"

#include "exchange/drawings/layers.hpp"
#include "exchange/drawings/passed_over.hpp"
#include "exchange/drawings/some_of_each.hpp"
#include "exchange/drawings/svg_shapes.hpp"
#include "exchange/drawings/xml_tags.hpp"
#include "model/validate/characters.hpp"
#include "phrases/faults/drawings.hpp"
#include "phrases/faults/reading.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace gusset {

namespace {

constexpr std::size_t kQuotedShape = 40;

constexpr std::array<std::string_view, 9> kRead{"svg",      "g",       "a",    "switch", "line",
                                                "polyline", "polygon", "path", "rect"};
// What is within these is not part of the picture as it stands.
constexpr std::array<std::string_view, 12> kNotShown{"defs",     "symbol", "clipPath", "mask",
                                                     "pattern",  "marker", "script",   "style",
                                                     "metadata", "title",  "desc",     "namedview"};
constexpr std::array<std::string_view, 2> kRound{"circle", "ellipse"};

template <class List>
bool isOneOfNames(const List& list, std::string_view name) {
    return std::find(list.begin(), list.end(), name) != list.end();
}

WhyPassed whyShapePassed(std::string_view name) {
    return isOneOfNames(kRound, name) ? WhyPassed::Curve
           : name == "text"           ? WhyPassed::Text
           : name == "use"            ? WhyPassed::Copy
                                      : WhyPassed::Other;
}

bool isHidden(const XmlTag& tag) {
    const auto is = [&](std::string_view attribute, std::string_view value) {
        const std::string* given = tag.find(attribute);
        return given && *given == value;
    };
    std::string style = tag.find("style") ? *tag.find("style") : std::string{};
    std::erase_if(style, [](char c) { return c == ' ' || c == '\t' || c == '\n' || c == '\r'; });
    return is("display", "none") || is("visibility", "hidden") ||
           style.find("display:none") != style.npos ||
           style.find("visibility:hidden") != style.npos;
}

struct SvgGroup {
    SvgMatrix matrix;
    std::string layer;
    bool isPassed = false; // over, with all within
};

class SvgReader {
public:
    explicit SvgReader(std::string_view text) : tags_(text) {}

    Outcome<LinesFound> read(const std::vector<std::string>& chosen) {
        while (const std::optional<XmlTag> tag = tags_.next()) {
            if (groups_.empty() && tag->name != "svg") {
                return Issue{IssueCode::WrongType, phrase::kPlaceFile,
                             statement(phrase::kNotSvg,
                                       {{"name", spelled(tag->name.substr(0, kQuotedShape))}})};
            }
            read(*tag);
            if (tag->kind != XmlTag::Kind::Open && groups_.empty()) {
                break; // behind the root
            }
        }
        if (tags_.fault()) {
            notes_.add(*tags_.fault());
        }
        found_.movesToCorner = true;
        found_.notes = notes_.take();
        for (Issue& note : passed_.notes()) {
            found_.notes.push_back(std::move(note));
        }
        if (Issues faults = layers_.choose(chosen, found_); !faults.empty()) {
            return faults;
        }
        return std::move(found_);
    }

private:
    void read(const XmlTag& tag) {
        if (tag.kind == XmlTag::Kind::Close) {
            groups_.pop_back();
            return;
        }
        SvgGroup group = groups_.empty() ? SvgGroup{} : groups_.back();
        if (!group.isPassed) {
            group.isPassed = passes(tag) || !transform(tag, group);
        }
        if (!group.isPassed) {
            readShape(tag, group);
        }
        if (tag.kind == XmlTag::Kind::Open) {
            groups_.push_back(std::move(group));
        }
    }

    // Whether a tag and all within it are passed over.
    bool passes(const XmlTag& tag) {
        if (groups_.empty()) {
            return false; // the root
        }
        if (isOneOfNames(kNotShown, tag.name)) {
            return true;
        }
        if (isHidden(tag)) {
            passed_.count(spelled(tag.name), WhyPassed::Hidden);
            return true;
        }
        const bool isInnerPicture = tag.name == "svg" && tag.find("viewBox");
        if (!isOneOfNames(kRead, tag.name) || isInnerPicture) {
            passed_.count(spelled(tag.name), whyShapePassed(tag.name));
            return true;
        }
        return false;
    }

    // False, with a note, if what transforms it can't be read.
    bool transform(const XmlTag& tag, SvgGroup& group) {
        const std::string* text = tag.find("transform");
        const std::optional<SvgMatrix> matrix = text ? svgTransform(*text) : SvgMatrix{};
        if (!matrix) {
            notes_.add(
                {IssueCode::Syntax, lineOf(tag),
                 statement(phrase::kTransformUnread, {{"text", text->substr(0, kQuotedShape)}})});
            return false;
        }
        group.matrix = group.matrix.times(*matrix);
        return true;
    }

    void readShape(const XmlTag& tag, SvgGroup& group) {
        if (tag.name == "svg" && !groups_.empty()) {
            const Vec2 corner = pair(tag, "x", "y").value_or(Vec2{});
            group.matrix = group.matrix.times({1, 0, 0, 1, corner.x, corner.y});
        } else if (tag.name == "g" && tag.find("id")) {
            group.layer = *tag.find("id");
        } else if (tag.name == "line") {
            readLine(tag, group);
        } else if (tag.name == "polyline" || tag.name == "polygon") {
            readPoints(tag, group);
        } else if (tag.name == "rect") {
            readRectangle(tag, group);
        } else if (tag.name == "path") {
            readPath(tag, group);
        }
    }

    static Statement lineOf(const XmlTag& tag) {
        return statement(phrase::kPlaceLineOfFile, {{"line", tag.line}});
    }
    void unread(const XmlTag& tag, std::string_view text) {
        notes_.add(
            {IssueCode::NotFinite, lineOf(tag),
             statement(phrase::kShapeUnread,
                       {{"name", tag.name}, {"text", std::string(text.substr(0, kQuotedShape))}})});
    }

    // 0 if it is not given; nothing, with a note, if it can't be read.
    std::optional<double> length(const XmlTag& tag, std::string_view attribute) {
        const std::string* text = tag.find(attribute);
        if (!text) {
            return 0;
        }
        const std::optional<double> value = svgLength(*text);
        if (!value) {
            unread(tag, *text);
        }
        return value;
    }
    std::optional<Vec2> pair(const XmlTag& tag, std::string_view x, std::string_view y) {
        const std::optional<double> first = length(tag, x);
        const std::optional<double> second = first ? length(tag, y) : std::nullopt;
        return second ? std::optional(Vec2{*first, *second}) : std::nullopt;
    }

    // Whether both ends can be used; they are not if a transformation throws them far away.
    bool add(const SvgGroup& group, Vec2 from, Vec2 to) {
        const Vec2 a = group.matrix.of(from);
        const Vec2 b = group.matrix.of(to);
        const double most = std::max({std::abs(a.x), std::abs(a.y), std::abs(b.x), std::abs(b.y)});
        if (!isFinite(a) || !isFinite(b) || most > kLargestDrawn) {
            return false;
        }
        layers_.add(group.layer, {{a.x, -a.y}, {b.x, -b.y}});
        return true;
    }
    void addAll(const XmlTag& tag, const SvgGroup& group, const std::vector<SvgStroke>& strokes) {
        for (const SvgStroke& stroke : strokes) {
            if (!add(group, stroke.from, stroke.to)) {
                unread(tag, tag.find("transform") ? *tag.find("transform") : tag.name);
                return;
            }
        }
    }

    void readLine(const XmlTag& tag, const SvgGroup& group) {
        const std::optional<Vec2> from = pair(tag, "x1", "y1");
        const std::optional<Vec2> to = from ? pair(tag, "x2", "y2") : std::nullopt;
        if (to) {
            addAll(tag, group, {{*from, *to}});
        }
    }

    static std::vector<SvgStroke> strokesOf(const std::vector<Vec2>& points, bool isClosed) {
        std::vector<SvgStroke> strokes;
        for (std::size_t i = 1; i < points.size(); ++i) {
            strokes.push_back({points[i - 1], points[i]});
        }
        if (isClosed && points.size() > 2) {
            strokes.push_back({points.back(), points.front()});
        }
        return strokes;
    }

    void readPoints(const XmlTag& tag, const SvgGroup& group) {
        const std::string* text = tag.find("points");
        const auto points = svgPoints(text ? *text : "");
        if (!points) {
            unread(tag, *text);
            return;
        }
        addAll(tag, group, strokesOf(*points, tag.name == "polygon"));
    }

    void readRectangle(const XmlTag& tag, const SvgGroup& group) {
        const std::optional<Vec2> corner = pair(tag, "x", "y");
        const std::optional<Vec2> size = corner ? pair(tag, "width", "height") : std::nullopt;
        if (size) {
            const Vec2 far = *corner + *size;
            addAll(tag, group,
                   strokesOf({*corner, {far.x, corner->y}, far, {corner->x, far.y}}, true));
        }
    }

    void readPath(const XmlTag& tag, const SvgGroup& group) {
        const std::string* d = tag.find("d");
        const SvgPath path = svgPath(d ? *d : "");
        for (std::size_t i = 0; i < path.curves; ++i) {
            passed_.count(tag.name, WhyPassed::Curve);
        }
        if (!path.unread.empty()) {
            notes_.add({IssueCode::Syntax, lineOf(tag),
                        statement(phrase::kPathUnread, {{"text", path.unread}})});
        }
        addAll(tag, group, path.strokes);
    }

    XmlTags tags_;
    std::vector<SvgGroup> groups_; // one for each open tag
    Layers layers_;
    PassedOver passed_;
    SomeOfEach notes_;
    LinesFound found_;
};

} // namespace

Outcome<LinesFound> readSvg(std::string_view text, const std::vector<std::string>& layers) {
    return SvgReader(text).read(layers);
}

} // namespace gusset
