"""A line that joins its coils while the process runs on stored strip."""

from enum import Enum
from math import inf, sqrt

from book import SLOWED, STOPPED
from crossings import first_fall, first_reached, first_rise
from description import fill_rate_limit, or_infinite
from line import Line
from margins import margins


class Entry(Enum):
    FILLING = "runs faster than the process, to fill"
    SETTLING = "comes to the speed the process heads for"
    MEETING = "comes to the process's speed, to follow it up"
    FOLLOWING = "has the process's speed on its way up, not yet matched"
    HOLDING = "holds its speed until stored overtravel is drawn"
    MATCHED = "is one with the process"
    RUNNING_OUT = "slows for the tail"
    STANDING = "stands for the joint"


LINKED = (Entry.FOLLOWING, Entry.MATCHED)
AWAY = (Entry.RUNNING_OUT, Entry.STANDING)


class AccumulatedLine(Line):
    def __init__(self, env, case, numbers):
        entry, process = case["entry"], case["process"]
        self.entry_up = or_infinite(entry.get("acceleration"))
        self.entry_down = or_infinite(entry.get("deceleration"))
        self.process_up = or_infinite(process.get("acceleration"))
        self.process_down = self.strip_down = or_infinite(process.get("deceleration"))
        self.fill_rate = fill_rate_limit(case["accumulator"])
        self.reserve = case["accumulator"].get("reserve") or 0.0
        self.given_restart_level = process.get("restart_level")
        self.slowing = process.get("slowing")
        super().__init__(env, case, numbers)
        self.level = self.capacity
        self.entered = 0.0
        self.v_e = self.v
        self.a_e = 0.0
        self.entry = Entry.MATCHED
        self.heading = self.v  # the speed that the process is heading for
        self.exactly = True  # the settled level is the capacity by the way it was reached
        self.creeping = False  # running out, and at the creep speed or on the way to it
        self.joint_released = True
        self.restarting = False

    def to_stop_in(self):
        """What a coil takes to come to rest in the joiner from the rated speed (m)."""
        slowing = (self.rated**2 - self.creep_speed**2) / (2 * self.entry_down)
        return max(0.0, self.creep_length) + slowing

    # ---- levels

    def stop_level(self, speed):
        return self.reserve + speed * speed / (2 * self.process_down)

    def restart_level(self):
        if self.given_restart_level is not None:
            return self.given_restart_level
        return min(self.capacity, self.stop_level(self.rated) + 0.1 * self.capacity)

    def resume_level(self):
        given = self.slowing.get("resume_level")
        return min(self.capacity, self.slowing["level"] + 0.1 * self.capacity) if given is None else given

    def settled_level(self):
        """Where the level would come to rest if the entry now ramped to the speed that the process is heading for."""
        to = self.heading
        level = self.level
        if self.v_e >= to:
            level += (self.v_e - to) ** 2 / (2 * self.entry_down)
        else:
            level -= (to - self.v_e) ** 2 / (2 * self.entry_up)
        if self.v > to:
            level -= (self.v - to) ** 2 / (2 * self.process_down)
        elif self.v < to:
            level += (to - self.v) ** 2 / (2 * self.process_up)
        return level

    # ---- planning: the process before the entry

    def plan(self):
        self.plan_process()
        self.plan_entry()

    def plan_process(self):
        self.losses.end_at_speed()
        target = self.target_speed()
        changed = target != self.heading
        self.heading = target
        if self.v > target:
            self.ramp_process(-self.process_down)
        elif self.v < target:
            self.ramp_process(self.process_up)
        else:
            self.a = 0.0
        self.time_stops()
        if changed:
            self.heading_changed()

    def target_speed(self):
        if self.is_held():
            return 0.0
        target = min(self.slowing["speed"], self.rated) if self.slowed else self.rated
        return min(target, self.joints.passage["speed"]) if self.joints.in_passage() else target

    def ramp_process(self, acceleration):
        if abs(acceleration) == inf:
            self.arrive_process()
        else:
            self.a = acceleration

    def arrive_process(self):
        self.v = self.heading
        self.a = 0.0
        self.losses.end_at_speed()
        if self.v == 0:
            self.came_to_rest()

    def heading_changed(self):
        if self.entry is Entry.MATCHED:
            self.follow_if_it_can()
        elif self.entry not in AWAY:
            self.decide()

    def follow_if_it_can(self):
        """A matched entry follows the process exactly where its own acceleration allows, whatever the settled level."""
        if self.v_e == self.heading:
            return
        slowing = self.v_e > self.heading
        if self.entry_down >= self.process_down if slowing else self.entry_up >= self.process_up:
            return
        self.exactly = False
        if not slowing and self.settled_level() < self.capacity:
            self.entry = Entry.FILLING
        else:
            self.entry = Entry.SETTLING

    def decide(self):
        """What the entry does when the speed that the process heads for has changed, or the joint is released."""
        self.exactly = False
        if self.settled_level() < self.capacity:
            self.entry = Entry.FILLING
        elif self.v_e >= self.heading:
            self.entry = Entry.SETTLING
        elif self.level <= self.capacity:
            self.entry = Entry.MEETING
        else:
            self.entry = Entry.HOLDING

    def plan_entry(self):
        if self.entry is Entry.FOLLOWING and self.v == self.heading and self.level < self.capacity:
            self.entry = Entry.FILLING
        self.ramp_entry()
        if self.entry in (Entry.SETTLING, Entry.FOLLOWING) and self.v_e == self.v == self.heading:
            self.match()

    def ramp_entry(self):
        self.a_e = 0.0
        if self.entry in LINKED:
            self.go_with_process()
        elif self.entry is Entry.FILLING:
            self.go(min(self.top_speed, self.heading + self.fill_rate))
        elif self.entry is Entry.SETTLING:
            self.go(self.heading)
        elif self.entry is Entry.MEETING:
            self.go_to_meet()
        elif self.entry is Entry.RUNNING_OUT:
            self.go_out()

    def match(self):
        self.entry = Entry.MATCHED
        if self.exactly:
            self.level = self.capacity
        self.book.matched(self.env.now)
        self.work.entry_matched()

    def go(self, target):
        """Plan a ramp to ``target``; over the last metres not above the creep speed."""
        if self.remaining <= self.creep_length:
            target = min(target, self.creep_speed)
        self.target = target
        if self.v_e > target:
            if self.entry_down == inf:
                self.v_e = target
            else:
                self.a_e = -self.entry_down
        elif self.v_e < target:
            if self.entry_up == inf:
                self.v_e = min(target, self.highest_jump())
            else:
                self.a_e = self.entry_up

    def highest_jump(self):
        """A speed that rises at once stops where a ramp, however steep, would have met the tail or a full accumulator."""
        left = self.remaining - self.creep_length
        if self.creep_speed == 0:
            highest = inf if self.entry_down == inf else sqrt(2 * self.entry_down * self.remaining)
        elif left > 0:
            highest = inf if self.entry_down == inf else sqrt(self.creep_speed**2 + 2 * self.entry_down * left)
        else:
            highest = min(self.creep_speed, sqrt(2 * self.entry_down * self.remaining))
        if self.entry is Entry.FILLING and self.entry_down < inf:
            room = max(0.0, self.capacity - self.settled_level())
            over = max(0.0, self.v_e - self.heading)
            highest = min(highest, self.heading + sqrt(over**2 + 2 * self.entry_down * room))
        return max(highest, self.v_e)

    def go_with_process(self):
        if self.v_e == self.v:
            self.a_e = self.a
        elif self.v_e < self.v:
            self.v_e = min(self.v, self.highest_jump())
            if self.v_e == self.v:
                self.a_e = self.a
        else:
            self.v_e = self.v
            self.a_e = self.a

    def go_to_meet(self):
        if self.v_e > self.v:
            if self.entry_down == inf:
                self.v_e = self.v
            else:
                self.a_e = -self.entry_down
        elif self.v_e < self.v:
            if self.entry_up == inf:
                self.v_e = min(self.v, self.highest_jump())
            else:
                self.a_e = self.entry_up

    def go_out(self):
        if self.creeping:
            if self.v_e > self.creep_speed:
                self.go_down(self.creep_speed)
        else:
            self.go_down(0.0)

    def go_down(self, target):
        self.target = target
        if self.entry_down == inf:
            self.v_e = target
        elif self.v_e > target:
            self.a_e = -self.entry_down

    # ---- moving on

    def linked(self):
        return self.entry in LINKED and self.v_e == self.v

    def level_ahead(self):
        if self.linked():
            return self.level, 0.0, 0.0
        return self.level, self.v_e - self.v, (self.a_e - self.a) / 2

    def move(self, dt):
        if dt <= 0:
            return
        self.book.level_over(self.level_ahead(), dt)
        metres_in = dt * (self.v_e + self.a_e * dt / 2)
        if self.entry is Entry.RUNNING_OUT:
            self.book.latest["entryRamps"].append((dt, self.v_e, self.a_e))
        if self.v_e == 0 and self.a_e == 0 and self.entry not in AWAY:
            self.book.add("blockedSeconds", dt)
        metres_out = self.move_process(dt)
        self.entered += metres_in
        self.book.add("enteredMetres", metres_in)
        self.remaining -= metres_in
        linked = self.linked()
        if not linked:
            self.level += metres_in - metres_out
        self.v += self.a * dt
        self.v_e = self.v if linked else self.v_e + self.a_e * dt

    def balance(self):
        """Strip that came from nowhere (m)."""
        return self.capacity + self.entered - self.processed - self.level

    def stored(self):
        return self.level

    # ---- what happens next

    def crossings(self):
        """(seconds from now, what happens) in the order in which they are to happen at one instant."""
        return [
            *self.ramp_crossings(),
            *self.tail_crossings(),
            *self.timers.crossing(),
            *self.own_stop_crossing(),
            *self.joints.crossings(),
            *self.change_crossing(),
            *self.full_crossing(),
            *self.starved_crossing(),
            *self.slow_crossing(),
            *self.recovery_crossings(),
            *self.uncoiler_crossing(),
        ]

    def ramp_crossings(self):
        if self.a != 0:
            yield max(0.0, (self.heading - self.v) / self.a), self.arrive_process
        if self.entry is Entry.MEETING:
            if self.v_e == self.v:
                yield 0.0, self.met
            elif self.a_e != self.a:
                yield max(0.0, (self.v - self.v_e) / (self.a_e - self.a)), self.met
        elif self.a_e != 0 and not self.linked():
            # On its way up a filling entry passes the speed for which it heads when it settles.
            stage = self.heading if self.v_e < self.heading < self.target else self.target
            yield max(0.0, (stage - self.v_e) / self.a_e), lambda: self.arrive_entry(stage)

    def arrive_entry(self, speed):
        self.v_e = speed

    def met(self):
        """The entry that came to the process's speed, with the process on its way up."""
        self.v_e = self.v
        if self.level > self.capacity:
            self.decide()
        elif self.entry_up >= self.process_up:
            self.entry = Entry.FOLLOWING
            self.exactly = False
        else:
            self.entry = Entry.FILLING

    def tail_crossings(self):
        if self.entry is Entry.RUNNING_OUT:
            if self.creeping and self.v_e == self.creep_speed:
                left = self.remaining - self.creep_speed**2 / (2 * self.entry_down)
                yield max(0.0, left / self.creep_speed), self.stop_creeping
            elif not self.creeping and self.v_e == 0:
                yield 0.0, self.stand
        elif self.entry is not Entry.STANDING and self.remaining > self.creep_length > 0:
            yield first_fall(self.remaining - self.creep_length, -self.v_e, -self.a_e / 2), self.reach_creep_length

    def stop_creeping(self):
        self.creeping = False

    def stand(self):
        self.entry = Entry.STANDING
        self.stop_tail()

    def reach_creep_length(self):
        self.remaining = self.creep_length

    def change_crossing(self):
        """The running coil ends: the first downward ramp for its tail, or the creep speed held over its last metres."""
        if self.entry in AWAY:
            return
        if self.remaining <= self.creep_length:
            if self.v_e >= self.creep_speed:
                yield 0.0, self.run_out
            elif self.a_e > 0:
                yield (self.creep_speed - self.v_e) / self.a_e, self.reach_creep_speed
            yield self.tail_ramp_crossing(0.0, 0.0), self.run_out
        else:
            yield self.tail_ramp_crossing(max(0.0, self.creep_length), self.creep_speed), self.run_out

    def tail_ramp_crossing(self, length, speed):
        """When what remains is what it takes to slow down to ``speed`` and have ``length`` left."""
        if self.a_e == -self.entry_down:
            return inf
        share = self.a_e / self.entry_down
        needed = length + (self.v_e - speed) * (self.v_e + speed) / (2 * self.entry_down)
        left = self.remaining - needed
        if left <= 1e-13 * (self.remaining - length):
            left = 0.0  # after a jump to the greatest speed that still stops in time, but for rounding
        return first_fall(left, -self.v_e * (1 + share), -self.a_e * (1 + share) / 2)

    def reach_creep_speed(self):
        self.v_e = self.creep_speed
        self.run_out()

    def run_out(self):
        self.begin_change(self.level, self.stop_level(self.rated))
        self.creeping = self.creep_speed > 0 and self.v_e >= self.creep_speed
        self.entry = Entry.RUNNING_OUT
        self.joint_released = False
        if self.starved and self.starving_counts:
            self.book.suffers(STOPPED)
        elif self.slowed and self.slowing_counts:
            self.book.suffers(SLOWED)

    def full_crossing(self):
        if self.entry is Entry.FILLING and self.v_e >= self.heading and self.a_e != -self.entry_down:
            share = self.a_e / self.entry_down
            room = self.capacity - self.settled_level()
            over = self.v_e - self.heading
            wait = 0.0 if room <= 0 else first_rise(-room, over * (1 + share), self.a_e * (1 + share) / 2)
            yield wait, self.settle
        elif self.entry is Entry.HOLDING:
            above = self.settled_level() - self.capacity
            yield max(0.0, above / (self.heading - self.v_e)), self.settle

    def settle(self):
        self.entry = Entry.SETTLING
        self.exactly = True

    def starved_crossing(self):
        """Only a process that is not coming to rest and not slowing down can run short; a touch is no crossing."""
        if self.heading == 0 or self.a < 0:
            return
        _, c1, c2 = self.level_ahead()
        blur = 1e-10 * max(1.0, self.capacity)
        spare = self.level - self.stop_level(self.v)
        c1 -= self.v * self.a / self.process_down
        c2 -= self.a * self.a / (2 * self.process_down)
        if spare + blur < 0 <= c1 and c2 < 0 and spare + blur - c1 * c1 / (4 * c2) < 0:
            # Too low and rising, but not for long enough.
            yield -c1 / (2 * c2), self.starve
        else:
            yield first_fall(spare + blur, c1, c2), self.starve

    def starve(self):
        self.begin_starving(counted=True)

    def slow_crossing(self):
        if self.slowing and not self.slowed:
            _, c1, c2 = self.level_ahead()
            above = self.level - self.slowing["level"] + 1e-10 * max(1.0, self.capacity)
            yield first_fall(above, c1, c2), self.begin_slowing

    def recovery_crossings(self):
        """Resuming full speed, and restarting after a starved stop: from a level on, once the joint is released."""
        if not self.joint_released:
            return
        blur = 1e-10 * max(1.0, self.capacity)
        _, c1, c2 = self.level_ahead()
        if self.slowed:
            yield first_reached((self.level - self.resume_level(), c1, c2), blur), self.resume
        if self.starved and not self.restarting and self.v == 0:
            yield first_reached((self.level - self.restart_level(), c1, c2), blur), self.restart

    def resume(self):
        self.slowed = False

    def restart(self):
        self.restarting = True
        self.after(self.draw_restart_delay(), self.stop_starving)

    def stop_starving(self):
        self.restarting = False
        self.starved = False

    def lacks_strip(self):
        return self.level < self.stop_level(self.rated)

    # ---- the tail and the people

    def tail_is_in_joiner(self):
        return self.entry is Entry.STANDING

    def entry_motion(self):
        return self.v_e, self.a_e

    def coil_still_lasts(self):
        """How long the running coil lasts when what is missing in the accumulator has been filled in (s)."""
        if self.heading == 0:
            return inf
        return (self.remaining - max(0.0, self.capacity - self.level)) / self.heading

    # ---- the joint is released

    def released(self):
        self.joint_released = True
        self.book.latest.update(margins(self, self.book.latest))
        self.decide()
