"""Starting the workbook: the environment, JupyterLab and its quiet configuration.

Standard library only: this room runs before anything is installed.
"""
