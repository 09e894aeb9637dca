"""Insert as table: the formula of a cell as an array formula of as many cells as its answer has; and all tables of a document at once."""

from treadsheet_cells import OneUndo, block_of, formula_of, place, top_left
from treadsheet_fit import enter_sized, fit_tables, size_of
from treadsheet_why import why


def insert_table(model, cell):
    """Does it, and answers what came of it in a sentence."""
    was = block_of(cell)
    formula, start = formula_of(was), top_left(was)
    if formula == "":
        return "%s holds no formula. Type one there, such as =STAIR.CHOICES(108), and choose this again." % place(cell)
    if start.Spreadsheet.isProtected():
        return "The sheet is protected. Unprotect it (Tools, Protect Sheet) and choose this again."
    size = size_of(model, start, formula)
    if size is None:
        return why(model, start)
    with OneUndo(model, "Insert as table"):
        block, says = enter_sized(model, was, formula, *size)
    if says is not None:
        return says
    if start.getError():
        return why(model, start)
    return "The table takes up %s: %d rows, %d columns. It follows its answer when that grows or shrinks." % (place(block), *size)


def fit_all(model):
    """Every table of the document at the size of its answer; answers what came of it in sentences."""
    with OneUndo(model, "Fit the tables"):
        changed, small = fit_tables(model)
    locked = [sheet.Name for sheet in (model.Sheets.getByIndex(index) for index in range(model.Sheets.Count)) if sheet.isProtected()]
    says = ["%d tables were put right." % changed if changed else "Every table has the size of its answer." if not small else ""]
    says += small
    if locked:
        says.append("Protected and not looked at: %s." % ", ".join(locked))
    return " ".join(one for one in says if one)
