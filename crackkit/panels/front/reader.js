// What widgets beside the live panel share: one handler for several traits, errors in place.

function follow(model, shows) {
  const off = Object.entries(shows).map(([names, show]) => {
    const event = names.split(" ").map((name) => `change:${name}`).join(" ");
    model.on(event, show);
    show();
    return () => model.off(event, show);
  });
  return () => off.forEach((stop) => stop());
}

function readerRoot(model, el, name) {
  const root = element("div", { class: `ck-panel ${name}` });
  const error = element("div", { class: "ck-error", role: "alert" });
  keepKeys(root);
  root.append(error);
  el.append(root);
  const stops = [
    follow(model, {
      shown_theme() { root.dataset.ckTheme = model.get("shown_theme"); },
      error() { error.textContent = model.get("error"); error.hidden = !model.get("error"); },
    }),
    lookAgain(model, root),
    watchTheme((seen) => { model.set("seen", seen); model.save_changes(); }),
  ];
  return { root, off: () => stops.forEach((stop) => stop()) };
}
