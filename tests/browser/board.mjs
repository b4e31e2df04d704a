// Drives the page as a person does: real mouse and touch events at the places where things are drawn. Positions
// come from the page's test hook (site/test_hook.js).
import assert from 'node:assert/strict';
import { beam, firstFrame, linkOf, openPage, sizes } from './support.mjs';

export async function openBoard(browser, address, size, fragment = '') {
    const opened = await openPage(browser, address, size);
    await opened.page.goto(`${address}?test${fragment}`);
    return { ...opened, board: await boardOf(opened.page, size) };
}

// The input device: a mouse, or a finger through the browser's debugging protocol, as Playwright's touchscreen can
// only tap.
async function handsOf(page, size) {
    if (!size.hasTouch) {
        return {
            down: async (at) => {
                await page.mouse.move(at.x, at.y);
                await page.mouse.down();
            },
            move: (at) => page.mouse.move(at.x, at.y),
            up: () => page.mouse.up(),
            tap: async (at) => {
                await page.mouse.move(at.x, at.y);
                await page.mouse.down();
                await page.mouse.up();
            },
        };
    }
    const session = await page.context().newCDPSession(page);
    const touch = (type, points) =>
        session.send('Input.dispatchTouchEvent', {
            type,
            touchPoints: points.map((point, id) => ({ x: point.x, y: point.y, id })),
        });
    return {
        down: (...at) => touch('touchStart', at),
        move: (...at) => touch('touchMove', at),
        up: () => touch('touchEnd', []),
        // Sent together: on a busy machine the reply to the first may take as long as a long press.
        tap: (at) => Promise.all([touch('touchStart', [at]), touch('touchEnd', [])]),
        cancel: () => touch('touchCancel', []),
    };
}

export async function boardOf(page, size) {
    await firstFrame(page);
    await page.waitForFunction(() => window.gussetTest);
    const hands = await handsOf(page, size);
    const idle = () => page.evaluate(() => window.gussetTest.idle());
    const observe = () => page.evaluate(() => window.gussetTest.observe());
    await idle();

    const strokes = { taps: 0, drags: 0 }; // so far, keys not counted

    async function tap(at) {
        ++strokes.taps;
        await hands.tap(at);
        await idle();
    }

    // Rests there until the page counts it as a long press; with a mouse, uses the right button. On a busy machine
    // this takes longer than the page's own half second.
    async function hold(at, { release = true } = {}) {
        if (size.hasTouch) {
            await hands.down(at);
            await page.waitForFunction(() => window.gussetTest.observe().menu);
        } else {
            await page.mouse.click(at.x, at.y, { button: 'right' });
        }
        if (release && size.hasTouch) {
            await hands.up();
        }
        await idle();
    }

    // A line through these places, with the finger or the button lifted at the last.
    async function stroke(places) {
        await hands.down(places[0]);
        for (let i = 1; i < places.length; ++i) {
            for (let part = 1; part <= 4; ++part) {
                await hands.move({
                    x: places[i - 1].x + ((places[i].x - places[i - 1].x) * part) / 4,
                    y: places[i - 1].y + ((places[i].y - places[i - 1].y) * part) / 4,
                });
            }
        }
        await hands.up();
        await idle();
    }

    async function drag(from, to, { release = true } = {}) {
        ++strokes.drags;
        await hands.down(from);
        for (let step = 1; step <= 4; ++step) {
            await hands.move({
                x: from.x + ((to.x - from.x) * step) / 4,
                y: from.y + ((to.y - from.y) * step) / 4,
            });
        }
        if (release) {
            await hands.up();
            await idle();
        }
    }

    // Labels are the program's names for its items, with or without what follows ##.
    async function find(label) {
        const { items } = await observe();
        const named = (item) =>
            [item.label, ...item.label.split('##')].some((part) => part === label);
        const item = items.find(named);
        assert.ok(item, `no item "${label}" among ${items.map(({ label: l }) => l).join(' | ')}`);
        return { x: item.x + item.width / 2, y: item.y + item.height / 2, ...{ item } };
    }

    const has = async (label) =>
        (await observe()).items.some((item) => item.label.split('##').includes(label));

    // Scrolls the notebook until the item is visible, as a user would: with a finger or the wheel.
    async function reveal(label) {
        const { item } = await find('notebook');
        const low = { x: item.x + item.width / 2, y: item.y + item.height - 30 };
        const high = { x: low.x, y: low.y - Math.min(200, item.height / 2) };
        for (let tries = 0; tries < 12 && !(await has(label)); ++tries) {
            if (size.hasTouch) {
                await drag(low, high);
            } else {
                await page.mouse.move(low.x, low.y);
                await page.mouse.wheel(0, 150);
                await idle();
            }
        }
    }

    return {
        page,
        hands,
        reveal,
        idle,
        observe,
        tap,
        drag,
        hold,
        stroke,
        strokes,
        find,
        has,
        press: async (label) => tap(await find(label)),
        joint: async (label) => {
            const joint = (await observe()).joints.find((one) => one.label === label);
            assert.ok(joint, `no joint ${label}`);
            return { x: joint.x, y: joint.y };
        },
        // The rows of one of the page's own tables, by its caption: texts, without the heading.
        table: (caption) =>
            page.evaluate((wanted) => {
                const table = [...document.querySelectorAll('#tables-content table')].find((one) =>
                    one.caption.textContent.startsWith(wanted));
                const isCell = (cell) => !cell.querySelector('[data-press$=".remove"]');
                return table && [...table.tBodies[0].rows]
                    .filter((row) => !row.classList.contains('new'))
                    .map((row) => [...row.cells].filter(isCell).map((cell) => cell.textContent));
            }, caption),
        verdict: () => page.locator('#tables-content p').first().textContent(),
    };
}

