"""Structures: one file each, validated inputs in, an Outcome out."""
