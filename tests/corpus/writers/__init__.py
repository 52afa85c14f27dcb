"""A planned sheet into a file's bytes, one writer a format."""

from collections.abc import Callable

from tests.corpus.model import FilePlan
from tests.corpus.writers.comma import write_csv
from tests.corpus.writers.ods import write_ods
from tests.corpus.writers.openpyxl_book import write_xlsm, write_xlsx
from tests.corpus.writers.xls import write_xls
from tests.corpus.writers.xlsb import write_xlsb
from tests.corpus.writers.xlsxwriter_book import write_xlsx_shared

WRITERS: dict[str, tuple[str, Callable[[FilePlan], bytes]]] = {
    "xlsx": ("xlsx", write_xlsx),
    "xlsxw": ("xlsx", write_xlsx_shared),
    "xlsm": ("xlsm", write_xlsm),
    "xls": ("xls", write_xls),
    "xlsb": ("xlsb", write_xlsb),
    "ods": ("ods", write_ods),
    "csv": ("csv", write_csv),
}
