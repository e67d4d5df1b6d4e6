// What the page says of itself.

// The state is said at once and as often as it changes. What passes soon is said only
// where it goes on, so that whoever listens to the page hears of each change once.
const soon = 1500;
let passes = 0;
const tell = (text, passing) => {
  const now = (all) => { if (get("status").textContent !== all) get("status").textContent = all; };
  clearTimeout(passes);
  const whole = [text, passing].filter(Boolean).join(" ");
  if (get("status").textContent === whole) return;
  now(text);
  if (passing) passes = setTimeout(() => now(whole), soon);
};
const showStatus = () => {
  const n = (state.faults || []).length, parts = [];
  if (state.ask) parts.push(say("ask"));
  else if (state.theirs !== undefined) parts.push(say("conflict"));
  else if (state.unsaved || owed) parts.push(say("unsaved"));
  else parts.push(state.file ? say("saved", { file: state.file }) : say("builtin"));
  if (state.locked) parts.push(say("locked"));
  if (state.broken && !state.ask) parts.push(say("broken"));
  if (n) parts.push(n === 1 ? say("one") : say("many", { n }), ...(state.drawn ? [say("last")] : []));
  if (note) parts.unshift(note);
  let passing = "";
  if (!n && !state.ask && !state.drawn) passing = say("drawing");
  else if (!n && !state.ask && !state.laid) passing = say("laying");
  tell(parts.join(" "), passing);
  document.title = (n ? say("error") : "") + (state.unsaved ? "* " : "") + (state.values.name || "") + " – Slingloft";
  enable(get("undo"), state.undo);
  enable(get("redo"), state.redo);
  get("save").disabled = Boolean(state.locked) || state.ask;
  get("files").disabled = state.ask;
  Object.assign(document.body.dataset, { number: state.number, laid: state.laid, unsaved: state.unsaved, faults: n });
};

const showConflict = () => {
  const box = get("conflict");
  box.hidden = state.theirs === undefined;
  if (box.hidden) return;
  if (clash) box.focus();
  clash = false;
  const lines = { theirs: state.theirs.split("\n"), mine: state.text.split("\n") };
  for (const [id, own] of Object.entries(lines)) {
    const others = new Set(lines[id === "mine" ? "theirs" : "mine"]);
    get(id).replaceChildren(...own.map((l) => make("span", l + "\n", { className: others.has(l) ? "" : "differs" })));
  }
};
