"""Checks of the second engine against itself: known answers, quantiles, conservation, closed forms.

    python3 check_model.py [LINES]      so many random lines, default 2000
"""

import json
import sys
from decimal import Decimal, getcontext
from math import isnan
from pathlib import Path
from random import Random

from book import BADNESS
from gamma_quantile import gamma_quantile
from hand_calculation import HandCalculation
from line_model import run
from random_lines import RandomLine, line
from random_numbers import MASK, RandomNumbers, fnv, philox
from refusals import refusals

EXAMPLES = Path(__file__).parent / "examples.jsonl"


class Found:
    """What was checked how often, and what was wrong."""

    def __init__(self):
        self.checked = {}
        self.wrong = []
        self.greatest = {}

    def check(self, what, holds, *details):
        self.checked[what] = self.checked.get(what, 0) + 1
        if not holds:
            self.wrong.append((what, *details))

    def equal(self, what, found, expected, within, *details):
        off = abs(found - expected) / max(1.0, abs(expected))
        self.greatest[what] = max(self.greatest.get(what, 0.0), off)
        self.check(what, off <= within, *details, found, expected)

    def tell(self):
        for what, times in self.checked.items():
            off = f", greatest difference {self.greatest[what]:.1e}" if what in self.greatest else ""
            print(f"{times:8} {what}{off}")
        for wrong in self.wrong[:40]:
            print("WRONG", *wrong)
        print(f"{len(self.wrong)} wrong")


# ---- random numbers


def known_answers(found):
    """The known answers published with the generator (Random123, kat_vectors, philox4x32-10), and with FNV-1a."""
    for counter, key, answer in (
        ((0,) * 4, (0,) * 2, (0x6627E8D5, 0xE169C58D, 0xBC57AC4C, 0x9B00DBD8)),
        ((MASK,) * 4, (MASK,) * 2, (0x408F276D, 0x41C83B0E, 0xA20BC7C6, 0x6D5451FD)),
        (
            (0x243F6A88, 0x85A308D3, 0x13198A2E, 0x03707344),
            (0xA4093822, 0x299F31D0),
            (0xD16CFE09, 0x94FDCCEB, 0x5001E420, 0x24126EA1),
        ),
    ):
        found.check("Philox known answers", philox(counter, key) == answer)
    for name, answer in (("", 0x811C9DC5), ("a", 0xE40C292C), ("foobar", 0xBF9CF968)):
        found.check("FNV-1a known answers", fnv(name) == answer)
    numbers = RandomNumbers(4711, 0)
    drawn = [numbers.uniform("reject", index) for index in range(10000)]
    found.check("uniform numbers have mean 1/2", abs(sum(drawn) / 10000 - 0.5) < 0.015)


def gamma_probability(shape, x):
    """The probability of a smaller value to 40 digits, and the density times x; by the series of the incomplete gamma function."""
    getcontext().prec = 60
    shape, x = Decimal(shape), Decimal(x)
    # ln Gamma(shape + 1) by Stirling's series from shape + 60 on.
    far = shape + 60
    bernoulli = [(1, 6), (-1, 30), (1, 42), (-1, 30), (5, 66), (-691, 2730), (7, 6), (-3617, 510), (43867, 798)]
    pi = Decimal("3.14159265358979323846264338327950288419716939937510582097494459")
    log_gamma = (far - Decimal("0.5")) * far.ln() - far + (2 * pi).ln() / 2
    for n, (above, below) in enumerate(bernoulli, 1):
        log_gamma += Decimal(above) / below / (2 * n * (2 * n - 1)) / far ** (2 * n - 1)
    product = Decimal(1)
    for n in range(1, 60):
        product *= shape + n
    prefix = (shape * x.ln() - x - log_gamma).exp() * product
    total = term = Decimal(1)
    n = shape
    while term > total * Decimal("1e-45"):
        n += 1
        term *= x / n
        total += term
    return prefix * total, prefix * shape


def gamma_is_exact(found):
    random = Random(1)
    for _ in range(300):
        shape = 10 ** (-1.5 + 4.5 * random.random())
        u = random.choice([random.random(), 10 ** (-8 * random.random()), 1 - 10 ** (-8 * random.random())])
        x = gamma_quantile(shape, u)
        if x > 1e-280:
            probability, slope = gamma_probability(shape, x)
            off = abs(float((probability - Decimal(u)) / slope))
            found.check("gamma quantile, relative error below 1e-12", off < 1e-12, shape, u, x, off)
            found.greatest["gamma quantile, relative error below 1e-12"] = max(
                off, found.greatest.get("gamma quantile, relative error below 1e-12", 0)
            )


