// The build sheet, and what changed in it.

const cells = (root) => {
  const out = new Map();
  // The bed at a glance goes first.
  for (const table of [...root.querySelectorAll("table")].sort((a, b) => (b.id === "summary") - (a.id === "summary"))) {
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
  const groups = new Map(), old = before.cells;
  let n = 0;
  for (const [key, value] of cells(get("sheet"))) {
    if (!old.has(key) || old.get(key) === value) continue;
    const [title, name, head] = key.split("\u0001");
    groups.set(title, [...(groups.get(title) || []), [[name, head].filter(Boolean).join(", "), old.get(key), value]]);
    n++;
  }
  get("changes").querySelector(".count").textContent = n ? "(" + n + ")" : "";
  const opened = new Set([...get("changed").querySelectorAll("details[open]")].map((d) => d.dataset.title));
  keepFocus(get("changed"), () => get("changed").replaceChildren(...(n ? [...groups].map(([title, rows], i) => {
    const box = make("details", undefined, { open: i === 0 || opened.has(title) }), table = make("table");
    box.dataset.title = title;
    const head = table.createTHead().insertRow(), body = table.createTBody();
    for (const name of [say("figure"), say("before"), say("then")]) head.append(make("th", name, { scope: "col", className: "w" }));
    for (const row of rows) {
      const line = body.insertRow();
      row.forEach((c, i) => line.append(i ? make("td", c, { className: "w" }) : make("th", c, { scope: "row", className: "w" })));
    }
    box.append(make("summary", title + " (" + rows.length + ")"), table);
    return box;
  }) : [make("p", say("none"))])), get("changes").querySelector("summary"));
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
  keepFocus(get("sheet"), () => get("sheet").replaceChildren(sheetOf(now)));
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
