"""Runs described lines, written plainly as processes that wait for one another; the second engine.

    python3 line_model.py < LINES > RESULTS      one document on each line, one result on each line
    python3 line_model.py FOLDER                 every FOLDER/*/line.json gets a result.json beside it

It shares nothing with the program it checks but the description of the model, so that where both agree both follow it. It draws
its own random numbers, which are a function of seed, replication and what they are for.

The document is one JSON object. All quantities are SI: m, s, m/s, m/s2, kg/m3, people. What is not given, or is null, is infinite
(a limit, an acceleration), zero (a length, a time) or absent (a feature).

    name            what the line is about; not used
    seed, replication   whole numbers; default 0 and 0
    practice        "join", "join without accumulator", "rethread"
    run             {"changes": n} or {"seconds": s}
    leave_out       the first so many coil changes do not count

    entry           uncoilers, uncoiler_path, top_speed, acceleration, deceleration, creep {speed, length}
    accumulator     form, fill_rate_limit, reserve, overtravel_allowance
      form          {"kind": "direct", capacity}, {"kind": "strands", strands, stroke, filling_speed},
                    {"kind": "free loop", loops, span, greatest_sag, least_sag},
                    {"kind": "spiral", wraps, full_diameter, empty_diameter}, {"kind": "none"}
    process         speed, acceleration, deceleration, restart_level, restart_delay (distribution), path,
                    spoilt_per_stop (m, each time the process comes to rest), cut_per_joint (m, half of each coil)
      slowing       {speed, level, resume_level}
      own_stops     {running, standing} (distributions)
      passage       {speed, before, after}
      joint_break   {chance, length (of the process section), repair (distribution), scrap (m)}

    kinds           coils: {thickness, width, density, head_crop, tail_crop, process_speed, product, size}
      size          {"length": distribution}, {"mass": distribution} or {outer_diameter, inner_diameter, winding_factor}
    supply          {"kind": "schedule", "order": [kind, ...]}, repeated from the top; default: the kinds in their order
                    {"kind": "mix", "shares": [share of each kind]}

    change          prepare, tail, join: lists of elements; crew, shifts, reject, rethread (distribution), sheets
      element       name, time (distribution), travel_speed, measured, redo, people, put_down, and at most one of
                    every (n), chance (p), when (list of "width", "thickness", "product").
                    travel_speed: a number, or rows [[thickness, speed], ...]; time is then the fixed part.
                    measured: {"sheet": index, "column": index, "factor": f}, in the place of time.
                    redo: default true for tail and join, false for prepare. put_down: default true.
      shifts        [{seconds, crew, breaks: [{begin, length, crew}]}], in the place of crew, repeated from time 0
      reject        {"chance": p} or {"every": n}
      sheets        [{name, rows: [[value or null, ...], ...]}], times of a time study, a row for each observation

    distribution    a number, or one of {"constant": c}, {"uniform": [min, max]}, {"triangular": [min, mode, max]},
                    {"normal": [mean, sd]}, {"lognormal": [mean, sd]}, {"gamma": [mean, sd]}, {"weibull": [shape, scale]},
                    {"exponential": mean}, {"observed": [value, ...]}, each with an optional "shift"

The result is one JSON object, with NaN for what does not apply:

    changes         a row for each coil change that counts: number, tailCoil, headCoil (kinds), shift (of its start), start (T0),
                    tailStopped (T1), released (T2), waiting = waitingForPreparation + waitingForPeople, passes,
                    levelAtStart, remainingAtStart, ratedSpeed, stopLevel (at T0), lowestLevel, stripDrawn,
                    outcome (RAN_THROUGH, SLOWED, STOPPED), starvedStops, lostMetres, lostTime, refillTime,
                    margin, marginToSlowing, marginWithoutStop, cause, causeElement ("list/name")
    work            every element: change, pass, list, element (place in its list, from 0), name, start, end,
                    putDown ([from, until] for each time that it was put down)
    totals          of the time that counts; good = processed less spoilt, cut and scrapped by breaks; scrap counts these and crops
    shifts          for each shift its paid seconds (people times time) and its coil changes
    causes          of the changes that did not run through, by cause and element
    balance         C(0) + entered - processed - level (m)

or {"error": words}.
"""

import json
import sys
from pathlib import Path

import simpy

from accumulated_line import AccumulatedLine
from one_strip_line import OneStripLine
from random_numbers import RandomNumbers
from refusals import refusals


def run(case):
    refused = refusals(case)
    if refused:
        raise ValueError("; ".join(refused))
    env = simpy.Environment()
    numbers = RandomNumbers(case.get("seed") or 0, case.get("replication") or 0)
    kind = AccumulatedLine if case["practice"] == "join" else OneStripLine
    line = kind(env, case, numbers)
    if "seconds" in case["run"]:
        env.run(until=case["run"]["seconds"])
        line.move(env.now - line.moved_to)
    else:
        env.run(until=line.end)
    return line.result()


def answer(document):
    try:
        result = run(json.loads(document))
    except (ValueError, RuntimeError) as error:
        result = {"error": str(error)}
    return json.dumps(result)


def main(arguments):
    if not arguments:
        for document in sys.stdin:
            print(answer(document), flush=True)
        return
    for place in sorted(path.parent for path in Path(arguments[0]).glob("*/line.json")):
        document = (place / "line.json").read_text(encoding="utf-8")
        (place / "result.json").write_text(answer(document), encoding="utf-8")


if __name__ == "__main__":
    main(sys.argv[1:])
