"""The work of a coil change, as two processes: one prepares the coils in order, one makes each joint."""

from itertools import count
from math import nan

from simpy import Event, Interrupt

from distributions import Distribution
from elements import Pair, elements
from people import People, Preparation


class Waits:
    """The waiting within one coil change (s); ``after_first_pass`` is what of it came after the first pass."""

    def __init__(self):
        self.preparation = 0.0
        self.people = 0.0
        self.after_first_pass = 0.0
        self.by_element = {}  # waiting for preparation, by the prepare element on which it fell

    def for_preparation(self, element, seconds):
        self.by_element[element] = self.by_element.get(element, 0.0) + seconds

    @property
    def both(self):
        return self.preparation + self.people


class CoilChangeWork:
    """Who does what when. The line says when a tail has stopped; it is told when the joint is released."""

    def __init__(self, env, case, line):
        self.env = env
        self.line = line
        self.numbers = line.numbers
        self.book = line.book
        self.coils = line.coils
        change = case["change"]
        self.rethread_time = Distribution(change["rethread"]) if case["practice"] == "rethread" else None
        self.reject = change.get("reject")
        sheets = change.get("sheets") or []
        self.lists = {part: elements(part, change, sheets) for part in ("prepare", "tail", "join")}
        at_joint = self.lists["tail"] + self.lists["join"]
        self.largest = 1 if self.rethread_time else max((element.people for element in at_joint), default=0)
        self.people = People(env, line.roster)
        self.uncoilers = case["entry"]["uncoilers"]
        self.something_happened = Event(env)
        self.tail_left = 0  # the latest coil whose tail has left its uncoiler
        self.prepared = 1  # the latest coil prepared
        self.standing = False  # between the stop of a tail and the release of its joint
        self.waits_for = None  # the coil that the joint waits for, its tail work done
        self.waits = None
        self.wait_noted = nan  # until when the waiting for preparation is noted by element
        self.current = None  # the prepare element whose turn it is
        self.preparer = env.process(self.preparing())
        env.process(line.roster.keeping(line.timers, self.people.look))

    # ---- waiting for one another

    def tell(self):
        happened, self.something_happened = self.something_happened, Event(self.env)
        happened.succeed()

    def until(self, condition):
        while not condition():
            yield self.something_happened

    def tail_has_left(self, coil):
        """The tail of ``coil`` has left its uncoiler."""
        self.tail_left = max(self.tail_left, coil)
        self.tell()
        self.people.look()

    def entry_matched(self):
        self.people.look()

    def pair(self, change):
        return Pair(self.coils[change], self.coils[change + 1])

    # ---- preparation

    def preparing(self):
        for coil in count(2):
            yield from self.until(lambda: coil - self.uncoilers <= self.tail_left)
            pair = self.pair(coil - 1)
            for element in self.lists["prepare"]:
                if element.happens(self.numbers, coil - 1, 1, pair):
                    yield from self.prepare(element, coil, pair)
            self.prepared = coil
            self.tell()

    def prepare(self, element, coil, pair):
        left = element.duration(self.numbers, coil - 1, 1, pair)
        may_begin = lambda: self.may_begin(element, coil, pair)
        preparation = Preparation(self.preparer, element.people, element.may_be_put_down, may_begin)
        row = self.book.element(element, coil - 1, 1)
        self.current = element
        while True:
            yield self.people.for_preparation(preparation)
            self.book.begun(row, self.env.now)
            preparation.timer = self.line.timers.after(left)
            try:
                yield preparation.timer.event
                break
            except Interrupt:
                left = preparation.timer.left()
                preparation.timer.cancel()
                row["putDown"].append([self.env.now, nan])
        row["end"] = self.env.now
        self.note_wait()
        self.people.preparation_done()

    def may_begin(self, element, coil, pair):
        """Whether an element that may not be put down may begin now."""
        if self.people.suffice_beside(element.people, self.largest):
            return True
        if self.standing:
            return self.waits_for == coil
        return element.mean(pair) <= self.line.coil_still_lasts()

    def note_wait(self):
        """The prepare element whose turn it was is over; the joint has waited for it since."""
        if self.waits_for is not None:
            self.waits.for_preparation(self.current, self.env.now - self.wait_noted)
            self.wait_noted = self.env.now

    # ---- the joint

    def joint(self, change):
        """From the stop of the tail of coil ``change``; begin it when the tail stops."""
        self.standing = True
        self.env.process(self.joining(change))

    def joining(self, change):
        self.waits = Waits()
        record = self.book.latest
        record["pair"] = self.pair(change)
        if not self.rethread_time:
            yield from self.do("tail", change, 1)
        yield from self.wait_for_coil(change + 1)
        if self.rethread_time:
            yield from self.rethread(change)
        else:
            yield from self.do("join", change, 1)
        self.scrap_crops(change)
        record["firstPassEnd"] = self.env.now
        waited = self.waits.both
        passes = 1
        while self.rejected(change, passes):
            passes += 1
            for part in ("prepare", "tail", "join"):
                yield from self.do(part, change, passes)
            self.scrap_crops(change)
        self.waits.after_first_pass = self.waits.both - waited
        self.standing = False
        self.line.release(passes, self.waits)
        self.people.look()

    def wait_for_coil(self, coil):
        if self.prepared < coil:
            begun = self.wait_noted = self.env.now
            self.waits_for = coil
            self.people.look()
            yield from self.until(lambda: self.prepared >= coil)
            self.waits_for = None
            self.waits.preparation += self.env.now - begun

    def scrap_crops(self, change):
        """Each pass, good or not, costs the old coil's tail crop and the next coil's head crop."""
        old, new = self.coils[change], self.coils[change + 1]
        self.book.scrap(old.tail_crop, old.mass_per_metre)
        self.book.scrap(new.head_crop, new.mass_per_metre)

    def rejected(self, change, passes):
        if self.reject is None or self.rethread_time:
            return False
        if "every" in self.reject:
            return passes == 1 and change % self.reject["every"] == 0
        return self.numbers.happens(self.reject["chance"], "reject", change, passes - 1)

    def do(self, part, change, made_pass):
        """The elements of a list one after another; after the first pass only what is to be done again."""
        pair = self.pair(change)
        for element in self.lists[part]:
            if made_pass > 1 and not element.redo:
                continue
            if element.happens(self.numbers, change, made_pass, pair):
                duration = element.duration(self.numbers, change, made_pass, pair)
                row = self.book.element(element, change, made_pass)
                yield from self.spend(row, element.people, duration, element)
                if made_pass == 1:
                    self.book.latest["firstPass"].append((element, duration, element.median(pair)))

    def rethread(self, change):
        duration = self.rethread_time.value(self.numbers.uniform("rethread", change), f"rethread, change {change}")
        yield from self.spend(self.book.rethread(change), 1, duration, None)

    def spend(self, row, people, duration, element):
        asked = self.env.now
        yield self.people.for_joint(people)
        self.book.begun(row, self.env.now)
        lacked = self.env.now - asked
        yield self.line.timers.after(duration).event
        row["end"] = self.env.now
        if element and element.part == "prepare":
            self.waits.preparation += self.env.now - asked
            self.waits.for_preparation(element, self.env.now - asked)
        else:
            self.waits.people += lacked
        self.people.joint_done(people)
