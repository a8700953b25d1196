// Brings the drawing in a box up to date. From one step to the next most of a picture stays as it
// is, and of the rest most parts have other numbers only: these are changed in place. Only what is
// written differently is made anew, for the page takes long to lay out words.

function renewing(box, before) {
  let shown = { opening: null, parts: [] };

  return (svg) => {
    const wanted = inParts(svg);
    if (wanted.opening === shown.opening) renew(box.querySelector("svg"), shown.parts, wanted.parts);
    else {
      box.querySelector("svg")?.remove();
      before.insertAdjacentHTML("beforebegin", svg);
    }
    shown = wanted;
  };
}

// How the svg element opens, and its children as they are written.
function inParts(svg) {
  const tags = svg.split("<").slice(1, -1); // no "<" stands anywhere else
  const parts = [];
  let [depth, part] = [0, ""];
  for (const tag of tags.slice(1)) {
    part += `<${tag}`;
    if (tag.startsWith("/")) depth -= 1;
    else if (!tag.endsWith("/>")) depth += 1;
    if (depth) continue;
    parts.push(part);
    part = "";
  }
  return { opening: tags[0], parts };
}

function renew(drawing, shown, wanted) {
  const nodes = [...drawing.childNodes];
  const kept = whatStays(shown, wanted);
  if (shown.length === wanted.length) {
    wanted.forEach((part, k) => {
      if (kept[k] === null && changed(nodes[k], shown[k], part)) kept[k] = k;
    });
  }
  const made = drawn(wanted.filter((_part, k) => kept[k] === null));
  let [place, fresh] = [0, 0];
  for (const stays of kept) {
    if (stays === null) drawing.insertBefore(made[fresh++], nodes[place] ?? null);
    else {
      while (place < stays) nodes[place++].remove();
      place += 1;
    }
  }
  while (place < nodes.length) nodes[place++].remove();
}

// Changes the attributes of a part in place, if nothing but their values differs; tells whether.
function changed(node, shown, wanted) {
  const [before, after] = [shown.split('"'), wanted.split('"')]; // every second piece is a value
  if (before.length !== after.length) return false;
  const others = [];
  for (let k = 0; k < after.length; k += 1) {
    if (before[k] === after[k]) continue;
    if (k % 2 === 0 || after[k].includes("&")) return false; // other words; a sign that is spelled
    others.push(k);
  }
  const elements = [node, ...node.getElementsByTagName("*")];
  let [element, from] = [-1, 0];
  for (const k of others) {
    for (; from < k; from += 2) element += opened(after[from]);
    const name = after[k - 1].slice(after[k - 1].lastIndexOf(" ") + 1, -1);
    elements[element].setAttribute(name, after[k]);
  }
  return true;
}

// How many elements are opened in a piece of what is written between values.
function opened(piece) {
  return piece.split("<").length - piece.split("</").length;
}

// For each wanted part the place of the shown one that is written the same, or null; in order.
function whatStays(shown, wanted) {
  if (shown.length === wanted.length) {
    return wanted.map((part, k) => (part === shown[k] ? k : null)); // as for most steps
  }
  const places = new Map();
  shown.forEach((part, k) => { places.set(part, [...(places.get(part) ?? []), k]); });
  let next = 0;
  return wanted.map((part) => {
    const place = places.get(part)?.find((k) => k >= next) ?? null;
    if (place !== null) next = place + 1;
    return place;
  });
}

function drawn(parts) {
  const made = document.createElement("template");
  made.innerHTML = `<svg>${parts.join("")}</svg>`;
  return [...made.content.firstChild.childNodes];
}
