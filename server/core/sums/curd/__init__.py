"""Sums on the curd: washing, whey, press, wheels, yield."""
