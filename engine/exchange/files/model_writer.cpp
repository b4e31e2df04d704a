// Writing the model file. Keys with default values are left out.

#include "exchange/files/model_file.hpp"
#include "exchange/files/written_things.hpp"

namespace gusset {

namespace {

class ModelWriter {
public:
    ModelWriter(const Truss& truss, Layout layout) : truss_(truss), out_(layout) {}

    std::string write() {
        out_.beginObject();
        out_.whole("gusset", kFormatVersion);
        writeTitle();
        writeUnits();
        writeAll("joints", truss_.joints, true);
        writeAll("members", truss_.members, true);
        writeAll("supports", truss_.supports);
        writeAll("loads", truss_.loads);
        writeOthers();
        out_.endObject();
        return out_.take();
    }

    std::string writeRest() {
        out_.beginObject();
        writeTitle();
        if (truss_.units != Units{}) {
            writeUnits();
        }
        writeOthers();
        out_.endObject();
        return out_.take();
    }

    // Called by putThing with the keys of a thing: see written_things.
    void number(std::string_view key, double value) { out_.number(key, value); }
    void text(std::string_view key, std::string_view value) { out_.text(key, value); }
    void joint(std::string_view key, JointId id) { text(key, truss_.joints[id.at()].label); }
    void path(std::string_view key, const std::vector<JointId>& joints) {
        out_.key(key);
        out_.beginArray();
        for (const JointId id : joints) {
            out_.text(truss_.joints[id.at()].label);
        }
        out_.endArray();
    }
    void yes(std::string_view key) { out_.yes(key); }
    template <class Write>
    void nested(std::string_view key, const UnknownKeys& unknown, const Write& write) {
        out_.object(key, [&] {
            write(out_);
            out_.members(unknown);
        });
    }

private:
    void writeTitle() {
        if (!truss_.title.empty()) {
            text("title", truss_.title);
        }
    }

    void writeOthers() {
        writeAll("materials", truss_.materials);
        writeAll("sections", truss_.sections);
        writeAll("cases", truss_.cases);
        writeAll("combinations", truss_.combinations);
        writeAll("moving", truss_.moving);
        writeChecks();
        writeClass();
        if (!truss_.exercise.empty()) {
            out_.key("exercise");
            out_.json(truss_.exercise);
        }
        if (!truss_.lesson.empty()) {
            out_.key("lesson");
            out_.json(truss_.lesson);
        }
        if (!truss_.form.empty()) {
            out_.key("form");
            out_.json(truss_.form);
        }
        out_.members(truss_.unknown);
    }

    template <class Thing>
    void writeAll(std::string_view key, const std::vector<Thing>& things, bool always = false) {
        if (things.empty() && !always) {
            return;
        }
        out_.objects(key, things, [&](const Thing& thing) {
            putThing(*this, thing);
            writeInner(thing);
            out_.members(thing.unknown);
        });
    }

    // What the tables of fields do not cover.
    template <class Thing>
    void writeInner(const Thing&) {}
    void writeInner(const Section& section) {
        for (const auto& [key, value] : section.dimensions) {
            number(key, value);
        }
        if (section.holes) {
            putInner(*this, "holes", *section.holes);
        }
    }
    void writeInner(const Combination& combination) {
        nested("factors", "", [&](JsonText& text) {
            for (const auto& [caseId, factor] : combination.factors) {
                text.number(caseId, factor);
            }
        });
    }
    void writeInner(const MovingLoad& moving) {
        writeAll("axles", moving.axles);
        if (moving.uniform) {
            nested("uniform", moving.uniform->unknown,
                   [&](JsonText&) { putThing(*this, *moving.uniform); });
        }
    }

    template <class Unit>
    void writeSetting(const UnitField<Unit>& field, const Units& units, const Units&) {
        text(field.key, symbolOf(units.*field.value));
    }
    // The format's defaults need not be written.
    template <class Settings, class Value>
    void writeSetting(const WordField<Settings, Value>& field, const Settings& settings,
                      const Settings& usual) {
        const Value value = settings.*field.value;
        if (value == usual.*field.value) {
            return;
        }
        if constexpr (std::is_same_v<Value, char>) {
            text(field.key, std::string(1, value));
        } else {
            text(field.key, wordOf(field.words, value));
        }
    }
    void writeSetting(const DigitsField& field, const ClassSettings& settings,
                      const ClassSettings& usual) {
        if (settings.*field.value != usual.*field.value) {
            out_.whole(field.key, settings.*field.value);
        }
    }
    template <class Fields, class Settings>
    void writeSettings(const Fields& fields, const Settings& settings) {
        const Settings usual;
        eachSetting(fields, [&](const auto& field) { writeSetting(field, settings, usual); });
    }

    void writeUnits() {
        nested("units", truss_.units.unknown,
               [&](JsonText&) { writeSettings(kUnitFields, truss_.units); });
    }

    void writeChecks() {
        const CheckSettings& it = truss_.checks;
        const CheckSettings usual;
        if (it == usual) {
            return;
        }
        nested("checks", it.unknown, [&](JsonText& text) {
            writeSettings(kCheckFields, it);
            for (const CheckNumber& each : kCheckNumbers) {
                if (it.*each.value != usual.*each.value) {
                    text.number(each.key, it.*each.value);
                }
            }
            if (it.held) {
                path("held", *it.held);
            }
        });
    }

    void writeClass() {
        const ClassSettings& it = truss_.classSettings;
        if (it == ClassSettings{}) {
            return;
        }
        nested("class", it.unknown, [&](JsonText&) {
            writeSettings(kClassFields, it);
            if (hasNumbers(it)) {
                nested("numbers", it.unknownNumbers,
                       [&](JsonText&) { writeSettings(kNumbersFields, it); });
            }
        });
    }
    static bool hasNumbers(const ClassSettings& it) {
        bool has = !it.unknownNumbers.empty();
        eachSetting(kNumbersFields, [&](const auto& field) {
            has = has || it.*field.value != ClassSettings{}.*field.value;
        });
        return has;
    }

    const Truss& truss_;
    JsonText out_;
};

} // namespace

std::string writeModel(const Truss& truss, Layout layout) {
    std::string text = ModelWriter(truss, layout).write();
    return layout == Layout::Indented ? text + "\n" : text;
}

std::string writeRest(const Truss& truss) {
    return ModelWriter(truss, Layout::Compact).writeRest();
}

} // namespace gusset
