// Controls from a list: tabs of sliders, choices and switches, each with its name.

let controlCount = 0;
const FOLD_FROM = 8; // rows of numbered parts in one topic
const TIMELINE = 200; // places of a slider that runs through the years
const PACE = 30, EVEN_PACE = 70; // ms at least between two of them, and two pictures of a film
const GLANCE = 6; // ms after which it is asked again whether the picture has come

function controls(model, box, send) {
  const rows = new Map(); // path -> { show(value, text), bound(low, high, step) }
  const unfolded = new Map(); // name of a part -> whether it is open
  let chosen = 0;

  function build() {
    rows.clear();
    const topics = model.get("topics");
    chosen = Math.min(chosen, topics.length - 1);
    const tabs = element("div", { class: "ck-tabs", role: "tablist" });
    const sheets = topics.map((topic, k) => sheet(topic, k, tabs));
    box.replaceChildren(tabs, ...sheets);
    choose(chosen);
    refresh();
  }

  function sheet(topic, k, tabs) {
    const id = `ck-sheet-${++controlCount}`;
    const tab = element("button", { type: "button", role: "tab", "aria-controls": id,
      class: "ck-tab" }, topic.label);
    tab.addEventListener("click", () => choose(k));
    tab.addEventListener("keydown", (event) => tabKey(event, k));
    tabs.append(tab);
    const made = element("div", { id, role: "tabpanel", "aria-label": topic.label,
      class: "ck-sheet" });
    made.append(...grouped(topic.rows));
    if (topic.buttons.length) made.append(countButtons(topic.buttons));
    return made;
  }

  // Many parts of a kind (spans, supports) fold away one by one; a few stand in one list.
  function grouped(specs) {
    const folds = specs.filter((spec) => spec.group).length > FOLD_FROM;
    const parts = new Map();
    return specs.flatMap((spec) => {
      if (!folds || !spec.group) return [row(spec)];
      const known = parts.get(spec.group);
      const part = known ?? fold(spec.group, parts.size === 0);
      parts.set(spec.group, part);
      part.append(row(spec, ""));
      return known ? [] : [part];
    });
  }

  function fold(name, first) {
    const part = element("details", { class: "ck-fold" });
    part.open = unfolded.get(name) ?? first;
    part.addEventListener("toggle", () => unfolded.set(name, part.open));
    part.append(element("summary", {}, name));
    return part;
  }

  function tabKey(event, k) {
    const count = box.querySelectorAll(".ck-tab").length;
    const way = { ArrowRight: 1, ArrowLeft: -1 }[event.key];
    if (!way) return;
    choose((k + way + count) % count);
    box.querySelectorAll(".ck-tab")[chosen].focus();
    event.preventDefault();
  }

  function choose(k) {
    chosen = k;
    box.querySelectorAll(".ck-tab").forEach((tab, i) => {
      tab.setAttribute("aria-selected", i === k);
      tab.tabIndex = i === k ? 0 : -1;
    });
    box.querySelectorAll(".ck-sheet").forEach((one, i) => { one.hidden = i !== k; });
  }

  function countButtons(buttons) {
    const line = element("div", { class: "ck-row ck-buttons" });
    for (const [act, label] of buttons) {
      const button = element("button", { type: "button", class: "ck-button" }, label);
      button.addEventListener("click", () => send.act(act));
      line.append(button);
    }
    return line;
  }

  function row(spec, group = spec.group) {
    const id = `ck-control-${++controlCount}`;
    const line = element("div", { class: `ck-row ck-is-${spec.kind}`, "data-path": spec.path });
    const label = element("label", { for: id, title: spec.help, class: "ck-label" },
      group ? `${group}: ${spec.label}` : spec.label);
    line.append(label, ...{ slider, choice, switch: toggle }[spec.kind](spec, id));
    return line;
  }

  function slider(spec, id) {
    return spec.runs ? timeline(spec, id) : plainSlider(spec, id);
  }

  // Ages run from days to years: equal ways on the slider are equal ratios. Pictures of a film are
  // even. Both can run by themselves.
  function timeline(spec, id) {
    const [range, entry] = plainSlider(spec, id);
    const { show } = rows.get(spec.path);
    const ends = { low: 1, high: 2 }, pace = spec.even ? EVEN_PACE : PACE;
    let ticking = 0, places = TIMELINE, last = 0;
    range.min = 0; range.max = places; range.step = 1;
    const valueAt = (place) => spec.even ? ends.low + place
      : Math.round(ends.low * (ends.high / ends.low) ** (place / places));
    const placeOf = (value) => spec.even ? value - ends.low
      : Math.round((places * Math.log(value / ends.low)) / Math.log(ends.high / ends.low));
    const go = (place) => { range.value = place; send.set(spec.path, valueAt(place)); };
    range.oninput = () => { halt(); go(Number(range.value)); };
    // A day that did not come from this slider (typed, a button, the walk) stops it and moves it.
    rows.set(spec.path, {
      bound([low, high]) {
        ends.low = low; ends.high = high;
        if (spec.even) range.max = places = high - low;
      },
      show([value, text]) {
        const here = Number(range.value);
        const own = send.waiting(spec.path) || valueAt(here) === Math.round(value);
        if (!own) halt();
        show([own ? here : placeOf(value), text]);
      },
    });
    const button = element("button", { type: "button", class: "ck-button ck-run" }, spec.runs[0]);
    entry.addEventListener("focus", halt);
    // Other buttons may set the day: what they say must not be run over by the next tick.
    function pressed({ target }) {
      const other = target.closest("button");
      if (other && other !== button) halt();
    }
    function halt() {
      clearInterval(ticking);
      ticking = 0;
      model.off("change:done", step);
      button.textContent = spec.runs[0];
    }
    function step() {
      if (!button.isConnected) { halt(); return; }
      if (send.waiting(spec.path)) return; // the picture has not come yet
      if (performance.now() - last < pace) return;
      last = performance.now();
      let place = Number(range.value) + 1;
      // in the first days several places are the same day
      while (place <= places && valueAt(place) === valueAt(place - 1)) place += 1;
      if (place > places) { halt(); return; }
      go(place);
    }
    button.addEventListener("click", () => {
      if (ticking) { halt(); return; }
      if (Number(range.value) >= places) go(0);
      button.textContent = spec.runs[1];
      ticking = setInterval(step, GLANCE);
      model.on("change:done", step); // the next is on its way while this one is painted
      button.closest(".ck-panel").addEventListener("click", pressed);
    });
    return [range, entry, button];
  }

  function plainSlider(spec, id) {
    const range = element("input", { type: "range", id, class: "ck-range" });
    const entry = element("input", { type: "text", class: "ck-entry", spellcheck: "false",
      autocomplete: "off",
      "aria-label": spec.group ? `${spec.group}: ${spec.label}` : spec.label });
    range.oninput = () => send.set(spec.path, Number(range.value));
    let typing = false; // what is half typed stays, whatever the kernel says meanwhile
    entry.addEventListener("input", () => { typing = true; });
    entry.addEventListener("change", () => { typing = false; send.text(spec.path, entry.value); });
    entry.addEventListener("blur", () => { typing = false; });
    entry.addEventListener("focus", () => entry.select());
    rows.set(spec.path, {
      bound([low, high, step]) {
        range.min = low; range.max = high; range.step = step;
      },
      show([value, text]) {
        if (!send.waiting(spec.path) && Number(range.value) !== value) range.value = value;
        if (entry.value === text) return;
        range.setAttribute("aria-valuetext", text);
        if (typing) return;
        entry.value = text;
        if (document.activeElement === entry) entry.select(); // what is typed next replaces it
      },
    });
    return [range, entry];
  }

  function choice(spec, id) {
    const list = element("select", { id, class: "ck-choice" });
    for (const [value, label] of spec.choices) list.append(element("option", { value }, label));
    list.addEventListener("change", () => send.set(spec.path, list.value));
    rows.set(spec.path, { bound() {}, show([value]) { list.value = value; } });
    return [list];
  }

  function toggle(spec, id) {
    const tick = element("input", { type: "checkbox", id, class: "ck-tick" });
    tick.addEventListener("change", () => send.set(spec.path, tick.checked));
    rows.set(spec.path, { bound() {}, show([value]) { tick.checked = value; } });
    return [tick];
  }

  // Only what changed is touched: a page that lays itself out anew at each step is slow.
  function refresh() {
    waiting = false;
    for (const [path, bounds] of Object.entries(model.get("bounds"))) {
      const row = rows.get(path);
      if (!row || row.bounds === String(bounds)) continue;
      row.bounds = String(bounds);
      row.bound(bounds);
    }
    for (const [path, value] of Object.entries(model.get("values"))) rows.get(path)?.show(value);
  }

  let waiting = false;
  function refreshSoon() {
    if (waiting) return;
    waiting = true;
    queueMicrotask(refresh); // values and bounds arrive together: one round serves both
  }

  model.on("change:topics", build);
  model.on("change:bounds change:values change:refused", refreshSoon);
  build();
  return () => {
    model.off("change:topics", build);
    model.off("change:bounds change:values change:refused", refreshSoon);
  };
}
