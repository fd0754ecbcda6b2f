"""Heating, cooling and heat treatment."""