export async function dragJoint(board, label, dx, dy) {
    const from = await board.joint(label);
    await board.drag(from, { x: from.x + dx, y: from.y + dy });
}

// As a stranger comes: by the bare address, in a browser that keeps nothing yet.
export async function arriveAtStart({ browser, site }, size = sizes.desktop, query = '?test', more = {}) {
    const opened = await openPage(browser, site.address, { ...size, ...more, atStart: true });
    await opened.page.goto(`${site.address}${query}`);
    await opened.page.locator('#home-title').waitFor();
    return opened;
}

// The start page, from the board, when all of it is there.
export async function openStart(board) {
    await board.press('Start page');
    await board.page.waitForFunction(() => document.querySelector('#home-form:not([aria-busy])') &&
        document.querySelector('#home-examples button') &&
        (document.querySelector('#recent-list button') || document.getElementById('recent-none').hidden === false));
}

// Without the first steps, which are offered once.
export async function emptyBoard(board) {
    await board.page.evaluate(() => localStorage.setItem('gusset.taught', '1'));
    await openStart(board);
    await board.page.click('#home-new');
    await board.page.waitForFunction(() => window.gussetTest.observe().model.joints.length === 0);
    await board.idle();
}

// Places on the board, in metres; in steps of two metres where the grid is too fine for single ones. The ground is
// one unit below the origin, so that on a phone there is room for the load above the top.
export async function placing(board) {
    const { origin, scale } = await board.observe();
    const unit = (scale < 24 ? 2 : 1) * scale;
    return (x, y) => ({ x: origin.x + x * unit, y: origin.y - (y - 1) * unit });
}

// A file dropped on the page, as from a file manager: its text, or its bytes as numbers.
export async function dropFile(page, name, content, type = 'application/json', on = '#board') {
    const transfer = await page.evaluateHandle(([fileName, parts, mime]) => {
        const data = new DataTransfer();
        data.items.add(new File([Array.isArray(parts) ? new Uint8Array(parts) : parts], fileName, { type: mime }));
        return data;
    }, [name, content, type]);
    await page.dispatchEvent(on, 'dragover', { dataTransfer: transfer });
    await page.dispatchEvent(on, 'drop', { dataTransfer: transfer });
}

// A board of another tab, kept and shut.
export async function keepBoard(context, address, title) {
    const page = await context.newPage();
    await page.goto(`${address}?test&${title}${linkOf(beam(title))}`);
    await dragJoint(await boardOf(page, sizes.desktop), 'B', 0, -60);
    await page.evaluate(() => window.gussetTest.reachedDisk());
    await page.close();
}
