#include "exchange/json_statics.hpp"

#include "exchange/json_text.hpp"

#include <algorithm>
#include <string_view>

namespace gusset {

namespace {

class StaticsWriter {
public:
    explicit StaticsWriter(const Truss& truss) : truss_(truss) {}

    std::string write(const InfluenceReport& report, const std::vector<std::string>& assumed,
                      const Issues& notes) {
        scale_ = ordinateScale(truss_, report.effect.kind);
        out_.beginObject();
        out_.text("of", report.of);
        writeOrdinates(report);
        const Areas areas = areasOf(report.line);
        out_.result("positiveArea", areas.positive * scale_ / metre_);
        out_.result("negativeArea", areas.negative * scale_ / metre_);
        const std::vector<double>& ordinates = report.line.ordinates;
        writePeak("largest", report, std::max_element(ordinates.begin(), ordinates.end()));
        writePeak("smallest", report, std::min_element(ordinates.begin(), ordinates.end()));
        writeMoving(report);
        if (!assumed.empty()) {
            writeSentences("assumed", assumed);
        }
        out_.issues("notes", notes);
        out_.endObject();
        return out_.take() + "\n";
    }

    std::string write(const std::vector<MemberEnvelope>& envelope, const Issues& notes) {
        out_.beginObject();
        out_.key("members");
        out_.beginArray();
        for (std::size_t i = 0; i < envelope.size(); ++i) {
            out_.beginObject();
            out_.text("a", label(truss_.members[i].a));
            out_.text("b", label(truss_.members[i].b));
            writeExtreme("tension", envelope[i].tension);
            writeExtreme("compression", envelope[i].compression);
            out_.endObject();
        }
        out_.endArray();
        out_.issues("notes", notes);
        out_.endObject();
        return out_.take() + "\n";
    }

private:
    [[nodiscard]] const std::string& label(JointId joint) const {
        return truss_.joints[joint.at()].label;
    }

    void writeOrdinates(const InfluenceReport& report) {
        out_.key("ordinates");
        out_.beginArray();
        for (std::size_t i = 0; i < report.path.size(); ++i) {
            out_.beginObject();
            out_.text("joint", label(report.path[i]));
            out_.result("at", report.line.at[i] / metre_);
            out_.result("value", report.line.ordinates[i] * scale_);
            if (!report.exact.empty()) {
                out_.text("exact", textOf(report.exact[i]));
            }
            out_.endObject();
        }
        out_.endArray();
    }

    void writePeak(std::string_view key, const InfluenceReport& report,
                   std::vector<double>::const_iterator peak) {
        out_.key(key);
        out_.beginObject();
        const auto at = static_cast<std::size_t>(peak - report.line.ordinates.begin());
        out_.text("joint", label(report.path[at]));
        out_.result("value", *peak * scale_);
        out_.endObject();
    }

    void writeMoving(const InfluenceReport& report) {
        if (report.moving.empty()) {
            return;
        }
        out_.key("moving");
        out_.beginArray();
        for (const MovingResult& result : report.moving) {
            out_.beginObject();
            out_.text("id", result.id);
            writePlace("largest", report, result.train.largest);
            writePlace("smallest", report, result.train.smallest);
            if (result.uniform) {
                writeUniform("largestUniform", result.uniform->largest);
                writeUniform("smallestUniform", result.uniform->smallest);
            }
            out_.endObject();
        }
        out_.endArray();
    }

    // A train beside the truss, which gives 0, has no place.
    void writePlace(std::string_view key, const InfluenceReport& report, const TrainPlace& place) {
        out_.key(key);
        out_.beginObject();
        out_.result("value", place.value * scale_ / newton_);
        if (place.value != 0) {
            out_.result("first", place.first / metre_);
            out_.key("reversed");
            out_.boolean(place.reversed);
            out_.key("axle");
            out_.whole(static_cast<long>(place.axle) + 1);
            out_.text("over", label(report.path[place.joint]));
        }
        out_.endObject();
    }

    void writeUniform(std::string_view key, const UniformPlace& place) {
        out_.key(key);
        out_.beginObject();
        out_.result("value", place.value * scale_ / newton_);
        if (place.to > place.from) {
            out_.result("from", place.from / metre_);
            out_.result("to", place.to / metre_);
        }
        out_.endObject();
    }

    void writeExtreme(const std::string& key, const ForceExtreme& extreme) {
        out_.result(key, extreme.force / newton_);
        if (extreme.force != 0) {
            const bool combined = !extreme.choice.combinationId.empty();
            out_.text(key + (combined ? "Combination" : "Case"),
                      combined ? extreme.choice.combinationId : extreme.choice.caseId);
        }
    }

    void writeSentences(std::string_view key, const std::vector<std::string>& sentences) {
        out_.key(key);
        out_.beginArray();
        for (const std::string& sentence : sentences) {
            out_.text(sentence);
        }
        out_.endArray();
    }

    const Truss& truss_;
    double newton_ = toNewton(truss_.units.force);
    double metre_ = toMetre(truss_.units.length);
    double scale_ = 1;
    JsonText out_{Layout::Indented};
};

} // namespace

std::string writeInfluence(const Truss& truss, const InfluenceReport& report,
                           const std::vector<std::string>& assumed, const Issues& notes) {
    return StaticsWriter(truss).write(report, assumed, notes);
}

std::string writeEnvelope(const Truss& truss, const std::vector<MemberEnvelope>& envelope,
                          const Issues& notes) {
    return StaticsWriter(truss).write(envelope, notes);
}

} // namespace gusset
