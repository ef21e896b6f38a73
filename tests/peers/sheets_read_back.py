"""The order as a workbook and on paper, read back by programs that did not write them.

    .ci/check-sheets    # installs what it needs on Debian and Ubuntu, builds the command line, runs this

openpyxl (MIT) reads numbers, formulas, the frozen head and the print setup. LibreOffice Calc (MPL 2.0) reckons all formulas anew,
with the stored results taken out first, and its amounts are compared with those of the order as JSON, to the cent. pdftotext of
poppler reads the sheets: every part number and the total stand on them, and no text lies outside the page.
"""

import json
import re
import subprocess
import sys
import tempfile
import zipfile
from decimal import Decimal
from pathlib import Path

import openpyxl

TOP = Path(__file__).resolve().parents[2]
FIRST = 4
COST = 14
STEPS = ["goods", "labour", "tax", "delivery", "cost", "overhead", "profit", "total"]


def run(*command):
    # A job with a finding that stops it ends with 1, and the order is written all the same.
    done = subprocess.run([str(part) for part in command], capture_output=True, text=True)
    if done.returncode not in (0, 1) or done.stderr.strip().startswith("error"):
        raise SystemExit(f"{command}: {done.stderr}")
    return done.stdout


def without_results(path, to):
    """The workbook with the stored result of every formula taken out: what a reader shows, it has reckoned."""
    with zipfile.ZipFile(path) as old, zipfile.ZipFile(to, "w", zipfile.ZIP_DEFLATED) as new:
        for name in old.namelist():
            data = old.read(name)
            if name.startswith("xl/worksheets/"):
                text = data.decode()
                text = re.sub(r"(</f>)<v>[^<]*</v>", r"\1", text)
                data = text.encode()
            new.writestr(name, data)


def cents(value):
    return Decimal(str(value)).quantize(Decimal("0.01"))


def amounts(path, count):
    """Costs of the lines and the steps to the total, with what a formula of this reader came to."""
    sheet = openpyxl.load_workbook(path, data_only=True)["Order"]
    rows = list(sheet.iter_rows(min_row=FIRST, values_only=True))
    lines = [row[COST - 1] for row in rows[:count]]
    steps = [row[COST - 1] for row in rows[max(count, 1) :] if row[COST - 2] is not None]
    return lines, steps


def compare(cli, job, folder):
    order = json.loads(run(cli, "takeoff", job, "--format", "json"))
    takeoff = order["data"]["takeoff"]
    lines, totals = takeoff["lines"], takeoff["totals"]
    book, bare = folder / "order.xlsx", folder / "bare.xlsx"
    run(cli, "takeoff", job, "--format", "xlsx", "--out", book)

    sheet = openpyxl.load_workbook(book)["Order"]
    assert sheet.freeze_panes == f"A{FIRST}", sheet.freeze_panes
    assert sheet.print_title_rows == f"${FIRST - 1}:${FIRST - 1}", sheet.print_title_rows
    assert sheet.page_setup.orientation == "landscape"
    # One page wide (the default of the format), as many high as it takes.
    assert sheet.sheet_properties.pageSetUpPr.fitToPage and sheet.page_setup.fitToWidth in (None, 1)
    assert sheet.page_setup.fitToHeight == 0
    for row, line in zip(sheet.iter_rows(min_row=FIRST, values_only=True), lines):
        assert row[2] == line["number"] and row[9] == line["packages"], row
        assert isinstance(row[COST - 1], str) and row[COST - 1].startswith("="), row

    without_results(book, bare)
    run("soffice", "--headless", "--convert-to", "xlsx:Calc MS Excel 2007 XML", "--outdir", folder / "new", bare)
    for path in (book, folder / "new" / "bare.xlsx"):
        costs, steps = amounts(path, len(lines))
        for cost, line in zip(costs, lines, strict=True):
            expected = line["cost"]
            assert (cost == "no price") if expected is None else cents(cost) == cents(expected), (path, cost, line)
        expected = [totals[step] for step in STEPS]
        assert len(steps) == len(expected), steps
        for step, amount in zip(steps, expected):
            assert (step == "not known") if amount is None else cents(step) == cents(amount), (path, step, amount)

    pages = 0
    for by in ("group", "stage"):
        pdf = folder / f"{by}.pdf"
        run(cli, "takeoff", job, "--format", "pdf", "--by", by, "--out", pdf)
        text = run("pdftotext", "-layout", pdf, "-")
        for line in lines:
            assert line["number"] in text, (by, line["number"])
        assert f"{cents(totals['total']):,}" in text, (by, totals["total"])
        boxes = run("pdftotext", "-bbox", pdf, "-")
        width, height = 612.0, 792.0
        pages = boxes.count("<page ")
        for box in re.finditer(r'xMin="([\d.-]+)" yMin="([\d.-]+)" xMax="([\d.-]+)" yMax="([\d.-]+)"', boxes):
            left, top, right, bottom = map(float, box.groups())
            assert 20 < left < right < width - 20 and 20 < top < bottom < height - 10, (by, box.group(0))
        assert text.count("licensed") >= pages, "a page without the cautions"
    print(f"{job.name}: {len(lines)} lines, total {totals['total']}, {pages} pages: the same everywhere")


def main():
    cli = Path(sys.argv[1]).resolve()
    jobs = sorted((TOP / "sample-roofs").glob("*.json"))
    assert jobs
    for job in jobs:
        with tempfile.TemporaryDirectory() as folder:
            compare(cli, job, Path(folder))


if __name__ == "__main__":
    main()
