// What stands in the fields, and what is typed there.

const fields = () => document.querySelectorAll("#form [name]");
const field = (name) => document.querySelector('#form [name="' + CSS.escape(name) + '"]');
const written = (name) => (state && state.values[name]) || "";

const put = (input, value) => {
  if (input.tagName === "SELECT" && ![...input.options].some((o) => o.value === value)) input.append(make("option", value, { value }));
  if (input.value !== value) input.value = value;
};

// Each list has as many elements as the file, and at least the first.
const elements = () => {
  for (const box of document.querySelectorAll("#form .list")) {
    const list = box.dataset.list, have = state.counts[list] || 0;
    const all = box.querySelectorAll(".element");
    for (let i = all.length; i < have; i++) all[0].parentNode.insertBefore(another(all[0], list, i), box.querySelector(".add").parentNode);
    for (let i = Math.max(have, 1); i < all.length; i++) all[i].remove();
    box.querySelector(".count").textContent = have ? "(" + have + ")" : "";
    box.querySelector(".element .drop").hidden = !have;
    box.querySelector(".add").hidden = !have;
  }
};
const another = (first, list, i) => {
  const copy = first.cloneNode(true);
  const swap = (text) => text.replaceAll("k-" + list.replaceAll(".", "-") + "-0-", "k-" + list.replaceAll(".", "-") + "-" + i + "-").replaceAll(list + ".0.", list + "." + i + ".");
  for (const e of [copy, ...copy.querySelectorAll("*")]) {
    for (const a of ["id", "for", "name", "aria-describedby"]) if (e.hasAttribute(a)) e.setAttribute(a, swap(e.getAttribute(a)));
    if (e.hasAttribute("name")) e.removeAttribute("aria-invalid");
  }
  copy.setAttribute("aria-label", copy.getAttribute("aria-label").replace(/\d+$/, i + 1));
  copy.querySelector(".ordinal").textContent = i + 1;
  copy.querySelector(".drop").hidden = false;
  return copy;
};

const showFields = () => {
  elements();
  showSwitches();
  for (const input of fields()) {
    const p = pending.get(input.name);
    if (p && p.number <= state.number) pending.delete(input.name);
    if (!pending.has(input.name) && !(moving && input.name === sliding.name)) put(input, written(input.name));
    input.disabled = state.broken;
  }
  const slid = sliding && !moving && field(sliding.name);
  if (slid && slid.value !== sliding.written) offerSlide(slid);
  const text = get("text");
  if (document.activeElement !== text || !text.dataset.own) text.value = state.text;
};

// flush sends what was typed, and waits until all of it has arrived.
const flush = (name) => Promise.all([...pending].filter(([n]) => name === undefined || n === name).map(([n, p]) => {
  clearTimeout(p.timer);
  const end = () => { if (pending.get(n) === p) { pending.delete(n); showFields(); } };
  p.sent = p.sent || change("set", { set: [{ field: n, value: p.value }], turn: p.turn }).then((answer) => answer.json()).then(({ number }) => {
    p.number = number; // what stands from then on has it
    if (state.number >= number) end();
  }, (e) => { end(); refused(e); });
  return p.sent;
}));
const typed = (input, wait) => {
  const old = pending.get(input.name), value = input.value;
  if (old ? old.value === value : value === written(input.name)) return;
  if (old) clearTimeout(old.timer);
  pending.set(input.name, { value, turn, timer: setTimeout(() => flush(input.name), wait) });
};
const refused = (e) => { note = e.status ? e.message : say("away"); showStatus(); };

get("form").addEventListener("input", (e) => {
  if (e.target.name) typed(e.target, e.target.tagName === "SELECT" ? 0 : 300);
  if (e.target.id === "text") e.target.dataset.own = "yes";
});
get("form").addEventListener("change", (e) => {
  if (!e.target.name) return;
  typed(e.target, 0);
  flush(e.target.name);
  turn++;
});
get("form").addEventListener("focusin", (e) => { turn++; if (e.target.name && !moving) offerSlide(e.target); });

get("form").addEventListener("click", async (e) => {
  const box = e.target.closest(".list"), list = box && box.dataset.list;
  if (e.target.classList.contains("add")) await change("grow", { list }).catch(refused);
  if (e.target.classList.contains("drop")) {
    const index = [...box.querySelectorAll(".element")].indexOf(e.target.closest(".element"));
    await change("drop", { list, index }).catch(refused);
  }
});
