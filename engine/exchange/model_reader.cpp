#include "exchange/model_reader.hpp"

#include "exchange/clean_names.hpp"
#include "exchange/format_words.hpp"
#include "exchange/settings_reader.hpp"
#include "model/catalogue/section_shapes.hpp"
#include "model/validate/findings.hpp"
#include "model/validate/validate.hpp"

#include <unordered_map>

namespace gusset {

namespace {

class ModelReader {
public:
    explicit ModelReader(IssueList& issues) : issues_(issues) {}

    Truss read(const JsonValue& value) {
        ObjectReader model(value, "", issues_);
        readVersion(model);
        truss_.title = model.text("title");
        truss_.units = readUnits(model);
        readAll(model.neededList("joints"), "joints", &ModelReader::readJoint);
        for (std::size_t i = 0; i < truss_.joints.size(); ++i) {
            jointsByLabel_.emplace(truss_.joints[i].label, JointId{static_cast<int>(i)});
        }
        readAll(model.neededList("members"), "members", &ModelReader::readMember);
        readAll(model.list("supports"), "supports", &ModelReader::readSupport);
        readAll(model.list("loads"), "loads", &ModelReader::readLoad);
        readAll(model.list("materials"), "materials", &ModelReader::readMaterial);
        readAll(model.list("sections"), "sections", &ModelReader::readSection);
        readAll(model.list("combinations"), "combinations", &ModelReader::readCombination);
        readAll(model.list("moving"), "moving", &ModelReader::readMoving);
        truss_.checks = readCheckSettings(model);
        truss_.classSettings = readClassSettings(model);
        if (const JsonValue* exercise = model.object("exercise")) {
            truss_.exercise = jsonText(*exercise);
        }
        truss_.unknown = model.rest();
        return std::move(truss_);
    }

private:
    using ReadOne = void (ModelReader::*)(ObjectReader&, const std::string& place);

    void readAll(const std::vector<JsonValue>& items, const char* list, ReadOne readOne) {
        for (std::size_t i = 0; i < items.size() && !issues_.isFull(); ++i) {
            const std::string place = placeOf(list, i);
            ObjectReader object(items[i], place, issues_);
            (this->*readOne)(object, place);
        }
    }

    void readVersion(ObjectReader& model) {
        if (!model.has("gusset")) {
            issues_.error(IssueCode::Missing, "gusset",
                          "is missing: a model of Gusset says \"gusset\": 1");
            return;
        }
        const double version = model.number("gusset", kFormatVersion);
        if (version > kFormatVersion) {
            issues_.error(IssueCode::NewerVersion, "gusset",
                          "written by a later version of Gusset: open it with that version");
        } else if (version != kFormatVersion) {
            issues_.error(IssueCode::OutOfRange, "gusset", "must be 1, the version of the format");
        }
    }

    JointId jointNamed(const std::string& label, const std::string& at) {
        const auto found = jointsByLabel_.find(label);
        if (found == jointsByLabel_.end()) {
            issues_.error(IssueCode::UnknownName, at,
                          "no joint \"" + label + "\": add it under \"joints\" or name another");
            return {};
        }
        return found->second;
    }

    JointId readJointName(ObjectReader& object, std::string_view key) {
        const std::size_t before = issues_.errors().size();
        const std::string label = object.neededText(key);
        return issues_.errors().size() == before ? jointNamed(label, object.placeOf(key))
                                                 : JointId{};
    }

    std::vector<JointId> readPath(ObjectReader& object, std::string_view key) {
        std::vector<JointId> path;
        const std::vector<JsonValue>& items = object.neededList(key);
        for (std::size_t i = 0; i < items.size() && !issues_.isFull(); ++i) {
            const std::string at = placeOf(object.placeOf(key), i);
            if (items[i].kind == JsonValue::Kind::Text) {
                path.push_back(jointNamed(items[i].text, at));
            } else {
                issues_.error(IssueCode::WrongType, at, "must be the label of a joint in quotes");
            }
        }
        return path;
    }

