"""Runs described lines on given luck, written plainly as processes that wait for one another.

    python3 line_model.py FOLDER

Every folder in FOLDER that holds a line.json and a luck.csv gets a result.json: one row for each coil change, every work
element and the totals, or an error. All quantities are SI. It shares nothing with the program it checks but the
description of the model, so that where both agree both follow it.
"""

import json
import sys
from pathlib import Path

import simpy

from accumulated_line import AccumulatedLine
from luck import Luck
from one_strip_line import OneStripLine


def run(case, luck):
    env = simpy.Environment()
    kind = AccumulatedLine if case["practice"] == "join" else OneStripLine
    line = kind(env, case, luck)
    if "seconds" in case["run"]:
        env.run(until=case["run"]["seconds"])
        line.move(env.now - line.moved_to)
    else:
        env.run(until=line.end)
    return line.result()


def main(folder):
    for place in sorted(path.parent for path in Path(folder).glob("*/line.json")):
        case = json.loads((place / "line.json").read_text(encoding="utf-8"))
        try:
            result = run(case, Luck(place / "luck.csv"))
        except (ValueError, RuntimeError) as error:
            result = {"error": str(error)}
        (place / "result.json").write_text(json.dumps(result), encoding="utf-8")


if __name__ == "__main__":
    main(sys.argv[1])
