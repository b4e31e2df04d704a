#include "model/profiles/profile_list.hpp"

#include "core/csv.hpp"
#include "core/number.hpp"
#include "model/catalogue/section_properties.hpp"
#include "model/catalogue/section_shapes.hpp"
#include "model/quantity/quantity_input.hpp"
#include "model/quantity/quantity_reader.hpp"
#include "model/truss/limits.hpp"
#include "model/validate/validate.hpp"
#include "phrases/faults/class_lists.hpp"
#include "phrases/faults/faults.hpp"
#include "phrases/faults/profile_lists.hpp"

#include <algorithm>
#include <array>
#include <map>

namespace gusset {

namespace {

// The largest dimension of a profile: a wire of 5 mm to a girder of 3 m. Anything else has its
// numbers in another unit than it says.
constexpr double kSmallestProfile = 0.005; // m
constexpr double kLargestProfile = 3;

constexpr std::array<std::string_view, 3> kNeeded{"name", "shape", "unit"};

std::string shapeList() {
    std::string names;
    for (const SectionShape& shape : sectionShapes()) {
        names += (names.empty() ? "" : ", ") + std::string(shape.name);
    }
    return names;
}

bool isDimension(std::string_view heading) {
    return std::any_of(sectionShapes().begin(), sectionShapes().end(), [&](const auto& shape) {
        const auto has = [&](auto keys) {
            return std::find(keys.begin(), keys.end(), heading) != keys.end();
        };
        return has(shape.dimensions) || has(shape.further);
    });
}

class ListReader {
public:
    Outcome<ProfileList> read(std::string_view table) {
        if (table.find('\0') != table.npos) {
            return Issue{IssueCode::WrongType, phrase::kPlaceList, phrase::kListIsNoText};
        }
        takeSource(table);
        const std::vector<CsvRow> rows = csvRows(table);
        std::size_t at = 0;
        while (at < rows.size() && isBlankRow(rows[at])) {
            ++at;
        }
        if (at == rows.size()) {
            return Issue{IssueCode::Missing, phrase::kPlaceList, phrase::kListHasNoProfiles};
        }
        headings_ = rows[at];
        if (const auto fault = faultOfHeadings(at)) {
            return *fault;
        }
        for (++at; at < rows.size(); ++at) {
            if (!isBlankRow(rows[at])) {
                readRow(rows[at], skipped_ + at + 1);
            }
        }
        return std::move(list_);
    }

private:
    void takeSource(std::string_view& table) {
        constexpr std::string_view kMark = "\xEF\xBB\xBF";
        if (table.starts_with(kMark)) {
            table.remove_prefix(kMark.size());
        }
        while (table.starts_with('#')) {
            const std::size_t end = std::min(table.find('\n'), table.size());
            std::string_view line = table.substr(1, end - 1);
            while (!line.empty() && (line.front() == ' ' || line.front() == '#')) {
                line.remove_prefix(1);
            }
            while (!line.empty() && (line.back() == '\r' || line.back() == ' ')) {
                line.remove_suffix(1);
            }
            list_.source += (list_.source.empty() ? "" : " ") + std::string(line);
            table.remove_prefix(std::min(end + 1, table.size()));
            ++skipped_;
        }
    }

    std::optional<Issue> faultOfHeadings(std::size_t row) {
        for (const std::string_view needed : kNeeded) {
            if (std::find(headings_.begin(), headings_.end(), needed) == headings_.end()) {
                return Issue{IssueCode::Missing, phrase::kPlaceList,
                             statement(phrase::kListLacksColumn,
                                       {{"column", needed}, {"columns", "name, shape, unit"}})};
            }
        }
        for (const std::string& heading : headings_) {
            const bool isKnown =
                heading.empty() || isDimension(heading) ||
                std::find(kNeeded.begin(), kNeeded.end(), heading) != kNeeded.end();
            if (!isKnown) {
                note(skipped_ + row + 1, IssueCode::UnknownKey,
                     statement(phrase::kListColumnUnknown, {{"column", heading}}));
            }
        }
        return std::nullopt;
    }

    void note(std::size_t row, IssueCode code, Statement says) {
        list_.notes.push_back(
            {code, statement(phrase::kPlaceRow, {{"row", row}}), std::move(says)});
    }

