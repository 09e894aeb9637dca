"""Functions on rows of cells that our sheets call and that this Calc may not have, as a component: each as Excel's of its name."""

import unohelper
from treadsheet import XRows
from treadsheet_engine import ENGINE
from treadsheet_errors import error_cell, received_cell, sent_cell

IMPLEMENTATION = "rows"
SERVICE = "com.sun.star.sheet.AddIn"


def _rows(value):
    """An argument as rows of cells; an empty one is an empty text."""
    if isinstance(value, tuple):
        return [["" if cell is None else cell for cell in row] for row in value]
    return [["" if value is None else value]]


def _given(several):
    """Of arguments that may be left out, those that are given."""
    return [one for one in several if one is not None]


def _whole(value, otherwise):
    return otherwise if value is None or isinstance(value, tuple) else int(value)


def _answer(rows):
    """Rows as Calc takes them, all of one width; #N/A where there is none, and where a row has no such cell."""
    width = max((len(row) for row in rows), default=0)
    if width == 0:
        return ((error_cell("#N/A"),),)
    return tuple(tuple([*row, *[error_cell("#N/A")] * (width - len(row))]) for row in rows)


def _is_true(cell):
    return not isinstance(cell, str) and cell != 0


def _turned(rows):
    return [list(row) for row in zip(*rows)]


def _part(rows, count, is_taken):
    if count is None:
        return rows
    if is_taken:
        return rows[:count] if count >= 0 else rows[count:]
    return rows[count:] if count >= 0 else rows[:count]


def _cut(table, rows, columns, is_taken):
    cut = _part(_rows(table), _whole(rows, None), is_taken)
    return _answer(_turned(_part(_turned(cut), _whole(columns, None), is_taken)))


def _key(cell):
    """Numbers before texts, texts in either case alike."""
    return (1, cell.lower()) if isinstance(cell, str) else (0, cell)


class Rows(unohelper.Base, XRows):
    def __init__(self, context):
        pass

    def choosecols(self, table, *more):
        rows = _rows(table)
        places = [int(place) for one in _given(more) for row in _rows(one) for place in row if place != ""]
        return _answer([[row[place - 1 if place > 0 else place] for place in places] for row in rows])

    def drop(self, table, rows, columns):
        return _cut(table, rows, columns, False)

    def take(self, table, rows, columns):
        return _cut(table, rows, columns, True)

    def filter(self, table, include, if_empty):
        rows, kept = _rows(table), _rows(include)
        is_columns = len(kept) == 1 and len(kept[0]) > 1 and len(kept[0]) == len(rows[0])
        lines = _turned(rows) if is_columns else rows
        flags = kept[0] if is_columns else [row[0] for row in kept]
        found = [line for line, flag in zip(lines, flags) if _is_true(flag)]
        if not found:
            return _answer([] if if_empty is None else _rows(if_empty))
        return _answer(_turned(found) if is_columns else found)

    def hstack(self, *more):
        tables = [_rows(one) for one in _given(more)]
        height = max(len(table) for table in tables)
        missing = error_cell("#N/A")
        return _answer([
            [cell for table in tables for cell in (table[at] if at < len(table) else [missing] * len(table[0]))] for at in range(height)
        ])

    def vstack(self, *more):
        return _answer([row for one in _given(more) for row in _rows(one)])

    def sent(self, table):
        return tuple(tuple(sent_cell(cell) for cell in row) for row in _rows(table))

    def cells(self, sent):
        return received_cell(sent)

    def sequence(self, rows, columns, start, step):
        height, width = _whole(rows, 1), _whole(columns, 1)
        first, by = (1.0 if start is None else float(start)), (1.0 if step is None else float(step))
        return _answer([[first + by * (row * width + column) for column in range(width)] for row in range(height)])

    def sortby(self, table, *keys):
        rows = _rows(table)
        places = list(range(len(rows)))
        # The last key first, for the order of what is equal stays.
        for by, order in reversed(list(zip(keys[::2], keys[1::2]))):
            if by is None:
                continue
            column = [row[0] for row in _rows(by)]
            places.sort(key=lambda place: _key(column[place]), reverse=_whole(order, 1) < 0)
        return _answer([rows[place] for place in places])

    def unique(self, table):
        seen = {}
        for row in _rows(table):
            seen.setdefault(tuple(_key(cell) for cell in row), row)
        return _answer(list(seen.values()))

    def xlookup(self, value, cells, results, if_not_found, match_mode, search_mode):
        if _whole(match_mode, 0) != 0:
            # Only what is the same is looked for: anything else would answer something else than it should.
            return _answer([[error_cell("#VALUE!")]])
        lines, found = _rows(results), _rows(cells)
        is_row = len(found) == 1 and len(found[0]) > 1
        lines = _turned(lines) if is_row else lines
        beside = {}
        pairs = list(zip(found[0] if is_row else [row[0] for row in found], lines))
        for cell, line in reversed(pairs) if _whole(search_mode, 1) < 0 else pairs:
            beside.setdefault(_key(cell), line)
        missing = error_cell("#N/A") if if_not_found is None else _rows(if_not_found)[0][0]
        none = [missing] * (len(lines[0]) if lines else 1)
        wanted = _rows(value)
        if len(wanted) == 1 and len(wanted[0]) == 1:
            line = beside.get(_key(wanted[0][0]), none)
            return _answer(_turned([line]) if is_row else [line])
        return _answer([[beside.get(_key(cell), none)[0] for cell in row] for row in wanted])

    def xmatch(self, value, cells, mode):
        line = [_key(cell) for row in _rows(cells) for cell in row]
        return _answer([
            [float(line.index(_key(cell)) + 1) if _key(cell) in line else error_cell("#N/A") for cell in row] for row in _rows(value)
        ])


def _heard(name, answer):
    def heard(self, *given):
        rows = answer(self, *given)
        ENGINE.hear("ROWS." + name.upper(), rows)
        return rows

    return heard


for _name in ("choosecols", "drop", "filter", "hstack", "sequence", "sortby", "take", "unique", "vstack", "xlookup", "xmatch"):
    setattr(Rows, _name, _heard(_name, getattr(Rows, _name)))

g_ImplementationHelper = unohelper.ImplementationHelper()
g_ImplementationHelper.addImplementation(Rows, IMPLEMENTATION, (SERVICE,))
