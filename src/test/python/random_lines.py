"""Lines drawn at random over everything that can be described.

    python3 random_lines.py FIRST COUNT      one document on each line

Sizes are real numbers, so that no two events meet by chance; accumulators are about as large as what a coil change draws, so that
every state of a line is met. Line n is the same on every machine.
"""

import json
import sys
from math import inf, pi, sqrt
from random import Random

from description import capacity
from refusals import refusals


class RandomLine:
    def __init__(self, random):
        self.random = random
        share = random.random()
        self.practice = "join" if share < 0.84 else "join without accumulator" if share < 0.94 else "rethread"
        self.fastest = self.between(0.3, 3)
        self.process_up, self.process_down = self.acceleration(), self.acceleration()
        self.entry_up = self.process_up if self.chance(0.15) else self.acceleration()
        self.entry_down = self.process_down if self.chance(0.15) else self.acceleration()
        self.reserve = 0 if self.chance(0.5) else self.between(0, 20)
        self.stop_level = self.reserve + self.fastest**2 / (2 * (self.process_down or inf))
        self.form = self.storage(self.stop_level * self.between(1, 1.3) + self.fastest * self.between(1, 150))
        self.capacity = capacity(self.form)
        # The scale of times: how long a coil lasts.
        self.lasting = self.between(60, 600)

    # ---- chances

    def chance(self, p):
        return self.random.random() < p

    def between(self, low, high):
        return low + (high - low) * self.random.random()

    def whole(self, low, high):
        return low + int((high - low + 1) * self.random.random())

    def of(self, *choices):
        return choices[int(len(choices) * self.random.random())]

    def acceleration(self):
        return None if self.chance(0.2) else self.between(0.01, 0.1) if self.chance(0.3) else self.between(0.05, 1.5)

    def time(self, mean):
        """A distribution with about this mean."""
        made = self.of(
            {"constant": mean},
            {"constant": mean},
            {"uniform": [0.5 * mean, 1.5 * mean]},
            {"triangular": [0.4 * mean, mean, 2.2 * mean]},
            {"normal": [mean, self.between(0.1, 0.9) * mean]},
            {"lognormal": [mean, 0.6 * mean]},
            {"weibull": [self.between(0.8, 3), mean]},
            {"exponential": mean},
            {"gamma": [mean, self.between(0.2, 1.2) * mean]},
            {"observed": [mean * self.between(0.4, 2) for _ in range(self.whole(1, 9))]},
        )
        if self.chance(0.2):
            made["shift"] = 0.1 * mean
        return made

    # ---- parts

    def document(self, number):
        kinds, supply = self.coils()
        change = self.change()
        document = dict(
            name=f"random line {number}",
            seed=(number * 0x9E3779B97F4A7C15) % 2**64,
            replication=self.whole(0, 3),
            practice=self.practice,
            run={"changes": self.whole(4, 12)} if self.chance(0.85) else {"seconds": self.between(200, 6000)},
            leave_out=self.whole(0, 2) if self.chance(0.3) else 0,
            entry=self.entry(kinds),
            accumulator=self.accumulator(),
            process=self.process(kinds),
            kinds=kinds,
            supply=supply,
            change=change,
        )
        return document

    def coils(self):
        own_speeds = self.chance(0.35)
        several = self.chance(0.65)
        count = self.whole(2, 4) if several else 1
        mixed = self.chance(0.4)
        products = self.chance(0.5)
        alike = self.coil(False, own_speeds, products)
        kinds = []
        for place in range(count):
            # In a schedule only the first coil must be long enough to stop in.
            kind = self.coil(not mixed and place > 0 and self.chance(0.2), own_speeds, products)
            for what in ("width", "thickness"):
                if self.chance(0.5):
                    kind[what] = alike[what]
            kinds.append(kind)
        if mixed:
            return kinds, dict(kind="mix", shares=[self.between(0.2, 3) for _ in kinds])
        order = [0] + [self.whole(0, count - 1) for _ in range(self.whole(count - 1, 2 * count))]
        used = sorted(set(order))
        return [kinds[kind] for kind in used], dict(kind="schedule", order=[used.index(kind) for kind in order])

    def coil(self, is_short, own_speed, products):
        head = 0 if self.chance(0.4) else self.between(0, 3)
        tail = 0 if self.chance(0.4) else self.between(0, 3)
        lasting = self.lasting * self.between(0.5, 1.5)
        length = head + tail + (self.between(1, 25) if is_short else self.fastest * lasting)
        thickness, width = self.between(0.0005, 0.006), self.between(0.2, 2)
        density = self.between(2500, 8000)
        return dict(
            thickness=thickness,
            width=width,
            density=density,
            head_crop=head,
            tail_crop=tail,
            process_speed=self.fastest * self.between(0.3, 1) if own_speed and self.chance(0.8) else None,
            product=self.of("a", "b") if products else None,
            size=self.size(length, thickness * width * density, thickness),
        )

    def size(self, length, mass_per_metre, thickness):
        share = self.random.random()
        if share < 0.1:
            factor = self.between(0.9, 1)
            outer = sqrt(0.5**2 + 4 * thickness * length / (factor * pi))
            return dict(outer_diameter=outer, inner_diameter=0.5, winding_factor=factor)
        if share < 0.25:
            mass = length * mass_per_metre
            return dict(mass={"uniform": [0.7 * mass, mass]}, inner_diameter=0.5)
        if share < 0.5:
            return dict(length=length)
        if share < 0.8:
            return dict(length={"uniform": [0.7 * length, 1.4 * length]})
        return dict(length={"lognormal": [length, 0.2 * length]})

    def entry(self, kinds):
        slowest = min(kind["process_speed"] or self.fastest for kind in kinds)
        down = self.entry_down or inf
        if self.practice != "join":
            down = min(down, self.process_down or inf)
        creep = None
        if self.chance(0.3):
            speed = slowest * self.between(0.1, 0.95)
            creep = dict(speed=speed, length=speed**2 / (2 * down) + self.between(0.1, 15))
        return dict(
            uncoilers=self.whole(1, 3),
            uncoiler_path=0 if self.chance(0.4) else self.between(0, 40),
            top_speed=self.fastest * (self.between(1.001, 1.1) if self.chance(0.2) else self.between(1.1, 2.5)),
            acceleration=self.entry_up,
            deceleration=self.entry_down,
            creep=creep,
        )

    def accumulator(self):
        if self.practice != "join":
            return dict(form={"kind": "none"})
        return dict(
            form=self.form,
            fill_rate_limit=None if self.chance(0.6) else self.fastest * self.between(0.05, 1),
            reserve=self.reserve,
            overtravel_allowance=None if self.chance(0.5) else self.between(0, 3),
        )

    def storage(self, wanted):
        """A form that holds so many metres, or about as much."""
        share = self.random.random()
        if share < 0.6:
            return dict(kind="direct", capacity=wanted)
        if share < 0.8:
            strands = self.whole(2, 20)
            speed = None if self.chance(0.5) else self.fastest * self.between(0.05, 1) / strands
            return dict(kind="strands", strands=strands, stroke=wanted / strands, filling_speed=speed)
        if share < 0.9:
            empty, wraps = self.between(0.5, 2), self.between(3, 40)
            return dict(kind="spiral", wraps=wraps, full_diameter=empty + wanted / (wraps * pi), empty_diameter=empty)
        loops, span, least = self.whole(1, 3), self.between(2, 8), self.between(0, 1)
        # A deep loop holds about twice its sag.
        deep = least + wanted / (2 * loops) + span / 2
        return dict(kind="free loop", loops=loops, span=span, greatest_sag=deep, least_sag=least)

    def process(self, kinds):
        with_accumulator = self.practice == "join"
        rethreads = self.practice == "rethread"
        # With neither reserve nor path a starved process stands exactly where the next joint reaches it.
        needs_path = self.reserve == 0
        given = dict(
            speed=self.fastest,
            acceleration=self.process_up,
            deceleration=self.process_down,
            restart_level=self.level(0.02) if with_accumulator and self.chance(0.5) else None,
            restart_delay=0 if self.chance(0.4) else self.time(20),
            path=self.between(0.5, 60) if needs_path or self.chance(0.5) else 0,
            spoilt_per_stop=0 if self.chance(0.5) else self.between(0, 4),
            cut_per_joint=0 if self.chance(0.6) else self.between(0, 3),
        )
        if with_accumulator and self.chance(0.4):
            level = self.stop_level + (self.capacity - self.stop_level) * self.between(0.02, 0.9)
            resume = None if self.chance(0.5) else level + (self.capacity - level) * self.between(0.05, 0.99)
            given["slowing"] = dict(speed=self.fastest * self.between(0.1, 0.95), level=level, resume_level=resume)
        if self.chance(0.35):
            given["own_stops"] = dict(running=self.time(self.between(60, 900)), standing=self.time(self.between(5, 150)))
        if not rethreads and self.chance(0.35):
            before, after = self.between(0, 20), self.between(0, 20)
            given["passage"] = dict(speed=self.fastest * self.between(0.2, 0.95), before=before, after=after)
        if not rethreads and self.chance(0.3):
            given["joint_break"] = dict(
                chance=self.between(0.05, 0.7),
                length=self.between(1, 60),
                repair=self.time(self.between(20, 300)),
                scrap=0 if self.chance(0.3) else self.between(0, 10),
            )
        return given

    def level(self, least):
        return self.stop_level + (self.capacity - self.stop_level) * self.between(least, 0.999)

    # ---- work

    def change(self):
        crew = self.whole(1, 4)
        shifts = self.shifts(crew) if self.chance(0.4) else None
        largest = max(shift["crew"] for shift in shifts) if shifts else crew
        sheet = [[None if row and self.chance(1 / 6) else self.between(20, 140) for _ in range(3)] for row in range(6)]
        return dict(
            crew=crew,
            shifts=shifts,
            sheets=[dict(name="study", rows=sheet)],
            prepare=self.elements(self.whole(0, 4), self.lasting * self.between(0.05, 0.4), largest, 0.4),
            tail=self.elements(self.whole(0, 2), self.between(2, 15), largest, 0.8),
            join=self.elements(self.whole(1, 3), self.between(5, 40), largest, 0.8),
            reject=self.of(None, None, {"chance": self.between(0, 0.5)}, {"every": self.whole(1, 4)}),
            rethread=self.time(self.between(30, 400)) if self.practice == "rethread" else None,
        )

    def shifts(self, crew):
        made = []
        for _ in range(self.whole(1, 3)):
            seconds = self.lasting * self.between(0.3, 6)
            breaks, at = [], 0.0
            while self.chance(0.5):
                begin = at if self.chance(0.1) else at + self.between(0, 0.5) * seconds
                length = self.between(0.02, 0.3) * seconds
                if begin + length > seconds:
                    break
                breaks.append(dict(begin=begin, length=length, crew=self.whole(0, crew)))
                at = begin + length
            made.append(dict(seconds=seconds, crew=self.whole(1, crew + 1), breaks=breaks))
        return made

    def elements(self, count, mean, largest, redo):
        return [self.element(mean, largest, redo) for _ in range(count)]

    def element(self, mean, largest, redo):
        given = dict(
            name=self.of("a", "b", "c", "d"),
            redo=self.chance(redo),
            people=1 if self.chance(0.5) else self.whole(1, largest),
            put_down=self.chance(0.65),
        )
        share = self.random.random()
        if share < 0.2:
            given["measured"] = dict(sheet=0, column=self.whole(0, 2), factor=mean / 80)
        elif share < 0.75:
            given["time"] = self.time(mean)
        else:
            given["time"] = 0 if self.chance(0.5) else self.time(mean / 2)
            speeds = [[0.0004 + 0.0012 * row + self.between(0, 0.001), self.between(0.02, 0.3)] for row in range(self.whole(1, 4))]
            given["travel_speed"] = self.between(0.02, 0.3) if self.chance(0.4) else speeds
        share = self.random.random()
        if share < 0.15:
            given["every"] = self.whole(1, 4)
        elif share < 0.3:
            given["chance"] = self.between(0.05, 0.95)
        elif share < 0.5:
            listed = [what for what in ("width", "thickness", "product") if self.chance(0.5)]
            given["when"] = listed or ["width"]
        return given


