"""The trade's words as files hold them: a list may name another, whose words are its own as well."""

import tomllib

import pytest

from tracker.intake.words import lists
from tracker.trade.resources import resource


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


@pytest.mark.parametrize("path", sorted(resource("words").glob("*.toml")), ids=lambda path: path.stem)
def test_our_own_lists_are_written_plainly_and_read_as_toml_reads_them(path):
    content = path.read_text(encoding="utf-8")
    assert lists._plainly_written(content) == tomllib.loads(content)


@pytest.mark.parametrize(
    "content",
    [
        '# mine\n[one]\nany = ["a",\n  "b, c",\n]\n"2 weeks" = ["fortnight"]\n\n[two]\nnone = []\n',
        '[one]\ninch = ["in", "\\"", \'"\']\n',
        '[one]\nany = ["a"]  # why\n[two.three]\nany = ["b"]\nanother = """c"""',
    ],
)
def test_a_list_is_read_as_toml_reads_it_however_it_is_written(tmp_path, content):
    (tmp_path / "own.toml").write_text(content, encoding="utf-8")
    try:
        read = lists.read_words(tmp_path / "own.toml")
    except ValueError:
        read = None
    assert read in (None, tomllib.loads(content))
    assert lists._plainly_written(content) in (None, tomllib.loads(content))


@pytest.mark.parametrize(
    "content",
    [
        '[one]\nany = ["a" "b"]\n',
        '[one]\nany = ["a",, "b"]\n',
        '[one]\nany = ["a"]\nany = ["b"]\n',
        '[one]\nany = ["a"]\n[one]\nother = ["b"]\n',
        '[one]\nany = ["a\\q"]\n',
        '[one]\nany = ["a\x01"]\n',
    ],
)
def test_a_slip_of_the_pen_is_told(tmp_path, content):
    (tmp_path / "own.toml").write_text(content, encoding="utf-8")
    with pytest.raises(ValueError, match=r"The word list own.toml can't be read"):
        lists.read_words(tmp_path / "own.toml")
