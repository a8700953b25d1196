// Prices, folded at first: one line each, with an entry, and what the floor of the task has of it.

function priceRow(model, words) {
  const label = element("th", { scope: "row" });
  const name = element("span");
  const own = element("span", { class: "ck-own" }, words.own);
  label.append(name, " ", own);
  const entry = element("input", { type: "text", class: "ck-entry", spellcheck: "false",
    autocomplete: "off", inputmode: "decimal" });
  const unit = element("td", { class: "ck-soft" });
  const amount = element("td", { class: "ck-number" });
  const sum = element("td", { class: "ck-number" });
  const cell = element("td");
  const line = element("tr");
  cell.append(entry);
  line.append(label, cell, unit, amount, sum);
  let key = "";
  let typing = false; // what is half typed stays, whatever the kernel says meanwhile
  entry.addEventListener("input", () => { typing = true; });
  entry.addEventListener("focus", () => entry.select());
  entry.addEventListener("blur", () => { typing = false; });
  entry.addEventListener("change", () => {
    typing = false;
    model.send({ kind: "act", name: "price", key, text: entry.value });
  });
  function show(row) {
    key = row.key;
    line.dataset.key = key;
    name.textContent = row.label;
    own.hidden = !row.own;
    entry.setAttribute("aria-label", `${row.label}: ${words.price} ${words.each} ${row.unit}`);
    if (!typing) entry.value = row.price;
    unit.textContent = `${words.each} ${row.unit}`;
    amount.textContent = row.amount;
    sum.textContent = row.sum;
    line.classList.toggle("ck-unused", Boolean(model.get("total")) && !row.amount);
  }
  return { line, show };
}

function priceTable(model, words) {
  const table = element("table", { class: "ck-prices-list" });
  const head = element("tr");
  const names = [words.what, words.price, "", words.amount, words.sum];
  head.append(...names.map((name, k) => element(name ? "th" : "td",
    name ? { scope: "col", class: k > 2 ? "ck-number" : "" } : {}, name)));
  const top = element("thead");
  const body = element("tbody");
  const foot = element("tfoot");
  const total = element("td", { class: "ck-number" });
  const last = element("tr");
  last.append(element("th", { scope: "row", colspan: "4" }, words.total), total);
  top.append(head);
  foot.append(last);
  table.append(top, body, foot);
  const lines = [];
  function show() {
    const rows = model.get("rows");
    while (lines.length < rows.length) lines.push(priceRow(model, words));
    if (body.children.length !== rows.length) body.replaceChildren(...lines.map((l) => l.line));
    rows.forEach((row, k) => lines[k].show(row));
    total.textContent = model.get("total");
    table.classList.toggle("ck-no-bill", !model.get("total"));
  }
  return { table, show };
}

function render({ model, el }) {
  const { root, off } = readerRoot(model, el, "ck-prices");
  const words = model.get("words");
  const box = element("details");
  const head = element("summary", {}, words.title);
  const { table, show } = priceTable(model, words);
  const reset = element("button", { type: "button", class: "ck-button", "data-act": "reset" },
    words.reset);
  const frame = element("div", { class: "ck-prices-frame" });
  reset.addEventListener("click", () => model.send({ kind: "act", name: "reset" }));
  frame.append(table);
  box.append(head, element("p", { class: "ck-soft" }, `${words.note} ${words.ask}`), frame, reset);
  box.open = model.get("unfolded");
  box.addEventListener("toggle", () => {
    if (box.open === model.get("unfolded")) return;
    model.set("unfolded", box.open);
    model.save_changes();
  });
  root.append(box);
  const stop = follow(model, { "rows total refused": show });
  return () => { stop(); off(); };
}

export default { render };
