"""Every kind of dividing a run: the members and the gaps between them, exactly; then marked on a tape, every mark rounded once from
its own place; and the gaps as they will be cut. Where a number of members is to be found, all are tried, one after the other.

A gap is `weight * x + fixed`, and `x` is whatever makes gaps and members fill the run. `arguments` are lengths in inches or plain
numbers, as the kind asks for them."""

from fractions import Fraction
from random import Random

from exact import MODES, cell, cells, down

COLUMNS = [
    "kind", "arguments", "near", "far", "run", "held", "step", "mode", "edge",
    "opening", "gaps", "nears", "marks", "cut", "spread", "worst",
]

OPEN, NONE = (Fraction(1), Fraction(0)), (Fraction(0), Fraction(0))
MOST_TRIED = 90


class Refused(Exception):
    """The run cannot be divided so."""


def end_gap(end):
    if end == "gap":
        return OPEN
    if end == "half gap":
        return (Fraction(1, 2), Fraction(0))
    return NONE if end == "flush" else (Fraction(0), Fraction(end))


def solve(widths, gaps, run):
    """The size of every gap, and `x`."""
    need = sum(widths) + sum(fixed for weight, fixed in gaps if weight == 0)
    weights, steps = sum(weight for weight, _ in gaps), sum(fixed for weight, fixed in gaps if weight != 0)
    if need > run or (weights == 0 and need < run):
        raise Refused
    x = (run - need - steps) / weights if weights else Fraction(0)
    sizes = [weight * x + fixed for weight, fixed in gaps]
    if min(sizes) < 0:
        raise Refused
    return x, sizes


def equal(count, thickness, near, far):
    if count == 0:
        fixed = end_gap(near)[0] == 0 and end_gap(far)[0] == 0
        return [], [NONE if fixed else OPEN]
    return [thickness] * count, [end_gap(near)] + [OPEN] * (count - 1) + [end_gap(far)]


def between(openings, divider, near, far):
    """Openings with a divider between each two, and one more at an end that is not open."""
    gaps, widths = list(openings), [divider] * (len(openings) - 1)
    if near != "gap":
        gaps, widths = [end_gap(near)] + gaps, widths + [divider]
    if far != "gap":
        gaps, widths = gaps + [end_gap(far)], widths + [divider]
    return widths, gaps


def drawers(count, divider, rule, by, is_from_top, near, far):
    """From the top down each drawer is taller than the one above it."""
    if rule == "step":
        openings = [(Fraction(1), by * above) for above in range(count)]
    elif rule == "ratio":
        openings = [(by**above, Fraction(0)) for above in range(count)]
    elif rule == "top":
        openings = [(Fraction(above), by) for above in range(count)]
    else:
        openings = [(Fraction(count - 1 - above), by) for above in range(count)]
    return between(openings if is_from_top else openings[::-1], divider, near, far)


def on_center(pitch, thickness, first, at, near, far, run):
    """Members a pitch apart, as many as stand clear of what closes the run at either end."""
    begin = Fraction(0) if near == "gap" else end_gap(near)[1] + thickness
    finish = run if far == "gap" else run - end_gap(far)[1] - thickness
    half = thickness / 2

    def side(start, step, is_closed):
        """Centers from `start` on, by `step`; one more against the closing member if a regular one is due before its center."""
        found = []
        center = start
        while begin <= center - half and center + half <= finish if step > 0 else center - half >= begin:
            found.append(center)
            center += step
        if is_closed and (center < finish + half if step > 0 else center > begin - half):
            found.append(finish - half if step > 0 else begin + half)
        return found

    if first in ("center", "face"):
        centers = side(at + (half if first == "face" else 0), pitch, far != "gap")
    elif first == "off center":
        leftward = side(run / 2 - at, -pitch, near != "gap")
        centers = leftward[::-1] + side(run / 2 + (at or pitch), pitch, far != "gap")
    else:
        room = finish - begin
        count = 0 if room < thickness else down((room - thickness) / pitch) + 1
        remainder = room - thickness - (count - 1) * pitch
        centers = [begin + remainder / 2 + half + number * pitch for number in range(count)]
    faces = [center - half for center in centers]
    if near != "gap":
        faces = [begin - thickness] + faces
    if far != "gap":
        faces.append(finish)
    fars = [Fraction(0)] + [face + thickness for face in faces]
    return [thickness] * len(faces), [face - before for face, before in zip(faces + [run], fars)]


def places(widths, sizes):
    """The near edge of every member."""
    nears, at = [], Fraction(0)
    for width, size in zip(widths, sizes):
        nears.append(at + size)
        at += size + width
    return nears


