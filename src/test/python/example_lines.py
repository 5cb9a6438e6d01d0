"""One line for each thing that can be described, then combined; writes examples.jsonl.

    python3 example_lines.py > examples.jsonl

Where a line has "expect", the numbers come from a hand calculation, given as "why". The line that most are made of changes its
speeds at once: process 2 m/s, entry 3 m/s, 2000 m coils, capacity 1000 m, 100 s to weld. So, change after change:

    T0 = T1 = 1000 s, T2 = 1100 s, level 800 m; filled by 1 m/s for 200 s, full at 1300 s with 1400 m left; T1 of the next 2000 s.
"""

import json
from copy import deepcopy

WELD = dict(name="weld", time=100)


def line(name, expect=None, why=None, **parts):
    """The plain line with parts of it replaced; ``entry__uncoilers=3`` replaces one key of a part."""
    made = dict(
        name=name,
        seed=4711,
        replication=0,
        practice="join",
        run={"changes": 4},
        leave_out=0,
        entry=dict(uncoilers=1, uncoiler_path=0, top_speed=3, acceleration=None, deceleration=None, creep=None),
        accumulator=dict(
            form=dict(kind="direct", capacity=1000),
            fill_rate_limit=None,
            reserve=0,
            overtravel_allowance=None,
        ),
        process=dict(speed=2, acceleration=None, deceleration=None, path=0),
        kinds=[coil()],
        supply=None,
        change=dict(crew=1, prepare=[], tail=[], join=[deepcopy(WELD)]),
    )
    for key, value in parts.items():
        part, _, inner = key.partition("__")
        if inner:
            made[part][inner] = value
        else:
            made[part] = value
    if expect:
        made.update(expect=expect, why=why)
    return made


def coil(length=2000, **more):
    return dict(thickness=0.001, width=1.0, density=7850, head_crop=0, tail_crop=0, size={"length": length}) | more


def load(time=400, **more):
    return dict(name="load", time=time) | more


def done(start, end, *put_down):
    return dict(start=start, end=end, putDown=[list(pair) for pair in put_down])


def ramps(name, **parts):
    """Ramps everywhere, coils and joints of random length, an accumulator that is now and then too small."""
    plain = dict(
        run={"changes": 25},
        entry=dict(uncoilers=2, uncoiler_path=0, top_speed=2.57, acceleration=0.31, deceleration=0.43),
        accumulator=dict(form=dict(kind="direct", capacity=131)),
        process=dict(speed=1.53, acceleration=0.17, deceleration=0.22, path=3.1),
        kinds=[coil({"uniform": [310, 690]})],
        change=dict(crew=1, prepare=[], tail=[], join=[dict(name="weld", time={"lognormal": [61, 19]})]),
    )
    made = line(name, **plain)
    for key, value in parts.items():
        part, _, inner = key.partition("__")
        if inner:
            made[part][inner] = value
        else:
            made[part] = value
    return made


