"""Does in a running LibreOffice what a list of steps says, and answers what came of each; the steps stand in office.ts."""

import json
import sys
import time

import uno

# com.sun.star.sheet.FormulaMapGroup.ALL_EXCEPT_SPECIAL
ALL_FUNCTIONS = 0x7FFFFFFF
ENGLISH_SPREADSHEET = "private:factory/scalc"


def made(name, key, value):
    struct = uno.createUnoStruct(name)
    struct.Name, struct.Value = key, value
    return struct


def connected(pipe):
    context = uno.getComponentContext()
    resolver = context.ServiceManager.createInstanceWithContext("com.sun.star.bridge.UnoUrlResolver", context)
    for _ in range(300):
        try:
            return resolver.resolve("uno:pipe,name=%s;urp;StarOffice.ComponentContext" % pipe)
        except Exception:
            time.sleep(0.2)
    raise SystemExit("The office did not answer on its pipe.")


class Office:
    def __init__(self, context):
        self.context = context
        self.book = None
        self.desktop = self.service("com.sun.star.frame.Desktop")
        self.menu_service = None

    def service(self, name):
        return self.context.ServiceManager.createInstanceWithContext(name, self.context)

    def sheet(self, name):
        if not self.book.Sheets.hasByName(name):
            self.book.Sheets.insertNewByName(name, self.book.Sheets.Count)
        return self.book.Sheets.getByName(name)

    def block(self, at):
        sheet = self.sheet(at["sheet"])
        row, column = at["row"], at["column"]
        return sheet.getCellRangeByPosition(column, row, column + at.get("columns", 1) - 1, row + at.get("rows", 1) - 1)

    def open(self, address=ENGLISH_SPREADSHEET):
        if self.book is not None:
            self.book.close(True)
        self.book = self.desktop.loadComponentFromURL(address, "_blank", 0, (made("com.sun.star.beans.PropertyValue", "Hidden", True),))

    def save(self, address, filter):
        self.book.storeToURL(address, (made("com.sun.star.beans.PropertyValue", "FilterName", filter),))

    def calculate(self):
        began = time.monotonic()
        self.book.calculateAll()
        return time.monotonic() - began

    def put(self, at, cells):
        """Values, a row of cells each; null leaves a cell blank."""
        width = max(len(row) for row in cells)
        block = self.block({**at, "rows": len(cells), "columns": width})
        block.setDataArray(tuple(
            tuple(self.datum(value) for value in [*row, *[None] * (width - len(row))]) for row in cells
        ))
        for down, row in enumerate(cells):
            for right, value in enumerate(row):
                if isinstance(value, bool):
                    block.getCellByPosition(right, down).setFormula("=TRUE()" if value else "=FALSE()")

    @staticmethod
    def datum(value):
        if value is None or isinstance(value, bool):
            return ""
        return value if isinstance(value, str) else float(value)

    def enter(self, at, formula):
        """A formula into a cell, or as the array formula of a block."""
        block = self.block(at)
        if at.get("rows", 1) * at.get("columns", 1) == 1 and not at.get("isArray"):
            block.getCellByPosition(0, 0).setFormula(formula)
        else:
            block.setArrayFormula(formula)

    def shown(self, block, left_out=frozenset()):
        """What cells hold: numbers, texts and errors by what they show, which the office gives as nothing; null for what is left out."""
        return [
            [
                {"error": block.getCellByPosition(right, down).getString()} if value is None and (down, right) not in left_out else value
                for right, value in enumerate(row)
            ]
            for down, row in enumerate(block.getDataArray())
        ]

    def read(self, at):
        return self.shown(self.block(at))

    def until(self, at, wanted):
        """What cells hold as soon as it is what is wanted, or after a while: tables are put right when the office is idle."""
        for _ in range(600):
            if self.read(at) == wanted:
                break
            time.sleep(0.05)
        return self.read(at)

    def clear(self, at):
        # com.sun.star.sheet.CellFlags: numbers, dates, texts and formulas
        self.block(at).clearContents(1 | 2 | 4 | 16)

    def undo(self):
        self.book.UndoManager.undo()

    def redo(self):
        self.book.UndoManager.redo()

    def note(self, at, wanted=None):
        """The text of the note of a cell and whether it stays open, as soon as there is one, or there is none, as wanted."""
        for _ in range(600):
            note = self.block(at).getCellByPosition(0, 0).getAnnotation()
            if wanted is None or bool(note.getString()) == wanted:
                break
            time.sleep(0.05)
        return [note.getString(), note.getIsVisible()]

    def entries(self):
        """The entries of the menu as the office has read them, each with whether it leads anywhere."""
        access = self.service("com.sun.star.configuration.ConfigurationProvider")
        path = "/org.openoffice.Office.Addons/AddonUI/OfficeMenuBar/treadsheet.menu/Submenu"
        node = made("com.sun.star.beans.PropertyValue", "nodepath", path)
        entries = access.createInstanceWithArguments("com.sun.star.configuration.ConfigurationAccess", (node,))
        found = [entries.getByName(name) for name in entries.ElementNames]
        return [[one.getByName("Title"), self._dispatch(one.getByName("URL"))[1] is not None] for one in found]

    def _dispatch(self, address):
        url = uno.createUnoStruct("com.sun.star.util.URL")
        url.Complete = address
        _, url = self.service("com.sun.star.util.URLTransformer").parseStrict(url)
        return url, self.book.CurrentController.Frame.queryDispatch(url, "_self", 0)

    def choose(self, title, at):
        """An entry of the menu chosen with a cell selected, as its command goes out; a document without a window gets no box."""
        self.desktop.setActiveFrame(self.book.CurrentController.Frame)
        self.book.CurrentController.select(self.block(at))
        url, dispatch = self._dispatch("service:treadsheet.Menu?" + title)
        dispatch.dispatch(url, ())

    def formula(self, at):
        return self.block(at).getCellByPosition(0, 0).getFormula()

    def sheets(self, left_out):
        """Every sheet with what it shows and the formulas of its cells, from A1 to the last cell used; errors but of cells left out."""
        found = {}
        for sheet in (self.book.Sheets.getByIndex(index) for index in range(self.book.Sheets.Count)):
            cursor = sheet.createCursor()
            cursor.gotoEndOfUsedArea(True)
            end = cursor.RangeAddress
            block = sheet.getCellRangeByPosition(0, 0, end.EndColumn, end.EndRow)
            found[sheet.Name] = {"cells": self.shown(block, set(map(tuple, left_out.get(sheet.Name, ())))), "formulas": block.getFormulaArray()}
        return found

    def menu(self, action, at=None, to=None):
        """An entry of the menu Treadsheet with a cell selected; answers its sentence."""
        # The service is there once and for all, as a menu's is not: the office keeps what it knows of its process.
        self.menu_service = self.menu_service or self.service("treadsheet.Menu")
        if at is not None:
            self.book.CurrentController.select(self.block(at))
        given = [made("com.sun.star.beans.NamedValue", "Action", action), made("com.sun.star.beans.NamedValue", "Model", self.book)]
        if to is not None:
            given.append(made("com.sun.star.beans.NamedValue", "To", to))
        return self.menu_service.execute(tuple(given))

    def known(self):
        """The functions of this Calc by the names they have in a file of Excel."""
        mapper = self.book.createInstance("com.sun.star.sheet.FormulaOpCodeMapper")
        words = mapper.getAvailableMappings(uno.getConstantByName("com.sun.star.sheet.FormulaLanguage.XL_ENGLISH"), ALL_FUNCTIONS)
        return [word.Name for word in words]

    def wizard(self):
        """The functions as the function wizard lists them."""
        descriptions = self.service("com.sun.star.sheet.FunctionDescriptions")
        found = []
        for index in range(descriptions.Count):
            one = {part.Name: part.Value for part in descriptions.getByIndex(index)}
            if one["Name"].startswith("STAIR."):
                arguments = [[each.Name, each.Description, each.IsOptional] for each in one["Arguments"] or ()]
                found.append({"name": one["Name"], "description": one["Description"], "arguments": arguments})
        return found

    def library(self):
        """The methods of the type library as the office has read them."""
        manager = self.context.getValueByName("/singletons/com.sun.star.reflection.theTypeDescriptionManager")
        methods = manager.getByHierarchicalName("treadsheet.XStair").getMembers()
        return [
            {
                "name": one.getMemberName(),
                "returns": one.getReturnType().getName(),
                "parameters": [
                    {"name": each.getName(), "type": each.getType().getName(), "isIn": each.isIn(), "isOut": each.isOut()}
                    for each in sorted(one.getParameters(), key=lambda each: each.getPosition())
                ],
            }
            for one in sorted(methods, key=lambda each: each.getPosition())
        ]

    def version(self):
        access = self.service("com.sun.star.configuration.ConfigurationProvider")
        node = made("com.sun.star.beans.PropertyValue", "nodepath", "/org.openoffice.Setup/Product")
        product = access.createInstanceWithArguments("com.sun.star.configuration.ConfigurationAccess", (node,))
        return product.getByName("ooSetupVersionAboutBox")


def main(pipe):
    office = Office(connected(pipe))
    try:
        print(json.dumps([getattr(office, name)(*given) for name, *given in json.load(sys.stdin)]))
    finally:
        try:
            if office.book is not None:
                office.book.close(True)
            office.desktop.terminate()
        except Exception:
            pass


main(sys.argv[1])
