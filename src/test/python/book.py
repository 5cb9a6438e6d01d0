"""What is written down: one row for each coil change, every work element, and the totals."""

from math import inf, nan

from crossings import turning_point, value

RAN_THROUGH, SLOWED, STOPPED = "RAN_THROUGH", "SLOWED", "STOPPED"
BADNESS = {RAN_THROUGH: 0, SLOWED: 1, STOPPED: 2}

COUNTED = (
    "starvedStops slowings ownStops processedMetres processedKilograms enteredMetres ratedMetres lostMetres lostTime"
    " scrapMetres scrapKilograms spoiltMetres cutMetres breakScrapMetres spoiltKilograms breaks breakSeconds"
    " breakLostMetres breakLostTime passageLostMetres jointSeconds waitingSeconds waitingForPreparationSeconds"
    " waitingForPeopleSeconds crewSeconds starvedSeconds ownStopSeconds blockedSeconds levelIntegral overfull"
    " stripBreaks"
).split()
# Of a coil change: what margin and cause follow from.
NOT_FOR_THE_READER = ("firstPass", "firstPassEnd", "entryRamps", "waits", "pair")
# Strip that was processed and is scrap afterwards: at each stop, cut out with a joint, of a break.
SPOILT = ("spoiltMetres", "cutMetres", "breakScrapMetres")