def people():
    two = dict(entry__uncoilers=2, entry__uncoiler_path=10)
    yield line(
        "a preparation is put down for the joint",
        {
            "work": {"prepare/load 2.1": done(995, 1495, (1000, 1100))},
            "changes": {"2": {"waiting": 0, "outcome": "RAN_THROUGH"}},
        },
        "coil 1 leaves its uncoiler 10 m before the joiner, at 995 s; 5 s done, 395 s from T2 on",
        **two,
        change__prepare=[load()],
    )
    yield line(
        "not to be put down: begins at T2, when the coil lasts long enough",
        {"work": {"prepare/load 2.1": done(1100, 1500)}},
        "at 995 s the coil lasts 5 s, less than 400 s; at T2 (2000 - (1000 - 800))/2 = 900 s",
        **two,
        change__prepare=[load(put_down=False)],
    )
    yield line(
        "not to be put down: begins when the joint waits for it",
        {
            "work": {"prepare/load 2.1": done(2000, 2950)},
            "changes": {"2": {"waitingForPreparation": 950, "cause": "waiting for preparation"}},
        },
        "950 s are more than the 900 s at T2 and the 700 s at 1300 s, when the entry is matched",
        **two,
        change__prepare=[load(950, put_down=False)],
    )
    yield line(
        "not to be put down: begins while the people left over suffice",
        {"work": {"prepare/load 2.1": done(995, 1395)}},
        "one of two people remains for the weld",
        **two,
        change__crew=2,
        change__prepare=[load(put_down=False)],
    )
    yield line(
        "not to be put down: the largest element listed counts, even if it does not happen",
        {"work": {"prepare/load 2.1": done(1100, 1500)}},
        "one of two people does not suffice for the inspection, which comes with every 1000th change",
        **two,
        change__crew=2,
        change__prepare=[load(put_down=False)],
        change__join=[WELD, dict(name="inspect", time=10, people=2, every=1000)],
    )
    yield line(
        "not to be put down: short enough just before the tail",
        {"work": {"prepare/load 2.1": done(995, 998)}},
        "3 s are less than the 5 s that the coil lasts",
        **two,
        change__prepare=[load(3, put_down=False)],
    )
    yield line(
        "not to be put down and under way: the joint waits for people",
        run={"changes": 20},
        entry__uncoilers=2,
        change__prepare=[load({"observed": [300, 300, 300, 1900]}, put_down=False)],
    )
    yield line(
        "elements that take two people, one before and one after",
        {
            "work": {
                "prepare/load 2.1": done(1000, 1520, (1010, 1110)),
                "join/weld 1.1": done(1010, 1110),
                "join/inspect 1.1": done(1110, 1120),
            },
            "changes": {"1": {"waiting": 0, "released": 1120}},
        },
        "beside shear (1) the preparation goes on, at the weld (2) it is put down, beside inspect (1) it goes on",
        entry__uncoilers=2,
        change__crew=2,
        change__prepare=[load(420)],
        change__tail=[dict(name="shear", time=10)],
        change__join=[dict(name="weld", time=100, people=2), dict(name="inspect", time=10)],
    )
    yield line(
        "putting down does not free enough",
        {
            "work": {"prepare/load 2.1": done(1000, 1250), "join/weld 1.1": done(1200, 1300)},
            "changes": {"1": {"waitingForPeople": 200}},
        },
        "the weld takes three; two are there until 1200 s, one of them prepares; then four",
        entry__uncoilers=2,
        change__shifts=[dict(seconds=1200, crew=2, breaks=[]), dict(seconds=5000, crew=4, breaks=[])],
        change__prepare=[load(250)],
        change__join=[dict(name="weld", time=100, people=3)],
        run={"changes": 2},
    )
    yield line(
        "one uncoiler, one person: the joint waits for the preparation",
        {
            "work": {"prepare/load 1.1": done(1000, 1400)},
            "changes": {"1": {"waitingForPreparation": 400, "waitingForPeople": 0, "released": 1500}},
        },
        "the uncoiler is free at T1 = 1000 s",
        run={"changes": 1},
        change__prepare=[load()],
    )
    yield line(
        "waiting by element: the longest is the cause",
        {"changes": {"1": {"waitingForPreparation": 550, "cause": "waiting for preparation", "causeElement": "prepare/open#2"}}},
        "100 + 250 + 200 s; the second of two elements of one name is number 2",
        run={"changes": 1},
        change__prepare=[load(100), dict(name="open", time=200), dict(name="open", time=250)],
    )
    yield line(
        "three uncoilers",
        {
            "work": {
                "prepare/load 1.1": done(0, 400),
                "prepare/load 2.1": done(400, 800),
                "prepare/load 3.1": done(1100, 1500),
            },
        },
        "coils 2 and 3 one after another from 0; coil 4 when the tail of coil 1 has left, but the weld has the person",
        entry__uncoilers=3,
        change__prepare=[load()],
    )
    yield line(
        "a coil no longer than the path to the joiner counts as gone when it begins to run",
        entry__uncoilers=2,
        entry__uncoiler_path=50,
        kinds=[coil(), coil(40), coil(700)],
        change__prepare=[load(120)],
        run={"changes": 9},
    )


