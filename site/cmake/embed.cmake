# cmake -D INPUT=file -D OUTPUT=file.cpp -D NAME=function -P embed.cmake
# Writes a file's bytes as a C++ function `std::span<const unsigned char> NAME()`.
file(READ ${INPUT} hex HEX)
string(REGEX REPLACE "([0-9a-f][0-9a-f])" "0x\\1," bytes "${hex}")
file(WRITE ${OUTPUT} "#include <span>\n\nnamespace gusset {\n\n"
    "static constexpr unsigned char kBytes[] = {${bytes}};\n\n"
    "std::span<const unsigned char> ${NAME}() { return kBytes; }\n\n} // namespace gusset\n")
