// Rows of cells along both faces of the drawing: painted with mouse, finger or keyboard.

const SVG = "http://www.w3.org/2000/svg";
let stripCount = 0;

function drawn(tag, attributes = {}) {
  const made = document.createElementNS(SVG, tag);
  for (const [name, value] of Object.entries(attributes)) made.setAttribute(name, value);
  return made;
}

function cellStrips(model, box, words) {
  const faces = ["top", "bottom"];
  const cursor = { top: 0, bottom: 0 };
  let stroke = null; // { face, on, last } while a pointer paints
  let rows = {};
  const marks = () => model.get("ask") === "cracks";

  const painted = (face) => new Set(model.get("painted")[face] ?? []);

  function paint(face, cells, on) {
    const chosen = painted(face);
    for (const k of cells) if (on) chosen.add(k); else chosen.delete(k);
    model.set("painted", { ...model.get("painted"), [face]: [...chosen].sort((a, b) => a - b) });
    refresh();
  }

  function build() {
    const svg = box.querySelector("svg");
    const place = model.get("strips");
    const held = box.contains(document.activeElement)
      ? document.activeElement.dataset.face : null;
    rows = {};
    if (!svg || place.left === undefined) return;
    const width = (place.right - place.left) / model.get("cells");
    for (const face of faces) rows[face] = row(face, place, width);
    svg.append(...faces.map((face) => rows[face].group));
    refresh();
    if (held) rows[held].group.focus({ preventScroll: true });
  }

  function row(face, place, width) {
    const id = `ck-strip-${++stripCount}`;
    const group = drawn("g", { class: "ck-strip", tabindex: "0", role: "listbox",
      "aria-multiselectable": "true", "aria-orientation": "horizontal",
      "aria-label": words[face], "data-face": face });
    const cells = Array.from({ length: model.get("cells") }, (_nothing, k) => {
      const x = place.left + k * width;
      const cell = drawn("g", { class: "ck-cell", role: "option", id: `${id}-${k}`,
        "data-k": k });
      const rect = drawn("rect", { x, y: place[face], width, height: place.height });
      const sign = drawn("text", { x: x + width / 2, y: place[face] + place.height / 2 + 5,
        "text-anchor": "middle", class: "ck-sign" });
      const dot = drawn("circle", { cx: x + width / 2, cy: place[face] + place.height / 2,
        r: Math.min(11, width / 2 - 2), class: "ck-dot" });
      cell.append(rect, mark(face, x + width / 2, place, width), dot, sign);
      return { cell, sign };
    });
    const frame = drawn("rect", { class: "ck-cursor", y: place[face] + 1.5, width: width - 3,
      height: place.height - 3 });
    group.append(...cells.map((one) => one.cell), frame);
    group.addEventListener("keydown", (event) => key(event, face));
    group.addEventListener("focus", () => group.classList.add("ck-focused"));
    group.addEventListener("blur", () => group.classList.remove("ck-focused"));
    return { group, cells, frame, id, left: place.left, width };
  }

  function mark(face, x, place, width) {
    // a crack as it would be drawn by hand: open at the face, leaning nowhere yet
    const mouth = face === "top" ? place.top : place.bottom + place.height;
    const tip = face === "top" ? mouth + place.height - 4 : mouth - place.height + 4;
    const half = Math.min(width / 4, 5);
    return drawn("path", { class: "ck-mark",
      d: `M${x - half} ${mouth}L${x} ${tip}L${x + half} ${mouth}Z` });
  }

  function refresh() {
    const called = model.get("called");
    for (const face of faces) {
      const one = rows[face];
      if (!one) continue;
      const chosen = painted(face);
      const kinds = model.get("kinds")[face] ?? [];
      one.cells.forEach(({ cell, sign }, k) => {
        const kind = called ? kinds[k] || "" : "";
        cell.dataset.painted = chosen.has(k);
        cell.dataset.kind = kind;
        cell.classList.toggle("ck-marks", marks());
        cell.setAttribute("aria-selected", chosen.has(k));
        const verdict = kind ? `, ${words[`kind_${kind}`]}` : "";
        cell.setAttribute("aria-label", model.get("cell_names")[k] + verdict);
        sign.textContent = kind ? SIGNS[kind] : "";
      });
      one.group.setAttribute("aria-disabled", called);
      point(face);
    }
  }

  function point(face) {
    const one = rows[face];
    one.frame.setAttribute("x", one.left + cursor[face] * one.width + 1.5);
    one.group.setAttribute("aria-activedescendant", `${one.id}-${cursor[face]}`);
  }

  function key(event, face) {
    const last = model.get("cells") - 1;
    const before = cursor[face];
    const to = { ArrowLeft: before - 1, ArrowRight: before + 1, Home: 0, End: last }[event.key];
    const called = model.get("called");
    if (to !== undefined) {
      cursor[face] = Math.min(Math.max(to, 0), last);
      if (event.shiftKey && !called && !marks()) {
        paint(face, between(before, cursor[face]), true);
        model.save_changes();
      }
      point(face);
    } else if (event.key === "ArrowUp" || event.key === "ArrowDown") {
      rows[event.key === "ArrowUp" ? "top" : "bottom"].group.focus({ preventScroll: true });
    } else if ((event.key === " " || event.key === "Enter") && !called) {
      paint(face, [before], !painted(face).has(before));
      model.save_changes();
    } else {
      return;
    }
    event.preventDefault();
  }

  function between(a, b) {
    const low = Math.min(a, b);
    return Array.from({ length: Math.abs(a - b) + 1 }, (_nothing, k) => low + k);
  }

  function cellAt(event, face) {
    // the stroke goes on over the other face or beside the drawing: only the way along counts
    const svg = box.querySelector("svg");
    const seen = svg.getBoundingClientRect();
    const x = ((event.clientX - seen.left) / seen.width) * svg.viewBox.baseVal.width;
    const k = Math.floor((x - rows[face].left) / rows[face].width);
    return Math.min(Math.max(k, 0), model.get("cells") - 1);
  }

  box.addEventListener("pointerdown", (event) => {
    const face = event.target.closest(".ck-strip")?.dataset.face;
    if (!face || event.button || model.get("called")) return;
    const k = cellAt(event, face);
    stroke = { face, on: !painted(face).has(k), last: k };
    box.setPointerCapture(event.pointerId);
    rows[face].group.focus({ preventScroll: true });
    cursor[face] = k;
    paint(face, [k], stroke.on);
    event.preventDefault();
  });
  box.addEventListener("pointermove", (event) => {
    if (!stroke || marks()) return;
    const k = cellAt(event, stroke.face);
    if (k === stroke.last) return;
    cursor[stroke.face] = k;
    paint(stroke.face, between(stroke.last, k), stroke.on);
    stroke.last = k;
  });
  const lift = () => {
    if (stroke) model.save_changes();
    stroke = null;
  };
  box.addEventListener("pointerup", lift);
  box.addEventListener("pointercancel", lift);

  return { build, refresh, clear: () => {
    for (const face of faces) paint(face, between(0, model.get("cells") - 1), false);
    model.save_changes();
  } };
}
