#include "support/drawing/dxf_rules.hpp"

#include <algorithm>
#include <cstdlib>
#include <map>
#include <set>

namespace gusset::support {

namespace {

using Group = std::pair<int, std::string>;

// The groups that a record must have; release 12 has no others for what is written here.
const std::map<std::string, std::set<int>>& groupsOfRecords() {
    static const std::map<std::string, std::set<int>> kGroups{
        {"LINE", {8, 10, 20, 30, 11, 21, 31}},
        {"INSERT", {8, 2, 10, 20, 30}},
        {"TEXT", {8, 10, 20, 30, 40, 1}},
        {"CIRCLE", {8, 10, 20, 30, 40}},
        {"BLOCK", {8, 2, 70, 10, 20, 30, 3}},
        {"ENDBLK", {8}},
        {"TABLE", {2, 70}},
        {"ENDTAB", {}},
        {"LTYPE", {2, 70, 3, 72, 73, 40}},
        {"LAYER", {2, 70, 62, 6}},
        {"STYLE", {2, 70, 40, 41, 50, 71, 42, 3, 4}},
        {"SECTION", {2}},
        {"ENDSEC", {}}};
    return kGroups;
}

bool isReal(const std::string& text) {
    char* end = nullptr;
    std::strtod(text.c_str(), &end);
    return !text.empty() && *end == '\0' && text.find_first_of(".e") != text.npos &&
           text.find_first_not_of("0123456789.-+e") == text.npos;
}

bool isWhole(const std::string& text) {
    return !text.empty() && text.find_first_not_of("0123456789-") == text.npos;
}

bool isName(const std::string& text) {
    return !text.empty() && text.size() <= 31 &&
           text.find_first_not_of("ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789$_-") == text.npos;
}

class Reader {
public:
    explicit Reader(const std::string& text) { split(text); }

    ReadDxf read() {
        for (const ReadEntity& record : records_) {
            take(record);
        }
        if (sections_ != std::vector<std::string>{"HEADER", "TABLES", "BLOCKS", "ENTITIES"}) {
            fault("sections are missing or in another order");
        }
        for (const std::string& layer : used_) {
            if (std::find(read_.layers.begin(), read_.layers.end(), layer) == read_.layers.end()) {
                fault("layer " + layer + " is not declared");
            }
        }
        return std::move(read_);
    }

private:
    void fault(const std::string& says) { read_.faults.push_back(says); }

    void split(const std::string& text) {
        std::vector<std::string> lines;
        for (std::size_t start = 0; start < text.size();) {
            const std::size_t end = text.find("\r\n", start);
            if (end == text.npos) {
                fault("the last line has no end");
                break;
            }
            lines.push_back(text.substr(start, end - start));
            start = end + 2;
        }
        if (lines.size() % 2 != 0 || lines.size() < 2 || lines.back() != "EOF") {
            fault("lines don't come in pairs that end with EOF");
        }
        for (std::size_t i = 0; i + 3 < lines.size(); i += 2) {
            const std::string& code = lines[i];
            if (code.size() < 3 || code.find_first_not_of(" 0123456789") != code.npos) {
                fault("\"" + code + "\" is no group code");
            }
            value(std::atoi(code.c_str()), lines[i + 1]);
        }
    }

    void value(int code, const std::string& text) {
        const bool isRealCode = (code >= 10 && code <= 59);
        const bool isWholeCode = code >= 60 && code <= 79;
        if ((isRealCode && !isReal(text)) || (isWholeCode && !isWhole(text))) {
            fault("group " + std::to_string(code) + " can't be \"" + text + "\"");
        }
        if (text.size() > 255 || text.find_first_of("\r\n") != text.npos ||
            std::any_of(text.begin(), text.end(), [](char c) { return c < ' ' || c > '~'; })) {
            fault("\"" + text + "\" is not ASCII of 255 characters");
        }
        if (code == 0) {
            records_.push_back({text, {}});
        } else if (records_.empty()) {
            fault("a file begins with group 0");
        } else {
            records_.back().groups.emplace_back(code, text);
        }
    }

    void take(const ReadEntity& record) {
        const bool isHeader = record.kind == "SECTION" && record.text(2) == "HEADER";
        if (!isHeader) {
            checkGroups(record);
        }
        if (record.kind == "SECTION") {
            if (!section_.empty()) {
                fault("a section within a section");
            }
            section_ = record.text(2);
            sections_.push_back(section_);
            if (isHeader && (record.text(9) != "$ACADVER" || record.text(1) != "AC1009")) {
                fault("the header does not say release 12");
            }
        } else if (record.kind == "ENDSEC") {
            section_.clear();
        } else if (section_ == "TABLES") {
            table(record);
        } else if (section_ == "BLOCKS" && record.kind == "BLOCK") {
            blocks_.insert(record.text(2));
        } else if (section_ == "ENTITIES") {
            read_.entities.push_back(record);
            used_.insert(record.text(8));
            if (record.kind == "INSERT" && blocks_.count(record.text(2)) == 0) {
                fault("block " + record.text(2) + " is not defined");
            }
        }
    }

    void table(const ReadEntity& record) {
        if (record.kind == "TABLE") {
            left_ = std::atoi(record.text(70).c_str());
        } else if (record.kind == "ENDTAB") {
            if (left_ != 0) {
                fault("a table counts its entries wrongly");
            }
        } else {
            --left_;
            if (!isName(record.text(2))) {
                fault("\"" + record.text(2) + "\" is no name of release 12");
            }
            if (record.kind == "LAYER") {
                if (std::count(read_.layers.begin(), read_.layers.end(), record.text(2)) > 0) {
                    fault("layer " + record.text(2) + " is declared twice");
                }
                read_.layers.push_back(record.text(2));
            }
        }
    }

    void checkGroups(const ReadEntity& record) {
        const auto known = groupsOfRecords().find(record.kind);
        if (known == groupsOfRecords().end()) {
            fault("release 12 has no " + record.kind + " here");
            return;
        }
        std::set<int> given;
        for (const Group& group : record.groups) {
            given.insert(group.first);
        }
        if (given != known->second) {
            fault(record.kind + " has other groups than it may");
        }
    }

    ReadDxf read_;
    std::vector<ReadEntity> records_;
    std::vector<std::string> sections_;
    std::string section_;
    std::set<std::string> blocks_;
    std::set<std::string> used_;
    int left_ = 0;
};

} // namespace

std::string ReadEntity::text(int code) const {
    for (const Group& group : groups) {
        if (group.first == code) {
            return group.second;
        }
    }
    return {};
}

double ReadEntity::real(int code) const { return std::strtod(text(code).c_str(), nullptr); }

ReadDxf readByTheRules(const std::string& text) { return Reader(text).read(); }

} // namespace gusset::support
