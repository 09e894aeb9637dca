"""Insert as table: the formula of a cell as an array formula of as many cells as its answer has."""

from treadsheet_cells import CONTENTS, OneUndo, Unnoticed, block_of, cells_in, formula_of, is_array, place, sized, top_left
from treadsheet_texts import comparable
from treadsheet_why import why


def _size(cell, formula):
    """Rows and columns of what the formula comes to; None where it comes to an error."""
    counted = []
    block = sized(cell, 1, 1)
    for count in ("ROWS", "COLUMNS"):
        block.setArrayFormula("=%s(%s)" % (count, formula[1:]))
        if cell.getError():
            return None
        counted.append(int(cell.getValue()))
    return counted


def _measured(model, was, formula):
    """The size, with the cells as they were before afterwards."""
    cell, was_array = top_left(was), is_array(was)
    with Unnoticed(model):
        was.clearContents(CONTENTS)
        size = _size(cell, formula)
        cell.clearContents(CONTENTS)
        if was_array:
            was.setArrayFormula(formula)
        else:
            cell.setFormula(formula)
    return size


def _in_the_way(block, was):
    """The first cell of a block that holds something and is not of the table as it was."""
    old = was.RangeAddress
    for cell in cells_in(block.queryContentCells(CONTENTS)):
        at = cell.CellAddress
        if not (old.StartRow <= at.Row <= old.EndRow and old.StartColumn <= at.Column <= old.EndColumn):
            return cell
    return None


def insert_table(model, cell):
    """Does it, and answers what came of it in a sentence."""
    was = block_of(cell)
    formula, start = formula_of(was), top_left(was)
    if formula == "":
        return "%s holds no formula. Type one there, such as =STAIR.CHOICES(108), and choose this again." % place(cell)
    if start.Spreadsheet.isProtected():
        return "The sheet is protected. Unprotect it (Tools, Protect Sheet) and choose this again."
    size = _measured(model, was, formula)
    if size is None:
        return why(model, start)
    rows, columns = size
    block = sized(start, rows, columns)
    if block is None:
        return "The table has %d rows and %d columns, more than the sheet has from %s on." % (rows, columns, place(start))
    blocking = _in_the_way(block, was)
    if blocking is not None:
        return "The table needs %s, and %s is not empty. Clear it, or put the formula elsewhere." % (place(block), place(blocking))
    with OneUndo(model, "Insert as table"):
        was.clearContents(CONTENTS)
        block.setArrayFormula(comparable(formula))
    if start.getError():
        return why(model, start)
    return "The table takes up %s: %d rows, %d columns. Choose this again when its size changes." % (place(block), rows, columns)
