#include "exchange/files/model_reader.hpp"

#include "exchange/files/clean_names.hpp"
#include "exchange/files/format_words.hpp"
#include "model/catalogue/section_shapes.hpp"
#include "model/truss/fields.hpp"
#include "model/validate/findings.hpp"
#include "model/validate/validate.hpp"
#include "phrases/faults/reading.hpp"

#include <algorithm>
#include <unordered_map>

namespace gusset {

namespace {

template <class Unit>
void readSetting(ObjectReader& object, const UnitField<Unit>& field, Units& units) {
    if (!object.has(field.key)) {
        return;
    }
    std::string given;
    object.read(field.key, false, given);
    const std::optional<Unit> unit = field.named(given);
    if (!unit) {
        object.issues().error(
            IssueCode::OutOfRange, object.placeOf(field.key),
            statement(phrase::kUnknownUnit, {{"unit", given}, {"units", unitList(Unit{})}}));
    }
    units.*field.value = unit.value_or(units.*field.value);
}

template <class Settings, class Value>
void readSetting(ObjectReader& object, const WordField<Settings, Value>& field,
                 Settings& settings) {
    Value& value = settings.*field.value;
    if constexpr (std::is_same_v<Value, char>) {
        value = field.words[object.word(field.key, field.words, 0)].front();
    } else {
        value = Value(object.word(field.key, field.words, std::size_t(value)));
    }
}

void readSetting(ObjectReader& object, const DigitsField& field, ClassSettings& settings) {
    double digits = settings.*field.value;
    object.read(field.key, false, digits);
    if (digits == static_cast<int>(std::clamp(digits, 0.0, double{kMostDigits}))) {
        settings.*field.value = static_cast<int>(digits);
        return;
    }
    object.issues().error(IssueCode::OutOfRange, object.placeOf(field.key),
                          statement(phrase::kMustBeWholeUpTo, {{"most", kMostDigits}}));
}

template <class Fields, class Settings>
void readSettings(ObjectReader& object, const Fields& fields, Settings& settings) {
    eachSetting(fields, [&](const auto& field) { readSetting(object, field, settings); });
}

class ModelReader {
public:
    explicit ModelReader(IssueList& issues) : issues_(issues) {}

    Truss read(const JsonValue& value) {
        ObjectReader model(value, "", issues_);
        readVersion(model);
        model.read("title", false, truss_.title);
        truss_.units.unknown = model.inner(
            "units", [&](ObjectReader& units) { readSettings(units, kUnitFields, truss_.units); });
        readAll(model.list("joints", true), "joints", truss_.joints);
        for (std::size_t i = 0; i < truss_.joints.size(); ++i) {
            jointsByLabel_.emplace(truss_.joints[i].label, JointId{static_cast<int>(i)});
        }
        readAll(model.list("members", true), "members", truss_.members);
        readAll(model.list("supports"), "supports", truss_.supports);
        readAll(model.list("loads"), "loads", truss_.loads);
        readAll(model.list("materials"), "materials", truss_.materials);
        readAll(model.list("sections"), "sections", truss_.sections);
        readAll(model.list("cases"), "cases", truss_.cases);
        readAll(model.list("combinations"), "combinations", truss_.combinations);
        readAll(model.list("moving"), "moving", truss_.moving);
        readChecks(model, truss_.checks);
        readClass(model, truss_.classSettings);
        if (const JsonValue* exercise = model.object("exercise")) {
            truss_.exercise = jsonText(*exercise);
        }
        if (const JsonValue* lesson = model.object("lesson")) {
            truss_.lesson = jsonText(*lesson);
        }
        if (const JsonValue* form = model.object("form")) {
            truss_.form = jsonText(*form);
        }
        truss_.unknown = model.rest();
        return std::move(truss_);
    }

private:
    template <class Thing>
    void readAll(const std::vector<JsonValue>& items, const std::string& list,
                 std::vector<Thing>& into) {
        for (std::size_t i = 0; i < items.size() && !issues_.isFull(); ++i) {
            ObjectReader object(items[i], placeOf(list, i), issues_);
            Thing thing;
            if (readThing(object, thing)) {
                thing.unknown = object.rest();
                into.push_back(std::move(thing));
            }
        }
    }

