"""The people who attend to coil changes (model, section 5): work on the joint comes first, a preparation is put down for it."""

from simpy import Event

from timers import PEOPLE, later

# An element with less than this left (s) is finished rather than put down.
AS_GOOD_AS_DONE = 1e-9


class Preparation:
    """A prepare element that waits for people or is under way; ``timer`` is that of its process while it is."""

    def __init__(self, process, people, may_be_put_down, may_begin):
        self.process = process
        self.people = people
        self.may_be_put_down = may_be_put_down
        self.may_begin = may_begin  # for an element that may not be put down: whether it may begin now
        self.begins = None
        self.timer = None


class People:
    """Gives people work. Whatever may let something begin calls ``look``; then the joint is served before the preparation."""

    def __init__(self, env, roster):
        self.env = env
        self.roster = roster
        self.at_joint = 0
        self.under_way = None  # the preparation
        self.joint_asks = None  # (people, event)
        self.preparation_asks = None
        self.looking = False

    def free(self):
        preparing = self.under_way.people if self.under_way else 0
        return self.roster.present - self.at_joint - preparing

    def suffice_beside(self, people, largest):
        """Whether those left over, when ``people`` are at something, suffice for the largest element of the joint."""
        return self.roster.present - people >= largest

    def for_joint(self, people):
        begins = Event(self.env)
        self.joint_asks = (people, begins)
        self.look()
        return begins

    def joint_done(self, people):
        self.at_joint -= people
        self.look()

    def for_preparation(self, preparation):
        preparation.begins = Event(self.env)
        self.preparation_asks = preparation
        self.look()
        return preparation.begins

    def preparation_done(self):
        self.under_way = None
        self.look()

    def look(self):
        if not self.looking:
            self.looking = True
            later(self.env, PEOPLE).callbacks.append(self.give_work)

    def give_work(self, _):
        self.looking = False
        if self.joint_asks:
            people, begins = self.joint_asks
            under_way = self.under_way
            if self.free() < people and under_way and under_way.may_be_put_down:
                if self.free() + under_way.people >= people:
                    if under_way.timer.left() < AS_GOOD_AS_DONE:
                        under_way.timer.fire()
                        return
                    self.under_way = None
                    under_way.process.interrupt()
            if self.free() >= people:
                self.joint_asks = None
                self.at_joint += people
                begins.succeed()
        waiting = self.preparation_asks
        if waiting and self.free() >= waiting.people and (waiting.may_be_put_down or waiting.may_begin()):
            self.preparation_asks = None
            self.under_way = waiting
            waiting.begins.succeed()
