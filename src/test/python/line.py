"""What both kinds of line share: the clock, what holds the process, the coils, what a coil change begins and ends.

A line moves in one process. It plans, looks for the next crossing, waits for it, moves on to that instant, lets the crossing
happen and everybody act who waited for it, and plans again. Between two events all accelerations are constant.
"""

from math import inf, nan

from simpy import Event

from book import NOT_FOR_THE_READER, RAN_THROUGH, SLOWED, STOPPED, Book
from causes import cause
from coil_change import CoilChangeWork
from crossings import first_fall
from description import Coils, capacity, or_infinite
from distributions import Distribution
from joints import Joints
from losses import Losses
from shifts import Roster
from timers import MOTION, Timers, later

MOST_EVENTS_AT_ONCE = 1000
MOST_STARVED_STOPS = 1000


class RunIsOver(Exception):
    """The run ends where the coil change after the last begins."""


class OwnStops:
    """The process section's own stops, numbered from 1; the clock runs while the process does."""

    def __init__(self, given, numbers):
        self.numbers = numbers
        self.number = 0
        self.running = Distribution(given["running"])
        self.standing = Distribution(given["standing"])
        self.start_clock()

    def start_clock(self):
        self.number += 1
        self.left = self.draw(self.running, "own-stop/running")

    def standing_time(self):
        return self.draw(self.standing, "own-stop/standing")

    def draw(self, distribution, source):
        return distribution.value(self.numbers.uniform(source, self.number), f"{source} {self.number}")