    [[nodiscard]] std::string cell(const CsvRow& row, std::string_view heading) const {
        for (std::size_t i = 0; i < row.size() && i < headings_.size(); ++i) {
            if (headings_[i] == heading) {
                return row[i];
            }
        }
        return {};
    }

    void readRow(const CsvRow& row, std::size_t number) {
        Profile profile;
        profile.section.id = cell(row, "name");
        profile.section.shape = cell(row, "shape");
        if (const std::string small = lowered(profile.section.shape); findSectionShape(small)) {
            profile.section.shape = small;
        }
        if (profile.section.id.empty()) {
            note(number, IssueCode::Missing, phrase::kProfileNameless);
            return;
        }
        if (auto fault = faultOf(row, profile)) {
            note(number, IssueCode::OutOfRange, std::move(*fault));
            return;
        }
        const auto [first, isNew] = rows_.emplace(profile.section.id, number);
        if (!isNew) {
            note(number, IssueCode::Duplicate,
                 statement(phrase::kProfileTwice,
                           {{"name", profile.section.id}, {"row", first->second}}));
            return;
        }
        list_.profiles.push_back(std::move(profile));
    }

    // Reads the rest of the row.
    std::optional<Statement> faultOf(const CsvRow& row, Profile& profile) const {
        const std::string& name = profile.section.id;
        if (const auto fault = faultOfName(name, kLongestLabel)) {
            return statement(phrase::kProfileName, {{"name", name}, {"fault", *fault}});
        }
        const SectionShape* shape = findSectionShape(profile.section.shape);
        if (!shape) {
            return statement(
                phrase::kProfileShape,
                {{"name", name}, {"shape", profile.section.shape}, {"shapes", shapeList()}});
        }
        const std::string unit = cell(row, "unit");
        const std::optional<LengthUnit> named = lengthUnitNamed(unit);
        if (!named || *named == LengthUnit::Plain) {
            return statement(phrase::kProfileUnit,
                             {{"name", name}, {"unit", unit}, {"units", unitList(LengthUnit{})}});
        }
        profile.unit = *named;
        for (const auto keys : {shape->dimensions, shape->further}) {
            for (const std::string_view key : keys) {
                if (auto fault = readDimension(cell(row, key), key, profile)) {
                    return fault;
                }
            }
        }
        if (const auto fault = faultOfDimensions(profile.section)) {
            return statement(phrase::kProfileFault, {{"name", name}, {"fault", *fault}});
        }
        return faultOfMeasure(profile);
    }

    static std::optional<Statement> readDimension(const std::string& text, std::string_view key,
                                                  Profile& profile) {
        if (text.empty()) {
            return std::nullopt;
        }
        const Outcome<double> value = readNumber(text);
        if (!value) {
            return statement(phrase::kProfileNumber,
                             {{"name", profile.section.id}, {"key", key}, {"text", text}});
        }
        profile.section.dimensions.emplace_back(key, value.value());
        return std::nullopt;
    }

    static std::optional<Statement> faultOfMeasure(const Profile& profile) {
        double largest = 0;
        for (const auto& [key, value] : profile.section.dimensions) {
            largest = std::max(largest, value);
        }
        const double metres = largest * toMetre(profile.unit);
        if (metres >= kSmallestProfile && metres <= kLargestProfile) {
            return std::nullopt;
        }
        return statement(metres < kSmallestProfile ? phrase::kProfileTooSmall
                                                   : phrase::kProfileTooLarge,
                         {{"name", profile.section.id},
                          {"size", shortestNumber(largest)},
                          {"unit", symbolOf(profile.unit)}});
    }

    ProfileList list_;
    CsvRow headings_;
    std::size_t skipped_ = 0;                 // lines before the table
    std::map<std::string, std::size_t> rows_; // by name
};

} // namespace

Outcome<ProfileList> readProfileList(std::string_view table) { return ListReader().read(table); }

Section sectionOf(const Profile& profile, LengthUnit unit) {
    Section section = profile.section;
    for (auto& [key, value] : section.dimensions) {
        value = converted(value, profile.unit, unit);
    }
    return section;
}

double massOf(const Profile& profile, double density) {
    const double metre = toMetre(profile.unit);
    return propertiesOf(profile.section).area.value_or(0) * metre * metre * density;
}

} // namespace gusset
