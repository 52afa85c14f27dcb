"""What holds for every test."""

import os

# Before anything imports PySide6: without a display Qt aborts the whole run.
os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from hypothesis import settings

# A slow machine is no fault of the code, and the first example often pays for an import.
settings.register_profile("tracker", deadline=None)
settings.load_profile("tracker")
