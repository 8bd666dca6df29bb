"""What the scripts of this folder share: they read the rows of the check tables whose source is the script, compute
each row's value anew from its inputs, and write it to a data file beside the script. Nothing here knows the library.

    python3 run.py            recompute every data file
    python3 afloat.py         one of them

Python 3.11 or later with NumPy and SciPy; the versions used stand at the head of every data file.
"""

import csv
import pathlib
import platform
import sys

import numpy
import scipy

HERE = pathlib.Path(__file__).resolve().parent
CHECKS = HERE.parent / "src" / "test" / "resources" / "checks"


class Inputs(dict):
    """Inputs of a row, name=value parts joined by semicolons."""

    def __init__(self, text):
        super().__init__(part.strip().split("=", 1) for part in text.split(";"))

    def number(self, name):
        return float(self[name])

    def kelvin(self, name="t_C"):
        return self.number(name) + 273.15


def rows(source):
    """Every row that cites a source, of all tables."""
    for path in sorted(CHECKS.glob("*.csv")):
        if path.name == "sources.csv":
            continue
        with open(path, encoding="utf-8", newline="") as file:
            for row in csv.DictReader(file):
                if row["source_key"] == source:
                    yield row


def main(name, bindings):
    """Computes the rows of the source ``name`` by the function of their binding and writes ``name``.csv."""
    lines = []
    worst = 0.0
    for row in rows(name):
        binding = row["id"].split("/")[0]
        value = float(bindings[binding](Inputs(row["inputs"]), row["id"]))
        lines.append(f"{row['id']},{value:.12g}")
        off = abs(value - float(row["expected"]))
        if off > float(row["tolerance"]):
            print(f"{name}: {row['id']} is {value:.10g}, the table has {row['expected']}", file=sys.stderr)
            worst = max(worst, off)
    head = [
        f"# {name}.py, Python {platform.python_version()}, NumPy {numpy.__version__}, SciPy {scipy.__version__}",
        "id,value",
    ]
    (HERE / f"{name}.csv").write_text("\n".join(head + lines) + "\n", encoding="utf-8")
    print(f"{name}: {len(lines)} values")
    if worst:
        sys.exit(1)