def shifts():
    weld = dict(run={"changes": 2})

    def one(seconds, crew, *breaks):
        return dict(seconds=seconds, crew=crew, breaks=[dict(begin=b, length=n, crew=c) for b, n, c in breaks])

    yield line(
        "a break that falls due in the coil change begins at T2, with its full length",
        {
            "work": {
                "prepare/a 2.1": done(1000, 1050),
                "prepare/b 2.1": done(1050, 1150),
                "prepare/c 2.1": done(1400, 1430),
            },
        },
        "due at 1050 s, begins at 1100 s, ends at 1400 s; b is finished first. The second preparation, of coil 3, begins"
        " when coil 1 is gone: two uncoilers",
        entry__uncoilers=2,
        change__shifts=[one(7200, 2, (1050, 300, 0))],
        change__prepare=[dict(name="a", time=50), dict(name="b", time=100), dict(name="c", time=30)],
    )
    yield line(
        "a break before the coil change: the joint lacks people",
        {"changes": {"1": {"waitingForPeople": 150, "released": 1250}}},
        "nobody from 900 to 1150 s",
        **weld,
        change__shifts=[one(7200, 1, (900, 250, 0))],
    )
    yield line(
        "a smaller shift begins at T2",
        {"changes": {"1": {"waitingForPeople": 0, "released": 1100, "shift": 0}, "2": {"shift": 1}}},
        "due at 1050 s; the second weld of two people begins at 1060 s",
        change__shifts=[one(1050, 2), one(1000, 1)],
        change__join=[dict(name="tack", time=60), dict(name="weld", time=40, people=2)],
        run={"changes": 2},
    )
    yield line(
        "a larger shift comes at once",
        {"changes": {"1": {"waitingForPeople": 30, "released": 1130}}},
        "one person until 1030 s",
        run={"changes": 1},
        change__shifts=[one(1030, 1), one(9000, 2)],
        change__join=[dict(name="weld", time=100, people=2)],
    )
    yield line(
        "a postponed break lasts past the end of its shift",
        {"work": {"prepare/load 2.1": done(1155, 1555)}},
        "due at 1050 s, from T2 = 1100 to 1155 s one person, although the shift from 1105 s on has three",
        entry__uncoilers=2,
        change__shifts=[one(1105, 2, (1050, 55, 1)), one(9000, 3)],
        change__prepare=[load(people=2)],
        run={"changes": 2},
    )
    yield line(
        "postponed breaks overlap: the smaller crew holds",
        {"work": {"prepare/load 2.1": done(1120, 1140), "prepare/open 2.1": done(1300, 1310)}},
        "both from 1100 s: nobody until 1120 s, one until 1300 s",
        entry__uncoilers=2,
        change__shifts=[one(9000, 2, (1010, 20, 0), (1050, 200, 1))],
        change__prepare=[load(20), dict(name="open", time=10, people=2)],
        change__join=[dict(name="weld", time=100, people=2)],
        run={"changes": 2},
    )
    yield line(
        "a break follows a break: nobody comes between them",
        {"work": {"prepare/load 1.1": done(300, 350)}},
        "nobody from 0 to 300 s",
        entry__uncoilers=2,
        change__shifts=[one(9000, 1, (0, 100, 0), (100, 200, 0))],
        change__prepare=[load(50)],
        run={"changes": 1},
    )
    yield line(
        "an element under way is finished in a break; breaks are paid",
        {"work": {"prepare/load 1.1": done(0, 950)}, "totals": {"paidSeconds": 4000}},
        "the element goes on through the break from 100 to 600 s; paid: 2 people for the 2000 s until T0 of change 2",
        entry__uncoilers=2,
        change__shifts=[one(5000, 2, (100, 500, 0))],
        change__prepare=[load(950)],
        run={"changes": 1},
    )
    yield ramps(
        "shifts with breaks, people of all kinds",
        change=dict(
            crew=1,
            shifts=[one(1531, 3, (211, 97, 1), (733, 151, 0)), one(907, 1), one(1213, 2, (407, 203, 1))],
            prepare=[
                load({"gamma": [97, 31]}, people=2),
                dict(name="open", time={"triangular": [20, 41, 97]}, put_down=False),
            ],
            tail=[dict(name="shear", time={"exponential": 5})],
            join=[
                dict(name="fit", time={"weibull": [2.1, 13]}, people=2),
                dict(name="weld", time={"normal": [37, 11]}),
            ],
        ),
    )


