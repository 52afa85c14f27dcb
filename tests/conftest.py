"""What holds for every test."""

import os

# Before anything imports PySide6: without a display Qt aborts the whole run.
os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
