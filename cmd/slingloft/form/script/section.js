// The section at a station.
// latest asks for one thing at a time: while an answer is under way only the newest
// question waits.
const latest = (work) => {
  let next, busy = false;
  return async (what) => {
    next = what;
    if (busy) return;
    busy = true;
    while (next !== undefined) {
      const now = next;
      next = undefined;
      try { await work(now); } catch (e) { /* what stood last stays */ }
    }
    busy = false;
  };
};
const askSection = latest(async (at) => {
  const section = await (await ask("section", { at })).json();
  if (section && model && !moving) { model.section = section; showSection(section); draw(); }
});
const goTo = (station) => {
  station = Math.max(model.ends[0], Math.min(model.ends[1], station));
  model.section.station = station;
  if (moving) return; // it comes with the shape that moves
  askSection(station);
};
get("station").addEventListener("input", (e) => { if (model) goTo(Number(e.target.value)); });
const svg = (tag, attributes) => {
  const e = document.createElementNS("http://www.w3.org/2000/svg", tag);
  for (const [k, v] of Object.entries(attributes)) e.setAttribute(k, v);
  return e;
};
const showSection = (s) => {
  const path = (points) => points.map((p, i) => (i ? "L" : "M") + p[1].toFixed(1) + " " + (s.floor - p[2]).toFixed(1)).join("");
  const half = Math.max(...s.points.map((p) => p[1])), top = s.points[0][2] - s.floor, pad = half * 0.06;
  const box = get("across");
  box.setAttribute("viewBox", [-half - pad, -top - pad, 2 * (half + pad), top + 2 * pad].map((v) => v.toFixed(1)).join(" "));
  const wide = half / 70;
  box.replaceChildren(
    ...(s.sleeper ? [svg("path", { class: "p f-body", d: path(s.sleeper) + "Z" })] : []),
    svg("path", { class: "p k-quiet", "stroke-width": wide / 2, "stroke-dasharray": 4 * wide, d: path([s.points[0], s.points[s.points.length - 1]]) }),
    svg("path", { class: "p k-quiet", "stroke-width": wide / 2, "stroke-dasharray": 4 * wide, d: "M0 0L0 " + (-top).toFixed(1) }),
    svg("path", { class: "p k-main", "stroke-width": wide, d: path(s.points) }),
    ...[s.points[0], s.points[s.points.length - 1]].map((p) => svg("circle", { class: "f-cord", cx: p[1], cy: s.floor - p[2], r: 2.5 * wide })));
  const list = get("here");
  list.replaceChildren(...(s.figures || []).map((f) => { const d = make("div"); d.append(make("dt", f.name), make("dd", f.value)); return d; }));
  get("station").value = s.station;
  get("station").setAttribute("aria-valuetext", s.where);
};
