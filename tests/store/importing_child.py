"""Run by test_killed: stores one file after another until it is killed."""

import sys

from tests.store.making import DAY, line, reading
from tracker.store import files
from tracker.store.changes import Pen
from tracker.store.opening import open_database


def main(where: str, round_number: int, count: int) -> None:
    lines = [line(f"D{row}") for row in range(1, count + 1)]
    database = open_database(where)
    print("ready", flush=True)
    for number in range(1000):
        content = f"{round_number}/{number}".encode()
        with database.writing() as connection:
            files.add(Pen(connection, "child", "import"), reading(*lines, content=content), content, DAY, {})


if __name__ == "__main__":
    main(sys.argv[1], int(sys.argv[2]), int(sys.argv[3]))
