// What the buttons do.

let clash = false; // saving met another's change: the page goes there
const save = async (name) => {
  await flush();
  note = "";
  try {
    await change("save", { digest: state.digest, name: name || "" });
    get("name-box").close();
    if (alone) { owed = !await leave(); showStatus(); }
  } catch (e) {
    if (e.status === 404) { get("name-wrong").textContent = ""; get("file-name").removeAttribute("aria-invalid"); get("name-box").showModal(); return; }
    if (e.status === 409 && state.file) { clash = true; showConflict(); return; }
    if (name) {
      get("name-wrong").textContent = e.message;
      get("file-name").setAttribute("aria-invalid", "true");
      get("file-name").focus();
    }
    else refused(e);
  }
};
get("save").addEventListener("click", () => save());
get("name-form").addEventListener("submit", (e) => { e.preventDefault(); save(get("file-name").value); });
get("name-cancel").addEventListener("click", () => get("name-box").close());
for (const op of ["undo", "redo"]) get(op).addEventListener("click", async () => { await flush(); if (enabled(get(op))) await change(op).catch(refused); });
for (const [id, op, what] of [["take", "take", () => ({})], ["keep", "save", () => ({ digest: state.lost, name: "" })]]) {
  get(id).addEventListener("click", async () => {
    await change(op, what()).catch(refused);
    get("save").focus(); // what was chosen from goes
  });
}
get("use-text").addEventListener("click", async () => {
  delete get("text").dataset.own;
  await change("text", { text: get("text").value }).catch(refused);
});
document.addEventListener("keydown", (e) => {
  if (!(e.ctrlKey || e.metaKey) || e.altKey) return;
  const own = e.target.matches("input, textarea, select");
  const key = e.key.toLowerCase();
  if (key === "s") { e.preventDefault(); if (!get("save").disabled) save(); }
  else if (key === "z" && !own) { e.preventDefault(); (e.shiftKey ? get("redo") : get("undo")).click(); }
  else if (key === "y" && !own) { e.preventDefault(); get("redo").click(); }
});
window.addEventListener("beforeunload", (e) => { if (pending.size) e.preventDefault(); });
