# cmake -D FOLDER=build/site -D TEMPLATE=sw.js.in -D OUTPUT=sw.js -P precache.cmake
# Lists the files of a finished site for its service worker, each with its hash, with one hash over
# them all.
file(GLOB_RECURSE paths RELATIVE ${FOLDER} ${FOLDER}/*)
list(REMOVE_ITEM paths sw.js test_hook.js)
list(FILTER paths EXCLUDE REGEX "\\.(br|gz)$") # compressed copies, for the host
list(SORT paths)
set(FILES)
foreach(path IN LISTS paths)
    file(SHA256 ${FOLDER}/${path} sum)
    if(path STREQUAL "index.html")
        set(path "./")
    endif()
    string(APPEND FILES "\n    '${path}': '${sum}',")
endforeach()
string(SUBSTRING "${FILES}" 1 -1 FILES)
file(SHA256 ${TEMPLATE} sum)
string(SHA256 VERSION "${FILES}${sum}")
string(SUBSTRING ${VERSION} 0 16 VERSION)
configure_file(${TEMPLATE} ${OUTPUT} @ONLY)
