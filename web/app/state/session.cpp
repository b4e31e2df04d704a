#include "app/state/session.hpp"

#include "app/state/camera.hpp"
#include "exchange/files/model_file.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <cstring>
#include <optional>
#include <utility>

namespace gusset {

namespace {

// Lines "key value", and blocks "key length rest-of-line" followed by that many bytes. The first
// line: marker, number of bytes after it, their checksum.
constexpr std::string_view kMark = "gusset-session 1 ";

// FNV-1a, 64 bits (Fowler, Noll and Vo, 1991): detects accidents, not attacks.
std::uint64_t checksum(std::string_view text) {
    std::uint64_t sum = 14695981039346656037u;
    for (const char c : text) {
        sum = (sum ^ static_cast<unsigned char>(c)) * 1099511628211u;
    }
    return sum;
}

template <class Integer>
std::string integerText(Integer value, int base = 10) {
    std::array<char, 24> buffer{};
    const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value, base).ptr;
    return {buffer.data(), end};
}

template <class Integer>
std::optional<Integer> readInteger(std::string_view text, int base = 10) {
    Integer value{};
    const auto result = std::from_chars(text.data(), text.data() + text.size(), value, base);
    const bool whole = result.ec == std::errc{} && result.ptr == text.data() + text.size();
    return whole ? std::optional<Integer>(value) : std::nullopt;
}

// Doubles by their bits: no rounding, nothing to parse.
std::string realText(double value) {
    std::uint64_t bits = 0;
    std::memcpy(&bits, &value, sizeof bits);
    return integerText(bits, 16);
}

std::optional<double> readReal(std::string_view text) {
    const std::optional<std::uint64_t> bits = readInteger<std::uint64_t>(text, 16);
    double value = 0;
    if (bits) {
        std::memcpy(&value, &*bits, sizeof value);
    }
    const bool finite = value - value == 0;
    return bits && finite ? std::optional<double>(value) : std::nullopt;
}

// Both list the same fields, through eachField: what one writes, the other reads.
struct FieldWriter {
    std::string text;

    void line(std::string_view key, std::string_view value) {
        text.append(key).append(" ").append(value).append("\n");
    }
    void real(std::string_view key, double value) { line(key, realText(value)); }
    void integer(std::string_view key, int value) { line(key, integerText(value)); }
    void index(std::string_view key, std::optional<int> value) { integer(key, value.value_or(-1)); }
    void flag(std::string_view key, bool value) { line(key, value ? "1" : "0"); }
    template <class Enum>
    void choice(std::string_view key, Enum value, Enum) {
        line(key, integerText(static_cast<int>(value)));
    }
};

struct FieldReader { // reads one line; leaves unchanged what it can't read
    std::string_view key;
    std::string_view value;

    void real(std::string_view name, double& into) const {
        into = name == key ? readReal(value).value_or(into) : into;
    }
    void integer(std::string_view name, int& into) const {
        into = name == key ? readInteger<int>(value).value_or(into) : into;
    }
    void index(std::string_view name, std::optional<int>& into) const {
        int read = into.value_or(-1);
        integer(name, read);
        into = read < 0 ? std::nullopt : std::optional(read);
    }
    void flag(std::string_view name, bool& into) const { into = name == key ? value == "1" : into; }
    template <class Enum>
    void choice(std::string_view name, Enum& into, Enum last) const {
        const int read = name == key ? readInteger<int>(value).value_or(-1) : -1;
        if (read >= 0 && read <= static_cast<int>(last)) {
            into = static_cast<Enum>(read);
        }
    }
};

// How tables are sorted; searches are not saved.
template <class Fields, class TableViews>
void eachOrder(Fields& fields, TableViews& tableViews) {
    for (std::size_t i = 0; i < tableViews.size(); ++i) {
        const std::string table = "order." + integerText(i);
        fields.index(table, tableViews[i].column);
        fields.flag(table + ".falls", tableViews[i].falling);
    }
}

// Of a view, or of the place that reading mode has put aside.
template <class Fields, class Place>
void eachOfPlace(Fields& fields, Place& place) {
    fields.real("centre.x", place.camera.centre.x);
    fields.real("centre.y", place.camera.centre.y);
    fields.real("scale", place.camera.scale);
    fields.flag("fitted", place.fitted);
}

template <class Fields, class State>
void eachField(Fields& fields, State& state) {
    auto& view = state.view;
    if (state.beforeReading) {
        eachOfPlace(fields, *state.beforeReading);
    } else {
        eachOfPlace(fields, view);
    }
    fields.flag("snap", view.snapToGrid);
    fields.flag("forces", view.showForces);
    fields.choice("figure", view.memberFigure, MemberFigure::Use);
    fields.flag("reactions", view.showReactions);
    fields.flag("dimensions", view.showDimensions);
    fields.flag("widths", view.widthByForce);
    fields.flag("largest", view.showLargest);
    fields.flag("movement", view.showMovement);
    fields.flag("finger", view.fingerDraws);
    fields.flag("pen", state.penSeen);
    fields.choice("theme", view.theme, ThemeChoice::Sun);
    fields.choice("tool", state.tool, Tool::Erase);
    auto& notebook = state.notebook;
    fields.flag("open", notebook.open);
    fields.choice("tab", notebook.tab, NotebookTab::Share);
    fields.real("width", notebook.width);
    fields.real("sheet", notebook.sheet);
    fields.choice("forces.filter", notebook.forceFilter, ForceFilter::Picked);
    eachOrder(fields, notebook.tableViews);
    fields.flag("whole", notebook.wholeWorking);
    fields.integer("step", notebook.step);
}

std::string block(std::string_view key, std::string_view name, const Truss& truss) {
    const std::string model = writeModel(truss, Layout::Compact);
    std::string oneLine(name);
    std::replace(oneLine.begin(), oneLine.end(), '\n', ' ');
    FieldWriter head;
    head.line(key, integerText(model.size()) + " " + oneLine);
    return head.text + model + "\n";
}

// Undo steps, latest first, as many as there is room for. Their names are kept as they are said
// now: a sentence could not be found again in a later version.
void addSteps(const PhraseBook& book, std::string_view key,
              const std::vector<History::Entry>& entries, std::string& text) {
    for (auto entry = entries.rbegin(); entry != entries.rend(); ++entry) {
        const std::string next = block(key, said(book, entry->name), entry->truss);
        if (text.size() + next.size() > kLargestSession) {
            return;
        }
        text += next;
    }
}

// Walks over lines and blocks; `failed` once something is inconsistent.
struct Walker {
    std::string_view rest;
    bool failed = false;

