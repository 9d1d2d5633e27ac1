"""A place read on a tape: graduations lie at whole steps of the tape itself, so what is rounded is the place plus the offset. The
text has the mark first, its fraction joined by a hyphen, and the exact rest behind it, strong or shy."""

from fractions import Fraction
from random import Random

from exact import INCH, MM, MODES, cell, shop_length

COLUMNS = ["inches", "step", "mode", "offset", "mark", "shown", "leftover", "text"]


def mixed(length):
    """`17-3/8"`, `-1/2"`, `0"`."""
    size = abs(length)
    whole, part = divmod(size, 1)
    if part == 0:
        text = str(whole)
    else:
        text = (f"{whole}-" if whole else "") + f"{part.numerator}/{part.denominator}"
    return ("-" if length < 0 else "") + text + '"'


def said(shown, leftover):
    if leftover == 0:
        return mixed(shown)
    return f"{mixed(shown)} {'strong' if leftover > 0 else 'shy'} by {mixed(abs(leftover))}"


def rows():
    random = Random(16)
    steps = [Fraction(1, 8), Fraction(1, 16), Fraction(1, 32), Fraction(1, 64), MM, MM / 2, Fraction(12, 10)]
    offsets = [Fraction(0), INCH, Fraction(1, 32), 10 * MM, Fraction(-3, 4)]
    for _ in range(600):
        place = shop_length(random) * random.choice([1, 1, 1, -1])
        step, offset, mode = random.choice(steps), random.choice(offsets), random.choice(list(MODES))
        if random.randrange(3) == 0:
            place = (random.randint(-300, 300) + Fraction(1, 2)) * step - offset  # a tie
        shown = MODES[mode]((place + offset) / step) * step
        leftover = place + offset - shown
        yield [cell(place), cell(step), mode, cell(offset), cell(shown - offset), cell(shown), cell(leftover), said(shown, leftover)]
