// A panel: toolbar, picture, controls, messages; one conversation with the kernel.

const STILL = 60; // ms after which a hand has stopped that moved something

function conversation(model) {
  // Changes that the kernel has not answered yet. They are sent together, so that none is lost
  // when the browser merges messages while the kernel is busy.
  const pending = new Map();
  // What is typed or pressed waits its turn: the page holds changes back while the kernel is busy,
  // but not messages, and an older change that came later would undo them.
  const queue = [];
  let count = 0;

  function say(message) {
    if (pending.size) queue.push(message);
    else model.send(message);
  }

  function push(kind, entries) {
    count += 1;
    for (const [path, value] of entries) pending.set(path, { kind, value, n: count });
    const message = { n: count, set: {}, drag: {} };
    for (const [one, change] of pending) message[change.kind][one] = change.value;
    model.set("changes", message);
    model.save_changes();
  }

  model.on("change:done", () => {
    const done = model.get("done");
    for (const [path, change] of pending) if (change.n <= done) pending.delete(path);
    if (!pending.size) queue.splice(0).forEach((message) => model.send(message));
  });

  return {
    set: (path, value) => push("set", [[path, value]]),
    drag: (path, value) => push("drag", [[path, value]]),
    dragBoth: (entries) => push("drag", entries), // one grip, two inputs: one message
    text: (path, text) => say({ kind: "text", path, text }),
    act: (name, value) => say({ kind: "act", name, value }),
    waiting: (path) => pending.has(path),
    busy: () => pending.size > 0,
  };
}

function toolbar(model, send) {
  const bar = element("div", { class: "ck-bar", role: "toolbar" });
  const words = model.get("words");
  const units = picker("units", words.units, [["SI", "SI"], ["US", "US"]]);
  const theme = picker("theme", words.theme,
    ["auto", "light", "dark", "projector"].map((name) => [name, words[name]]));
  bar.append(units, theme);
  for (const [name, label] of model.get("buttons")) {
    const button = element("button", { type: "button", class: "ck-button", "data-act": name }, label);
    button.addEventListener("click", () => send.act(name));
    bar.append(button);
  }

  function picker(name, label, options) {
    const box = element("label", { class: "ck-pick" }, `${label} `);
    const list = element("select", { class: "ck-choice", "data-act": name });
    for (const [value, text] of options) list.append(element("option", { value }, text));
    const show = () => { list.value = model.get(name); };
    list.addEventListener("change", () => send.act(name, list.value));
    model.on(`change:${name}`, show);
    show();
    box.append(list);
    return box;
  }
  return bar;
}

function openPlaces(model, send) {
  const box = element("div", { class: "ck-open-places", "aria-live": "polite" });
  const [head, list] = [element("p", {}), element("ul", {})];
  box.append(head, list);

  function show() {
    const told = model.get("open_places");
    box.hidden = !told.head;
    if (!told.head) return;
    say(head, told.head);
    while (list.children.length > told.rows.length) list.lastChild.remove();
    while (list.children.length < told.rows.length) list.append(line(list.children.length));
    told.rows.forEach((text, k) => {
      const [words, button] = list.children[k].children;
      say(words, text);
      say(button, told.show);
    });
  }

  function line(k) {
    const button = element("button", { type: "button", class: "ck-button ck-small" });
    button.addEventListener("click", () => send.act("show_place", k));
    const made = element("li", {});
    made.append(element("span", {}), " ", button);
    return made;
  }

  // what is said already stays: the page would lay it out anew
  function say(where, text) {
    if (where.textContent !== text) where.textContent = text;
  }
  model.on("change:open_places", show);
  show();
  return { box, off: () => model.off("change:open_places", show) };
}

function messages(model, root) {
  const error = element("div", { class: "ck-error", role: "alert" });
  const note = element("div", { class: "ck-note", role: "status" });
  const cautions = element("ul", { class: "ck-cautions" });
  const more = element("div", { class: "ck-more" });
  const spoken = element("p", { class: "ck-spoken", "aria-live": "polite" });
  let rest = null;

  const shows = {
    error() { error.textContent = model.get("error"); error.hidden = !model.get("error"); },
    note() { note.textContent = model.get("note"); note.hidden = !model.get("note"); },
    cautions() {
      cautions.replaceChildren(...model.get("cautions").map(([text, grave]) =>
        element("li", { class: grave ? "ck-grave" : "" }, text)));
    },
    more() { more.innerHTML = model.get("more"); },
    alt() {
      // read out once the picture has come to rest, not at each step of a drag
      clearTimeout(rest);
      rest = setTimeout(() => { spoken.textContent = model.get("alt"); }, 900);
    },
    shown_theme() { root.dataset.ckTheme = model.get("shown_theme"); },
  };
  const off = Object.entries(shows).map(([name, show]) => {
    model.on(`change:${name}`, show);
    show();
    return () => model.off(`change:${name}`, show);
  });
  return { error, note, cautions, more, spoken, off };
}

// A picture of which a part is outdated is made whole once it is painted and nothing moves.
function finishing(model, picture, send) {
  let resting = null;

  function finish() {
    if (model.get("unfinished") && !send.busy()) send.act("finish");
  }

  function wait() {
    picture.setAttribute("aria-busy", model.get("unfinished"));
    clearTimeout(resting);
    if (model.get("unfinished")) resting = setTimeout(finish, STILL);
  }
  model.on("change:done change:unfinished", wait);
  wait();
  return () => {
    clearTimeout(resting);
    model.off("change:done change:unfinished", wait);
  };
}

function deliver(model) {
  // files and text that the kernel hands out
  model.on("msg:custom", (message, buffers) => {
    if (message.kind === "copy") navigator.clipboard?.writeText(message.text).catch(() => {});
    if (message.kind === "save") {
      const link = element("a", { download: message.name });
      link.href = URL.createObjectURL(new Blob([buffers[0]], { type: message.type }));
      link.click();
      setTimeout(() => URL.revokeObjectURL(link.href), 10000);
    }
  });
}

function render({ model, el }) {
  const root = element("div", { class: "ck-panel" });
  keepKeys(root);
  const picture = element("div", { class: "ck-picture" });
  const board = element("div", { class: "ck-controls" });
  const send = conversation(model);
  const told = messages(model, root);
  const stage = element("div", { class: "ck-stage" });
  stage.append(picture, board);
  const guide = walk(model, send);
  const places = openPlaces(model, send);
  root.append(toolbar(model, send), guide.box, told.error, told.note, stage, places.box,
    told.cautions, told.more, told.spoken);
  el.append(root);
  const off = [
    livePicture(model, picture, send),
    finishing(model, picture, send),
    controls(model, board, send),
    watchRoom(model, picture),
    watchTheme((seen) => { model.set("seen", seen); model.save_changes(); }),
    lookAgain(model, root),
    guide.off,
    places.off,
    ...told.off,
  ];
  deliver(model);
  return () => off.forEach((stop) => stop());
}

export default { render };
