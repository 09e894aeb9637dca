"""Tables keep the size of their answers: a block is entered again at its new size, and what reads it to its end follows."""

import re

from treadsheet_cells import CONTENTS, FORMULAS, Unnoticed, block_of, cells_in, enter, formula_of, is_array, place, sized, top_left
from treadsheet_engine import ENGINE
from treadsheet_texts import comparable, compared, given_of, is_table_call, tables_called

# A table may hang on another, and so on.
MOST_ROUNDS = 5
MARK = "Treadsheet: "
# com.sun.star.sheet.FormulaResult: a text.
TEXT = 2
# A text between quotes, which stays, or a block as Calc writes it: $'Cut plan'.$A$8:D20.
BLOCKS = re.compile(
    r'"(?:[^"]|"")*"|(?<![\w.$\'])(?P<sheet>\$?(?:\'(?:[^\']|\'\')*\'|\w+)\.)?'
    r"(?P<from>\$?[A-Z]{1,3}\$?)(?P<first>\d+):(?P<to>\$?[A-Z]{1,3})(?P<last>\$?\d+)(?![\w.(])"
)


def _scratch(model, cell, formula):
    """What a formula comes to on the sheet of a cell: a number, or None where it is in error."""
    sheet = cell.Spreadsheet
    used = sheet.createCursor()
    used.gotoEndOfUsedArea(False)
    # Not in the last column: Calc makes every column up to the cell, which takes some 20 MB a time and is not given back.
    right, down = min(used.RangeAddress.EndColumn + 1, sheet.Columns.Count - 1), sheet.Rows.Count - 1
    far, block = sheet.getCellByPosition(right, down), sheet.getCellRangeByPosition(right, down, right, down)
    with Unnoticed(model), ENGINE.unheard():
        block.setArrayFormula(formula)
        value = None if far.getError() else int(far.getValue())
        block.clearContents(CONTENTS)
    return value


def size_of(model, cell, formula):
    """Rows and columns of what a formula comes to; None where it comes to an error."""
    size = [_scratch(model, cell, "=%s(%s)" % (count, given_of(formula))) for count in ("ROWS", "COLUMNS")]
    return None if None in size else size


def _is_as_large(model, block, formula):
    """Whether there are as many cells in a block as its formula comes to, by working it out once."""
    count = _scratch(model, top_left(block), "=SUMPRODUCT(ISERROR(%s)*0+1)" % given_of(formula))
    return count == block.Rows.Count * block.Columns.Count


def in_the_way(block, was):
    """The first cell of a block that holds something and is not of the table as it was."""
    old = was.RangeAddress
    for cell in cells_in(block.queryContentCells(CONTENTS)):
        at = cell.CellAddress
        if not (old.StartRow <= at.Row <= old.EndRow and old.StartColumn <= at.Column <= old.EndColumn):
            return cell
    return None


def _column_number(letters):
    number = 0
    for letter in letters:
        number = number * 26 + ord(letter) - ord("A") + 1
    return number - 1


def _column_name(number):
    before = number // 26
    return (_column_name(before - 1) if before else "") + chr(ord("A") + number % 26)


def _end(start, end, was, now):
    """Where a reference from start to end ends that goes to the end of a table, or past it into its new cells."""
    if end == was and start <= now or was <= end < now:
        return now
    return end


def _following(formula, own, sheet, was, now):
    """A formula of a sheet (own: the table's) in which blocks that go to the end of a table go to its new end."""
    def followed(found):
        if found.group("first") is None:
            return found.group()
        named = (found.group("sheet") or "").lstrip("$").rstrip(".")
        named = named[1:-1].replace("''", "'") if named.startswith("'") else named
        if (named or own) != sheet:
            return found.group()
        first, last = int(found.group("first")) - 1, int(found.group("last").lstrip("$")) - 1
        left, right = (_column_number(found.group(one).replace("$", "")) for one in ("from", "to"))
        inside = was.StartRow <= first and was.StartColumn <= left and right <= max(was.EndColumn, now.EndColumn)
        if not inside:
            return found.group()
        down = _end(first, last, was.EndRow, now.EndRow)
        across = _end(left, right, was.EndColumn, now.EndColumn) if left == was.StartColumn else right
        return "%s%s%s:%s%s%s%d" % (
            found.group("sheet") or "", found.group("from"), found.group("first"), "$" if found.group("to").startswith("$") else "",
            _column_name(across), "$" if found.group("last").startswith("$") else "", down + 1,
        )

    return BLOCKS.sub(followed, formula)


def _formula_areas(model):
    """
    The parts of a document with formulas: the sheet, its name, the first row and column, and the formulas, row by row; those of an array
    once a cell. No cell is made an object of: that takes a hundred times as long as all else.
    """
    for sheet in (model.Sheets.getByIndex(index) for index in range(model.Sheets.Count)):
        name, ranges = sheet.Name, sheet.queryContentCells(FORMULAS)
        for index in range(ranges.Count):
            area = ranges.getByIndex(index)
            start = area.RangeAddress
            yield sheet, name, start.StartRow, start.StartColumn, area.getFormulaArray()


def formula_blocks(model, is_wanted):
    """The cells with formulas of a document that are wanted, by sheet and formula, those of an array as its block."""
    seen = set()
    for sheet, name, row, column, formulas in _formula_areas(model):
        for down, across in enumerate(formulas):
            for right, formula in enumerate(across):
                if (name, row + down, column + right) in seen or not is_wanted(name, formula):
                    continue
                cell = sheet.getCellByPosition(column + right, row + down)
                if not formula.startswith("{"):
                    yield cell
                    continue
                block = block_of(cell)
                end = block.RangeAddress
                columns = range(end.StartColumn, end.EndColumn + 1)
                seen.update((name, below, beside) for below in range(end.StartRow, end.EndRow + 1) for beside in columns)
                yield block


