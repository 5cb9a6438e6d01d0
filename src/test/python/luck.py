"""The luck of one replication: for every source of randomness the values in the order in which they are drawn."""

import csv


class Luck:
    """Hands out drawn values; a source whose draws are all used up is an error, never a silent repeat."""

    def __init__(self, path):
        self.values = {}
        with open(path, newline="", encoding="utf-8") as file:
            rows = csv.reader(file)
            next(rows)
            for source, _, value in rows:
                self.values.setdefault(source, []).append(float(value))
        self.used = dict.fromkeys(self.values, 0)

    def draw(self, source):
        """The next value of ``source``."""
        number = self.used[source] + 1
        self.used[source] = number
        return self.nth(source, number)

    def nth(self, source, number):
        """Value ``number``, from 1, of ``source``, whether or not others were drawn."""
        values = self.values[source]
        if number > len(values):
            raise ValueError(f"draw {number} of '{source}' is asked for, only {len(values)} are given")
        return values[number - 1]
