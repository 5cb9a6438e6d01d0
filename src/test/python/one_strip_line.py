"""A line without an accumulator: entry and process are one strip with one speed, joined or threaded anew."""

from math import inf, sqrt

from crossings import first_fall
from description import or_infinite
from line import Line


class OneStripLine(Line):
    def __init__(self, env, case, numbers):
        entry, process = case["entry"], case["process"]
        self.rethreads = case["practice"] == "rethread"
        self.up = or_infinite(process.get("acceleration"))
        self.down = or_infinite(process.get("deceleration"))
        if not self.rethreads:
            self.up = min(self.up, or_infinite(entry.get("acceleration")))
            self.down = min(self.down, or_infinite(entry.get("deceleration")))
        self.strip_down = self.down
        self.entry_top_speed = entry["top_speed"]
        super().__init__(env, case, numbers)
        self.changing = False  # from the start of the coil change until the joint is released
        self.last_ramp = False  # to rest with the tail in its place
        self.standing = False
        self.capacity = 0.0

    def rated_speed(self, coil):
        rated = super().rated_speed(coil)
        return rated if self.rethreads else min(rated, self.entry_top_speed)

    def to_stop_in(self):
        """What a coil takes to come to rest from the rated speed (m)."""
        return max(0.0, self.creep_length) + (self.rated**2 - self.creep_speed**2) / (2 * self.down)

    # ---- planning

    def plan(self):
        self.losses.end_at_speed()
        self.a = 0.0
        if not self.standing:
            self.go(self.wanted())
        self.losses.end_at_speed()
        self.time_stops()

    def wanted(self):
        if self.last_ramp or self.own_stop or self.break_under_way:
            return 0.0
        rated = min(self.rated, self.joints.passage["speed"]) if self.joints.in_passage() else self.rated
        if self.changing:
            return min(rated, self.creep_speed)
        if self.starved:
            return 0.0
        return min(rated, self.creep_speed) if self.remaining <= self.creep_length else rated

    def go(self, target):
        self.target = target
        if self.v > target:
            if self.down == inf:
                self.arrive(target)
            else:
                self.a = -self.down
        elif self.v < target:
            if self.up == inf:
                self.v = max(self.v, min(target, self.highest_jump()))
            else:
                self.a = self.up

    def highest_jump(self):
        """A speed that rises at once stops where a ramp, however steep, would have met the tail."""
        if self.down == inf:
            return inf
        left = self.remaining - max(0.0, self.creep_length)
        if left > 0 and not self.changing:
            return sqrt(self.creep_speed**2 + 2 * self.down * left)
        return sqrt(2 * self.down * self.remaining)

    def arrive(self, speed):
        self.v = speed
        if speed == 0:
            self.came_to_rest()

    # ---- moving on

    def move(self, dt):
        if dt <= 0:
            return
        metres = self.move_process(dt)
        self.book.add("enteredMetres", metres)
        self.remaining -= metres
        self.v += self.a * dt

    def balance(self):
        return 0.0

    def stored(self):
        return 0.0

    # ---- what happens next

    def crossings(self):
        return [
            *self.ramp_crossing(),
            *self.tail_crossings(),
            *self.timers.crossing(),
            *self.own_stop_crossing(),
            *self.joints.crossings(),
            *self.change_crossing(),
            *self.uncoiler_crossing(),
        ]

    def ramp_crossing(self):
        if self.a != 0:
            target = self.target
            yield max(0.0, (target - self.v) / self.a), lambda: self.arrive(target)

    def tail_crossings(self):
        if self.standing:
            return
        if self.last_ramp:
            if self.v == 0:
                yield 0.0, self.stand
        elif self.changing:
            yield self.tail_ramp_crossing(0.0, 0.0), self.begin_last_ramp
        elif self.remaining > self.creep_length > 0:
            yield first_fall(self.remaining - self.creep_length, -self.v, -self.a / 2), self.reach_creep_length

    def begin_last_ramp(self):
        self.last_ramp = True

    def reach_creep_length(self):
        self.remaining = self.creep_length

    def stand(self):
        self.standing = True
        self.stop_tail()

    def change_crossing(self):
        if self.changing:
            return
        if self.remaining <= self.creep_length:
            if self.v >= self.creep_speed:
                yield 0.0, self.run_out
            elif self.a > 0:
                yield (self.creep_speed - self.v) / self.a, self.reach_creep_speed
            yield self.tail_ramp_crossing(0.0, 0.0), self.run_out_below_creep
        else:
            yield self.tail_ramp_crossing(max(0.0, self.creep_length), self.creep_speed), self.run_out

    def tail_ramp_crossing(self, length, speed):
        if self.a == -self.down:
            return inf
        share = self.a / self.down
        needed = length + (self.v - speed) * (self.v + speed) / (2 * self.down)
        left = self.remaining - needed
        if left <= 1e-13 * (self.remaining - length):
            left = 0.0  # after a jump to the greatest speed that still stops in time, but for rounding
        return first_fall(left, -self.v * (1 + share), -self.a * (1 + share) / 2)

    def reach_creep_speed(self):
        self.v = self.creep_speed
        self.run_out()

    def run_out_below_creep(self):
        self.run_out()
        self.last_ramp = True

    def run_out(self):
        self.begin_change(0.0, 0.0)
        self.changing = True
        self.last_ramp = self.creep_speed == 0
        self.begin_starving(counted=True)

    def tail_is_in_joiner(self):
        return self.standing

    def entry_motion(self):
        return self.v, self.a

    def coil_still_lasts(self):
        return inf

    def lacks_strip(self):
        return False

    # ---- the joint is released

    def released(self):
        self.changing = False
        self.last_ramp = False
        self.standing = False
        if self.rethreads:
            self.stop_starving()
        else:
            self.after(self.draw_restart_delay(), self.stop_starving)

    def stop_starving(self):
        self.starved = False
