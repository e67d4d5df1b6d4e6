// The hammock in space: turned by pointer, keys or buttons, with the section at the
// station that is pointed at.
let model = null, yaw = -0.6, pitch = 0.35, waiting = false, shading = "light";
const view = get("view"), brush = view.getContext("2d");
const draw = () => {
  if (waiting) return;
  waiting = true;
  requestAnimationFrame(() => { waiting = false; paint(); });
};
const hex = (text) => [1, 3, 5].map((i) => parseInt(text.slice(i, i + 2), 16));
const between = (a, b, t) => "rgb(" + a.map((v, i) => Math.round(v + (b[i] - v) * t)).join(" ") + ")";
// The colours hang on light or dark alone, and are looked up when that changes.
let inks = null;
const inksNow = () => {
  if (inks) return inks;
  const style = getComputedStyle(document.documentElement), ink = (name) => style.getPropertyValue("--" + name).trim();
  inks = { main: ink("main"), cord: ink("cord"), bar: ink("bar"), ring: ink("cut"), body: hex(ink("body")), soft: hex(ink("soft")), page: hex(ink("page")), slack: hex(ink("slack")), taut: hex(ink("taut")), lit: [] };
  for (let i = 0; ink("s" + i); i++) inks.lit.push(ink("s" + i));
  return inks;
};

// eye returns what takes a point in space onto the screen, and how far off it lies.
const eye = (w, h) => {
  const cy = Math.cos(yaw), sy = Math.sin(yaw), cp = Math.cos(pitch), sp = Math.sin(pitch);
  const m = model.middle;
  const seen = (p) => {
    const x = p[0] - m[0], z = p[2] - m[2], d = x * sy + p[1] * cy;
    return [x * cy - p[1] * sy, z * cp + d * sp, d * cp - z * sp];
  };
  // As large as fits, however it is turned: apexes, bars and cloth lie within.
  const tall = Math.max(...[...model.lines.flatMap((l) => l.points), ...model.section.points].map((p) => Math.abs(seen(p)[1])));
  const k = Math.min(w * 0.47 / model.reach, h * 0.47 / tall);
  return (p) => {
    const [x, y, d] = seen(p);
    return [w / 2 + k * x, h / 2 - k * y, d];
  };
};
// quads puts the quadrangles between rows of points into shapes, each with its fill.
const quads = (shapes, rows, fill) => {
  for (let i = 0; i + 1 < rows.length; i++) {
    const a = rows[i], b = rows[i + 1], n = Math.min(a.length, b.length);
    for (let j = 0; j + 1 < n; j++) {
      const q = [a[j], a[j + 1], b[j + 1], b[j]];
      const nx = (q[2][0] - q[0][0]), ny = (q[2][1] - q[0][1]), nz = (q[2][2] - q[0][2]), mx = (q[3][0] - q[1][0]), my = (q[3][1] - q[1][1]), mz = (q[3][2] - q[1][2]);
      const c = [ny * mz - nz * my, nz * mx - nx * mz, nx * my - ny * mx], long = Math.hypot(...c) || 1;
      const facing = c[2] < 0 ? 1 : -1; // the side that is seen has the light
      const light = Math.max(0, facing * (-0.8 * c[1] - 0.4 * c[2] + 0.35 * c[0]) / long);
      shapes.push({ q, depth: (q[0][2] + q[1][2] + q[2][2] + q[3][2]) / 4, fill: fill(i, light) });
    }
  }
};
// Lines lie on the cloth's edge and have to be nearer than it; bars, over it, by more.
// stretch is the longest part of a line that is sorted by its depth as one, pixels.
const stretch = 24;
// Room to spare from which on nothing is pressed is shown as roomy, mm: own choice.
const roomy = 300;
// spareAt returns the room of what lies at a station, null where nothing is known of.
const spareAt = (x) => {
  const here = (model.room || []).filter((f) => x >= f.from && x <= f.to);
  return here.length ? Math.min(...here.map((f) => f.spare)) : null;
};
const showLegend = () => {
  get("legend").hidden = shading === "light";
  get("scale").className = "scale" + (shading === "room" ? " turned" : "");
  get("taut").textContent = shading !== "room" ? say("taut", { most: model.taut })
    : model.room ? say("room", { parts: model.room.map((f) => f.text).join(", ") }) : say("noroom");
};
const paint = () => {
  if (!model) return;
  const ratio = window.devicePixelRatio || 1, w = view.clientWidth, h = Math.round(w * 0.5);
  if (!w) return;
  if (view.width !== Math.round(w * ratio)) { view.width = Math.round(w * ratio); view.height = Math.round(h * ratio); }
  brush.setTransform(ratio, 0, 0, ratio, 0, 0);
  brush.clearRect(0, 0, w, h);
  const ink = inksNow(), at = eye(w, h), shapes = [], most = Math.max(...model.tension) || 1;
  const lit = (light) => ink.lit[Math.min(ink.lit.length - 1, Math.floor((0.12 + 0.88 * light) * ink.lit.length))];
  const tensions = model.tension.map((n) => n / most);
  const spares = shading === "room" ? model.cloth.map((r) => spareAt(r[0][0])) : [];
  quads(shapes, model.cloth.map((r) => r.map(at)), (i, light) => shading === "tension"
    ? between(ink.slack, ink.taut, (tensions[i] + tensions[i + 1]) / 2) : shading === "room" && spares[i] !== null
    ? between(ink.taut, ink.slack, Math.max(0, Math.min(1, spares[i] / roomy))) : lit(light));
  for (const cap of model.caps) quads(shapes, cap.map((r) => r.map(at)), (i, light) => lit(light));
  // What lies on the cloth is never seen.
  quads(shapes, model.sleeper.map((r) => r.slice(0, r.length / 2 + 1).map(at)), (i, light) => between(ink.soft, ink.body, 0.25 + 0.75 * light));
  for (const line of [...model.lines, { points: model.section.points, wide: 2.4, ring: true }]) {
    const p = line.points.map(at), colour = line.ring ? ink.ring : line.wide > 3 ? ink.bar : ink.cord;
    for (let i = 0; i + 1 < p.length; i++) {
      // What spans the open bed goes in stretches, each wholly before or behind what it passes;
      // the section's line goes as the cloth that it lies on.
      const n = line.ring ? 1 : Math.ceil(Math.hypot(p[i + 1][0] - p[i][0], p[i + 1][1] - p[i][1], (p[i + 1][2] - p[i][2]) / 4) / stretch);
      const along = (t) => p[i].map((v, k) => v + (p[i + 1][k] - v) * t);
      for (let j = 0; j < n; j++) {
        const a = along(j / n), b = along((j + 1) / n);
        shapes.push({ line: [a, b], depth: (a[2] + b[2]) / 2 - (line.wide > 3 ? 60 : 12), wide: line.wide, colour });
      }
    }
  }
  shapes.sort((a, b) => b.depth - a.depth);
  brush.lineCap = "round";
  for (const s of shapes) {
    brush.beginPath();
    for (const p of s.q || s.line) brush.lineTo(p[0], p[1]);
    if (s.q) {
      brush.closePath();
      brush.fillStyle = brush.strokeStyle = s.fill;
      brush.lineWidth = 0.6; // closes the hair's breadth that smoothing leaves
      brush.fill();
    } else { brush.strokeStyle = s.colour; brush.lineWidth = s.wide; }
    brush.stroke();
  }
  document.body.dataset.frames = Number(document.body.dataset.frames || 0) + 1;
};
const setModel = (now) => {
  model = now;
  showLegend();
  get("off").textContent = say("off", { off: model.off });
  get("told").textContent = model.told;
  const s = get("station");
  s.min = Math.ceil(model.ends[0] / 10) * 10;
  s.max = Math.floor(model.ends[1] / 10) * 10;
  showSection(model.section);
  draw();
};

