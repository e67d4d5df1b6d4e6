// Where the page carries the program, a worker answers in a server's place: the page is
// opened from disk, and what is made leaves it as a file.

const alone = get("program") !== null;
let worker = null, asked = 0;
const unanswered = new Map(); // what the worker was asked and has not answered
const begun = () => {
  const source = new Blob([get("runtime").textContent, get("engine").textContent], { type: "text/javascript" });
  worker = new Worker(URL.createObjectURL(source));
  worker.onmessage = ({ data }) => {
    if (data.ended) { for (const w of unanswered.values()) w.fail(new Error(data.ended)); unanswered.clear(); return; }
    const w = unanswered.get(data.id);
    unanswered.delete(data.id);
    if (w) w.done(new Response(data.body, { status: data.status, headers: data.heads }));
  };
  worker.postMessage({ program: get("program").textContent });
};
const sendHere = async (op, body) => {
  const text = body instanceof Blob ? await body.arrayBuffer() : new TextEncoder().encode(body || "").buffer;
  return new Promise((done, fail) => {
    const id = ++asked;
    unanswered.set(id, { done, fail });
    worker.postMessage({ id, op, body: text }, [text]);
  });
};
const give = (blob, name) => {
  const link = make("a", "", { href: URL.createObjectURL(blob), download: name });
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(link.href), 60000);
};

const packAll = async () => {
  const answer = await sendHere("pack", "{}");
  if (!answer.ok) throw Object.assign(new Error((await answer.text()).trim()), { status: answer.status });
  return answer.blob();
};
let owed = false; // what stands as saved in the worker has not left the page
const openFiles = async (list) => {
  const answer = await sendHere("open", packed(list));
  if (!answer.ok) throw new Error((await answer.text()).trim());
  drawn = 0;
  shelved = "";
};
// restart ends the worker, whatever it does, and goes on with what stood.
const restart = async (standing) => {
  const unsaved = owed || state.unsaved;
  worker.terminate();
  for (const w of unanswered.values()) w.fail(new Error(say("ended")));
  unanswered.clear();
  begun();
  if (standing) await openFiles([new File([standing], "design.zip")]);
  owed = unsaved;
};

// The file leaves the page into the one that was chosen before, where the browser lets a
// page write files, else as a download.
let handle = null;
const leave = async () => {
  const now = await (await ask("state")).json();
  const file = now.file || "design.toml";
  if (window.showSaveFilePicker) {
    try {
      if (!handle || handle.name !== file) handle = await window.showSaveFilePicker({ suggestedName: file });
      const out = await handle.createWritable();
      await out.write(now.text);
      await out.close();
      return true;
    } catch (e) {
      if (e.name === "AbortError") return false;
      handle = null; // not allowed here: it is downloaded
    }
  }
  give(new Blob([now.text], { type: "application/toml" }), file);
  note = say("downloaded", { file });
  return true;
};

// A draft of what is not saved outlives the page: the browser keeps it under the design's
// name.
const drafts = () => new Promise((done, fail) => {
  const r = indexedDB.open("slingloft", 1);
  r.onupgradeneeded = () => r.result.createObjectStore("drafts");
  r.onsuccess = () => done(r.result);
  r.onerror = () => fail(r.error);
});
const inDrafts = async (mode, what) => {
  const base = await drafts();
  return new Promise((done, fail) => {
    const t = base.transaction("drafts", mode), r = what(t.objectStore("drafts"));
    t.oncomplete = () => { base.close(); done(r.result); };
    t.onerror = () => { base.close(); fail(t.error); };
  });
};
const draftName = () => state.file || state.values.name || "design";
let kept = -1; // number of the state that is kept
const keepDraft = async () => {
  if (!state || state.ask || state.number === kept) return;
  kept = state.number;
  const name = draftName();
  if (!state.unsaved && !owed) { await inDrafts("readwrite", (s) => s.delete(name)); return; }
  const zip = await (await packAll()).arrayBuffer();
  await inDrafts("readwrite", (s) => s.put(zip, name));
};
let draftSoon = 0;
const keepSoon = () => {
  if (!alone) return;
  clearTimeout(draftSoon);
  draftSoon = setTimeout(() => keepDraft().catch(() => {}), 800);
};
const offerDrafts = async () => {
  const names = await inDrafts("readonly", (s) => s.getAllKeys());
  const list = get("drafts-list");
  list.replaceChildren(...names.map((name) => {
    const take = make("button", say("takeDraft", { name }), { type: "button" }), drop = make("button", say("dropDraft", { name }), { type: "button" });
    take.addEventListener("click", async () => {
      const zip = await inDrafts("readonly", (s) => s.get(name));
      await openFiles([new File([zip], "design.zip")]).catch(refused);
      owed = true;
      get("drafts").hidden = true;
    });
    drop.addEventListener("click", async () => { await inDrafts("readwrite", (s) => s.delete(name)); await offerDrafts(); });
    const item = make("li");
    item.append(take, " ", drop);
    return item;
  }));
  get("drafts").hidden = names.length === 0;
};

if (alone) {
  begun();
  offerDrafts().catch(() => {}); // a browser without storage keeps none
  get("open-pick").addEventListener("click", () => get("open").click());
  get("open").addEventListener("change", async () => {
    await flush();
    await openFiles(get("open").files).then(() => { owed = false; handle = null; }, refused);
    get("open").value = "";
  });
  get("new").addEventListener("click", async () => { await flush(); await ask("new").catch(refused); drawn = 0; handle = null; owed = false; });
  get("pack").addEventListener("click", async () => {
    await flush();
    try { give(await packAll(), draftName().replace(/\.toml$/, "").replace(/[^A-Za-z0-9_-]+/g, "-") + ".zip"); } catch (e) { refused(e); }
  });
  document.addEventListener("visibilitychange", () => { if (document.visibilityState === "hidden") keepDraft().catch(() => {}); });
  window.addEventListener("beforeunload", (e) => { if (state && (state.unsaved || owed)) e.preventDefault(); });
}
