// What every widget asks of the page: how much room there is, and to keep its keys.

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
