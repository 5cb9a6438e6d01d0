"""Random numbers that belong to what they are for (model, section 9): no state, no order.

A number is a function of (seed, source, replication, index, repeat). The generator is Philox4x32-10 of Salmon, Moraes, Dror and
Shaw, "Parallel random numbers: as easy as 1, 2, 3", SC11 (2011).
"""

MASK = 0xFFFFFFFF


def philox(counter, key):
    """Four 32-bit words from a counter of four words and a key of two."""
    c0, c1, c2, c3 = counter
    k0, k1 = key
    for _ in range(10):
        first, second = 0xD2511F53 * c0, 0xCD9E8D57 * c2
        c0, c1, c2, c3 = (second >> 32) ^ c1 ^ k0, second & MASK, (first >> 32) ^ c3 ^ k1, first & MASK
        k0, k1 = (k0 + 0x9E3779B9) & MASK, (k1 + 0xBB67AE85) & MASK
    return c0, c1, c2, c3


def fnv(name):
    """FNV-1a, 32 bits, of a name in UTF-8."""
    number = 0x811C9DC5
    for byte in name.encode("utf-8"):
        number = ((number ^ byte) * 0x01000193) & MASK
    return number


class RandomNumbers:
    """The random numbers of one replication."""

    def __init__(self, seed, replication):
        self.key = (seed & MASK, (seed >> 32) & MASK)
        self.replication = replication & MASK
        self.names = {}

    def uniform(self, source, index, repeat=0):
        """Number ``index`` of ``source``, in (0, 1); ``repeat`` is 0 for its first use and k for the k-th use again."""
        if source not in self.names:
            self.names[source] = fnv(source)
        w0, w1, _, _ = philox((index & MASK, repeat & MASK, self.replication, self.names[source]), self.key)
        return ((w0 << 20) + (w1 >> 12) + 0.5) / 2.0**52

    def happens(self, chance, source, index, repeat=0):
        return self.uniform(source, index, repeat) < chance
