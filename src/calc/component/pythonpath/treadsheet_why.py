"""Why?: the sentence of a cell in error, worked out anew from the cells as they are."""

from treadsheet_cells import IN_ERROR, Unnoticed, block_of, cells_in, enter, formula_of, place, top_left
from treadsheet_engine import ENGINE

# Cells followed back, one after another.
DEEPEST = 50
# formula/errorcodes.hxx of LibreOffice: a name that is not known.
UNKNOWN_NAME = 525
SAVED_BY_EXCEL = "_xldudf_"


def _sentence(answer, row, column):
    """What an answer says of a cell of it."""
    value = answer.get("value", answer)
    if isinstance(value, list):
        rows = value[row] if row < len(value) else []
        value = rows[column] if column < len(rows) else None
    return value["says"] if isinstance(value, dict) else None


def _said(model, cell, block, formula):
    """The sentences of the calls in a formula, the outermost last."""
    at, start = cell.CellAddress, top_left(block).CellAddress
    with Unnoticed(model):
        # Calc works a formula out when its cell is read.
        answers = ENGINE.watch(lambda: (enter(block, formula), cell.getError()))
    found = [_sentence(answer, at.Row - start.Row, at.Column - start.Column) for answer in answers]
    return [says for says in found if says is not None]


def _read_in_error(block):
    """The first cell in error that a block reads, on its own sheet; None where there is none."""
    return next(cells_in(block.queryPrecedents(False).queryFormulaCells(IN_ERROR)), None)


def _begins(model, cell, depth):
    """Where an error begins and its sentence; None where nothing is known beyond the code."""
    block = block_of(cell)
    formula = formula_of(block)
    said = _said(model, cell, block, formula) if formula else []
    if said:
        return cell, said[-1]
    if cell.getError() == UNKNOWN_NAME and SAVED_BY_EXCEL in formula.lower():
        return cell, "The names of the functions are as Excel saves them. Choose Mend in this menu."
    read = _read_in_error(block) if depth < DEEPEST else None
    return _begins(model, read, depth + 1) if read is not None else None


def why(model, cell):
    """The sentence to show for a cell."""
    if not cell.getError():
        shown = cell.getString()
        return "%s is not in error: it %s." % (place(cell), "shows " + shown if shown else "is empty")
    found = _begins(model, cell, 0)
    if found is None:
        return "%s shows %s, and nothing more is known: no function of Treadsheet in it, or in what it reads on its sheet, says why." % (
            place(cell), cell.getString(),
        )
    begins, says = found
    if begins.AbsoluteName == cell.AbsoluteName:
        return "%s: %s" % (place(cell), says)
    return "%s reads %s, where the error begins: %s" % (place(cell), place(begins), says)
