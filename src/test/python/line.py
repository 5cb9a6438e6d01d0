"""What both kinds of line share: the clock, the own stops, the coils on their way, what a coil change begins and ends.

A line moves in one process. It plans, looks for the next crossing, waits for it or for somebody's interruption, moves on to
that instant, lets the crossing happen, and plans again. Between two events all accelerations are constant.
"""

from collections import deque
from math import inf

from simpy import Event, Interrupt

from book import SLOWED, STOPPED, Book, area_above_zero
from coil_change import CoilChangeWork
from crossings import first_rise
from description import Coils, capacity, or_infinite

MOST_EVENTS_AT_ONCE = 1000


class RunIsOver(Exception):
    """The run ends where the coil change after the last begins."""


class Line:
    def __init__(self, env, case, luck):
        self.env = env
        self.luck = luck
        self.coils = Coils(case["kinds"], luck)
        self.capacity = capacity(case["accumulator"]["form"])
        self.last_change = case["run"].get("changes", inf)
        self.end = Event(env)
        self.book = Book(self.capacity, or_infinite(case["accumulator"]["overtravel_allowance"]), case["leave_out"])

        process = case["process"]
        self.line_speed = process["speed"]
        # A new head is threaded through the process section; a joint has yet to reach it.
        self.process_path = 0.0 if case["practice"] == "rethread" else process["path"]
        self.spoilt_per_stop = process["spoilt_per_stop"]
        self.has_own_stops = process["own_stops"]
        creep = None if case["practice"] == "rethread" else case["entry"]["creep"]
        self.creep_speed = creep["speed"] if creep else 0.0
        self.creep_length = creep["length"] if creep else -inf
        self.uncoiler_path = case["entry"]["uncoiler_path"]
        self.top_speed = case["entry"]["top_speed"]

        self.moved_to = 0.0  # the time of the state below
        self.disturbances = 0
        self.processed = 0.0
        self.running = 1  # number of the running coil
        self.remaining = self.coils[1].usable
        self.uncoiler_freed = False  # by the running coil
        self.in_process = self.coils[1]
        self.on_the_way = deque()  # (metres processed at which it arrives, coil)
        self.rated = self.rated_speed(self.coils[1])
        self.v = self.rated  # process speed
        self.a = 0.0  # its acceleration
        self.starved = False
        self.slowed = False
        self.losing = False
        # What begins before the first coil change appears in the totals only.
        self.starving_counts = self.slowing_counts = self.loss_counts = False
        self.own_stop = False
        self.own_stop_timed = False
        self.until_own_stop = luck.draw("own running time") if self.has_own_stops else inf

        needed = self.to_stop_in()
        if self.remaining < needed:
            raise ValueError(f"coil 1 has {self.remaining} m, and stopping takes {needed} m")

        self.work = CoilChangeWork(env, case, self.coils, luck, self.book)
        self.motion = env.process(self.moving())
        self.leave_uncoiler_if_short()

    def rated_speed(self, coil):
        return self.line_speed if coil.own_speed is None else coil.own_speed

    # ---- the clock

    def moving(self):
        events_at_once, instant = 0, 0.0
        while True:
            events_at_once = events_at_once + 1 if self.env.now == instant else 0
            instant = self.env.now
            if events_at_once > MOST_EVENTS_AT_ONCE:
                raise RuntimeError(f"events without end at {instant} s: {vars(self)}")
            self.plan()
            # The first of those that come at one instant: their order is the order in which they are offered.
            wait, happen = min(self.crossings(), key=lambda crossing: crossing[0], default=(inf, None))
            planned = self.disturbances
            try:
                yield self.env.timeout(wait) if wait < inf else Event(self.env)
            except Interrupt:
                continue
            if self.disturbances == planned:
                self.move(wait)
                self.moved_to = self.env.now
                try:
                    happen()
                except RunIsOver:
                    self.end.succeed()
                    return

    def disturb(self, change):
        """Somebody else's doing: move on to the present instant, let ``change`` happen, and have the motion planned anew."""
        self.move(self.env.now - self.moved_to)
        self.moved_to = self.env.now
        self.disturbances += 1
        change()
        if self.motion.is_alive:
            self.motion.interrupt()

    def after(self, delay, change):
        """A timer."""
        yield self.env.timeout(delay)
        self.disturb(change)

    # ---- the process section's own stops

    def count_down(self, dt):
        if self.v > 0 or self.a > 0:
            self.until_own_stop -= dt

    def own_stop_crossing(self):
        if self.has_own_stops and not self.own_stop and (self.v > 0 or self.a > 0):
            yield max(0.0, self.until_own_stop), self.begin_own_stop

    def begin_own_stop(self):
        self.own_stop = True
        self.own_stop_timed = False
        self.until_own_stop = inf
        self.book.add("downtimes", 1)

    def time_own_stop(self):
        """An own stop lasts its time from when the process came to rest."""
        if self.own_stop and not self.own_stop_timed and self.v == 0:
            self.own_stop_timed = True
            self.env.process(self.after(self.luck.draw("own standing time"), self.end_own_stop))

    def end_own_stop(self):
        self.own_stop = False
        self.until_own_stop = self.luck.draw("own running time")

    # ---- what is lost

    def begin_starving(self, counted):
        self.starved = self.losing = True
        self.starving_counts = bool(self.book.changes)
        self.loss_counts = self.loss_counts or self.starving_counts
        if counted:
            self.book.starved_stop()
        self.book.suffers(STOPPED)

    def begin_slowing(self):
        self.slowed = self.losing = True
        self.slowing_counts = bool(self.book.changes)
        self.loss_counts = self.loss_counts or self.slowing_counts
        self.book.add("slowings", 1)
        self.book.suffers(SLOWED)

    def stop_losing_at_speed(self):
        if self.losing and not self.starved and not self.slowed and self.v >= self.rated:
            self.losing = self.loss_counts = False

    def came_to_rest(self):
        if self.spoilt_per_stop > 0:
            self.book.scrap(self.spoilt_per_stop, self.in_process.mass_per_metre)

    def move_process(self, dt):
        """Book the process over ``dt``; returns the metres processed."""
        metres = dt * (self.v + self.a * dt / 2)
        self.processed += metres
        self.book.add("processedMetres", metres)
        self.book.add("processedKilograms", metres * self.in_process.mass_per_metre)
        self.book.add("ratedMetres", self.rated * dt)
        if self.losing and not self.own_stop:
            self.book.lost(area_above_zero(self.rated - self.v, -self.a, dt), self.rated, self.loss_counts)
        if self.own_stop:
            self.book.add("downtimeSeconds", dt)
        elif self.starved and self.v == 0 and self.a == 0:
            self.book.add("starvedSeconds", dt)
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

    def joint_arrival_crossing(self):
        if self.on_the_way:
            ahead = self.on_the_way[0][0] - self.processed
            yield (0.0 if ahead <= 0 else first_rise(-ahead, self.v, self.a / 2)), self.joint_arrives

    def joint_arrives(self):
        self.in_process = self.on_the_way.popleft()[1]
        self.rated = self.rated_speed(self.in_process)

    def begin_change(self, level, stop_level):
        if len(self.book.changes) == self.last_change:
            raise RunIsOver
        self.book.begin_change(
            self.env.now, self.coils[self.running], self.coils[self.running + 1], level, stop_level
        )

    def stop_tail(self):
        self.remaining = 0.0
        self.book.tail_stopped(self.env.now)
        self.work.joint(self.running, lambda passes, waiting: self.disturb(lambda: self.release(passes, waiting)))
        if not self.uncoiler_freed:
            self.free_uncoiler()

    def release(self, passes, waiting):
        old = self.coils[self.running]
        self.running += 1
        new = self.coils[self.running]
        self.book.released(self.env.now, passes, waiting)
        self.remaining = new.usable - (passes - 1) * (old.tail_crop + new.head_crop)
        if not self.remaining > 0:
            raise ValueError(f"coil {self.running}: usable length {self.remaining} m after {passes} passes")
        self.on_the_way.append((self.processed + self.stored() + self.process_path, new))
        self.leave_uncoiler_if_short()
        self.released()

    # ---- the result

    def result(self):
        rows = self.book.rows(self.last_change)
        return dict(
            changes=rows,
            totals=self.book.summary(self.env.now, rows),
            work=self.book.work,
            balance=self.balance(),
        )
