// Designs side by side.

const summary = (html) => {
  const page = new DOMParser().parseFromString(html, "text/html"), out = new Map();
  const verdict = page.querySelector(".verdict");
  if (verdict) out.set(say("verdict"), verdict.textContent.trim());
  for (const table of page.querySelectorAll("#summary, #ends")) {
    for (const row of table.querySelectorAll("tbody tr")) out.set(row.cells[0].textContent, [...row.cells].slice(1).map((c) => c.textContent).join(" / "));
  }
  return out;
};
const listed = (id) => get(id).value.split(";").map((v) => v.trim()).filter(Boolean);
// besides puts designs side by side in a table.
const besides = (list) => {
  const maps = list.map((c) => (c.sheet ? summary(c.sheet) : new Map([[say("verdict"), c.fault]])));
  const table = make("table"), head = table.createTHead().insertRow(), body = table.createTBody();
  for (const name of [say("measure"), ...list.map((c) => c.name)]) head.append(make("th", name, { scope: "col", className: "w" }));
  for (const name of new Set(maps.flatMap((m) => [...m.keys()]))) {
    const row = body.insertRow();
    row.append(make("th", name, { scope: "row", className: "w" }));
    for (const m of maps) row.append(make("td", m.get(name) || "", { className: "w" }));
  }
  return table;
};
// variants shows what the command says of every value: its page, without its frame.
const variants = async (vary) => {
  const text = await (await ask("vary", { vary })).text(); // its style is this page's
  const page = new DOMParser().parseFromString(text.slice(text.indexOf("<main"), text.lastIndexOf("</main>")), "text/html");
  const out = copyOf(page.querySelector("main section"), "vary-");
  for (const h of out.querySelectorAll("h2, h3")) h.remove();
  out.removeAttribute("aria-labelledby");
  out.append(...[...out.children].filter((e) => e.querySelector("figure") || e.tagName === "FIGURE")); // tables first
  return out;
};
get("compare-form").addEventListener("submit", async (e) => {
  e.preventDefault();
  const values = listed("compare-values"), more = listed("compare-values-2"), field = get("compare-key").value;
  const vary = [{ field, values }, { field: get("compare-key-2").value, values: more }].filter((a) => a.field && a.values.length);
  const texts = get("compare-file").files.length ? [await get("compare-file").files[0].text()] : [];
  get("compare-said").textContent = vary.length || texts.length ? say("working") : say("novalues");
  if (!vary.length && !texts.length) { get("compare-values").focus(); return; }
  try {
    await flush();
    get("varied").replaceChildren(...(vary.length ? [await variants(vary)] : []));
    const one = vary.length === 1 || texts.length > 0;
    if (one) {
      const { now } = await (await ask("sheet")).json();
      const others = await (await ask("compare", { field, values: vary.length === 1 ? values : [], texts })).json() || [];
      get("compared").replaceChildren(besides([{ name: say("now"), sheet: now }, ...others]));
    }
    get("compared").hidden = !one;
    get("compare-said").textContent = say("compared");
  } catch (err) { get("compare-said").textContent = err.message; }
});

// The cut hung as cloth, as the command tells of it.
const showGuests = () => {
  const box = get("hang-who"), was = box.value, names = [];
  for (let i = 0; i < (state.counts.guest || 0); i++) if (state.values["guest." + i + ".name"]) names.push(state.values["guest." + i + ".name"]);
  if (box.dataset.shown === JSON.stringify(names)) return;
  box.dataset.shown = JSON.stringify(names);
  box.replaceChildren(box.options[0], ...names.map((n) => make("option", n, { value: n })));
  if (names.includes(was)) box.value = was;
};
get("hang-form").addEventListener("submit", async (e) => {
  e.preventDefault();
  get("hang-said").textContent = say("working");
  try {
    await flush();
    get("hang-told").textContent = await (await ask("hang", { guest: get("hang-who").value, how: get("hang-how").value })).text();
    get("hang-told").hidden = false;
    get("hang-said").textContent = say("hung");
  } catch (err) { get("hang-said").textContent = err.message; }
});
