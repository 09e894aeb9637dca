"""The functions of functions.js, worked out by Node in a process of its own.

One process is started at the first call and asked over pipes, a line of JSON a call; no port is opened. It ends with the office.
"""

import json
import os
import queue
import shutil
import subprocess
import sys
import threading
from collections import OrderedDict
from contextlib import contextmanager

import uno

HERE = os.path.dirname(os.path.dirname(os.path.abspath(__file__)))
SETTINGS = "/treadsheet.Settings/Engine"
# Seconds a call may take; the largest promised table takes less than two.
TIME_LIMIT = 30
# Where Node's own installers put it; a program started from a desktop may have a shorter PATH than a terminal.
USUAL_PLACES = (
    "/usr/local/bin/node",
    "/opt/homebrew/bin/node",
    "/usr/bin/node",
    "C:\\Program Files\\nodejs\\node.exe",
)
# Answers kept: a formula gives its table three times where Calc has to find its texts, and the same call is the same answer.
KEPT = 200
NO_NODE = (
    "Treadsheet works its functions out with Node, and Node was not found on this computer. Install Node 20 or newer, or say where "
    "it is: menu Treadsheet, Where Node is. Then recalculate with Ctrl+Shift+F9."
)


class EngineError(Exception):
    """There is no answer; the message is the sentence to show."""


def _provider():
    context = uno.getComponentContext()
    return context.ServiceManager.createInstanceWithContext("com.sun.star.configuration.ConfigurationProvider", context)


def _settings(access):
    argument = uno.createUnoStruct("com.sun.star.beans.PropertyValue")
    argument.Name, argument.Value = "nodepath", SETTINGS
    return _provider().createInstanceWithArguments("com.sun.star.configuration." + access, (argument,))


def node_setting():
    """Where Node is, as somebody set it; empty where nobody did."""
    return _settings("ConfigurationAccess").getByName("Node") or ""


def set_node(path):
    """Keeps where Node is and starts it anew from there."""
    settings = _settings("ConfigurationUpdateAccess")
    settings.replaceByName("Node", path)
    settings.commitChanges()
    ENGINE.stop()


def _node():
    setting = node_setting()
    if setting:
        if os.path.isfile(setting):
            return setting
        raise EngineError(
            "Node is set to %s, and there is no such file. Set it again: menu Treadsheet, Where Node is." % setting
        )
    found = shutil.which("node") or next((place for place in USUAL_PLACES if os.path.isfile(place)), None)
    if found is None:
        raise EngineError(NO_NODE)
    return found


class _Child:
    """One process with a thread that reads what it says, so that an answer can be waited for with a limit."""

    def __init__(self):
        node = _node()
        hidden = {"creationflags": 0x08000000} if sys.platform == "win32" else {}  # CREATE_NO_WINDOW
        try:
            self._process = subprocess.Popen(
                [node, os.path.join(HERE, "answers.js")],
                stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=subprocess.PIPE, encoding="utf-8", **hidden
            )
        except OSError as error:
            raise EngineError("Node could not be started from %s: %s." % (node, error.strerror or error))
        self._lines = queue.Queue()
        self._complaint = ""
        threading.Thread(target=self._read_answers, daemon=True).start()
        self._complaining = threading.Thread(target=self._read_complaints, daemon=True)
        self._complaining.start()

    def _read_answers(self):
        for line in self._process.stdout:
            self._lines.put(line)
        self._lines.put(None)

    def _read_complaints(self):
        for line in self._process.stderr:
            if line.strip():
                self._complaint = line.strip()

    def is_running(self):
        return self._process.poll() is None

    def ask(self, request, limit):
        """The line that answers; None where the process has ended."""
        try:
            self._process.stdin.write(request + "\n")
            self._process.stdin.flush()
        except OSError:
            return None
        return self._lines.get(timeout=limit)

    def stop(self):
        self._process.kill()
        self._process.wait()
        # What it wrote last may not have been read yet; a program that it started in turn may hold the pipe open.
        self._complaining.join(1)
        return self._complaint


class Engine:
    """Asks the process, which it starts where none runs, and once more where it has died."""

    def __init__(self):
        self._child = None
        self._lock = threading.Lock()
        self._watched = None
        self._kept = OrderedDict()
        self._told = None
        self._is_unheard = False

    def stop(self):
        with self._lock:
            self._kept.clear()
            self._end()

    def _end(self):
        complaint = self._child.stop() if self._child is not None else ""
        self._child = None
        return complaint

    def _line(self, request, limit):
        complaint = ""
        for _ in range(2):
            if self._child is None or not self._child.is_running():
                self._end()
                self._child = _Child()
            try:
                line = self._child.ask(request, limit)
            except queue.Empty:
                self._end()
                raise EngineError("The answer took longer than %d seconds and was given up. Ask for less at once." % limit)
            if line is not None:
                return line
            complaint = self._end()
        raise EngineError("Node ended without an answer. %s" % (complaint or "Node 20 or newer is needed."))

    def ask(self, request, limit=TIME_LIMIT):
        with self._lock:
            return json.loads(self._line(json.dumps(request), limit))

    def _answer(self, function, cells):
        """What the process answers to a call, asked once as long as the answer is kept."""
        key = json.dumps([function, cells])
        if key not in self._kept:
            self._kept[key] = self.ask({"call": function, "cells": cells})
            if len(self._kept) > KEPT:
                self._kept.popitem(last=False)
        self._kept.move_to_end(key)
        return self._kept[key]

    def call(self, function, cells):
        """What a function answers, or its error with the sentence: {"value": ...} or {"error": ..., "says": ...}."""
        try:
            answer = self._answer(function, cells)
        except EngineError as error:
            answer = {"error": "#VALUE!", "says": str(error)}
        if self._watched is not None:
            self._watched.append(answer)
        value = answer.get("value")
        self.hear("STAIR." + function, value if isinstance(value, list) else [[value]])
        return answer

    def tell(self, told):
        """From now on, told is called with each function that has answered, whether a table, whether with a text, and what
        tells this answer from others."""
        self._told = told

    def hear(self, function, rows):
        """A function has answered these rows."""
        if self._told is not None and not self._is_unheard:
            is_table = len(rows) > 1 or len(rows[0]) > 1
            has_text = any(isinstance(cell, str) for row in rows for cell in row)
            self._told(function, is_table, has_text, hash((function, repr(rows))))

    @contextmanager
    def unheard(self):
        """While it lasts, nobody is told: a table is measured."""
        was, self._is_unheard = self._is_unheard, True
        try:
            yield
        finally:
            self._is_unheard = was

    def watch(self, work):
        """The answers given while something is worked out, in their order."""
        self._watched = []
        try:
            work()
            return self._watched
        finally:
            self._watched = None


ENGINE = Engine()
