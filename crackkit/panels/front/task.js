// Make it hold: goals, budget, a button that checks the beam in the panel below, the list.

function render({ model, el }) {
  const words = model.get("words");
  const frame = exerciseFrame(model, el, "task");
  const goals = element("ul", { class: "ck-goals", "aria-label": words.goals });
  const budget = element("div", { class: "ck-budget" });
  const budgetText = element("p", { class: "ck-budget-text", "aria-live": "polite" });
  const gauge = element("div", { class: "ck-gauge", "aria-hidden": "true" });
  const fill = element("div", { class: "ck-gauge-fill" });
  const check = actButton(model, "check", words.check);
  check.classList.add("ck-main");
  const list = element("ul", { class: "ck-checks" });
  const stale = element("p", { class: "ck-note", role: "status" }, words.stale);
  const line = element("div", { class: "ck-buttons" });
  gauge.append(fill);
  budget.append(budgetText, gauge);
  line.append(check);
  frame.root.append(frame.title, frame.task, frame.error, goals, budget, line, frame.headline,
    stale, list, frame.tally);

  frame.on(["goals"], () => {
    goals.replaceChildren(...model.get("goals").map((goal) => element("li", {}, goal)));
  });
  frame.on(["budget"], () => {
    const { text, share, over } = model.get("budget");
    budgetText.textContent = over ? `${text}: ${over}` : text;
    fill.style.width = `${100 * share}%`;
    gauge.dataset.over = Boolean(over);
  });
  frame.on(["checks", "stale"], () => {
    const rows = model.get("checks");
    list.hidden = !rows.length;
    stale.hidden = !model.get("stale");
    frame.headline.classList.toggle("ck-stale", model.get("stale"));
    list.classList.toggle("ck-stale", model.get("stale"));
    list.replaceChildren(...rows.map(([ok, name, measured, wanted, text]) => {
      const kind = ok ? "right" : "wrong";
      const item = element("li", { class: "ck-remark", "data-kind": kind });
      const sign = element("span", { class: "ck-swatch", "data-kind": kind, "aria-hidden": "true" },
        SIGNS[kind]);
      const said = element("span", {});
      said.append(element("b", {}, `${name}: ${ok ? words.yes : words.no}. `),
        `${words.measured}: ${measured}; ${words.wanted}: ${wanted}. `, text);
      item.append(sign, said);
      return item;
    }));
  });
  return frame.close;
}

export default { render };
