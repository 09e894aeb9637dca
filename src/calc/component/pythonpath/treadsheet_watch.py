"""After functions have answered, their tables are looked at: as soon as the office is idle, for a formula may change no cell."""

import time
from contextlib import contextmanager

import uno
import unohelper
from com.sun.star.awt import XCallback
from com.sun.star.uno import RuntimeException
from com.sun.star.util import XModifyListener
from treadsheet_engine import ENGINE
from treadsheet_fit import fit_tables, state_of_formulas

CALC = "com.sun.star.sheet.SpreadsheetDocument"


class _OneWithThePersons:
    """What is done while it lasts is undone together with what the person did before it."""

    def __init__(self, model):
        self._manager = model.UndoManager
        self._is_step = self._manager.isUndoPossible()

    def __enter__(self):
        if self._is_step:
            self._manager.enterHiddenUndoContext()
        else:
            self._manager.lock()

    def __exit__(self, *_):
        if self._is_step:
            self._manager.leaveUndoContext()
        else:
            self._manager.unlock()


class _Cleared(unohelper.Base, XModifyListener):
    """Looks again at a document with a table too small, whenever something in it changes."""

    def __init__(self, watch):
        self._watch = watch

    def modified(self, event):
        self._watch.all_of_them()

    def disposing(self, source):
        pass


class Watch(unohelper.Base, XCallback):
    def __init__(self):
        self._is_asked = False
        self._is_busy = False
        self._is_menu = False
        self._heard = {}
        self._answers, self._last = set(), set()
        self._looked_at = None
        self._is_all = False
        self._cleared = _Cleared(self)
        self._listened = []

    def heard(self, function, is_table, has_text, answer):
        """A function has answered, whether a table, whether with a text, and what tells the answer from others."""
        was = self._heard.get(function, (False, False))
        self._heard[function] = (was[0] or is_table, was[1] or has_text)
        self._answers.add(answer)
        self._ask()

    def all_of_them(self):
        if not self._is_busy:
            self._is_all = True
            self._ask()

    def _ask(self):
        if self._is_asked or self._is_busy:
            return
        self._is_asked = True
        context = uno.getComponentContext()
        context.ServiceManager.createInstanceWithContext("com.sun.star.awt.AsyncCallback", context).addCallback(self, None)

    @contextmanager
    def aside(self):
        """While it lasts, a script or a person changes the tables: it waits for what is at work, and is waited for."""
        while self._is_busy:
            time.sleep(0.01)
        self._is_menu = True
        try:
            yield
        finally:
            self._is_menu = False
            if self._heard or self._is_all:
                self._ask()

    def _documents(self):
        context = uno.getComponentContext()
        found = context.ServiceManager.createInstanceWithContext("com.sun.star.frame.Desktop", context).Components.createEnumeration()
        while found.hasMoreElements():
            one = found.nextElement()
            if hasattr(one, "supportsService") and one.supportsService(CALC) and not one.isReadonly():
                yield one

    def _look_at(self, model, heard):
        """Whether a table was changed."""
        # While a person takes steps back, the tables go back with them.
        if model.UndoManager.isRedoPossible():
            return False
        model.lockControllers()
        try:
            with _OneWithThePersons(model):
                changed, small = fit_tables(model, heard, is_idle=True)
        finally:
            model.unlockControllers()
        self._listen(model, bool(small))
        return changed > 0

    def _listen(self, model, is_small):
        is_listened = model in self._listened
        if is_small and not is_listened:
            model.addModifyListener(self._cleared)
            self._listened.append(model)
        if is_listened and not is_small:
            model.removeModifyListener(self._cleared)
            self._listened.remove(model)

    def _state(self):
        """What tells the formulas of all documents from those of another time."""
        return hash(tuple((model.RuntimeUID, state_of_formulas(model)) for model in self._documents()))

    def _look(self, heard):
        """Whether a table of any document was changed."""
        return any([self._look_at(model, heard) for model in self._documents()])

    def notify(self, data):
        self._is_asked = False
        if self._is_menu:
            return
        heard = None if self._is_all else self._heard
        # A formula that Calc works out again at every change answers as it did when its table was looked at last.
        is_known = heard is not None and self._answers <= self._last
        self._is_all, self._is_busy = False, True
        try:
            state = self._state()
            if not is_known or state != self._looked_at:
                is_changed = self._look(heard)
                self._last = self._answers
                self._looked_at = self._state() if is_changed else state
        except RuntimeException:
            # The document was closed meanwhile.
            pass
        finally:
            self._is_busy, self._heard, self._answers = False, {}, set()


WATCH = Watch()
ENGINE.tell(WATCH.heard)
