"""Texts that are lengths, in every notation, each with the value it was put together from; and texts that must be refused because
they have two readings of different value, or none. `option` says what the reader was told beforehand: the unit of a bare number,
what a comma means, or that three numbers with dashes are feet, inches and sixteenths."""

from fractions import Fraction
from random import Random

from exact import MM, UNITS, cell
from printing import GLYPHS, LOWERED, RAISED
from words import NAMES, cardinal, mixed, ordinal, part_name

COLUMNS = ["text", "option", "inches"]

DENOMINATORS = [2, 3, 4, 5, 6, 8, 10, 12, 16, 32, 64, 100, 127]
BLANKS = [" ", "  ", "\u00a0", "\u2009", "\u202f", "\t"]
HYPHENS = ["-", "\u2010", "\u2011", "\u2013"]
INCH_MARKS = ['"', ' "', "''", "\u2033", "\u201d", "\u2032\u2032", " in", "in", " in.", " IN", " inch", " inches", "-inch"]
FOOT_MARKS = ["'", "\u2032", "\u2019", " ft", "ft", " FT", " foot", " feet"]
BETWEEN = ["", " ", "-", " - ", ", ", "\u2013"]
SPELLINGS = {
    "yd": ["yd", "yards"], "ft": ["ft", "feet", "foot"], "mm": ["mm", "MM", "millimeters", "millimetres"],
    "cm": ["cm", "centimeters"], "m": ["m", "meters", "metres"],
}
MINUS = ["-", "\u2212", "- ", "\u2013"]


def proper(random):
    """A fraction below one as it may be written, not always in lowest terms."""
    den = random.choice(DENOMINATORS)
    return random.randint(1, den - 1), den


def slashed(random, num, den):
    slash = random.choice(["/", "/", "/", " / ", "/ ", "\u2044", "\u2215"])
    return f"{num}{slash}{den}"


def raised(random, num, den):
    below = random.choice([str(den).translate(LOWERED), str(den).translate(LOWERED), str(den)])
    return f"{str(num).translate(RAISED)}{random.choice(['/', chr(0x2044)])}{below}"


def glyph(random):
    name = random.choice(list(GLYPHS))
    return GLYPHS[name], Fraction(name)


def decimal(random):
    places = random.randint(1, 7)
    digits = str(random.randint(0, 10 ** (places + 2))).rjust(places + 1, "0")
    text = f"{digits[:-places]}.{digits[-places:]}"
    value = Fraction(int(digits), 10**places)
    return (text[1:] if text.startswith("0.") and random.randrange(2) else text), value


def number(random, most=200):
    """A number without a sign, of any kind that is written in figures, and its value."""
    kind = random.randrange(8)
    whole = random.randint(1, most)
    if kind == 0:
        return str(whole), Fraction(whole)
    if kind == 1:
        return decimal(random)
    if kind == 2:
        sign, value = glyph(random)
        join = random.choice(["", " ", "-", None])
        return (sign, value) if join is None else (f"{whole}{join}{sign}", whole + value)
    num, den = proper(random)
    value = Fraction(num, den)
    if kind == 3:
        return slashed(random, num, den), value
    if kind == 4:
        return raised(random, num, den), value
    if kind == 5:
        return f"{whole}{raised(random, num, den)}", whole + value
    return f"{whole}{random.choice(BLANKS + HYPHENS)}{slashed(random, num, den)}", whole + value


def in_inches(random):
    text, value = number(random)
    return text + random.choice(INCH_MARKS + ["", ""]), value


def in_feet(random):
    feet, mark = random.randint(0, 40), random.choice(FOOT_MARKS)
    between, (text, value) = random.choice(BETWEEN), number(random, 13)
    if mark[-1].isalpha() and between == "" and not text[0].isdigit():
        between = " "  # a letter and a raised digit or a point glued to it are another matter
    return f"{feet}{mark}{between}{text}{random.choice(INCH_MARKS + ['', ''])}", 12 * feet + value


