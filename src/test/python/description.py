"""The described line, read from JSON: SI units, a missing limit or acceleration is null and means infinite."""

from math import asinh, inf, pi, sinh

from distributions import Distribution


def or_infinite(given):
    return inf if given is None else given


class Coil:
    """A coil with its draws: kind, usable length (m), mass per metre (kg/m), crops (m)."""

    def __init__(self, number, kind, given, numbers):
        self.number = number
        self.kind = kind
        self.width = given["width"]
        self.thickness = given["thickness"]
        self.product = given.get("product")
        self.mass_per_metre = given["density"] * self.width * self.thickness
        self.own_speed = given.get("process_speed")
        self.head_crop = given.get("head_crop") or 0.0
        self.tail_crop = given.get("tail_crop") or 0.0
        length = self.length(given["size"], numbers)
        self.usable = length - self.head_crop - self.tail_crop
        if not self.usable > 0:
            raise ValueError(f"coil {number}: drawn length {length} m, no longer than its crops")

    def length(self, size, numbers):
        for what, divisor in (("length", 1.0), ("mass", self.mass_per_metre)):
            if what in size:
                u = numbers.uniform(f"coil/{what}", self.number)
                return Distribution(size[what]).value(u, f"coil/{what} {self.number}") / divisor
        area = pi * (size["outer_diameter"] ** 2 - size["inner_diameter"] ** 2) / 4
        return (size.get("winding_factor") or 1.0) * area / self.thickness


class Coils:
    """Coil n has draw n, whether or not it is used."""

    def __init__(self, case, numbers):
        self.kinds = case["kinds"]
        self.supply = case.get("supply") or {"kind": "schedule", "order": range(len(self.kinds))}
        self.numbers = numbers
        self.known = {}

    def __getitem__(self, number):
        if number not in self.known:
            kind = self.kind(number)
            self.known[number] = Coil(number, kind, self.kinds[kind], self.numbers)
        return self.known[number]

    def kind(self, number):
        if self.supply["kind"] == "schedule":
            order = self.supply["order"]
            return order[(number - 1) % len(order)]
        shares = self.supply["shares"]
        left = self.numbers.uniform("coil/kind", number) * sum(shares)
        for kind, share in enumerate(shares):
            left -= share
            if left < 0:
                return kind
        return len(shares) - 1


def arc(span, sag):
    """Length of a catenary: sag = a (cosh(S/2a) - 1), arc = 2 a sinh(S/2a); u = S/2a found by halving."""
    if sag == 0:
        return span
    low, high = 0.0, 2 * asinh(2 * sag / span) + 4 * sag / span + 2
    while True:
        u = (low + high) / 2
        if u in (low, high):
            return span * sinh(u) / u
        # cosh u - 1 = 2 sinh^2(u/2), which keeps its digits for small u.
        if 2 * sinh(u / 2) ** 2 / u < 2 * sag / span:
            low = u
        else:
            high = u


def capacity(form):
    """Usable capacity (m) of an accumulator."""
    kind = form["kind"]
    if kind == "direct":
        return form["capacity"]
    if kind == "strands":
        return form["strands"] * form["stroke"]
    if kind == "free loop":
        return form["loops"] * (arc(form["span"], form["greatest_sag"]) - arc(form["span"], form["least_sag"]))
    if kind == "spiral":
        return form["wraps"] * pi * (form["full_diameter"] - form["empty_diameter"])
    if kind == "none":
        return 0.0
    raise ValueError(f"unknown form of accumulator: {kind}")


def fill_rate_limit(accumulator):
    form = accumulator["form"]
    own = or_infinite(accumulator.get("fill_rate_limit"))
    if form["kind"] == "strands":
        return min(own, form["strands"] * or_infinite(form.get("filling_speed")))
    return own
