"""How long the demo job's fitting sheets take, beside WeasyPrint alone on the same pages.

Run it as `python -m benchmarks.sheets`; the target is at most 1.5 times.
"""

import os
import statistics
import time
from collections.abc import Callable
from datetime import date
from pathlib import Path

DEMO = Path(__file__).resolve().parents[1] / "fixtures" / "demo.job.json"
ROUNDS = 5
TARGET = 1.5


def main() -> None:
    """Print both times, each the median of some rounds in turn, and their ratio."""
    os.environ.setdefault("DJANGO_SETTINGS_MODULE", "shopjobs.settings")
    import django

    django.setup()
    from weasyprint import CSS, HTML
    from weasyprint.text.fonts import FontConfiguration

    from fronts.jobfile import read_file
    from fronts.rules.fingerprint import fingerprint
    from fronts.rules.schedule import schedule
    from fronts.sheets import fitting
    from fronts.sheets.imprint import Imprint
    from fronts.sheets.pdf import BUNDLED, render

    kitchen = read_file(str(DEMO))
    worked_out = schedule(kitchen)
    imprint = Imprint(date(2027, 3, 1), fingerprint(worked_out))
    static = fitting.content(worked_out, kitchen, imprint)
    fonts = FontConfiguration()
    style = CSS(filename=str(BUNDLED / "sheet.css"), font_config=fonts)

    def ours() -> bytes:
        worked = schedule(kitchen)
        return render(fitting.content(worked, kitchen, imprint), "letter")

    def alone() -> bytes:
        document = HTML(string=static)
        written: bytes = document.write_pdf(stylesheets=[style], font_config=fonts, pdf_tags=True)
        return written

    ours(), alone()
    times = [(seconds(ours), seconds(alone)) for _ in range(ROUNDS)]
    mine, theirs = (statistics.median(each) for each in zip(*times, strict=True))
    print(f"fitting sheets of {len(kitchen.cabinets)} cabinets, schedule to PDF: {mine:.2f} s")
    print(f"WeasyPrint alone, the same pages as static HTML:    {theirs:.2f} s")
    print(f"ratio {mine / theirs:.2f} (target at most {TARGET})")


def seconds(work: Callable[[], object]) -> float:
    """How long the work takes."""
    began = time.perf_counter()
    work()
    return time.perf_counter() - began


if __name__ == "__main__":
    main()
