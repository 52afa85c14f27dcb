from pathlib import Path

import pytest

from tracker.trade import resources


@pytest.mark.parametrize("installed", [True, False])
def test_an_installed_package_reads_its_own_files_whatever_lies_beside_it(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, installed: bool
) -> None:
    package = tmp_path / "tracker"
    (tmp_path / "resources").mkdir()
    package.mkdir()
    if installed:
        (package / "_resources").mkdir()
    monkeypatch.setattr(resources, "_PACKAGE", package)
    folder = resources._folder.__wrapped__("resources")
    assert folder == (package / "_resources" if installed else tmp_path / "resources")
