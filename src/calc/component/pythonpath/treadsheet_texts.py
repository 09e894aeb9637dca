"""Texts that Calc finds: what a component answers in a table has to be joined to an empty text before Calc compares it."""

import json
import os
import re
from functools import lru_cache

from treadsheet_engine import HERE
from treadsheet_errors import ERROR_MARK

# Calc keeps each text once and compares by that, but for texts in a table of a component, which it finds unlike every other. Joined to an
# empty text they are as any: here, where the formula gives them to cells.
SHORT = '=IF(ISTEXT(%s);(%s)&"";%s)'
BEGINS_SHORT = re.compile(r"\bIF\(ISTEXT\(")
# What is compared with a text in quotes; like &"", but for that it can be told from a person's own.
JOINED = '&T("")'
# A long one gives its table once: as texts, of which each is answered by itself. An argument of a component may have no error in it.
LONG = '=ROWS.CELLS(ROWS.SENT(IFERROR(IFNA(%%s;"%s#N/A");"%s#VALUE!")))' % (ERROR_MARK, ERROR_MARK)
IS_LONG = re.compile(
    re.escape(LONG).replace("%s", "(?P<given>.*)").replace(";", "[;,]").replace("IFNA", r"(?:_xlfn\.)?IFNA"), re.DOTALL | re.IGNORECASE,
)
# A formula of Calc has no more than 8,192 tokens (FORMULA_MAXTOKENS), of which the short form has a few of its own.
MOST_TOKENS = 2700
TOKEN = re.compile(r'"(?:[^"]|"")*"|\'(?:[^\']|\'\')*\'|[\w.!$]+|<>|[<>]=|\S')
# Texts between quotes are left as they are.
PIECES = re.compile(r'("(?:[^"]|"")*"|\'(?:[^\']|\'\')*\')')
COMPARES = re.compile(r"(?<=[\w)])\s*(=|<>)\s*$")
# Functions that give numbers alone, or one text that Calc makes itself.
NUMBERS = {
    "AND", "AVERAGE", "COLUMNS", "CONCATENATE", "COUNT", "COUNTA", "COUNTIF", "COUNTIFS", "ISERROR", "ISNUMBER", "ISTEXT", "LEN", "MATCH",
    "MAX", "MIN", "NOT", "OR", "ROUND", "ROUNDDOWN", "ROUNDUP", "ROWS", "SUM", "SUMIF", "SUMIFS", "SUMPRODUCT", "TEXT", "TEXTJOIN", "VALUE",
}
COMPARISON = re.compile(r"(?<![<>=])(?:=|<>)(?!=)")
NAME_BEFORE = re.compile(r"[\w.]*$")
CALL_AFTER = re.compile(r"[\w.]*\(")
NUMBER_BEFORE = re.compile(r"(?<![\w.$])[\d.]+$")
NUMBER_AFTER = re.compile(r"-?[\d.]+(?![\w.])")
CALLS = re.compile(r"\b(STAIR|ROWS)\.([A-Z]+)(?=\()", re.IGNORECASE)


def outside_texts(formula, change):
    return "".join(piece if index % 2 else change(piece) for index, piece in enumerate(PIECES.split(formula)))


def _table_functions():
    with open(os.path.join(HERE, "functions.json"), encoding="utf-8") as file:
        functions = json.load(file)["functions"]
    return {one["id"] for one in functions if one["result"]["dimensionality"] == "matrix"}


TABLE_FUNCTIONS = _table_functions()


# All of a document's formulas are looked at after each answer; they are the same ones.
@lru_cache(maxsize=20000)
def tables_called(formula):
    """The functions called in a formula that answer tables, as STAIR.CHECK."""
    found = set()
    for piece in PIECES.split(formula)[::2]:
        for component, name in CALLS.findall(piece):
            if component.upper() == "ROWS" or name.upper() in TABLE_FUNCTIONS:
                found.add("%s.%s" % (component.upper(), name.upper()))
    return frozenset(found)


def _closing(signs, start):
    """The place of the bracket that closes the one at a place."""
    depth = 0
    for at in range(start, len(signs)):
        depth += {"(": 1, ")": -1}.get(signs[at], 0)
        if depth == 0:
            return at
    return -1


def _opening(signs, end):
    """The place of the bracket that the one at a place closes."""
    depth = 0
    for at in range(end, -1, -1):
        depth += {")": 1, "(": -1}.get(signs[at], 0)
        if depth == 0:
            return at
    return -1


