// What moves on the stage: a mechanism, until it is stopped, and the load that rolls from one joint to the next while
// an influence line is traced. Nothing moves by itself for a reader who asked for less motion.
const swing = 4000; // ms, to and fro
const rolling = 1200;

export function createMotion(draw) {
    const button = document.getElementById('motion');
    let frame = 0;
    let moves = false; // what is shown can move
    let isMoving = false;
    let passed = 0; // ms of the swing

    const wantsLess = () => matchMedia('(prefers-reduced-motion: reduce)').matches;
    function stop() {
        cancelAnimationFrame(frame);
        isMoving = false;
        tell();
    }
    function tell() {
        button.hidden = !moves;
        button.textContent = isMoving ? 'Stop it' : 'Let it move';
        button.setAttribute('aria-pressed', String(isMoving));
    }
    function start() {
        let last = null;
        const turn = (time) => {
            passed += last === null ? 0 : time - last;
            last = time;
            draw({ phase: (0.25 + passed / swing) % 1 });
            frame = requestAnimationFrame(turn);
        };
        isMoving = true;
        frame = requestAnimationFrame(turn);
        tell();
    }
    function roll() {
        let begun = null;
        const go = (time) => {
            begun ??= time;
            const along = Math.min(1, (time - begun) / rolling);
            draw({ along });
            if (along < 1) {
                frame = requestAnimationFrame(go);
            }
        };
        draw({ along: 0 });
        frame = requestAnimationFrame(go);
    }
    button.addEventListener('click', () => (isMoving ? stop() : start()));
    return {
        // `came`: by how many places the lesson went to this stroke.
        show(step, { came, stroke }) {
            moves = step.moves === true;
            stop();
            passed = 0;
            if (moves && !wantsLess()) {
                start();
            } else if (step.traces && came === 1 && stroke > 0 && !wantsLess()) {
                roll();
            }
        },
        turn() {
            if (moves) {
                button.click();
            }
        },
    };
}
