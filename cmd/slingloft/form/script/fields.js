// What stands in the fields, and what is typed there.

const fields = () => document.querySelectorAll("#form [name]");
const field = (name) => document.querySelector('#form [name="' + CSS.escape(name) + '"]');
const written = (name) => (state && state.values[name]) || "";

let typing = null; // the field that is typed in, until its change is whole
const put = (input, value) => {
  if (input.tagName === "SELECT" && ![...input.options].some((o) => o.value === value)) input.append(make("option", value, { value }));
  if (input.value === value || input === typing) return;
  const caret = input === document.activeElement && input.selectionEnd;
  input.value = value;
  if (Number.isInteger(caret)) input.setSelectionRange(caret, caret);
};

let toNew = null; // the list whose new element the keyboard goes to
// Each list has as many elements as the file, and at least the first.
const elements = () => {
  for (const box of document.querySelectorAll("#form .list")) {
    const list = box.dataset.list, have = state.counts[list] || 0;
    const all = box.querySelectorAll(".element");
    const grew = toNew === box && have > all.length;
    for (let i = all.length; i < have; i++) all[0].parentNode.insertBefore(another(all[0], list, i), box.querySelector(".add").parentNode);
    keepFocus(box, () => { for (let i = Math.max(have, 1); i < all.length; i++) all[i].remove(); }, box.querySelector("summary"));
    box.querySelector(".count").textContent = have ? "(" + have + ")" : "";
    box.querySelector(".element .drop").hidden = !have;
    box.querySelector(".add").hidden = !have;
    if (grew) {
      toNew = null;
      box.querySelector(".element:nth-last-of-type(1) [name]").focus();
    }
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
    input.disabled = state.broken && input !== document.activeElement;
  }
  listSlides();
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
  if (e.target.name && e.target.tagName !== "SELECT") typing = e.target;
  if (e.target.name) typed(e.target, e.target.tagName === "SELECT" ? 0 : 300);
  if (e.target.id === "text") e.target.dataset.own = "yes";
});
get("form").addEventListener("change", (e) => {
  typing = null;
  if (!e.target.name) return;
  typed(e.target, 0);
  flush(e.target.name);
  turn++;
});
get("form").addEventListener("focusout", (e) => { if (e.target === typing) { typing = null; showFields(); } });
get("form").addEventListener("focusin", (e) => { turn++; if (e.target.name && !moving) offerSlide(e.target); });

get("form").addEventListener("click", async (e) => {
  const box = e.target.closest(".list"), list = box && box.dataset.list;
  if (e.target.classList.contains("add")) {
    toNew = box;
    await change("grow", { list }).catch((err) => { toNew = null; refused(err); });
  }
  if (e.target.classList.contains("drop")) {
    const index = [...box.querySelectorAll(".element")].indexOf(e.target.closest(".element"));
    await change("drop", { list, index }).catch(refused);
    box.querySelector("summary").focus(); // what it stood in is gone
  }
});
