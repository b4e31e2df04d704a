// Source for the format: Autodesk, DXF Reference (2024): HEADER, TABLES (LAYER), BLOCKS, ENTITIES
// (LINE, LWPOLYLINE, POLYLINE, VERTEX, POINT, INSERT).

#include "exchange/drawings/dxf_reader.hpp"

#include "core/tolerance.hpp"
#include "exchange/drawings/drawn_number.hpp"
#include "exchange/drawings/dxf_groups.hpp"
#include "exchange/drawings/layers.hpp"
#include "exchange/drawings/passed_over.hpp"
#include "exchange/drawings/some_of_each.hpp"
#include "model/validate/characters.hpp"
#include "phrases/faults/drawings.hpp"
#include "phrases/faults/reading.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace gusset {

namespace {

constexpr std::array<std::string_view, 8> kCurves{"ARC",   "CIRCLE", "ELLIPSE", "SPLINE",
                                                  "HATCH", "HELIX",  "SOLID",   "TRACE"};
constexpr std::array<std::string_view, 9> kTexts{"TEXT",      "MTEXT",  "ATTRIB",
                                                 "ATTDEF",    "LEADER", "DIMENSION",
                                                 "TOLERANCE", "TABLE",  "MULTILEADER"};
constexpr std::array<std::string_view, 7> kInSpace{"3DFACE", "3DSOLID", "BODY",  "MESH",
                                                   "REGION", "SURFACE", "3DLINE"};

// Bits of group 70 of a POLYLINE.
constexpr int kClosed = 1;
constexpr int kCurveFit = 2 | 4;
constexpr int kMesh = 16 | 64;
// Of a LAYER: frozen.
constexpr int kFrozen = 1;

template <class List>
bool isAmong(const List& list, std::string_view name) {
    return std::find(list.begin(), list.end(), name) != list.end();
}

WhyPassed whyPassed(std::string_view kind) {
    return isAmong(kCurves, kind)    ? WhyPassed::Curve
           : isAmong(kTexts, kind)   ? WhyPassed::Text
           : isAmong(kInSpace, kind) ? WhyPassed::Space
                                     : WhyPassed::Other;
}

std::optional<LengthUnit> unitOf(int code) { // $INSUNITS
    switch (code) {
    case 1:
        return LengthUnit::in;
    case 2:
        return LengthUnit::ft;
    case 4:
        return LengthUnit::mm;
    case 5:
        return LengthUnit::cm;
    case 6:
        return LengthUnit::m;
    default:
        return std::nullopt;
    }
}

struct Corner {
    double x = 0;
    double y = 0;
    double z = 0;
    double bulge = 0;
    [[nodiscard]] Vec2 at() const { return {x, y}; }
};

struct Corners {
    std::vector<Corner> all;
    bool isClosed = false;
};

class DxfReader {
public:
    explicit DxfReader(const DxfRecords& read) : records_(read.records) {}

    // Whether there was an ENTITIES section.
    bool read() {
        bool hasEntities = false;
        std::string_view section;
        for (at_ = 0; at_ < records_.size(); ++at_) {
            const DxfRecord& record = records_[at_];
            if (record.name == "SECTION") {
                section = record.textOf(2);
                hasEntities = hasEntities || section == "ENTITIES";
                if (section == "HEADER") {
                    readHeader(record);
                }
            } else if (record.name == "ENDSEC") {
                section = {};
            } else if (section == "TABLES" && record.name == "LAYER") {
                readLayer(record);
            } else if (section == "BLOCKS") {
                passInBlock(record);
            } else if (section == "ENTITIES") {
                readEntity(record);
            }
        }
        return hasEntities;
    }

    [[nodiscard]] Outcome<LinesFound> take(const std::vector<std::string>& chosen) {
        found_.notes = notes_.take();
        for (Issue& note : passed_.notes()) {
            found_.notes.push_back(std::move(note));
        }
        if (Issues faults = layers_.choose(chosen, found_); !faults.empty()) {
            return faults;
        }
        return std::move(found_);
    }

    void note(IssueCode code, Statement place, Statement says) {
        notes_.add({code, std::move(place), std::move(says)});
    }

private:
    static Statement lineOf(std::size_t line) {
        return statement(phrase::kPlaceLineOfFile, {{"line", line}});
    }
    static std::string layerOf(const DxfRecord& record) {
        const std::string name = dxfName(record.textOf(8));
        return name.empty() ? "0" : name;
    }

    void readHeader(const DxfRecord& header) {
        std::string_view variable;
        for (const DxfGroup& group : header.groups) {
            if (group.code == 9) {
                variable = group.value;
            } else if (variable == "$INSUNITS") {
                const int code = drawnWhole(group.value).value_or(0);
                found_.unit = unitOf(code);
                if (!found_.unit && code != 0) {
                    note(IssueCode::OutOfRange, lineOf(group.line),
                         statement(phrase::kUnitElsewhere, {{"code", code}}));
                }
            }
        }
    }

