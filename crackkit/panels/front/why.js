// A derivation, folded at first. JupyterLab's own typesetter sets the mathematics.

function typeset(model, box, latex, plain) {
  const setter = model.widget_manager?.rendermime?.latexTypesetter;
  box.textContent = setter ? `$$${latex}$$` : plain;
  if (setter) setter.typeset(box);
}

function letter(name) {
  const [base, index] = name.split("_");
  const made = element("var", {}, base);
  if (index) made.append(element("sub", {}, index));
  return made;
}

// A sentence with its letters, such as A_s, set as letters.
function sentence(text) {
  const made = element("p");
  const parts = text.split(/(\b[A-Za-z]_[A-Za-z0-9]+\b)/);
  made.append(...parts.map((part, k) => (k % 2 ? letter(part) : part)));
  return made;
}

function lettersOf(model, box) {
  box.replaceChildren(...model.get("letters").map(([name, meaning, value]) => {
    const row = element("li");
    row.append(letter(name), value ? ` = ${value}` : "", element("span", { class: "ck-soft" },
      ` ${meaning}`));
    return row;
  }));
}

function stepList(model, list) {
  const lines = new Map(); // one box for each line of mathematics, typeset once

  function row(step) {
    const item = element("li");
    const told = sentence(step.sentence);
    if (step.source) told.append(element("span", { class: "ck-soft" }, ` (${step.source})`));
    if (!lines.has(step.latex)) {
      const box = element("div", { class: "ck-math" });
      lines.set(step.latex, box);
      typeset(model, box, step.latex, step.plain);
    }
    item.append(told, lines.get(step.latex));
    if (step.result) item.append(result(step));
    return item;
  }

  function result(step) {
    const box = element("div", { class: "ck-result" });
    box.append(element("b", {}, `= ${step.result}`), " ", element("span", {}, step.shown));
    if (step.numbers) {
      box.append(element("div", { class: "ck-soft ck-put-in" },
        `${model.get("words").put_in} ${step.numbers}`));
    }
    return box;
  }

  return () => list.replaceChildren(...model.get("steps").map(row));
}

function render({ model, el }) {
  const { root, off } = readerRoot(model, el, "ck-why");
  const words = model.get("words");
  const box = element("details");
  const head = element("summary", {}, `${words.why} `);
  head.append(element("b", {}, model.get("title")));
  const letters = element("ul", { class: "ck-letters", "aria-label": words.letters });
  const note = element("p", { class: "ck-note", role: "status" });
  const list = element("ol", { class: "ck-steps" });
  const caption = element("p", { class: "ck-soft" });
  box.append(head, caption, letters, note, list);
  box.open = model.get("unfolded");
  box.addEventListener("toggle", () => {
    if (box.open === model.get("unfolded")) return;
    model.set("unfolded", box.open);
    model.save_changes();
  });
  root.append(box);
  const stop = follow(model, {
    letters() {
      const numbered = model.get("letters").some(([, , value]) => value);
      caption.textContent = numbered ? words.numbers : words.letters;
      lettersOf(model, letters);
    },
    steps: stepList(model, list),
    note() { note.textContent = model.get("note"); note.hidden = !model.get("note"); },
  });
  return () => { stop(); off(); };
}

export default { render };