    void readVersion(ObjectReader& model) {
        if (!model.has("gusset")) {
            issues_.error(IssueCode::Missing, "gusset", phrase::kVersionMissing);
            return;
        }
        double version = kFormatVersion;
        model.read("gusset", false, version);
        if (version > kFormatVersion) {
            issues_.error(IssueCode::NewerVersion, "gusset", phrase::kVersionLater);
        } else if (version != kFormatVersion) {
            issues_.error(IssueCode::OutOfRange, "gusset", phrase::kVersionUnknown);
        }
    }

    JointId jointNamed(const std::string& label, const std::string& at) {
        const auto found = jointsByLabel_.find(label);
        if (found == jointsByLabel_.end()) {
            issues_.error(IssueCode::UnknownName, at,
                          statement(phrase::kNoJointNamed, {{"joint", label}}));
            return {};
        }
        return found->second;
    }

    JointId readJointName(ObjectReader& object, std::string_view key) {
        const std::size_t before = issues_.errors().size();
        std::string label;
        object.read(key, true, label);
        return issues_.errors().size() == before ? jointNamed(label, object.placeOf(key))
                                                 : JointId{};
    }

    std::vector<JointId> readPath(ObjectReader& object, std::string_view key) {
        std::vector<JointId> path;
        const std::vector<JsonValue>& items = object.list(key, true);
        for (std::size_t i = 0; i < items.size() && !issues_.isFull(); ++i) {
            const std::string at = placeOf(object.placeOf(key), i);
            if (items[i].kind == JsonValue::Kind::Text) {
                path.push_back(jointNamed(items[i].text, at));
            } else {
                issues_.error(IssueCode::WrongType, at, phrase::kMustBeLabel);
            }
        }
        return path;
    }

    void readField(ObjectReader& object, const FieldValue& field) {
        const bool isNeeded = field.presence == Presence::Needed;
        if (field.joint) {
            *field.joint = readJointName(object, field.key);
        } else if (field.path) {
            *field.path = readPath(object, field.key);
        } else if (field.text) {
            object.read(field.key, isNeeded, *field.text);
        } else if (field.optional) {
            object.read(field.key, isNeeded, *field.optional);
        } else {
            object.read(field.key, isNeeded, *field.number);
        }
    }
    template <class Table, class Thing>
    void readFields(ObjectReader& object, const Table& table, Thing& thing) {
        eachField(table, thing, [&](const FieldValue& field) { readField(object, field); });
    }

    // False if the object holds too little to make the thing from.
    template <class Thing>
    bool readThing(ObjectReader& object, Thing& thing) {
        readFields(object, kFields<Thing>, thing);
        return true;
    }

    bool readThing(ObjectReader& object, Member& member) {
        readFields(object, kFields<Member>, member);
        member.factors.unknown = object.inner("K", [&](ObjectReader& factors) {
            readFields(factors, kFields<LengthFactors>, member.factors);
        });
        return true;
    }

    bool readThing(ObjectReader& object, Support& support) {
        readFields(object, kFields<Support>, support);
        if (!object.has("kind")) {
            issues_.error(IssueCode::Missing, object.placeOf("kind"), phrase::kSupportKindMissing);
            return false;
        }
        support.kind = SupportKind(object.word("kind", kSupportWords, 0));
        if (support.kind == SupportKind::Roller) {
            if (!object.has("reaction")) {
                issues_.error(IssueCode::Missing, object.placeOf("reaction"),
                              phrase::kReactionMissing);
            }
            readFields(object, kRollerFields, support);
        } else {
            support.unknownSettle = object.inner("settle", [&](ObjectReader& settle) {
                readFields(settle, kPinSettleFields, support);
            });
        }
        return true;
    }

    bool readThing(ObjectReader& object, Load& load) {
        const bool byParts = object.has("fx") || object.has("fy");
        const bool bySize = object.has("size") || object.has("angle");
        const bool alongChord = object.has("chord") || object.has("perLength");
        const bool ofSelf = object.has("selfWeight");
        const int kinds = byParts + bySize + alongChord + ofSelf;
        if (kinds != 1) {
            issues_.error(kinds == 0 ? IssueCode::Missing : IssueCode::OutOfRange, object.place(),
                          phrase::kLoadIsOneOf);
            return false;
        }
        if (byParts && object.has("member")) {
            load.what = MemberForce{};
        } else if (bySize) {
            load.what = AngledForce{};
        } else if (alongChord) {
            load.what = ChordLoad{};
        } else if (ofSelf) {
            load.what = SelfWeight{};
        }
        std::visit([&](auto& what) { readThing(object, what); }, load.what);
        readFields(object, kFields<Load>, load);
        return true;
    }
    bool readThing(ObjectReader& object, MemberForce& force) {
        const std::vector<JointId> ends = readPath(object, "member");
        if (ends.size() == 2) {
            force.from = ends[0];
            force.to = ends[1];
        } else {
            issues_.error(IssueCode::OutOfRange, object.placeOf("member"), phrase::kMustBeEnds);
        }
        readFields(object, kFields<MemberForce>, force);
        return true;
    }
    bool readThing(ObjectReader& object, SelfWeight&) {
        const JsonValue* value = object.any("selfWeight");
        if (value->kind != JsonValue::Kind::Boolean || !value->boolean) {
            issues_.error(IssueCode::OutOfRange, object.placeOf("selfWeight"),
                          phrase::kSelfWeightTrue);
        }
        return true;
    }

