// The truss on the stage under a finger: a joint can be dragged, a member asks why, and the rest of the stage turns
// the page.

const nearJoint = 18; // px
const nearMember = 10;
const isTap = 8; // px that a finger may move

// A round length of at least `least`: 1, 2 or 5 times a power of ten.
function roundLength(least) {
    const power = 10 ** Math.floor(Math.log10(least));
    return [1, 2, 5, 10].map((by) => by * power).find((length) => length >= least);
}

function distance([x, y], [ax, ay], [bx, by]) {
    const long = (bx - ax) ** 2 + (by - ay) ** 2;
    const share = long > 0 ? Math.max(0, Math.min(1, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / long)) : 0;
    return Math.hypot(x - ax - share * (bx - ax), y - ay - share * (by - ay));
}

export function createBoard(picture, { moved, tapped, next, back }) {
    let board = null; // { x, y, scale, joints } of the picture, or nothing to drag
    let opened = null;
    let held = null; // { joint, from }

    const pixel = ([x, y]) => [board.x + board.scale * x, board.y - board.scale * y];
    const pointOf = ({ clientX, clientY }) => {
        const box = picture.getBoundingClientRect();
        return [clientX - box.left, clientY - box.top];
    };
    function jointAt(point) {
        const distances = board.joints.map((joint) => Math.hypot(...pixel(joint).map((value, i) => value - point[i])));
        const nearest = Math.min(...distances);
        return nearest <= nearJoint ? distances.indexOf(nearest) : -1;
    }
    function memberAt(point) {
        const distances = opened.members.map((ends) => {
            const [a, b] = ends.map((label) => pixel(board.joints[opened.joints.indexOf(label)]));
            return distance(point, a, b);
        });
        const nearest = Math.min(...distances);
        return nearest <= nearMember ? distances.indexOf(nearest) : -1;
    }
    function placeUnder(point) {
        const grid = roundLength(6 / board.scale);
        const snapped = (value) => Number((Math.round(value / grid) * grid).toPrecision(12));
        return [snapped((point[0] - board.x) / board.scale), snapped((board.y - point[1]) / board.scale)];
    }
    function mark(point) {
        let ring = picture.querySelector('.held');
        if (!ring) {
            ring = document.createElementNS('http://www.w3.org/2000/svg', 'circle');
            ring.setAttribute('class', 'held ring-accent');
            ring.setAttribute('r', '14');
            ring.setAttribute('fill', 'none');
            ring.setAttribute('stroke', '#0e5a61');
            ring.setAttribute('stroke-width', '3');
            picture.querySelector('svg').append(ring);
        }
        const [x, y] = pixel(placeUnder(point));
        ring.setAttribute('cx', x);
        ring.setAttribute('cy', y);
    }

    picture.addEventListener('pointerdown', (event) => {
        if (!event.isPrimary || event.button > 0) {
            return;
        }
        const from = pointOf(event);
        held = { from, joint: board ? jointAt(from) : -1 };
        picture.setPointerCapture(event.pointerId);
    });
    picture.addEventListener('pointermove', (event) => {
        if (held && held.joint >= 0 && event.isPrimary) {
            mark(pointOf(event));
        }
    });
    picture.addEventListener('pointercancel', () => {
        held = null;
        picture.querySelector('.held')?.remove();
    });
    picture.addEventListener('pointerup', (event) => {
        if (!held || !event.isPrimary) {
            return;
        }
        const { from, joint } = held;
        held = null;
        picture.querySelector('.held')?.remove();
        const to = pointOf(event);
        const far = Math.hypot(to[0] - from[0], to[1] - from[1]);
        if (joint >= 0 && far > isTap) {
            moved(opened.joints[joint], ...placeUnder(to));
        } else if (far > isTap) {
            const across = to[0] - from[0];
            if (Math.abs(across) > 60 && Math.abs(across) > Math.abs(to[1] - from[1])) {
                (across < 0 ? next : back)(); // a swipe
            }
        } else {
            const member = board ? memberAt(to) : -1;
            if (member >= 0) {
                tapped(member);
            } else if (joint < 0) {
                (to[0] < picture.clientWidth / 4 ? back : next)();
            }
        }
    });
    return { follow(nextBoard, nextOpened) {
        board = nextBoard ?? null;
        opened = nextOpened;
    } };
}
