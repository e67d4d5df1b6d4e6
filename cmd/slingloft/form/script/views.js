// Other views: pictures of the build sheet.
const views = { side: "#view-side", above: "#view-above", end: "#view-end", pieces: '#view-parts, [id^="piece-"]', lay: '[id^="lay-"]' };
let looked = "space";
const showView = () => {
  get("in-space").hidden = looked !== "space";
  get("plates").hidden = looked === "space";
  for (const b of document.querySelectorAll("[data-view]")) b.setAttribute("aria-pressed", b.dataset.view === looked);
  if (looked === "space") { draw(); return; }
  const found = [...get("sheet").querySelectorAll(views[looked])].filter((e) => e.tagName === "svg" && e.closest("figure"));
  keepFocus(get("plates"), () => get("plates").replaceChildren(...(found.length ? found.map((e) => copyOf(e.closest("figure"), "plate-")) : [make("p", say(state && state.drawn ? "laying" : "drawing"))])), document.querySelector('[data-view="' + looked + '"]'));
};
// copyOf returns a part of a page once more, under ids of its own.
const copyOf = (part, mark) => {
  const out = document.importNode(part, true);
  for (const e of [out, ...out.querySelectorAll("[id]")]) if (e.id) e.id = mark + e.id;
  for (const e of [out, ...out.querySelectorAll("[aria-labelledby]")]) {
    if (e.hasAttribute("aria-labelledby")) e.setAttribute("aria-labelledby", e.getAttribute("aria-labelledby").split(" ").map((i) => mark + i).join(" "));
  }
  return out;
};
get("space").addEventListener("click", (e) => { if (e.target.dataset.view) { looked = e.target.dataset.view; showView(); } });
