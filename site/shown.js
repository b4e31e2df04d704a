// Shows one view of the page (views.js) in place of another.
const isStart = () => document.body.classList.contains('at-start');

export function createShown({ canvas, pageText }) {
    const stage = document.getElementById('stage');
    let home = null; // once it is loaded
    let said = ''; // before that

    async function showStart(needs) {
        try {
            const { openHome } = await import('./home.js');
            home = await openHome(needs);
        } catch {
            if (isStart()) {
                needs.views.goTo('board'); // which is there, and has all its tools
            }
            return;
        }
        if (isStart()) {
            home.show();
            home.say(said);
            said = '';
        }
    }

    return {
        // `needs` as in home_board.js.
        show(view, left, needs) {
            // First: what is inert or hidden can't have the focus.
            document.body.classList.toggle('at-start', view === 'start');
            stage.inert = view === 'start';
            if (left === 'tables') {
                pageText.close();
            }
            if (left === 'start') {
                document.getElementById('home').hidden = true;
                canvas.focus();
            }
            if (view === 'start') {
                showStart(needs);
            } else if (view === 'tables') {
                pageText.show();
            }
        },
        say(text) {
            if (home === null) {
                said = text;
            } else {
                home.say(text);
            }
        },
    };
}
