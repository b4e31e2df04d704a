// How the time of every command grows with the size of the truss:
//     growth_bench.mjs PROGRAM… [families=a,b] [commands=a,b] [sizes=100,300]
// Prints one table per family with one line per command: milliseconds by size, and the exponent p of time ~ members^p
// between the two largest sizes that were measured. A command that exceeds the limit is stopped, and its cell says so.
import { spawnSync } from 'node:child_process';

const limit = Number(process.env.LIMIT ?? 10_000); // ms for one cell
const program = process.argv.slice(2).filter((argument) => !argument.includes('='));
const chosen = Object.fromEntries(
    process.argv.slice(2).filter((argument) => argument.includes('=')).map((argument) => argument.split('=')));

function run(...cell) {
    const [file, ...before] = program;
    return spawnSync(file, [...before, ...cell], { timeout: limit, encoding: 'utf8' });
}

const pick = (all, key) => chosen[key]?.split(',') ?? all;
const [allFamilies, allCommands] = run().stdout.trim().split('\n').map((line) => line.trim().split(' '));
const families = pick(allFamilies, 'families');
const commands = pick(allCommands, 'commands');
const sizes = pick(['100', '300', '1000', '3000'], 'sizes');

// The milliseconds and members of one cell, or the reason why it has none.
function measure(family, command, size) {
    const { status, signal, stdout, stderr } = run(family, command, size);
    if (signal) {
        return { why: `not within ${limit / 1000} s` };
    }
    if (status !== 0) {
        return { why: `failed: ${stderr.trim()}` };
    }
    const [members, milliseconds] = stdout.trim().split(' ').map(Number);
    return { members, milliseconds };
}

function exponent(cells) {
    const known = cells.filter((cell) => cell.milliseconds !== undefined).slice(-2);
    if (known.length < 2) {
        return '–';
    }
    const [small, large] = known;
    return (
        Math.log(large.milliseconds / small.milliseconds) / Math.log(large.members / small.members)
    ).toFixed(2);
}

function cellText(cell) {
    return cell.why ?? (cell.milliseconds < 10 ? cell.milliseconds.toFixed(2) : cell.milliseconds.toFixed(0));
}

for (const family of families) {
    console.log(`\n${family}, ms`.padEnd(13) + sizes.map((size) => size.padStart(16)).join('') + 'growth'.padStart(10));
    for (const command of commands) {
        const cells = [];
        for (const size of sizes) {
            // A larger truss would take longer still.
            const late = cells.find((cell) => cell.why);
            cells.push(late ?? measure(family, command, size));
        }
        const row = cells.map((cell) => cellText(cell).padStart(16)).join('');
        console.log(command.padEnd(12) + row + exponent(cells).padStart(10));
    }
}
