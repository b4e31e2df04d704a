// A program that is one function from a request to an answer, both JSON, as a function of this page.
export const asking = (program, name) => (request) => {
    const text = JSON.stringify(request);
    const size = program.lengthBytesUTF8(text) + 1;
    const address = program._malloc(size);
    program.stringToUTF8(text, address, size);
    const answer = program[name](address);
    program._free(address);
    const reply = JSON.parse(program.UTF8ToString(answer));
    program._free(answer);
    return reply;
};
