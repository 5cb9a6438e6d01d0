"""What is written down: one row for each coil change, every work element, and the totals."""

from math import inf, nan

from crossings import turning_point, value

RAN_THROUGH, SLOWED, STOPPED = "RAN_THROUGH", "SLOWED", "STOPPED"
BADNESS = {RAN_THROUGH: 0, SLOWED: 1, STOPPED: 2}

COUNTED = (
    "starvedStops slowings downtimes processedMetres processedKilograms enteredMetres ratedMetres lostMetres lostTime"
    " scrapMetres scrapKilograms jointSeconds waitingSeconds starvedSeconds downtimeSeconds blockedSeconds levelIntegral"
    " overfull stripBreaks"
).split()


def area_above_zero(y, slope, dt):
    """The area above zero under a straight line that begins at y, over a time dt."""
    end = y + slope * dt
    if y >= 0 and end >= 0:
        return (y + end) / 2 * dt
    if y <= 0 and end <= 0:
        return 0.0
    return (max(y, end) ** 2 / 2) / abs(slope)


class Passages:
    """Counts how often a level passes a bound; what only touches it within ``blur`` does not count."""

    def __init__(self, bound, blur):
        self.bound = bound
        self.blur = blur
        self.beyond = False

    def count(self, levels):
        passed = 0
        for level in levels:
            if not self.beyond and level > self.bound + self.blur:
                self.beyond = True
                passed += 1
            elif self.beyond and level <= self.bound:
                self.beyond = False
        return passed


class Book:
    def __init__(self, capacity, allowance, leave_out):
        self.capacity = capacity
        self.leave_out = leave_out
        self.changes = []
        self.work = []
        blur = 1e-10 * max(1.0, capacity)
        self.overfull = Passages(capacity + allowance, blur)
        # A level below 0 is one above 0 upside down. A process that stopped in time comes to rest within the blur.
        self.broken = Passages(0.0, 10 * blur)
        self.tracking = False
        self.open_totals(0.0, capacity)

    def open_totals(self, time, level):
        self.since = time
        self.totals = dict.fromkeys(COUNTED, 0)
        self.lowest = level
        self.highest = level

    # ---- the coil changes

    @property
    def latest(self):
        return self.changes[-1] if self.changes else None

    def begin_change(self, time, tail_coil, head_coil, level, stop_level):
        number = len(self.changes) + 1
        self.changes.append(
            dict(
                number=number,
                tailCoil=tail_coil.kind,
                headCoil=head_coil.kind,
                start=time,
                tailStopped=nan,
                released=nan,
                waiting=nan,
                passes=0,
                levelAtStart=level,
                lowestLevel=level,
                stopLevel=stop_level,
                outcome=RAN_THROUGH,
                starvedStops=0,
                lostMetres=0.0,
                refillTime=nan,
            )
        )
        self.tracking = True
        if self.leave_out > 0 and number == self.leave_out + 1:
            self.open_totals(time, level)

    def tail_stopped(self, time):
        self.latest["tailStopped"] = time

    def released(self, time, passes, waiting):
        change = self.latest
        change.update(released=time, passes=passes, waiting=waiting)
        self.totals["jointSeconds"] += time - change["tailStopped"]
        self.totals["waitingSeconds"] += waiting

    def scrap(self, metres, mass_per_metre):
        self.totals["scrapMetres"] += metres
        self.totals["scrapKilograms"] += metres * mass_per_metre

    def matched(self, time):
        if self.tracking:
            self.tracking = False
            self.latest["refillTime"] = time - self.latest["released"]

    def suffers(self, outcome):
        """The latest change is at least as bad as ``outcome``."""
        if self.latest and BADNESS[outcome] > BADNESS[self.latest["outcome"]]:
            self.latest["outcome"] = outcome

    def starved_stop(self):
        self.totals["starvedStops"] += 1
        if self.latest:
            self.latest["starvedStops"] += 1

    # ---- between two events

    def level_over(self, level, dt):
        """``level`` is the parabola of the level over the next ``dt`` seconds."""
        turn = turning_point(level, dt)
        seen = [level[0]] + ([] if turn is None else [value(level, turn)]) + [value(level, dt)]
        self.lowest = min(self.lowest, *seen)
        self.highest = max(self.highest, *seen)
        if self.tracking:
            self.latest["lowestLevel"] = min(self.latest["lowestLevel"], *seen)
        self.totals["levelIntegral"] += dt * (level[0] + dt * (level[1] / 2 + dt * level[2] / 3))
        self.totals["overfull"] += self.overfull.count(seen)
        self.totals["stripBreaks"] += self.broken.count([-x for x in seen])

    def lost(self, metres, rated, by_a_change):
        self.totals["lostMetres"] += metres
        self.totals["lostTime"] += metres / rated
        if by_a_change:
            self.latest["lostMetres"] += metres

    def add(self, name, amount):
        self.totals[name] += amount

    # ---- the end

    def rows(self, wanted=inf):
        """The complete changes that count."""
        return [
            change
            for change in self.changes[self.leave_out :]
            if change["released"] == change["released"] and change["number"] <= wanted
        ]

    def summary(self, time, rows):
        def with_outcome(outcome):
            return sum(row["outcome"] == outcome for row in rows)

        return dict(
            self.totals,
            duration=time - self.since,
            changes=len(rows),
            ranThrough=with_outcome(RAN_THROUGH),
            slowedChanges=with_outcome(SLOWED),
            stoppedChanges=with_outcome(STOPPED),
            refilledChanges=sum(row["refillTime"] == row["refillTime"] for row in rows),
            lowestLevel=self.lowest,
            overtravel=max(0.0, self.highest - self.capacity),
        )