    void readJoint(ObjectReader& object, const std::string&) {
        Joint joint;
        joint.label = object.neededText("id");
        joint.at.x = object.neededNumber("x");
        joint.at.y = object.neededNumber("y");
        joint.unknown = object.rest();
        truss_.joints.push_back(std::move(joint));
    }

    void readMember(ObjectReader& object, const std::string&) {
        Member member;
        member.a = readJointName(object, "a");
        member.b = readJointName(object, "b");
        member.section = object.text("section");
        member.warming = object.number("dT");
        member.misfit = object.number("misfit");
        member.unknown = object.rest();
        truss_.members.push_back(std::move(member));
    }

    void readSupport(ObjectReader& object, const std::string& place) {
        Support support;
        support.joint = readJointName(object, "joint");
        if (!object.has("kind")) {
            issues_.error(IssueCode::Missing, place + ".kind",
                          "is missing: it must be \"pin\" or \"roller\"");
            return;
        }
        support.kind = readWord(object, "kind", kSupportWords, SupportKind::Pin);
        if (support.kind == SupportKind::Roller) {
            if (!object.has("reaction")) {
                issues_.error(
                    IssueCode::Missing, place + ".reaction",
                    "is missing: a roller needs the direction of its reaction in degrees, "
                    "90 when it rolls on a level floor");
            }
            support.reaction = object.number("reaction", support.reaction);
            support.settleAlong = object.number("settle");
        } else if (const JsonValue* settle = object.object("settle")) {
            ObjectReader movement(*settle, place + ".settle", issues_);
            support.settle = {movement.number("x"), movement.number("y")};
            support.unknownSettle = movement.rest();
        }
        support.unknown = object.rest();
        truss_.supports.push_back(std::move(support));
    }

    void readLoad(ObjectReader& object, const std::string& place) {
        const bool byParts = object.has("fx") || object.has("fy");
        const bool bySize = object.has("size") || object.has("angle");
        const bool alongChord = object.has("chord") || object.has("perLength");
        const bool ofSelf = object.has("selfWeight");
        const int kinds = byParts + bySize + alongChord + ofSelf;
        if (kinds != 1) {
            issues_.error(kinds == 0 ? IssueCode::Missing : IssueCode::OutOfRange, place,
                          "a load is one of: \"joint\" with \"fx\" and \"fy\"; \"joint\" with "
                          "\"size\" and \"angle\"; \"member\" with \"at\", \"fx\" and \"fy\"; "
                          "\"chord\" with \"perLength\"; \"selfWeight\"");
            return;
        }
        Load load;
        if (byParts && object.has("member")) {
            load.what = readMemberForce(object);
        } else if (byParts) {
            load.what = readJointForce(object);
        } else if (bySize) {
            load.what = readAngledForce(object);
        } else if (alongChord) {
            load.what = readChordLoad(object);
        } else {
            load.what = readSelfWeight(object);
        }
        load.caseId = object.text("case");
        load.unknown = object.rest();
        truss_.loads.push_back(std::move(load));
    }