# ---- any line


def sums_are_consistent(found, case, result):
    name, totals, rows = case["name"], result["totals"], result["changes"]
    found.equal("strip is conserved", result["balance"], 0, 1e-9 * max(1, totals["processedMetres"]), name)
    if case["practice"] != "join":
        found.equal("one strip", totals["enteredMetres"], totals["processedMetres"], 1e-9, name)
    for before, row in zip(rows, rows[1:]):
        found.check("changes follow one another", before["released"] <= row["start"], name, row["number"])
    for row in rows:
        of_change(found, case, row, [work for work in result["work"] if work["change"] == row["number"]])
    found.check(
        "counts of outcomes",
        totals["changes"] == sum(totals[key] for key in ("ranThrough", "slowedChanges", "stoppedChanges")),
    )
    for what in ("changes", "ranThrough", "stoppedChanges", "paidSeconds"):
        found.equal("shifts add up", sum(shift[what] for shift in result["shifts"]), totals[what], 1e-9, name, what)
    if not case["leave_out"]:
        for what in ("starvedStops", "lostMetres", "lostTime"):
            found.check(
                "lost by changes, not more than in all",
                sum(row[what] for row in rows) <= totals[what] + 1e-6,
                name,
                what,
            )
        if "changes" in case["run"]:
            joint = sum(row["released"] - row["tailStopped"] for row in rows)
            found.equal("joint time adds up", joint, totals["jointSeconds"], 1e-9, name)
    speeds = {kind.get("process_speed") for kind in case["kinds"]}
    if len(speeds) == 1:
        lost = totals["lostMetres"] + totals["breakLostMetres"] + totals["passageLostMetres"]
        short = totals["ratedMetres"] - totals["processedMetres"]
        found.check("no more lost than not run", lost <= short + 1e-6 * max(1, short), name, lost, short)
    good = totals["processedMetres"] - totals["spoiltMetres"] - totals["cutMetres"] - totals["breakScrapMetres"]
    found.equal("good output", totals["goodMetres"], good, 1e-9, name)
    people_suffice(found, case, result)


def of_change(found, case, row, work):
    name, number = case["name"], row["number"]
    found.check("T0 <= T1 <= T2", row["start"] <= row["tailStopped"] <= row["released"], name, number)
    found.check("no negative waiting", row["waitingForPreparation"] >= 0 and row["waitingForPeople"] >= 0, name, number)
    done = sum(one["end"] - one["start"] for one in work if one["list"] != "PREPARE")
    joint = row["released"] - row["tailStopped"]
    found.equal("joint time = work + waiting", done + row["waiting"], joint, 1e-9, name, number)
    if row["outcome"] == "RAN_THROUGH":
        found.check("ran through without lost metres", row["lostMetres"] < 1e-9, name, number, row["lostMetres"])
        found.check("ran through without a stop", row["starvedStops"] == 0, name, number)
    elif row["margin"] == row["margin"]:
        found.check("a failed change has a cause", row["cause"] is not None, name, number)
    for one in work:
        at = one["start"]
        for down, up in one["putDown"]:
            found.check("put down while under way", at <= down and not up < down, name, number, one)
            at = up
        found.check("elements end after they began", not one["end"] < at, name, number, one)
    agrees_with_margin(found, case, row)


def agrees_with_margin(found, case, row):
    """Margin and outcome agree for a change that begins matched at the rated speed and full, if nothing else interferes."""
    process = case["process"]
    if case["practice"] != "join" or any(process.get(what) for what in ("own_stops", "passage", "joint_break")):
        return
    if any(kind.get("process_speed") for kind in case["kinds"]):
        return
    hand = HandCalculation(case)
    needed = (hand.v**2 - hand.creep_speed**2) / (2 * hand.down) + hand.creep_length
    if abs(row["levelAtStart"] - hand.capacity) > 1e-9 or abs(row["remainingAtStart"] - needed) > 1e-9:
        return
    blur = 1e-10 * max(1, hand.capacity)
    margin = row["marginToSlowing"] if process.get("slowing") else row["margin"]
    ran = row["outcome"] == "RAN_THROUGH"
    if not ran or not isnan(row["refillTime"]):
        found.check(
            "margin and running through agree",
            ran == (margin >= -blur),
            case["name"],
            row["number"],
            margin,
            row["outcome"],
        )
    if row["outcome"] == "STOPPED" or not isnan(row["refillTime"]):
        stopped = row["outcome"] == "STOPPED"
        found.check(
            "margin without a stop and outcome agree",
            stopped == (row["marginWithoutStop"] < -blur),
            case["name"],
            row["number"],
            row["marginWithoutStop"],
            row["outcome"],
        )