def marked(widths, sizes, step, mode, edge):
    """How many steps each mark is from the datum, the gaps as cut, and how far off the worst mark is."""
    shift = {"near": 0, "center": Fraction(1, 2), "far": 1}[edge]
    exact = [near + shift * width for near, width in zip(places(widths, sizes), widths)]
    counts = [MODES[mode](place / step) for place in exact]
    off = [count * step - place for count, place in zip(counts, exact)]
    cut = [size + after - before for size, before, after in zip(sizes, [Fraction(0)] + off, off + [Fraction(0)])]
    return counts, cut, max(map(abs, off), default=Fraction(0))


def spread(kinds, cut):
    """Gaps that are meant to be equal, compared with their own kind."""
    of_kind = {}
    for kind, size in zip(kinds, cut):
        of_kind.setdefault(kind, []).append(size)
    return max(max(sizes) - min(sizes) for sizes in of_kind.values())


def is_within(limit, bound, gap):
    return {"under": gap < bound, "at most": gap <= bound, "over": gap > bound, "at least": gap >= bound}[limit]


def counted(kind, thickness, limit, bound, near, far, run, judged):
    """The first, or the last, number of members whose gaps are all within the limit: exactly, or as they will be cut."""
    def is_right(count):
        widths, gaps = equal(count, thickness, near, far)
        try:
            _, sizes = solve(widths, gaps, run)
        except Refused:
            return False
        if judged:
            _, sizes, _ = marked(widths, sizes, *judged, "near")
        # Only a full gap can be too narrow: an end that is set apart is meant to be what it is.
        narrow = limit in ("over", "at least")
        skip = {0 if narrow and near != "gap" else None, count if narrow and far != "gap" else None}
        return all(is_within(limit, bound, gap) for after, gap in enumerate(sizes) if after not in skip)

    tried = range(MOST_TRIED) if kind == "fewest" else reversed(range(MOST_TRIED))
    count = next(filter(is_right, tried), None)
    if count is None:
        raise Refused
    return equal(count, thickness, near, far)


def nearest(thickness, preferred, near, far, run):
    """The number of members whose openings are nearest to a size; of two as near, the narrower opening."""
    found = []
    for count in range(MOST_TRIED):
        widths, gaps = equal(count, thickness, near, far)
        try:
            x, _ = solve(widths, gaps, run)
        except Refused:
            continue
        # A layout that has no opening at all has none that is near to anything.
        if any(weight for weight, _ in gaps):
            found.append((abs(x - preferred), x, count))
    if not found:
        raise Refused
    return equal(min(found)[2], thickness, near, far)


def block(widths, gaps, run, step, remainder):
    """Openings that are meant to be equal, set by a block that is cut down to a graduation: those that are the most, and of as
    many the kind that comes first. What the block leaves over goes to the last of them, the first, or both."""
    _, sizes = solve(widths, gaps, run)
    kinds = [kind for kind in dict.fromkeys(gaps) if kind != NONE and gaps.count(kind) > 1]
    if not kinds:
        raise Refused
    kind = max(kinds, key=gaps.count)  # the first of several
    full = [after for after, gap in enumerate(gaps) if gap == kind]
    length = down(sizes[full[0]] / step) * step
    if length == 0:
        raise Refused
    left = {"last": full[-1:], "first": full[:1], "split": [full[0], full[-1]]}[remainder]
    set_by = [OPEN if after in left else (Fraction(0), length if after in full else size) for after, size in enumerate(sizes)]
    return set_by, length, len(full) - len(left)


def rows():
    from spacing_cases import cases

    for case in cases(Random(12)):
        kind, arguments, near, far, run, held, step, mode, edge, pattern = case
        head = [kind, arguments, near, far, cell(run), held, cell(step), mode, edge]
        try:
            widths, gaps = pattern()
            if kind.startswith("block"):
                gaps, length, times = block(widths, gaps, run, step, kind.split()[1])
                head[1] += f" {cell(length)} {times}"
            if kind == "on center":
                opening, sizes = None, gaps
            else:
                opening, sizes = solve(widths, gaps, run)
            if min(sizes) < 0:
                raise Refused
        except Refused:
            yield head + ["refused"] + [""] * 6
            continue
        counts, cut, worst = marked(widths, sizes, step, mode, edge)
        # On center, what is left over at an end is no gap like the others, even where it happens to be as wide.
        apart = "" if kind == "on center" else cell(spread(gaps, cut))
        yield head + [
            "" if opening is None else cell(opening), cells(sizes), cells(places(widths, sizes)),
            " ".join(map(str, counts)), cells(cut), apart, cell(worst),
        ]
