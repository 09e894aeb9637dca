"""The worksheet functions as a component of the office: each method of treadsheet.XStair is one of functions.json."""

import json
import os
import struct

import unohelper
from treadsheet import XStair
from treadsheet_engine import ENGINE, HERE

IMPLEMENTATION = "stair"
SERVICE = "com.sun.star.sheet.AddIn"

# formula/errorcodes.hxx of LibreOffice: the errors that its cells show under these names.
ERROR_CODES = {"#VALUE!": 519, "#N/A": 0x7FFF, "#DIV/0!": 532, "#NUM!": 503, "#NULL!": 521}
# A cell in error is a number that is none, with the code in its lower half.
NO_NUMBER = 0x7FF8000000000000


def _error(name):
    return struct.unpack("<d", struct.pack("<Q", NO_NUMBER | ERROR_CODES.get(name, ERROR_CODES["#VALUE!"])))[0]


def _given(value):
    """An argument as cells of JSON; what is left out, or empty, is null."""
    if isinstance(value, tuple):
        return [[_given(cell) for cell in row] for row in value]
    return value if isinstance(value, (bool, int, float, str)) else None


def _cell(value):
    """A cell as Calc takes it: it has numbers, texts and errors, and true and false are 1 and 0."""
    if isinstance(value, dict):
        return _error(value["error"])
    if value is None:
        return ""
    return value if isinstance(value, str) else float(value)


def _method(function, is_table):
    def answer(self, *given):
        answered = ENGINE.call(function, [_given(value) for value in given])
        value = answered["value"] if "value" in answered else answered
        if not is_table:
            return _cell(value)
        return tuple(tuple(_cell(cell) for cell in row) for row in (value if isinstance(value, list) else [[value]]))

    return answer


def _methods():
    with open(os.path.join(HERE, "functions.json"), encoding="utf-8") as file:
        functions = json.load(file)["functions"]
    return {one["id"].lower(): _method(one["id"], one["result"]["dimensionality"] == "matrix") for one in functions}


class Stair(unohelper.Base, XStair):
    def __init__(self, context):
        pass


for _name, _answer in _methods().items():
    setattr(Stair, _name, _answer)

g_ImplementationHelper = unohelper.ImplementationHelper()
g_ImplementationHelper.addImplementation(Stair, IMPLEMENTATION, (SERVICE,))
