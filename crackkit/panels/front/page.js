// What every widget asks of the page: elements, colours, room, keys, and when it comes back.

function element(tag, attributes = {}, text = "") {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) made.setAttribute(name, value);
  if (text) made.textContent = text;
  return made;
}

function pageTheme() {
  return document.body.dataset.jpThemeLight === "false" ? "dark" : "light";
}

function watchTheme(report) {
  const watcher = new MutationObserver(() => report(pageTheme()));
  watcher.observe(document.body, { attributes: true, attributeFilter: ["data-jp-theme-light"] });
  report(pageTheme());
  return () => watcher.disconnect();
}

// JupyterLab gives the page of a hidden tab no room; a hidden tab of the browser says so itself.
function watchReturn(root, report) {
  const here = () => root.offsetWidth > 0;
  let away = false;
  const watcher = new ResizeObserver(() => {
    const back = away && here();
    away = !here();
    if (back) report();
  });
  const shown = () => { if (document.visibilityState === "visible" && here()) report(); };
  watcher.observe(root);
  document.addEventListener("visibilitychange", shown);
  return () => { watcher.disconnect(); document.removeEventListener("visibilitychange", shown); };
}

// Units and colours may have been chosen on another page meanwhile.
function lookAgain(model, root) {
  return watchReturn(root, () => {
    model.set("looks", model.get("looks") + 1);
    model.save_changes();
  });
}

function watchRoom(model, box) {
  let last = 0;
  const watcher = new ResizeObserver(() => {
    const room = Math.round(box.clientWidth / 20) * 20;
    if (!room || room === last) return;
    last = room;
    model.set("room", room);
    model.save_changes();
  });
  watcher.observe(box);
  return () => watcher.disconnect();
}

function keepKeys(root) {
  // the page's own shortcuts (arrows move between cells, Enter edits one) must not take our keys
  root.addEventListener("keydown", (event) => {
    if (!event.ctrlKey && !event.metaKey && !event.altKey) event.stopPropagation();
  });
}
