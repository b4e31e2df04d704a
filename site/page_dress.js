// What the page's tables get besides their HTML: a list of contents, and numbers that stand below each other by their
// decimal signs.
const number = /^[+−-]?\d+(?:([.,])(\d+))?$/;
const figureSpace = '\u2007'; // as wide as a figure
const pointSpace = '\u2008'; // as wide as a point

// What follows the last figure of each number, so that the points are in one line; it is drawn by the style sheet and
// neither read aloud nor copied.
function alignColumn(cells) {
    const texts = cells.map((cell) => cell.textContent.trim());
    const numbers = texts.map((text) => number.exec(text));
    if (!numbers.some(Boolean) || !texts.every((text, i) => numbers[i] || text === '')) {
        return false;
    }
    const decimals = numbers.map((found) => found?.[2]?.length ?? 0);
    const most = Math.max(...decimals);
    cells.forEach((cell, i) => {
        const inner = cell.querySelector('button') ?? cell;
        inner.classList.add('number');
        inner.dataset.pad = (decimals[i] === 0 && most > 0 ? pointSpace : '') + figureSpace.repeat(most - decimals[i]);
    });
    return true;
}

function alignNumbers(table) {
    const head = table.tHead?.rows[0];
    if (!head || table.querySelector('[rowspan]')) {
        return;
    }
    const rows = [...table.tBodies[0].rows].filter((row) => !row.classList.contains('new'));
    for (let column = 1; column < head.cells.length; ++column) {
        const cells = rows.map((row) => row.cells[column]).filter(Boolean);
        if (cells.length > 0 && alignColumn(cells)) {
            head.cells[column].classList.add('number');
        }
    }
}

// Buttons, as the address's fragment belongs to the model.
function contentsOf(headings) {
    const list = document.createElement('ul');
    headings.forEach((heading) => {
        const button = document.createElement('button');
        button.type = 'button';
        button.textContent = heading.textContent;
        button.addEventListener('click', () => {
            heading.tabIndex = -1;
            heading.focus();
            heading.scrollIntoView();
        });
        list.appendChild(document.createElement('li')).append(button);
    });
    const nav = document.createElement('nav');
    nav.setAttribute('aria-label', 'Contents');
    nav.append(list);
    return nav;
}

export function dressTables(content) {
    content.querySelectorAll('table').forEach(alignNumbers);
    const headings = [...content.querySelectorAll(':scope > h3')];
    content.querySelector('h2')?.after(contentsOf(headings));
}
