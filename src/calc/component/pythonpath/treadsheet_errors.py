"""Cells in error, as Calc takes them from a component, and cells as texts."""

import struct

# formula/errorcodes.hxx of LibreOffice: the errors that its cells show under these names.
ERROR_CODES = {"#VALUE!": 519, "#N/A": 0x7FFF, "#DIV/0!": 532, "#NUM!": 503, "#NULL!": 521}
# A cell in error is a number that is none, with the code in its lower half.
NO_NUMBER = 0x7FF8000000000000


def error_cell(name):
    return struct.unpack("<d", struct.pack("<Q", NO_NUMBER | ERROR_CODES.get(name, ERROR_CODES["#VALUE!"])))[0]


# Before the name of an error in a formula: no table that gives such a text is known.
ERROR_MARK = "treadsheet error "
TEXT_MARK = "="


def sent_cell(cell):
    """A cell as a text that says what it is."""
    if not isinstance(cell, str):
        return repr(float(cell))
    return cell if cell.startswith(ERROR_MARK) else TEXT_MARK + cell


def received_cell(sent):
    """The cell of such a text."""
    if sent.startswith(TEXT_MARK):
        return sent[len(TEXT_MARK):]
    return error_cell(sent[len(ERROR_MARK):]) if sent.startswith(ERROR_MARK) else float(sent)
