"""The worksheet functions as a component of the office: each method of treadsheet.XStair is one of functions.json."""

import json
import os

import treadsheet_watch  # noqa: F401, it looks at the tables from now on
import unohelper
from treadsheet import XStair
from treadsheet_engine import ENGINE, HERE
from treadsheet_errors import error_cell

IMPLEMENTATION = "stair"
SERVICE = "com.sun.star.sheet.AddIn"


def _given(value):
    """An argument as cells of JSON; what is left out, or empty, is null."""
    if isinstance(value, tuple):
        return [[_given(cell) for cell in row] for row in value]
    return value if isinstance(value, (bool, int, float, str)) else None


def _cell(value):
    """A cell as Calc takes it: it has numbers, texts and errors, and true and false are 1 and 0."""
    if isinstance(value, dict):
        return error_cell(value["error"])
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