def may_begin(case):
    """Whether each coil of a mix, any of which may be the first, can be long enough to stop in."""
    if case["supply"]["kind"] != "mix":
        return True
    one_strip = case["practice"] != "join"
    entry, process = (case[part].get("deceleration") or inf for part in ("entry", "process"))
    down = process if case["practice"] == "rethread" else min(entry, process) if one_strip else entry
    return all(longest(kind) > (kind["process_speed"] or case["process"]["speed"]) ** 2 / (2 * down) for kind in case["kinds"])


def longest(kind):
    """The longest usable length that is drawn, or a usual one of a distribution without end."""
    size = kind["size"]
    per_metre = kind["thickness"] * kind["width"] * kind["density"]
    given = size.get("length", size.get("mass"))
    if given is None:
        area = pi * (size["outer_diameter"] ** 2 - size["inner_diameter"] ** 2) / 4
        length = size["winding_factor"] * area / kind["thickness"]
    elif isinstance(given, dict):
        length = next(iter(given.values()))[1 if "uniform" in given else 0]
    else:
        length = given
    return length / (per_metre if "mass" in size else 1) - kind["head_crop"] - kind["tail_crop"]


def line(number):
    """A line that may run, the same for the same number."""
    random = Random(number)
    while True:
        document = RandomLine(random).document(number)
        if not refusals(document) and may_begin(document):
            return document


if __name__ == "__main__":
    first, count = int(sys.argv[1]), int(sys.argv[2])
    for number in range(first, first + count):
        print(json.dumps(line(number)))
