// What every widget asks of the page: elements, its colours, how much room there is, its keys.

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
