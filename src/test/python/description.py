"""The described line, read from JSON: SI units, a missing limit or acceleration is null and means infinite."""

from math import asinh, cosh, inf, pi, sinh


def or_infinite(given):
    return inf if given is None else given


class Coil:
    """A coil with its draw: kind, usable length (m), mass per metre (kg/m), crops (m)."""

    def __init__(self, number, kinds, luck):
        self.number = number
        self.kind = int(luck.nth("coil kind", number))
        kind = kinds[self.kind]
        self.head_crop = kind["head_crop"]
        self.tail_crop = kind["tail_crop"]
        self.usable = luck.nth("coil usable length", number)
        if not self.usable > 0:
            raise ValueError(f"coil {number} is no longer than its crops")
        self.width = kind["width"]
        self.mass_per_metre = kind["density"] * kind["width"] * kind["thickness"]
        self.own_speed = kind["process_speed"]


class Coils:
    """Coil n has draw n, whether or not it is used."""

    def __init__(self, kinds, luck):
        self.kinds = kinds
        self.luck = luck
        self.known = {}

    def __getitem__(self, number):
        if number not in self.known:
            self.known[number] = Coil(number, self.kinds, self.luck)
        return self.known[number]


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
    own = or_infinite(accumulator["fill_rate_limit"])
    if form["kind"] == "strands":
        return min(own, form["strands"] * or_infinite(form["filling_speed"]))
    return own
