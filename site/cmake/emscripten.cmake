# Finds the Emscripten on this machine (Debian's package or an emsdk on PATH) and includes the CMake
# toolchain file that comes with it.
find_program(GUSSET_EM_CONFIG em-config)
if(NOT GUSSET_EM_CONFIG)
    message(FATAL_ERROR "Emscripten was not found: run site/setup, or put an emsdk on PATH.")
endif()
execute_process(COMMAND ${GUSSET_EM_CONFIG} EMSCRIPTEN_ROOT
    OUTPUT_VARIABLE GUSSET_EMSCRIPTEN_ROOT OUTPUT_STRIP_TRAILING_WHITESPACE
    COMMAND_ERROR_IS_FATAL ANY)
include(${GUSSET_EMSCRIPTEN_ROOT}/cmake/Modules/Platform/Emscripten.cmake)
