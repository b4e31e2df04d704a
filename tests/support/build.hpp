#pragma once
// How the tests are built.

namespace gusset::support {

// Everything takes about ten times as long under the sanitizers: there a test may take a part of
// its inputs. All of them are taken natively and as WebAssembly.
#ifdef __SANITIZE_ADDRESS__
inline constexpr bool kSanitized = true;
#else
inline constexpr bool kSanitized = false;
#endif

} // namespace gusset::support
