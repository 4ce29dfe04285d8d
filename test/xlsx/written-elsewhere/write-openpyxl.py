"""Writes a book of an invented farm with openpyxl (Debian: python3-openpyxl). Says its version."""
import datetime
import sys

import openpyxl
from openpyxl.chart import BarChart, Reference
from openpyxl.comments import Comment
from openpyxl.formatting.rule import CellIsRule
from openpyxl.styles import Font, PatternFill
from openpyxl.workbook.defined_name import DefinedName
from openpyxl.worksheet.datavalidation import DataValidation
from openpyxl.worksheet.table import Table

book = openpyxl.Workbook()
lots = book.active
lots.title = "Lots"
lots.append(["lot", "picked", "fresh g", "finished g", "outturn"])
rows = [
    ("a1", datetime.date(2024, 4, 4), 812.5, 178.75),
    ("a2", datetime.date(2024, 4, 5), 900, 198),
    ("a3", datetime.date(2024, 4, 6), 1040, None),
]
for number, row in enumerate(rows, start=2):
    lots.append([*row, f'=IF(D{number}="","",D{number}/C{number})'])
    lots.cell(number, 2).number_format = "yyyy-mm-dd"
    lots.cell(number, 5).number_format = "0.0%"
lots["A6"] = "sum"
lots["C6"] = "=SUM(C2:C5)"
lots["A6"].font = Font(bold=True, color="FF2E5E4E")
lots["C6"].fill = PatternFill("solid", fgColor="FFF7EFD3")
lots["A8"] = "007"
lots["A8"].number_format = "@"
lots["B8"] = "茶青 & <tea>"
lots["C8"] = True
lots["D8"] = "#N/A"
lots["E8"] = "=usual*2"
lots["A9"] = "the pan"
lots["A9"].hyperlink = "https://farm.example/pan"
lots["B9"] = "weighed wet"
lots["B9"].comment = Comment("Weighed again on Friday.", "the farm")
lots.merge_cells("C9:D10")
lots["C9"] = "merged"
lots.add_table(Table(displayName="Book", ref="A1:E4"))
checked = DataValidation(type="decimal", operator="greaterThan", formula1="0")
checked.add("C2:C5")
lots.add_data_validation(checked)
lots.conditional_formatting.add("E2:E4", CellIsRule(operator="lessThan", formula=["0.2"], font=Font(bold=True)))
lots.freeze_panes = "A2"
lots.column_dimensions["B"].width = 14
book.defined_names.append(DefinedName("usual", attr_text="Lots!$C$2"))
chart = BarChart()
chart.add_data(Reference(lots, min_col=4, min_row=1, max_row=3), titles_from_data=True)
lots.add_chart(chart, "G2")
hidden = book.create_sheet("Old book")
hidden["A1"] = 1
hidden.sheet_state = "hidden"
book.save(sys.argv[1])
print(openpyxl.__version__)
