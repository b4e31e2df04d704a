# cmake -D INDEX=index.json -D OUTPUT=file.cpp -P example_list.cmake
# Writes the examples' file names, titles and descriptions as C++, in the order of the index.
file(READ ${INDEX} text)
string(JSON count LENGTH "${text}" examples)
math(EXPR last "${count} - 1")
set(rows "")
foreach(i RANGE ${last})
    string(JSON file GET "${text}" examples ${i} file)
    string(JSON title GET "${text}" examples ${i} title)
    string(JSON says GET "${text}" examples ${i} says)
    foreach(words IN ITEMS title says)
        string(REPLACE "\\" "\\\\" ${words} "${${words}}")
        string(REPLACE "\"" "\\\"" ${words} "${${words}}")
    endforeach()
    string(APPEND rows "    {\"${file}\", \"${title}\", \"${says}\"},\n")
endforeach()
file(WRITE ${OUTPUT} "#include \"panels/pages/examples.hpp\"\n\n#include <vector>\n\nnamespace gusset {\n\n"
    "std::span<const Example> examples() {\n"
    "    static const std::vector<Example> kList = {\n${rows}    };\n    return kList;\n}\n\n"
    "} // namespace gusset\n")
