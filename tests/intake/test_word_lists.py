"""The trade's words as files hold them: a list may name another, whose words are its own as well."""

import pytest

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
