// Measured widths beside those of the rules: a table that is made by the kernel.

function render({ model, el }) {
  const { root, off } = readerRoot(model, el, "ck-measured");
  const box = element("div");
  root.append(box);
  const stop = follow(model, { html() { box.innerHTML = model.get("html"); } });
  return () => { stop(); off(); };
}

export default { render };
