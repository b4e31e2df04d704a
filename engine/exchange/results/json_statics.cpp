#include "exchange/results/json_statics.hpp"

#include "core/number.hpp"
#include "exchange/json/json_text.hpp"
#include "exchange/results/json_trust.hpp"

#include <algorithm>
#include <string_view>

namespace gusset {

namespace {

class StaticsWriter {
public:
    StaticsWriter(const PhraseBook& book, const Truss& truss) : book_(book), truss_(truss) {}

    std::string write(const InfluenceReport& report, const ResultSentences& sentences,
                      const Issues& notes) {
        scale_ = ordinateScale(truss_, report.effect.kind);
        lastPlace_ = lastPlaceOf(report.error * scale_, 1);
        out_.beginObject();
        out_.text("of", report.of);
        writeOrdinates(report);
        const Areas areas = areasOf(report.line);
        const int ofAreas = lastPlaceOf(report.error * report.line.at.back() * scale_ / metre_, 1);
        out_.result("positiveArea", areas.positive * scale_ / metre_, ofAreas);
        out_.result("negativeArea", areas.negative * scale_ / metre_, ofAreas);
        const std::vector<double>& ordinates = report.line.ordinates;
        writePeak("largest", report, std::max_element(ordinates.begin(), ordinates.end()));
        writePeak("smallest", report, std::min_element(ordinates.begin(), ordinates.end()));
        writeMoving(report);
        return ended(trustOf(report), sentences, notes);
    }

    std::string write(const Envelope& envelope, const ResultSentences& sentences,
                      const Issues& notes) {
        lastPlace_ = lastPlaceOf(forceErrorOf(envelope.reliance) / newton_, 1);
        out_.beginObject();
        auto member = truss_.members.begin();
        out_.objects("members", envelope.members, [&](const auto& extremes) {
            out_.text("a", label(member->a));
            out_.text("b", label(member->b));
            writeExtreme("tension", extremes.tension, envelope.reliance);
            writeExtreme("compression", extremes.compression, envelope.reliance);
            ++member;
        });
        return ended(envelope.reliance.trust, sentences, notes);
    }

private:
    std::string ended(const Trust& trust, const ResultSentences& sentences, const Issues& notes) {
        writeTrust(out_, trust);
        out_.texts("warnings", sentences.warnings);
        out_.texts("assumed", sentences.assumed);
        out_.issues("notes", notes, book_);
        out_.endObject();
        return out_.take() + "\n";
    }

    [[nodiscard]] const std::string& label(JointId joint) const {
        return truss_.joints[joint.at()].label;
    }

    void writeOrdinates(const InfluenceReport& report) {
        std::size_t i = 0;
        out_.objects("ordinates", report.path, [&](JointId joint) {
            out_.text("joint", label(joint));
            out_.result("at", report.line.at[i] / metre_);
            out_.result("value", report.line.ordinates[i] * scale_, lastPlace_);
            if (!report.exact.empty()) {
                out_.text("exact", textOf(report.exact[i]));
            }
            ++i;
        });
    }

    void writePeak(std::string_view key, const InfluenceReport& report,
                   std::vector<double>::const_iterator peak) {
        const auto at = static_cast<std::size_t>(peak - report.line.ordinates.begin());
        out_.object(key, [&] {
            out_.text("joint", label(report.path[at]));
            out_.result("value", *peak * scale_, lastPlace_);
        });
    }

    void writeMoving(const InfluenceReport& report) {
        if (report.moving.empty()) {
            return;
        }
        out_.objects("moving", report.moving, [&](const MovingResult& result) {
            out_.text("id", result.id);
            lastPlace_ = lastPlaceOf(result.error * scale_ / newton_, 1);
            writePlace("largest", report, result.train.largest);
            writePlace("smallest", report, result.train.smallest);
            if (result.uniform) {
                writeUniform("largestUniform", result.uniform->largest);
                writeUniform("smallestUniform", result.uniform->smallest);
            }
        });
    }

    // A train that is off the truss gives 0 and has no position.
    void writePlace(std::string_view key, const InfluenceReport& report, const TrainPlace& place) {
        out_.object(key, [&] {
            out_.result("value", place.value * scale_ / newton_, lastPlace_);
            if (place.value != 0) {
                out_.result("first", place.first / metre_);
                out_.key("reversed");
                out_.boolean(place.reversed);
                out_.whole("axle", static_cast<long>(place.axle) + 1);
                out_.text("over", label(report.path[place.joint]));
            }
        });
    }

    void writeUniform(std::string_view key, const UniformPlace& place) {
        out_.object(key, [&] {
            out_.result("value", place.value * scale_ / newton_, lastPlace_);
            if (place.to > place.from) {
                out_.result("from", place.from / metre_);
                out_.result("to", place.to / metre_);
            }
        });
    }

    // Values at the level of rounding error become zero, as in results.
    void writeExtreme(const std::string& key, const ForceExtreme& extreme,
                      const Reliance& reliance) {
        const bool none = isZero(reliance, extreme.force);
        out_.result(key, none ? 0 : extreme.force / newton_, lastPlace_);
        if (!none) {
            out_.text(key + (isCombination(extreme.choice) ? "Combination" : "Case"),
                      choiceName(extreme.choice));
        }
    }

    const PhraseBook& book_;
    const Truss& truss_;
    double newton_ = toNewton(truss_.units.force);
    double metre_ = toMetre(truss_.units.length);
    double scale_ = 1;
    int lastPlace_ = 0; // NumberStyle::lastPlace of what is being written
    JsonText out_{Layout::Indented};
};

} // namespace

std::string writeInfluence(const PhraseBook& book, const Truss& truss,
                           const InfluenceReport& report, const ResultSentences& sentences,
                           const Issues& notes) {
    return StaticsWriter(book, truss).write(report, sentences, notes);
}

std::string writeEnvelope(const PhraseBook& book, const Truss& truss, const Envelope& envelope,
                          const ResultSentences& sentences, const Issues& notes) {
    return StaticsWriter(book, truss).write(envelope, sentences, notes);
}

} // namespace gusset
