"""Invented vendors: names and addresses of nobody."""

VENDORS: dict[str, tuple[tuple[str, str], ...]] = {
    "US": (
        ("Brackenfold Paperboard Co.", "2200 Sluicegate Road, Brackenfold, Ohio 43999"),
        ("Tolliver Bend Mills Inc.", "Tolliver Bend, Georgia"),
        ("Ashgrove Carton Stock LLC", "88 Kiln Street, Ashgrove Falls, Michigan"),
        ("Northquay Board & Paper Corp.", "Pier 14, Northquay, Maine"),
        ("Copperhill Converting Company", "1415 Foundry Ave, Copperhill, Wisconsin"),
        ("Larkspur Bend Board, Inc.", "PO Box 1180, Larkspur Bend, Virginia"),
        ("Ferncliff Board Trading", "61 Millpond Lane, Ferncliff, New York"),
    ),
    "CA": (
        ("Pineholt Board Ltd.", "310 Chemin du Rapide, Pineholt, Québec, Canada"),
        ("Maplecombe Paperboard Inc.", "77 Lakeshore Rd, Maplecombe, Ontario, Canada"),
    ),
    "AU": (("Wattlebrae Board Pty Ltd", "12 Quarry Road, Wattlebrae NSW, Australia"),),
    "GB": (
        ("Wexholme Board Merchants Ltd", "Unit 7, Tannery Yard, Wexholme, Lancashire"),
        ("Harrowdene Paperboard plc", "Mill Lane, Harrowdene, Kent"),
        ("Thistlecombe Cartonboard Limited", "Dock Road, Thistlecombe, Fife"),
        ("Quarrybeck Paper Merchants", "Quarrybeck, Yorkshire"),
    ),
    "DE": (
        ("Hollerbach Kartonwerk GmbH", "Mühlweg 12, 99999 Hollerbach"),
        ("Grünwieser Karton GmbH & Co. KG", "Am Wehr 3, 98765 Grünwies"),
        ("Sternau Kartonhandel AG", "Hafenstraße 21, Sternau"),
        ("Kartonhaus Lindmoor", "Torfstraße 9, Lindmoor"),
    ),
    "CH": (
        ("Rotbach Karton AG", "Industriestrasse 40, 9999 Rotbach"),
        ("Valdorne Carton SA", "Route du Moulin 8, 1999 Valdorne"),
    ),
    "FR": (
        ("Cartonnerie de Valserre SAS", "Zone industrielle du Moulin, Valserre"),
        ("Papeteries Montréval SA", "12 quai de l'Écluse, 99100 Montréval"),
        ("Cartons de Montferrin", "ZI Nord, Montferrin"),
    ),
    "ES": (
        ("Cartonajes Peñalbar S.L.", "Polígono El Molino 14, Peñalbar"),
        ("Papelera Riosoto S.A.", "Ctra. de la Presa km 4, Riosoto"),
        ("Cartones Altorío", "Camino del Río 3, Altorío"),
    ),
    "SE": (
        ("Älvrike Kartong AB", "Bruksgatan 2, 999 99 Älvrike"),
        ("Norrhamra Bruk AB", "Norrhamra"),
        ("Björkfors Board AB (publ)", "Fabriksvägen 1, Björkfors"),
    ),
}
