"""A vendor's file becomes offers and questions: file, grid, tables, columns, values, offers."""