def in_larger(random):
    """Units in falling order, whole but for the last."""
    unit = random.choice(["yd", "ft", "mm", "cm", "m"])
    text, value = number(random)
    kind = random.randrange(5)
    if kind < 3:
        return f"{text}{random.choice([' ', '', ' '])}{random.choice(SPELLINGS[unit])}", value * UNITS[unit]
    one, other, last = random.randint(0, 30), random.randint(0, 99), random.randint(0, 9)
    return random.choice([
        (f"{one} yd {last} ft {other} in", one * UNITS["yd"] + last * UNITS["ft"] + other),
        (f"{one} yards {other} inches", one * UNITS["yd"] + other),
        (f"{one} m {other} cm", one * UNITS["m"] + other * UNITS["cm"]),
        (f"{one} m {other} cm {last} mm", one * UNITS["m"] + other * UNITS["cm"] + last * MM),
        (f"{one} cm {last} mm", one * UNITS["cm"] + last * MM),
        (f"{one}m{other:02}", one * UNITS["m"] + other * UNITS["cm"]),
        (f"{one}m{other:02}cm", one * UNITS["m"] + other * UNITS["cm"]),
    ])


def in_ordinals(random):
    num, den = random.choice([(7, 16), (3, 8), (1, 32), (2, 3), (9, 16), (5, 64), (21, 32)])
    ending = {2: "nds", 3: "rds"}.get(den % 10, "ths") if den % 100 not in (12, 13) else "ths"
    ending = ending[:-1] if num == 1 else ending
    whole = random.choice([0, 0, 17])
    front = f"{whole} " if whole else ""
    after = random.choice(["", " in", " of an inch"][:2 if whole else 3])
    return f"{front}{num}/{den}{ending}{after}", whole + Fraction(num, den)


