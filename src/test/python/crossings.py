"""When a parabola c0 + c1 t + c2 t^2 first crosses zero for t >= 0, in closed form."""

from math import inf, sqrt


def first_fall(c0, c1, c2):
    """The earliest t >= 0 from which the parabola is below zero and falling through it; inf if it never is.

    A parabola that begins at or below zero falls at once if it falls at all at its beginning; otherwise it must first rise
    above zero.
    """
    if c0 <= 0 and (c1 < 0 or (c1 == 0 and c2 < 0)):
        return 0.0
    if c2 == 0:
        return -c0 / c1 if c1 < 0 else inf
    discriminant = c1 * c1 - 4 * c2 * c0
    if discriminant <= 0 or (c2 > 0 and c1 >= 0):
        return inf
    root = sqrt(discriminant)
    # Of the two equal expressions the one without cancellation.
    return 2 * c0 / (root - c1) if c1 < 0 else (c1 + root) / (-2 * c2)


def first_rise(c0, c1, c2):
    """The earliest t >= 0 from which the parabola is above zero and rising through it; inf if it never is."""
    return first_fall(-c0, -c1, -c2)


def value(c, t):
    return c[0] + t * (c[1] + t * c[2])


def turning_point(c, span):
    """Where in (0, span) the parabola turns; None if it does not."""
    if c[2] == 0:
        return None
    t = -c[1] / (2 * c[2])
    return t if 0 < t < span else None


def first_reached(c, blur):
    """The earliest t >= 0 with a value of at least zero.

    A parabola that only touches zero within ``blur`` at its top never gets there: what arrives at a level with its last
    speed spent is set to that level exactly when it arrives, and stays.
    """
    c0, c1, c2 = c
    if c0 >= 0 or (c1 == c2 == 0 and c0 >= -blur):
        return 0.0
    if c2 < 0 and c0 - c1 * c1 / (4 * c2) <= blur:
        return inf
    return first_rise(c0, c1, c2)
