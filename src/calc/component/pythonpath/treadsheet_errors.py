"""Cells in error, as Calc takes them from a component."""

import struct

# formula/errorcodes.hxx of LibreOffice: the errors that its cells show under these names.
ERROR_CODES = {"#VALUE!": 519, "#N/A": 0x7FFF, "#DIV/0!": 532, "#NUM!": 503, "#NULL!": 521}
# A cell in error is a number that is none, with the code in its lower half.
NO_NUMBER = 0x7FF8000000000000


def error_cell(name):
    return struct.unpack("<d", struct.pack("<Q", NO_NUMBER | ERROR_CODES.get(name, ERROR_CODES["#VALUE!"])))[0]
