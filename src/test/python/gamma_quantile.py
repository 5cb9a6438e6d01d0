"""The inverse of the gamma distribution with scale 1, by Newton's method on the logarithm of the value."""

from math import exp, inf, lgamma, log, log1p, pi, sqrt
from statistics import NormalDist

EPS = 1e-17
# From here on Stirling's series is exact to the last digit, and the logarithm of the factorial is not.
LARGE_SHAPE = 20


def log_prefix(shape, x):
    """ln of x^shape e^-x / Gamma(shape + 1); of large numbers only the small difference is formed."""
    if shape < LARGE_SHAPE:
        return shape * log(x) - x - lgamma(shape + 1)
    off = (x - shape) / shape
    stirling = 1 / shape**2
    stirling = (1 / 12 - stirling * (1 / 360 - stirling * (1 / 1260 - stirling * (1 / 1680 - stirling / 1188)))) / shape
    return shape * (log1p(off) - off) - log(2 * pi * shape) / 2 - stirling


def lower_sum(shape, x):
    """What the prefix is to be multiplied with for the probability of a smaller value; for x below shape + 1."""
    total = term = 1.0
    n = shape
    while term > EPS * total:
        n += 1
        term *= x / n
        total += term
    return total


def upper_fraction(shape, x):
    """What shape times the prefix is to be multiplied with for the probability of a larger value; for x above shape + 1.

    The continued fraction by Lentz's method.
    """
    b = x + 1 - shape
    c, d = 1e300, 1 / b
    h = d
    for i in range(1, 10_000_000):
        a = -i * (i - shape)
        b += 2
        d = 1 / (a * d + b)
        c = b + a / c
        h *= d * c
        if abs(d * c - 1) < 2e-16:
            return h
    raise ArithmeticError(f"no gamma probability for shape {shape} at {x}")


def log_probabilities(shape, x):
    """ln of the probabilities of a smaller and of a larger value."""
    prefix = log_prefix(shape, x)
    if x < shape + 1:
        lower = prefix + log(lower_sum(shape, x))
        return lower, log1p(-exp(lower)) if lower < 0 else -inf
    upper = prefix + log(shape) + log(upper_fraction(shape, x))
    return log1p(-exp(upper)) if upper < 0 else -inf, upper


def gamma_quantile(shape, u):
    """The value below which a share ``u`` of gamma(shape, scale 1) lies; 0 < u < 1."""
    z = NormalDist().inv_cdf(u)
    cube = 1 - 1 / (9 * shape) + z / (3 * sqrt(shape))
    y = (log(u) + lgamma(shape + 1)) / shape  # the value of a small share
    if cube > 0.1 and shape > 0.3:
        y = log(shape * cube**3)
    best = inf
    for _ in range(200):
        if y < -690:
            return 0.0
        x = exp(y)
        lower, upper = log_probabilities(shape, x)
        # The smaller of the two probabilities has the digits.
        if lower < upper:
            off, slope = lower - log(u), exp(log_prefix(shape, x) + log(shape) - lower)
        else:
            off, slope = log1p(-u) - upper, exp(log_prefix(shape, x) + log(shape) - upper)
        step = off / slope
        if abs(step) >= best and best < 1e-11:
            break
        best = abs(step)
        y -= max(-2.0, min(2.0, step))
        if abs(step) < 1e-16:
            break
    return exp(y)
