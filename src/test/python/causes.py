"""Why a coil change did not run through (model, section 10)."""

# Two times closer than this (s) are equal, and the first in the order of the lists is taken.
EQUAL_TIMES = 1e-9


def cause(change, capacity):
    """(cause, name of the element or None) of a change that did not run through, joined over an accumulator."""
    blur = 1e-10 * max(1.0, capacity)
    v = change["ratedSpeed"]
    slows = change["marginToSlowing"] == change["marginToSlowing"]
    margin = change["marginToSlowing"] if slows else change["margin"]
    when_full = margin + capacity - change["levelAtStart"]
    waits = change["waits"]
    if margin < -blur:
        if margin + v * waits.preparation >= -blur:
            return "waiting for preparation", longest_waited_for(change)
        if margin + v * waits.people >= -blur:
            return "waiting for people", None
        if change["levelAtStart"] < capacity and when_full >= -blur:
            return "accumulator not full", None
    if when_full >= -blur:
        return "not the joint", None
    items = removable(change)
    best = None
    for item in items:
        if when_full + v * item[2] >= -blur and (best is None or item[2] > best[2] + EQUAL_TIMES):
            best = item
    if best:
        return best[0], best[1]
    if when_full + v * (sum(item[2] for item in items) - waits.after_first_pass) >= -blur:
        return "several together", None
    return "usual joint too long", None


def removable(change):
    """(what, element, seconds) that could be taken out of the joint, in the order of the list."""
    waits = change["waits"]
    items = [("joint made again", None, change["released"] - change["firstPassEnd"])]
    for element, seconds, _ in change["firstPass"]:
        if element.occasional:
            items.append(("occasional element", element.source, seconds))
    for element, seconds, median in change["firstPass"]:
        if not element.occasional:
            items.append(("element took long", element.source, max(0.0, seconds - median)))
    items.append(("both waits", None, waits.both))
    return items


def longest_waited_for(change):
    """The prepare element on which most of the waiting fell; the first of equal ones."""
    by_element = change["waits"].by_element
    best = None
    for element in sorted(by_element, key=lambda element: element.place):
        if best is None or by_element[element] > by_element[best] + EQUAL_TIMES:
            best = element
    return best.source if best else None
