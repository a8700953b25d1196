"""Pure mechanics and published rules: numbers in, numbers out (N, mm, MPa)."""
