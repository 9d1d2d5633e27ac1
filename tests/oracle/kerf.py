"""Equal pieces from a board, a kerf for each part or one fewer: the board as it is sawn, one cut after the other; boards on which so
many just fit, and boards a 64th too short. And small lists of parts, whose fewest boards are found by trying every way."""

from fractions import Fraction
from random import Random

from exact import MM, cell, cells

COLUMNS = ["parts", "kerf", "near", "far", "stock", "between", "each", "nears", "offcut"]
HAIR = Fraction(1, 64)


def sawn(piece, kerf, near, end, is_each):
    """Where the pieces begin, as long as one more can be cut, and what is left behind the last kerf."""
    begins, blade = [], near
    while blade + piece + (kerf if is_each else 0) <= end:
        begins.append(blade)
        blade += piece + kerf
    return begins, max(end - blade, Fraction(0))


def boards(parts, kerf, room, is_each):
    """The fewest boards for a list of parts: each goes on every board that was begun, or on a new one."""
    parts = sorted(parts, reverse=True)
    best = [len(parts)]

    def fill(index, loads):
        if len(loads) >= best[0]:
            return
        if index == len(parts):
            best[0] = len(loads)
            return
        tried = set()
        for number, load in enumerate(loads + [None]):
            used = (Fraction(0) if load is None else load + kerf) + parts[index]
            if load in tried or used + (kerf if is_each else 0) > room:
                continue
            tried.add(load)
            fill(index + 1, loads[:number] + [used] + loads[number + 1:])

    fill(0, [])
    return best[0]


def equal_pieces(random):
    """One piece; both counts, and where the pieces begin when a kerf lies between them."""
    piece = random.choice([Fraction(random.randint(32, 400), 16), random.randint(60, 700) * MM, Fraction(random.randint(10, 90), 3)])
    kerf = random.choice([Fraction(1, 8), Fraction(3, 32), Fraction(1, 16), 3 * MM, Fraction(0), Fraction(7, 64)])
    near, far = random.choice([(Fraction(0), Fraction(0)), (Fraction(1), Fraction(1, 2)), (Fraction(1, 4), Fraction(0))])
    count = random.randint(1, 12)
    just = near + count * piece + (count - 1) * kerf + far
    room = random.choice([just, just, just + kerf, just + kerf / 2, just + HAIR, just + piece / 2, Fraction(96) + near + far])
    for stock in [room, room - HAIR]:
        between, offcut = sawn(piece, kerf, near, stock - far, False)
        each, _ = sawn(piece, kerf, near, stock - far, True)
        # Said in another way: the last piece needs no kerf, or every piece does.
        assert len(between) == max(0, (stock - near - far + kerf) // (piece + kerf)), "two ways to count"
        assert len(each) == max(0, (stock - near - far) // (piece + kerf)), "two ways to count"
        if between:
            yield [cell(piece), cell(kerf), cell(near), cell(far), cell(stock), len(between), len(each), cells(between), cell(offcut)]


def mixed_parts(random):
    parts = [Fraction(random.randint(16, 900), 16) for _ in range(random.randint(2, 7))]
    if random.randrange(2) == 0:  # parts that fill a board to the last hair
        parts = parts[:4] + [Fraction(96) - Fraction(1, 8) - parts[0]]
    kerf = Fraction(1, 8)
    room = Fraction(96)
    if max(parts) + kerf > room:
        return
    yield [cells(parts), cell(kerf), "0/1", "0/1", cell(room), boards(parts, kerf, room, False), boards(parts, kerf, room, True), "", ""]


def rows():
    random = Random(4)
    for _ in range(200):
        yield from equal_pieces(random)
    for _ in range(120):
        yield from mixed_parts(random)
