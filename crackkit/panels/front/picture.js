// The live picture: follows the SVG string, reports drags, presses and keys on its handles, and
// shows the hint under the pointer.

function livePicture(model, box, send) {
  const hints = hintLine(box);
  box.replaceChildren(hints.line);
  const show = renewing(box, hints.line);
  let grabbed = null;
  box.tabIndex = -1;

  function paint() {
    const active = document.activeElement;
    const held = active?.closest?.(".ck-handle");
    const path = box.contains(held) ? held.dataset.path : null;
    const hinted = box.contains(active?.closest?.(".ck-hint"));
    show(model.get("svg"));
    const lost = !box.contains(active); // what had the focus was made anew
    hints.painted(hinted && lost);
    if (path && lost) handleOf(path)?.focus({ preventScroll: true });
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
      up: handle.dataset.upPath ? {
        path: handle.dataset.upPath,
        perUnit: get("data-up-per-unit"), step: get("data-up-step"),
        value: get("data-up-value"), low: get("data-up-low"), high: get("data-up-high"),
      } : null, // what it changes up and down, where it can be dragged all over a plan
    };
  }

  function within(fact, value) {
    return Math.min(Math.max(value, fact.low), fact.high);
  }

  function isSwitch(handle) {
    return handle?.dataset.axis === "toggle";
  }

  function press(handle) {
    const on = handle.getAttribute("aria-checked") !== "true";
    handle.setAttribute("aria-checked", on); // a second press need not wait for the answer
    send.set(handle.dataset.path, on);
  }

  box.addEventListener("pointerdown", (event) => {
    const handle = event.target.closest(".ck-handle");
    if (!handle || event.button || isSwitch(handle)) return;
    const svg = box.querySelector("svg");
    const scale = svg.viewBox.baseVal.width / svg.getBoundingClientRect().width;
    grabbed = { ...facts(handle), scale, x: event.clientX, y: event.clientY };
    // the handle is made anew while it is dragged: the box keeps the pointer
    box.setPointerCapture(event.pointerId);
    handle.classList.add("ck-grabbed");
    // and the focus until it is let go: to give it to each new handle would cost a layout each time
    box.focus({ preventScroll: true });
    event.preventDefault();
  });

  box.addEventListener("pointermove", (event) => {
    if (!grabbed) return;
    const [across, down] = [event.clientX - grabbed.x, event.clientY - grabbed.y];
    const moved = [dragged(grabbed, grabbed.axis === "x" ? across : down)];
    if (grabbed.up) moved.push(dragged(grabbed.up, down));
    send.dragBoth(moved);
  });

  function dragged(fact, way) {
    return [fact.path, within(fact, fact.value + way * grabbed.scale * fact.perUnit)];
  }

  function release() {
    if (!grabbed) return;
    const handle = handleOf(grabbed.path);
    grabbed = null;
    handle?.classList.remove("ck-grabbed");
    handle?.focus({ preventScroll: true });
  }
  box.addEventListener("pointerup", release);
  box.addEventListener("pointercancel", release);

  box.addEventListener("click", (event) => {
    const handle = event.target.closest(".ck-handle");
    if (isSwitch(handle)) press(handle);
  });

  box.addEventListener("keydown", (event) => {
    const handle = event.target.closest(".ck-handle");
    if (!handle) return;
    const done = isSwitch(handle) ? switchKey(handle, event) : dragKey(facts(handle), event);
    if (!done) return;
    event.preventDefault();
    event.stopPropagation();
  });

  function switchKey(handle, event) {
    if (event.key !== "Enter" && event.key !== " ") return false;
    if (!event.repeat) press(handle);
    return true;
  }

  function dragKey(both, event) {
    const fact = both.up && /^(ArrowUp|ArrowDown|Page)/.test(event.key) ? both.up : both;
    const ways = { ArrowLeft: -1, ArrowRight: 1, ArrowUp: -1, ArrowDown: 1,
      PageUp: -10, PageDown: 10 };
    let value = null;
    if (event.key in ways) value = fact.value + ways[event.key] * fact.step;
    if (event.key === "Home") value = fact.low;
    if (event.key === "End") value = fact.high;
    if (value !== null) send.drag(fact.path, within(fact, value));
    return value !== null;
  }

  model.on("change:svg", paint);
  paint();
  return () => model.off("change:svg", paint);
}

// A note just above the hint under the pointer or the keyboard, with its words. One hint can be
// reached by Tab, its neighbours by the arrows.
function hintLine(box) {
  const line = element("p", { class: "ck-hint-line", "aria-hidden": "true" });
  line.hidden = true;
  let place = 0; // the hint that Tab reaches
  let told = null; // the hint whose words stand in the line

  const all = () => [...box.querySelectorAll(".ck-hint")];

  function tell(index, hint) {
    told = hint ? index : null;
    line.textContent = hint ? hint.dataset.hint : "";
    line.hidden = !hint;
    if (hint) stand(hint);
  }

  // within the picture, above the hint, and never past its sides
  function stand(hint) {
    const [frame, at] = [box.getBoundingClientRect(), hint.getBoundingClientRect()];
    const half = line.offsetWidth / 2;
    const middle = at.left - frame.left + at.width / 2;
    line.style.left = `${Math.min(Math.max(middle, half), frame.width - half) - half}px`;
    line.style.top = `${at.top - frame.top - line.offsetHeight - 4}px`;
  }

  function offer(hints) {
    place = Math.min(place, Math.max(hints.length - 1, 0));
    hints.forEach((hint, k) => {
      hint.setAttribute("tabindex", k === place ? "0" : "-1");
      if (k !== place && hint.hasAttribute("role")) {
        hint.removeAttribute("role");
        hint.removeAttribute("aria-label");
      }
    });
    hints[place]?.setAttribute("role", "img");
    hints[place]?.setAttribute("aria-label", hints[place].dataset.hint);
  }

  function point(event) {
    const hint = event.target.closest?.(".ck-hint");
    tell(hint ? all().indexOf(hint) : null, hint);
  }
  box.addEventListener("pointerover", point);
  box.addEventListener("pointerdown", point);
  box.addEventListener("pointerleave", () => tell(null, null));
  box.addEventListener("focusin", point);

  box.addEventListener("keydown", (event) => {
    const hint = event.target.closest(".ck-hint");
    const way = { ArrowLeft: -1, ArrowRight: 1 }[event.key];
    if (!hint || !way) return;
    const hints = all();
    place = Math.min(Math.max(hints.indexOf(hint) + way, 0), hints.length - 1);
    offer(hints);
    hints[place].focus({ preventScroll: true });
    event.preventDefault();
    event.stopPropagation();
  });

  function painted(focused) {
    const hints = all();
    offer(hints);
    if (focused) hints[place]?.focus({ preventScroll: true });
    else if (told !== null) tell(told, hints[told]);
  }

  return { line, painted };
}
