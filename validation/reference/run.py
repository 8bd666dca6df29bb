"""Recomputes every data file of this folder; ends with an error where a row of a table is off by more than its tolerance."""

import pathlib
import subprocess
import sys

SCRIPTS = ("afloat", "air", "deliquescence", "diffusion", "drop_balance", "dunk", "equilibria", "faces", "motion", "packing", "shapes", "surface")
here = pathlib.Path(__file__).resolve().parent
failed = [s for s in SCRIPTS if subprocess.run([sys.executable, here / f"{s}.py"], cwd=here).returncode]
sys.exit(f"off: {', '.join(failed)}" if failed else 0)
