"""The menu Treadsheet: each entry calls this service with its word, and a box says what came of it."""

import uno
import unohelper
from com.sun.star.task import XJob, XJobExecutor
from treadsheet_engine import EngineError, node_setting, set_node
from treadsheet_mend import copy_for_excel, mend
from treadsheet_table import fit_all, insert_table
from treadsheet_watch import WATCH
from treadsheet_why import why

SERVICE = "treadsheet.Menu"
# com.sun.star.ui.dialogs.TemplateDescription: FILEOPEN_SIMPLE, FILESAVE_AUTOEXTENSION
OPEN, SAVE = 0, 10


class Menu(unohelper.Base, XJobExecutor, XJob):
    def __init__(self, context):
        self._context = context

    def _service(self, name):
        return self._context.ServiceManager.createInstanceWithContext(name, self._context)

    def _chosen(self, kind, title, name=""):
        """The address of a file that a person chooses; None where they do not."""
        picker = self._service("com.sun.star.ui.dialogs.FilePicker")
        picker.initialize((kind,))
        picker.setTitle(title)
        if kind == SAVE:
            picker.appendFilter("Excel", "*.xlsx")
            picker.setDefaultName(name)
        return picker.getSelectedFiles()[0] if picker.execute() else None

    def _selected(self, model):
        """The first cell of the selection, or None where no cell is selected."""
        selected = model.CurrentController.getSelection()
        if selected.supportsService("com.sun.star.sheet.SheetCellRanges"):
            selected = selected.getByIndex(0)
        return selected.getCellByPosition(0, 0) if hasattr(selected, "getCellByPosition") else None

    def _copy(self, model, to):
        to = to or self._chosen(SAVE, "Save a copy for Excel", "for-excel.xlsx")
        return copy_for_excel(model, to) if to else ""

    def _node(self, to):
        to = to or self._chosen(OPEN, "Where Node is: the file node, or node.exe")
        if not to:
            return ""
        set_node(uno.fileUrlToSystemPath(to))
        return "Node is taken from %s. Recalculate with Ctrl+Shift+F9." % node_setting()

    def _done(self, action, model, to=None):
        """What came of an entry of the menu, in a sentence; empty where nothing was chosen."""
        try:
            with WATCH.aside():
                return self._work(action, model, to)
        except EngineError as error:
            return str(error)

    def _work(self, action, model, to):
        if action == "node":
            return self._node(to)
        if action == "mend":
            return mend(model)
        if action == "fit":
            return fit_all(model)
        if action == "copy":
            return self._copy(model, to)
        cell = self._selected(model)
        if cell is None:
            return "Select a cell first."
        return insert_table(model, cell) if action == "table" else why(model, cell)

    def trigger(self, action):
        """An entry of the menu was chosen."""
        desktop = self._service("com.sun.star.frame.Desktop")
        model = desktop.getCurrentComponent()
        says = self._done(action, model)
        window = model.CurrentController.Frame.ContainerWindow
        if says and window.isVisible():
            kind = uno.Enum("com.sun.star.awt.MessageBoxType", "INFOBOX")
            window.Toolkit.createMessageBox(window, kind, 1, "Treadsheet", says).execute()

    def execute(self, arguments):
        """The same for a script: Action, Model and, for a file, To; answers the sentence."""
        given = {one.Name: one.Value for one in arguments}
        return self._done(given["Action"], given.get("Model"), given.get("To"))


g_ImplementationHelper = unohelper.ImplementationHelper()
g_ImplementationHelper.addImplementation(Menu, SERVICE, (SERVICE,))
