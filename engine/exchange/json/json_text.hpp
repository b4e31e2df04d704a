#pragma once
// Writes JSON text piece by piece.

#include "core/outcome.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace gusset {

inline constexpr int kResultDigits = 12;

enum class Layout { Compact, Indented };

// Indented: one line for each key of the outermost object and each element of its arrays.
class JsonText {
public:
    explicit JsonText(Layout layout) : layout_(layout) {}

    void beginObject() { begin('{'); }
    void endObject() { end('}'); }
    void beginArray() { begin('['); }
    void endArray() { end(']'); }

    void key(std::string_view);
    void text(std::string_view); // invalid UTF-8 becomes U+FFFD
    void number(double);         // the shortest form that reads back the same; precondition: finite
    void digits(std::string_view number);
    void boolean(bool);
    void null();
    void whole(long value);
    void json(std::string_view value); // already JSON
    void text(std::string_view key, std::string_view value);
    void whole(std::string_view key, long value);
    void number(std::string_view key, double value);
    void result(double); // to kResultDigits; zero without a sign
    void result(std::string_view key, double value);
    // The same, rounded to the last significant place (NumberStyle::lastPlace).
    void result(std::string_view key, double value, int lastPlace);
    void texts(std::string_view key,
               const std::vector<std::string>&); // nothing when there are none
    void allTexts(std::string_view key,
                  const std::vector<std::string>&); // an empty list when there are none
    // As a list; nothing when there are none.
    void issues(std::string_view key, const Issues&, const PhraseBook&);
    void members(std::string_view objectText); // adds those of "{…}" to the open object

    // An object under a key, and a list with one object per item; `write` writes their contents.
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

    // Precondition: every object and array has been ended.
    [[nodiscard]] std::string take();

private:
    void begin(char bracket);
    void end(char bracket);
    void separate();
    void quote(std::string_view);
    [[nodiscard]] bool isOnLines() const; // the innermost container

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