// ---- turning and pointing

let grip = null;
view.addEventListener("pointerdown", (e) => { grip = [e.clientX, e.clientY]; view.setPointerCapture(e.pointerId); });
view.addEventListener("pointermove", (e) => {
  if (!grip) { point(e); return; }
  turnBy((e.clientX - grip[0]) / 150, (e.clientY - grip[1]) / 150);
  grip = [e.clientX, e.clientY];
});
for (const end of ["pointerup", "pointercancel"]) view.addEventListener(end, () => { grip = null; });
const turnBy = (a, b) => { yaw += a; pitch = Math.max(-1.5, Math.min(1.5, pitch + b)); draw(); };
view.addEventListener("keydown", (e) => {
  const by = { ArrowLeft: [-0.15, 0], ArrowRight: [0.15, 0], ArrowUp: [0, 0.15], ArrowDown: [0, -0.15] }[e.key];
  const along = { PageUp: 50, PageDown: -50, Home: -1e5, End: 1e5 }[e.key];
  if (!by && !along) return;
  e.preventDefault();
  if (by) turnBy(...by);
  else if (model) goTo(model.section.station + along);
});
// point takes the section to the place of the cloth that lies nearest to the pointer.
const point = (e) => {
  if (!model) return;
  const box = view.getBoundingClientRect(), at = eye(view.clientWidth, view.clientHeight), x = e.clientX - box.left, y = e.clientY - box.top;
  const rows = model.cloth.map((r) => r.map(at)), bar = model.section.station - model.section.points[0][0];
  let best = 900, found = null; // farther off than 30 pixels nothing is meant
  for (let i = 0; i + 1 < rows.length; i++) {
    for (let j = 0; j < rows[i].length; j++) {
      const a = rows[i][j], b = rows[i + 1][j], dx = b[0] - a[0], dy = b[1] - a[1];
      const t = Math.max(0, Math.min(1, ((x - a[0]) * dx + (y - a[1]) * dy) / (dx * dx + dy * dy || 1)));
      const off = (a[0] + t * dx - x) ** 2 + (a[1] + t * dy - y) ** 2;
      if (off < best) { best = off; found = model.cloth[i][j][0] + t * (model.cloth[i + 1][j][0] - model.cloth[i][j][0]); }
    }
  }
  if (found !== null) goTo(found + bar);
};
get("space").addEventListener("click", (e) => {
  const d = e.target.dataset;
  if (d.turn) turnBy(d.turn * Math.PI / 180, 0);
  if (d.tilt) turnBy(0, d.tilt * Math.PI / 180);
});
get("shading").addEventListener("change", (e) => { shading = e.target.value; if (model) showLegend(); draw(); });
new ResizeObserver(draw).observe(view);
matchMedia("(prefers-color-scheme: dark)").addEventListener("change", () => { inks = null; draw(); });
