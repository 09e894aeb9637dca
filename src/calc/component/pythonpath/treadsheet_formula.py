"""Formulas of Excel made ones of this Calc: names of our functions, LET written out, functions that it has not."""

import re

from treadsheet_texts import PIECES, outside_texts

# What Excel writes for a function of an add-in, behind the number of a workbook in older files: [2]!_xldudf_STAIR_RISERS.
SAVED = re.compile(r"(?:\[\d+\]!)?_xldudf_STAIR_([A-Za-z]+)", re.IGNORECASE)
LATE = re.compile(
    r"(?:_xlfn\.)?(?:_xlws\.)?\b(CHOOSECOLS|DROP|FILTER|HSTACK|SEQUENCE|SORTBY|TAKE|UNIQUE|VSTACK|XLOOKUP|XMATCH)(?=\()", re.IGNORECASE,
)
# A formula of Calc has no more characters.
LONGEST = 65535
LET = re.compile(r"(?:_xlfn\.)?\bLET\(", re.IGNORECASE)
NEEDS = re.compile(r"_xldudf_STAIR_|_xlfn\.|_xlpm\.", re.IGNORECASE)

def _arguments(formula, start):
    """The arguments from behind an opening bracket on, and the place behind the closing one."""
    arguments, depth, begin, at = [], 0, start, start
    while at < len(formula):
        text = PIECES.match(formula, at)
        if text:
            at = text.end()
            continue
        sign = formula[at]
        if sign in "({":
            depth += 1
        elif sign in ")}" and depth > 0:
            depth -= 1
        elif sign in ";," and depth == 0:
            arguments.append(formula[begin:at])
            begin = at + 1
        elif sign == ")":
            return [*arguments, formula[begin:at]], at + 1
        at += 1
    return None, at


def _written_out(formula):
    """A formula without LET: each name is what was given for it."""
    found = LET.search(formula)
    while found:
        arguments, end = _arguments(formula, found.end())
        if arguments is None or len(arguments) % 2 == 0:
            return formula
        body = arguments[-1]
        # The last first, for what is given for it may have the names before it.
        for name, given in reversed(list(zip(arguments[:-1:2], arguments[1:-1:2]))):
            word = re.compile(r"(?<![\w.$!])%s(?![\w.(!])" % re.escape(name.strip()), re.IGNORECASE)
            body = outside_texts(body, lambda piece: word.sub(lambda _: "(%s)" % given.strip(), piece))
        formula = "%s(%s)%s" % (formula[:found.start()], body.strip(), formula[end:])
        if len(formula) > LONGEST:
            return formula
        found = LET.search(formula)
    return formula


def is_unbound(formula):
    """Whether there is something in it as Excel saves it."""
    return NEEDS.search(formula) is not None


def bound(formula, known):
    """The formula for a Calc that knows these functions, by their names in capitals."""
    def named(piece):
        late = LATE.sub(lambda found: found.group(0) if found.group(1).upper() in known else "ROWS." + found.group(1).upper(), piece)
        return SAVED.sub(lambda found: "STAIR." + found.group(1).upper(), late)

    return outside_texts(formula if "LET" in known else _written_out(formula), named)
