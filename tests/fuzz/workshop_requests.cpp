#include "fuzz/workshop_requests.hpp"

#include "exchange/files/model_file.hpp"
#include "exchange/json/json_value.hpp"
#include "support/quoted.hpp"

namespace gusset::support {

namespace {

// A short list, so that a large truss is sized in no long time.
std::string anyList(Random& random) {
    const std::string head = "name,shape,unit,D,t\n";
    return random.pick(std::vector<std::string>{head + "thin,chs,mm,40,3\nthick,chs,mm,168.3,8\n",
                                                head + "only,chs,mm,88.9,5\n",
                                                head + "wrong,chs,mm,20,30\n", "", "\xFF"});
}

std::string anyGroups(const Truss& truss, Random& random) {
    std::string members;
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        if (random.oneIn(2)) {
            members += (members.empty() ? "" : ",") + std::to_string(i);
        }
    }
    return R"(,"groups":[{"name":"some","members":[)" + members + "]}]";
}

std::string anyWish(const Truss& truss, Random& random) {
    return R"(,"grade":)" + quoted(random.pick(std::vector<std::string>{"S235", "C24", "none"})) +
           R"(,"deflection":)" +
           random.pick(std::vector<std::string>{"0", "250", "3", "-1", "null"}) + R"(,"own":)" +
           quoted(anyList(random)) + (random.oneIn(2) ? anyGroups(truss, random) : std::string());
}

// The truss with something of it gone or elsewhere, or nothing that is one.
std::string anyOther(Truss truss, Random& random) {
    if (random.oneIn(8)) {
        return random.pick(std::vector<std::string>{"", "no truss", "\xFF"});
    }
    if (!truss.members.empty() && random.oneIn(2)) {
        truss.members.pop_back();
    }
    if (!truss.joints.empty()) {
        truss.joints.front().at.x += random.integer(-2, 2);
        truss.joints.front().label += random.oneIn(2) ? "'" : "";
    }
    if (!truss.loads.empty() && random.oneIn(2)) {
        truss.loads.pop_back();
    }
    return writeModel(truss, Layout::Compact);
}

std::string anyMove(const Truss& truss, Random& random) {
    const std::string joint =
        truss.joints.empty() || random.oneIn(6) ? "\xFF" : random.pick(truss.joints).label;
    return R"(,"joint":)" + quoted(joint) + R"(,"x":)" +
           random.pick(std::vector<std::string>{"0", "3.5", "-1e9", "null"}) + R"(,"y":)" +
           std::to_string(random.integer(-3, 9));
}

} // namespace

std::vector<std::string> workshopRequests(const Truss& truss, Random& random) {
    const std::string model = R"(,"model":)" + quoted(writeModel(truss, Layout::Compact));
    const std::string shape = R"(,"rise":)" + std::to_string(random.integer(-1, 9)) +
                              R"(,"panels":)" + std::to_string(random.integer(-1, 12));
    const std::string range = R"(,"what":")" +
                              random.pick(std::vector<std::string>{"rise", "panels", "both"}) +
                              R"(","from":)" + std::to_string(random.integer(0, 4)) + R"(,"to":)" +
                              std::to_string(random.integer(0, 8)) + R"(,"count":3)";
    return {R"({"do":"open")" + model + "}",
            R"({"do":"lines","as":"csv")" + model + "}",
            R"({"do":"size")" + anyWish(truss, random) + model + "}",
            R"({"do":"reshape")" + shape + model + "}",
            R"({"do":"move")" + anyMove(truss, random) + model + "}",
            R"({"do":"compare","other":)" + quoted(anyOther(truss, random)) + model + "}",
            R"({"do":"vary")" + range + anyWish(truss, random) + model + "}"};
}

} // namespace gusset::support
