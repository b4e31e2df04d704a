# gusset_room(TARGET FOLDER SOURCE…): the sources of one folder, as objects of TARGET.
#
# They are compiled a dozen at a time, as most of the compile time of a source goes into headers
# that its neighbours include too. A name in an unnamed namespace must therefore be unique in its
# room.
set(GUSSET_TOGETHER 12 CACHE STRING "Sources compiled at a time; 1: each alone")

function(gusset_together target)
    if(GUSSET_TOGETHER GREATER 1)
        set_target_properties(${target} PROPERTIES
            UNITY_BUILD ON UNITY_BUILD_BATCH_SIZE ${GUSSET_TOGETHER})
        # GCC treats an included source as a header, whose types others would see, and in large
        # translation units it warns that the value of a variant may be uninitialized.
        target_compile_options(${target} PRIVATE
            $<$<COMPILE_LANG_AND_ID:CXX,GNU>:-Wno-subobject-linkage;-Wno-maybe-uninitialized>)
    endif()
endfunction()

# The same for a target with several folders: no two folders share a compilation, so that a source
# added to one of them regroups only that folder.
function(gusset_together_by_folder target)
    gusset_together(${target})
    get_target_property(sources ${target} SOURCES)
    foreach(source IN LISTS sources)
        get_filename_component(folder ${source} DIRECTORY)
        if(NOT DEFINED count_${folder})
            set(count_${folder} 0)
        endif()
        math(EXPR batch "${count_${folder}} / ${GUSSET_TOGETHER}")
        math(EXPR count_${folder} "${count_${folder}} + 1")
        string(MAKE_C_IDENTIFIER "${folder}_${batch}" group)
        set_source_files_properties(${source} PROPERTIES UNITY_GROUP ${group})
    endforeach()
    set_target_properties(${target} PROPERTIES UNITY_BUILD_MODE GROUP)
endfunction()

function(gusset_room target folder)
    list(TRANSFORM ARGN PREPEND ${folder}/)
    string(REPLACE "/" "_" room ${target}_${folder})
    add_library(${room} OBJECT ${ARGN})
    target_include_directories(${room} PRIVATE $<TARGET_PROPERTY:${target},INTERFACE_INCLUDE_DIRECTORIES>)
    target_compile_options(${room} PRIVATE -fno-exceptions -fno-rtti)
    target_link_libraries(${room} PRIVATE gusset_numeric gusset_warnings)
    gusset_together(${room})
    target_sources(${target} PRIVATE $<TARGET_OBJECTS:${room}>)
endfunction()

# gusset_embed(TARGET FILE NAME): the bytes of a file, compiled into TARGET as
# `std::span<const unsigned char> NAME()`.
function(gusset_embed target file name)
    set(source ${CMAKE_CURRENT_BINARY_DIR}/${name}.cpp)
    add_custom_command(OUTPUT ${source}
        COMMAND ${CMAKE_COMMAND} -D INPUT=${CMAKE_CURRENT_SOURCE_DIR}/${file} -D OUTPUT=${source}
            -D NAME=${name} -P ${PROJECT_SOURCE_DIR}/site/cmake/embed.cmake
        DEPENDS ${file} ${PROJECT_SOURCE_DIR}/site/cmake/embed.cmake VERBATIM)
    target_sources(${target} PRIVATE ${source})
endfunction()