def elements():
    yield line(
        "when the width changes",
        {"work": {"join/set 2.1": done(2100, 2130)}, "changes": {"1": {"released": 1100}, "2": {"released": 2130}}},
        "widths 1, 1, 1.2: change 2",
        kinds=[coil(), coil(width=1.2)],
        supply=dict(kind="schedule", order=[0, 0, 1]),
        change__join=[WELD, dict(name="set", time=30, when=["width"])],
        process__path=10,
    )
    yield line(
        "when the thickness or the product changes, prepare by the change that consumes the coil",
        {"work": {"prepare/tool 2.1": done(2000, 2040), "prepare/tool 3.1": done(3000, 3040)}},
        "coil 3 is thicker, coil 4 of another product",
        kinds=[coil(), coil(thickness=0.002, product="a"), coil(thickness=0.002, product="b")],
        supply=dict(kind="schedule", order=[0, 0, 1, 2]),
        change__prepare=[dict(name="tool", time=40, when=["thickness", "product"])],
        process__path=10,
        entry__uncoilers=1,
        run={"changes": 3},
    )
    speeds = [[0.001, 0.05], [0.003, 0.01]]
    yield line(
        "weld travel by thickness: between two rows, the wider and the thicker strip",
        {"changes": {"1": {"released": 1000 + 6 + 1.5 / 0.03}}},
        "thicker 2 mm: 0.03 m/s; wider 1.5 m; 6 s besides",
        kinds=[coil(width=1.5), coil(thickness=0.002)],
        change__join=[dict(name="weld", time=6, travel_speed=speeds)],
        process__path=10,
        run={"changes": 1},
    )
    yield line(
        "weld travel by thickness: the nearest row outside",
        {"changes": {"1": {"released": 1100}}},
        "4 mm: 0.01 m/s for 1 m",
        kinds=[coil(thickness=0.004)],
        change__join=[dict(name="weld", travel_speed=speeds)],
        run={"changes": 1},
    )
    yield ramps(
        "elements every third time, by chance, and measured",
        change__sheets=[dict(name="study", rows=[[31, 7], [44, None], [29, 9], [51, 6]])],
        change__reject={"chance": 0.3},
        change__prepare=[load({"uniform": [60, 190]}, every=2), dict(name="open", time=70, chance=0.6)],
        change__tail=[dict(name="shear", time={"exponential": 9}, chance=0.3)],
        change__join=[
            dict(name="weld", measured=dict(sheet=0, column=0, factor=1)),
            dict(name="dress", measured=dict(sheet=0, column=1, factor=1.5), redo=False),
            dict(name="weld", time=7, every=3),
        ],
    )
    yield line(
        "a reject: prepare, tail and join done again",
        {
            "changes": {
                "2": {
                    "passes": 2,
                    "waitingForPreparation": 50,
                    "released": 2270,
                    "cause": None,
                    "outcome": "RAN_THROUGH",
                },
                "1": {"passes": 1, "waitingForPreparation": 0},
            },
            "work": {
                "prepare/square 2.2": done(2110, 2160),
                "tail/shear 2.2": done(2160, 2170),
                "join/weld 2.2": done(2170, 2270),
            },
        },
        "T1 of change 2 at 2000 s; 10 + 100, then 50 + 10 + 100 s",
        entry__uncoilers=2,
        change__reject={"every": 2},
        change__prepare=[load(100), dict(name="square", time=50, redo=True)],
        change__tail=[dict(name="shear", time=10)],
        run={"changes": 2},
        kinds=[coil(2000)],
    )
    yield ramps(
        "rejects by chance, crops, preparation again beside the next",
        kinds=[coil(403, head_crop=1.3, tail_crop=0.7)],
        change__reject={"chance": 0.37},
        change__crew=2,
        change__prepare=[load({"weibull": [2.1, 93]}), dict(name="square", time=21, redo=True, people=2)],
    )


