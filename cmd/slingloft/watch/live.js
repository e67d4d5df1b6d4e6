"use strict";
// The live page: shows the sheet anew after each save, faults of the file in their
// place, and other measures as soon as they are typed.
(() => {
  const get = (id) => document.getElementById(id);
  const fields = get("fields"), faults = get("faults"), status = get("status");
  let shown = 0;      // version of the sheet on the page
  let latest = null;  // last state that the program sent
  let trying = false; // values of the page's own are shown
  let asked = null;   // request under way
  let own = new Map(); // main measures of the file's own sheet
  let timer = 0;

  const say = (text) => { if (status.textContent !== text) status.textContent = text; };

  const showFaults = (list) => {
    faults.replaceChildren(...(list || []).map((f) => {
      const box = document.createElement("div");
      box.className = "fault";
      if (f.place) {
        const place = document.createElement("strong");
        place.textContent = f.place + " ";
        box.append(place);
      }
      box.append(f.text);
      if (f.line) {
        const line = document.createElement("code");
        line.textContent = f.line;
        box.append(line);
      }
      return box;
    }));
  };

  const showFields = (list) => {
    const same = list.length === fields.elements.length && list.every((v, i) => fields.elements[i].name === v.key);
    if (!same) {
      fields.replaceChildren(...list.map((v) => {
        const label = document.createElement("label");
        const input = document.createElement("input");
        input.name = v.key;
        input.spellcheck = false;
        label.append(v.name, input);
        return label;
      }));
    }
    list.forEach((v, i) => {
      const input = fields.elements[i];
      input.value = input.dataset.own = v.value;
      input.classList.remove("changed");
    });
  };

  const put = (html) => {
    const y = window.scrollY;
    get("sheet").innerHTML = html;
    window.scrollTo(0, y);
  };

  // What the sheet's table of main measures says, by name.
  const measures = () => new Map([...document.querySelectorAll("#summary tbody tr")].map((r) => [r.cells[0].textContent, r.cells[1].textContent]));

  // What other values change in it.
  const showEffect = () => {
    const rows = [];
    for (const [name, value] of measures()) {
      if (own.has(name) && own.get(name) !== value) rows.push([name, own.get(name) + " → " + value]);
    }
    const verdict = document.querySelector("#sheet .verdict");
    if (verdict) rows.push(["checks", verdict.textContent]);
    get("effect").replaceChildren(...rows.map(([name, value]) => {
      const row = document.createElement("div"), dt = document.createElement("dt"), dd = document.createElement("dd");
      dt.textContent = name;
      dd.textContent = value;
      row.append(dt, dd);
      return row;
    }));
  };

  const note = () => {
    if (latest.faults && latest.faults.length) say(latest.version ? "The file is at fault. Below stands the last good drawing." : "The file is at fault.");
    else if (trying) say("Other measures are tried; the file is untouched.");
    else say(latest.laid ? "Up to date with the file." : "Up to date with the file; the pieces are being laid.");
  };

  const showSheet = async (state) => {
    const answer = await fetch("sheet");
    if (!answer.ok || latest !== state || trying) return;
    put(await answer.text());
    own = measures();
    shown = state.version;
    document.title = (get("sheet").querySelector("h1") || document).textContent + " – live";
    document.body.dataset.version = shown;
    document.body.dataset.laid = state.laid;
  };

  const endTrying = () => {
    trying = false;
    for (const id of ["effect", "tried", "lines", "back"]) get(id).hidden = true;
  };

  const receive = async (state) => {
    const changed = !latest || state.version !== latest.version;
    const laidOnly = latest && state.laid && !latest.laid && state.version === latest.version + 1;
    latest = state;
    showFaults(state.faults);
    if (changed && state.fields && !(trying && laidOnly)) {
      endTrying();
      showFields(state.fields);
    }
    note();
    if (state.version && state.version !== shown && !trying) await showSheet(state);
  };

  const tryValues = async () => {
    const other = new URLSearchParams();
    for (const input of fields.elements) {
      const changed = input.value !== input.dataset.own;
      input.classList.toggle("changed", changed);
      if (changed) other.append(input.name, input.value);
    }
    if (asked) asked.abort();
    if (![...other].length) return back();
    trying = true;
    asked = new AbortController();
    let result;
    try {
      const answer = await fetch("try", { method: "POST", body: other, signal: asked.signal });
      if (!answer.ok) throw new Error(await answer.text());
      result = await answer.json();
    } catch (e) {
      if (e.name !== "AbortError") say("The values could not be tried: " + e.message);
      return;
    }
    if (!trying) return;
    showFaults(result.faults && result.faults.length ? result.faults : latest.faults);
    if (result.html) {
      put(result.html);
      showEffect();
    }
    get("lines").textContent = (result.lines || []).join("\n");
    const good = Boolean(result.html);
    get("effect").hidden = get("tried").hidden = get("lines").hidden = !good;
    get("back").hidden = false;
    document.body.dataset.tried = good ? "good" : "fault";
    say(good ? "Other measures are tried; the file is untouched." : "These measures do not do; below stands the last good drawing.");
  };

  const back = () => {
    if (asked) asked.abort();
    endTrying();
    delete document.body.dataset.tried;
    showFields(latest.fields);
    showFaults(latest.faults);
    note();
    shown = 0;
    showSheet(latest);
  };

  fields.addEventListener("input", () => {
    clearTimeout(timer);
    timer = setTimeout(tryValues, 120);
  });
  fields.addEventListener("submit", (e) => { e.preventDefault(); tryValues(); });
  get("back").addEventListener("click", back);

  const source = new EventSource("events");
  source.addEventListener("state", (e) => receive(JSON.parse(e.data)));
  source.addEventListener("error", () => say("The program is not running; the page stands as it was."));
})();