def is_table_call(text):
    """Whether it is one call of a function that answers a table, in brackets or not."""
    signs = _blank_texts(text)
    if signs.startswith("("):
        return _closing(signs, 0) == len(signs) - 1 and is_table_call(text[1:-1].strip())
    found = CALLS.match(text)
    return found is not None and _closing(signs, found.end()) == len(signs) - 1 and bool(tables_called(text[:found.end() + 1]))


def _blank_texts(formula):
    return "".join("\0" * len(piece) if index % 2 else piece for index, piece in enumerate(PIECES.split(formula)))


def _compared_table(formula):
    """Where the first table stands that is compared with what may be a text: from and to; None where there is none."""
    signs = _blank_texts(formula)
    for found in COMPARISON.finditer(signs, 1):
        before, after = found.start(), found.end()
        if signs[before - 1] == ")" and not NUMBER_AFTER.match(signs, after):
            start = _opening(signs, before - 1)
            start -= len(NAME_BEFORE.search(signs[:start]).group())
            if is_table_call(formula[start:before]):
                return start, before
        call = CALL_AFTER.match(signs, after)
        if call and not NUMBER_BEFORE.search(signs[:before]):
            end = _closing(signs, call.end() - 1) + 1
            if is_table_call(formula[after:end]):
                return after, end
    return None


def compared(formula):
    """A formula that calls a function that answers a table, in which the texts that are compared are ones that Calc finds."""
    if not tables_called(formula):
        return formula
    pieces = PIECES.split(formula)
    for index in range(1, len(pieces), 2):
        is_joined = index >= 3 and pieces[index - 3].endswith("&T(") and pieces[index - 2] == '""'
        if pieces[index].startswith('"') and not is_joined:
            pieces[index - 1] = COMPARES.sub(JOINED + r"\1", pieces[index - 1])
    formula = "".join(pieces)
    place = _compared_table(formula)
    while place is not None:
        start, end = place
        given = formula[start:end]
        formula = formula[:start] + SHORT[1:] % (given, given, given) + formula[end:]
        place = _compared_table(formula)
    return formula


def _short_at(formula, found):
    """What is given and where the short form ends that begins at IF(ISTEXT(; None where it is another formula."""
    end = _closing(_blank_texts(formula), found.end() - 1)
    given, mark = formula[found.end():end], formula[end + 1:end + 2]
    behind = '%s(%s)&""%s%s)' % (mark, given, mark, given)
    is_short = end > 0 and mark in (";", ",") and formula.startswith(behind, end + 1)
    return (given, end + 1 + len(behind)) if is_short else None


def _is_made(formula):
    return _is_whole_short(formula) or IS_LONG.fullmatch(formula) is not None


def _is_whole_short(formula):
    found = BEGINS_SHORT.match(formula, 1)
    short = _short_at(formula, found) if found else None
    return short is not None and short[1] == len(formula)


def given_of(formula):
    """What the whole formula makes texts of, or the formula itself, without its =."""
    if _is_whole_short(formula):
        return _short_at(formula, BEGINS_SHORT.match(formula, 1))[0]
    long = IS_LONG.fullmatch(formula)
    return long.group("given") if long else formula[1:]


def plain(formula):
    """The formula as it was before its texts were made ones that Calc finds."""
    long = IS_LONG.fullmatch(formula)
    formula = "=" + long.group("given") if long else formula
    found = BEGINS_SHORT.search(formula)
    while found:
        short = _short_at(formula, found)
        if short:
            formula = formula[:found.start()] + short[0] + formula[short[1]:]
        found = BEGINS_SHORT.search(formula, found.start() if short else found.end())
    return formula.replace(JOINED, "")


def _gives_number(formula):
    """Whether a formula gives a number, or joins a text, by what it begins with or by a sign outside of every bracket."""
    signs = _blank_texts(formula)
    call = CALL_AFTER.match(signs, 1)
    if call and call.group()[:-1].upper() in NUMBERS and _closing(signs, call.end() - 1) == len(signs) - 1:
        return True
    depth = 0
    for at, sign in enumerate(signs[1:], 1):
        depth += {"(": 1, "{": 1, ")": -1, "}": -1}.get(sign, 0)
        if depth == 0 and at > 1 and sign in "+-*/^&=<>":
            return True
    return False


def comparable(formula):
    """The formula with texts that Calc finds, where it calls a function that answers a table; those compared in it, and those it gives."""
    if _is_made(formula) or not tables_called(formula):
        return formula
    given = compared(formula)[1:]
    if _gives_number(formula):
        return "=" + given
    return LONG % given if len(TOKEN.findall(given)) > MOST_TOKENS else SHORT % (given, given, given)