    bool readThing(ObjectReader& object, Section& section) {
        readFields(object, kFields<Section>, section);
        if (const SectionShape* shape = findSectionShape(section.shape)) {
            for (const auto keys : {shape->dimensions, shape->further}) {
                for (const std::string_view key : keys) {
                    std::optional<double> value;
                    object.read(key, false, value);
                    if (value) {
                        section.dimensions.emplace_back(key, *value);
                    }
                }
            }
        }
        readHoles(object, section);
        return true;
    }

    void readHoles(ObjectReader& object, Section& section) {
        std::string unknown = object.inner("holes", [&](ObjectReader& holes) {
            readFields(holes, kFields<Holes>, section.holes.emplace());
        });
        if (section.holes) {
            section.holes->unknown = std::move(unknown);
        }
    }

    bool readThing(ObjectReader& object, Combination& combination) {
        readFields(object, kFields<Combination>, combination);
        if (const JsonValue* factors = object.object("factors")) {
            for (const auto& [caseId, factor] : factors->members) {
                if (factor.kind != JsonValue::Kind::Number) {
                    issues_.error(IssueCode::WrongType, object.placeOf("factors") + "." + caseId,
                                  phrase::kFactorNotNumber);
                }
                combination.factors.emplace_back(caseId, factor.number + 0.0);
            }
        } else if (!object.has("factors")) {
            issues_.error(IssueCode::Missing, object.placeOf("factors"),
                          statement(phrase::kFactorsMissing, {{"open", "{"}, {"close", "}"}}));
        }
        return true;
    }

    bool readThing(ObjectReader& object, MovingLoad& moving) {
        readFields(object, kFields<MovingLoad>, moving);
        readAll(object.list("axles"), object.placeOf("axles"), moving.axles);
        std::string unknown = object.inner("uniform", [&](ObjectReader& uniform) {
            readThing(uniform, moving.uniform.emplace());
        });
        if (moving.uniform) {
            moving.uniform->unknown = std::move(unknown);
        }
        return true;
    }

    void readChecks(ObjectReader& model, CheckSettings& checks) {
        checks.unknown = model.inner("checks", [&](ObjectReader& object) {
            readSettings(object, kCheckFields, checks);
            for (const CheckNumber& number : kCheckNumbers) {
                object.read(number.key, false, checks.*number.value);
            }
            if (object.has("held")) {
                checks.held = readPath(object, "held");
            }
        });
    }

    static void readClass(ObjectReader& model, ClassSettings& settings) {
        settings.unknown = model.inner("class", [&](ObjectReader& object) {
            readSettings(object, kClassFields, settings);
            settings.unknownNumbers = object.inner("numbers", [&](ObjectReader& numbers) {
                readSettings(numbers, kNumbersFields, settings);
            });
        });
    }

    IssueList& issues_;
    Truss truss_;
    std::unordered_map<std::string, JointId> jointsByLabel_;
};

} // namespace

Outcome<Reading> readModelValue(const JsonValue& value) {
    IssueList issues;
    Reading reading;
    reading.truss = ModelReader(issues).read(value);
    cleanNames(reading.truss, issues);
    if (!issues.errors().empty()) {
        return issues.errors();
    }
    if (Issues errors = errorsOf(reading.truss); !errors.empty()) {
        return errors;
    }
    reading.notes = issues.notes();
    return reading;
}

Outcome<Reading> readModel(std::string_view json) {
    if (json.size() > kLargestFile) {
        return Issue{IssueCode::TooLarge, phrase::kPlaceFile,
                     statement(phrase::kFileTooLarge, {{"size", kLargestFile >> 20}})};
    }
    const Outcome<JsonValue> value = parseJson(json);
    if (!value) {
        return value.issues();
    }
    return readModelValue(value.value());
}

} // namespace gusset
