"""Who may record, change or prove what."""
