// Firefox and WebKitGTK in a window of Xvfb, with as much of Playwright's page interface as board.mjs uses:
// Playwright itself drives only its own patched builds of these two. Firefox speaks WebDriver BiDi, through
// Puppeteer; WebKitGTK has W3C WebDriver, of which four calls are enough.
import { spawn } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import path from 'node:path';
import puppeteer from 'puppeteer-core';

const size = { width: 1280, height: 800 };

function missing(what) {
    return new Error(`No ${what} here: run site/setup --tests.`);
}

// A virtual screen. Resolves to { environment, stop }.
async function openScreen() {
    const server = spawn('Xvfb', ['-displayfd', '3', '-screen', '0', '1400x1000x24', '-nolisten', 'tcp'], {
        stdio: ['ignore', 'ignore', 'ignore', 'pipe'],
    });
    const number = await new Promise((resolve, reject) => {
        server.once('error', () => reject(missing('Xvfb')));
        server.stdio[3].once('data', (data) => resolve(String(data).trim()));
    });
    const environment = { ...process.env, DISPLAY: `:${number}`, LIBGL_ALWAYS_SOFTWARE: '1' };
    return { environment, stop: () => server.kill() };
}

// Resolves to { page, close }.
export async function openFirefox() {
    const executablePath = process.env.FIREFOX ?? '/usr/bin/firefox-esr';
    if (!existsSync(executablePath)) {
        throw missing('Firefox');
    }
    const screen = await openScreen();
    const browser = await puppeteer.launch({
        browser: 'firefox',
        executablePath,
        headless: false, // without a window Firefox has no WebGL
        env: screen.environment,
        defaultViewport: size,
    });
    const page = await browser.newPage();
    const close = async () => {
        await browser.close();
        screen.stop();
    };
    return { page, close };
}

function webKitPath() {
    const libraries = '/usr/lib/x86_64-linux-gnu';
    const folders = existsSync(libraries) ? readdirSync(libraries) : [];
    const found = folders
        .filter((name) => name.startsWith('webkit2gtk-'))
        .map((name) => path.join(libraries, name, 'MiniBrowser'))
        .find(existsSync);
    if (!found) {
        throw missing('WebKitGTK’s driver');
    }
    return found;
}

// Resolves to the address of a WebDriver that is listening.
async function startDriver(screen) {
    const port = 20000 + (process.pid % 20000);
    const driver = spawn('WebKitWebDriver', [`--port=${port}`], { env: screen.environment, stdio: 'ignore' });
    const failed = new Promise((resolve, reject) => {
        driver.once('error', () => reject(missing('WebKitGTK’s driver')));
    });
    const address = `http://127.0.0.1:${port}`;
    const listening = async () => {
        for (;;) {
            try {
                return await fetch(`${address}/status`);
            } catch {
                await new Promise((resolve) => setTimeout(resolve, 100));
            }
        }
    };
    await Promise.race([listening(), failed]);
    return { address, stop: () => driver.kill() };
}

// One call of W3C WebDriver; resolves to its value.
async function call(method, address, body) {
    const answer = await fetch(address, {
        method,
        headers: { 'Content-Type': 'application/json' },
        ...(body && { body: JSON.stringify(body) }),
    });
    const { value } = await answer.json();
    if (!answer.ok) {
        throw new Error(`WebDriver: ${value.error}: ${value.message}`);
    }
    return value;
}

function mouseOf(session) {
    const act = (...actions) => call('POST', `${session}/actions`, {
        actions: [{ type: 'pointer', id: 'mouse', parameters: { pointerType: 'mouse' }, actions }],
    });
    return {
        move: (x, y) =>
            act({ type: 'pointerMove', duration: 0, origin: 'viewport', x: Math.round(x), y: Math.round(y) }),
        down: () => act({ type: 'pointerDown', button: 0 }),
        up: () => act({ type: 'pointerUp', button: 0 }),
    };
}

function keyboardOf(session) {
    const keys = { Enter: '\uE007' };
    const strike = (characters) => call('POST', `${session}/actions`, {
        actions: [{
            type: 'key',
            id: 'keyboard',
            actions: characters.flatMap((value) => [{ type: 'keyDown', value }, { type: 'keyUp', value }]),
        }],
    });
    return { type: (text) => strike([...text]), press: (key) => strike([keys[key]]) };
}

function pageOf(session) {
    const evaluate = async (run, argument) => {
        const answer = await call('POST', `${session}/execute/async`, {
            script: `const [argument, done] = arguments;
                Promise.resolve((${run})(argument)).then((value) => done({ value }),
                    (error) => done({ error: String(error) }));`,
            args: [argument ?? null],
        });
        if (answer.error) {
            throw new Error(answer.error);
        }
        return answer.value;
    };
    return {
        evaluate,
        waitForFunction: async (holds) => {
            const end = Date.now() + 20000;
            // While one page replaces another the driver has no answer, which counts as false.
            const answer = () => evaluate(`async () => Boolean(await (${holds})())`).catch(() => false);
            while (!(await answer())) {
                if (Date.now() > end) {
                    throw new Error(`Waited in vain for ${holds}`);
                }
                await new Promise((resolve) => setTimeout(resolve, 50));
            }
        },
        goto: (url) => call('POST', `${session}/url`, { url }),
        reload: () => call('POST', `${session}/refresh`, {}),
        screenshot: async () => Buffer.from(await call('GET', `${session}/screenshot`), 'base64'),
        mouse: mouseOf(session),
        keyboard: keyboardOf(session),
    };
}

// Resolves to { page, close }.
export async function openWebKit() {
    const screen = await openScreen();
    const driver = await startDriver(screen);
    const { sessionId } = await call('POST', `${driver.address}/session`, {
        capabilities: {
            alwaysMatch: {
                'webkitgtk:browserOptions': { binary: webKitPath(), args: ['--automation'] },
            },
        },
    });
    const session = `${driver.address}/session/${sessionId}`;
    await call('POST', `${session}/window/rect`, size);
    const close = async () => {
        await call('DELETE', session);
        driver.stop();
        screen.stop();
    };
    return { page: pageOf(session), close };
}
