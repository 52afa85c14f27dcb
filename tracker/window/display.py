"""Whether this machine can show a window, found out before Qt is asked: Qt aborts the process where it can't.

On Linux a window needs a display that answers and the shared libraries of Qt's window-system plugin, which no Python
package brings. Each missing one is named with the line that installs it.
"""

import ctypes
import os
import sys
from collections.abc import Mapping

# Library -> Debian and Ubuntu package. From the NEEDED entries of Qt 6.11's own libraries (read off with ldd).
DRAWING_LIBRARIES: Mapping[str, str] = {
    "libGL.so.1": "libgl1",
    "libEGL.so.1": "libegl1",
    "libxkbcommon.so.0": "libxkbcommon0",
    "libdbus-1.so.3": "libdbus-1-3",
    "libfontconfig.so.1": "libfontconfig1",
    "libglib-2.0.so.0": "libglib2.0-0",
}
X11_LIBRARIES: Mapping[str, str] = {
    "libX11-xcb.so.1": "libx11-xcb1",
    "libxcb-cursor.so.0": "libxcb-cursor0",
    "libxcb-icccm.so.4": "libxcb-icccm4",
    "libxcb-image.so.0": "libxcb-image0",
    "libxcb-keysyms.so.1": "libxcb-keysyms1",
    "libxcb-randr.so.0": "libxcb-randr0",
    "libxcb-render-util.so.0": "libxcb-render-util0",
    "libxcb-render.so.0": "libxcb-render0",
    "libxcb-shape.so.0": "libxcb-shape0",
    "libxcb-shm.so.0": "libxcb-shm0",
    "libxcb-sync.so.1": "libxcb-sync1",
    "libxcb-xfixes.so.0": "libxcb-xfixes0",
    "libxcb-xkb.so.1": "libxcb-xkb1",
    "libxkbcommon-x11.so.0": "libxkbcommon-x11-0",
}
_WITHOUT_A_SCREEN = ("offscreen", "minimal", "vnc")


def why_no_window(environment: Mapping[str, str] = os.environ) -> str | None:
    """None where a window can open; else one sentence on what is missing and the line that brings it."""
    if not sys.platform.startswith("linux"):
        return None
    plugin = environment.get("QT_QPA_PLATFORM", "")
    if plugin.startswith(_WITHOUT_A_SCREEN):
        return why_no_drawing()
    if not environment.get("DISPLAY") and not environment.get("WAYLAND_DISPLAY"):
        return (
            "There is no display here, so no window was opened. Start it on a desktop, or use "
            "'python -m tracker demo --headless' for pictures and 'python -m tracker --help' for the commands."
        )
    return why_no_drawing() or (why_no_x11(environment["DISPLAY"]) if uses_x11(environment) else None)


def uses_x11(environment: Mapping[str, str]) -> bool:
    plugin = environment.get("QT_QPA_PLATFORM", "")
    return bool(environment.get("DISPLAY")) and (plugin == "xcb" or not environment.get("WAYLAND_DISPLAY"))


def why_no_drawing() -> str | None:
    """The libraries that Qt needs even to draw a picture without a screen."""
    if not sys.platform.startswith("linux"):
        return None
    return sentence_about(missing(DRAWING_LIBRARIES))


def why_no_x11(display: str) -> str | None:
    lacking = missing(X11_LIBRARIES)
    if lacking:
        return sentence_about(lacking)
    if not display_answers(display):
        return f"The display {display} does not answer, so no window was opened. Check DISPLAY."
    return None


def missing(libraries: Mapping[str, str]) -> dict[str, str]:
    """Those of the libraries that the loader does not find."""
    return {library: package for library, package in libraries.items() if not loads(library)}


def loads(library: str) -> bool:
    try:
        ctypes.CDLL(library)
    except OSError:
        return False
    return True


def sentence_about(lacking: Mapping[str, str]) -> str | None:
    if not lacking:
        return None
    return (
        f"The window needs {', '.join(lacking)}, which this machine lacks. On Debian or Ubuntu: "
        f"sudo apt-get install {' '.join(lacking.values())}"
    )


def display_answers(display: str) -> bool:
    """Whether an X server is reached, asked through libxcb so that Qt never aborts over it."""
    xcb = ctypes.CDLL("libxcb.so.1")
    xcb.xcb_connect.restype = ctypes.c_void_p
    xcb.xcb_connect.argtypes = [ctypes.c_char_p, ctypes.c_void_p]
    xcb.xcb_connection_has_error.argtypes = [ctypes.c_void_p]
    xcb.xcb_disconnect.argtypes = [ctypes.c_void_p]
    connection = xcb.xcb_connect(display.encode(), None)
    fault = bool(xcb.xcb_connection_has_error(connection))
    xcb.xcb_disconnect(connection)
    return not fault
