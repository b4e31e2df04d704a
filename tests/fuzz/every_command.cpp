#include "fuzz/every_command.hpp"

#include "statics/equilibrium/structure.hpp"

namespace gusset::support {

namespace {

// What the commands ask about this model.
struct Asked {
    std::string member;
    std::string cut;
    std::string path;
    std::string effect;
    std::string movement;
    CommandLine loads; // "--case" or "--combination" with a name; or nothing
};

const std::string& label(const Truss& truss, JointId joint) {
    return truss.joints[joint.at()].label;
}

std::string anyLabel(const Truss& truss, Random& random) {
    return truss.joints.empty() || random.oneIn(50) ? "Q9" : random.pick(truss.joints).label;
}

std::string anyMember(const Truss& truss, Random& random) {
    if (truss.members.empty() || random.oneIn(50)) {
        const std::string from = anyLabel(truss, random); // first, as arguments have no order
        return from + "-" + anyLabel(truss, random);
    }
    const Member& member = random.pick(truss.members);
    return label(truss, member.b) + "-" + label(truss, member.a);
}

// All members of one joint, which always cut the truss in two; or any members.
std::string anyCut(const Truss& truss, Random& random) {
    std::string cut;
    const auto add = [&](const std::string& member) { cut += (cut.empty() ? "" : ",") + member; };
    if (!truss.joints.empty() && random.oneIn(2)) {
        const JointId joint{random.integer(0, static_cast<int>(truss.joints.size()) - 1)};
        for (const Member& member : truss.members) {
            if (member.a == joint || member.b == joint) {
                add(label(truss, member.a) + "-" + label(truss, member.b));
            }
        }
    }
    for (int i = cut.empty() ? random.integer(1, 4) : 0; i > 0; --i) {
        add(anyMember(truss, random));
    }
    return cut;
}

std::string anyPath(const Truss& truss, Random& random) {
    std::string path;
    if (!truss.moving.empty() && random.oneIn(2)) {
        for (const JointId joint : truss.moving.front().path) {
            path += (path.empty() ? "" : ",") + label(truss, joint);
        }
        return path;
    }
    for (int i = random.integer(1, 5); i > 0; --i) {
        path += (path.empty() ? "" : ",") + anyLabel(truss, random);
    }
    return path;
}

std::string anyAxis(Random& random) { return random.oneIn(2) ? ":x" : ":y"; }

std::string anyMovement(const Truss& truss, Random& random) {
    const std::string at = anyLabel(truss, random);
    return at + anyAxis(random);
}

std::string anyEffect(const Truss& truss, Random& random) {
    switch (random.integer(0, 2)) {
    case 0:
        return "member:" + anyMember(truss, random);
    case 1: {
        const std::string at = truss.supports.empty()
                                   ? anyLabel(truss, random)
                                   : label(truss, random.pick(truss.supports).joint);
        return "reaction:" + at + anyAxis(random);
    }
    default:
        return "displacement:" + anyMovement(truss, random);
    }
}

CommandLine anyLoads(const Truss& truss, Random& random) {
    if (!truss.combinations.empty() && random.oneIn(2)) {
        return {"--combination", random.pick(truss.combinations).id};
    }
    const std::vector<std::string> cases = caseNames(truss);
    if (!cases.empty() && random.oneIn(2)) {
        return {"--case", random.pick(cases)};
    }
    return random.oneIn(30) ? CommandLine{"--case", "no such"} : CommandLine{};
}

void add(std::vector<CommandLine>& lines, const char* command, const CommandLine& part,
         const CommandLine& loads, std::initializer_list<const char*> forms) {
    for (const char* form : forms) {
        CommandLine line{command, "-"};
        line.insert(line.end(), part.begin(), part.end());
        line.insert(line.end(), loads.begin(), loads.end());
        line.emplace_back(form);
        lines.push_back(line);
    }
}

void addWorking(std::vector<CommandLine>& lines, const Asked& asked, Random& random) {
    const CommandLine columns[]{{"--released", "N0"}, {"--released", "n1"}, {"--released", "n2"}};
    const auto form = [&] { return random.oneIn(2) ? "--html" : "--text"; };
    add(lines, "working", {}, {}, {"--text", "--html"});
    add(lines, "working", {}, asked.loads, {form()});
    add(lines, "working", {"--polygon"}, asked.loads, {"--text", "--html", "--svg"});
    add(lines, "working", {"--member", asked.member}, asked.loads, {"--text", "--html"});
    add(lines, "working", {"--section", asked.cut}, asked.loads, {"--text", "--html"});
    add(lines, "working", {"--displacement", asked.movement}, asked.loads, {"--text", "--html"});
    add(lines, "working", {"--force-method"}, asked.loads, {"--text", "--html"});
    add(lines, "working", columns[random.integer(0, 2)], asked.loads, {form()});
    add(lines, "working", {"--influence", asked.effect, "--path", asked.path}, {},
        {"--text", "--html"});
    add(lines, "working", {"--svg"}, {}, {"--text"});
}

} // namespace

std::vector<CommandLine> everyCommand(const Truss& truss, Random& random) {
    Asked asked;
    asked.member = anyMember(truss, random);
    asked.cut = anyCut(truss, random);
    asked.path = anyPath(truss, random);
    asked.effect = anyEffect(truss, random);
    asked.movement = anyMovement(truss, random);
    asked.loads = anyLoads(truss, random);
    std::vector<CommandLine> lines;
    add(lines, "solve", {}, {}, {"--text", "--json", "--csv"});
    add(lines, "solve", {"--exact"}, asked.loads, {"--text", "--json", "--csv"});
    add(lines, "solve", {}, asked.loads, {"--json"});
    addWorking(lines, asked, random);
    add(lines, "influence", {"--path", asked.path, "--of", asked.effect}, {},
        {"--text", "--json", "--csv", "--svg"});
    add(lines, "envelope", {}, {}, {"--text", "--json", "--csv"});
    add(lines, "check", {"--members"}, asked.loads, {"--text", "--json", "--csv", "--html"});
    add(lines, "check", {"--members"}, {"--worst"}, {"--text", "--json", "--csv", "--html"});
    add(lines, "check", {"--member", asked.member}, asked.loads, {"--text", "--html", "--json"});
    add(lines, "report", {}, asked.loads, {"--html", "--csv"});
    add(lines, "export", {"--as"}, {}, {"moodle", "cloze", "gift", "blackboard", "csv"});
    add(lines, "handout", {}, {}, {"--answers", "--key"});
    add(lines, "lines", {}, {}, {"--dxf", "--csv"});
    add(lines, "form", {}, {}, {"--shares"});
    add(lines, "combine", {"--kinds", "loads=permanent"}, {}, {"--csv"});
    lines.push_back({"form", "-"});
    lines.push_back({"combine", "-"});
    lines.push_back({"handout", "-"});
    lines.push_back({"check", "-"});
    lines.push_back({"link", "-"});
    lines.push_back({"open", "-"});
    return lines;
}

} // namespace gusset::support
