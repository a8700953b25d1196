// Runs every cell of a notebook whose metadata say {"crackkit": {"autostart": true}} once its
// kernel answers. Written by hand in the form JupyterLab loads, so that no build step is needed.
(() => {
  const PATIENCE = 120000; // ms; a kernel that is not up by then has a trouble of its own
  const pause = ms => new Promise(done => setTimeout(done, ms));
  let shared = {};

  const library = async name => {
    const releases = Object.values(shared[name]);
    return (await releases[0].get())();
  };

  // Cells sent before the kernel is connected and idle are reported as run, but never are.
  const answers = session => {
    const kernel = session.isReady && session.session && session.session.kernel;
    return kernel && kernel.connectionStatus === 'connected' && kernel.status === 'idle';
  };

  const startLesson = async (panel, actions) => {
    await panel.context.ready;
    const wish = panel.model.getMetadata('crackkit');
    if (!wish || wish.autostart !== true) {
      return;
    }
    await panel.revealed;
    const end = Date.now() + PATIENCE;
    while (!answers(panel.sessionContext)) {
      if (panel.isDisposed || Date.now() > end) {
        return;
      }
      await pause(40);
    }
    // Not runAll, which would leave the reader at the last cell.
    await actions.runCells(panel.content, panel.content.widgets, panel.sessionContext);
    if (!panel.isDisposed) {
      panel.model.dirty = false; // results are never stored, so there is nothing to save
    }
  };

  const plugin = async () => {
    const { INotebookTracker, NotebookActions } = await library('@jupyterlab/notebook');
    return {
      id: 'crackkit-start:plugin',
      description: 'Runs a lesson by itself when it is opened.',
      autoStart: true,
      requires: [INotebookTracker],
      activate: (_, tracker) => {
        tracker.forEach(panel => void startLesson(panel, NotebookActions));
        tracker.widgetAdded.connect((_, panel) => void startLesson(panel, NotebookActions));
      }
    };
  };

  window._JUPYTERLAB = window._JUPYTERLAB || {};
  window._JUPYTERLAB['crackkit-start'] = {
    init: scope => {
      shared = scope;
    },
    get: async () => {
      const made = await plugin();
      return () => ({ __esModule: true, default: made });
    }
  };
})();
