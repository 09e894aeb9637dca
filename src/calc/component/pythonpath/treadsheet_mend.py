"""Mend: the names of our functions as Excel saved them become those that Calc knows, and a copy has them as Excel wants them."""

import os
import re
import tempfile
import zipfile
from xml.sax.saxutils import escape, unescape

import uno
from treadsheet_cells import FORMULAS, OneUndo, block_of, enter, formula_of, is_array
from treadsheet_engine import ENGINE
from treadsheet_formula import bound, is_unbound
from treadsheet_texts import comparable, compared, outside_texts, plain

# Of functions that came later.
PREFIX = re.compile(r"^(_XLFN\.)?(_XLWS\.)?")
# com.sun.star.sheet.FormulaMapGroup.ALL_EXCEPT_SPECIAL
ALL_FUNCTIONS = 0x7FFFFFFF
EXCEL_FILE = "Calc MS Excel 2007 XML"
FORMULA = re.compile(r"(<f(?:\s[^>]*)?>)([^<]*)(?=</f>)")
OUR_ROWS = re.compile(r"\bROWS\.([A-Z]+)(?=\()")
QUOTES = {"&quot;": '"', "&apos;": "'"}
# Seconds for a whole workbook.
FILE_LIMIT = 120


def _known(model):
    """The functions that this Calc has, by their names in capitals, without the prefixes of later ones."""
    mapper = model.createInstance("com.sun.star.sheet.FormulaOpCodeMapper")
    language = uno.getConstantByName("com.sun.star.sheet.FormulaLanguage.XL_ENGLISH")
    return {PREFIX.sub("", one.Name.upper()) for one in mapper.getAvailableMappings(language, ALL_FUNCTIONS)}


def _unbound_blocks(sheet):
    """The blocks and cells of a sheet whose formulas have names as Excel saved them."""
    found = {}
    ranges = sheet.queryContentCells(FORMULAS)
    for index in range(ranges.Count):
        area = ranges.getByIndex(index)
        for row, formulas in enumerate(area.getFormulaArray()):
            for column, formula in enumerate(formulas):
                if not is_unbound(formula):
                    continue
                cell = area.getCellByPosition(column, row)
                block = block_of(cell) if formula.startswith("{") else cell
                found[block.AbsoluteName] = block
    return list(found.values())


def _mend_names(names, known):
    count = 0
    for name in names.ElementNames:
        named = names.getByName(name)
        content = named.getContent()
        if is_unbound(content):
            named.setContent(bound(content, known))
            count += 1
    return count


def mend(model):
    """Does it, and answers what came of it in sentences."""
    count, locked, known = 0, [], _known(model)
    with OneUndo(model, "Mend"):
        for sheet in (model.Sheets.getByIndex(index) for index in range(model.Sheets.Count)):
            blocks = _unbound_blocks(sheet)
            if blocks and sheet.isProtected():
                locked.append("%s (%d)" % (sheet.Name, len(blocks)))
                continue
            for block in blocks:
                formula = bound(formula_of(block), known)
                # That of a cell alone is made so where it gives a text: treadsheet_fit.py.
                enter(block, comparable(formula) if is_array(block) else compared(formula))
                count += 1
        count += _mend_names(model.NamedRanges, known)
    model.calculateAll()
    says = ["%d formulas had names as Excel saves them, and are mended." % count if count else "No formula has names as Excel saves them."]
    if locked:
        says.append("Protected and left as they are: %s. Unprotect them and mend again." % ", ".join(locked))
    return " ".join(says)


def _property(name, value):
    made = uno.createUnoStruct("com.sun.star.beans.PropertyValue")
    made.Name, made.Value = name, value
    return made


def _excels(formula):
    """A formula as Excel has it: its own functions on rows, and no texts made to be found."""
    return outside_texts(plain("=" + formula)[1:], lambda piece: OUR_ROWS.sub(r"\1", piece))


def _without_ours(file):
    """Of a saved file the formulas that Mend or Insert as table made for Calc, as Excel's again."""
    with zipfile.ZipFile(file) as saved:
        parts = [(entry, saved.read(entry)) for entry in saved.namelist()]
    with zipfile.ZipFile(file, "w", zipfile.ZIP_DEFLATED) as written:
        for name, held in parts:
            if name.startswith("xl/worksheets/"):
                text = FORMULA.sub(lambda found: found.group(1) + escape(_excels(unescape(found.group(2), QUOTES))), held.decode("utf-8"))
                held = text.encode("utf-8")
            written.writestr(name, held)


def copy_for_excel(model, to):
    """Writes the document to a file (.xlsx, an address) with its formulas as Excel binds them; answers what came of it."""
    path = uno.fileUrlToSystemPath(to)
    with tempfile.TemporaryDirectory() as folder:
        saved = os.path.join(folder, "saved.xlsx")
        model.storeToURL(uno.systemPathToFileUrl(saved), (_property("FilterName", EXCEL_FILE),))
        _without_ours(saved)
        answer = ENGINE.ask({"mend": saved, "to": path}, FILE_LIMIT)
    if "error" in answer:
        return answer["says"]
    says = "Wrote %s: %d formulas as Excel binds them." % (path, answer["mended"])
    if answer["notMended"]:
        says += " %d could not be mended." % answer["notMended"]
    return says
