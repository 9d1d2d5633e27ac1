"""A length in every style, join, mark, sign, with and without zeros, in lowest terms and over a fixed denominator, with every count
of decimals, as it is written and as it is said. What does not come out even is refused, never rounded."""

from fractions import Fraction
from itertools import product
from random import Random

from exact import UNITS, cell, shop_length
from words import said

COLUMNS = ["inches", "style", "join", "marks", "sign", "zeros", "denominator", "places", "written", "said"]

FRACTIONS = ["inches", "feet inches", "yards"]
DECIMALS = {"decimal inches": "in", "decimal feet": "ft", "millimeters": "mm", "centimeters": "cm", "meters": "m"}
JOINS, MARKS = ["space", "hyphen", "glyph"], ["quotes", "primes", "words"]
SIGNS, ZEROS = ["minus", "true minus", "plus"], ["kept", "dropped"]
MOST_PLACES = 24

AFTER = {
    "quotes": {"in": '"', "ft": "'"},
    "primes": {"in": "\u2033", "ft": "\u2032"},
    "words": {"in": " in", "ft": " ft"},
}
# The fractions that The Unicode Standard has as one character.
GLYPHS = dict(zip(
    ["1/2", "1/3", "2/3", "1/4", "3/4", "1/5", "2/5", "3/5", "4/5", "1/6", "5/6", "1/7", "1/8", "3/8", "5/8", "7/8", "1/9", "1/10"],
    "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅐⅛⅜⅝⅞⅑⅒",
))
RAISED, LOWERED = str.maketrans("0123456789", "⁰¹²³⁴⁵⁶⁷⁸⁹"), str.maketrans("0123456789", "₀₁₂₃₄₅₆₇₈₉")


def sign_of(length, sign):
    if length < 0:
        return "\u2212" if sign == "true minus" else "-"
    return "+" if length > 0 and sign == "plus" else ""


def fraction(num, den, join):
    if join != "glyph":
        return f"{num}/{den}"
    return GLYPHS.get(f"{num}/{den}", f"{str(num).translate(RAISED)}\u2044{str(den).translate(LOWERED)}")


def parts(size, style, denominator):
    """Yards, feet, inches and the fraction as a pair; what the style has no place for is none."""
    whole, part = divmod(size, 1)
    den = denominator or part.denominator
    pair = (int(part * den), den) if part else None
    yards, whole = divmod(whole, 36) if style == "yards" else (None, whole)
    feet, whole = divmod(whole, 12) if style != "inches" else (None, whole)
    return yards, feet, whole, pair


def in_fractions(size, style, join, marks, zeros, denominator):
    yards, feet, inches, pair = parts(size, style, denominator)
    if zeros == "dropped":
        yards, feet = yards or None, feet or None
    behind = yards is not None or feet is not None
    # No inches: nothing stands for them where a fraction stands alone, and none are written where zeros are dropped. Between
    # something larger and a fraction they stay; and nothing at all is zero inches.
    if inches == 0:
        needed = behind if pair else (not behind or zeros == "kept")
        inches = 0 if needed else None
    text = f"{yards} yd" if yards is not None else ""
    if feet is not None:
        text += (" " if text else "") + f"{feet}{AFTER[marks]['ft']}"
    if inches is None and pair is None:
        return text
    if text:
        text += "-" if feet is not None and marks != "words" else " "
    if inches is not None:
        text += str(inches)
    if pair:
        text += {"space": " ", "hyphen": "-", "glyph": ""}[join] if inches is not None else ""
        text += fraction(*pair, join)
    return text + AFTER[marks]["in"]


def decimal(size, places):
    """Digits round a point, or none where they do not come out even; as many as needed where `places` is none."""
    if places is not None and places > MOST_PLACES:
        return None
    for count in range(MOST_PLACES + 1) if places is None else [places]:
        scaled = size * 10**count
        if scaled.denominator == 1:
            digits = str(scaled.numerator).rjust(count + 1, "0")
            return digits if count == 0 else f"{digits[:-count]}.{digits[-count:]}"
    return None


def written(length, style, join, marks, sign, zeros, denominator, places):
    size = abs(length)
    if style in DECIMALS:
        unit = DECIMALS[style]
        digits = decimal(size / UNITS[unit], places)
        return None if digits is None else sign_of(length, sign) + digits + AFTER[marks].get(unit, f" {unit}")
    if style == "feet inches sixteenths":
        feet, rest = divmod(size * 16, 192)
        inches, sixteenths = divmod(rest, 16)
        return f"{sign_of(length, sign)}{feet}-{inches:02}-{int(sixteenths):02}" if sixteenths.denominator == 1 else None
    if denominator == 0 or (denominator and (size * denominator).denominator != 1):
        return None
    return sign_of(length, sign) + in_fractions(size, style, join, marks, zeros, denominator)


def spoken(length, style, sign, denominator, places):
    """Words: by the same style, sign, denominator and count of decimals, units of which there are none left out."""
    if style in DECIMALS:
        unit = DECIMALS[style]
        return said(length, sign, unit=unit, digits=decimal(abs(length) / UNITS[unit], places))
    denominator = 16 if style == "feet inches sixteenths" else denominator
    style = "feet inches" if style == "feet inches sixteenths" else style
    return said(length, sign, parts=parts(abs(length), style, denominator))


def settings(random):
    everything = list(product(FRACTIONS, JOINS, MARKS, SIGNS, ZEROS))
    for style, join, marks, sign, zeros in everything:
        for denominator in [None, None, 16, 64]:
            yield style, join, marks, sign, zeros, denominator, None
    for style, marks, sign in product(DECIMALS, MARKS, SIGNS):
        for places in [None, None, 0, 1, 3, 4, 6]:
            yield style, random.choice(JOINS), marks, sign, random.choice(ZEROS), None, places
    for sign in SIGNS * 12:
        yield "feet inches sixteenths", random.choice(JOINS), random.choice(MARKS), sign, random.choice(ZEROS), None, None
    odd = [("inches", 0, None), ("yards", 0, None), ("meters", None, 24), ("meters", None, 25), ("millimeters", 0, 200)]
    for style, denominator, places in odd:
        yield style, "space", "quotes", "minus", "kept", denominator, places


def lengths(random, style, denominator, places):
    """One that comes out even, for certain, and others that may not."""
    if denominator:
        even = Fraction(random.randint(0, 96 * denominator), denominator)
    elif style == "feet inches sixteenths":
        even = Fraction(random.randint(0, 960), random.choice([1, 2, 4, 8, 16]))
    elif style in DECIMALS:
        digits = random.randint(0, 4) if places is None else min(places, 5)
        even = Fraction(random.randint(0, 10 ** (digits + 2)), 10**digits) * UNITS[DECIMALS[style]]
    else:
        even = Fraction(random.randint(0, 80 * 64), random.choice([1, 2, 3, 4, 5, 8, 10, 16, 32, 64, 127]))
    yield even * random.choice([1, -1])
    yield Fraction(random.choice([0, 2, 4, 24, 48, 144, 146, 241]), 4)
    yield shop_length(random) * random.choice([1, -1])


def rows():
    random = Random(32)
    for setting in settings(random):
        style, join, marks, sign, zeros, denominator, places = setting
        for length in lengths(random, style, denominator, places):
            text = written(length, *setting)
            speech = None if text is None else spoken(length, style, sign, denominator, places)
            counts = ["lowest" if denominator is None else denominator, "shortest" if places is None else places]
            yield [cell(length), style, join, marks, sign, zeros, *counts, text or "refused", speech or "refused"]
