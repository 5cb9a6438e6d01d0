"""The work of a coil change, as two processes: one prepares the coils in order, one makes each joint."""

from itertools import count

from simpy import Event


class CoilChangeWork:
    """Who does what when. The line says when a tail has stopped; it is told when the joint is released."""

    def __init__(self, env, case, coils, luck, book):
        self.env = env
        self.change = case["change"]
        self.rethreads = case["practice"] == "rethread"
        self.uncoilers = case["entry"]["uncoilers"]
        self.alone = self.change["crew"] == 1
        self.coils = coils
        self.luck = luck
        self.book = book
        self.something_happened = Event(env)
        self.tail_left = 0  # the latest coil whose tail has left its uncoiler
        self.prepared = 1  # the latest coil prepared
        self.busy = False  # the crew of one is at work
        self.made_again = {}  # for each table of measured rows the latest pass that made a joint again, and its row
        self.standing = False  # between the stop of a tail and the release of its joint
        self.joint_waits_for = None  # the coil that the joint waits for, its tail work done
        env.process(self.preparing())

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

    # ---- preparation

    def preparing(self):
        for coil in count(2):
            yield from self.until(lambda: self.may_prepare(coil))
            self.busy = True
            yield from self.do("prepare", change=coil - 1, made_pass=1)
            self.prepared = coil
            self.busy = False
            self.tell()
            # A joint that waited for this coil goes on before the next coil is begun.
            yield self.env.timeout(0)

    def may_prepare(self, coil):
        if coil - self.uncoilers > self.tail_left:
            return False
        if not self.alone:
            return True
        if self.standing:
            return self.joint_waits_for == coil
        return not self.busy

    # ---- the joint

    def joint(self, change, release):
        """From the stop of the tail of coil ``change`` until ``release(passes, waiting)``; begin it when the tail stops."""
        self.standing = True
        return self.env.process(self.joining(change, release))

    def joining(self, change, release):
        tail_stopped = self.env.now
        yield from self.until(self.hand_free)
        tail_begun = self.env.now
        self.take()
        if not self.rethreads:
            yield from self.do("tail", change, 1)
        tail_done = self.env.now
        if self.prepared <= change:
            self.joint_waits_for = change + 1
            self.leave()
            yield from self.until(lambda: self.prepared > change and self.hand_free())
            self.joint_waits_for = None
            self.take()
        waiting = (tail_begun - tail_stopped) + (self.env.now - tail_done)
        passes = 1
        if self.rethreads:
            yield from self.rethread(change)
            self.scrap_crops(change)
        else:
            yield from self.do("join", change, 1)
            self.scrap_crops(change)
            while self.rejected(change, passes):
                passes += 1
                for part in ("prepare", "tail", "join"):
                    yield from self.do(part, change, passes)
                self.scrap_crops(change)
        self.standing = False
        release(passes, waiting)
        self.leave()

    def scrap_crops(self, change):
        """Each pass, good or not, costs the old coil's tail crop and the next coil's head crop."""
        old, new = self.coils[change], self.coils[change + 1]
        self.book.scrap(old.tail_crop, old.mass_per_metre)
        self.book.scrap(new.head_crop, new.mass_per_metre)

    def hand_free(self):
        return not (self.alone and self.busy)

    def take(self):
        if self.alone:
            self.busy = True

    def leave(self):
        if self.alone:
            self.busy = False
        self.tell()

    def rejected(self, change, passes):
        reject = self.change["reject"]
        if reject is None:
            return False
        if "every" in reject:
            return passes == 1 and change % reject["every"] == 0
        return self.luck.draw("reject") == 1

    # ---- elements

    def do(self, part, change, made_pass):
        """The elements of a list one after another; after the first pass only what is to be done again."""
        for place, element in enumerate(self.change[part]):
            if made_pass > 1 and not element["redo"]:
                continue
            if not self.occurs(part, place, element, change):
                continue
            duration = self.measured(element["measured"], change, made_pass)
            if duration is None:
                duration = self.luck.draw(f"{part} {place + 1} time")
            if element["travel_speed"] is not None:
                width = max(self.coils[change].width, self.coils[change + 1].width)
                duration += width / element["travel_speed"]
            yield from self.spend(part, place, change, made_pass, duration)

    def measured(self, where, change, made_pass):
        """What the row of this change says, or the row of this pass when the joint is made again; None for a blank."""
        if where is None:
            return None
        table = where["rows"]
        source = f"rows {table + 1}"
        if made_pass == 1:
            row = self.luck.nth(source, change)
        else:
            if self.made_again.get(table, (None,))[0] != (change, made_pass):
                self.made_again[table] = ((change, made_pass), self.luck.draw(source + " again"))
            row = self.made_again[table][1]
        value = self.change["rows"][table][int(row)][where["column"]]
        return None if value is None else where["factor"] * value

    def occurs(self, part, place, element, change):
        if element["every"] is not None:
            return change % element["every"] == 0
        if element["chance"]:
            return self.luck.draw(f"{part} {place + 1} done") == 1
        return True

    def rethread(self, change):
        yield from self.spend("join", 0, change, 1, self.luck.draw("rethread"))

    def spend(self, part, place, change, made_pass, duration):
        row = {"pass": made_pass} | dict(change=change, list=part.upper(), element=place, start=self.env.now, end=float("nan"))
        self.book.work.append(row)
        yield self.env.timeout(duration)
        row["end"] = self.env.now
