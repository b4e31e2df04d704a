#include "core/statement.hpp"

#include <cassert>
#include <utility>

namespace gusset {

Statement::Statement() = default;
Statement::Statement(const Statement&) = default;
Statement::Statement(Statement&&) noexcept = default;
Statement& Statement::operator=(const Statement&) = default;
Statement& Statement::operator=(Statement&&) noexcept = default;
Statement::~Statement() = default;
Statement::Statement(std::string same) : text(std::move(same)) {}
Statement::Statement(std::string_view same) : text(same) {}
Statement::Statement(const char* same) : text(same) {}
Statement::Statement(Phrase<> phrase) : english(phrase.english) {}

bool Statement::operator==(const Statement& other) const {
    return english == other.english && text == other.text && parts == other.parts;
}

Statement statementOf(const char* english, std::span<const std::string_view> names,
                      std::span<const Statement* const> values) {
    Statement whole;
    whole.english = english;
    whole.parts.reserve(names.size());
    for (std::size_t i = 0; i < names.size(); ++i) {
        assert(values[i] != nullptr && "a part is given twice, another not at all");
        whole.parts.push_back({names[i], *values[i]});
    }
    return whole;
}

std::string said(const PhraseBook& book, const Statement& statement) {
    if (!statement.english) {
        return statement.text;
    }
    std::string text;
    forEachPiece(
        sentenceIn(book, statement.english), [&](std::string_view words) { text += words; },
        [&](std::string_view name) {
            for (const StatementPart& part : statement.parts) {
                if (part.name == name) {
                    text += said(book, part.value);
                }
            }
        });
    return text;
}

} // namespace gusset
