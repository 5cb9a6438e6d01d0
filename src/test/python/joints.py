"""Joints on their way through the process section (model, section 6): new rated speed, joint passage, joint break."""

from math import inf

from crossings import first_fall, first_rise


class Joint:
    """``mark`` is the metres processed at which the joint reaches the process section."""

    def __init__(self, change, mark, coil, breaks_at):
        self.change = change
        self.mark = mark
        self.coil = coil
        self.breaks_at = breaks_at  # metres processed; None if it holds
        self.arrived = False
        self.passage_open = False
        self.passage_over = False


class Joints:
    """First in, first out. The line gives its speed, acceleration and deceleration, and is told what happens."""

    def __init__(self, line, process, numbers):
        self.line = line
        self.passage = process.get("passage")
        self.break_of = process.get("joint_break")
        self.numbers = numbers
        self.on_the_way = []

    def add(self, change, mark, coil):
        breaks_at = None
        if self.break_of and self.numbers.happens(self.break_of["chance"], "break", change):
            breaks_at = mark + self.numbers.uniform("break/place", change) * self.break_of["length"]
        joint = Joint(change, mark, coil, breaks_at)
        joint.passage_over = self.passage is None
        self.on_the_way.append(joint)

    def in_passage(self):
        return any(joint.passage_open for joint in self.on_the_way)

    def crossings(self):
        yield from self.arrival()
        for joint in self.on_the_way:
            if joint.passage_open:
                yield self.until(joint.mark + self.passage["after"]), lambda joint=joint: self.close(joint)
            elif not joint.passage_over:
                yield self.until_passage(joint.mark - self.passage["before"]), lambda joint=joint: self.open(joint)
        if self.line.v > 0 or self.line.a > 0:
            for joint in self.on_the_way:
                if joint.breaks_at is not None:
                    yield self.until(joint.breaks_at), lambda joint=joint: self.breaks(joint)

    def until(self, metres):
        """The time until so many metres are processed."""
        ahead = metres - self.line.processed
        return 0.0 if ahead <= 0 else first_rise(-ahead, self.line.v, self.line.a / 2)

    def until_passage(self, metres):
        """The time until the ramp down to the speed of the passage has to begin, or the passage without a ramp."""
        line, speed = self.line, self.passage["speed"]
        ahead = metres - line.processed
        if ahead <= 0:
            return 0.0
        wait = first_fall(ahead, -line.v, -line.a / 2)
        left = ahead - (line.v**2 - speed**2) / (2 * line.strip_down)
        if line.v > speed and left <= 0:
            return 0.0
        if line.a != -line.strip_down:
            share = line.a / line.strip_down
            wait = min(wait, first_fall(left, -line.v * (1 + share), -line.a * (1 + share) / 2))
        return wait

    def arrival(self):
        for joint in self.on_the_way:
            if not joint.arrived:
                yield self.until(joint.mark), lambda: self.arrive(joint)
                return

    def arrive(self, joint):
        joint.arrived = True
        self.line.coil_arrives(joint.coil)
        self.forget()

    def open(self, joint):
        joint.passage_open = True
        self.line.losses.passage_opens()

    def close(self, joint):
        joint.passage_open = False
        joint.passage_over = True
        self.forget()

    def breaks(self, joint):
        joint.breaks_at = None
        self.line.joint_breaks(joint.change)
        self.forget()

    def forget(self):
        self.on_the_way = [
            joint
            for joint in self.on_the_way
            if not (joint.arrived and joint.passage_over and joint.breaks_at is None)
        ]