    void readLayer(const DxfRecord& record) {
        if (record.wholeOf(62) < 0 || (record.wholeOf(70) & kFrozen) != 0) {
            layers_.hide(dxfName(record.textOf(2)));
        }
    }

    void passInBlock(const DxfRecord& record) {
        constexpr std::array<std::string_view, 5> kParts{"BLOCK", "ENDBLK", "VERTEX", "SEQEND",
                                                         "ATTDEF"};
        if (!isAmong(kParts, record.name)) {
            pass(record, WhyPassed::InBlock);
        }
    }

    void pass(const DxfRecord& record, WhyPassed why) {
        passed_.count(spelled(dxfName(record.name)), why);
    }

    void readEntity(const DxfRecord& record) {
        const bool isShown = record.wholeOf(60) == 0;
        if (record.wholeOf(67) == 1) {
            pass(record, WhyPassed::Paper);
        } else if (!isShown) {
            pass(record, WhyPassed::Hidden);
        } else if (record.name == "LINE") {
            readLine(record);
        } else if (record.name == "LWPOLYLINE") {
            readLightPolyline(record);
        } else if (record.name == "POINT" || record.name == "INSERT") {
            readMark(record);
        } else if (record.name != "POLYLINE") {
            pass(record, whyPassed(record.name));
        }
        if (record.name == "POLYLINE") {
            readPolyline(record, isShown && record.wholeOf(67) == 0);
        } else if (record.name == "INSERT" && record.wholeOf(66) == 1) {
            skipAttributes();
        }
    }

    void skipAttributes() {
        while (at_ + 1 < records_.size() && records_[at_ + 1].name == "ATTRIB") {
            pass(records_[++at_], WhyPassed::Text);
        }
        at_ += at_ + 1 < records_.size() && records_[at_ + 1].name == "SEQEND" ? 1 : 0;
    }

    // A coordinate; `otherwise` if it is not given. Nothing, with a note, if it can't be read.
    std::optional<double> coordinate(const DxfRecord& record, int code,
                                     std::optional<double> otherwise) {
        const DxfGroup* group = record.find(code);
        if (!group) {
            if (!otherwise) {
                note(IssueCode::Missing, lineOf(record.line),
                     statement(phrase::kEntityIncomplete, {{"kind", std::string(record.name)}}));
            }
            return otherwise;
        }
        return coordinate(record, *group);
    }
    std::optional<double> coordinate(const DxfRecord& record, const DxfGroup& group) {
        const std::optional<double> value = drawnNumber(group.value);
        if (!value) {
            note(IssueCode::NotFinite, lineOf(group.line),
                 statement(phrase::kEntityUnread, {{"kind", std::string(record.name)},
                                                   {"text", dxfName(group.value.substr(0, 40))}}));
        }
        return value;
    }

    std::optional<Corner> cornerOf(const DxfRecord& record, int codeOfX) {
        const auto x = coordinate(record, codeOfX, std::nullopt);
        const auto y = x ? coordinate(record, codeOfX + 10, std::nullopt) : std::nullopt;
        const auto z = y ? coordinate(record, codeOfX + 20, 0.0) : std::nullopt;
        const auto bulge = z ? coordinate(record, 42, 0.0) : std::nullopt;
        return bulge ? std::optional(Corner{*x, *y, *z, *bulge}) : std::nullopt;
    }

    static bool isFlat(const Corner& corner) {
        return std::abs(corner.z) <= kOutOfPlane * (std::abs(corner.x) + std::abs(corner.y)) ||
               corner.z == 0;
    }

    // Coordinates of polylines, points and inserts count in a system of their own, which is that of
    // the drawing for an extrusion along z, and its mirror image for one against z.
    enum class Facing { Front, Back, Elsewhere };
    static Facing facing(const DxfRecord& record) {
        const double x = drawnNumber(record.textOf(210)).value_or(0);
        const double y = drawnNumber(record.textOf(220)).value_or(0);
        const double z = drawnNumber(record.textOf(230)).value_or(1);
        const bool isAlongZ = std::abs(x) + std::abs(y) <= kOutOfPlane * std::abs(z);
        return !isAlongZ ? Facing::Elsewhere : z > 0 ? Facing::Front : Facing::Back;
    }

    void readLine(const DxfRecord& record) {
        const std::optional<Corner> from = cornerOf(record, 10);
        const std::optional<Corner> to = from ? cornerOf(record, 11) : std::nullopt;
        if (!to) {
            return;
        }
        if (!isFlat(*from) || !isFlat(*to)) {
            pass(record, WhyPassed::Space);
            return;
        }
        layers_.add(layerOf(record), {from->at(), to->at()});
    }

