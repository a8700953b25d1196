"""The derivations shown under "Why": worked out by SymPy, kept as text so that pages need none."""
