// The end of a lesson: what is done, what is left.

function render({ model, el }) {
  const words = model.get("words");
  const frame = exerciseFrame(model, el, "finish");
  const list = element("ul", { class: "ck-goals" });
  const line = element("div", { class: "ck-buttons" });
  line.append(actButton(model, "look", words.look));
  frame.on(["needs"], () => {
    list.replaceChildren(...model.get("needs").map(([text, done]) =>
      element("li", {}, `${done ? SIGNS.right : "○"} ${text} (${done ? words.done : words.open})`)));
  });
  frame.root.append(frame.title, list, frame.headline, line, frame.error);
  return frame.close;
}

export default { render };
