#!/usr/bin/env python3
"""Checks the command line from outside: random indeterminate trusses and mechanisms, made and solved here.

Shares nothing with the engine: trusses come from Python's own random generator, supports are Lagrange multipliers
in one dense system (the engine rotates freedoms and eliminates them), rank comes from singular values (the engine
uses elimination), and LAPACK does the arithmetic through NumPy.

    tests/outside/judge.py PATH-TO-GUSSET [COUNT]

Ends with one line: N passed, N failed.
"""
import json
import math
import random
import subprocess
import sys

import numpy

E = 210_000.0  # MPa = N/mm²
ALPHA = 1.2e-5


def draw(rng, indeterminate):
    """A random model on a jittered lattice, as in a file: kN, m, mm, MPa."""
    columns, rows = rng.randint(2, 5), rng.randint(2, 3)
    at = {}
    for i in range(columns):
        for k in range(rows):
            x = 3 * i + rng.uniform(-0.8, 0.8)
            y = 2.5 * k + rng.uniform(-0.7, 0.7)
            at[f"J{i}.{k}"] = (round(x, 2), round(y, 2))
    pairs = []
    for i in range(columns):
        for k in range(rows):
            for di, dk in ((1, 0), (0, 1), (1, 1), (1, -1)):
                if 0 <= i + di < columns and 0 <= k + dk < rows:
                    pairs.append((f"J{i}.{k}", f"J{i + di}.{k + dk}"))
    rng.shuffle(pairs)
    needed = 2 * len(at)
    wanted = needed + rng.randint(-2, 4) if indeterminate else needed - rng.randint(3, 6)
    members = []
    for a, b in pairs[: max(3, wanted)]:
        member = {"a": a, "b": b, "section": rng.choice(["light", "heavy"])}
        if rng.random() < 0.2:
            member["dT"] = rng.randint(-30, 40)
        if rng.random() < 0.2:
            member["misfit"] = round(rng.uniform(-3, 3), 1)
        members.append(member)
    joints = list(at)
    rng.shuffle(joints)
    supports = [{"joint": joints[0], "kind": "pin", "settle": {"x": 0, "y": rng.randint(-5, 0)}}]
    for joint in joints[1 : rng.randint(2, 4)]:
        if rng.random() < 0.3:
            supports.append({"joint": joint, "kind": "pin"})
        else:
            supports.append({"joint": joint, "kind": "roller", "reaction": rng.randint(0, 359),
                             "settle": rng.randint(-4, 4)})
    loads = [{"joint": rng.choice(joints), "fx": round(rng.uniform(-20, 20), 1), "fy": round(rng.uniform(-30, 5), 1)}
             for _ in range(rng.randint(1, 4))]
    return {
        "gusset": 1,
        "joints": [{"id": label, "x": x, "y": y} for label, (x, y) in at.items()],
        "members": members,
        "supports": supports,
        "loads": loads,
        "materials": [{"id": "steel", "E": E, "alpha": ALPHA}],
        "sections": [{"id": "light", "material": "steel", "A": 600}, {"id": "heavy", "material": "steel", "A": 1800}],
    }


def systems(model):
    """The parts of the equations in N and mm: member columns B (joint forces of a unit tension), member stiffnesses and
    free elongations, support rows C, their settlements, and the loads."""
    place = {joint["id"]: i for i, joint in enumerate(model["joints"])}
    xy = 1000 * numpy.array([[joint["x"], joint["y"]] for joint in model["joints"]])
    area = {"light": 600.0, "heavy": 1800.0}
    freedoms = 2 * len(place)
    b = numpy.zeros((freedoms, len(model["members"])))
    rigidity, strain = [], []
    for i, member in enumerate(model["members"]):
        p, q = place[member["a"]], place[member["b"]]
        run = xy[q] - xy[p]
        length = math.hypot(*run)
        b[2 * p : 2 * p + 2, i] = run / length
        b[2 * q : 2 * q + 2, i] = -run / length
        rigidity.append(E * area[member["section"]] / length)
        strain.append(ALPHA * member.get("dT", 0) * length + member.get("misfit", 0))
    rows, settled = [], []
    for support in model["supports"]:
        j = place[support["joint"]]
        if support["kind"] == "pin":
            lines = [(1.0, 0.0, support.get("settle", {}).get("x", 0)), (0.0, 1.0, support.get("settle", {}).get("y", 0))]
        else:
            angle = math.radians(support["reaction"])
            lines = [(math.cos(angle), math.sin(angle), support.get("settle", 0))]
        for cx, cy, movement in lines:
            row = numpy.zeros(freedoms)
            row[2 * j], row[2 * j + 1] = cx, cy
            rows.append(row)
            settled.append(movement)
    load = numpy.zeros(freedoms)
    for each in model["loads"]:
        j = place[each["joint"]]
        load[2 * j] += 1000 * each["fx"]
        load[2 * j + 1] += 1000 * each["fy"]
    return b, numpy.array(rigidity), numpy.array(strain), numpy.array(rows), numpy.array(settled), load


