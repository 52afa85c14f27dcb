"""One board in the words of each language, and what a note below it charges."""

from tests.intake.sheets import lines

SHEETS = {
    "en": [["Grade", "Caliper (pt)", "Price USD/short ton"], ["SBS", 18, 1200]],
    "de": [["Sorte", "Gewicht g/m²", "Preis EUR/t"], ["GC1", 250, 1200]],
    "fr": [["Qualité", "Grammage g/m²", "Prix EUR/t"], ["GC1", 250, 1200]],
    "es": [["Calidad", "Gramaje g/m²", "Precio EUR/t"], ["GC1", 250, 1200]],
    "sv": [["Kvalitet", "Ytvikt g/m²", "Pris EUR/t"], ["GC1", 250, 1200]],
}


def told(language, note):
    (line,) = lines([*SHEETS[language], [], [note]]).values()
    return [int(charge.price) for charge in line.offer.charges], line.offer.delivered
