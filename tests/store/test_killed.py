"""An import that is killed at any moment leaves all of a file or none of it."""

import random
import subprocess
import sys
import time
from pathlib import Path

from sqlalchemy import func, select

from tracker.store import keeping
from tracker.store.opening import open_database
from tracker.store.tables import change_log, charge, offer, price_file

LINES = 1500
ROUNDS = 6
CHILD = Path(__file__).with_name("importing_child.py")
ROOT = Path(__file__).resolve().parents[2]


def import_and_kill(where: str, round_number: int, after: float) -> None:
    command = [sys.executable, str(CHILD), where, str(round_number), str(LINES)]
    child = subprocess.Popen(command, stdout=subprocess.PIPE, cwd=ROOT, text=True, env=_environment())
    assert child.stdout is not None
    assert child.stdout.readline() == "ready\n"
    time.sleep(after)
    child.kill()
    child.wait()
    child.stdout.close()


def _environment() -> dict[str, str]:
    import os

    return {**os.environ, "PYTHONPATH": str(ROOT)}


def test_killed_at_any_moment_all_or_nothing(where: str) -> None:
    moments = random.Random(20261125)
    for round_number in range(ROUNDS):
        import_and_kill(where, round_number, moments.uniform(0, 0.35))
    assert keeping.faults(where) == ()
    database = open_database(where)
    with database.reading() as connection:
        stored = connection.execute(select(func.count()).select_from(price_file)).scalar_one()
        per_file = select(func.count()).select_from(offer).group_by(offer.c.price_file_id)
        assert set(connection.execute(per_file).scalars()) <= {LINES}
        assert connection.execute(select(func.count()).select_from(offer)).scalar() == stored * LINES
        assert connection.execute(select(func.count()).select_from(charge)).scalar() == stored * LINES * 2
        imports = change_log.c.table_name == price_file.name
        assert connection.execute(select(func.count()).select_from(change_log).where(imports)).scalar() == stored
    database.close()
