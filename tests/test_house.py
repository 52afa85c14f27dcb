"""The house itself: what stands at the top level, and that the commands people are given are the ones that are run."""

import ast
import re
import subprocess
import tomllib
from pathlib import Path
from types import ModuleType

import pytest

import tests.intake
import tracker.desk
import tracker.intake.columns
import tracker.intake.offers
import tracker.intake.tables
import tracker.intake.values

ROOT = Path(__file__).resolve().parent.parent
AGREED = {"README.md", "DEVELOPERS.md", "pyproject.toml", "tracker", "resources", "tests", "sample_quotes"}


def readme_command(mark: str) -> str:
    found = re.search(
        rf"<!-- {mark} -->\n```sh\n(.+?)\n```", (ROOT / "README.md").read_text(encoding="utf-8"), re.DOTALL
    )
    assert found, f"README.md has no command marked '{mark}'"
    return found.group(1)


def test_nothing_but_the_agreed_entries_is_kept_at_the_top_level() -> None:
    listed = subprocess.run(["git", "ls-files"], cwd=ROOT, capture_output=True, text=True, check=False)
    if listed.returncode:
        pytest.skip("not a git checkout")
    top = {name.split("/")[0] for name in listed.stdout.splitlines()}
    assert {name for name in top if not name.startswith(".")} <= AGREED


def test_ci_runs_the_readme_command_and_not_a_copy_of_it() -> None:
    script = (ROOT / ".ci" / "run").read_text(encoding="utf-8")
    assert 'command_from_readme "passes the tests"' in script
    assert "pytest" not in script


def test_ci_finds_the_very_command_that_the_readme_gives() -> None:
    script = (ROOT / ".ci" / "run").read_text(encoding="utf-8")
    found = re.search(r"^command_from_readme\(\) \{.+?^\}", script, re.DOTALL | re.MULTILINE)
    assert found
    shell = f'{found.group(0)}\ncommand_from_readme "passes the tests"'
    printed = subprocess.run(["bash", "-c", shell], cwd=ROOT, capture_output=True, text=True, check=True).stdout
    assert printed.strip() == readme_command("passes the tests")


def test_every_dependency_is_pinned_and_no_host_is_named() -> None:
    pins = (ROOT / "resources" / "constraints.txt").read_text(encoding="utf-8")
    assert "://" not in pins
    pinned = {line.split("==")[0].lower().replace("_", "-") for line in pins.splitlines() if "==" in line}
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    extras = project["optional-dependencies"].values()
    wanted = [*project["dependencies"], *(requirement for extra in extras for requirement in extra)]
    names = {re.split(r"[\[<>=;~! ]", requirement)[0].lower().replace("_", "-") for requirement in wanted}
    assert names <= pinned


@pytest.mark.parametrize(
    "step",
    [
        tracker.intake.values,
        tracker.intake.offers,
        tracker.intake.columns,
        tracker.intake.tables,
    ],
)
def test_the_map_of_a_step_names_every_folder_and_none_that_is_gone(step: ModuleType) -> None:
    named = re.findall(r"(?m)^([a-z]+)  +\S", step.__doc__ or "")
    folder = ROOT.joinpath(*step.__name__.split("."))
    assert sorted(named) == sorted(path.parent.name for path in folder.glob("*/__init__.py"))


def test_the_map_of_the_readers_tests_names_every_folder_and_none_that_is_gone() -> None:
    steps, subjects = re.findall(r"(?m):\n((?:[a-z_]+(?: .*)?\n)+)", tests.intake.__doc__ or "")
    named = steps.split() + [line.split()[0] for line in subjects.splitlines()]
    folders = {path.parent.name for path in (ROOT / "tests" / "intake").glob("*/__init__.py")}
    assert sorted(named) == sorted(folders)


def test_the_desks_index_names_every_function_that_a_face_calls() -> None:
    index = set(re.findall(r"\w+", tracker.desk.__doc__ or ""))
    faces = [*(ROOT / "tracker" / "window").rglob("*.py"), *(ROOT / "tracker" / "commands").rglob("*.py")]
    taken = [
        (node.module.removeprefix("tracker.desk."), name.name)
        for face in faces
        for node in ast.walk(ast.parse(face.read_text(encoding="utf-8")))
        if isinstance(node, ast.ImportFrom) and (node.module or "").startswith("tracker.desk.")
        for name in node.names
    ]
    assert {module for module, _ in taken} <= index
    assert {name for _, name in taken if name[0].islower()} <= index