    std::string_view take(std::size_t count) {
        failed = failed || count > rest.size();
        const std::string_view taken = rest.substr(0, failed ? 0 : count);
        rest.remove_prefix(taken.size());
        return taken;
    }
    std::string_view line() {
        const std::size_t end = rest.find('\n');
        failed = failed || end == std::string_view::npos;
        if (failed) {
            return {};
        }
        const std::string_view taken = take(end);
        take(1);
        return taken;
    }
};

std::pair<std::string_view, std::string_view> splitAtSpace(std::string_view line) {
    const std::size_t space = line.find(' ');
    return space == std::string_view::npos
               ? std::pair{line, std::string_view{}}
               : std::pair{line.substr(0, space), line.substr(space + 1)};
}

std::optional<History::Entry> readBlock(Walker& walker, std::string_view value) {
    const auto [size, name] = splitAtSpace(value);
    const std::string_view model = walker.take(readInteger<std::size_t>(size).value_or(SIZE_MAX));
    walker.take(1);
    if (walker.failed) {
        return std::nullopt;
    }
    Outcome<Reading> reading = readModel(model);
    if (!reading) {
        return std::nullopt;
    }
    return History::Entry{std::string(name), std::move(reading).value().truss};
}

// What follows the first line, if marker, length and checksum are right.
std::optional<std::string_view> checkedBody(std::string_view text) {
    if (text.substr(0, kMark.size()) != kMark) {
        return std::nullopt;
    }
    Walker walker{text.substr(kMark.size())};
    const auto [size, sum] = splitAtSpace(walker.line());
    if (walker.failed || readInteger<std::size_t>(size) != walker.rest.size() ||
        readInteger<std::uint64_t>(sum, 16) != checksum(walker.rest)) {
        return std::nullopt;
    }
    return walker.rest;
}

struct Stacks {
    std::optional<Truss> model;
    std::vector<History::Entry> past, future; // latest first
    bool pastBroken = false;                  // the steps beyond one that can't be read are useless
    bool futureBroken = false;
};

void takeBlock(std::string_view key, std::optional<History::Entry> entry, Stacks& stacks) {
    if (key == "model" && entry) {
        stacks.model = std::move(entry->truss);
    } else if (key == "past" || key == "future") {
        bool& broken = key == "past" ? stacks.pastBroken : stacks.futureBroken;
        broken = broken || !entry;
        if (!broken) {
            (key == "past" ? stacks.past : stacks.future).push_back(std::move(*entry));
        }
    }
}

} // namespace

std::string writeSession(const AppState& state) {
    FieldWriter fields;
    eachField(fields, state);
    std::string body = fields.text + block("model", "", state.committed);
    addSteps(*state.book, "past", state.history.past(), body);
    addSteps(*state.book, "future", state.history.future(), body);
    return std::string(kMark) + integerText(body.size()) + " " + integerText(checksum(body), 16) +
           "\n" + body;
}

std::optional<AppState> readSession(std::string_view text) {
    const std::optional<std::string_view> body = checkedBody(text);
    if (!body) {
        return std::nullopt;
    }
    AppState state;
    Stacks stacks;
    Walker walker{*body};
    while (!walker.rest.empty() && !walker.failed) {
        const auto [key, value] = splitAtSpace(walker.line());
        if (key == "model" || key == "past" || key == "future") {
            takeBlock(key, readBlock(walker, value), stacks);
        } else {
            const FieldReader fields{key, value};
            eachField(fields, state);
        }
    }
    if (walker.failed || !stacks.model) {
        return std::nullopt;
    }
    state.committed = *stacks.model;
    state.truss = *std::move(stacks.model);
    state.history = History::restored({stacks.past.rbegin(), stacks.past.rend()},
                                      {stacks.future.rbegin(), stacks.future.rend()});
    state.view.gridStep = gridStepFor(state.view.camera);
    return state;
}

} // namespace gusset
