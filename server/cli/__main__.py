"""Let `python -m server.cli` do what the command `vatside` does."""

from server.cli import main

raise SystemExit(main())