class Line:
    def __init__(self, env, case, numbers):
        self.env = env
        self.numbers = numbers
        self.timers = Timers(env)
        self.coils = Coils(case, numbers)
        self.capacity = capacity(case["accumulator"]["form"])
        self.last_change = case["run"].get("changes", inf)
        self.end = Event(env)
        self.roster = Roster(case["change"]["crew"], case["change"].get("shifts"))
        allowance = or_infinite(case["accumulator"].get("overtravel_allowance"))
        self.book = Book(self.capacity, allowance, case.get("leave_out") or 0, self.roster)

        process = case["process"]
        self.line_speed = process["speed"]
        rethreads = case["practice"] == "rethread"
        # A new head is threaded through the process section; a joint has yet to reach it.
        self.process_path = 0.0 if rethreads else process.get("path") or 0.0
        self.spoilt_per_stop = process.get("spoilt_per_stop") or 0.0
        self.cut_per_joint = process.get("cut_per_joint") or 0.0
        self.restart_delay = Distribution(process.get("restart_delay"))
        self.restarts = {}  # how often the delay was drawn, by coil change
        creep = None if rethreads else case["entry"].get("creep")
        self.creep_speed = creep["speed"] if creep else 0.0
        self.creep_length = creep["length"] if creep else -inf
        self.uncoiler_path = case["entry"].get("uncoiler_path") or 0.0
        self.top_speed = case["entry"]["top_speed"]

        self.moved_to = 0.0  # the time of the state below
        self.processed = 0.0
        self.running = 1  # number of the running coil
        self.remaining = self.coils[1].usable
        self.uncoiler_freed = False  # by the running coil
        self.in_process = self.coils[1]
        self.joints = Joints(self, process, numbers)
        self.rated = self.rated_speed(self.coils[1])
        self.v = self.rated  # process speed
        self.a = 0.0  # its acceleration
        self.starved = False
        self.slowed = False
        # What begins before the first coil change appears in the totals only.
        self.starving_counts = self.slowing_counts = False
        given = process.get("own_stops")
        self.own_stops = OwnStops(given, numbers) if given else None
        self.own_stop = self.own_stop_timed = False
        given = process.get("joint_break")
        self.repair = Distribution(given["repair"]) if given else None
        self.scrap_of_break = (given.get("scrap") or 0.0) if given else 0.0
        self.break_under_way = self.break_timed = False
        self.broken_joint = None  # the coil change that made it
        self.losses = Losses(self, self.book)

        needed = self.to_stop_in()
        if self.remaining < needed:
            raise ValueError(f"coil 1 has {self.remaining} m, and stopping takes {needed} m")

        self.work = CoilChangeWork(env, case, self)
        env.process(self.moving())
        self.leave_uncoiler_if_short()

    def rated_speed(self, coil):
        return self.line_speed if coil.own_speed is None else coil.own_speed

    # ---- the clock

    def moving(self):
        events_at_once, instant = 0, 0.0
        yield later(self.env, MOTION)
        while True:
            events_at_once = events_at_once + 1 if self.env.now == instant else 0
            instant = self.env.now
            if events_at_once > MOST_EVENTS_AT_ONCE:
                raise RuntimeError(f"events without end at {instant} s: {vars(self)}")
            self.plan()
            # Whoever was woken by an entry that is matched now may set a timer.
            yield later(self.env, MOTION)
            # The first of those that come at one instant: their order is the order in which they are offered.
            wait, happen = min(self.crossings(), key=lambda crossing: crossing[0], default=(inf, None))
            if wait == inf:
                raise RuntimeError(f"nothing happens any more at {instant} s: {vars(self)}")
            yield later(self.env, MOTION, wait)
            self.move(wait)
            self.moved_to = self.env.now
            try:
                happen()
            except RunIsOver:
                self.end.succeed()
                return
            # Whoever waited for this acts before plans are made anew.
            yield later(self.env, MOTION)

    def after(self, delay, change):
        """Let ``change`` happen after a time."""
        self.timers.after(delay).event.callbacks.append(lambda _: change())

    # ---- what stops the process, strip or no strip

    def is_held(self):
        return self.starved or self.own_stop or self.break_under_way

    def count_down(self, dt):
        if self.own_stops and (self.v > 0 or self.a > 0):
            self.own_stops.left -= dt

    def own_stop_crossing(self):
        if self.own_stops and not self.own_stop and (self.v > 0 or self.a > 0):
            yield max(0.0, self.own_stops.left), self.begin_own_stop

    def begin_own_stop(self):
        self.own_stop = True
        self.own_stop_timed = False
        self.own_stops.left = inf
        self.book.add("ownStops", 1)

    def joint_breaks(self, change):
        if self.break_under_way:
            return
        self.break_under_way = True
        self.break_timed = False
        self.broken_joint = change
        self.losses.break_begins()
        self.book.add("breaks", 1)
        self.book.spoilt("breakScrapMetres", self.scrap_of_break, self.in_process.mass_per_metre)

    def time_stops(self):
        """An own stop and the repair of a break last their time from when the process came to rest."""
        if self.v > 0:
            return
        if self.own_stop and not self.own_stop_timed:
            self.own_stop_timed = True
            self.after(self.own_stops.standing_time(), self.end_own_stop)
        if self.break_under_way and not self.break_timed:
            self.break_timed = True
            change = self.broken_joint
            time = self.repair.value(self.numbers.uniform("break/repair", change), f"repair, change {change}")
            self.after(time, self.end_break)

    def end_own_stop(self):
        self.own_stop = False
        self.own_stops.start_clock()
        self.let_go()

    def end_break(self):
        self.break_under_way = False
        self.let_go()

    def let_go(self):
        """The last own stop or break has ended: the process may be held for want of strip."""
        if not self.is_held() and self.lacks_strip():
            self.begin_starving(counted=False)

    def draw_restart_delay(self):
        change = self.book.latest["number"] if self.book.latest else 0
        again = self.restarts.get(change, 0)
        self.restarts[change] = again + 1
        return self.restart_delay.value(self.numbers.uniform("restart", change, again), f"restart, change {change}")

    # ---- what is lost

    def begin_starving(self, counted):
        self.starved = True
        self.starving_counts = self.book.latest is not None
        self.losses.strip_lacks()
        if counted:
            self.book.starved_stop(MOST_STARVED_STOPS)
        self.book.suffers(STOPPED)

    def begin_slowing(self):
        self.slowed = True
        self.slowing_counts = self.book.latest is not None
        self.losses.strip_lacks()
        self.book.add("slowings", 1)
        self.book.suffers(SLOWED)

    def came_to_rest(self):
        if self.spoilt_per_stop > 0:
            self.book.spoilt("spoiltMetres", self.spoilt_per_stop, self.in_process.mass_per_metre)

    def move_process(self, dt):
        """Book the process over ``dt``; returns the metres processed."""
        metres = dt * (self.v + self.a * dt / 2)
        self.processed += metres
        self.book.add("processedMetres", metres)
        self.book.add("processedKilograms", metres * self.in_process.mass_per_metre)
        self.book.add("ratedMetres", self.rated * dt)
        self.losses.over(dt)
        self.count_down(dt)
        return metres

    # ---- coils

    def leave_uncoiler_if_short(self):
        """A coil no longer than the path to the joiner counts as gone when it begins to run."""
        self.uncoiler_freed = self.uncoiler_path > 0 and self.remaining <= self.uncoiler_path
        if self.uncoiler_freed:
            self.work.tail_has_left(self.running)

    def free_uncoiler(self):
        self.uncoiler_freed = True
        self.work.tail_has_left(self.running)

    def uncoiler_crossing(self):
        """The tail leaves the uncoiler: when so much remains as the path to the joiner, at the latest in the joiner."""
        if self.uncoiler_freed:
            return
        if self.tail_is_in_joiner():
            yield 0.0, self.free_uncoiler
        elif self.uncoiler_path > 0:
            v, a = self.entry_motion()
            yield first_fall(self.remaining - self.uncoiler_path, -v, -a / 2), self.free_uncoiler

    def coil_arrives(self, coil):
        self.in_process = coil
        self.rated = self.rated_speed(coil)

    def begin_change(self, level, stop_level):
        if len(self.book.changes) == self.last_change:
            raise RunIsOver
        self.book.begin_change(
            self.env.now,
            self.coils[self.running],
            self.coils[self.running + 1],
            level,
            stop_level,
            self.remaining,
            self.rated,
        )
        self.roster.freeze()

    def stop_tail(self):
        self.remaining = 0.0
        self.book.tail_stopped(self.env.now)
        self.work.joint(self.running)

    def release(self, passes, waits):
        """The joint is released; people go before anything else begins."""
        self.roster.thaw()
        old = self.coils[self.running]
        change = self.running
        tail_has_left = self.uncoiler_freed
        self.running += 1
        new = self.coils[self.running]
        self.book.released(self.env.now, passes, waits)
        if self.cut_per_joint > 0:
            half = self.cut_per_joint / 2
            self.book.spoilt("cutMetres", half, old.mass_per_metre)
            self.book.spoilt("cutMetres", half, new.mass_per_metre)
        self.remaining = new.usable - (passes - 1) * (old.tail_crop + new.head_crop)
        if not self.remaining > 0:
            raise ValueError(f"coil {self.running}: usable length {self.remaining} m after {passes} passes")
        self.joints.add(change, self.processed + self.stored() + self.process_path, new)
        if not tail_has_left:
            self.work.tail_has_left(change)  # a joint that took no time was released before the tail was seen to leave
        self.leave_uncoiler_if_short()
        self.released()

    # ---- the result

    def result(self):
        rows = self.book.rows(self.last_change)
        for row in rows:
            self.give_cause(row)
        result = dict(
            changes=[{key: of for key, of in row.items() if key not in NOT_FOR_THE_READER} for row in rows],
            totals=self.book.summary(self.env.now, rows),
            shifts=self.book.by_shift(self.env.now, rows),
            causes=causes_of(rows),
            work=self.book.work,
            balance=self.balance(),
        )
        return result

    def give_cause(self, row):
        """Without an accumulator every change stops, and margins do not apply."""
        row["stripDrawn"] = row["levelAtStart"] - row["lowestLevel"]
        row.setdefault("margin", nan)
        row.setdefault("marginToSlowing", nan)
        row.setdefault("marginWithoutStop", nan)
        failed = row["outcome"] != RAN_THROUGH and row["margin"] == row["margin"]
        row["cause"], row["causeElement"] = cause(row, self.capacity) if failed else (None, None)


def causes_of(rows):
    """Changes, starved stops and lost time of the failed changes by cause and named element."""
    found = {}
    for row in rows:
        if row["cause"]:
            key = (row["cause"], row["causeElement"])
            one = found.setdefault(key, dict(cause=key[0], element=key[1], changes=0, starvedStops=0, lostTime=0.0))
            one["changes"] += 1
            one["starvedStops"] += row["starvedStops"]
            one["lostTime"] += row["lostTime"]
    return sorted(found.values(), key=lambda one: (-one["changes"], one["cause"], one["element"] or ""))

