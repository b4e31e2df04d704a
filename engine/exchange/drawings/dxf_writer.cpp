// Source for the format: Autodesk, DXF Reference (2024), for the sections and groups that release
// 12 has; names of layers and blocks in its letters, at most 31. $INSUNITS is of a later release:
// what does not know it passes over it, and others need it to know the scale.

#include "exchange/drawings/dxf_writer.hpp"

#include "core/index.hpp"
#include "core/number.hpp"
#include "core/statement.hpp"
#include "core/utf8.hpp"
#include "exchange/drawings/outline.hpp"
#include "phrases/model/drawn.hpp"

#include <algorithm>
#include <cstdio>
#include <map>
#include <utility>

namespace gusset {

namespace {

constexpr std::size_t kLongestLayerName = 31;
// Of the larger side of the truss.
constexpr double kTextHeight = 0.02;
constexpr double kJointRadius = 0.006;

constexpr const char* kJointLayer = "JOINTS";
constexpr const char* kLabelLayer = "LABELS";
constexpr const char* kSupportLayer = "SUPPORTS";
constexpr const char* kLoadLayer = "LOADS";
constexpr const char* kJointBlock = "JOINT";

// Colours by their index, of which every program has the first nine.
enum class DxfColour { Red = 1, Green = 3, Blue = 5, Magenta = 6, White = 7 };

class DxfText {
public:
    void group(int code, std::string_view value) {
        char padded[16];
        std::snprintf(padded, sizeof padded, "%3d", code);
        text_ += std::string(padded) + "\r\n" + std::string(value) + "\r\n";
    }
    void whole(int code, int value) { group(code, std::to_string(value)); }
    void real(int code, double value) {
        std::string number = shortestNumber(value);
        if (number.find_first_of(".e") == number.npos) {
            number += ".0";
        }
        group(code, number);
    }
    void point(int code, Vec2 at) {
        real(code, at.x);
        real(code + 10, at.y);
        real(code + 20, 0);
    }
    [[nodiscard]] std::string take() { return std::move(text_); }

private:
    std::string text_;
};

// As text in a drawing: what is not ASCII by its number, the signs that mean something there
// doubled or named.
std::string dxfLettering(std::string_view text) {
    std::string out;
    while (!text.empty()) {
        const Character letter = firstCharacter(text);
        char code[16];
        if (letter.code == 0xB0) {
            out += "%%d"; // degrees
        } else if (letter.code == '%') {
            out += "%%%";
        } else if (letter.code == '^') {
            out += "^ ";
        } else if (letter.code >= ' ' && letter.code < 0x7F) {
            out += static_cast<char>(letter.code);
        } else if (letter.code > 0xFFFF || letter.code < ' ') {
            out += '?';
        } else {
            std::snprintf(code, sizeof code, "\\U+%04X", static_cast<unsigned>(letter.code));
            out += code;
        }
        text.remove_prefix(letter.bytes);
    }
    return out;
}

// Capitals, digits and three signs.
std::string layerName(std::string_view section) {
    std::string name = "SECTION_";
    for (const char c : section) {
        const bool isSmall = c >= 'a' && c <= 'z';
        const bool isKept = (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-';
        name += isSmall ? static_cast<char>(c - 'a' + 'A') : isKept ? c : '_';
    }
    return name.substr(0, kLongestLayerName);
}

class DxfWriter {
public:
    DxfWriter(const PhraseBook& book, const Truss& truss, LengthUnit unit)
        : book_(book), truss_(truss), unit_(unit) {
        const Extent box = extent(truss);
        low_ = drawn(box.low);
        high_ = drawn(box.high);
        const double side = std::max(high_.x - low_.x, high_.y - low_.y);
        size_ = side > 0 ? side : 1;
        layersOfMembers();
    }

    std::string write() {
        header();
        tables();
        blocks();
        section("ENTITIES");
        members();
        joints();
        supports();
        loads();
        endSection();
        out_.group(0, "EOF");
        return out_.take();
    }

private:
    [[nodiscard]] double drawn(double value) const {
        return converted(value, truss_.units.length, unit_);
    }
    [[nodiscard]] Vec2 drawn(Vec2 at) const { return {drawn(at.x), drawn(at.y)}; }
    [[nodiscard]] Vec2 placeOf(JointId joint) const { return drawn(truss_.joints[joint.at()].at); }
    [[nodiscard]] const std::string& label(JointId joint) const {
        return truss_.joints[joint.at()].label;
    }

    // Two sections of which only the same letters remain share no layer.
    std::string layerOfSection(const std::string& id) {
        const auto known = sectionLayers_.find(id);
        if (known != sectionLayers_.end()) {
            return known->second;
        }
        std::string name = id.empty() ? "MEMBERS" : layerName(id);
        for (int i = 2; std::find(layers_.begin(), layers_.end(), name) != layers_.end(); ++i) {
            const std::string number = "_" + std::to_string(i);
            name = layerName(id).substr(0, kLongestLayerName - number.size()) + number;
        }
        sectionLayers_[id] = name;
        return name;
    }

    void layersOfMembers() {
        const std::optional<std::vector<bool>> outline = outlineOf(truss_);
        for (std::size_t i = 0; i < truss_.members.size(); ++i) {
            const std::string layer = outline ? ((*outline)[i] ? "OUTLINE" : "WEB")
                                              : layerOfSection(truss_.members[i].section);
            layerOf_.push_back(layer);
            if (std::find(layers_.begin(), layers_.end(), layer) == layers_.end()) {
                layers_.push_back(layer);
            }
        }
    }

    void section(std::string_view name) {
        out_.group(0, "SECTION");
        out_.group(2, name);
    }
    void endSection() { out_.group(0, "ENDSEC"); }

    [[nodiscard]] static int codeOf(LengthUnit unit) { // of $INSUNITS
        switch (unit) {
        case LengthUnit::in:
            return 1;
        case LengthUnit::ft:
            return 2;
        case LengthUnit::mm:
            return 4;
        case LengthUnit::cm:
            return 5;
        case LengthUnit::m:
            return 6;
        case LengthUnit::Plain:
            break;
        }
        return 0;
    }

    void header() {
        section("HEADER");
        out_.group(9, "$ACADVER");
        out_.group(1, "AC1009");
        out_.group(9, "$EXTMIN");
        out_.point(10, low_);
        out_.group(9, "$EXTMAX");
        out_.point(10, high_);
        if (const int code = codeOf(unit_); code != 0) {
            out_.group(9, "$INSUNITS");
            out_.whole(70, code);
        }
        endSection();
    }

    void table(std::string_view name, std::size_t entries) {
        out_.group(0, "TABLE");
        out_.group(2, name);
        out_.whole(70, toInt(entries));
    }
    void entry(std::string_view kind, std::string_view name) {
        out_.group(0, kind);
        out_.group(2, name);
        out_.whole(70, 0);
    }
    void layer(std::string_view name, DxfColour colour) {
        entry("LAYER", name);
        out_.whole(62, static_cast<int>(colour));
        out_.group(6, "CONTINUOUS");
    }

    void tables() {
        section("TABLES");
        table("LTYPE", 1);
        entry("LTYPE", "CONTINUOUS");
        out_.group(3, "");
        out_.whole(72, 65);
        out_.whole(73, 0);
        out_.real(40, 0);
        out_.group(0, "ENDTAB");
        table("LAYER", 5 + layers_.size());
        layer("0", DxfColour::White);
        for (const std::string& name : layers_) {
            layer(name, name == "WEB" ? DxfColour::Blue : DxfColour::White);
        }
        layer(kJointLayer, DxfColour::White);
        layer(kLabelLayer, DxfColour::Green);
        layer(kSupportLayer, DxfColour::Magenta);
        layer(kLoadLayer, DxfColour::Red);
        out_.group(0, "ENDTAB");
        table("STYLE", 1);
        entry("STYLE", "STANDARD");
        out_.real(40, 0);
        out_.real(41, 1);
        out_.real(50, 0);
        out_.whole(71, 0);
        out_.real(42, kTextHeight * size_);
        out_.group(3, "txt");
        out_.group(4, "");
        out_.group(0, "ENDTAB");
        endSection();
    }

    void blocks() {
        section("BLOCKS");
        out_.group(0, "BLOCK");
        out_.group(8, "0");
        out_.group(2, kJointBlock);
        out_.whole(70, 0);
        out_.point(10, {});
        out_.group(3, kJointBlock);
        entity("CIRCLE", "0");
        out_.point(10, {});
        out_.real(40, kJointRadius * size_);
        entity("ENDBLK", "0");
        endSection();
    }

    void entity(std::string_view kind, std::string_view layer) {
        out_.group(0, kind);
        out_.group(8, layer);
    }

    void members() {
        for (std::size_t i = 0; i < truss_.members.size(); ++i) {
            entity("LINE", layerOf_[i]);
            out_.point(10, placeOf(truss_.members[i].a));
            out_.point(11, placeOf(truss_.members[i].b));
        }
    }

    // The first line of text beside a place is number 0, those of a higher number are below it.
    void text(std::string_view layer, Vec2 beside, int number, const std::string& says) {
        const double height = kTextHeight * size_;
        entity("TEXT", layer);
        out_.point(10, beside + Vec2{0.6 * height, (0.6 - 1.6 * number) * height});
        out_.real(40, height);
        out_.group(1, dxfLettering(says));
    }

    void joints() {
        for (const Joint& joint : truss_.joints) {
            entity("INSERT", kJointLayer);
            out_.group(2, kJointBlock);
            out_.point(10, drawn(joint.at));
            text(kLabelLayer, drawn(joint.at), 0, joint.label);
        }
    }

    void supports() {
        std::map<int, int> lines;
        for (const Support& support : truss_.supports) {
            const Statement says = support.kind == SupportKind::Pin
                                       ? Statement(phrase::kDrawnPin)
                                       : statement(phrase::kDrawnRoller,
                                                   {{"angle", shortestNumber(support.reaction)}});
            text(kSupportLayer, placeOf(support.joint), ++lines[support.joint.index],
                 said(book_, says));
            below_[support.joint.index] = lines[support.joint.index];
        }
    }

    [[nodiscard]] Statement textOf(const Load& load) const {
        const std::string unit = symbolOf(truss_.units.force);
        const auto components = [&](double fx, double fy) {
            return statement(
                phrase::kDrawnForce,
                {{"fx", shortestNumber(fx)}, {"fy", shortestNumber(fy)}, {"unit", unit}});
        };
        if (const auto* force = std::get_if<JointForce>(&load.what)) {
            return components(force->fx, force->fy);
        }
        if (const auto* force = std::get_if<MemberForce>(&load.what)) {
            return components(force->fx, force->fy);
        }
        if (const auto* force = std::get_if<AngledForce>(&load.what)) {
            return statement(phrase::kDrawnAngled, {{"size", shortestNumber(force->size)},
                                                    {"unit", unit},
                                                    {"angle", shortestNumber(force->angle)}});
        }
        if (const auto* chord = std::get_if<ChordLoad>(&load.what)) {
            return statement(phrase::kDrawnChord,
                             {{"size", shortestNumber(chord->perLength)},
                              {"force", unit},
                              {"length", std::string(symbolOf(truss_.units.length))},
                              {"from", label(chord->chord.front())},
                              {"to", label(chord->chord.back())}});
        }
        return phrase::kDrawnSelfWeight;
    }

    // A load on a member stands at its place, others at their first joint, self-weight at the first
    // joint of all.
    void loads() {
        if (truss_.joints.empty()) {
            return;
        }
        for (const Load& load : truss_.loads) {
            const std::vector<JointId> joints = jointsOf(load);
            const JointId joint = joints.empty() ? JointId{0} : joints.front();
            Statement says = textOf(load);
            if (!load.caseId.empty()) {
                says = statement(phrase::kDrawnInCase, {{"load", says}, {"case", load.caseId}});
            }
            Vec2 place = placeOf(joint);
            int number = 0;
            if (const auto* force = std::get_if<MemberForce>(&load.what)) {
                const Vec2 along = placeOf(force->to) - place;
                const double size = length(along);
                place = size > 0 ? place + (drawn(force->at) / size) * along : place;
            } else {
                number = ++below_[joint.index];
            }
            text(kLoadLayer, place, number, said(book_, says));
        }
    }

    const PhraseBook& book_;
    const Truss& truss_;
    LengthUnit unit_;
    Vec2 low_;
    Vec2 high_;
    double size_ = 1;
    std::vector<std::string> layers_; // of members
    std::vector<std::string> layerOf_;
    std::map<std::string, std::string> sectionLayers_;
    std::map<int, int> below_; // how many lines of text stand below the label of a joint
    DxfText out_;
};

} // namespace

std::string writeDxf(const PhraseBook& book, const Truss& truss, LengthUnit unit) {
    return DxfWriter(book, truss, unit).write();
}

} // namespace gusset