def joint_on_its_way():
    passage = dict(speed=1, before=20, after=10)
    yield line(
        "joint passage",
        {
            "totals": {"passageLostMetres": 60, "lostMetres": 0},
            "changes": {"1": {"outcome": "RAN_THROUGH", "lostMetres": 0}},
        },
        "30 m at 1 in the place of 2 m/s: 30 m lost, twice before T0 of change 3",
        process__passage=passage,
        run={"changes": 2},
    )
    yield ramps("joint passage with ramps", process__passage=dict(speed=0.7, before=11.3, after=7.9))
    yield ramps(
        "joint passages that overlap",
        process__passage=dict(speed=0.7, before=61.3, after=37.9),
        kinds=[coil({"uniform": [31, 69]}), coil(500)],
        supply=dict(kind="schedule", order=[1, 0, 0, 0]),
    )
    yield ramps(
        "joint passage that the entry cannot follow",
        entry__deceleration=0.11,
        process__deceleration=0.39,
        process__passage=dict(speed=0.5, before=3, after=0),
        accumulator__overtravel_allowance=1.7,
    )
    yield line(
        "joint break",
        {"totals": {"breaks": 2, "breakLostMetres": 1200, "breakScrapMetres": 60, "lostMetres": 0}},
        "300 s at 2 m/s each; the chance is so near to 1 that every joint breaks",
        process__joint_break=dict(chance=0.999999999999, length=40, repair=300, scrap=30),
        process__spoilt_per_stop=2,
        process__cut_per_joint=1,
        run={"changes": 2},
    )
    yield ramps(
        "joint breaks with own stops, passages and slowing",
        process__joint_break=dict(chance=0.5, length=41, repair={"uniform": [31, 211]}, scrap=3.1),
        process__own_stops=dict(running={"exponential": 210}, standing={"gamma": [41, 17]}),
        process__passage=dict(speed=0.7, before=11.3, after=7.9),
        process__slowing=dict(speed=0.61, level=47.3),
        process__spoilt_per_stop=1.3,
    )
    yield ramps(
        "speed by coil, passage, breaks",
        kinds=[coil(307, process_speed=1.1), coil(251), coil(199, process_speed=0.7)],
        process__passage=dict(speed=0.9, before=5, after=9),
        process__joint_break=dict(chance=0.4, length=30, repair=90, scrap=0),
    )


