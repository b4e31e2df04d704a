#include "desk/judgement.hpp"

#include "phrases/classroom/practice.hpp"

namespace gusset {

namespace {

std::string slipText(const Writer& writer, const MarkedForce& marked) {
    const std::size_t joints = marked.body.size();
    if (joints == 1) {
        const std::string where =
            sayPlain(writer, phrase::kTheJoint,
                     {{"joint", writer.truss.joints[marked.body.front().at()].label}});
        return sayPlain(writer, phrase::kCheckSlipAt, {{"where", where}});
    }
    if (joints == writer.truss.joints.size()) {
        return sayPlain(writer, phrase::kCheckSlipAt,
                        {{"where", sayPlain(writer, phrase::kTheWholeTruss)}});
    }
    return sayPlain(writer, phrase::kCheckSlip);
}

} // namespace

std::string checkText(const Writer& writer, const MarkedForce& marked,
                      const WrittenForce& written) {
    switch (marked.verdict) {
    case Verdict::Right:
        return sayPlain(writer, phrase::kCheckRight);
    case Verdict::Unsupported:
        return sayPlain(writer, phrase::kCheckUnsupported);
    case Verdict::Carried:
        return sayPlain(writer, phrase::kCheckCarried);
    case Verdict::Slip:
        return slipText(writer, marked);
    case Verdict::Blank:
        break;
    }
    return isBlank(written) ? std::string() : sayPlain(writer, phrase::kCheckHalf);
}

} // namespace gusset
