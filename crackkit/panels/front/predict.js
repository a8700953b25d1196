// Your call: the drawing with cells to paint, or places to choose; then the answer on it.

function render({ model, el }) {
  const words = model.get("words");
  const frame = exerciseFrame(model, el, "predict");
  const picture = element("div", { class: "ck-picture" });
  const hint = element("p", { class: "ck-note" }, model.get("hint"));
  const places = element("div", { class: "ck-options ck-places" });
  const legend = element("p", { class: "ck-legend", "aria-label": words.legend });
  const line = element("div", { class: "ck-buttons" });
  const remarks = element("ul", { class: "ck-remarks" });
  const strips = cellStrips(model, picture, words);
  const options = radioGroup(places, model.get("title"), (k) => {
    model.set("chosen", model.get("places")[k][0]);
    model.save_changes();
    showChosen();
  });
  const answer = () => ({ painted: model.get("painted"), chosen: model.get("chosen") });
  const clear = element("button", { type: "button", class: "ck-button", "data-act": "clear" },
    words.clear);
  clear.addEventListener("click", () => strips.clear());
  const call = actButton(model, "call", words.call, answer);
  const again = actButton(model, "again", words.again);
  call.classList.add("ck-main");
  again.classList.add("ck-main");
  line.append(clear, call, again);
  for (const kind of ["right", "missed", "wrong"]) {
    const one = element("span", { class: "ck-key" });
    one.append(element("span", { class: "ck-swatch", "data-kind": kind }, SIGNS[kind]),
      ` ${words[`kind_${kind}`]}`);
    legend.append(one);
  }
  if (model.get("ask") === "stretch") {
    legend.append(element("span", { class: "ck-key" }, words.unmarked));
  }
  options.fill(model.get("places").map(([_key, label]) => label));
  places.hidden = !model.get("places").length;
  hint.hidden = !model.get("hint");
  frame.root.append(frame.title, frame.task, frame.error, hint, picture, places, legend, line,
    frame.headline, remarks, frame.tally);

  function showChosen() {
    const chosen = model.get("places").findIndex(([key]) => key === model.get("chosen"));
    options.show(chosen, model.get("called"));
    call.disabled = model.get("places").length > 0 && chosen < 0;
  }

  function showCalled() {
    const called = model.get("called");
    const inside = line.contains(document.activeElement);
    clear.hidden = called || model.get("places").length > 0;
    call.hidden = called;
    again.hidden = !called;
    hint.hidden = called || !model.get("hint");
    legend.hidden = !called || model.get("places").length > 0;
    if (inside) (called ? again : call).focus();
    showChosen();
  }

  function showRemarks() {
    remarks.replaceChildren(...model.get("remarks").map(([kind, lead, where, text]) => {
      const item = element("li", { class: "ck-remark", "data-kind": kind });
      const head = element("b", {}, where ? `${lead}: ${where}. ` : `${lead}. `);
      const sign = element("span", { class: "ck-swatch", "data-kind": kind, "aria-hidden": "true" },
        SIGNS[kind]);
      const said = element("span", {});
      said.append(head, text);
      item.append(sign, said);
      return item;
    }));
    remarks.hidden = !model.get("remarks").length;
  }

  frame.on(["svg"], () => { picture.innerHTML = model.get("svg"); strips.build(); });
  frame.on(["strips", "cells"], () => {
    picture.innerHTML = model.get("svg");
    strips.build();
  });
  frame.on(["painted", "kinds", "called", "cell_names"], () => strips.refresh());
  frame.on(["called", "chosen"], showCalled);
  frame.on(["remarks"], showRemarks);
  frame.off.push(watchRoom(model, picture));
  return frame.close;
}

export default { render };
