"""The window's own look: colours, marks, glyphs, fonts, figures. Everything drawn is drawn from here."""
