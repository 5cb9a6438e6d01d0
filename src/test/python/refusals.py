"""What is refused before anything runs (model, section 13)."""

from math import inf

from description import capacity, fill_rate_limit, or_infinite


def refusals(case):
    """What is wrong with a described line, in words; empty when it may run."""
    return [words for is_wrong, words in checks(case) if is_wrong]


def checks(case):
    entry, accumulator, process, change = (case[part] for part in ("entry", "accumulator", "process", "change"))
    one_strip = case["practice"] != "join"
    rethreads = case["practice"] == "rethread"
    speeds = [kind.get("process_speed") or process["speed"] for kind in case["kinds"]]
    fastest, slowest = max(speeds), min(speeds)
    down = or_infinite(process.get("deceleration"))
    for part in (entry, process):
        for what in ("acceleration", "deceleration"):
            yield not or_infinite(part.get(what)) > 0, f"{what} is to be above 0"
    for part, what in (
        (process, "path"),
        (process, "spoilt_per_stop"),
        (process, "cut_per_joint"),
        (entry, "uncoiler_path"),
        (accumulator, "reserve"),
        (accumulator, "overtravel_allowance"),
        (process.get("passage") or {}, "before"),
        (process.get("passage") or {}, "after"),
        (process.get("joint_break") or {}, "length"),
        (process.get("joint_break") or {}, "scrap"),
    ):
        yield (part.get(what) or 0) < 0, f"{what} is below 0"
    yield entry["uncoilers"] < 1, "fewer than one uncoiler"
    if not one_strip:
        yield from of_accumulator(entry, accumulator, process, fastest, down)
    creep = entry.get("creep")
    if creep and not rethreads:
        slows = min(down, or_infinite(entry.get("deceleration"))) if one_strip else or_infinite(entry.get("deceleration"))
        yield creep["length"] < creep["speed"] ** 2 / (2 * slows), "creep length too short to stop in"
        yield creep["speed"] >= slowest, "creep speed not below the slowest coil's"
    yield from of_joint(process, fastest, rethreads)
    yield from of_people(change)
    for part in ("prepare", "tail", "join"):
        for element in change.get(part) or []:
            yield from of_element(element)
    chance = (change.get("reject") or {}).get("chance", 0)
    yield not 0 <= chance < 1, f"reject chance {chance}"


def of_accumulator(entry, accumulator, process, fastest, down):
    form = accumulator["form"]
    held = capacity(form)
    stop_level = (accumulator.get("reserve") or 0) + fastest**2 / (2 * down)
    yield held < stop_level, f"capacity {held} m below the stop level {stop_level} m"
    yield not fill_rate_limit(accumulator) > 0, "fill-rate limit is to be above 0"
    yield form["kind"] == "free loop" and form["greatest_sag"] < form["least_sag"], "greatest sag below the least"
    yield entry["top_speed"] < fastest, f"entry speed {entry['top_speed']} m/s below the coil's {fastest} m/s"
    restart = process.get("restart_level")
    restart = min(held, stop_level + 0.1 * held) if restart is None else restart
    yield restart > held, "restart level above the capacity"
    yield restart < stop_level, "restart level below the stop level"
    ramps = or_infinite(entry.get("acceleration")) < inf
    yield restart == stop_level and ramps, "restart level at the stop level"
    slowing = process.get("slowing")
    if slowing:
        level, speed = slowing["level"], slowing["speed"]
        resume = slowing.get("resume_level")
        resume = min(held, level + 0.1 * held) if resume is None else resume
        yield level >= held, "level of slowing not below the capacity"
        yield level <= stop_level, "level of slowing not above the stop level"
        yield resume > held, "resume level above the capacity"
        yield resume <= level, "resume level not above the level of slowing"
        yield not 0 < speed < fastest, f"slow speed {speed} m/s"


def of_joint(process, fastest, rethreads):
    passage, break_of = process.get("passage"), process.get("joint_break")
    if passage:
        yield rethreads, "joint passage with rethreading"
        yield not 0 < passage["speed"] < fastest, f"passage speed {passage['speed']} m/s"
    if break_of:
        yield rethreads, "joint break with rethreading"
        yield not 0 <= break_of["chance"] < 1, f"break chance {break_of['chance']}"


def of_people(change):
    shifts = change.get("shifts") or [dict(seconds=inf, crew=change["crew"])]
    largest = max(shift["crew"] for shift in shifts)
    for shift in shifts:
        yield shift["crew"] < 1, "crew below 1"
        yield not shift["seconds"] > 0, "a shift without hours"
        end = 0.0
        for pause in sorted(shift.get("breaks") or [], key=lambda pause: pause["begin"]):
            yield pause["begin"] < end, "breaks overlap, or begin before their shift"
            yield pause["length"] < 0, "a break of negative length"
            yield pause["crew"] < 0, "a break with a crew below 0"
            end = pause["begin"] + pause["length"]
        yield end > shift["seconds"], "a break leaves its shift"
    for part in ("prepare", "tail", "join"):
        for element in change.get(part) or []:
            yield element.get("people", 1) > largest, f"{part} needs more people than there are"
            yield element.get("people", 1) < 1, f"{part} needs nobody"


def of_element(element):
    conditions = [what for what in ("every", "chance", "when") if element.get(what) is not None]
    yield len(conditions) > 1, f"two conditions on one element: {conditions}"
    speed = element.get("travel_speed")
    if isinstance(speed, list):
        yield any(b[0] <= a[0] for a, b in zip(speed, speed[1:])), "rows of a travel table are to rise strictly"
        yield any(not row[1] > 0 for row in speed), "travel speed is to be above 0"
    elif speed is not None:
        yield not speed > 0, "travel speed is to be above 0"
