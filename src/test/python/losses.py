"""To what each instant below the rated speed belongs (model, section 6, joint passage, and section 10)."""


def area_above_zero(y, slope, dt):
    """The area above zero under a straight line that begins at y, over a time dt."""
    end = y + slope * dt
    if y >= 0 and end >= 0:
        return (y + end) / 2 * dt
    if y <= 0 and end <= 0:
        return 0.0
    return (max(y, end) ** 2 / 2) / abs(slope)


class Losses:
    """The first of: own stop, break until it ends, starved or slowed with its recovery, recovery from a break, passage."""

    def __init__(self, line, book):
        self.line = line
        self.book = book
        self.for_strip = False  # starved, slowed or recovering from it
        self.owner = None  # the coil change to which what is lost for strip belongs; None before the first
        self.from_break = False
        self.from_passage = False

    def strip_lacks(self):
        """A stop, a slowing or a hold begins: it takes over all metres from now on."""
        self.for_strip = True
        self.owner = self.book.latest

    def passage_opens(self):
        self.from_passage = True

    def break_begins(self):
        self.from_break = True

    def end_at_speed(self):
        """What held the process back is over, and it has its rated speed again."""
        line = self.line
        if line.v < line.rated:
            return
        if not line.starved and not line.slowed:
            self.for_strip = False
            self.owner = None
        if not line.break_under_way:
            self.from_break = False
        if not line.joints.in_passage():
            self.from_passage = False

    def over(self, dt):
        line = self.line
        if line.own_stop:
            self.book.add("ownStopSeconds", dt)
            return
        metres = area_above_zero(line.rated - line.v, -line.a, dt)
        if line.break_under_way:
            self.book.add("breakSeconds", dt)
            self.for_break(metres)
        elif self.for_strip:
            if line.starved and line.v == 0 and line.a == 0:
                self.book.add("starvedSeconds", dt)
            self.book.lost(metres, line.rated, self.owner)
        elif self.from_break:
            self.for_break(metres)
        elif self.from_passage:
            self.book.add("passageLostMetres", metres)

    def for_break(self, metres):
        self.book.add("breakLostMetres", metres)
        self.book.add("breakLostTime", metres / self.line.rated)
