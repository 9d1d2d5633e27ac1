"""Writes the golden files that the crate is held to: what comes out of its public interface, worked out a second time.

Nothing here looks at the crate. Every rule is taken from its documentation and worked out with `fractions.Fraction`, which is
exact, by the plainest way there is: counts are found by trying one after the other, texts are put together from numbers that are
known beforehand. The choices are random but seeded, so that every run writes the same bytes.

    python3 tests/oracle/golden.py            writes the files beside this script
    python3 tests/oracle/golden.py FOLDER     writes them elsewhere, to be compared
"""

import csv
import pathlib
import sys

sys.dont_write_bytecode = True  # the folder is under version control

import kerf
import printing
import reading
import rounding
import spacing
import tape

PARTS = [reading, rounding, tape, printing, spacing, kerf]


def main():
    folder = pathlib.Path(sys.argv[1] if len(sys.argv) > 1 else __file__)
    folder = folder if folder.is_dir() else folder.parent
    for part in PARTS:
        with open(folder / f"{part.__name__}.csv", "w", encoding="utf-8", newline="") as file:
            table = csv.writer(file, lineterminator="\n")
            table.writerow(part.COLUMNS)
            table.writerows(part.rows())


if __name__ == "__main__":
    main()
