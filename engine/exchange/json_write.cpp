// The model file, written. Keys that say what is so anyway are left out.

#include "exchange/format_words.hpp"
#include "exchange/json_text.hpp"

namespace gusset {

namespace {

class ModelWriter {
public:
    ModelWriter(const Truss& truss, Layout layout) : truss_(truss), out_(layout) {}

    std::string write() {
        out_.beginObject();
        out_.key("gusset");
        out_.whole(kFormatVersion);
        textUnlessEmpty("title", truss_.title);
        writeUnits();
        writeAll("joints", truss_.joints, true);
        writeAll("members", truss_.members, true);
        writeAll("supports", truss_.supports);
        writeAll("loads", truss_.loads);
        writeAll("materials", truss_.materials);
        writeAll("sections", truss_.sections);
        writeAll("combinations", truss_.combinations);
        writeAll("moving", truss_.moving);
        writeChecks();
        writeClass();
        if (!truss_.exercise.empty()) {
            out_.key("exercise");
            out_.json(truss_.exercise);
        }
        out_.members(truss_.unknown);
        out_.endObject();
        return out_.take();
    }

private:
    void text(std::string_view key, std::string_view value) {
        out_.key(key);
        out_.text(value);
    }
    void textUnlessEmpty(std::string_view key, std::string_view value) {
        if (!value.empty()) {
            text(key, value);
        }
    }
    void number(std::string_view key, double value) {
        out_.key(key);
        out_.number(value);
    }
    void numberUnlessZero(std::string_view key, double value) {
        if (value != 0) {
            number(key, value);
        }
    }
    void numberIfThere(std::string_view key, std::optional<double> value) {
        if (value) {
            number(key, *value);
        }
    }
    void components(double fx, double fy) {
        numberUnlessZero("fx", fx);
        if (fy != 0 || fx == 0) { // one of the two says what kind of load this is
            number("fy", fy);
        }
    }
    void joint(std::string_view key, JointId id) { text(key, truss_.joints[id.at()].label); }
    void path(std::string_view key, const std::vector<JointId>& joints) {
        out_.key(key);
        out_.beginArray();
        for (const JointId id : joints) {
            out_.text(truss_.joints[id.at()].label);
        }
        out_.endArray();
    }

    template <class Thing>
    void writeAll(std::string_view key, const std::vector<Thing>& things, bool needed = false) {
        if (things.empty() && !needed) {
            return;
        }
        out_.key(key);
        out_.beginArray();
        for (const Thing& thing : things) {
            out_.beginObject();
            writeKeys(thing);
            out_.members(thing.unknown);
            out_.endObject();
        }
        out_.endArray();
    }

    void writeUnits() {
        const Units& units = truss_.units;
        out_.key("units");
        out_.beginObject();
        text("force", symbolOf(units.force));
        text("length", symbolOf(units.length));
        text("section", symbolOf(units.section));
        text("stress", symbolOf(units.stress));
        text("displacement", symbolOf(units.displacement));
        out_.members(units.unknown);
        out_.endObject();
    }

