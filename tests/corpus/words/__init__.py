"""What vendors call things, by language. The corpus' own words: the product's resources are not read here."""

from tests.corpus.words.english import EN
from tests.corpus.words.french import FR
from tests.corpus.words.german import DE
from tests.corpus.words.language import Language
from tests.corpus.words.spanish import ES
from tests.corpus.words.swedish import SV

LANGUAGES: dict[str, Language] = {"en": EN, "de": DE, "fr": FR, "es": ES, "sv": SV}