def process():
    yield line(
        "starved, and the lost metres of one stop",
        {
            "changes": {
                "1": {
                    "outcome": "STOPPED",
                    "starvedStops": 1,
                    "lostMetres": 800 / 3,
                    "margin": -200,
                    "cause": "usual joint too long",
                },
            },
        },
        "1000 m last 500 s, the joint takes 600 s: from 1500 s; restart at 100 m (10 % of the"
        " capacity), 33.3 s after T2; (100 + 33.3) s at 2 m/s",
        change__join=[dict(name="weld", time=600)],
        run={"changes": 1},
    )
    yield line(
        "slowed, and what would have been left without a stop",
        {
            "changes": {
                "1": {
                    "outcome": "SLOWED",
                    "margin": -200,
                    "marginToSlowing": -500,
                    "marginWithoutStop": 50,
                    "lostMetres": 425,
                    "cause": "usual joint too long",
                }
            }
        },
        "300 m are reached after 350 s, the other 250 s at 1 m/s leave 50 m; full speed from 400 m on, 350 m at 3 - 1 m/s: 175 s;"
        " lost (250 + 175) s at 1 m/s. The longest joint without a stop: 700/2 + 300/1 = 650 s",
        process__slowing=dict(speed=1, level=300),
        change__join=[dict(name="weld", time=600)],
        run={"changes": 1},
    )
    yield from causes()
    yield ramps(
        "starved stops with a restart delay",
        accumulator__form=dict(kind="direct", capacity=103),
        process__restart_delay={"triangular": [2, 9, 31]},
    )
    yield ramps(
        "slowing",
        accumulator__form=dict(kind="direct", capacity=103),
        process__slowing=dict(speed=0.61, level=47.3),
    )
    yield ramps(
        "slowing until nearly full",
        accumulator__form=dict(kind="direct", capacity=103),
        process__slowing=dict(speed=0.61, level=47.3, resume_level=97.3),
    )
    yield ramps(
        "own stops, held as starved",
        accumulator__form=dict(kind="direct", capacity=103),
        process__own_stops=dict(running={"exponential": 110}, standing={"uniform": [11, 73]}),
        process__restart_delay={"uniform": [1, 9]},
    )
    yield ramps("creep", entry__creep=dict(speed=0.41, length=7.3), accumulator__form=dict(kind="direct", capacity=160))
    yield ramps(
        "fill-rate limit, reserve, overtravel",
        accumulator__fill_rate_limit=0.37,
        accumulator__reserve=9.1,
        accumulator__overtravel_allowance=1.7,
        entry__deceleration=0.11,
        process__deceleration=0.39,
        process__own_stops=dict(running={"exponential": 170}, standing={"uniform": [11, 73]}),
    )
    yield ramps(
        "mix by weight, mass with inner diameter, diameters",
        kinds=[
            coil(1, thickness=0.0031, width=1.27) | dict(size={"mass": {"uniform": [9000, 14000]}, "inner_diameter": 0.508}),
            coil(1, thickness=0.0017, width=0.93) | dict(size=dict(outer_diameter=1.21, inner_diameter=0.508, winding_factor=0.97), process_speed=1.27),
        ],
        supply=dict(kind="mix", shares=[3, 1.3]),
    )
    yield ramps("first coil changes left out", leave_out=7)
    yield ramps("a given time", run={"seconds": 3217.3})


def causes():
    """A full accumulator bears 500 s."""
    yield line(
        "cause: the accumulator was not full",
        {
            "changes": {
                "1": {"outcome": "RAN_THROUGH", "margin": 40},
                "2": {"margin": -820, "cause": "accumulator not full"},
            },
        },
        "480 s draw 960 m; the coil of 300 m lasts 100 s and leaves 140 m at T0",
        kinds=[coil(), coil(300)],
        change__join=[dict(name="weld", time=480)],
        process__path=10,
        run={"changes": 2},
    )
    yield line(
        "cause: an occasional element",
        {"changes": {"2": {"cause": "occasional element", "causeElement": "join/inspect"}}},
        "550 s, 50 too long; the inspection takes 150",
        change__join=[dict(name="weld", time=400), dict(name="inspect", time=150, every=2)],
        run={"changes": 2},
    )
    yield line(
        "cause: the joint was made again",
        {"changes": {"2": {"cause": "joint made again", "passes": 2}}},
        "300 s twice, 100 too long",
        change__join=[dict(name="weld", time=300)],
        change__reject={"every": 2},
        run={"changes": 2},
    )
    yield line(
        "cause: both waits together",
        {
            "changes": {
                "1": {"cause": "both waits", "waitingForPreparation": 150, "waitingForPeople": 150, "released": 1710},
            },
        },
        "nobody until 1150 s; 10 + 400 s of work; 710 s are 210 too long, neither wait alone is as long",
        change__shifts=[dict(seconds=9000, crew=1, breaks=[dict(begin=900, length=250, crew=0)])],
        change__prepare=[load(150)],
        change__tail=[dict(name="shear", time=10)],
        change__join=[dict(name="weld", time=400)],
        run={"changes": 1},
    )
    yield line(
        "cause: several together",
        {"changes": {"2": {"cause": "several together"}}},
        "430 + 100 + 100 s are 130 too long, neither element alone is as long",
        change__join=[
            dict(name="weld", time=430),
            dict(name="a", time=100, every=2),
            dict(name="b", time=100, every=2),
        ],
        run={"changes": 2},
    )
    yield line(
        "cause: not the joint",
        {"changes": {"1": {"cause": "not the joint", "outcome": "STOPPED", "margin": 50, "levelAtStart": 1000}}},
        "1 m/s for 850 s, and 100 m until the entry has 1 m/s again at 0.005 m/s2, leave 50 m; but 150 s after T2, with 56.25 m and"
        " the entry at 0.75 m/s, the joint brings a coil at 2 m/s, and 1.25^2 / 0.01 = 156.25 m would be needed",
        kinds=[coil(process_speed=1), coil()],
        change__join=[dict(name="weld", time=850)],
        entry__acceleration=0.005,
        run={"changes": 1},
    )


