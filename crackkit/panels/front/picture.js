// The live picture: swaps the SVG string, and reports drags and keys on its handles.

function livePicture(model, box, send) {
  let grabbed = null;

  function paint() {
    const held = document.activeElement?.closest?.(".ck-handle");
    const path = box.contains(held) ? held.dataset.path : null;
    box.innerHTML = model.get("svg");
    if (path) handleOf(path)?.focus({ preventScroll: true });
    if (grabbed) handleOf(grabbed.path)?.classList.add("ck-grabbed");
  }

  function handleOf(path) {
    return box.querySelector(`.ck-handle[data-path="${path}"]`);
  }

  function facts(handle) {
    const get = (name) => Number(handle.getAttribute(name));
    return {
      path: handle.dataset.path, axis: handle.dataset.axis,
      perUnit: get("data-per-unit"), step: get("data-step"),
      value: get("aria-valuenow"), low: get("aria-valuemin"), high: get("aria-valuemax"),
    };
  }

  function within(fact, value) {
    return Math.min(Math.max(value, fact.low), fact.high);
  }

  box.addEventListener("pointerdown", (event) => {
    const handle = event.target.closest(".ck-handle");
    if (!handle || event.button) return;
    const svg = box.querySelector("svg");
    const scale = svg.viewBox.baseVal.width / svg.getBoundingClientRect().width;
    grabbed = { ...facts(handle), scale, x: event.clientX, y: event.clientY };
    // the SVG is swapped while it is dragged: the box keeps the pointer
    box.setPointerCapture(event.pointerId);
    handle.classList.add("ck-grabbed");
    handle.focus({ preventScroll: true });
    event.preventDefault();
  });

  box.addEventListener("pointermove", (event) => {
    if (!grabbed) return;
    const way = grabbed.axis === "x" ? event.clientX - grabbed.x : event.clientY - grabbed.y;
    const value = within(grabbed, grabbed.value + way * grabbed.scale * grabbed.perUnit);
    send.drag(grabbed.path, value);
  });

  function release() {
    if (grabbed) handleOf(grabbed.path)?.classList.remove("ck-grabbed");
    grabbed = null;
  }
  box.addEventListener("pointerup", release);
  box.addEventListener("pointercancel", release);

  box.addEventListener("keydown", (event) => {
    const handle = event.target.closest(".ck-handle");
    if (!handle) return;
    const fact = facts(handle);
    const ways = { ArrowLeft: -1, ArrowRight: 1, ArrowUp: -1, ArrowDown: 1,
      PageUp: -10, PageDown: 10 };
    let value = null;
    if (event.key in ways) value = fact.value + ways[event.key] * fact.step;
    if (event.key === "Home") value = fact.low;
    if (event.key === "End") value = fact.high;
    if (value === null) return;
    send.drag(fact.path, within(fact, value));
    event.preventDefault();
    event.stopPropagation();
  });

  model.on("change:svg", paint);
  paint();
  return () => model.off("change:svg", paint);
}
