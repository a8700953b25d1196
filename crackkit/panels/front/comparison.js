// Comparisons below a live panel: a row of choices, and for each variant a bar and numbers.

const VERDICT_SIGNS = { good: "✓", warn: "!", bad: "✗" };
const PAUSE = 250; // ms between two rounds while the panel above moves
const REST = 400; // ms without a change before a round that takes long
const AGAIN = 1000; // ms after which a round is tried again that was given up

function comparedTable(model, act) {
  const box = element("div", { class: "ck-compared-box" });

  function show() {
    const page = model.get("page");
    const held = box.contains(document.activeElement) ? document.activeElement.dataset.place : null;
    box.replaceChildren();
    box.hidden = !page.rows;
    if (!page.rows) return;
    const table = element("table", { class: "ck-compared", role: "table",
      "aria-label": page.head.name });
    table.append(head(page.head), body(page));
    box.append(table);
    if (held !== null) box.querySelector(`[data-place="${held}"]`)?.focus({ preventScroll: true });
  }

  // roles are written out: as cards on narrow pages, lines and cells would lose them
  function head({ name, bar, helps, told }) {
    const line = element("tr", { role: "row" });
    line.append(...[name, bar, helps, ...told].map((text) =>
      element("th", { scope: "col", role: "columnheader" }, text)));
    const top = element("thead", { role: "rowgroup" });
    top.append(line);
    return top;
  }

  function body(page) {
    const rows = element("tbody", { role: "rowgroup" });
    rows.append(...page.rows.map((row) => line(row, page.head)));
    return rows;
  }

  function line(row, heads) {
    const made = element("tr", { role: "row", "data-present": row.present });
    made.append(name(row));
    if (row.error) {
      made.append(element("td", { role: "cell", class: "ck-refused",
        colspan: heads.told.length + 2 }, row.error));
      return made;
    }
    const helps = row.present ? model.get("words").present : row.helps;
    made.append(bar(row), cell(helps, row.present ? "" : heads.helps),
      ...row.told.map((text, k) => cell(text, heads.told[k])));
    return made;
  }

  function cell(text, label) {
    return element("td", { role: "cell", "data-label": label }, text);
  }

  function name(row) {
    const made = element("th", { scope: "row", role: "rowheader" });
    if (row.place < 0) {
      made.append(element("span", { class: "ck-own" }, row.name));
      return made;
    }
    const button = element("button", { type: "button", class: "ck-button ck-variant",
      "data-place": row.place, "aria-pressed": row.present,
      title: model.get("words").take.replace("{name}", row.name) });
    button.append(element("span", { "aria-hidden": "true" }, row.present ? "●" : "○"),
      element("span", {}, row.name));
    button.disabled = Boolean(row.error);
    button.addEventListener("click", () => { if (!row.present) act("take", row.place); });
    made.append(button);
    return made;
  }

  function bar(row) {
    const made = element("td", { role: "cell", class: "ck-bar-cell" });
    const track = element("div", { class: "ck-track", "aria-hidden": "true" });
    const fill = element("div", { class: "ck-fill", "data-kind": row.kind });
    const mark = element("div", { class: "ck-limit" });
    fill.style.width = `${100 * row.share}%`;
    mark.style.left = `${100 * row.limit}%`;
    track.append(fill, mark);
    const told = element("div", { class: "ck-bar-text", "data-kind": row.kind });
    told.append(element("span", { class: "ck-bar-sign", "aria-hidden": "true" },
      VERDICT_SIGNS[row.kind]), ` ${[row.text, row.word].filter(Boolean).join(", ")}`);
    made.append(track, told);
    if (row.note) made.append(element("div", { class: "ck-note" }, row.note));
    return made;
  }

  return { box, show };
}

// The rows follow the panel only while somebody can see them. Where a round takes long, the kernel
// gives it up, and the page asks again once the panel has come to rest.
function following(model, root, act) {
  let seen = false, asked = false, timer = 0;
  let moved = 0, late = 0; // when the panel changed last, and when a round was given up
  const stale = () => Boolean(model.get("chosen")) && model.get("changed") !== model.get("shown");

  function ask() {
    timer = 0;
    if (asked || !seen || !stale()) return;
    asked = true;
    act("again", performance.now() - moved >= REST);
  }

  function notice() {
    root.dataset.stale = stale();
    if (asked || !seen || !stale()) return;
    const waits = late && performance.now() - late < AGAIN;
    if (timer && !waits) return;
    clearTimeout(timer);
    timer = setTimeout(ask, late ? REST : PAUSE);
  }

  function changed() { moved = performance.now(); notice(); }

  function answered(when) {
    asked = false;
    late = when;
    clearTimeout(timer);
    timer = 0;
    notice();
  }

  const watcher = new IntersectionObserver((found) => {
    seen = found[found.length - 1].isIntersecting;
    notice();
  });
  watcher.observe(root);
  const stop = [
    ["change:changed", changed],
    ["change:shown change:error", () => answered(0)],
    ["change:late", () => answered(performance.now())],
  ].map(([events, hear]) => {
    model.on(events, hear);
    return () => model.off(events, hear);
  });
  return () => {
    watcher.disconnect();
    clearTimeout(timer);
    stop.forEach((one) => one());
  };
}

function render({ model, el }) {
  const { root, off } = readerRoot(model, el, "ck-comparison");
  const words = model.get("words");
  const act = (name, value) => model.send({ name, value });
  const bar = element("div", { class: "ck-bar", role: "group", "aria-label": words.compare });
  const table = comparedTable(model, act);
  const back = element("button", { type: "button", class: "ck-button", "data-act": "put_back" },
    words.put_back);
  const hint = element("p", { class: "ck-note" }, words.hint);
  const foot = element("div", { class: "ck-note" });
  const spoken = element("p", { class: "ck-spoken", role: "status" });
  back.addEventListener("click", () => act("put_back"));
  root.append(bar, hint, table.box, foot, back, spoken);

  function choices() {
    const held = bar.contains(document.activeElement) ? document.activeElement.dataset.key : null;
    const chosen = model.get("chosen");
    bar.replaceChildren(element("b", { class: "ck-pick" }, words.compare),
      ...model.get("choices").map(([key, label]) => {
        const button = element("button", { type: "button", class: "ck-tab", "data-key": key,
          "aria-pressed": key === chosen }, label);
        button.addEventListener("click", () => act("choose", key));
        return button;
      }));
    if (held) bar.querySelector(`[data-key="${held}"]`)?.focus();
  }

  const stop = follow(model, {
    "choices chosen": choices,
    page() {
      table.show();
      const page = model.get("page");
      hint.hidden = !page.rows;
      foot.replaceChildren(...(page.foot ?? []).map((text) => element("p", {}, text)));
    },
    said() { spoken.textContent = model.get("said"); },
    can_put_back() { back.hidden = !model.get("can_put_back"); },
  });
  const quiet = following(model, root, act);
  return () => { quiet(); stop(); off(); };
}

export default { render };