def solve(b, rigidity, strain, c, settled, load):
    """Displacements (mm) and member forces (N): K·u − Cᵀ·R = f, C·u = s."""
    freedoms, supports = b.shape[0], c.shape[0]
    whole = numpy.zeros((freedoms + supports, freedoms + supports))
    whole[:freedoms, :freedoms] = b @ numpy.diag(rigidity) @ b.T
    scale = rigidity.mean()
    whole[:freedoms, freedoms:] = -scale * c.T
    whole[freedoms:, :freedoms] = -scale * c
    # A member's elongation is −bᵀ·u; its force k·(−bᵀ·u − strain) acts on the joints through b.
    right = numpy.concatenate([load - b @ (rigidity * strain), -scale * settled])
    u = numpy.linalg.solve(whole, right)[:freedoms]
    return u, rigidity * (-b.T @ u - strain)


def ask(gusset, model):
    done = subprocess.run([gusset, "solve", "-", "--json"], input=json.dumps(model), capture_output=True, text=True)
    return json.loads(done.stdout)


def compare(model, results, parts):
    """The first fault in the results, or None."""
    b, rigidity, strain, c, settled, load = parts
    whole = numpy.hstack([b, c.T])
    singular = numpy.linalg.svd(whole, compute_uv=False)
    rank = int((singular > 1e-9 * singular[0]).sum())
    mechanisms = whole.shape[0] - rank
    if results["status"] != ("mechanism" if mechanisms else "indeterminate" if whole.shape[1] > rank else "determinate"):
        return f"status {results['status']}, and {mechanisms} mechanisms by singular values"
    if results["degree"] != whole.shape[1] - rank:
        return f"degree {results['degree']} against {whole.shape[1] - rank}"
    if mechanisms:
        return compare_mechanisms(model, results, whole, mechanisms)
    u, forces = solve(*parts)
    found_forces = 1000 * numpy.array([member["force"] for member in results["members"]])
    found_u = numpy.array([[joint["ux"], joint["uy"]] for joint in results["joints"]]).ravel()
    slack = 1e-9 * numpy.linalg.cond(whole)
    if abs(found_forces - forces).max() > slack * max(abs(forces).max(), abs(load).max()):
        return f"forces differ by {abs(found_forces - forces).max()} N of {abs(forces).max()}"
    if abs(found_u - u).max() > slack * abs(u).max():
        return f"displacements differ by {abs(found_u - u).max()} mm of {abs(u).max()}"
    return None


def compare_mechanisms(model, results, whole, mechanisms):
    place = {joint["id"]: i for i, joint in enumerate(model["joints"])}
    if len(results["mechanisms"]) != min(mechanisms, 12):
        return f"{len(results['mechanisms'])} mechanisms listed of {mechanisms}"
    motions = numpy.zeros((len(results["mechanisms"]), whole.shape[0]))
    for row, mechanism in zip(motions, results["mechanisms"]):
        for label, velocity in mechanism["velocities"].items():
            row[2 * place[label] : 2 * place[label] + 2] = velocity
    if abs(motions @ whole).max() > 1e-9:
        return f"a motion strains something: {abs(motions @ whole).max()}"
    if numpy.linalg.matrix_rank(motions, tol=1e-6) != len(motions):
        return "the motions listed depend on each other"
    return None


def main():
    gusset, count = sys.argv[1], int(sys.argv[2]) if len(sys.argv) > 2 else 500
    passed = failed = skipped = indeterminate = unstable = 0
    seed = 0
    while passed + failed < count:
        seed += 1
        model = draw(random.Random(seed), indeterminate=seed % 5 != 0)
        parts = systems(model)
        singular = numpy.linalg.svd(numpy.hstack([parts[0], parts[3].T]), compute_uv=False)
        # Left out if nearly singular: with rounding, two programs may rightly disagree on the rank.
        if ((singular > 1e-9 * singular[0]) & (singular < 1e-3 * singular[0])).any():
            skipped += 1
            continue
        results = ask(gusset, model)
        fault = compare(model, results, parts)
        indeterminate += results["status"] == "indeterminate"
        unstable += results["status"] == "mechanism"
        if fault:
            failed += 1
            print(f"seed {seed}: {fault}")
        else:
            passed += 1
    print(f"{indeterminate} indeterminate, {unstable} mechanisms; {skipped} draws too close to singular left out")
    print(f"{passed} passed, {failed} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
