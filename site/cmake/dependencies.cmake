# What Gusset builds on. Header-only libraries come from the machine; Dear ImGui, Catch2 and zlib
# are compiled from source, the same source natively and for the web. site/setup unpacks those
# sources under build/sources; where it has not, CMake fetches the pinned releases.
include(FetchContent)

# Links one folder of host headers into a separate folder and makes an interface library of that.
# Emscripten must never see /usr/include itself: it would mistake the host's C library for its own.
function(gusset_header_library target folder probe)
    find_path(${target}_ROOT ${probe} PATH_SUFFIXES eigen3 NO_CMAKE_FIND_ROOT_PATH
        HINTS /usr/include /usr/local/include)
    if(NOT ${target}_ROOT)
        message(FATAL_ERROR "Header ${probe} was not found: run site/setup.")
    endif()
    set(own ${CMAKE_BINARY_DIR}/host-headers/${target})
    file(MAKE_DIRECTORY ${own})
    foreach(entry IN LISTS folder)
        file(CREATE_LINK ${${target}_ROOT}/${entry} ${own}/${entry} SYMBOLIC)
    endforeach()
    add_library(${target} INTERFACE)
    target_include_directories(${target} SYSTEM INTERFACE ${own})
endfunction()

gusset_header_library(gusset_eigen Eigen Eigen/Core)
gusset_header_library(gusset_json nlohmann nlohmann/json.hpp)
gusset_header_library(gusset_boost boost boost/multiprecision/cpp_int.hpp)

foreach(name IN ITEMS imgui catch2 zlib qr-code-generator)
    string(TOUPPER ${name} upper)
    if(EXISTS ${PROJECT_SOURCE_DIR}/build/sources/${name} AND NOT FETCHCONTENT_SOURCE_DIR_${upper})
        set(FETCHCONTENT_SOURCE_DIR_${upper} ${PROJECT_SOURCE_DIR}/build/sources/${name})
    endif()
endforeach()

# SOURCE_SUBDIR names a folder that does not exist: only the sources are wanted, not their build
# files.
FetchContent_Declare(imgui SOURCE_SUBDIR none
    URL https://github.com/ocornut/imgui/archive/refs/tags/v1.90.1.tar.gz
    URL_HASH SHA256=21dcc985bb2ae8fe48047c86135dbc438d6980a8f2e08babbda5be820592f282)
FetchContent_Declare(zlib SOURCE_SUBDIR none
    URL https://github.com/madler/zlib/releases/download/v1.3.1/zlib-1.3.1.tar.gz
    URL_HASH SHA256=9a93b2b7dfdac77ceba5a558a580e74667dd6fede4585b91eefb60f03b72df23)
FetchContent_Declare(qr-code-generator SOURCE_SUBDIR none
    URL https://deb.debian.org/debian/pool/main/q/qr-code-generator/qr-code-generator_1.8.0.orig.tar.gz
    URL_HASH SHA256=2ec0a4d33d6f521c942eeaf473d42d5fe139abcfa57d2beffe10c5cf7d34ae60)
FetchContent_Declare(catch2 SYSTEM
    URL https://github.com/catchorg/Catch2/archive/refs/tags/v3.7.1.tar.gz
    URL_HASH SHA256=c991b247a1a0d7bb9c39aa35faf0fe9e19764213f28ffba3109388e62ee0269c)

FetchContent_MakeAvailable(zlib)
# Deflate and inflate in memory only: no files, no gzip.
add_library(gusset_zlib STATIC
    ${zlib_SOURCE_DIR}/adler32.c ${zlib_SOURCE_DIR}/crc32.c ${zlib_SOURCE_DIR}/deflate.c
    ${zlib_SOURCE_DIR}/inffast.c ${zlib_SOURCE_DIR}/inflate.c ${zlib_SOURCE_DIR}/inftrees.c
    ${zlib_SOURCE_DIR}/trees.c ${zlib_SOURCE_DIR}/zutil.c)
