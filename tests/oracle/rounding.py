"""Any length to any step in every mode: on every graduation from halves to 128ths, on ties, a hair beside them, below zero."""

from fractions import Fraction
from random import Random

from exact import MODES, STEPS, cell, shop_length

COLUMNS = ["inches", "step", *MODES]


def values(random, step):
    """Multiples, ties, what lies just beside both, and anything."""
    for count in [0, 1, 2, 3, 11, random.randint(4, 5000)]:
        for part in [Fraction(0), Fraction(1, 2), Fraction(1, 3), Fraction(random.randint(1, 98), 99)]:
            for hair in [Fraction(0), Fraction(1, 10**9), Fraction(-1, 10**9)]:
                yield (count + part + hair) * step
    for _ in range(20):
        yield shop_length(random)


def rows():
    random = Random(64)
    for step in STEPS:
        for value in sorted({sign * value for value in values(random, step) for sign in (1, -1)}):
            yield [cell(value), cell(step), *(mode(value / step) for mode in MODES.values())]
