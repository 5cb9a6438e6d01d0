"""Who is there when: shifts with breaks that repeat from time 0 (model, section 5).

From the start of a coil change until its joint is released nobody goes: a break or a smaller shift that falls due then begins
when the joint is released, a break with its full length.
"""

from math import inf

from timers import SHIFTS

SAME_INSTANT = 1e-9


class Roster:
    """``present`` people at this instant; ``changed()`` is called when they have become more."""

    def __init__(self, crew, shifts):
        self.shifts = shifts or [dict(seconds=inf, crew=crew, breaks=[])]
        self.by_clock = 0  # index of the shift by the clock
        self.crew = self.shifts[0]["crew"]  # of the shift in force
        self.breaks = []  # (end, crew) of those under way
        self.postponed = []
        self.frozen = False
        self.clock = self.times()
        self.next = next(self.clock)
        self.catch_up(0.0)

    def times(self):
        """(time, what begins) by the clock, without end."""
        cycle = sum(shift["seconds"] for shift in self.shifts)
        round_number = 0
        while True:
            start = 0.0 if round_number == 0 else round_number * cycle
            for index, shift in enumerate(self.shifts):
                yield start, index
                for pause in sorted(shift.get("breaks") or [], key=lambda pause: pause["begin"]):
                    yield start + pause["begin"], pause
                start += shift["seconds"]
            round_number += 1

    def keeping(self, timers, changed):
        """A process: shifts and breaks begin and end."""
        self.timers = timers
        self.changed = changed
        while self.wake_at() < inf:
            yield timers.at(self.wake_at(), SHIFTS).event
            self.come_and_go(timers.env.now)

    def wake_at(self):
        return min([self.next[0]] + [end for end, _ in self.breaks])

    def come_and_go(self, now):
        before = self.present
        self.catch_up(now)
        if self.present > before:
            self.changed()

    def catch_up(self, now):
        """All that begins and ends at this instant, at once: where a break follows a break, nobody comes between them."""
        self.breaks = [(end, crew) for end, crew in self.breaks if end > now + SAME_INSTANT]
        while self.next[0] <= now + SAME_INSTANT:
            time, what = self.next
            self.next = next(self.clock)
            if isinstance(what, int):
                self.by_clock = what
                crew = self.shifts[what]["crew"]
                self.crew = max(self.crew, crew) if self.frozen else crew
            elif self.frozen:
                self.postponed.append(what)
            elif time + what["length"] > now + SAME_INSTANT:
                self.breaks.append((time + what["length"], what["crew"]))

    @property
    def present(self):
        return min([self.crew] + [crew for _, crew in self.breaks])

    def freeze(self):
        """A coil change begins."""
        self.frozen = True

    def thaw(self):
        """The joint is released."""
        now = self.timers.env.now
        self.frozen = False
        self.crew = self.shifts[self.by_clock]["crew"]
        for pause in self.postponed:
            end = now + pause["length"]
            self.breaks.append((end, pause["crew"]))
            self.timers.at(end, SHIFTS).event.callbacks.append(lambda _: self.come_and_go(self.timers.env.now))
        self.postponed = []

    def paid_until(self, time):
        """For each shift the paid seconds from 0 to ``time``, people times time, by the clock."""
        if self.shifts[0]["seconds"] == inf:
            return [self.shifts[0]["crew"] * time]
        cycle = sum(shift["seconds"] for shift in self.shifts)
        rounds, left = divmod(time, cycle)
        paid = []
        for shift in self.shifts:
            part = min(max(left, 0.0), shift["seconds"])
            left -= shift["seconds"]
            paid.append(shift["crew"] * (rounds * shift["seconds"] + part))
        return paid
