// Files that are made, proved and brought in.

get("files").addEventListener("click", () => get("files-box").showModal());
get("files-cancel").addEventListener("click", () => get("files-box").close());
get("files-form").addEventListener("submit", async (e) => {
  e.preventDefault();
  await flush();
  get("files-wrong").textContent = say("making");
  try {
    const as = [...document.querySelectorAll("#files-form .tick input:checked")].map((b) => b.value);
    const answer = await ask("files", { want: get("want").value, as, paper: get("paper").value });
    const link = make("a", "", { href: URL.createObjectURL(await answer.blob()), download: answer.headers.get("X-File-Name") });
    document.body.append(link);
    link.click();
    link.remove();
    setTimeout(() => URL.revokeObjectURL(link.href), 60000);
    get("files-wrong").textContent = say("made");
  } catch (err) { get("files-wrong").textContent = err.message; }
});
const packed = (list) => {
  const heads = [], bodies = [];
  for (const f of list) { heads.push({ name: f.name, size: f.size }); bodies.push(f); }
  return new Blob([JSON.stringify(heads) + "\n", ...bodies]);
};
get("bring").addEventListener("change", async (e) => {
  const answer = await send("bring", packed(e.target.files), "application/octet-stream").catch(() => null);
  get("bring-wrong").textContent = !answer ? say("away") : answer.ok ? "" : await answer.text();
  e.target.value = "";
});
const prove = async (list) => {
  const out = get("proved");
  out.hidden = false;
  out.textContent = "…";
  try {
    const answer = await send("prove", packed(list), "application/octet-stream");
    out.textContent = await answer.text();
  } catch (e) { out.textContent = say("away"); }
};
get("prove").addEventListener("change", (e) => prove(e.target.files));
get("files-box").addEventListener("dragover", (e) => e.preventDefault());
get("files-box").addEventListener("drop", (e) => { e.preventDefault(); prove(e.dataTransfer.files); });