def one_strip():
    plain = dict(practice="join without accumulator", accumulator=dict(form=dict(kind="none")))
    yield line(
        "joined without an accumulator",
        {
            "changes": {
                "1": {"start": 1000, "released": 1100, "lostMetres": 214, "outcome": "STOPPED", "starvedStops": 1},
            },
        },
        "100 s joint and 7 s restart delay at 2 m/s",
        **plain,
        process__restart_delay=7,
        run={"changes": 1},
    )
    yield ramps(
        "joined without an accumulator, passage, break, own stops, creep",
        **plain,
        process__passage=dict(speed=0.7, before=11.3, after=7.9),
        process__joint_break=dict(chance=0.5, length=31, repair=77, scrap=2),
        process__own_stops=dict(running={"exponential": 137}, standing={"uniform": [11, 73]}),
        entry__creep=dict(speed=0.33, length=11.7),
        process__restart_delay={"uniform": [1, 9]},
    )
    yield ramps(
        "joined without an accumulator, people",
        **plain,
        change__prepare=[load(700, put_down=False), dict(name="open", time=41)],
        change__tail=[dict(name="shear", time=3)],
    )
    yield line(
        "threaded anew, one uncoiler",
        {"changes": {"1": {"waitingForPreparation": 100, "released": 1400, "waitingForPeople": 0, "lostMetres": 800}}},
        "100 s to prepare, 300 s to thread, 2 m/s",
        practice="rethread",
        accumulator=dict(form=dict(kind="none")),
        change=dict(crew=1, prepare=[load(100)], tail=[], join=[], rethread=300),
        run={"changes": 1},
    )
    yield ramps(
        "threaded anew, own stops, held element, two uncoilers",
        practice="rethread",
        accumulator=dict(form=dict(kind="none")),
        change=dict(
            crew=1,
            prepare=[load({"weibull": [2.1, 193]}, put_down=False), dict(name="open", time=41)],
            tail=[],
            join=[],
            rethread={"triangular": [210, 400, 870]},
        ),
        process__own_stops=dict(running={"exponential": 91}, standing={"uniform": [11, 73]}),
    )


def refused():
    yield line("refused: restart level at the stop level", process__restart_level=0, entry__acceleration=0.5)
    yield line("refused: two conditions on one element", change__join=[dict(name="weld", time=1, every=2, chance=0.5)])
    yield line(
        "refused: a travel table with one thickness twice",
        change__join=[dict(name="weld", travel_speed=[[0.001, 1], [0.001, 2]])],
    )
    yield line(
        "refused: breaks that overlap",
        change__shifts=[
            dict(seconds=900, crew=1, breaks=[dict(begin=10, length=60, crew=0), dict(begin=50, length=60, crew=0)]),
        ],
    )
    yield line(
        "refused: a break that leaves its shift",
        change__shifts=[dict(seconds=900, crew=1, breaks=[dict(begin=880, length=60, crew=0)])],
    )
    yield line(
        "refused: an element with more people than there are",
        change__join=[dict(name="weld", time=1, people=2)],
    )
    yield line("refused: passage as fast as the line", process__passage=dict(speed=2, before=1, after=1))
    yield line("refused: a break chance of 1", process__joint_break=dict(chance=1, length=1, repair=1, scrap=0))


def all_lines():
    for group in (people, shifts, elements, joint_on_its_way, process, one_strip, refused):
        yield from group()


if __name__ == "__main__":
    for made in all_lines():
        print(json.dumps(made))
