"""Watchers: each looks at one fact that gates wait for, and says how it stands."""
