"""What would have been left above the stop level at a coil change (model, section 10)."""

from math import inf, nan

from crossings import first_fall, turning_point, value


def margins(line, change):
    """Margin, margin to slowing and margin without a stop (m) of a change whose joint is released."""
    v = change["ratedSpeed"]
    stop_level = change["stopLevel"]
    at_speed = change["levelAtStart"] + change["remainingAtStart"] - v * (change["released"] - change["start"])
    margin = at_speed - v * v / (2 * line.entry_up) - stop_level
    if not line.slowing:
        return dict(margin=margin, marginToSlowing=nan, marginWithoutStop=margin)
    to_slowing = margin - (line.slowing["level"] - stop_level)
    return dict(margin=margin, marginToSlowing=to_slowing, marginWithoutStop=SlowingProcess(line, change).lowest())


class SlowingProcess:
    """A process that runs at its rated speed until the level falls through that of slowing, then ramps to the slow speed."""

    def __init__(self, line, change):
        self.line = line
        self.change = change
        self.blur = 1e-10 * max(1.0, line.capacity)
        self.level = change["levelAtStart"]
        self.v = change["ratedSpeed"]
        self.slow_speed = min(line.slowing["speed"], self.v)
        self.slowed = False
        self.least = inf

    def lowest(self):
        """The lowest distance to the stop level until the entry, after the joint, has the speed of the process."""
        if self.level < self.line.slowing["level"]:
            self.slow_down()
        for dt, v_e, a_e in self.change["entryRamps"]:
            self.go(dt, v_e, a_e)
        self.go(self.change["released"] - self.change["tailStopped"], 0.0, 0.0)
        if self.line.entry_up < inf:
            self.go(inf, 0.0, self.line.entry_up)
        return self.least

    def slow_down(self):
        self.slowed = True
        if self.line.process_down == inf:
            self.v = self.slow_speed

    def go(self, dt, v_e, a_e):
        """Over ``dt`` seconds of the entry's motion; without end: until it has the speed of the process."""
        until_met = dt == inf
        self.look()
        while dt > 0:
            a = -self.line.process_down if self.slowed and self.v > self.slow_speed else 0.0
            # A process that slows at once may be slower than the entry then: they have met.
            step = max(0.0, (self.v - v_e) / (a_e - a)) if until_met else dt
            last = True
            level = (self.level, v_e - self.v, (a_e - a) / 2)
            if not self.slowed:
                above = self.level - self.line.slowing["level"]
                # A touch is no crossing; what falls deeper began to slow at the level of slowing.
                if first_fall(above + self.blur, level[1], level[2]) < step:
                    step, last = min(step, first_fall(above, level[1], level[2])), False
            elif a < 0 and (self.v - self.slow_speed) / -a < step:
                step, last = (self.v - self.slow_speed) / -a, False
            self.see(level, a, step)
            self.level = value(level, step)
            v_e += a_e * step
            self.v += a * step
            dt -= step
            if last:
                self.look()
                return
            if self.slowed:
                self.v = self.slow_speed
            else:
                self.slow_down()
            self.look()

    def see(self, level, a, step):
        down = self.line.process_down
        spare = (self.level - self.line.stop_level(self.v), level[1] - self.v * a / down, level[2] - a * a / (2 * down))
        turn = turning_point(spare, step)
        if turn is not None:
            self.least = min(self.least, value(spare, turn))

    def look(self):
        self.least = min(self.least, self.level - self.line.stop_level(self.v))
