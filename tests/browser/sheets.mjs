// Trusses for sheets: a roof with everything that a sheet has a table for, and what becomes of it.
const units = { force: 'kN', length: 'm', section: 'mm', stress: 'MPa', displacement: 'mm' };

// 11 members, with their self-weight, under three combinations.
export function roof() {
    const places = { A: [0, 0], B: [2.5, 1.2], C: [2.5, 0], D: [5, 2.4], E: [7.5, 1.2], F: [7.5, 0], G: [10, 0] };
    const chord = ['AB', 'BD', 'DE', 'EG'];
    const web = ['AC', 'CF', 'FG', 'BC', 'EF', 'CD', 'DF'];
    const down = (joints, fy, name) => [...joints].map((joint) => ({ joint, fy, case: name }));
    return {
        gusset: 1,
        title: 'Roof over the workshop, bay 2',
        units,
        joints: Object.entries(places).map(([id, [x, y]]) => ({ id, x, y })),
        members: [...chord, ...web].map((name) => ({ a: name[0], b: name[1],
            section: chord.includes(name) ? 'chord' : 'web' })),
        supports: [{ joint: 'A', kind: 'pin' }, { joint: 'G', kind: 'roller', reaction: 90 }],
        loads: [
            { selfWeight: true, case: 'dead' },
            ...down('BDE', -3, 'dead'),
            ...down('BDE', -4.2, 'snow'),
            { joint: 'B', fx: 1.35, fy: -2.7, case: 'wind' },
            { joint: 'E', fx: 0.6, fy: 1.2, case: 'wind' },
        ],
        materials: [{ id: 'S235', E: 210000, strength: 235, density: 7850, alpha: 0.000012 }],
        sections: [{ id: 'chord', material: 'S235', shape: 'shs', B: 60, t: 4 },
            { id: 'web', material: 'S235', shape: 'chs', D: 42.4, t: 3.2 }],
        combinations: [
            { id: 'snow leads', factors: { dead: 1.35, snow: 1.5, wind: 0.9 } },
            { id: 'wind leads', factors: { dead: 1.35, snow: 0.75, wind: 1.5 } },
            { id: 'uplift', factors: { dead: 1, wind: 1.5 } },
        ],
    };
}

export function mechanism() {
    const truss = roof();
    return { ...truss, title: 'Without its struts', members: truss.members.filter(({ a, b }) => !'CD DF CF'.includes(a + b)) };
}

export function indeterminate() {
    const truss = roof();
    return { ...truss, title: 'On three supports',
        supports: [...truss.supports, { joint: 'F', kind: 'roller', reaction: 90 }] };
}

// A bridge of so many panels, with a load on each lower joint.
export function bridge(panels) {
    const joints = [];
    const members = [];
    for (let i = 0; i <= panels; ++i) {
        joints.push({ id: `L${i}`, x: 3 * i, y: 0 }, { id: `U${i}`, x: 3 * i, y: 3.5 });
        members.push({ a: `L${i}`, b: `U${i}` });
    }
    for (let i = 0; i < panels; ++i) {
        const falls = i < panels / 2;
        members.push({ a: `L${i}`, b: `L${i + 1}` }, { a: `U${i}`, b: `U${i + 1}` },
            falls ? { a: `U${i}`, b: `L${i + 1}` } : { a: `L${i}`, b: `U${i + 1}` });
    }
    return { gusset: 1, title: `Bridge of ${panels} panels`, units, joints, members,
        supports: [{ joint: 'L0', kind: 'pin' }, { joint: `L${panels}`, kind: 'roller', reaction: 90 }],
        loads: joints.filter(({ y }) => y === 0).map(({ id }) => ({ joint: id, fy: -12.5, case: 'dead' })) };
}

export const emptyBoard = { gusset: 1, joints: [], members: [], supports: [], loads: [] };
