// What all exercises show around their own part: title, task, errors, result, theme.

const SIGNS = { right: "✓", missed: "!", wrong: "✗" };

function exerciseFrame(model, el, kind) {
  const root = element("div", { class: `ck-panel ck-exercise ck-${kind}`, role: "group" });
  keepKeys(root);
  const title = element("p", { class: "ck-title", role: "heading", "aria-level": "3" });
  const task = element("p", { class: "ck-ask" });
  const error = element("div", { class: "ck-error", role: "alert" });
  const headline = element("p", { class: "ck-headline", role: "status" });
  const tally = element("p", { class: "ck-tally" });
  const off = [];

  function on(names, show) {
    const events = names.map((name) => `change:${name}`).join(" ");
    model.on(events, show);
    off.push(() => model.off(events, show));
    show();
  }

  on(["title"], () => {
    title.textContent = model.get("title");
    root.setAttribute("aria-label", model.get("title"));
  });
  on(["task"], () => { task.textContent = model.get("task"); });
  on(["error"], () => {
    error.textContent = model.get("error");
    error.hidden = !model.get("error");
  });
  on(["headline", "good"], () => {
    const text = model.get("headline");
    headline.textContent = text ? `${model.get("good") ? SIGNS.right : SIGNS.missed} ${text}` : "";
    headline.hidden = !text;
    headline.dataset.good = model.get("good");
  });
  on(["tally"], () => {
    tally.textContent = model.get("tally");
    tally.hidden = !model.get("tally");
  });
  on(["shown_theme"], () => { root.dataset.ckTheme = model.get("shown_theme"); });
  off.push(watchTheme((seen) => { model.set("seen", seen); model.save_changes(); }));
  off.push(lookAgain(model, root));
  el.append(root);
  return { root, title, task, error, headline, tally, on, off, close: () => off.forEach((f) => f()) };
}

function actButton(model, name, label, extra = () => ({})) {
  const button = element("button", { type: "button", class: "ck-button", "data-act": name }, label);
  button.addEventListener("click", () => model.send({ kind: "act", name, ...extra() }));
  return button;
}