def people_suffice(found, case, result):
    """At no time more people at work than the largest crew; one prepare element and one element of a joint at once."""
    change = case["change"]
    largest = max([shift["crew"] for shift in change.get("shifts") or []] or [change["crew"]])
    moments = []
    for one in result["work"]:
        if isnan(one["end"]):
            continue
        if case["practice"] == "rethread" and one["list"] == "JOIN":
            people = 1
        else:
            people = change[one["list"].lower()][one["element"]].get("people", 1)
        with_joint = one["list"] != "PREPARE" or one["pass"] > 1
        at = one["start"]
        for down, up in one["putDown"]:
            moments += [(at, 1, people, with_joint), (down, 0, people, with_joint)]
            at = up
        moments += [(at, 1, people, with_joint), (one["end"], 0, people, with_joint)]
    # What takes no time is nobody's work at any other time.
    busy, count = 0, {True: 0, False: 0}
    moments.sort(key=lambda moment: moment[0])
    place = 0
    while place < len(moments):
        at = moments[place][0]
        while place < len(moments) and moments[place][0] == at:
            _, begins, people, with_joint = moments[place]
            busy += people if begins else -people
            count[with_joint] += 1 if begins else -1
            place += 1
        found.check("people suffice", busy <= largest, case["name"], at, busy, largest)
        found.check("one thing at a time", max(count.values()) <= 1, case["name"], at, count)


def random_lines(found, count):
    errors = {}
    features = {}
    for number in range(1, count + 1):
        case = line(number)
        try:
            result = json.loads(json.dumps(run(case)))
        except ValueError as error:
            kind = str(error).split(":")[-1][:25]
            errors[kind] = errors.get(kind, 0) + 1
            continue
        sums_are_consistent(found, case, result)
        for feature in met(case, result):
            features[feature] = features.get(feature, 0) + 1
    print("refused while running:", errors)
    for feature, times in sorted(features.items()):
        print(f"{times:8} lines with {feature}")


def met(case, result):
    totals, rows = result["totals"], result["changes"]
    happened = {key for key in ("breaks", "ownStops", "slowings", "starvedStops", "passageLostMetres", "overfull", "stripBreaks") if totals[key] > 0}
    happened |= {f"cause {row['cause']}" for row in rows if row["cause"]}
    happened |= {row["outcome"] for row in rows}
    if any(one["putDown"] for one in result["work"]):
        happened.add("put down")
    if any(row["waitingForPeople"] > 0 for row in rows):
        happened.add("waiting for people")
    if any(row["waitingForPreparation"] > 0 for row in rows):
        happened.add("waiting for preparation")
    if case["change"].get("shifts"):
        happened.add("shifts")
    if any(row["passes"] > 1 for row in rows):
        happened.add("joints made again")
    return happened


# ---- closed forms


def deterministic(number):
    """A line whose coil changes are all alike, and its hand calculation."""
    random = Random(1_000_000 + number)
    while True:
        made = RandomLine(random)
        case = made.document(number)
        if case["practice"] != "join":
            continue
        kind = dict(case["kinds"][0], process_speed=None, size={"length": made.fastest * made.between(200, 3000)})
        process = {key: case["process"].get(key) for key in ("speed", "acceleration", "deceleration", "path", "slowing", "spoilt_per_stop")}
        case.update(kinds=[kind], supply=None, process=process, leave_out=0, run={"changes": 3})
        hand = HandCalculation(case)
        limit = hand.longest(hand.slowing["level"]) if hand.slowing else hand.longest()
        joint = limit * made.of(made.between(0.3, 1), made.between(0.9, 1.3), 1.0)
        if limit > 0:
            case["change"] = dict(crew=1, prepare=[], tail=[], join=[dict(name="weld", time=joint)], reject=None)
            if not refusals(case):
                return case, hand, joint, kind["size"]["length"] - kind["head_crop"] - kind["tail_crop"]


