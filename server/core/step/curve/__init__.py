"""The course of a make over time, loaded only when someone looks at it."""
