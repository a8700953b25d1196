// The guided walk above the picture: what to try, a button that sets it, what happened.

function walk(model, send) {
  const box = element("section", { class: "ck-walk" });

  function show() {
    const step = model.get("walk");
    box.hidden = !step.text;
    if (!step.text) return;
    const words = model.get("words");
    const head = element("p", { class: "ck-walk-head" }, step.head);
    const text = element("p", {}, step.text);
    const answer = element("p", { class: "ck-walk-answer", role: "status" }, step.answer);
    answer.hidden = !step.answer;
    const line = element("div", { class: "ck-buttons" });
    for (const [act, label, off] of [
      ["walk_back", words.walk_back, !step.back], ["walk_set", words.walk_set, false],
      ["walk_told", words.walk_told, !step.told], ["walk_next", words.walk_next, !step.next],
    ]) {
      const button = element("button", { type: "button", class: "ck-button", "data-act": act }, label);
      button.disabled = off;
      button.addEventListener("click", () => send.act(act));
      line.append(button);
    }
    const held = box.contains(document.activeElement) ? document.activeElement.dataset.act : null;
    box.replaceChildren(head, text, line, answer);
    if (held) box.querySelector(`[data-act="${held}"]`)?.focus();
  }

  model.on("change:walk", show);
  show();
  return { box, off: () => model.off("change:walk", show) };
}