def state_of_formulas(model):
    """What tells the formulas of a document from those of another time."""
    return hash(tuple((name, row, column, formulas) for _, name, row, column, formulas in _formula_areas(model)))


def _follow(model, block, was, now):
    """Every other formula of the document that reads the table to its end reads it to its new end."""
    sheet = block.Spreadsheet.Name

    def is_reader(own, formula):
        return (own == sheet or sheet.replace("'", "''") in formula) and _following(formula, own, sheet, was, now) != formula

    for reader in list(formula_blocks(model, is_reader)):
        if not reader.Spreadsheet.isProtected():
            enter(reader, _following(formula_of(reader), reader.Spreadsheet.Name, sheet, was, now))


def _note_of(cell):
    """Which of the notes of a sheet a cell has, and its text; None where it has none."""
    at, notes = cell.CellAddress, cell.Spreadsheet.Annotations
    for index in range(notes.Count):
        note = notes.getByIndex(index)
        if (note.getPosition().Row, note.getPosition().Column) == (at.Row, at.Column):
            return index, note.getString()
    return None


def _say(block, formula, says):
    """A note that stays open beside the table, or none; a note of the person's own stays as it is."""
    cell = top_left(block)
    was = _note_of(cell)
    if (was[1] if was else None) == says or was and not was[1].startswith(MARK):
        return
    notes = block.Spreadsheet.Annotations
    # Calc puts no note on a cell of an array, and leaves one there that was.
    block.clearContents(CONTENTS)
    if was:
        notes.removeByIndex(was[0])
    if says is not None:
        notes.insertNew(cell.CellAddress, says)
        cell.getAnnotation().setIsVisible(True)
    block.setArrayFormula(formula)


def enter_sized(model, was, formula, rows, columns):
    """The formula at a new size; answers the block, and a sentence where it cannot be: then nothing is changed."""
    start = top_left(was)
    block = sized(start, rows, columns)
    if block is None:
        return was, "The table has %d rows and %d columns, more than the sheet has from %s on." % (rows, columns, place(start))
    blocking = in_the_way(block, was)
    if blocking is not None:
        return was, "The table needs %s, and %s is not empty. Clear it, or put the formula elsewhere." % (place(block), place(blocking))
    old = was.RangeAddress
    was.clearContents(CONTENTS)
    block.setArrayFormula(comparable(formula))
    _follow(model, block, old, block.RangeAddress)
    return block, None


def _fit_block(model, block, formula):
    """One table; answers whether it was changed, and a sentence where it is too small and stays so."""
    if block.Spreadsheet.isProtected():
        return False, None
    if _is_as_large(model, block, formula):
        _say(block, formula, None)
        made = comparable(formula)
        if made != formula:
            enter(block, made)
        return made != formula, None
    size = size_of(model, top_left(block), formula)
    if size is None:
        return False, None
    now, says = enter_sized(model, block, formula, *size)
    if says is None:
        _say(now, comparable(formula), None)
        return True, None
    says = "%s%d rows and %d columns are shown of %d and %d. %s" % (MARK, block.Rows.Count, block.Columns.Count, *size, says)
    _say(block, formula, says)
    return False, says


def _fit_cell(model, cell, formula, heard):
    """A formula typed in one cell: a table where it is one call that answers one, else with texts that Calc finds."""
    if cell.Spreadsheet.isProtected():
        return False, None
    if is_table_call(formula[1:]) and any(heard.get(name, (True, True))[0] for name in tables_called(formula)):
        size = size_of(model, cell, formula)
        if size is not None and size != [1, 1]:
            return _fit_block(model, block_of(cell), formula)
    made = comparable(formula) if cell.FormulaResultType2 == TEXT else compared(formula)
    if made != formula:
        cell.setFormula(made)
    return made != formula, None


def _is_our_call(formula):
    given = given_of(formula)
    return given.lstrip("(").upper().startswith("STAIR.") and is_table_call(given)


def _make_found(block, formula):
    """A block with texts that Calc finds, at the size that it has."""
    made = comparable(formula)
    if made == formula or block.Spreadsheet.isProtected():
        return False, None
    enter(block, made)
    return True, None


def fit_tables(model, heard=None, is_idle=False):
    """
    Every table of a document at the size of its answer, where heard says which functions have answered and whether a table or a text;
    None for all. Between a person's steps (idle) those alone that are one call of ours: to measure a long formula takes as long as to
    work it out. Answers how many were changed, and the sentences of those too small.
    """
    changed, small = 0, {}
    for _ in range(MOST_ROUNDS):
        before = changed

        def has_answered(_, formula, heard=heard):
            called = tables_called(formula)
            return bool(called) and (heard is None or not called.isdisjoint(heard))

        for block in list(formula_blocks(model, has_answered)):
            # As it is now: it may have followed a table before it.
            formula = formula_of(block)
            if not is_array(block):
                fit = _fit_cell(model, block, formula, heard or {})
            elif is_idle and not _is_our_call(formula):
                fit = _make_found(block, formula)
            else:
                fit = _fit_block(model, block, formula)
            changed += fit[0]
            if fit[1]:
                small[block.AbsoluteName] = fit[1]
            else:
                small.pop(block.AbsoluteName, None)
        if changed == before:
            break
        # What reads a changed table may be larger now.
        heard = None
    return changed, list(small.values())
