"""The runs that `spacing.py` divides: seeded choices, small enough to be read, with every kind, every end and every tape."""

from fractions import Fraction
from functools import partial

from exact import MM, MODES, cell, cells
from spacing import between, counted, drawers, end_gap, equal, nearest, on_center

STEPS = [Fraction(1, 8), Fraction(1, 16), Fraction(1, 32), Fraction(1, 64), MM, MM / 2]
THICKNESSES = [Fraction(3, 4), Fraction(3, 2), Fraction(23, 32), 18 * MM, Fraction(0), Fraction(11, 2), Fraction(1, 3)]


def size(random, low, high):
    """A length between two numbers of inches."""
    den = random.choice([1, 2, 4, 8, 16, 16, 64, 10])
    return random.choice([Fraction(random.randint(low * den, high * den), den), random.randint(low * 25, high * 25) * MM])


def end(random, kinds=("gap", "gap", "half gap", "flush", "margin")):
    kind = random.choice(kinds)
    return cell(size(random, 0, 6)) if kind == "margin" else kind


def parse_end(text):
    return text if text in ("gap", "half gap", "flush") else Fraction(text)


def hold(pattern, held):
    """One opening held to a size."""
    widths, gaps = pattern()
    if held:
        after, length = held.split()
        gaps[int(after)] = (Fraction(0), Fraction(length))
    return widths, gaps


def frame(random, kinds=("gap", "gap", "half gap", "flush", "margin")):
    """What every case has: ends, run, tape."""
    near, far = end(random, kinds), end(random, kinds)
    return near, far, size(random, 20, 140), random.choice(STEPS), random.choice(list(MODES)), random.choice(["near", "center", "far"])


def plain(random, kind):
    near, far, run, step, mode, edge = frame(random)
    count, thickness, held = random.randint(0, 9), random.choice(THICKNESSES), ""
    ends = parse_end(near), parse_end(far)
    if kind == "parts":
        count = random.randint(1, 9)
        arguments, pattern = f"{count}", partial(equal, count - 1, Fraction(0), *ends)
    elif kind == "unequal":
        widths = [size(random, 1, 14) for _ in range(random.randint(1, 6))]
        arguments = cells(widths)
        pattern = lambda: (widths, equal(len(widths), Fraction(0), *ends)[1])
    else:
        arguments, pattern = f"{count} {cell(thickness)}", partial(equal, count, thickness, *ends)
    if kind == "openings" and count and random.randrange(3) == 0:
        held = f"{random.randint(0, count)} {cell(size(random, 0, 12))}"
    if kind.startswith("block"):
        count = random.randint(2, 9)
        arguments, pattern = f"{count} {cell(thickness)}", partial(equal, count, thickness, *ends)
    return kind, arguments, near, far, run, held, step, mode, edge, partial(hold, pattern, held)


def counting(random, kind):
    near, far, run, step, mode, edge = frame(random)
    thickness, ends = random.choice(THICKNESSES[:6]), (parse_end(near), parse_end(far))
    if kind == "nearest":
        bound = size(random, 2, 12)
        pattern = partial(nearest, thickness, bound, *ends, run)
        return kind, f"{cell(thickness)} {cell(bound)}", near, far, run, "", step, mode, edge, pattern
    limit = random.choice(["under", "at most"] if kind == "fewest" else ["over", "at least"])
    bound = random.choice([Fraction(4), size(random, 4, 12)])
    if random.randrange(3) == 0:  # a run in which the bound is met to the last digit
        inner = random.randint(2, 6)
        weights = [end_gap(side) for side in ends]
        run = inner * thickness + (inner - 1) * bound + sum(weight * bound + fixed for weight, fixed in weights)
    as_cut = random.randrange(2) == 0
    arguments = f"{cell(thickness)},{limit},{cell(bound)},{'as cut' if as_cut else 'exact'}"
    pattern = partial(counted, kind, thickness, limit, bound, *ends, run, (step, mode) if as_cut else None)
    return kind, arguments, near, far, run, "", step, mode, "near" if as_cut else edge, pattern


def dividing(random, kind):
    near, far, run, step, mode, edge = frame(random)
    divider, ends = random.choice(THICKNESSES[:5]), (parse_end(near), parse_end(far))
    if kind == "shares":
        shares = [random.randint(0 if number else 1, 5) for number in range(random.randint(1, 6))]
        pattern = partial(between, [(Fraction(share), Fraction(0)) for share in shares], divider, *ends)
        return kind, f"{cell(divider)} " + " ".join(map(str, shares)), near, far, run, "", step, mode, edge, pattern
    rule, count, is_from_top = random.choice(["step", "ratio", "top", "bottom"]), random.randint(2, 6), random.randrange(2) == 0
    ratio = random.choice([Fraction(6, 5), Fraction(1), Fraction(9, 10), Fraction(5, 4)])
    by = {"step": size(random, 0, 2), "ratio": ratio}.get(rule, size(random, 1, 9))
    arguments = f"{count},{cell(divider)},{rule},{cell(by)},{'top' if is_from_top else 'bottom'}"
    return kind, arguments, near, far, run, "", step, mode, edge, partial(drawers, count, divider, rule, by, is_from_top, *ends)


def centering(random, kind):
    near, far, run, step, mode, edge = frame(random, ("gap", "flush", "margin"))
    pitch, thickness = random.choice([Fraction(16), Fraction(24), Fraction(12), Fraction(192, 10), 600 * MM]), random.choice(THICKNESSES)
    first = random.choice(["center", "face", "off center", "shared"])
    clear = Fraction(0) if near == "gap" else end_gap(parse_end(near))[1] + thickness
    at = {
        "center": clear + thickness / 2 + random.choice([Fraction(0), Fraction(5), pitch - thickness]),
        "face": clear + random.choice([Fraction(0), Fraction(1, 4), Fraction(6)]),
        "off center": random.choice([Fraction(0), pitch / 2]),
    }.get(first, Fraction(0))
    run += 30
    arguments = f"{cell(pitch)},{cell(thickness)},{first},{cell(at)}"
    pattern = partial(on_center, pitch, thickness, first, at, parse_end(near), parse_end(far), run)
    return kind, arguments, near, far, run, "", step, mode, edge, pattern


def cases(random):
    makers = {
        plain: ["parts", "openings", "openings", "openings", "unequal", "block last", "block first", "block split"],
        counting: ["fewest", "fewest", "most", "nearest"],
        dividing: ["shares", "drawers", "drawers"],
        centering: ["on center", "on center"],
    }
    for _ in range(40):
        for maker, kinds in makers.items():
            for kind in kinds:
                yield maker(random, kind)
