"""The hold: its rule, readings, rounds, clock, chart and verdict."""
