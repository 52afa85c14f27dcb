"""Every screen in its main states, as pictures: python -m tests.screens --out FOLDER."""