    JointForce readJointForce(ObjectReader& object) {
        JointForce force;
        force.joint = readJointName(object, "joint");
        force.fx = object.number("fx");
        force.fy = object.number("fy");
        return force;
    }
    MemberForce readMemberForce(ObjectReader& object) {
        MemberForce force;
        const std::vector<JointId> ends = readPath(object, "member");
        if (ends.size() == 2) {
            force.from = ends[0];
            force.to = ends[1];
        } else {
            issues_.error(IssueCode::OutOfRange, object.placeOf("member"),
                          "must be the two joints of the member, as [\"A\", \"B\"]");
        }
        force.at = object.neededNumber("at");
        force.fx = object.number("fx");
        force.fy = object.number("fy");
        return force;
    }
    AngledForce readAngledForce(ObjectReader& object) {
        AngledForce force;
        force.joint = readJointName(object, "joint");
        force.size = object.neededNumber("size");
        force.angle = object.neededNumber("angle");
        return force;
    }
    ChordLoad readChordLoad(ObjectReader& object) {
        ChordLoad load;
        load.chord = readPath(object, "chord");
        load.perLength = object.neededNumber("perLength");
        return load;
    }
    SelfWeight readSelfWeight(ObjectReader& object) {
        const JsonValue* value = object.any("selfWeight");
        if (value->kind != JsonValue::Kind::Boolean || !value->boolean) {
            issues_.error(IssueCode::OutOfRange, object.placeOf("selfWeight"),
                          "must be true: leave the load out where no self-weight is meant");
        }
        return {};
    }

    void readMaterial(ObjectReader& object, const std::string&) {
        Material material;
        material.id = object.neededText("id");
        material.E = object.optionalNumber("E");
        material.strength = object.optionalNumber("strength");
        material.density = object.optionalNumber("density");
        material.alpha = object.optionalNumber("alpha");
        material.unknown = object.rest();
        truss_.materials.push_back(std::move(material));
    }

    void readSection(ObjectReader& object, const std::string&) {
        Section section;
        section.id = object.neededText("id");
        section.material = object.text("material");
        section.area = object.optionalNumber("A");
        section.radius = object.optionalNumber("r");
        section.shape = object.text("shape");
        if (const SectionShape* shape = findSectionShape(section.shape)) {
            for (const std::string_view key : shape->dimensions) {
                if (const std::optional<double> value = object.optionalNumber(key)) {
                    section.dimensions.emplace_back(key, *value);
                }
            }
        }
        section.unknown = object.rest();
        truss_.sections.push_back(std::move(section));
    }

    void readCombination(ObjectReader& object, const std::string& place) {
        Combination combination;
        combination.id = object.neededText("id");
        if (const JsonValue* factors = object.object("factors")) {
            for (const auto& [caseId, factor] : factors->members) {
                if (factor.kind != JsonValue::Kind::Number) {
                    issues_.error(IssueCode::WrongType, place + ".factors." + caseId,
                                  "must be a number, the factor of this case");
                }
                combination.factors.emplace_back(caseId, factor.number + 0.0);
            }
        } else if (!object.has("factors")) {
            issues_.error(IssueCode::Missing, place + ".factors",
                          "is missing: give the factor of each case, as { \"dead\": 1.35 }");
        }
        combination.unknown = object.rest();
        truss_.combinations.push_back(std::move(combination));
    }

    void readMoving(ObjectReader& object, const std::string& place) {
        MovingLoad moving;
        moving.id = object.neededText("id");
        moving.path = readPath(object, "path");
        const std::vector<JsonValue>& axles = object.list("axles");
        for (std::size_t i = 0; i < axles.size(); ++i) {
            ObjectReader reader(axles[i], placeOf(place + ".axles", i), issues_);
            Axle axle;
            axle.at = reader.neededNumber("at");
            axle.force = reader.neededNumber("force");
            axle.unknown = reader.rest();
            moving.axles.push_back(std::move(axle));
        }
        if (const JsonValue* uniform = object.object("uniform")) {
            ObjectReader reader(*uniform, place + ".uniform", issues_);
            moving.uniform = MovingUniform{reader.neededNumber("perLength"),
                                           reader.optionalNumber("length"), reader.rest()};
        }
        moving.unknown = object.rest();
        truss_.moving.push_back(std::move(moving));
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
        return Issue{IssueCode::TooLarge, "the file",
                     "is larger than " + std::to_string(kLargestFile >> 20) +
                         " MB, which is too much to read: no truss needs so much"};
    }
    const Outcome<JsonValue> value = parseJson(json);
    if (!value) {
        return value.issues();
    }
    return readModelValue(value.value());
}

} // namespace gusset