    void readMark(const DxfRecord& record) {
        const std::optional<Corner> corner = cornerOf(record, 10);
        if (!corner) {
            return;
        }
        const Facing looks = facing(record);
        if (!isFlat(*corner) || looks == Facing::Elsewhere) {
            pass(record, WhyPassed::Space);
            return;
        }
        const bool isMirrored = record.name == "INSERT" && looks == Facing::Back;
        layers_.mark(layerOf(record), {isMirrored ? -corner->x : corner->x, corner->y});
    }

    void readLightPolyline(const DxfRecord& record) {
        Corners corners;
        corners.isClosed = (record.wholeOf(70) & kClosed) != 0;
        const std::optional<double> z = coordinate(record, 38, 0.0);
        const auto countOf = [&](int code) {
            return std::count_if(record.groups.begin(), record.groups.end(),
                                 [&](const DxfGroup& group) { return group.code == code; });
        };
        if (countOf(10) != countOf(20)) {
            note(IssueCode::Missing, lineOf(record.line),
                 statement(phrase::kEntityIncomplete, {{"kind", std::string(record.name)}}));
            return;
        }
        for (const DxfGroup& group : record.groups) {
            if (group.code != 10 && group.code != 20 && group.code != 42) {
                continue;
            }
            const std::optional<double> value = coordinate(record, group);
            if (!value || !z) {
                return;
            }
            if (group.code == 10) {
                corners.all.push_back({*value, 0, *z, 0});
            } else if (!corners.all.empty()) {
                (group.code == 20 ? corners.all.back().y : corners.all.back().bulge) = *value;
            }
        }
        addCorners(record, corners);
    }

    // A POLYLINE with the VERTEX records that follow, up to its SEQEND.
    void readPolyline(const DxfRecord& record, bool isRead) {
        Corners corners;
        const int flags = record.wholeOf(70);
        corners.isClosed = (flags & kClosed) != 0;
        bool isSound = true;
        while (at_ + 1 < records_.size() && records_[at_ + 1].name == "VERTEX") {
            ++at_;
            const std::optional<Corner> corner =
                isRead && isSound ? cornerOf(records_[at_], 10) : std::nullopt;
            isSound = isSound && corner;
            if (corner) {
                corners.all.push_back(*corner);
            }
        }
        const bool isEnded = at_ + 1 < records_.size() && records_[at_ + 1].name == "SEQEND";
        at_ += isEnded ? 1 : 0;
        if (!isRead) {
            return;
        }
        if (!isEnded) {
            note(IssueCode::Damaged, lineOf(record.line), phrase::kPolylineOpenEnded);
        }
        if ((flags & kMesh) != 0) {
            pass(record, WhyPassed::Space);
        } else if ((flags & kCurveFit) != 0) {
            pass(record, WhyPassed::Curve);
        } else if (isSound) {
            addCorners(record, corners);
        }
    }

    void addCorners(const DxfRecord& record, Corners& corners) {
        const Facing looks = facing(record);
        if (looks == Facing::Elsewhere ||
            !std::all_of(corners.all.begin(), corners.all.end(), isFlat)) {
            pass(record, WhyPassed::Space);
            return;
        }
        for (Corner& corner : corners.all) {
            corner.x = looks == Facing::Back ? -corner.x : corner.x;
        }
        const std::size_t count = corners.all.size();
        const std::size_t sides =
            corners.isClosed && count > 2 ? count : std::max<std::size_t>(count, 1) - 1;
        for (std::size_t i = 0; i < sides; ++i) {
            const Corner& from = corners.all[i];
            if (from.bulge != 0) {
                pass(record, WhyPassed::Curve);
            } else {
                layers_.add(layerOf(record), {from.at(), corners.all[(i + 1) % count].at()});
            }
        }
    }

    const std::vector<DxfRecord>& records_;
    std::size_t at_ = 0;
    Layers layers_;
    PassedOver passed_;
    SomeOfEach notes_;
    LinesFound found_;
};

} // namespace

Outcome<LinesFound> readDxf(std::string_view text, const std::vector<std::string>& layers) {
    const Outcome<DxfRecords> records = dxfRecords(text);
    if (!records) {
        return records.issues();
    }
    DxfReader reader(records.value());
    if (!reader.read()) {
        return Issue{IssueCode::Missing, phrase::kPlaceFile, phrase::kNoEntities};
    }
    if (records.value().isCutOff) {
        reader.note(IssueCode::Damaged, phrase::kPlaceFile, phrase::kCutOff);
    }
    return reader.take(layers);
}

} // namespace gusset