def in_words(random):
    whole = random.choice([random.randint(1, 20), random.randint(1, 99), random.randint(101, 999)])
    den = random.choice([2, 4, 8, 16, 32, 64])
    num = random.randrange(1, den, 2)
    value = Fraction(num, den)
    kind = random.randrange(9)
    feet = random.randint(2, 40)
    unit = random.choice(["in", "ft", "yd", "mm", "cm", "m"])
    one, many = NAMES[unit]
    tens = random.choice([20, 30, 40, 50, 60, 70, 80, 90])
    if kind == 0:
        return f"{cardinal(whole)} {many if whole > 1 else one}", whole * UNITS[unit]
    if kind == 1 and whole % 100:
        return mixed(whole, num, den), whole + value
    if kind == 2 and whole % 100 and num <= 20:
        return mixed(whole, num, den).removesuffix(" inches"), whole + value
    if kind == 3 and num <= 20:
        return f"{cardinal(num)} {part_name(den, num == 1)} of {'an' if unit == 'in' else 'a'} {one}", value * UNITS[unit]
    if kind == 4:
        return f"{cardinal(feet)} foot {cardinal(random_inch := random.randint(1, 11))}", Fraction(12 * feet + random_inch)
    if kind == 5:
        return f"{cardinal(feet)} and a half feet", 12 * feet + Fraction(6)
    if kind == 6 and num <= 20:
        return f"{cardinal(feet)} feet {mixed(random_inch := random.randint(1, 11), num, den)}", 12 * feet + random_inch + value
    if kind == 7:
        digits = [random.randint(0, 9) for _ in range(random.randint(1, 4))]
        spelled = " ".join(cardinal(digit) for digit in digits)
        after = Fraction(int("".join(map(str, digits))), 10 ** len(digits))
        return f"{cardinal(whole)} point {spelled} {many}", (whole + after) * UNITS[unit]
    return random.choice([
        ("a half", Fraction(1, 2)), ("an eighth", Fraction(1, 8)), ("half an inch", Fraction(1, 2)), ("a foot", Fraction(12)),
        ("an inch and a half", Fraction(3, 2)), (f"minus {cardinal(feet)}", Fraction(-feet)),
        # Thirty and nine eighths is no reading, for a fraction part stays below one: these have one alone.
        (f"{cardinal(tens)}-nine eighths", Fraction(tens + 9, 8)),
        (f"{cardinal(10 * tens)} and nine eighths", Fraction(10 * tens + 9, 8)),
        (f"{cardinal(tens // 20)} {ordinal(7)}s of a foot", Fraction(12 * (tens // 20), 7)),
    ])


def with_options(random):
    whole = random.randint(1000, 999_999)
    grouped, points = f"{whole:,}", f"{whole:,}".replace(",", ".")
    text, value = number(random)
    places = random.randint(1, 4)
    digits = random.randint(0, 10**places - 1)
    one, other = random.randint(1, 40), random.randint(0, 15)
    return random.choice([
        (text, "mm", value * MM),
        (f"{one}", "ft", Fraction(12 * one)),
        (f"{one}' {other}", "mm", Fraction(12 * one + other)),
        (f"{grouped} mm", "groups", whole * MM),
        (grouped.replace(",", "'") + " mm", "groups", whole * MM),
        (grouped.replace(",", " ") + " mm", "groups", whole * MM),
        (f"{grouped}.{digits:0{places}} cm", "groups", (whole + Fraction(digits, 10**places)) * 10 * MM),
        (f"{one},{digits:0{places}} cm", "decimal", (one + Fraction(digits, 10**places)) * 10 * MM),
        (f"{points},{digits:0{places}} mm", "decimal", (whole + Fraction(digits, 10**places)) * MM),
        (f"{one}-{other % 12:02}-{other:02}", "sixteenths", 12 * one + other % 12 + Fraction(other, 16)),
        (f"{one}-{other % 12}-{other}", "sixteenths", 12 * one + other % 12 + Fraction(other, 16)),
    ])


def refused(random):
    """No reading, or two of different value."""
    a, b = random.randint(2, 40), random.randint(2, 40)
    num, den = proper(random)
    tens, ones = random.choice([20, 30, 40, 50]), random.choice([3, 5, 7])
    return random.choice([
        f"{a} {den + num}/{den}", f"{a} {den}/{den}", f"{a}-{den + 1}/{den}",  # a fraction part of one or more
        f"{a}/0", f"{b} {a}/0", f"{a} {b}", f"{a}/{b}/{a}", f"{a}x{b}", f"{a}.5 {num}/{den}",
        f"{a}' {b}'", f"{a} in {b} in", f"{a} in {b} ft", f"{a} mm {b} cm", f"{a} furlongs", f"{a} {num}/{den} strong",
        f"{a} - {num}/{den}", f"{a} -{num}/{den}", f"{a} m - {b} cm", f"{a}\u2212{num}/{den}", f"{a}m{b % 10}", f"{a}m{b:02}0",
        f"{a} in {b}", f"{a}'000\"", f"{a},250", f"{a},250 mm", f"{a}-04-08", f"{a} 1/2' 3\"", f"{a}\" {b}'", "", " ", "in", "-", "1//2",
        f"{cardinal(a % 9 + 1)} hundred and {cardinal(ones)} eighths", f"{cardinal(tens)} {cardinal(ones)} eighths",
        f"{cardinal(tens)}-{cardinal(ones)} eighths", f"{cardinal(a % 8 + 2)} feet and a half",
        f"twenty one {ordinal(30)} {ordinal(2)}s", f"+ - {a}", f"--{a}", f"{a}..5", f"{a} {num}/{den} {num}/{den}",
    ])


def rows():
    random = Random(8)
    seen = set()
    sources = [(in_inches, 700), (in_feet, 900), (in_larger, 500), (in_ordinals, 40), (in_words, 700)]
    for source, times in sources:
        for _ in range(times):
            text, value = source(random)
            if source not in (in_ordinals, in_words) and random.randrange(5) == 0:
                text, value = random.choice(MINUS) + text, -value
            text = random.choice(["", "", "", " "]) + text + random.choice(["", "", "", " "])
            if text not in seen:
                seen.add(text)
                yield [text, "", cell(value)]
    for _ in range(300):
        text, option, value = with_options(random)
        if (text, option) not in seen:
            seen.add((text, option))
            yield [text, option, cell(value)]
    for _ in range(300):
        text = refused(random)
        if text not in seen:
            seen.add(text)
            yield [text, "", "refused"]
