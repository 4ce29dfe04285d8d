"""Puts rows into the season's book of lots, takes rows out and sorts, in LibreOffice; prints after each step, as JSON,
what formulas, table and charts have become. Arguments: the workbook, and an empty folder to work in. The functions of
the add-in are unknown there, and their spilled answer comes in as an array that lets no row in: it is cleared first."""
import json
import subprocess
import sys
import time

import uno
from com.sun.star.beans import PropertyValue
from com.sun.star.table import TableSortField

workbook, folder = sys.argv[1:3]
pipe = f"pipe,name=tea-{time.time_ns()};urp;"
profile = f"-env:UserInstallation=file://{folder}/profile"
office = subprocess.Popen(
    ["soffice", profile, "--headless", "--norestore", f"--accept={pipe}"],
    stdout=subprocess.DEVNULL,
    stderr=subprocess.DEVNULL,
)


def setting(name, value):
    return PropertyValue(Name=name, Value=value)


def desktop():
    local = uno.getComponentContext()
    resolver = local.ServiceManager.createInstanceWithContext("com.sun.star.bridge.UnoUrlResolver", local)
    for _ in range(120):
        try:
            context = resolver.resolve(f"uno:{pipe}StarOffice.ComponentContext")
            return context.ServiceManager.createInstanceWithContext("com.sun.star.frame.Desktop", context)
        except Exception:
            time.sleep(0.5)
    raise SystemExit("LibreOffice did not start")


def used(sheet):
    cursor = sheet.createCursor()
    cursor.gotoEndOfUsedArea(False)
    end = cursor.RangeAddress
    return sheet.getCellRangeByPosition(0, 0, end.EndColumn, end.EndRow)


def charts(sheet):
    drawn = [sheet.Charts.getByIndex(index).EmbeddedObject for index in range(sheet.Charts.Count)]
    return [[each.Values.SourceRangeRepresentation for each in chart.getDataSequences() if each.Values] for chart in drawn]


def look(book, step):
    book.calculateAll()
    sheets = {sheet.Name: sheet for sheet in book.Sheets}
    formulas = [
        formula
        for sheet in sheets.values()
        for row in used(sheet).FormulaArray
        for formula in row
        if isinstance(formula, str) and formula[:1] in ("=", "{")
    ]
    print(json.dumps({
        "step": step,
        "lots": [list(row[:6]) for row in used(sheets["Lots"]).DataArray],
        "flags": [row[0] for row in used(sheets["Flags"]).DataArray[1:]],
        "proof": [list(row[:6]) for row in sheets["Proof"].getCellRangeByName("A7:F14").DataArray],
        "formulas": len(formulas),
        "lost": [formula for formula in formulas if "#REF!" in formula],
        "table": book.DatabaseRanges.getByName("Lots_of_spring").DataArea.EndRow + 1,
        "charts": [chart for sheet in sheets.values() for chart in charts(sheet)],
    }), flush=True)


def sort(lots, column, ascending, last_row):
    field = TableSortField()
    field.Field, field.IsAscending = column, ascending
    fields = uno.Any("[]com.sun.star.table.TableSortField", (field,))
    lots.getCellRangeByName(f"A2:F{last_row}").sort((setting("SortFields", fields), setting("ContainsHeader", False)))


program = desktop()
try:
    book = program.loadComponentFromURL(f"file://{workbook}", "_blank", 0, (setting("Hidden", True),))
    lots = book.Sheets.getByName("Lots")
    lots.getCellRangeByName("G1:I81").clearContents(1 + 2 + 4 + 16)
    look(book, "opened")
    lots.Rows.insertByIndex(40, 1)
    lots.getCellRangeByName("A41:F41").DataArray = ((901.0, 45400.0, "Wall", "put in", 1500.0, 330.0),)
    look(book, "a row put in among the lots")
    lots.Rows.insertByIndex(1, 2)
    look(book, "two rows put in above the first lot")
    lots.Rows.removeByIndex(1, 3)
    look(book, "three rows taken out at the top, with the first lot")
    lots.Rows.removeByIndex(25, 5)
    look(book, "five rows taken out among the lots")
    last = book.DatabaseRanges.getByName("Lots_of_spring").DataArea.EndRow + 1
    sort(lots, 4, False, last)
    look(book, "sorted by fresh weight")
    sort(lots, 0, True, last)
    look(book, "sorted by number")
    book.storeToURL(f"file://{folder}/after.xlsx", (setting("FilterName", "Calc MS Excel 2007 XML"),))
    book.close(True)
    book = program.loadComponentFromURL(f"file://{folder}/after.xlsx", "_blank", 0, (setting("Hidden", True),))
    look(book, "saved and opened again")
    book.close(True)
finally:
    try:
        program.terminate()
    except Exception:
        pass
    office.wait(30)
