// Words in letters that the program's own typefaces lack, drawn by the browser in the system's: a run of them is
// drawn as a whole, so that scripts which join or reorder their letters come out right. The program keeps the
// picture (web/ui/foreign.hpp).
export function createLetters() {
    const paper = document.createElement('canvas').getContext('2d', { willReadFrequently: true });
    const margin = 1; // px on each side, for overhang

    const setFace = ({ size, strong, italic }) => {
        paper.font = `${italic ? 'italic ' : ''}${strong ? '600 ' : ''}${size}px system-ui, sans-serif`;
    };

    return {
        runWidth(run, look) {
            setFace(look);
            const { width, actualBoundingBoxRight } = paper.measureText(run);
            return Math.ceil(Math.max(width, actualBoundingBoxRight)) + 2 * margin;
        },
        // Emoji have their own colours, but the program has one ink: their dark parts get more of it.
        drawRun(run, look, { width, height, baseline }, into) {
            paper.canvas.width = width;
            paper.canvas.height = height;
            setFace(look); // reset by setting the size
            paper.fillText(run, margin, baseline);
            const { data } = paper.getImageData(0, 0, width, height);
            for (let i = 0; i < into.length; ++i) {
                const [red, green, blue, alpha] = data.subarray(4 * i, 4 * i + 4);
                const light = (0.299 * red + 0.587 * green + 0.114 * blue) / 255;
                into[i] = alpha * (1 - 0.7 * light);
            }
        },
    };
}
