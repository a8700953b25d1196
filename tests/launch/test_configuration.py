"""The server's configuration file, read as the server reads it."""

import nbformat
import pytest
from nbformat.sign import NotebookNotary
from traitlets.config import PyFileConfigLoader

from crackkit.launch.places import JUPYTER_CONFIG, LESSONS


@pytest.fixture
def configuration(tmp_path, monkeypatch):
    monkeypatch.setenv("CRACKKIT_HOME", str(tmp_path))
    return PyFileConfigLoader("jupyter_server_config.py", str(JUPYTER_CONFIG)).load_config()


def saved(configuration, notebook, path="lessons/02_simple_beam.ipynb"):
    model = {"type": "notebook", "content": notebook}
    configuration.FileContentsManager.pre_save_hook(model, path=path, contents_manager=None)
    return notebook


def notebook_with_results(**metadata):
    output = nbformat.v4.new_output("stream", text="42")
    cell = nbformat.v4.new_code_cell("print(42)", outputs=[output], execution_count=3)
    return nbformat.v4.new_notebook(cells=[cell], metadata=metadata)


def test_a_lesson_is_saved_without_results(configuration):
    lesson = saved(configuration, notebook_with_results(crackkit={}, widgets={"state": {}}))
    assert (lesson.cells[0].outputs, lesson.cells[0].execution_count) == ([], None)
    assert "widgets" not in lesson.metadata


def test_a_copy_of_a_lesson_keeps_its_still_pictures_and_not_the_widgets(configuration):
    notebook = notebook_with_results(crackkit={"autostart": True})
    data = {"text/html": "<img>", "application/vnd.jupyter.widget-view+json": {"model_id": "1"}}
    notebook.cells[0].outputs = [nbformat.v4.new_output("display_data", data=data)]
    copy = saved(configuration, notebook, "lessons/my_beam.ipynb")
    assert list(copy.cells[0].outputs[0]["data"]) == ["text/html"]


def test_a_reader_s_own_notebook_keeps_its_results(configuration):
    notebook = saved(configuration, notebook_with_results())
    assert notebook.cells[0].outputs[0].text == "42"


def test_lessons_are_trusted_and_other_notebooks_are_not(configuration):
    with_our_signatures = configuration.NotebookNotary
    notary = NotebookNotary(
        db_file=with_our_signatures.db_file, secret_file=with_our_signatures.secret_file
    )
    lesson = nbformat.read(LESSONS / "00_start_here.ipynb", 4)
    assert notary.check_signature(lesson)
    assert not notary.check_signature(notebook_with_results(crackkit={}))
    notary.store.close()


def test_everything_of_ours_is_kept_in_our_own_home(configuration, tmp_path):
    for folder in (configuration.LabApp.user_settings_dir, configuration.LabApp.workspaces_dir):
        assert folder.startswith(str(tmp_path))
