// What is wrong, and ways out of it.

const ways = (f) => (f.ways || []).map((w) => make("button", w.label, { type: "button", onclick: async () => {
  await flush();
  await change("set", { set: w.set }).catch(refused);
  const input = field(w.set[w.set.length - 1].field);
  if (input) { open(input); input.focus(); }
  else get(get("faults").hidden ? "title" : "faults").focus();
} }));
const nameOf = (input) => {
  const element = input.closest(".element");
  return (element ? element.querySelector("h3").textContent + ": " : "") + document.querySelector('label[for="' + input.id + '"]').textContent;
};
const open = (input) => { for (let d = input.closest("details"); d; d = d.parentElement.closest("details")) d.open = true; };

const showFaults = () => {
  const list = state.faults || [];
  const at = new Map();
  for (const f of list) if (f.field && field(f.field)) at.set(f.field, [...(at.get(f.field) || []), f]);
  for (const input of fields()) {
    const own = at.get(input.name), box = get(input.id + "-fault");
    if (own) input.setAttribute("aria-invalid", "true");
    else input.removeAttribute("aria-invalid");
    const key = JSON.stringify(own || "");
    if (box.dataset.shown === key) continue;
    box.dataset.shown = key;
    // What is wrong describes the field; the buttons stand beside it.
    const told = make("div", undefined, { id: input.id + "-said" });
    told.append(...(own || []).map((f) => make("p", f.text)));
    keepFocus(box, () => box.replaceChildren(told, ...(own || []).flatMap(ways)), input);
  }
  const key = JSON.stringify(list), box = get("faults");
  if (box.dataset.shown === key) return;
  box.dataset.shown = key;
  keepFocus(box, () => { listFaults(list, box); box.hidden = !list.length; }, list.length ? box : get("title"));
};
const listFaults = (list, box) => {
  box.querySelector("ul").replaceChildren(...list.map((f) => {
    const item = make("li"), input = f.field && field(f.field);
    if (input) item.append(make("a", nameOf(input), { href: "#" + input.id, onclick: (e) => { e.preventDefault(); open(input); input.focus(); } }), ": ");
    else if (f.place) item.append(make("strong", f.place + " "));
    item.append(f.text);
    if (f.line && !input) item.append(make("code", f.line));
    if (!input) item.append(make("br"), ...ways(f));
    return item;
  }));
};
