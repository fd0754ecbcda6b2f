"""Arithmetic that every wing may use: bounds, lines, roots, series, control charts."""
