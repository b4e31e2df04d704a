#pragma once
// A sentence that is not said yet: code that finds a fault or names a step need not know the
// language; whoever shows it says it, with the phrase book of the page.

#include "core/phrase.hpp"

#include <concepts>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace gusset {

struct StatementPart;

// A phrase with its parts, or text that is the same in every language: a name, a number, a sign.
struct Statement {
    const char* english = nullptr; // of the phrase; null: `text` instead
    std::string text{};
    std::vector<StatementPart> parts{};

    // Special members in statement.cpp: inline, they would be a large part of the program.
    Statement();
    Statement(const Statement&);
    Statement(Statement&&) noexcept;
    Statement& operator=(const Statement&);
    Statement& operator=(Statement&&) noexcept;
    ~Statement();
    Statement(std::string same);
    Statement(std::string_view same);
    Statement(const char* same);
    Statement(std::integral auto count) : Statement(std::to_string(count)) {}
    Statement(Phrase<> phrase);

    [[nodiscard]] bool empty() const { return english == nullptr && text.empty(); }
    bool operator==(const Statement&) const;
};

struct StatementPart {
    std::string_view name; // as in the phrase, which outlives it
    Statement value;

    bool operator==(const StatementPart&) const = default;
};

// `values[i]` belongs to `names[i]`.
[[nodiscard]] Statement statementOf(const char* english, std::span<const std::string_view> names,
                                    std::span<const Statement* const> values);

// statement("{member} has no length"_phrase, {{"member", name}}).
template <PartName... Names>
[[nodiscard]] Statement statement(Phrase<Names...> phrase,
                                  const PartsOf<Statement, Names...>& parts) {
    const Statement* values[sizeof...(Names)] = {};
    for (const auto& part : parts) {
        values[part.name.index] = &part.value;
    }
    return statementOf(phrase.english, kPartNames<Names...>, values);
}

[[nodiscard]] std::string said(const PhraseBook&, const Statement&);

} // namespace gusset
