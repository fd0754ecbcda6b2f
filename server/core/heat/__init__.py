"""A make's heat treatment: the hold's clock and its verdict."""
