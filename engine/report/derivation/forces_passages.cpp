#include "report/derivation/forces_passages.hpp"

#include "hand/virtual_work/force_method.hpp"
#include "report/derivation/force_method_text.hpp"
#include "report/derivation/working_text.hpp"

namespace gusset {

std::vector<Passage> passagesOfForces(const Writer& writer, const LoadChoice& loads,
                                      const Solution& solution) {
    return solution.status == Status::Indeterminate
               ? forceMethodPassages(writer, forceMethod(writer.truss, loads, solution))
               : workingPassages(writer, workOut(writer.truss, loads, solution));
}

} // namespace gusset
