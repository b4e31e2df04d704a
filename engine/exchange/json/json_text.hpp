#pragma once
// Writes JSON text piece by piece.

#include "core/outcome.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace gusset {

inline constexpr int kResultDigits = 12;

enum class Layout { Compact, Indented };

// Indented: a line for each key of the outermost object and for each element of its arrays.
class JsonText {
public:
    explicit JsonText(Layout layout) : layout_(layout) {}

    void beginObject() { begin('{'); }
    void endObject() { end('}'); }
    void beginArray() { begin('['); }
    void endArray() { end(']'); }

    void key(std::string_view);
    void text(std::string_view); // what is not UTF-8 in it becomes U+FFFD
    void number(double);         // shortest that reads back the same; precondition: finite
    void digits(std::string_view number);
    void boolean(bool);
    void null();
    void whole(long value);
    void json(std::string_view value); // already JSON
    void text(std::string_view key, std::string_view value);
    void whole(std::string_view key, long value);
    void number(std::string_view key, double value);
    void result(double); // to kResultDigits, 0 without a sign
    void result(std::string_view key, double value);
    // The same without figures behind the last place that means something (NumberStyle::lastPlace).
    void result(std::string_view key, double value, int lastPlace);
    void texts(std::string_view key,
               const std::vector<std::string>&);      // nothing when there are none
    void issues(std::string_view key, const Issues&); // as a list; nothing when there are none
    void members(std::string_view objectText); // of "{…}", among the members written; "" has none

    // An object by its key, and a list of objects, of each item one; `write` writes what is in
    // them.
    template <class Write>
    void object(std::string_view name, const Write& write) {
        key(name);
        beginObject();
        write();
        endObject();
    }
    template <class Item, class Write>
    void objects(std::string_view name, const std::vector<Item>& items, const Write& write) {
        key(name);
        beginArray();
        for (const Item& item : items) {
            beginObject();
            write(item);
            endObject();
        }
        endArray();
    }
    void yes(std::string_view name) { // a flag that is true
        key(name);
        boolean(true);
    }

    // Precondition: everything that was begun has ended.
    [[nodiscard]] std::string take();

private:
    void begin(char bracket);
    void end(char bracket);
    void separate();
    void quote(std::string_view);
    [[nodiscard]] bool isOnLines() const; // of the innermost container

    struct Container {
        bool isArray = false;
        bool isEmpty = true;
    };
    Layout layout_;
    std::string out_;
    std::vector<Container> open_;
    bool afterKey_ = false;
};

} // namespace gusset
