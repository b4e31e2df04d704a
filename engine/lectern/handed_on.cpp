#include "lectern/handed_on.hpp"

#include "core/base64.hpp"
#include "desk/given.hpp"
#include "exchange/json/json_text.hpp"
#include "exchange/links/base64url.hpp"
#include "exchange/platforms/zip.hpp"
#include "phrases/working/lesson.hpp"
#include "report/lesson/slides.hpp"

#include <algorithm>

namespace gusset {
namespace {

constexpr std::size_t kMostFiles = 9999; // the numbers of pictures have four digits

SlideChoices slideChoicesUnder(const JsonValue& request, const LessonPlan& plan) {
    SlideChoices choices;
    choices.narrow = textUnder(request, "shape") == "4:3";
    choices.byStep = isYes(request, "byStep");
    choices.withWords = isYes(request, "words");
    choices.hidesValues = isYes(request, "hides") || plan.hidesValues;
    return choices;
}

// A name that no reader unpacks elsewhere: letters, digits, "-", "_" and "." within.
bool isPlainName(const std::string& name) {
    constexpr std::string_view kAllowed =
        "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-_.";
    return !name.empty() && name.front() != '.' &&
           name.find_first_not_of(kAllowed) == std::string::npos;
}

// Its name and bytes; nothing if one of them is none.
std::optional<PackedFile> packedFile(const JsonValue& file) {
    const std::string name = textUnder(file, "name");
    const JsonValue* packed = file.find("base64");
    if (!isPlainName(name)) {
        return std::nullopt;
    }
    if (!packed) {
        return PackedFile{name, textUnder(file, "text")};
    }
    const std::optional<Bytes> bytes = fromBase64Url(packed->text);
    return bytes ? std::optional(PackedFile{name, {bytes->begin(), bytes->end()}}) : std::nullopt;
}

} // namespace

std::string slidesReply(const PhraseBook& book, const Opened& opened, const JsonValue& request) {
    const SlideChoices choices = slideChoicesUnder(request, opened.plan);
    JsonText out(Layout::Compact);
    out.beginObject();
    out.text("html",
             slidesHtml({book, opened.truss}, slidesOf(book, opened.lessons, choices), choices));
    out.endObject();
    return out.take();
}

std::string pictureReply(const PhraseBook& book, const Opened& opened, const JsonValue& request) {
    const SlideChoices choices = slideChoicesUnder(request, opened.plan);
    const std::vector<SlidePlace> places = slidePlaces(opened.lessons, choices);
    const auto index = indexUnder(request, "index", places.size());
    if (!index) {
        return refusalOf(book, {{IssueCode::Missing, "index", phrase::kNoSuchPlace}});
    }
    JsonText out(Layout::Compact);
    out.beginObject();
    out.text("name", pictureNumber(*index));
    out.text("svg", svgOf(slideAt(book, opened.lessons, places[*index], choices).picture));
    out.whole("of", static_cast<long>(places.size()));
    out.endObject();
    return out.take();
}

std::string animationReply(const PhraseBook& book, const Opened& opened, std::size_t item,
                           std::size_t step, const JsonValue& request) {
    const SlideChoices choices = slideChoicesUnder(request, opened.plan);
    const AnimationEnd end = isYes(request, "loops") ? AnimationEnd::Repeats : AnimationEnd::Stays;
    JsonText out(Layout::Compact);
    out.beginObject();
    out.text("svg", animatedStep(book, opened.lessons[item], step, choices, end));
    out.endObject();
    return out.take();
}

std::string zipReply(const PhraseBook& book, const JsonValue& request) {
    const JsonValue* files = request.find("files");
    std::vector<PackedFile> packed;
    for (const JsonValue& file : files ? files->items : std::vector<JsonValue>()) {
        std::optional<PackedFile> made = packedFile(file);
        if (!made || packed.size() == kMostFiles) {
            return refusalOf(book, {{IssueCode::WrongType, "files", phrase::kNotToBePacked}});
        }
        packed.push_back(std::move(*made));
    }
    const std::string zip = zipOf(packed);
    JsonText out(Layout::Compact);
    out.beginObject();
    out.text("base64", base64(Bytes(zip.begin(), zip.end())));
    out.endObject();
    return out.take();
}

} // namespace gusset
