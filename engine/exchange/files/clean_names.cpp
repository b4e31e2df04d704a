#include "exchange/files/clean_names.hpp"

#include "model/validate/characters.hpp"
#include "model/validate/findings.hpp"
#include "model/validate/name_table.hpp"
#include "phrases/faults/reading.hpp"

#include <deque>
#include <functional>
#include <unordered_map>
#include <unordered_set>

namespace gusset {

namespace {

bool isUnclean(const std::string& name) {
    return !name.empty() && (firstOutOfSight(name) || isBare(name));
}

Statement noteOf(std::string_view before, std::string_view now) {
    return statement(isBare(before) ? phrase::kBareNameReadAs : phrase::kNameReadAs,
                     {{"before", before}, {"now", now}});
}

using Renames = std::unordered_map<std::string, std::string>;

void follow(const Renames& renames, std::string& name) {
    if (const auto found = renames.find(name); found != renames.end()) {
        name = found->second;
    }
}

// A name in a list, and its place in the file.
struct Named {
    std::string* name;
    std::string at;
};

// The names of one list; names of cases, which occur more than once, are added once.
class NameCleaner {
public:
    using NameInstead = std::function<std::string(int number)>;

    NameCleaner(IssueList& issues, NameInstead instead)
        : issues_(issues), instead_(std::move(instead)) {}

    void add(std::string& name, std::string at) {
        if (isUnclean(name)) {
            unclean_.push_back({&name, std::move(at)});
        } else {
            taken_.add(name);
        }
    }

    // Returns the new names of those that were not clean.
    Renames clean() {
        Renames renames;
        for (const Named& each : unclean_) {
            cleaned_.push_back(withoutHidden(*each.name));
            std::string& now = cleaned_.back();
            if (isBare(now)) {
                nameAnew(now);
            } else if (const auto other = taken_.add(now)) {
                issues_.error(
                    IssueCode::Duplicate, each.at,
                    statement(phrase::kCleanNameTaken, {{"name", *each.name}, {"other", *other}}));
                continue;
            }
            issues_.note(IssueCode::Suspicious, each.at, noteOf(*each.name, now));
            renames.emplace(*each.name, now);
            *each.name = now;
        }
        return renames;
    }

private:
    void nameAnew(std::string& name) {
        int number = 0;
        do {
            name = instead_(number++);
        } while (taken_.add(name));
    }

    IssueList& issues_;
    NameInstead instead_;
    std::vector<Named> unclean_;
    NameTable taken_;
    std::deque<std::string> cleaned_; // referenced by the table
};

NameCleaner::NameInstead numbered(std::string word) {
    return [word](int number) { return word + " " + std::to_string(number + 1); };
}

template <class List>
Renames cleanIds(List& list, const char* key, const char* word, IssueList& issues) {
    NameCleaner cleaner(issues, numbered(word));
    for (std::size_t i = 0; i < list.size(); ++i) {
        cleaner.add(list[i].id, placeOf(key, i) + ".id");
    }
    return cleaner.clean();
}

void cleanLabels(Truss& truss, IssueList& issues) {
    NameCleaner cleaner(issues, defaultLabel);
    for (std::size_t i = 0; i < truss.joints.size(); ++i) {
        cleaner.add(truss.joints[i].label, placeOf("joints", i) + ".id");
    }
    (void)cleaner.clean(); // members and loads refer to joints by number
}

// Calls `each` for every occurrence of a case name.
template <class Each>
void forEachCase(Truss& truss, Each each) {
    for (std::size_t i = 0; i < truss.loads.size(); ++i) {
        each(truss.loads[i].caseId, [i] { return placeOf("loads", i) + ".case"; });
    }
    for (std::size_t i = 0; i < truss.cases.size(); ++i) {
        each(truss.cases[i].id, [i] { return placeOf("cases", i) + ".id"; });
    }
    for (std::size_t i = 0; i < truss.combinations.size(); ++i) {
        for (auto& [caseId, factor] : truss.combinations[i].factors) {
            each(caseId, [i] { return placeOf("combinations", i) + ".factors"; });
        }
    }
}

void cleanCases(Truss& truss, IssueList& issues) {
    std::deque<std::string> names; // each once
    std::unordered_set<std::string> known;
    NameCleaner cleaner(issues, numbered("case"));
    forEachCase(truss, [&](const std::string& name, const auto& placeOfIt) {
        if (known.insert(name).second) {
            names.emplace_back(caseNameOf(name));
            cleaner.add(names.back(), placeOfIt());
        }
    });
    const Renames renames = cleaner.clean();
    forEachCase(truss, [&](std::string& name, const auto&) { follow(renames, name); });
}

} // namespace

void cleanNames(Truss& truss, IssueList& issues) {
    if (isUnclean(truss.title)) {
        const std::string title = withoutHidden(truss.title);
        const std::string now = isBare(title) ? "" : title;
        issues.note(IssueCode::Suspicious, "title", noteOf(truss.title, now));
        truss.title = now;
    }
    cleanLabels(truss, issues);
    const Renames materials = cleanIds(truss.materials, "materials", "material", issues);
    for (Section& section : truss.sections) {
        follow(materials, section.material);
    }
    const Renames sections = cleanIds(truss.sections, "sections", "section", issues);
    for (Member& member : truss.members) {
        follow(sections, member.section);
    }
    cleanIds(truss.combinations, "combinations", "combination", issues);
    cleanIds(truss.moving, "moving", "moving load", issues);
    cleanCases(truss, issues);
}

} // namespace gusset
