// A group of big buttons of which one is taken: arrows move among them, Space or Enter takes.

function radioGroup(box, label, take) {
  box.setAttribute("role", "radiogroup");
  box.setAttribute("aria-label", label);

  const buttons = () => [...box.querySelectorAll('[role="radio"]')];

  function fill(texts) {
    box.replaceChildren(...texts.map((text, k) => {
      const button = element("button", { type: "button", role: "radio", class: "ck-option",
        "aria-checked": "false", "data-choice": k });
      button.append(element("span", { class: "ck-option-sign", "aria-hidden": "true" }, "○"),
        element("span", { class: "ck-option-text" }, text));
      button.addEventListener("click", () => {
        if (button.getAttribute("aria-disabled") !== "true") take(k);
      });
      return button;
    }));
    stop(0);
  }

  function stop(k) {
    // one stop of the Tab key for the whole group
    buttons().forEach((button, i) => { button.tabIndex = i === k ? 0 : -1; });
  }

  box.addEventListener("keydown", (event) => {
    const way = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
    if (!way) return;
    const all = buttons();
    const k = (all.indexOf(document.activeElement) + way + all.length) % all.length;
    stop(k);
    all[k].focus();
    event.preventDefault();
  });

  function show(chosen, disabled) {
    buttons().forEach((button, k) => {
      button.setAttribute("aria-checked", k === chosen);
      button.setAttribute("aria-disabled", disabled);
      button.querySelector(".ck-option-sign").textContent = k === chosen ? "●" : "○";
    });
    if (chosen >= 0) stop(chosen);
  }

  return { fill, show, buttons };
}
