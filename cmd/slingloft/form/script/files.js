// Files that are made, proved and brought in.

get("files").addEventListener("click", () => { lookBeside().catch(refused); get("files-box").showModal(); });
const showWants = () => {
  const want = get("want").value, drawn = want === "cut" || want === "calibrate";
  get("formats").hidden = get("machine-box").hidden = !drawn;
  const sheet = want === "sheet" || want === "pdf" || want === "shop";
  get("paper-box").hidden = !drawn && want !== "pdf" && want !== "shop";
  get("copies-box").hidden = want !== "cut" && !sheet;
};
get("want").addEventListener("change", showWants);
showWants();
let standing = null; // what stood when the making of files began, while it goes on
get("files-cancel").addEventListener("click", () => {
  get("files-box").close();
  if (alone && standing) restart(standing).catch(refused);
});
get("files-form").addEventListener("submit", async (e) => {
  e.preventDefault();
  await flush();
  get("files-wrong").textContent = say("making");
  try {
    if (alone) standing = await packAll();
    const as = [...document.querySelectorAll("#files-form .tick input:checked")].map((b) => b.value);
    const answer = await ask("files", { want: get("want").value, as, paper: get("paper-box").hidden ? "" : get("paper").value, machine: get("machine-box").hidden ? "" : get("machine").value, copies: get("copies-box").hidden ? 0 : Math.round(Number(get("copies").value)) });
    give(await answer.blob(), answer.headers.get("X-File-Name"));
    get("files-wrong").textContent = say("made");
  } catch (err) { get("files-wrong").textContent = err.message; }
  standing = null;
});
const packed = (list) => {
  const heads = [], bodies = [];
  for (const f of list) { heads.push({ name: f.name, size: f.size }); bodies.push(f); }
  return new Blob([JSON.stringify(heads) + "\n", ...bodies]);
};
for (const input of document.querySelectorAll("[data-bring]")) {
  input.addEventListener("change", async () => {
    const answer = await send("bring/" + input.dataset.bring, packed(input.files), "application/octet-stream").catch(() => null);
    get(input.id + "-wrong").textContent = !answer ? say("away") : answer.ok ? "" : await answer.text();
    const name = input.files.length ? input.files[0].name : "";
    input.value = "";
    await lookBeside().catch(refused);
    if (answer && answer.ok && input.dataset.bring === "machine" && [...get("machine").options].some((o) => o.value === name)) get("machine").value = name;
  });
}
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

