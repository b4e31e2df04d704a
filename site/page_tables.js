// The page's tables of the model, for typing. The program writes each cell as a button (web/app/page/page_tables):
// when pressed, or typed on, it is replaced by an input; Enter goes on to the cell below, Tab to the next one, Escape
// leaves it unchanged.
import { pastedRows } from './field.js';
import { dressTables } from './page_dress.js';

const keyOf = ({ dataset }) => dataset.cell ?? dataset.press ?? dataset.ask;

// `send` passes a text to the program, which may reply with new tables (replace) before it returns.
export function editTables(content, send) {
    let wasReplaced = false;

    const cells = () => [...content.querySelectorAll('[data-cell]')];
    const cellNamed = (key) => cells().find((button) => button.dataset.cell === key);

    // What had the keyboard focus, or its equivalent, keeps it when the tables are rewritten; if it is gone, the
    // page has it.
    function focusOn(key) {
        const all = [...content.querySelectorAll('[data-cell], [data-press], [data-ask]')];
        (all.find((one) => key === keyOf(one)) ?? content.closest('main')).focus();
    }

    function replace(html) {
        const key = content.contains(document.activeElement) ? keyOf(document.activeElement) : undefined;
        content.querySelectorAll('input').forEach((input) => { input.dataset.ended = 'true'; });
        content.innerHTML = html;
        dressTables(content);
        wasReplaced = true;
        if (key !== undefined) {
            focusOn(key);
        }
    }

    function commit(key, text) {
        wasReplaced = false;
        send(key, text);
        return wasReplaced;
    }

    // The tables may be rewritten before the next cell is looked up, so the one below is identified by its
    // position.
    function placeBelow(input) {
        const cell = input.closest('td, th');
        const table = [...content.querySelectorAll('table.model')].indexOf(input.closest('table'));
        return cell && { table, row: cell.parentElement.rowIndex + 1, column: cell.cellIndex };
    }

    function cellAt(place) {
        const { rows } = content.querySelectorAll('table.model')[place.table];
        return rows[place.row]?.cells[place.column]?.querySelector('[data-cell]');
    }

    function keyBeside(key, step) {
        const all = cells().map(({ dataset }) => dataset.cell);
        return all[all.indexOf(key) + step];
    }

    // A refused text stays, to be corrected; the program has said why. True when typing is over.
    function finish(input, button, typed) {
        const { cell: key, text } = button.dataset;
        if (input.dataset.ended || (typed !== text && commit(key, typed))) {
            return true;
        }
        if (typed !== text && typed !== '') {
            input.setAttribute('aria-invalid', 'true');
            return false;
        }
        giveUp(input, button);
        return true;
    }

    // Removing an input can blur it, which must not end it again.
    function giveUp(input, button) {
        input.dataset.ended = 'true';
        input.replaceWith(button);
    }

    function goOn(input, button, next) {
        if (finish(input, button, input.value)) {
            const there = next();
            if (there) {
                edit(there);
            } else {
                focusOn(button.dataset.cell);
            }
        }
    }

    function pressed(event, input, button) {
        const { cell: key } = button.dataset;
        const beside = keyBeside(key, event.shiftKey ? -1 : 1);
        event.stopPropagation(); // Escape closes the page too
        if (event.isComposing) {
            return;
        }
        if (event.key === 'Enter') {
            const below = placeBelow(input);
            goOn(input, button, () => below && cellAt(below));
        } else if (event.key === 'Escape') {
            giveUp(input, button);
            button.focus();
        } else if (event.key === 'Tab' && beside) {
            event.preventDefault();
            goOn(input, button, () => cellNamed(beside));
        }
    }

    // `begun`: what was typed on the button; else the whole text is selected.
    function edit(button, begun) {
        const input = document.createElement('input');
        input.dataset.cell = button.dataset.cell;
        input.value = button.dataset.text;
        input.autocomplete = 'off';
        input.spellcheck = false;
        input.setAttribute('aria-label', button.getAttribute('aria-label'));
        button.replaceWith(input);
        input.focus();
        if (begun === undefined) {
            input.select();
        } else {
            input.value = begun;
        }
        input.addEventListener('keydown', (event) => pressed(event, input, button));
        input.addEventListener('blur', () => finish(input, button, input.value));
        input.addEventListener('paste', (event) => {
            const rows = pastedRows(event);
            if (rows !== null) {
                event.preventDefault();
                finish(input, button, rows);
            }
        });
    }

    function typedOn(event) {
        const button = event.target.closest('button[data-cell]');
        const isTyped = [...event.key].length === 1 && event.key !== ' ';
        if (!button || event.ctrlKey || event.metaKey || event.altKey || event.isComposing) {
            return;
        }
        if (isTyped || event.key === 'Backspace' || event.key === 'Delete') {
            event.preventDefault();
            edit(button, isTyped ? event.key : '');
        }
    }

    // What is being typed is kept, and the focus stays there.
    function keep() {
        const input = document.activeElement;
        if (content.contains(input) && input.matches('input[data-cell]')) {
            input.blur();
            focusOn(input.dataset.cell);
        }
    }

    content.addEventListener('keydown', typedOn);
    content.addEventListener('change', ({ target }) => {
        if (target.dataset.ask) {
            commit(target.dataset.ask, target.value);
        }
    });
    content.addEventListener('click', ({ target }) => {
        const button = target.closest('button');
        if (button?.dataset.cell) {
            edit(button);
        } else if (button?.dataset.press) {
            commit(button.dataset.press, button.dataset.text);
        }
    });
    dressTables(content);
    return { replace, keep, press: (key) => commit(key, '') };
}
