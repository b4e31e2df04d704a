#include "fuzz/lectern_requests.hpp"

#include "exchange/files/model_file.hpp"
#include "exchange/json/json_value.hpp"

namespace gusset::support {

namespace {

std::string asJson(const std::string& text) {
    JsonValue value;
    value.kind = JsonValue::Kind::Text;
    value.text = text;
    return jsonText(value);
}

// Mostly small and whole.
std::string anyNumber(Random& random) {
    return random.oneIn(4)
               ? random.pick(std::vector<std::string>{"-1", "1e308", "-0.0", "4294967296", "0.5",
                                                      "18446744073709551616", "\"3\"", "null",
                                                      "[0]", "-1e-308", "{}", "true"})
               : std::to_string(random.integer(0, 12));
}

std::string endsAsked(const Truss& truss, Random& random) {
    if (truss.members.empty() || random.oneIn(20)) {
        return R"(["A","no such joint"])";
    }
    const Member& member = random.pick(truss.members);
    return "[" + asJson(truss.joints[member.a.at()].label) + "," +
           asJson(truss.joints[member.b.at()].label) + "]";
}

std::string jointAsked(const Truss& truss, Random& random) {
    return truss.joints.empty() || random.oneIn(20) ? asJson("no such joint")
                                                    : asJson(random.pick(truss.joints).label);
}

std::string anyItem(const Truss& truss, Random& random) {
    switch (random.integer(0, 6)) {
    case 0:
        return R"("forces")";
    case 1:
        return R"({"of":"member","member":)" + endsAsked(truss, random) +
               R"(,"without":["count","no such step"]})";
    case 2:
        return R"({"of":"section","members":[)" + endsAsked(truss, random) + "," +
               endsAsked(truss, random) + "]}";
    case 3:
        return R"({"of":"displacement","joint":)" + jointAsked(truss, random) + R"(,"axis":")" +
               (random.oneIn(2) ? "x" : "y") + "\"}";
    case 4:
        return R"({"of":"influence","path":[)" + jointAsked(truss, random) + "," +
               jointAsked(truss, random) + R"(],"member":)" + endsAsked(truss, random) + "}";
    case 5:
        return R"("force-method")";
    default:
        return R"({"of":"polygon","pauses":[{"says":"Look: <b>&","asks":)" +
               endsAsked(truss, random) + "}]}";
    }
}

std::string anyPlan(const Truss& truss, Random& random) {
    std::string items;
    for (int i = random.integer(random.oneIn(20) ? 0 : 1, 3); i > 0; --i) {
        items += (items.empty() ? "" : ",") + anyItem(truss, random);
    }
    return R"({"shows":[)" + items + (random.oneIn(2) ? R"(],"values":"hidden"})" : "]}");
}

std::string anyPlace(Random& random) {
    return R"("item":)" + (random.oneIn(3) ? anyNumber(random) : "0") + R"(,"step":)" +
           anyNumber(random) + R"(,"stroke":)" + (random.oneIn(2) ? anyNumber(random) : "0");
}

std::string anyChoices(Random& random) {
    return std::string(R"("shape":)") + (random.oneIn(2) ? R"("4:3")" : anyNumber(random)) +
           R"(,"byStep":)" + (random.oneIn(3) ? "false" : "true") + R"(,"words":)" +
           (random.oneIn(2) ? "true" : "0") + R"(,"hides":)" + (random.oneIn(2) ? "true" : "[]");
}

std::string anyShown(Random& random) {
    std::string shown;
    for (int i = random.integer(0, 4); i > 0; --i) {
        shown += (shown.empty() ? "" : ",") + ("{" + anyPlace(random)) + R"(,"from":)" +
                 anyNumber(random) + R"(,"to":)" + anyNumber(random) + "}";
    }
    return shown;
}

std::string anyFiles(Random& random) {
    return random.pick(std::vector<std::string>{
        R"([{"name":"0001.svg","text":"<svg/>"},{"name":"0002.png","base64":"iVBORw"}])", "[]",
        R"([{"name":"../out","text":""}])", R"([{"name":"a","base64":"="}])", "[[]]", "7",
        R"([{"name":"\u0000","text":"x"}])"});
}

} // namespace

std::vector<std::string> lecternRequests(const Truss& given, Random& random) {
    Truss truss = given;
    truss.lesson = anyPlan(truss, random);
    std::vector<std::string> requests{
        R"({"do":"open","model":)" + asJson(writeModel(given, Layout::Compact)) + "}",
        R"({"do":"open","model":)" + asJson(writeModel(truss, Layout::Compact)) + "}"};
    for (int i = 0; i < 6; ++i) {
        requests.push_back(R"({"do":"stage",)" + anyPlace(random) + R"(,"width":)" +
                           anyNumber(random) + R"(,"height":)" + anyNumber(random) +
                           R"(,"phase":)" + anyNumber(random) + "}");
    }
    requests.push_back(R"({"do":"animation",)" + anyPlace(random) + "," + anyChoices(random) + "}");
    requests.push_back(R"({"do":"slides",)" + anyChoices(random) + "}");
    requests.push_back(R"({"do":"picture","index":)" + anyNumber(random) + "," +
                       anyChoices(random) + "}");
    requests.push_back(R"({"do":"zip","files":)" + anyFiles(random) + "}");
    requests.push_back(R"({"do":"captions","shown":[)" + anyShown(random) + "]}");
    requests.push_back(R"({"do":"plan","plan":)" + anyPlan(truss, random) + "}");
    requests.push_back(R"({"do":"move","joint":)" + jointAsked(truss, random) + R"(,"x":)" +
                       anyNumber(random) + R"(,"y":)" + anyNumber(random) + "}");
    requests.push_back(R"({"do":"answer","member":)" + anyNumber(random) + R"(,"typed":)" +
                       asJson(random.pick(std::vector<std::string>{"12 T", "0", "", "-3,5", "1e999",
                                                                   "seven", "\xFF"})) +
                       "}");
    return requests;
}

} // namespace gusset::support
