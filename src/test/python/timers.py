"""Timers: what ends after a time. They come in the order in which they were set, ends of shifts and breaks before the others.

The line's motion looks at them among everything else that may happen next (model, section 12, number 3), so that all events of
one instant have one order. Whoever waits for a timer waits for its event.
"""

from itertools import count

from simpy import Event

# What is done at one instant, in this order: who was woken acts; people are given work; the line moves on.
PEOPLE, MOTION = 2, 3
SHIFTS, WORK = 0, 1


def later(env, priority, delay=0.0):
    """An event after ``delay`` seconds, at its instant after all of lower ``priority``."""
    event = Event(env)
    event._ok, event._value = True, None
    env.schedule(event, priority, delay)
    return event


class Timer:
    def __init__(self, timers, due, rank, number):
        self.timers = timers
        self.due = due
        self.order = (due, rank, number)
        self.event = Event(timers.env)

    def left(self):
        return self.due - self.timers.env.now

    def cancel(self):
        self.timers.running.discard(self)

    def fire(self):
        self.cancel()
        self.event.succeed()


class Timers:
    def __init__(self, env):
        self.env = env
        self.running = set()
        self.numbers = count()

    def after(self, delay):
        return self.at(self.env.now + delay)

    def at(self, due, rank=WORK):
        timer = Timer(self, due, rank, next(self.numbers))
        self.running.add(timer)
        return timer

    def crossing(self):
        """The first timer, for the line's motion."""
        if self.running:
            first = min(self.running, key=lambda timer: timer.order)
            yield max(0.0, first.left()), first.fire
