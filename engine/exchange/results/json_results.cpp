#include "exchange/results/json_results.hpp"

#include "exchange/json/json_text.hpp"
#include "exchange/results/json_trust.hpp"

#include "core/number.hpp"

#include <cmath>

namespace gusset {

namespace {

std::string_view wordOf(Status status) {
    switch (status) {
    case Status::Invalid:
        return "invalid";
    case Status::Mechanism:
        return "mechanism";
    case Status::Determinate:
        return "determinate";
    case Status::Indeterminate:
        return "indeterminate";
    }
    return "";
}

class ResultsWriter {
public:
    ResultsWriter(const PhraseBook& book, const Truss& truss, const Solution& solution,
                  const ResultSentences& sentences, const ExactSolution& exact)
        : book_(book), truss_(truss), solution_(solution), sentences_(sentences), exact_(exact),
          newton_(toNewton(truss.units.force)), move_(toMetre(truss.units.displacement)),
          off_(solution.largest * solution.trust.error) {}

    std::string write() {
        out_.beginObject();
        out_.text("status", wordOf(solution_.status));
        if (solution_.status != Status::Invalid) {
            writeCounting();
        }
        if (solution_.solved) {
            writeReactions();
            writeMembers();
        }
        if (solution_.displaced) {
            writeJoints();
        }
        writeMechanisms();
        writeRedundants();
        if (solution_.solved) {
            out_.result("residual", solution_.residual);
            writeTrust(out_, solution_.trust);
            if (solution_.displaced) {
                writeMovementTrust(solution_.trust.displacementError);
            }
        }
        out_.texts("warnings", sentences_.warnings);
        out_.texts("assumed", sentences_.assumed);
        if (!sentences_.inexact.empty()) {
            out_.text("inexact", sentences_.inexact);
        }
        out_.issues("notes", solution_.notes, book_);
        out_.issues("errors", solution_.errors, book_);
        out_.endObject();
        return out_.take() + "\n";
    }

private:
    // Without the figures that rounding may have spoiled; `off`: bound of the error, in the unit of
    // the value.
    void number(std::string_view key, double value, double off) {
        out_.result(key, value, lastPlaceOf(off, 1));
    }
    // Values at the level of rounding error become zero.
    void force(std::string_view key, double newtons) {
        number(key, isZero(solution_, newtons) ? 0 : newtons / newton_, off_ / newton_);
    }
    [[nodiscard]] const std::string& label(JointId joint) const {
        return truss_.joints[joint.at()].label;
    }

    void writeCounting() {
        out_.whole("degree", solution_.counting.redundants);
        out_.whole("external", solution_.counting.external);
        out_.whole("internal", solution_.counting.internal);
    }

    void writeReactions() {
        std::vector<JointId> supported; // each once
        std::vector<bool> isKnown(truss_.joints.size(), false);
        for (const Support& support : truss_.supports) {
            if (!isKnown[support.joint.at()]) {
                isKnown[support.joint.at()] = true;
                supported.push_back(support.joint);
            }
        }
        out_.objects("reactions", supported, [&](JointId joint) {
            out_.text("joint", label(joint));
            force("fx", solution_.jointReactions[joint.at()].x);
            force("fy", solution_.jointReactions[joint.at()].y);
            if (exact_.solved) {
                out_.text("exactFx", textOf(exact_.jointReactions[joint.at()].x));
                out_.text("exactFy", textOf(exact_.jointReactions[joint.at()].y));
            }
        });
    }

    void writeMembers() {
        std::size_t i = 0;
        out_.objects("members", truss_.members, [&](const Member& member) {
            const Sense sense = senseOf(solution_, MemberId{static_cast<int>(i)});
            out_.text("a", label(member.a));
            out_.text("b", label(member.b));
            force("force", solution_.forces[i]);
            out_.text("sense", sense == Sense::Tension       ? "T"
                               : sense == Sense::Compression ? "C"
                                                             : "0");
            if (exact_.solved) {
                out_.text("exact", textOf(exact_.forces[i]));
            }
            writeStrain(i++, sense);
        });
    }

    // What is known about a member besides its force.
    void writeStrain(std::size_t member, Sense sense) {
        const double stress = solution_.stresses[member];
        if (!std::isnan(stress)) {
            const double value = sense == Sense::Zero ? 0 : stress / toPascal(truss_.units.stress);
            number("stress", value,
                   value == 0 ? 0 : std::abs(value / solution_.forces[member]) * off_);
        }
        if (solution_.displaced) {
            number("elongation", solution_.elongations[member] / move_,
                   solution_.elongationErrors[member] / move_);
        }
        if (!solution_.moments.empty()) {
            out_.result("moment",
                        solution_.moments[member] / newton_ / toMetre(truss_.units.length));
        }
    }

    void writeJoints() {
        const double off = movementBound(solution_) / move_;
        auto moved = solution_.displacements.begin();
        out_.objects("joints", truss_.joints, [&](const Joint& joint) {
            out_.text("id", joint.label);
            number("ux", moved->x / move_, off);
            number("uy", moved->y / move_, off);
            ++moved;
        });
        const double energy = newton_ * toMetre(truss_.units.length);
        number("strainEnergy", solution_.strainEnergy / energy,
               solution_.strainEnergyError / energy);
    }

    void writeRedundants() {
        if (solution_.redundants.empty()) {
            return;
        }
        const Structure structure = structureOf(truss_);
        out_.objects("redundants", solution_.redundants, [&](const Redundant& redundant) {
            if (const auto* member = std::get_if<MemberId>(&redundant.what)) {
                out_.text("a", label(truss_.members[member->at()].a));
                out_.text("b", label(truss_.members[member->at()].b));
            } else {
                const Restraint& restraint =
                    structure.restraints[std::get<RestraintId>(redundant.what).at()];
                out_.text("joint", label(restraint.joint));
                out_.result("x", restraint.along.x);
                out_.result("y", restraint.along.y);
            }
        });
    }

    void writeMovementTrust(double error) {
        out_.result("displacementError", error);
        if (figuresOf(error) < kResultDigits) {
            out_.whole("displacementFigures", figuresOf(error));
        }
    }

    void writeMechanisms() {
        if (solution_.mechanisms.empty()) {
            return;
        }
        std::size_t i = 0;
        out_.objects("mechanisms", solution_.mechanisms, [&](const Mechanism& mechanism) {
            out_.object("velocities", [&] {
                for (const JointId joint : mechanism.moving) {
                    out_.key(label(joint));
                    out_.beginArray();
                    out_.result(mechanism.velocities[joint.at()].x);
                    out_.result(mechanism.velocities[joint.at()].y);
                    out_.endArray();
                }
            });
            if (i < sentences_.mechanisms.size()) {
                out_.text("says", sentences_.mechanisms[i]);
            }
            ++i;
        });
    }

    const PhraseBook& book_;
    const Truss& truss_;
    const Solution& solution_;
    const ResultSentences& sentences_;
    const ExactSolution& exact_;
    double newton_;
    double move_; // metres per displacement unit
    double off_;  // bound of the error of any force, N
    JsonText out_{Layout::Indented};
};

} // namespace

void writeTrust(JsonText& out, const Trust& trust) {
    const int figures = figuresOf(trust.error);
    out.result("condition", trust.condition);
    out.result("error", trust.error);
    if (figures < kResultDigits) {
        out.whole("figures", figures);
    }
}

std::string writeResults(const PhraseBook& book, const Truss& truss, const Solution& solution,
                         const ResultSentences& sentences, const ExactSolution& exact) {
    return ResultsWriter(book, truss, solution, sentences, exact).write();
}

} // namespace gusset
