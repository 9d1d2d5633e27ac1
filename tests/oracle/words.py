"""Numbers and lengths in words, as they are said: `and` stands before a fraction and nowhere else."""

ONES = (
    "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen"
).split()
TENS = "- - twenty thirty forty fifty sixty seventy eighty ninety".split()
IRREGULAR = {
    "one": "first", "two": "second", "three": "third", "five": "fifth", "eight": "eighth", "nine": "ninth", "twelve": "twelfth",
}
NAMES = {
    "in": ("inch", "inches"), "ft": ("foot", "feet"), "yd": ("yard", "yards"),
    "mm": ("millimeter", "millimeters"), "cm": ("centimeter", "centimeters"), "m": ("meter", "meters"),
}
# Past it a fraction is said with `over`.
LAST_ORDINAL = 64


def cardinal(number):
    if number < 20:
        return ONES[number]
    if number < 100:
        tens, ones = divmod(number, 10)
        return TENS[tens] + (f"-{ONES[ones]}" if ones else "")
    if number < 1000:
        hundreds, rest = divmod(number, 100)
        return f"{ONES[hundreds]} hundred" + (f" {cardinal(rest)}" if rest else "")
    thousands, rest = divmod(number, 1000)
    assert thousands < 1000, "no shop length is a million of anything"
    return f"{cardinal(thousands)} thousand" + (f" {cardinal(rest)}" if rest else "")


def ordinal(number):
    front, hyphen, last = cardinal(number).rpartition("-")
    last = IRREGULAR.get(last) or (last[:-1] + "ieth" if last.endswith("y") else last + "th")
    return front + hyphen + last


def part_name(den, is_one):
    """What one part is called, or several."""
    if den == 2:
        return "half" if is_one else "halves"
    name = "quarter" if den == 4 else ordinal(den)
    return name if is_one else name + "s"


def fraction(num, den):
    if den > LAST_ORDINAL:
        return f"{cardinal(num)} over {cardinal(den)}"
    return f"{cardinal(num)} {part_name(den, num == 1)}"


def count(number, unit):
    return f"{cardinal(number)} {NAMES[unit][number != 1]}"


def alone(num, den):
    """A fraction without a whole number. A numerator of two words is never alone."""
    if "-" in cardinal(num) or " " in cardinal(num):
        return mixed(0, num, den)
    # `one half inch` can only be one; `five eighths of an inch` could else be boards of an eighth.
    return fraction(num, den) + (" inch" if num == 1 and den <= LAST_ORDINAL else " of an inch")


def mixed(whole, num, den):
    part = "a half" if (num, den) == (1, 2) else fraction(num, den)
    if whole and whole % 100 == 0:
        # Two hundred and five eighths could be 205/8.
        return f"{cardinal(whole)} inches and {part}" + (" of an inch" if den > LAST_ORDINAL else "")
    return f"{cardinal(whole)} and {part} inches"


def inches(whole, pair, behind):
    if pair is None:
        return [] if behind and whole == 0 else [count(whole, "in")]
    if whole == 0 and not behind:
        return [alone(*pair)]
    return [mixed(whole, *pair)]


def said(length, sign, unit=None, digits=None, parts=None):
    """A decimal of one unit, or yards, feet, inches and a fraction."""
    front = "minus " if length < 0 else "plus " if length > 0 and sign == "plus" else ""
    if unit:
        whole, point, rest = digits.partition(".")
        spelled = " ".join([cardinal(int(whole)), "point", *(ONES[int(digit)] for digit in rest)]) if point else cardinal(int(whole))
        return f"{front}{spelled} {NAMES[unit][digits != '1']}"
    yards, feet, whole, pair = parts
    larger = [count(number, unit) for number, unit in [(yards, "yd"), (feet, "ft")] if number]
    return front + " ".join(larger + inches(whole, pair, bool(larger)))
