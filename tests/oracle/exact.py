"""What all parts of the oracle share: lengths as exact fractions of an inch, how they stand in a cell, the modes of rounding."""

from fractions import Fraction
from math import floor

# One inch is 25.4 millimeters by definition.
INCH = Fraction(1)
MM = Fraction(10, 254)
UNITS = {"in": INCH, "ft": 12 * INCH, "yd": 36 * INCH, "mm": MM, "cm": 10 * MM, "m": 1000 * MM}


def cell(length):
    """A length as it stands in a golden file: `n/d` inches in lowest terms."""
    return f"{length.numerator}/{length.denominator}"


def cells(lengths):
    return " ".join(cell(length) for length in lengths)


def ties_up(x):
    return floor(x + Fraction(1, 2))


def ties_even(x):
    # Python documents `round` of a fraction as half to even.
    return round(x)


def ties_away(x):
    return ties_up(x) if x >= 0 else -ties_up(-x)


def down(x):
    return floor(x)


def up(x):
    return -floor(-x)


def toward_zero(x):
    return down(x) if x >= 0 else up(x)


MODES = {
    "ties up": ties_up,
    "ties even": ties_even,
    "ties away": ties_away,
    "down": down,
    "up": up,
    "toward zero": toward_zero,
}

STEPS = [Fraction(1, 2**power) for power in range(8)] + [MM, MM / 2, MM / 10, Fraction(1, 10), Fraction(12, 100), Fraction(1, 3)]


def shop_length(random, most=96):
    """A length as shops have them: whole, binary, decimal, metric, or an equal part."""
    kind = random.randrange(6)
    if kind == 0:
        return Fraction(random.randint(0, most))
    if kind == 1:
        return Fraction(random.randint(0, most * 64), 64)
    if kind == 2:
        return Fraction(random.randint(0, most * 16), 16)
    if kind == 3:
        return random.randint(0, most * 100) * Fraction(1, 100)
    if kind == 4:
        return random.randint(0, most * 254) * MM / 10
    return Fraction(random.randint(0, most * 3), random.randint(2, 24))
