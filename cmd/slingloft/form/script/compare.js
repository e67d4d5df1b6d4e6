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
get("compare-form").addEventListener("submit", async (e) => {
  e.preventDefault();
  get("compare-said").textContent = say("working");
  const values = get("compare-values").value.split(";").map((v) => v.trim()).filter(Boolean);
  const texts = get("compare-file").files.length ? [await get("compare-file").files[0].text()] : [];
  try {
    await flush();
    const { now } = await (await ask("sheet")).json();
    const list = [{ name: say("now"), sheet: now }, ...(await (await ask("compare", { field: get("compare-key").value, values, texts })).json() || [])];
    const maps = list.map((c) => (c.sheet ? summary(c.sheet) : new Map([[say("verdict"), c.fault]])));
    const table = make("table"), head = table.createTHead().insertRow(), body = table.createTBody();
    for (const name of [say("measure"), ...list.map((c) => c.name)]) head.append(make("th", name, { scope: "col" }));
    for (const name of new Set(maps.flatMap((m) => [...m.keys()]))) {
      const row = body.insertRow();
      row.append(make("th", name, { scope: "row" }));
      for (const m of maps) row.insertCell().textContent = m.get(name) || "";
    }
    get("compared").replaceChildren(table);
    get("compare-said").textContent = say("beside", { n: list.length });
  } catch (err) { get("compare-said").textContent = err.message; }
});
