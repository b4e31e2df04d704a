// The input of a seed; see judge.hpp.
#include "fuzz/judge.hpp"

#include "exchange/files/model_file.hpp"
#include "exchange/links/compact_model.hpp"
#include "exchange/links/deflated.hpp"
#include "exchange/links/link.hpp"
#include "exchange/links/link_text.hpp"
#include "fuzz/grown_model.hpp"
#include "support/mutation.hpp"

namespace gusset::support {

std::string inputOf(std::uint64_t seed) {
    Random random(seed);
    const Truss truss = grownModel(random);
    switch (random.integer(0, 19)) {
    case 0:
        return "#" + writeLink(truss);
    case 1:
    case 2:
        return withOtherTokens(writeModel(truss), random);
    case 3:
        return mutated(writeModel(truss, Layout::Compact), writeModel(grownModel(random)), random);
    case 4: {
        const std::string compact = compactModel(truss);
        return "#" + sealedLink(deflated(random.oneIn(3) ? mutated(compact, compact, random)
                                                         : withOtherTokens(compact, random)));
    }
    case 5:
        return random.oneIn(3) ? mutated("#" + writeLink(truss), "=.%29", random)
                               : writeModel(truss, Layout::Compact);
    default:
        return writeModel(truss);
    }
}

} // namespace gusset::support
