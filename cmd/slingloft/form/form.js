"use strict";
// The design page: what is typed goes to the program at once, and what the program says
// comes back into the fields, beside them, and into the drawings.
(() => {
  const get = (id) => document.getElementById(id);
  const said = JSON.parse(get("said").textContent);
  const say = (key, with_ = {}) => said[key].replace(/\{(\w+)\}/g, (_, k) => with_[k]);
  const make = (tag, text, props = {}) => Object.assign(document.createElement(tag), props, text === undefined ? {} : { textContent: text });

  // The token came in the address, which no request and no log ever shows.
  let token = location.hash.slice(1);
  try {
    if (token) sessionStorage.setItem("token", token);
    else token = sessionStorage.getItem("token") || "";
  } catch (e) { /* a page without storage asks again */ }
  if (location.hash.length > 20) history.replaceState(null, "", location.pathname);

  const send = (op, body, type) => fetch("ask/" + op, { method: "POST", body, headers: { Authorization: "Bearer " + token, "Content-Type": type || "application/json" } });
  const ask = async (op, what = {}) => {
    const answer = await send(op, JSON.stringify(what));
    if (!answer.ok) throw Object.assign(new Error((await answer.text()).trim()), { status: answer.status });
    return answer;
  };

  let state = null;  // what the program said last
  let drawn = 0;     // number of the sheet on the page
  let note = "";     // what else the status says, until the next change
  let turn = 1;      // rises with each new stay in a field
  const pending = new Map(); // fields whose typing is not sent yet

  // ---- fields -------------------------------------------------------------

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
    for (const input of fields()) {
      if (!pending.has(input.name)) put(input, written(input.name));
      input.disabled = state.broken;
    }
    const text = get("text");
    if (document.activeElement !== text || !text.dataset.own) text.value = state.text;
  };

  const flush = async (name) => {
    for (const [n, p] of [...pending]) {
      if (name !== undefined && n !== name) continue;
      clearTimeout(p.timer);
      await ask("set", { set: [{ field: n, value: p.value }], turn: p.turn }).catch(refused);
      if (pending.get(n) === p) pending.delete(n);
    }
  };
  const typed = (input, wait) => {
    const old = pending.get(input.name);
    if (old) clearTimeout(old.timer);
    if (!old && input.value === written(input.name)) return;
    const p = { value: input.value, turn, timer: setTimeout(() => flush(input.name), wait) };
    pending.set(input.name, p);
  };
  const refused = (e) => { note = e.status ? e.message : say("away"); showStatus(); };

  get("form").addEventListener("input", (e) => {
    if (e.target.name) typed(e.target, e.target.tagName === "SELECT" ? 0 : 300);
    if (e.target.id === "text") e.target.dataset.own = "yes";
  });
  get("form").addEventListener("change", (e) => {
    if (e.target.name) { typed(e.target, 0); flush(e.target.name).then(() => { turn++; }); }
  });
  get("form").addEventListener("focusin", (e) => { turn++; if (e.target.name) offerSlide(e.target); });

  get("form").addEventListener("click", async (e) => {
    const box = e.target.closest(".list"), list = box && box.dataset.list;
    if (e.target.classList.contains("add")) await ask("grow", { list }).catch(refused);
    if (e.target.classList.contains("drop")) {
      const index = [...box.querySelectorAll(".element")].indexOf(e.target.closest(".element"));
      await ask("drop", { list, index }).catch(refused);
    }
  });

  // ---- faults -------------------------------------------------------------

  const ways = (f) => (f.ways || []).map((w) => make("button", w.label, { type: "button", onclick: async () => {
    await flush();
    await ask("set", { set: w.set }).catch(refused);
    const input = field(w.set[w.set.length - 1].field);
    if (input) { open(input); input.focus(); }
  } }));
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
      box.replaceChildren(...(own || []).flatMap((f) => [make("p", f.text), ...ways(f)]));
    }
    const key = JSON.stringify(list), box = get("faults");
    if (box.dataset.shown === key) return;
    box.dataset.shown = key;
    box.hidden = !list.length;
    box.querySelector("ul").replaceChildren(...list.map((f) => {
      const item = make("li"), input = f.field && field(f.field);
      if (input) item.append(make("a", f.field, { href: "#" + input.id, onclick: (e) => { e.preventDefault(); open(input); input.focus(); } }), ": ");
      else if (f.place) item.append(make("strong", f.place + " "));
      item.append(f.text);
      if (f.line && !input) item.append(make("code", f.line));
      if (!input) item.append(make("br"), ...ways(f));
      return item;
    }));
  };

  // ---- status -------------------------------------------------------------

  const showStatus = () => {
    const n = (state.faults || []).length, parts = [];
    if (state.ask) parts.push(say("ask"));
    else if (state.theirs !== undefined) parts.push(say("conflict"));
    else if (state.unsaved) parts.push(say("unsaved"));
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

  // ---- the sheet and what changed -----------------------------------------

  const cells = (root) => {
    const out = new Map();
    for (const table of root.querySelectorAll("table")) {
      const title = (table.caption && table.caption.textContent) || (table.closest("section") && table.closest("section").querySelector("h2, h3") || {}).textContent || "";
      const heads = [...table.querySelectorAll("thead th")].map((h) => h.textContent);
      for (const row of table.querySelectorAll("tbody tr")) {
        const name = row.cells[0] && row.cells[0].textContent;
        [...row.cells].slice(1).forEach((c, i) => out.set([title, name, heads[i + 1] || ""].join("\u0001"), c.textContent));
      }
    }
    return out;
  };
  const showChanges = (saved) => {
    const before = cells(new DOMParser().parseFromString(saved, "text/html")), after = cells(get("sheet"));
    const rows = [];
    for (const [key, value] of after) if (before.has(key) && before.get(key) !== value) rows.push([...key.split("\u0001"), before.get(key), value]);
    get("changes").querySelector(".count").textContent = rows.length ? "(" + rows.length + ")" : "";
    if (!rows.length) { get("changed").replaceChildren(make("p", say("none"))); return; }
    const table = make("table"), body = table.createTBody();
    for (const [title, name, head, old, now] of rows) {
      const row = body.insertRow();
      for (const c of [title, [name, head].filter(Boolean).join(", "), old + " → " + now]) row.insertCell().textContent = c;
    }
    get("changed").replaceChildren(table);
  };
  const showSheet = async () => {
    const number = state.drawn;
    if (!number || number === drawn) return;
    const { now, saved, shape } = await (await ask("sheet")).json();
    if (state.drawn !== number) return;
    drawn = number;
    const y = window.scrollY;
    get("sheet").innerHTML = now;
    window.scrollTo(0, y);
    showChanges(saved);
    if (shape) { model = shape; draw(); }
    document.body.dataset.drawn = drawn;
  };

  // ---- side by side --------------------------------------------------------

  const summary = (html) => {
    const page = new DOMParser().parseFromString(html, "text/html"), out = new Map();
    const verdict = page.querySelector(".verdict");
    if (verdict) out.set(" ", verdict.textContent.trim());
    for (const table of page.querySelectorAll("#summary, #ends")) {
      for (const row of table.querySelectorAll("tbody tr")) out.set(row.cells[0].textContent, [...row.cells].slice(1).map((c) => c.textContent).join(" / "));
    }
    return out;
  };
  get("compare-form").addEventListener("submit", async (e) => {
    e.preventDefault();
    const values = get("compare-values").value.split(";").map((v) => v.trim()).filter(Boolean);
    const texts = get("compare-file").files.length ? [await get("compare-file").files[0].text()] : [];
    try {
      await flush();
      const { now } = await (await ask("sheet")).json();
      const list = [{ name: say("now"), sheet: now }, ...(await (await ask("compare", { field: get("compare-key").value, values, texts })).json() || [])];
      const maps = list.map((c) => (c.sheet ? summary(c.sheet) : new Map([[" ", c.fault]])));
      const table = make("table"), head = table.createTHead().insertRow(), body = table.createTBody();
      for (const name of [say("measure"), ...list.map((c) => c.name)]) head.append(make("th", name, { scope: "col" }));
      for (const name of new Set(maps.flatMap((m) => [...m.keys()]))) {
        const row = body.insertRow();
        for (const c of [name, ...maps.map((m) => m.get(name) || "")]) row.insertCell().textContent = c;
      }
      get("compared").replaceChildren(table);
    } catch (err) { get("compared").replaceChildren(make("p", err.message)); }
  });

  // ---- the hammock in space -----------------------------------------------

  let model = null, yaw = -0.6, pitch = 0.35, waiting = false;
  const view = get("view"), brush = view.getContext("2d");
  const colour = (name) => getComputedStyle(document.body).getPropertyValue(name).trim() || "#888";
  const draw = () => {
    if (waiting) return;
    waiting = true;
    requestAnimationFrame(() => { waiting = false; paint(); });
  };
  const paint = () => {
    if (!model) return;
    const ratio = window.devicePixelRatio || 1, w = view.clientWidth, h = Math.round(w * 0.5);
    if (view.width !== Math.round(w * ratio)) { view.width = Math.round(w * ratio); view.height = Math.round(h * ratio); }
    brush.setTransform(ratio, 0, 0, ratio, 0, 0);
    brush.clearRect(0, 0, w, h);
    const [cy, sy, cp, sp] = [Math.cos(yaw), Math.sin(yaw), Math.cos(pitch), Math.sin(pitch)];
    const flat = ([x, y, z]) => { const u = x * cy - y * sy, d = x * sy + y * cy; return [u, z * cp + d * sp, d * cp - z * sp]; };
    const reach = model.reach, k = w * 0.46 / reach, mid = model.middle;
    const at = (p) => { const q = flat([p[0] - mid[0], p[1], p[2] - mid[2]]); return [w / 2 + k * q[0], h / 2 - k * q[1], q[2]]; };
    const shapes = [];
    for (let i = 0; i + 1 < model.cloth.length; i++) {
      const a = model.cloth[i].map(at), b = model.cloth[i + 1].map(at);
      for (let j = 0; j + 1 < a.length; j++) {
        const quad = [a[j], a[j + 1], b[j + 1], b[j]];
        const area = (quad[2][0] - quad[0][0]) * (quad[3][1] - quad[1][1]) - (quad[3][0] - quad[1][0]) * (quad[2][1] - quad[0][1]);
        shapes.push({ quad, depth: quad.reduce((s, q) => s + q[2], 0) / 4, light: 0.35 + 0.3 * (area > 0 ? 1 : 0) + 0.3 * Math.abs(j + 0.5 - (a.length - 1) / 2) / a.length });
      }
    }
    for (const line of model.lines) {
      const p = line.points.map(at);
      for (let i = 0; i + 1 < p.length; i++) shapes.push({ line: [p[i], p[i + 1]], depth: (p[i][2] + p[i + 1][2]) / 2 - 8, wide: line.wide });
    }
    shapes.sort((a, b) => b.depth - a.depth);
    const ink = colour("--text"), fill = colour("--link");
    for (const s of shapes) {
      brush.beginPath();
      for (const [x, y] of s.quad || s.line) brush.lineTo(x, y);
      if (s.quad) {
        brush.closePath();
        brush.globalAlpha = s.light;
        brush.fillStyle = brush.strokeStyle = fill;
        brush.lineWidth = 0.5;
        brush.fill();
        brush.stroke();
        brush.globalAlpha = 1;
      } else { brush.strokeStyle = ink; brush.lineWidth = s.wide; brush.stroke(); }
    }
    document.body.dataset.frames = Number(document.body.dataset.frames || 0) + 1;
  };
  let grip = null;
  view.addEventListener("pointerdown", (e) => { grip = [e.clientX, e.clientY]; view.setPointerCapture(e.pointerId); });
  view.addEventListener("pointermove", (e) => {
    if (!grip) return;
    turnBy((e.clientX - grip[0]) / 150, (e.clientY - grip[1]) / 150);
    grip = [e.clientX, e.clientY];
  });
  for (const end of ["pointerup", "pointercancel"]) view.addEventListener(end, () => { grip = null; });
  const turnBy = (a, b) => { yaw += a; pitch = Math.max(-1.5, Math.min(1.5, pitch + b)); draw(); };
  view.addEventListener("keydown", (e) => {
    const by = { ArrowLeft: [-0.15, 0], ArrowRight: [0.15, 0], ArrowUp: [0, 0.15], ArrowDown: [0, -0.15] }[e.key];
    if (by) { e.preventDefault(); turnBy(...by); }
  });
  get("space").addEventListener("click", (e) => {
    const d = e.target.dataset;
    if (d.turn) turnBy(d.turn * Math.PI / 180, 0);
    if (d.tilt) turnBy(0, d.tilt * Math.PI / 180);
  });
  new ResizeObserver(draw).observe(view);
  matchMedia("(prefers-color-scheme: dark)").addEventListener("change", draw);

  // A slider on the length that was entered last; while it moves only the shape follows.
  const slide = get("slide");
  let sliding = null, next = null, busy = false;
  const offerSlide = (input) => {
    const m = /^(-?\d+(?:\.\d+)?) *(mm|cm|m|in|ft)$/.exec(input.value);
    if (!m || input === slide) return;
    const v = Number(m[1]), span = Math.max(Math.abs(v) * 0.3, 1);
    sliding = { name: input.name, unit: m[2], digits: m[2] === "mm" ? 0 : 3 };
    get("slide-box").hidden = false;
    get("slide-name").textContent = document.querySelector('label[for="' + input.id + '"]').textContent;
    slide.min = v - span; slide.max = v + span; slide.value = v;
    slide.setAttribute("aria-valuetext", input.value);
  };
  const slidden = () => Number(slide.value).toFixed(sliding.digits) + " " + sliding.unit;
  const follow = async () => {
    if (busy) return;
    busy = true;
    while (next !== null) {
      const value = next;
      next = null;
      try {
        const shape = await (await ask("try", { set: [{ field: sliding.name, value }] })).json();
        if (shape) { model = shape; draw(); }
      } catch (e) { /* the last shape that is sound stays */ }
    }
    busy = false;
  };
  slide.addEventListener("input", () => {
    next = slidden();
    slide.setAttribute("aria-valuetext", next);
    const input = field(sliding.name);
    if (input) input.value = next;
    follow();
  });
  slide.addEventListener("change", async () => {
    turn++;
    await ask("set", { set: [{ field: sliding.name, value: slidden() }], turn }).catch(refused);
  });

  // ---- what the buttons do ------------------------------------------------

  const save = async (name) => {
    await flush();
    note = "";
    try {
      await ask("save", { digest: state.digest, name: name || "" });
      get("name-box").close();
    } catch (e) {
      if (e.status === 404) { get("name-box").showModal(); return; }
      if (e.status === 409 && state.file) return; // the page shows both
      if (name) get("name-wrong").textContent = e.message;
      else refused(e);
    }
  };
  get("save").addEventListener("click", () => save());
  get("name-form").addEventListener("submit", (e) => { e.preventDefault(); save(get("file-name").value); });
  get("name-cancel").addEventListener("click", () => get("name-box").close());
  for (const op of ["undo", "redo"]) get(op).addEventListener("click", async () => { await flush(); await ask(op).catch(refused); });
  get("take").addEventListener("click", () => ask("take").catch(refused));
  get("keep").addEventListener("click", () => ask("save", { digest: state.lost, name: "" }).catch(refused));
  get("use-text").addEventListener("click", async () => {
    delete get("text").dataset.own;
    await ask("text", { text: get("text").value }).catch(refused);
  });
  get("questions").addEventListener("submit", async (e) => {
    e.preventDefault();
    const value = (id) => get("q-" + id).value;
    get("q-wrong").textContent = "";
    try {
      await ask("propose", { stature: value("stature"), mass: value("mass"), lies: value("lies"), width: value("width"), inches: value("units") === "in" });
    } catch (err) { get("q-wrong").textContent = err.message; }
  });
  get("q-units").addEventListener("change", (e) => {
    const inches = e.target.value === "in";
    get("q-stature").value = inches ? "5 ft 8 in" : "1720 mm";
    get("q-mass").value = inches ? "165 lb" : "75 kg";
  });

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

  document.addEventListener("keydown", (e) => {
    if (!(e.ctrlKey || e.metaKey) || e.altKey) return;
    const own = e.target.matches("input, textarea, select");
    const key = e.key.toLowerCase();
    if (key === "s") { e.preventDefault(); if (!get("save").disabled) save(); }
    else if (key === "z" && !own) { e.preventDefault(); (e.shiftKey ? get("redo") : get("undo")).click(); }
    else if (key === "y" && !own) { e.preventDefault(); get("redo").click(); }
  });
  window.addEventListener("beforeunload", (e) => { if (pending.size) e.preventDefault(); });

  // ---- the program's news -------------------------------------------------

  const receive = async (now) => {
    state = now;
    note = "";
    get("begin").hidden = !state.ask;
    showFields();
    showFaults();
    showStatus();
    showConflict();
    await showSheet();
  };
  const listen = async () => {
    let since = -1;
    for (;;) {
      try {
        const now = await (await ask("state", { since })).json();
        since = now.number;
        await receive(now);
      } catch (e) {
        get("status").textContent = e.status === 401 ? say("refused") : say("away");
        document.body.dataset.away = "yes";
        if (e.status === 401) return;
        await new Promise((done) => setTimeout(done, 1000));
        since = -1;
      }
    }
  };
  listen();
})();
