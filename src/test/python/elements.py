"""Work elements: whether they happen at a coil change, and how long they take (model, section 5)."""

from distributions import Distribution


class Pair:
    """The two strips of a coil change."""

    def __init__(self, old, new):
        self.old = old
        self.new = new
        self.width = max(old.width, new.width)
        self.thickness = max(old.thickness, new.thickness)

    def differ(self, what):
        return getattr(self.old, what) != getattr(self.new, what)


def between_rows(rows, x):
    """Linear between the rows of a table, the nearest row outside."""
    if x <= rows[0][0]:
        return rows[0][1]
    for (x0, y0), (x1, y1) in zip(rows, rows[1:]):
        if x <= x1:
            return y0 + (y1 - y0) * (x - x0) / (x1 - x0)
    return rows[-1][1]


class Element:
    def __init__(self, part, place, given, source, sheets):
        self.part = part
        self.place = place
        self.source = source  # the beginning of the names of its sources of random numbers
        self.name = source.split("/", 1)[1]
        self.every = given.get("every")
        self.chance = given.get("chance")
        self.when = given.get("when")
        self.redo = given.get("redo", part != "prepare")
        self.people = given.get("people", 1)
        self.may_be_put_down = given.get("put_down", True)
        self.travel_speed = given.get("travel_speed")
        self.measured = given.get("measured")
        if self.measured:
            sheet = sheets[self.measured["sheet"]]
            self.factor = self.measured["factor"]
            self.sheet = f"sheet/{sheet['name']}"
            self.rows = sheet["rows"]
            column = [row[self.measured["column"]] for row in self.rows]
            observed = [self.factor * value for value in column if value is not None]
            self.time = Distribution({"observed": observed})
        else:
            self.time = Distribution(given.get("time"))

    @property
    def occasional(self):
        return self.every is not None or self.chance is not None or bool(self.when)

    def happens(self, numbers, change, made_pass, pair):
        if self.every is not None:
            return change % self.every == 0
        if self.chance is not None:
            return numbers.happens(self.chance, f"{self.source}/chance", change, made_pass - 1)
        if self.when:
            return any(pair.differ(what) for what in self.when)
        return True

    def travel(self, pair):
        if self.travel_speed is None:
            return 0.0
        speed = self.travel_speed
        if isinstance(speed, list):
            speed = between_rows(speed, pair.thickness)
        return pair.width / speed

    def duration(self, numbers, change, made_pass, pair):
        """All elements measured by one sheet have the row of this change and pass; a blank is drawn from its column."""
        if self.measured:
            row = int(numbers.uniform(self.sheet, change, made_pass - 1) * len(self.rows))
            value = self.rows[row][self.measured["column"]]
            if value is not None:
                return self.factor * value
        u = numbers.uniform(f"{self.source}/time", change, made_pass - 1)
        return self.time.value(u, f"{self.source}, change {change}") + self.travel(pair)

    def mean(self, pair):
        return self.time.mean + self.travel(pair)

    def median(self, pair):
        return self.time.median + self.travel(pair)


def elements(part, given, sheets):
    """The elements of a list; a name that comes again gets #2 and so on."""
    seen = {}
    made = []
    for place, one in enumerate(given.get(part) or []):
        name = one.get("name", part)
        seen[name] = seen.get(name, 0) + 1
        numbered = name if seen[name] == 1 else f"{name}#{seen[name]}"
        made.append(Element(part, place, one, f"{part}/{numbered}", sheets))
    return made
