// What the page says of itself.

const showStatus = () => {
  const n = (state.faults || []).length, parts = [];
  if (state.ask) parts.push(say("ask"));
  else if (state.theirs !== undefined) parts.push(say("conflict"));
  else if (state.unsaved || owed) parts.push(say("unsaved"));
  else parts.push(state.file ? say("saved", { file: state.file }) : say("builtin"));
  if (state.locked) parts.push(say("locked"));
  if (state.broken && !state.ask) parts.push(say("broken"));
  if (n) parts.push(n === 1 ? say("one") : say("many", { n }), ...(state.drawn ? [say("last")] : []));
  else if (!state.ask && !state.drawn) parts.push(say("drawing"));
  else if (!state.ask && !state.laid) parts.push(say("laying"));
  if (note) parts.unshift(note);
  const text = parts.join(" ");
  if (get("status").textContent !== text) get("status").textContent = text;
  document.title = (n ? say("error") : "") + (state.unsaved ? "* " : "") + (state.values.name || "") + " – Slingloft";
  get("undo").disabled = !state.undo;
  get("redo").disabled = !state.redo;
  get("save").disabled = Boolean(state.locked) || state.ask;
  get("files").disabled = state.ask;
  Object.assign(document.body.dataset, { number: state.number, laid: state.laid, unsaved: state.unsaved, faults: n });
};

const showConflict = () => {
  const box = get("conflict");
  box.hidden = state.theirs === undefined;
  if (box.hidden) return;
  const lines = { theirs: state.theirs.split("\n"), mine: state.text.split("\n") };
  for (const [id, own] of Object.entries(lines)) {
    const others = new Set(lines[id === "mine" ? "theirs" : "mine"]);
    get(id).replaceChildren(...own.map((l) => make("span", l + "\n", { className: others.has(l) ? "" : "differs" })));
  }
};