def closed_forms(found, count):
    for number in range(1, count + 1):
        case, hand, joint, usable = deterministic(number)
        try:
            result = run(case)
        except ValueError:
            continue
        rows = result["changes"]
        first = rows[0]
        name = case["name"]
        limit = hand.longest(hand.slowing["level"]) if hand.slowing else hand.longest()
        if usable < hand.creep_length + hand.v**2 / (2 * hand.down):
            continue
        found.equal("closed form: margin", first["margin"], hand.v * (hand.longest() - joint), 1e-9, name)
        if hand.slowing:
            expected = hand.v * (limit - joint)
            found.equal("closed form: margin to slowing", first["marginToSlowing"], expected, 1e-9, name)
            without_stop(found, hand, case, first, joint)
        if not hand.is_always_refilled(usable, joint):
            continue
        # A difference that is no more than rounding of the level decides nothing.
        if abs(joint - limit) * hand.v > 1e-9 * max(1, hand.capacity) or joint <= limit:
            through = first["outcome"] == "RAN_THROUGH"
            found.check(
                "closed form: outcome",
                through == (joint <= limit * (1 + 1e-15)),
                name,
                joint,
                limit,
                first["outcome"],
            )
        if first["outcome"] == "RAN_THROUGH":
            for row in rows:
                found.equal("closed form: strip drawn", row["stripDrawn"], hand.drawn(joint), 1e-9, name)
                found.equal("closed form: refill", row["refillTime"], hand.refill(joint)[0], 1e-9, name)


def without_stop(found, hand, case, first, joint):
    slow, longest = hand.slowing, hand.longest_without_stop()
    # Slowing begins while the entry stands, and the slow speed is reached before the joint is released.
    begins = (hand.capacity - slow["level"] - hand.v**2 / (2 * hand.down) - hand.creep_loss()) / hand.v
    reached = begins + (hand.v - slow["speed"]) / hand.process_down
    if 0 <= begins and reached <= joint:
        at_slow = slow["level"] - hand.stop_level()
        expected = min(at_slow, slow["speed"] * (longest - joint))
        found.equal("closed form: margin without a stop", first["marginWithoutStop"], expected, 1e-9, case["name"])


# ---- the example lines


def examples(found):
    for document in EXAMPLES.read_text(encoding="utf-8").splitlines():
        case = json.loads(document)
        case.setdefault("leave_out", 0)
        try:
            result = json.loads(json.dumps(run(case)))
        except ValueError as error:
            found.check("examples run", "refused" in case["name"], case["name"], error)
            continue
        found.check("examples run", "refused" not in case["name"], case["name"])
        sums_are_consistent(found, case, result)
        as_calculated(found, case, result)


def as_calculated(found, case, result):
    """The numbers of the hand calculation that stands beside the line."""
    rows = {
        "changes": {str(row["number"]): row for row in result["changes"]},
        "work": {f"{one['list'].lower()}/{one['name']} {one['change']}.{one['pass']}": one for one in result["work"]},
    }
    for part, of_part in case.get("expect", {}).items():
        for key, of_key in (of_part.items() if part in rows else [("", of_part)]):
            row = rows[part].get(key, {}) if part in rows else result[part]
            for what, expected in of_key.items():
                is_equal(found, row.get(what), expected, case["name"], part, key, what)


def is_equal(found, value, expected, *where):
    if isinstance(expected, list):
        alike = len(value or []) == len(expected)
        found.check("hand calculation", alike, *where, value, expected)
        for one, other in zip(value or [], expected):
            is_equal(found, one, other, *where)
    elif isinstance(expected, (int, float)) and isinstance(value, (int, float)):
        found.equal("hand calculation", value, expected, 1e-9, *where)
    else:
        found.check("hand calculation", value == expected, *where, value, expected)


def main(count):
    found = Found()
    known_answers(found)
    gamma_is_exact(found)
    if EXAMPLES.exists():
        examples(found)
    closed_forms(found, count)
    random_lines(found, count)
    found.tell()
    return 1 if found.wrong else 0


if __name__ == "__main__":
    sys.exit(main(int(sys.argv[1]) if len(sys.argv) > 1 else 2000))
