// The start page: lessons as links, choices, and a button that asks once more before it clears.

function lessonPath(model, file) {
  // beside the notebook that shows this page, from the top of what the server serves
  const own = model.widget_manager?.context?.path;
  if (own === undefined) return null;
  const folder = own.slice(own.indexOf(":") + 1).split("/").filter(Boolean).slice(0, -1);
  return [...folder, file];
}

// A lesson opens in the same calm page by JupyterLab's own command, which loads nothing anew;
// the address serves for a new tab, and where there is no JupyterLab.
function lessonLink(model, one) {
  const link = element("a", { href: one.file, class: "ck-open" }, one.title);
  const path = lessonPath(model, one.file);
  const settings = document.getElementById("jupyter-config-data");
  if (!path || !settings) return link;
  const base = JSON.parse(settings.textContent).baseUrl || "/";
  link.href = `${base}doc/tree/${path.map(encodeURIComponent).join("/")}`;
  link.dataset.commandlinkerCommand = "docmanager:open";
  link.dataset.commandlinkerArgs = JSON.stringify({ path: path.join("/") });
  link.addEventListener("click", (event) => {
    if (event.ctrlKey || event.metaKey || event.shiftKey) event.stopPropagation();
  });
  return link;
}

function lessonList(model, list) {
  function row(one) {
    const item = element("li", { class: "ck-lesson", "data-state": one.state });
    const sign = element("span", { class: "ck-sign", "aria-hidden": "true" },
      one.state === "done" ? "✓" : "");
    const link = lessonLink(model, one);
    const head = element("div", { class: "ck-lesson-head" });
    head.append(link, element("span", { class: "ck-soft" }, one.time));
    const text = element("div");
    text.append(head, element("div", {}, one.promise),
      element("div", { class: "ck-soft ck-told" }, one.told));
    item.append(sign, text);
    return item;
  }
  return () => {
    const held = list.contains(document.activeElement) ? document.activeElement.href : null;
    list.replaceChildren(...model.get("lessons").map(row));
    if (held) [...list.querySelectorAll("a")].find((link) => link.href === held)?.focus();
  };
}

let choiceCount = 0;

function choiceOf(model, name, label, options) {
  const box = element("fieldset", { class: "ck-choices" });
  const group = `ck-choice-${++choiceCount}`;
  box.append(element("legend", {}, label));
  for (const [value, text] of options) {
    const one = element("label", { class: "ck-option" });
    const dot = element("input", { type: "radio", name: group, value, "data-act": name });
    dot.addEventListener("change", () => model.send({ kind: "act", name, value }));
    one.append(dot, ` ${text}`);
    box.append(one);
  }
  return { box, show() {
    for (const dot of box.querySelectorAll("input")) dot.checked = dot.value === model.get(name);
  } };
}

function afresh(model, words) {
  const box = element("div", { class: "ck-afresh" });
  const ask = element("button", { type: "button", class: "ck-button", "data-act": "ask" },
    words.afresh);
  const sure = element("div", { class: "ck-sure", role: "alertdialog", "aria-label": words.sure });
  const text = element("p");
  const yes = element("button", { type: "button", class: "ck-button", "data-act": "afresh" },
    words.yes);
  const no = element("button", { type: "button", class: "ck-button", "data-act": "keep" }, words.no);
  const line = element("div", { class: "ck-buttons" });
  line.append(no, yes);
  sure.append(element("b", {}, words.sure), text, line);
  sure.hidden = true;
  box.append(ask, sure);

  function turn(asked) {
    sure.hidden = !asked;
    ask.hidden = asked;
    (asked ? no : ask).focus();
  }
  ask.addEventListener("click", () => turn(true));
  no.addEventListener("click", () => turn(false));
  yes.addEventListener("click", () => {
    model.send({ kind: "act", name: "afresh" });
    turn(false);
  });
  sure.addEventListener("keydown", (event) => { if (event.key === "Escape") turn(false); });
  return { box, show: () => { text.textContent = model.get("kept"); } };
}

function render({ model, el }) {
  const { root, off } = readerRoot(model, el, "ck-start");
  const words = model.get("words");
  const notices = element("ul", { class: "ck-notices", role: "status" });
  const list = element("ol", { class: "ck-lessons", "aria-label": words.lessons });
  const units = choiceOf(model, "units", words.units, words.systems);
  const theme = choiceOf(model, "theme", words.theme, words.themes);
  const clear = afresh(model, words);
  const message = element("p", { class: "ck-note", role: "status" });
  const care = element("p", { class: "ck-care" });
  care.append(element("b", {}, `${words.care}. `), model.get("caution"));
  const choices = element("div", { class: "ck-start-choices" });
  choices.append(units.box, theme.box);
  root.append(notices, list, choices, clear.box, message, care);
  const stops = [
    follow(model, {
      lessons: lessonList(model, list),
      units: units.show,
      theme: theme.show,
      kept: clear.show,
      message() {
        message.textContent = model.get("message");
        message.hidden = !model.get("message");
      },
      notices() {
        notices.replaceChildren(...model.get("notices").map((text) => element("li", {}, text)));
        notices.hidden = !model.get("notices").length;
      },
    }),
    // answers given meanwhile, in another tab or in a lesson that hid this page
    watchReturn(root, () => model.send({ kind: "act", name: "look" })),
    off,
  ];
  return () => stops.forEach((stop) => stop());
}

export default { render };
