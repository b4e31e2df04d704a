#include "exchange/drawings/some_of_each.hpp"

#include "model/truss/limits.hpp"
#include "model/validate/characters.hpp"
#include "phrases/faults/drawings.hpp"
#include "phrases/faults/reading.hpp"

#include <algorithm>

namespace gusset {

void SomeOfEach::add(Issue issue) {
    const auto isSame = [&](const Kind& kind) {
        return kind.first.front().says.english == issue.says.english;
    };
    auto kind = std::find_if(kinds_.begin(), kinds_.end(), isSame);
    if (kind == kinds_.end()) {
        kind = kinds_.insert(kinds_.end(), Kind{});
    }
    if (kind->first.size() >= kMostIssues) {
        ++kind->more;
        return;
    }
    issue.at = spelledOut(std::move(issue.at));
    issue.says = spelledOut(std::move(issue.says));
    kind->first.push_back(std::move(issue));
}

bool SomeOfEach::isOneMore(const char* english) {
    for (Kind& kind : kinds_) {
        if (kind.first.front().says.english == english && kind.first.size() >= kMostIssues) {
            ++kind.more;
            return true;
        }
    }
    return false;
}

Issues SomeOfEach::take() {
    Issues all;
    for (Kind& kind : kinds_) {
        const IssueCode code = kind.first.front().code;
        all.insert(all.end(), kind.first.begin(), kind.first.end());
        if (kind.more > 0) {
            all.push_back(
                {code, phrase::kPlaceFile, statement(phrase::kMoreLikeThese, {{"n", kind.more}})});
        }
    }
    kinds_.clear();
    return all;
}

} // namespace gusset
