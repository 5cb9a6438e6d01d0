"""The closed forms of the model's section 11, for one rated speed and a deterministic line that is always refilled."""

from math import inf, sqrt

from description import capacity, fill_rate_limit, or_infinite


class HandCalculation:
    def __init__(self, case):
        entry, process = case["entry"], case["process"]
        self.v = process["speed"]
        self.up = or_infinite(entry.get("acceleration"))
        self.down = or_infinite(entry.get("deceleration"))
        self.process_down = or_infinite(process.get("deceleration"))
        self.capacity = capacity(case["accumulator"]["form"])
        self.reserve = case["accumulator"].get("reserve") or 0.0
        self.over_speed = min(entry["top_speed"] - self.v, fill_rate_limit(case["accumulator"]))
        self.slowing = process.get("slowing")
        creep = entry.get("creep")
        self.creep_speed = creep["speed"] if creep else 0.0
        self.creep_length = creep["length"] if creep else 0.0

    def creep_loss(self):
        """What creep adds to the strip drawn (m)."""
        if not self.creep_speed:
            return 0.0
        v_c = self.creep_speed
        return (self.v - v_c) * (self.creep_length - v_c**2 / (2 * self.down)) / v_c

    def stop_level(self, v=None):
        return self.reserve + (v or self.v) ** 2 / (2 * self.process_down)

    def ramps(self):
        """The strip drawn (m) but for that of the joint time."""
        return self.v**2 / (2 * self.down) + self.v**2 / (2 * self.up) + self.creep_loss()

    def drawn(self, joint_time):
        return self.v * joint_time + self.ramps()

    def longest(self, floor=None):
        """The longest joint time (s) that the process outlasts at its rated speed, down to the level ``floor``."""
        floor = self.stop_level() if floor is None else floor
        return (self.capacity - floor - self.ramps()) / self.v

    def longest_without_stop(self):
        """Slowing begun while the entry stands, the slow speed reached before the joint is released."""
        v, slow = self.v, self.slowing
        until_slow = (self.capacity - slow["level"] - v**2 / (2 * self.down) - self.creep_loss()) / v
        ramp = (v - slow["speed"]) / self.process_down
        at_slow = (slow["level"] - self.stop_level() - slow["speed"] ** 2 / (2 * self.up)) / slow["speed"]
        return until_slow + ramp + at_slow

    def refill(self, joint_time):
        """(seconds, strip through the entry) from the release of the joint until the accumulator is full."""
        drawn, u = self.drawn(joint_time), self.over_speed
        on_ramps = u * u / (2 * self.up) + u * u / (2 * self.down)
        if on_ramps > drawn:
            u = sqrt(2 * drawn / (1 / self.up + 1 / self.down))
            on_ramps = drawn
        seconds = self.v / self.up + u / self.up + u / self.down + (drawn - on_ramps) / u
        return seconds, self.v * seconds - self.v**2 / (2 * self.up) + drawn

    def is_always_refilled(self, usable, joint_time):
        if self.over_speed <= 0:
            return False
        used = self.refill(joint_time)[1]
        needed = (self.v**2 - self.creep_speed**2) / (2 * self.down) + self.creep_length
        return used <= usable - needed
