"""The trade's words as files hold them: a list may name another, whose words are its own as well."""

import pytest

from tests.intake.sheets import lines
from tracker.intake.words import lists


@pytest.fixture
def read(tmp_path, monkeypatch):
    def of(content):
        (tmp_path / "own.toml").write_text(content, encoding="utf-8")
        monkeypatch.setattr(lists, "resource", lambda _name: tmp_path)
        return lists.word_lists.__wrapped__()

    return of


def test_a_list_holds_the_words_of_those_that_it_names(read):
    content = '[apart]\nany = ["but"]\nonly = ["bar"]\n[all]\nany = ["[apart]", "save"]\none = ["[apart.only]"]\n'
    assert read(content)["all"] == {"any": ("but", "bar", "save"), "one": ("bar",)}


@pytest.mark.parametrize("name", ["[others]", "[apart.none]"])
def test_a_list_that_no_file_holds_is_told(read, name):
    with pytest.raises(ValueError, match="which no file holds"):
        read(f'[apart]\nany = ["but"]\n[all]\nany = ["{name}"]\n')


@pytest.mark.parametrize(
    ("said", "delivered"),
    [
        ("Delivered, other than marked *", [True, None]),
        ("Delivered, excepting lines marked *", [True, None]),
        ("Delivered to all, marked *", [True, True]),
    ],
)
def test_what_excepts_lines_excepts_those_with_a_sign(said, delivered):
    head = ["Board", "g/m²", "µm", "EUR/t"]
    found = lines([[said], head, ["GC1", 250, 400, 1250], ["GC2 *", 280, 450, 1190]])
    assert [found[cell].offer.delivered for cell in ("D3", "D4")] == delivered
