"""Texts that Calc finds: what a component answers in a table has to be joined to an empty text before Calc compares it."""

import json
import os
import re

from treadsheet_engine import HERE
from treadsheet_errors import ERROR_MARK

# Calc keeps each text once and compares by that, but for texts in a table of a component, which it finds unlike every other. Joined to an
# empty text they are as any: here, where the formula gives them to cells.
SHORT = '=IF(ISTEXT(%s);(%s)&"";%s)'
IS_SHORT = re.compile(r"=IF\(ISTEXT\((?P<given>.*)\)(?P<mark>[;,])\((?P=given)\)&\"\"(?P=mark)(?P=given)\)", re.DOTALL)
# A long one gives its table once: as texts, of which each is answered by itself. An argument of a component may have no error in it.
LONG = '=ROWS.CELLS(ROWS.SENT(IFERROR(IFNA(%%s;"%s#N/A");"%s#VALUE!")))' % (ERROR_MARK, ERROR_MARK)
IS_LONG = re.compile(
    re.escape(LONG).replace("%s", "(?P<given>.*)").replace(";", "[;,]"), re.DOTALL | re.IGNORECASE,
)
# A formula of Calc has no more than 8,192 tokens (FORMULA_MAXTOKENS), of which the short form has a few of its own.
MOST_TOKENS = 2700
TOKEN = re.compile(r'"(?:[^"]|"")*"|\'(?:[^\']|\'\')*\'|[\w.!$]+|<>|[<>]=|\S')
# Texts between quotes are left as they are.
PIECES = re.compile(r'("(?:[^"]|"")*"|\'(?:[^\']|\'\')*\')')
COMPARES = re.compile(r"(?<=[\w)])\s*(=|<>)\s*$")
CALLS = re.compile(r"\b(STAIR|ROWS)\.([A-Z]+)(?=\()", re.IGNORECASE)

def outside_texts(formula, change):
    return "".join(piece if index % 2 else change(piece) for index, piece in enumerate(PIECES.split(formula)))


def _table_functions():
    with open(os.path.join(HERE, "functions.json"), encoding="utf-8") as file:
        functions = json.load(file)["functions"]
    return {one["id"] for one in functions if one["result"]["dimensionality"] == "matrix"}


TABLE_FUNCTIONS = _table_functions()


def tables_called(formula):
    """The functions called in a formula that answer tables, as STAIR.CHECK."""
    found = set()
    for piece in PIECES.split(formula)[::2]:
        for component, name in CALLS.findall(piece):
            if component.upper() == "ROWS" or name.upper() in TABLE_FUNCTIONS:
                found.add("%s.%s" % (component.upper(), name.upper()))
    return found


def _compared(formula):
    """A formula in which what is compared with a text is joined to an empty one first."""
    pieces = PIECES.split(formula)
    for index in range(1, len(pieces), 2):
        if pieces[index].startswith('"'):
            pieces[index - 1] = COMPARES.sub(r'&""\1', pieces[index - 1])
    return "".join(pieces)


def _made(formula):
    return IS_SHORT.fullmatch(formula) or IS_LONG.fullmatch(formula)


def plain(formula):
    """The formula as it was before its texts were made ones that Calc finds."""
    found = _made(formula)
    return "=" + found.group("given") if found else formula


def comparable(formula):
    """The formula with texts that Calc finds, where it calls a function that answers a table."""
    if _made(formula) or not tables_called(formula):
        return formula
    given = _compared(formula)[1:]
    return LONG % given if len(TOKEN.findall(given)) > MOST_TOKENS else SHORT % (given, given, given)