    void writeKeys(const Joint& it) {
        text("id", it.label);
        number("x", it.at.x);
        number("y", it.at.y);
    }
    void writeKeys(const Member& it) {
        joint("a", it.a);
        joint("b", it.b);
        textUnlessEmpty("section", it.section);
        numberUnlessZero("dT", it.warming);
        numberUnlessZero("misfit", it.misfit);
    }
    void writeKeys(const Support& it) {
        joint("joint", it.joint);
        text("kind", wordOf(kSupportWords, it.kind));
        if (it.kind == SupportKind::Roller) {
            number("reaction", it.reaction);
            numberUnlessZero("settle", it.settleAlong);
        } else if (it.settle != Vec2{} || !it.unknownSettle.empty()) {
            out_.key("settle");
            out_.beginObject();
            numberUnlessZero("x", it.settle.x);
            numberUnlessZero("y", it.settle.y);
            out_.members(it.unknownSettle);
            out_.endObject();
        }
    }
    void writeKeys(const Load& it) {
        std::visit([&](const auto& what) { writeLoad(what); }, it.what);
        textUnlessEmpty("case", it.caseId);
    }
    void writeLoad(const JointForce& it) {
        joint("joint", it.joint);
        components(it.fx, it.fy);
    }
    void writeLoad(const AngledForce& it) {
        joint("joint", it.joint);
        number("size", it.size);
        number("angle", it.angle);
    }
    void writeLoad(const ChordLoad& it) {
        path("chord", it.chord);
        number("perLength", it.perLength);
    }
    void writeLoad(const MemberForce& it) {
        path("member", {it.from, it.to});
        number("at", it.at);
        components(it.fx, it.fy);
    }
    void writeLoad(const SelfWeight&) {
        out_.key("selfWeight");
        out_.boolean(true);
    }
    void writeKeys(const Material& it) {
        text("id", it.id);
        numberIfThere("E", it.E);
        numberIfThere("strength", it.strength);
        numberIfThere("density", it.density);
        numberIfThere("alpha", it.alpha);
    }
    void writeKeys(const Section& it) {
        text("id", it.id);
        textUnlessEmpty("material", it.material);
        numberIfThere("A", it.area);
        numberIfThere("r", it.radius);
        textUnlessEmpty("shape", it.shape);
        for (const auto& [key, value] : it.dimensions) {
            number(key, value);
        }
    }
    void writeKeys(const Combination& it) {
        text("id", it.id);
        out_.key("factors");
        out_.beginObject();
        for (const auto& [caseId, factor] : it.factors) {
            number(caseId, factor);
        }
        out_.endObject();
    }
    void writeKeys(const MovingLoad& it) {
        text("id", it.id);
        path("path", it.path);
        writeAll("axles", it.axles);
        if (it.uniform) {
            out_.key("uniform");
            out_.beginObject();
            number("perLength", it.uniform->perLength);
            numberIfThere("length", it.uniform->length);
            out_.members(it.uniform->unknown);
            out_.endObject();
        }
    }
    void writeKeys(const Axle& it) {
        number("at", it.at);
        number("force", it.force);
    }

    // A word that is the default of the format need not be written.
    template <class Value, std::size_t Count>
    void word(std::string_view key, const std::array<Word<Value>, Count>& words, Value value,
              Value fallback) {
        if (value != fallback) {
            text(key, wordOf(words, value));
        }
    }

    void writeChecks() {
        const CheckSettings& it = truss_.checks;
        const CheckSettings usual;
        if (it == usual) {
            return;
        }
        out_.key("checks");
        out_.beginObject();
        word("formula", kFormulaWords, it.formula, usual.formula);
        word("curve", kCurveWords, it.curve, usual.curve);
        word("safety", kSafetyWords, it.safety, usual.safety);
        for (const CheckNumber& each : kCheckNumbers) {
            if (it.*each.value != usual.*each.value) {
                number(each.key, it.*each.value);
            }
        }
        out_.members(it.unknown);
        out_.endObject();
    }

    void writeClass() {
        const ClassSettings& it = truss_.classSettings;
        const ClassSettings usual;
        if (it == usual) {
            return;
        }
        out_.key("class");
        out_.beginObject();
        word("moments", kMomentWords, it.moments, usual.moments);
        word("angles", kAngleWords, it.angles, usual.angles);
        word("axes", kAxisWords, it.axes, usual.axes);
        word("symbols", kSymbolWords, it.symbols, usual.symbols);
        word("senses", kSenseWords, it.senses, usual.senses);
        if (it.form != usual.form || it.digits != usual.digits ||
            it.decimalSign != usual.decimalSign || it.carry != usual.carry ||
            !it.unknownNumbers.empty()) {
            out_.key("numbers");
            out_.beginObject();
            word("form", kFormWords, it.form, usual.form);
            if (it.digits != usual.digits) {
                number("digits", it.digits);
            }
            word("sign", kSignWords, it.decimalSign, usual.decimalSign);
            word("carry", kCarryWords, it.carry, usual.carry);
            out_.members(it.unknownNumbers);
            out_.endObject();
        }
        out_.members(it.unknown);
        out_.endObject();
    }

    const Truss& truss_;
    JsonText out_;
};

} // namespace

std::string writeModel(const Truss& truss, Layout layout) {
    std::string text = ModelWriter(truss, layout).write();
    return layout == Layout::Indented ? text + "\n" : text;
}

} // namespace gusset
