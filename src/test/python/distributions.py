"""Distributions of times and sizes (model, section 9): a value for a uniform number, by inversion; the mean; the median."""

from math import erfc, exp, gamma, log, log1p, pi, sqrt
from statistics import NormalDist

from gamma_quantile import gamma_quantile

STANDARD_NORMAL = NormalDist()


def normal_below(z):
    return erfc(-z / sqrt(2)) / 2


def constant(value):
    return (lambda u: value), value


def uniform(least, greatest):
    return (lambda u: least + u * (greatest - least)), (least + greatest) / 2


def triangular(least, mode, greatest):
    span = greatest - least
    if span == 0:
        return constant(least)

    def quantile(u):
        if u * span < mode - least:
            return least + sqrt(u * span * (mode - least))
        return greatest - sqrt((1 - u) * span * (greatest - mode))

    return quantile, (least + mode + greatest) / 3


def normal(mean, sd):
    """Conditioned on being above 0."""
    if sd == 0:
        return constant(mean)
    positive = normal_below(mean / sd)

    def quantile(u):
        below = normal_below(-mean / sd) + u * positive
        if below < 0.5:
            return mean + sd * STANDARD_NORMAL.inv_cdf(below)
        return mean - sd * STANDARD_NORMAL.inv_cdf((1 - u) * positive)

    return quantile, mean + sd * exp(-((mean / sd) ** 2) / 2) / sqrt(2 * pi) / positive


def lognormal(mean, sd):
    """Mean and sd of the time itself."""
    if sd == 0:
        return constant(mean)
    variance = log1p((sd / mean) ** 2)
    centre = log(mean) - variance / 2
    return (lambda u: exp(centre + sqrt(variance) * STANDARD_NORMAL.inv_cdf(u))), mean


def gamma_of(mean, sd):
    if sd == 0:
        return constant(mean)
    shape = (mean / sd) ** 2
    return (lambda u: mean / shape * gamma_quantile(shape, u)), mean


def weibull(shape, scale):
    return (lambda u: scale * (-log1p(-u)) ** (1 / shape)), scale * gamma(1 + 1 / shape)


def exponential(mean):
    return (lambda u: -mean * log1p(-u)), mean


def observed(*values):
    ordered = sorted(values)
    return (lambda u: ordered[int(u * len(ordered))]), sum(ordered) / len(ordered)


SHAPES = dict(
    constant=constant,
    uniform=uniform,
    triangular=triangular,
    normal=normal,
    lognormal=lognormal,
    gamma=gamma_of,
    weibull=weibull,
    exponential=exponential,
    observed=observed,
)


class Distribution:
    """``{"lognormal": [60, 12], "shift": 5}``; a plain number is a constant, null is 0."""

    def __init__(self, given):
        if given is None or isinstance(given, (int, float)):
            given = {"constant": given or 0.0}
        self.shift = given.get("shift") or 0.0
        ((self.name, figures),) = [(key, value) for key, value in given.items() if key != "shift"]
        figures = figures if isinstance(figures, list) else [figures]
        self.unshifted, mean = SHAPES[self.name](*figures)
        self.mean = mean + self.shift

    def value(self, u, what):
        result = self.unshifted(u) + self.shift
        if not result >= 0:
            raise ValueError(f"{what}: the drawn value {result} is below zero")
        return result

    @property
    def median(self):
        return self.unshifted(0.5) + self.shift
