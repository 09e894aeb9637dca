"""Cells of a Calc document: blocks that array formulas fill, formulas entered again, names of places."""

# com.sun.star.sheet.CellFlags: numbers, dates, texts and formulas.
CONTENTS = 1 | 2 | 4 | 16
FORMULAS = 16
# com.sun.star.sheet.FormulaResult
IN_ERROR = 4


def place(cells):
    """A cell or a block as a person writes it: Order.A5 or Order.A5:C9."""
    return cells.AbsoluteName.replace("$", "")


def block_of(cell):
    """The block of the array formula that the cell is in, or the cell alone."""
    cursor = cell.Spreadsheet.createCursorByRange(cell)
    cursor.collapseToCurrentArray()
    return cursor if cursor.getArrayFormula() else cell


def is_array(block):
    return block.getArrayFormula() != ""


def formula_of(block):
    """The formula of a block or a cell, beginning with =, without the braces of an array; empty where there is none."""
    # The cell's, for the block's has commas, which setArrayFormula does not take.
    formula = block.getCellByPosition(0, 0).getFormula()
    if formula.startswith("{=") and formula.endswith("}"):
        formula = formula[1:-1]
    return formula if formula.startswith("=") else ""


def enter(block, formula):
    """The formula once more where it stands; Calc works it out when a cell of it is read."""
    if is_array(block):
        block.setArrayFormula(formula)
    else:
        block.getCellByPosition(0, 0).setFormula(formula)


def sized(cell, rows, columns):
    """The block of so many rows and columns that begins at a cell; None where it would run over the edge of the sheet."""
    at, sheet = cell.CellAddress, cell.Spreadsheet
    if at.Row + rows > sheet.Rows.Count or at.Column + columns > sheet.Columns.Count:
        return None
    return sheet.getCellRangeByPosition(at.Column, at.Row, at.Column + columns - 1, at.Row + rows - 1)


def top_left(block):
    return block.getCellByPosition(0, 0)


def cells_in(ranges):
    """Every cell of several ranges."""
    for index in range(ranges.Count):
        block = ranges.getByIndex(index)
        for row in range(block.Rows.Count):
            for column in range(block.Columns.Count):
                yield block.getCellByPosition(column, row)


class Unnoticed:
    """While it lasts, nothing is undoable, and afterwards the document is as changed or unchanged as it was."""

    def __init__(self, model):
        self._model = model

    def __enter__(self):
        self._was_modified = self._model.isModified()
        self._model.UndoManager.lock()

    def __exit__(self, *_):
        self._model.UndoManager.unlock()
        self._model.setModified(self._was_modified)


class OneUndo:
    """What is done while it lasts is one step for Undo."""

    def __init__(self, model, title):
        self._manager = model.UndoManager
        self._title = title

    def __enter__(self):
        self._manager.enterUndoContext(self._title)

    def __exit__(self, *_):
        self._manager.leaveUndoContext()