target_include_directories(gusset_zlib SYSTEM PUBLIC ${zlib_SOURCE_DIR})
# Its CRC table is built on first use: as data it would add 5 KB to the page, compressed.
target_compile_definitions(gusset_zlib PRIVATE $<$<BOOL:${EMSCRIPTEN}>:DYNAMIC_CRC_TABLE>)

# The C version: it works in the caller's buffers and neither allocates nor throws.
FetchContent_MakeAvailable(qr-code-generator)
add_library(gusset_qrcodegen STATIC ${qr-code-generator_SOURCE_DIR}/c/qrcodegen.c)
target_include_directories(gusset_qrcodegen SYSTEM PUBLIC ${qr-code-generator_SOURCE_DIR}/c)
target_compile_options(gusset_qrcodegen PRIVATE -Oz)

if(EMSCRIPTEN)
    FetchContent_MakeAvailable(imgui)
    # Without ImGui's fallback typeface: it would add 10 KB to the page, compressed.
    set(name "static const char proggy_clean_ttf_compressed_data_base85")
    file(READ ${imgui_SOURCE_DIR}/imgui_draw.cpp source)
    string(FIND "${source}" "${name}[" begins)
    string(FIND "${source}" "\nstatic const char* GetDefaultCompressedFontDataTTFBase85()\n{" ends)
    if(begins LESS 0 OR ends LESS begins)
        message(FATAL_ERROR "Dear ImGui's own typeface is not where it was in imgui_draw.cpp.")
    endif()
    string(SUBSTRING "${source}" 0 ${begins} before)
    string(SUBSTRING "${source}" ${ends} -1 after)
    file(WRITE ${CMAKE_BINARY_DIR}/imgui_draw.cpp.new "${before}${name}[] = \"\";\n${after}")
    file(COPY_FILE ${CMAKE_BINARY_DIR}/imgui_draw.cpp.new ${CMAKE_BINARY_DIR}/imgui_draw.cpp ONLY_IF_DIFFERENT)
    add_library(gusset_imgui STATIC
        ${imgui_SOURCE_DIR}/imgui.cpp ${CMAKE_BINARY_DIR}/imgui_draw.cpp
        ${imgui_SOURCE_DIR}/imgui_tables.cpp ${imgui_SOURCE_DIR}/imgui_widgets.cpp
        # Called by ImGui's hooks for test tools; here, so that everything that links ImGui has it.
        ${PROJECT_SOURCE_DIR}/web/platform/item_log.cpp)
    target_include_directories(gusset_imgui SYSTEM PUBLIC ${imgui_SOURCE_DIR})
    target_include_directories(gusset_imgui PRIVATE ${PROJECT_SOURCE_DIR}/web)
    target_compile_definitions(gusset_imgui PUBLIC IMGUI_DISABLE_DEMO_WINDOWS
        IMGUI_DISABLE_DEBUG_TOOLS IMGUI_DISABLE_FILE_FUNCTIONS IMGUI_DISABLE_OBSOLETE_FUNCTIONS
        IMGUI_ENABLE_TEST_ENGINE
        ImDrawIdx=unsigned) # labels of thousands of members have more vertices than 16-bit indices reach
    target_compile_options(gusset_imgui PRIVATE -Oz -fno-exceptions -fno-rtti)

    # Dear ImGui's own renderer, which draws its lists with WebGL2. Events are handled in
    # web/platform.
    add_library(gusset_imgui_gl STATIC ${imgui_SOURCE_DIR}/backends/imgui_impl_opengl3.cpp)
    target_include_directories(gusset_imgui_gl SYSTEM PUBLIC ${imgui_SOURCE_DIR}/backends)
    target_compile_definitions(gusset_imgui_gl PUBLIC IMGUI_IMPL_OPENGL_ES3)
    target_compile_options(gusset_imgui_gl PRIVATE -Oz -fno-exceptions -fno-rtti)
    target_link_libraries(gusset_imgui_gl PUBLIC gusset_imgui)
endif()
