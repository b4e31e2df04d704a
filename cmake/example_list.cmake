# cmake -D EXAMPLES=a.json;b.json -D OUTPUT=file.cpp -P example_list.cmake
# Writes the files' names and the titles of the models in them as C++.
set(rows "")
foreach(file IN LISTS EXAMPLES)
    get_filename_component(name ${file} NAME)
    file(READ ${file} text)
    string(JSON title GET "${text}" title)
    string(REPLACE "\\" "\\\\" title "${title}")
    string(REPLACE "\"" "\\\"" title "${title}")
    string(APPEND rows "    {\"${name}\", \"${title}\"},\n")
endforeach()
file(WRITE ${OUTPUT} "#include \"panels/examples.hpp\"\n\n#include <vector>\n\nnamespace gusset {\n\n"
    "std::span<const Example> examples() {\n"
    "    static const std::vector<Example> kList = {\n${rows}    };\n    return kList;\n}\n\n"
    "} // namespace gusset\n")
