// Check yourself: one question, big answers, and why.

function render({ model, el }) {
  const words = model.get("words");
  const frame = exerciseFrame(model, el, "quiz");
  const picture = element("div", { class: "ck-picture" });
  const hint = element("p", { class: "ck-note" }, model.get("hint"));
  const box = element("div", { class: "ck-options" });
  const line = element("div", { class: "ck-buttons" });
  const another = actButton(model, "another", words.another);
  another.classList.add("ck-main");
  let onward = false; // the button that asked for the next question hides before it comes
  another.addEventListener("click", () => { onward = true; });
  line.append(another);
  const options = radioGroup(box, words.options, (choice) =>
    model.send({ kind: "act", name: "answer", choice }));
  frame.root.append(frame.title, frame.task, frame.error, picture, hint, box, frame.headline,
    line, frame.tally);

  function showAnswer() {
    const told = model.get("told");
    const answered = model.get("chosen") >= 0;
    const inside = frame.root.contains(document.activeElement);
    options.show(model.get("chosen"), answered);
    options.buttons().forEach((button, k) => {
      button.querySelector(".ck-option-why")?.remove();
      delete button.dataset.kind;
      const [right, why] = told[k] ?? [false, ""];
      const kind = right ? "right" : k === model.get("chosen") ? "wrong" : "";
      if (!answered || !kind) return;
      button.dataset.kind = kind;
      button.querySelector(".ck-option-sign").textContent = SIGNS[kind];
      const said = element("span", { class: "ck-option-why" });
      said.append(element("b", {}, `${words[kind]}: `), why);
      button.append(said);
    });
    another.hidden = !answered;
    if (answered && inside) another.focus();
  }

  frame.on(["svg"], () => { picture.innerHTML = model.get("svg"); });
  frame.on(["options"], () => {
    options.fill(model.get("options"));
    showAnswer();
    if (onward) options.buttons()[0]?.focus();
    onward = false;
  });
  frame.on(["told", "chosen"], showAnswer);
  frame.off.push(watchRoom(model, picture));
  return frame.close;
}

export default { render };
