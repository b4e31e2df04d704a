#include "report/phrases.hpp"

#include <cassert>

namespace gusset {
namespace {

struct Sentence {
    Phrase phrase;
    const char* text;
};

constexpr Sentence kEnglish[] = {
    {Phrase::ListTwo, "{a} and {b}"},
    {Phrase::ListMore, "{a}, {b}"},
    {Phrase::OneMember, "1 member"},
    {Phrase::ManyMembers, "{n} members"},
    {Phrase::OneReaction, "1 reaction"},
    {Phrase::ManyReactions, "{n} reactions"},

    {Phrase::NothingDrawn, "Nothing is drawn yet. Draw a member: joints appear at its ends."},
    {Phrase::NoMember, "There is no member yet: join two joints."},
    {Phrase::NoSupport, "The truss has no support, so any load carries it off. "
                        "Give it a pin and a roller."},
    {Phrase::LooseJoint, "Joint {joint} has no member: join it to the truss or delete it."},
    {Phrase::LooseJoints, "Joints {joints} have no member: join them to the truss or delete them."},
    {Phrase::UnstableTooFew, "Unstable: members and reactions are {m} + {r} = {sum}, "
                             "and 2 × {j} joints need {need}: {missing} too few."},
    {Phrase::UnstableEnough, "Unstable: members and reactions are enough in number "
                             "(m + r = {m} + {r}, 2j = 2 × {j}), but not in the right places."},
    {Phrase::BalancedAnyway, "These loads happen to be in balance on it. The forces given hold for "
                             "exactly these loads; any other would set it moving."},
    {Phrase::UnstableAndRedundant,
     "In another place it has more than it needs: {redundants} too many there."},
    {Phrase::Indeterminate, "Statically indeterminate to degree {degree}: "
                            "{members} + {reactions} against 2 × {j} joints."},
    {Phrase::IndeterminateExternal, "The supports hold {external} more than is needed."},
    {Phrase::IndeterminateInternal, "Inside, it has {internal} more than is needed."},
    {Phrase::IndeterminateBoth, "The supports hold {external}, and the members {internal}, "
                                "more than is needed."},
    {Phrase::NeedsStiffness, "Equilibrium alone leaves the forces open: "
                             "how stiff each member is decides them."},
    {Phrase::Determinate, "Statically determinate: {members} + {reactions} = 2 × {j} joints."},
    {Phrase::LargestTension, "Largest tension: {value} in {member}."},
    {Phrase::LargestCompression, "Largest compression: {value} in {member}."},
    {Phrase::AllForcesZero, "No member carries any force under these loads."},
    {Phrase::NotAccurate, "The truss is so close to being unstable that its forces can't be "
                          "computed to working accuracy."},

    {Phrase::MemberForcesCaption, "Member forces in {unit}"},
    {Phrase::MemberForcesCaptionPlain, "Member forces"},
    {Phrase::ReactionsCaption, "Reactions on the truss in {unit}, positive to the right and up"},
    {Phrase::ReactionsCaptionPlain, "Reactions on the truss, positive to the right and up"},
    {Phrase::ColumnMember, "Member"},
    {Phrase::ColumnForce, "Force"},
    {Phrase::ColumnSense, "Sense"},
    {Phrase::ColumnJoint, "Joint"},
    {Phrase::WordTension, "tension"},
    {Phrase::WordCompression, "compression"},
    {Phrase::WordZero, "zero"},
    {Phrase::NotesHeading, "Notes"},
};

constexpr bool complete() {
    std::size_t next = 0;
    for (const Sentence& sentence : kEnglish) {
        if (static_cast<std::size_t>(sentence.phrase) != next++) {
            return false;
        }
    }
    return next == static_cast<std::size_t>(Phrase::Count_);
}
static_assert(complete(), "a sentence for every phrase, in the order of the phrases");

constexpr PhraseBook makeEnglish() {
    PhraseBook book;
    for (const Sentence& sentence : kEnglish) {
        book.sentences[static_cast<std::size_t>(sentence.phrase)] = sentence.text;
    }
    return book;
}

void append(RichLine& line, std::string_view text) {
    if (text.empty()) {
        return;
    }
    if (!line.empty() && line.back().style == RunStyle::Plain) {
        line.back().text += text;
    } else {
        line.push_back({std::string(text), RunStyle::Plain});
    }
}

void append(RichLine& line, const RichLine& runs) {
    for (const Run& run : runs) {
        if (run.style == RunStyle::Plain) {
            append(line, run.text);
        } else {
            line.push_back(run);
        }
    }
}

const RichLine& partNamed(std::initializer_list<Part> parts, std::string_view name) {
    for (const Part& part : parts) {
        if (name == part.name) {
            return part.text;
        }
    }
    assert(false && "a sentence names a part that it was not given");
    static const RichLine none;
    return none;
}

} // namespace

const PhraseBook& englishPhrases() {
    static constexpr PhraseBook book = makeEnglish();
    return book;
}

RichLine plainLine(std::string_view text) {
    RichLine line;
    append(line, text);
    return line;
}

RichLine say(const PhraseBook& book, Phrase phrase, std::initializer_list<Part> parts) {
    std::string_view rest = book.sentences[static_cast<std::size_t>(phrase)];
    RichLine line;
    while (true) {
        const auto open = rest.find('{');
        append(line, rest.substr(0, open));
        if (open == std::string_view::npos) {
            return line;
        }
        const auto close = rest.find('}', open);
        assert(close != std::string_view::npos);
        append(line, partNamed(parts, rest.substr(open + 1, close - open - 1)));
        rest = rest.substr(close + 1);
    }
}

std::string sayPlain(const PhraseBook& book, Phrase phrase, std::initializer_list<Part> parts) {
    return plainText(say(book, phrase, parts));
}

RichLine listOf(const PhraseBook& book, const std::vector<RichLine>& items) {
    RichLine line;
    for (std::size_t i = 0; i < items.size(); ++i) {
        if (i == 0) {
            line = items[i];
        } else {
            const bool last = i + 1 == items.size();
            line = say(book, last ? Phrase::ListTwo : Phrase::ListMore,
                       {{"a", line}, {"b", items[i]}});
        }
    }
    return line;
}

} // namespace gusset
