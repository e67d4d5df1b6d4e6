// The build sheet, and what changed in it.

const cells = (root) => {
  const out = new Map();
  for (const table of root.querySelectorAll("table")) {
    const title = (table.caption && table.caption.textContent) || (table.closest("section") && table.closest("section").querySelector("h2, h3") || {}).textContent || "";
    const heads = [...table.querySelectorAll("thead th")].map((h) => h.textContent);
    for (const row of table.querySelectorAll("tbody tr")) {
      const name = row.cells[0] && row.cells[0].textContent;
      [...row.cells].slice(1).forEach((c, i) => out.set([title, name, heads[i + 1] || ""].join("\u0001"), c.textContent));
    }
  }
  return out;
};
let before = { kept: "", cells: new Map() }; // of what is saved
const showChanges = () => {
  const rows = [], old = before.cells;
  for (const [key, value] of cells(get("sheet"))) if (old.has(key) && old.get(key) !== value) rows.push([...key.split("\u0001"), old.get(key), value]);
  get("changes").querySelector(".count").textContent = rows.length ? "(" + rows.length + ")" : "";
  if (!rows.length) { get("changed").replaceChildren(make("p", say("none"))); return; }
  const table = make("table"), body = table.createTBody();
  for (const [title, name, head, was, now] of rows) {
    const row = body.insertRow();
    for (const c of [title, [name, head].filter(Boolean).join(", "), was + " → " + now]) row.insertCell().textContent = c;
  }
  get("changed").replaceChildren(table);
};
const showSheet = async () => {
  const number = state.drawn;
  if (!number || number === drawn) return;
  const { now, saved, kept, shape } = await (await ask("sheet", { have: before.kept, at: model ? model.section.station : 700 })).json();
  if (state.drawn !== number) return;
  drawn = number;
  if (saved) before = { kept, cells: cells(new DOMParser().parseFromString(saved, "text/html")) };
  if (shape && !moving) setModel(shape);
  const y = window.scrollY, within = get("show").scrollTop;
  get("sheet").replaceChildren(sheetOf(now));
  window.scrollTo(0, y);
  get("show").scrollTop = within;
  showChanges();
  if (looked !== "space") showView();
  document.body.dataset.drawn = drawn;
};
// sheetOf returns the build sheet as a part of this page, which has a main part and a
// title of its own.
const sheetOf = (html) => {
  const t = make("template");
  t.innerHTML = html;
  for (const [tag, as] of [["main", "div"], ["header", "div"], ["footer", "div"], ["h1", "h2"]]) {
    for (const old of t.content.querySelectorAll(tag)) {
      const put = make(as, undefined, { className: old.className + " was-" + tag });
      put.append(...old.childNodes);
      old.replaceWith(put);
    }
  }
  return t.content;
};