class Bound:
    """Counts how often a level passes it; what only touches it within ``blur`` does not count."""

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
    def __init__(self, capacity, allowance, leave_out, roster):
        self.capacity = capacity
        self.leave_out = leave_out
        self.roster = roster
        self.changes = []
        self.work = []
        blur = 1e-10 * max(1.0, capacity)
        self.overfull = Bound(capacity + allowance, blur)
        # A level below 0 is one above 0 upside down. A process that stopped in time comes to rest within the blur.
        self.broken = Bound(0.0, 10 * blur)
        self.tracking = False
        self.stops_since_change = 0
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

    def begin_change(self, time, tail_coil, head_coil, level, stop_level, remaining, rated):
        number = len(self.changes) + 1
        self.changes.append(
            dict(
                number=number,
                tailCoil=tail_coil.kind,
                headCoil=head_coil.kind,
                shift=self.roster.by_clock,
                start=time,
                tailStopped=nan,
                released=nan,
                waiting=nan,
                waitingForPreparation=nan,
                waitingForPeople=nan,
                passes=0,
                levelAtStart=level,
                remainingAtStart=remaining,
                ratedSpeed=rated,
                lowestLevel=level,
                stopLevel=stop_level,
                outcome=RAN_THROUGH,
                starvedStops=0,
                lostMetres=0.0,
                refillTime=nan,
                lostTime=0.0,
                # What margin and cause follow from.
                firstPass=[],
                entryRamps=[],
            )
        )
        self.tracking = True
        self.stops_since_change = 0
        if self.leave_out > 0 and number == self.leave_out + 1:
            self.open_totals(time, level)

    def tail_stopped(self, time):
        self.latest["tailStopped"] = time

    def released(self, time, passes, waits):
        self.latest.update(
            released=time,
            passes=passes,
            waits=waits,
            waiting=waits.both,
            waitingForPreparation=waits.preparation,
            waitingForPeople=waits.people,
        )
        self.add("jointSeconds", time - self.latest["tailStopped"])
        self.add("waitingSeconds", waits.both)
        self.add("waitingForPreparationSeconds", waits.preparation)
        self.add("waitingForPeopleSeconds", waits.people)
        # All people of the shift in which the change begins count as present while there is work on the joint.
        crew = self.roster.shifts[self.latest["shift"]]["crew"]
        self.add("crewSeconds", crew * (time - self.latest["tailStopped"] - waits.both))

    def scrap(self, metres, mass_per_metre):
        self.add("scrapMetres", metres)
        self.add("scrapKilograms", metres * mass_per_metre)

    def spoilt(self, kind, metres, mass_per_metre):
        """Scrap of strip that was processed, and is therefore no good output."""
        self.scrap(metres, mass_per_metre)
        self.add(kind, metres)
        self.add("spoiltKilograms", metres * mass_per_metre)

    def matched(self, time):
        if self.tracking:
            self.tracking = False
            self.latest["refillTime"] = time - self.latest["released"]

    def suffers(self, outcome):
        """The latest change is at least as bad as ``outcome``."""
        if self.latest and BADNESS[outcome] > BADNESS[self.latest["outcome"]]:
            self.latest["outcome"] = outcome

    def starved_stop(self, most):
        self.add("starvedStops", 1)
        self.stops_since_change += 1
        if self.stops_since_change > most:
            raise RuntimeError(f"more than {most} starved stops in one coil change")
        if self.latest:
            self.latest["starvedStops"] += 1

    # ---- work elements

    def element(self, element, change, made_pass):
        return self.add_work(element.part.upper(), element.place, element.name, change, made_pass)

    def rethread(self, change):
        return self.add_work("JOIN", 0, "rethread", change, 1)

    def add_work(self, part, place, name, change, made_pass):
        row = dict(change=change, list=part, element=place, name=name, start=nan, end=nan, putDown=[])
        row["pass"] = made_pass
        self.work.append(row)
        return row

    def begun(self, row, time):
        """An element begins, or is taken up again."""
        if row["putDown"]:
            row["putDown"][-1][1] = time
        else:
            row["start"] = time

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

    def lost(self, metres, rated, owner):
        self.add("lostMetres", metres)
        self.add("lostTime", metres / rated)
        if owner:
            owner["lostMetres"] += metres
            owner["lostTime"] += metres / rated

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
        totals = self.totals
        scrap_or_good = totals["scrapKilograms"] + totals["processedKilograms"] - totals["spoiltKilograms"]
        paid = self.paid(time)
        return dict(
            totals,
            goodMetres=totals["processedMetres"] - sum(totals[kind] for kind in SPOILT),
            goodKilograms=totals["processedKilograms"] - totals["spoiltKilograms"],
            scrapShare=totals["scrapKilograms"] / scrap_or_good if scrap_or_good else 0.0,
            utilisation=totals["processedMetres"] / totals["ratedMetres"] if totals["ratedMetres"] else nan,
            duration=time - self.since,
            paidSeconds=sum(paid),
            **figures(rows),
            starvedStopsOfChanges=sum(row["starvedStops"] for row in rows),
            lowestLevel=self.lowest,
            overtravel=max(0.0, self.highest - self.capacity),
        )

    def paid(self, time):
        """Paid time of each shift, people times seconds, of the time that counts."""
        until, before = self.roster.paid_until(time), self.roster.paid_until(self.since)
        return [a - b for a, b in zip(until, before)]

    def by_shift(self, time, rows):
        """For each shift its paid time and the coil changes that began in it."""
        found = []
        for index, paid in enumerate(self.paid(time)):
            own = [row for row in rows if row["shift"] == index]
            sums = dict(
                starvedStops=sum(row["starvedStops"] for row in own),
                lostMetres=sum(row["lostMetres"] for row in own),
                jointSeconds=sum(row["released"] - row["tailStopped"] for row in own),
                waitingForPreparationSeconds=sum(row["waitingForPreparation"] for row in own),
                waitingForPeopleSeconds=sum(row["waitingForPeople"] for row in own),
            )
            found.append(dict(paidSeconds=paid, **figures(own), **sums))
        return found


def figures(rows):
    def with_outcome(outcome):
        return sum(row["outcome"] == outcome for row in rows)

    return dict(
        changes=len(rows),
        ranThrough=with_outcome(RAN_THROUGH),
        slowedChanges=with_outcome(SLOWED),
        stoppedChanges=with_outcome(STOPPED),
        refilledChanges=sum(row["refillTime"] == row["refillTime"] for row in rows),
    )
